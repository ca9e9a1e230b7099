package stillroom.desk.lots;

import java.time.LocalDate;
import java.util.Optional;
import stillroom.desk.shell.Input;
import stillroom.formulary.material.Lot;
import stillroom.formulary.quantity.Grams;
import stillroom.formulary.quantity.Money;
import stillroom.formulary.quantity.Price;

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
                price(),
                held ? Lot.State.QUARANTINE : Lot.State.RELEASED,
                isWater ? waterNote() : input.text("note"));
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
                price(),
                input.choice("state", "State", Lot.State.class).orElse(lot.state()),
                input.text("note"));
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
                lot.note());
    }

    private void judgeDays(Lot lot) {
        if (lot.opened().map(day -> day.isBefore(lot.receivedOn())).orElse(false)) {
            input.refuse("opened", "It cannot be opened before it came.");
        }
    }

    private Optional<Price> price() {
        Optional<Money> paid = input.money("paid", "Price");
        Optional<Grams> amount = input.grams("paid-grams", "Amount");
        if (paid.isPresent() && amount.map(Grams::isZero).orElse(true) && !input.hasProblem("paid-grams")) {
            return input.refuse("paid-grams", "For how many grams was this paid?");
        }
        if (amount.isPresent() && paid.isEmpty() && !input.hasProblem("paid")) {
            return input.refuse("paid", "What was paid for this amount is missing.");
        }
        return paid.isPresent() && amount.isPresent()
                ? Optional.of(new Price(paid.get(), amount.get()))
                : Optional.empty();
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
