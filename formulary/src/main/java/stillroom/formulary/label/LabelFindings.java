package stillroom.formulary.label;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.stream.Stream;
import stillroom.formulary.evaluation.Finding;
import stillroom.formulary.judgement.pot.Pot;
import stillroom.formulary.judgement.pot.Words;

/** What is missing on a label, or open because a composition is only known as a range. */
final class LabelFindings {
    private static final String ARTICLE_19 =
            "Regulation (EC) No 1223/2009, article 19(1), read in a summary; details from memory";

    private LabelFindings() {}

    static void look(
            Pot pot,
            Named.Sums named,
            List<LabelEntry> entries,
            List<LabelWarning> warnings,
            LabelInput input,
            Consumer<Finding> report) {
        unknown(named, report);
        order(pot, entries, report);
        allergens(pot, report);
        wording(warnings, input.language(), report);
        required(input, report);
        durability(input, report);
    }

    private static void unknown(Named.Sums named, Consumer<Finding> report) {
        if (!named.unnamed().isEmpty()) {
            report.accept(finding(
                    Finding.Kind.CANNOT_JUDGE,
                    "label.composition",
                    "Cannot list: no composition for " + Words.list(named.unnamed()) + ".",
                    "Enter the constituents from the data sheet."));
        }
    }

    /** Neighbours whose ranges overlap, and names whose range crosses 1 %. */
    private static void order(Pot pot, List<LabelEntry> entries, Consumer<Finding> report) {
        MarketForm form = MarketForm.of(pot.brief().market());
        List<LabelEntry> ordered = entries.stream()
                .filter(entry -> entry.block() == LabelEntry.Block.ORDERED)
                .toList();
        List<String> open = new ArrayList<>();
        for (int i = 1; i < ordered.size(); i++) {
            LabelEntry before = ordered.get(i - 1);
            LabelEntry after = ordered.get(i);
            if (after.share().upper() > before.share().lower() + 1e-12) {
                open.add(before.name() + " before " + after.name());
            }
        }
        if (!open.isEmpty()) {
            report.accept(finding(
                    Finding.Kind.LOOK_AT_THIS,
                    "label.order-open",
                    "The order is open, because ranges overlap; the middle decided: " + Words.list(open) + ".",
                    "Take the figures of the lot's certificate."));
        }
        List<String> crossing = Stream.concat(
                        ordered.stream(), entries.stream().filter(entry -> entry.block() == LabelEntry.Block.FREE))
                .filter(entry -> form.isFree(entry.share().lower())
                        != form.isFree(entry.share().upper()))
                .map(LabelEntry::name)
                .toList();
        if (!crossing.isEmpty()) {
            report.accept(finding(
                    Finding.Kind.LOOK_AT_THIS,
                    "label.one-percent-open",
                    Words.list(crossing) + " may be above or below 1 %; the middle decided.",
                    "Take the figures of the lot's certificate."));
        }
    }

    private static void allergens(Pot pot, Consumer<Finding> report) {
        if (!MarketForm.of(pot.brief().market()).allergens()) {
            return;
        }
        List<String> doubtful = Allergens.of(pot, pot.asOf()).stream()
                .filter(allergen -> !allergen.certain())
                .map(Allergens.Declared::name)
                .toList();
        if (!doubtful.isEmpty()) {
            report.accept(finding(
                    Finding.Kind.LOOK_AT_THIS,
                    "label.allergen-upper-end",
                    Words.list(doubtful) + ": named because the upper end of the range is above the threshold of "
                            + Words.percent(Allergens.threshold(pot)) + ".",
                    "Take the figures of the lot's certificate."));
        }
    }

    private static void wording(List<LabelWarning> warnings, String language, Consumer<Finding> report) {
        for (LabelWarning warning : warnings) {
            if (warning.text().isEmpty()) {
                report.accept(finding(
                        Finding.Kind.CANNOT_JUDGE,
                        "label.warning-language",
                        "The warning \"" + warning.key() + "\" is demanded by " + warning.source()
                                + ", but there is no wording in \"" + language + "\".",
                        "Enter the wording of the law in that language."));
            } else if (!warning.reserve().isEmpty()) {
                report.accept(finding(
                        Finding.Kind.LOOK_AT_THIS,
                        "label.warning-wording",
                        "\"" + warning.text() + "\": " + warning.reserve() + ".",
                        "Check it against the law in that language."));
            }
        }
    }

    private static void required(LabelInput input, Consumer<Finding> report) {
        List<String> missing = new ArrayList<>(input.missing());
        if (input.batchCode().isBlank()) {
            missing.add("batch code");
        }
        if (!missing.isEmpty()) {
            report.accept(finding(
                    Finding.Kind.LOOK_AT_THIS,
                    "label.missing",
                    "Still missing: " + Words.list(missing) + ".",
                    "Fill them in before printing."));
        }
    }

    private static void durability(LabelInput input, Consumer<Finding> report) {
        if (input.durability().isEmpty()) {
            report.accept(finding(
                    Finding.Kind.LOOK_AT_THIS,
                    "label.durability",
                    "Neither a date nor a period after opening is printed: no reason is recorded.",
                    "Record a study or a reason, signed by a person. Above 30 months the law asks the period after"
                            + " opening, else the date."));
        }
    }

    private static Finding finding(Finding.Kind kind, String rule, String says, String mend) {
        return new Finding(kind, rule, ARTICLE_19, List.of(), List.of(), says, mend);
    }
}
