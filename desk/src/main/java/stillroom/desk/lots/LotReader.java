package stillroom.desk.lots;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import stillroom.desk.shell.Input;
import stillroom.desk.shell.PriceReader;
import stillroom.formulary.material.Certificate;
import stillroom.formulary.material.Lot;
import stillroom.formulary.material.Strength;
import stillroom.formulary.quantity.Grams;
import stillroom.formulary.quantity.Percent;
import stillroom.formulary.quantity.PercentRange;

/** Reads a lot from its forms. What cannot be taken is noted in the input, all of it at once. */
record LotReader(Input input) {
    /** A delivery; empty where something is refused. */
    Optional<Lot> delivery(String materialKey, boolean isWater, LocalDate today) {
        String code = input.required("code", "The lot code");
        if (!code.isEmpty() && !LotCode.FORM.matcher(code).matches()) {
            input.refuse("code", "A lot code has up to 40 letters, digits, hyphens, dots or underscores, no blanks.");
        }
        Optional<Grams> received = input.grams("received", "The amount");
        if (received.map(Grams::isZero).orElse(!input.hasProblem("received"))) {
            input.refuse("received", "How many grams came in?");
        }
        Optional<LocalDate> receivedOn = input.day("received-on", "The day of receipt");
        if (receivedOn.isEmpty() && !input.hasProblem("received-on")) {
            input.refuse("received-on", "The day of receipt is missing.");
        }
        boolean held = input.has("quarantine");
        Lot lot = new Lot(
                        code,
                        materialKey,
                        input.text("supplier-lot"),
                        input.text("supplier"),
                        received.orElse(Grams.ZERO),
                        receivedOn.orElse(today),
                        input.day("opened", "The day of opening"),
                        input.day("expires", "The best-before day"),
                        PriceReader.price(input),
                        held ? Lot.State.QUARANTINE : Lot.State.RELEASED,
                        isWater ? waterNote() : input.text("note"))
                .with(certificate(Optional.empty()), input.day("retest", "The day of the retest"));
        judgeDays(lot);
        return input.isSound() ? Optional.of(lot) : Optional.empty();
    }

    /** The same lot with the facts that may change; empty where something is refused. */
    Optional<Lot> change(Lot lot) {
        Lot changed = new Lot(
                        lot.code(),
                        lot.materialKey(),
                        input.text("supplier-lot"),
                        input.text("supplier"),
                        lot.received(),
                        lot.receivedOn(),
                        input.day("opened", "The day of opening"),
                        input.day("expires", "The best-before day"),
                        PriceReader.price(input),
                        input.choice("state", "State", Lot.State.class).orElse(lot.state()),
                        input.text("note"))
                .with(certificate(lot.certificate()), input.day("retest", "The day of the retest"));
        judgeDays(changed);
        return input.isSound() ? Optional.of(changed) : Optional.empty();
    }

    /** The same lot, opened on this day. */
    static Lot opened(Lot lot, LocalDate day) {
        return new Lot(
                        lot.code(),
                        lot.materialKey(),
                        lot.supplierLot(),
                        lot.supplier(),
                        lot.received(),
                        lot.receivedOn(),
                        Optional.of(day),
                        lot.expires(),
                        lot.price(),
                        lot.state(),
                        lot.note())
                .with(lot.certificate(), lot.retest());
    }

    private void judgeDays(Lot lot) {
        if (lot.opened().map(day -> day.isBefore(lot.receivedOn())).orElse(false)) {
            input.refuse("opened", "It cannot be opened before it came.");
        }
    }

    /** Values without a basis are refused; a composition that is known as a whole stays as it is. */
    private Optional<Certificate> certificate(Optional<Certificate> before) {
        Optional<BigDecimal> strength = input.decimal("strength", "The strength", "0", "100");
        Optional<Strength.Basis> basis = input.choice("basis", "What it counts", Strength.Basis.class);
        if (strength.isPresent() && basis.isEmpty() && !input.hasProblem("basis")) {
            input.refuse("basis", "Say what the figure counts: active matter is not dry residue.");
        }
        Optional<Strength> known = before.flatMap(Certificate::strength);
        boolean same = known.isPresent()
                && strength.isPresent()
                && LotView.middle(known.get()).compareTo(strength.get()) == 0
                && basis.filter(known.get().basis()::equals).isPresent();
        Optional<Strength> stated = same
                ? known
                : strength.flatMap(figure ->
                        basis.map(counted -> new Strength(PercentRange.point(new Percent(figure)), counted, "")));
        Certificate read = new Certificate(
                stated,
                input.number("lot-ph", "The pH", "0", "14"),
                input.number("lot-density", "The density", "0.2", "3"),
                same ? before.map(Certificate::composition).orElse(List.of()) : List.of(),
                input.text("certificate"));
        return read.isBlank() ? Optional.empty() : Optional.of(read);
    }

    /** What is known of a water lot stands in words in front of its note, so that it is read wherever the lot is. */
    private String waterNote() {
        String conductivity = input.decimal("conductivity", "Conductivity", "0", "2000")
                .map(figure -> "Conductivity " + figure.toPlainString() + " µS/cm. ")
                .orElse("");
        String treated = input.text("treatment");
        return (conductivity + (treated.isEmpty() ? "" : "Treated: " + treated + ". ") + input.text("note")).strip();
    }
}
