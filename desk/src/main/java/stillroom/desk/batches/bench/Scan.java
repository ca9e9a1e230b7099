package stillroom.desk.batches.bench;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import stillroom.desk.batches.BatchWork;
import stillroom.desk.shell.Format;
import stillroom.formulary.material.CertificateCheck;
import stillroom.formulary.material.Lot;
import stillroom.ledger.lot.StockedLot;

/**
 * What a scanned lot code means for the material that is to be poured.
 *
 * @param code as scanned; empty where nothing was scanned
 * @param says what is to be known, one sentence; empty for nothing
 * @param kind how it stands
 */
public record Scan(String code, String says, Kind kind) {
    /** Whether one may pour. */
    public enum Kind {
        NONE,
        RIGHT,
        /** The right material, and a reason is needed. */
        DOUBTFUL,
        /** Another material, or no lot of ours. */
        WRONG
    }

    static final Scan NOTHING = new Scan("", "", Kind.NONE);

    /** Whether the weighing is held back. */
    public boolean stops() {
        return kind == Kind.WRONG;
    }

    public boolean doubtful() {
        return kind == Kind.DOUBTFUL;
    }

    static Scan of(BatchWork work, String typed, String materialKey) {
        String code = typed.strip();
        if (code.isEmpty()) {
            return NOTHING;
        }
        Optional<Lot> lot = work.desk().ledger().lots().lot(code).map(StockedLot::lot);
        if (lot.isEmpty()) {
            return new Scan(code, "Stop: no lot " + code + " is on the shelf's book.", Kind.WRONG);
        }
        if (!lot.get().materialKey().equals(materialKey)) {
            return new Scan(
                    code,
                    "Stop: lot " + code + " is " + work.cards().name(lot.get().materialKey()) + ", not "
                            + work.cards().name(materialKey) + ".",
                    Kind.WRONG);
        }
        return judged(work, lot.get());
    }

    private static Scan judged(BatchWork work, Lot lot) {
        String code = lot.code();
        if (lot.state() == Lot.State.QUARANTINE) {
            return new Scan(code, "Stop: lot " + code + " is in quarantine.", Kind.DOUBTFUL);
        }
        if (lot.expiredOn(work.desk().today())) {
            return new Scan(
                    code,
                    "Stop: lot " + code + " expired on "
                            + lot.expires().map(Format::day).orElse("") + ".",
                    Kind.DOUBTFUL);
        }
        if (lot.retestDueOn(work.desk().today())) {
            return new Scan(code, "Stop: lot " + code + " was to be tested again.", Kind.DOUBTFUL);
        }
        return new Scan(
                code, "Lot " + code + " is right" + sooner(work, lot) + "." + offTheCard(work, lot), Kind.RIGHT);
    }

    private static String offTheCard(BatchWork work, Lot lot) {
        return work.book()
                .material(lot.materialKey())
                .map(card -> CertificateCheck.of(card, lot).stream()
                        .map(says -> " " + says)
                        .collect(Collectors.joining()))
                .orElse("");
    }

    /** First expired first: a sound lot that expires sooner is named, it stops nothing. */
    private static String sooner(BatchWork work, Lot lot) {
        List<String> before = work.desk().ledger().lots().ofMaterial(lot.materialKey()).stream()
                .filter(other -> other.onHand().signum() > 0)
                .map(StockedLot::lot)
                .filter(other -> other.state() == Lot.State.RELEASED
                        && !other.expiredOn(work.desk().today())
                        && other.expires().isPresent()
                        && lot.expires()
                                .map(day -> other.expires().get().isBefore(day))
                                .orElse(true))
                .map(Lot::code)
                .limit(1)
                .toList();
        return before.isEmpty() ? "" : "; lot " + before.get(0) + " expires sooner";
    }
}
