package stillroom.desk.sidebyside;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import stillroom.desk.batches.BatchWork;
import stillroom.desk.batches.ReadingRows;
import stillroom.desk.batches.ReadingRows.ReadingRow;
import stillroom.desk.products.Amounts;
import stillroom.desk.shell.Desk;
import stillroom.desk.shell.Format;
import stillroom.desk.shell.Judgement;
import stillroom.desk.trials.Studies;
import stillroom.formulary.evaluation.Evaluation;
import stillroom.formulary.evaluation.Portion;
import stillroom.formulary.evaluation.Subject;
import stillroom.formulary.formula.FormulaVersion;
import stillroom.formulary.formula.Product;
import stillroom.formulary.judgement.Subjects;
import stillroom.formulary.material.MaterialBook;
import stillroom.formulary.material.Substance;

/**
 * One version with all that is compared.
 *
 * @param batches made from it, newest first
 * @param called as a run of trials; empty where it is none
 * @param measured in a set of trials that it is a run of, with what was set
 */
record Version(
        Product product,
        FormulaVersion version,
        MaterialBook book,
        Subject subject,
        Evaluation evaluation,
        Amounts amounts,
        List<BatchWork> batches,
        String called,
        Map<String, String> measured) {
    static Version of(Desk desk, Product product, FormulaVersion version) {
        MaterialBook book = desk.ledger().materials().book(version);
        Subject subject = Subjects.of(version.formula(), product.brief());
        Evaluation evaluation = Judgement.of(desk, subject, book);
        List<BatchWork> batches = desk.ledger().batches().fromVersion(product.id(), version.number()).stream()
                .map(row -> BatchWork.of(desk, row.batch().id()))
                .toList();
        Amounts amounts = Amounts.of(evaluation, desk.ledger().settings().read());
        String called = Studies.runNames(desk).getOrDefault(product.id() + "." + version.number(), "");
        return new Version(
                product, version, book, subject, evaluation, amounts, batches, called, Trialled.of(desk, version));
    }

    String address() {
        return product.id() + "." + version.number();
    }

    String name() {
        return called.isEmpty() ? product.name() + ", version " + version.number() : called;
    }

    /** Percent of each material, by its name, in working order. */
    Map<String, String> lines() {
        Map<String, Double> percents = new LinkedHashMap<>();
        for (Portion portion : subject.portions()) {
            String name = book.material(portion.materialKey())
                    .map(card -> card.name())
                    .orElse(portion.materialKey());
            percents.merge(name, portion.share().nominal() * 100, Double::sum);
        }
        Map<String, String> shown = new LinkedHashMap<>();
        percents.forEach((name, percent) -> shown.put(name, Format.figure(percent, 2)));
        return shown;
    }

    /** Percent of each substance in the pot, by INCI name. */
    Map<String, String> substances() {
        Map<String, String> shown = new LinkedHashMap<>();
        evaluation.composition().shares().stream()
                .sorted((a, b) ->
                        Double.compare(b.inThePot().nominal(), a.inThePot().nominal()))
                .forEach(share -> shown.put(
                        book.substance(share.substance())
                                .map(Substance::inciName)
                                .filter(name -> !name.isEmpty())
                                .orElse(share.substance()),
                        percent(share.inThePot().lower() * 100, share.inThePot().upper() * 100)));
        return shown;
    }

    private static String percent(double low, double high) {
        return high > 0 && high < 0.0005 ? "under 0.001" : Format.range(low, high, 3);
    }

    /** Total, water, active matter, pH, cost and what else is reckoned. */
    Map<String, String> figures() {
        Map<String, String> shown = new LinkedHashMap<>();
        amounts.figures()
                .forEach(row ->
                        shown.put(row.name(), row.isKnown() ? (row.shown() + " " + row.unit()).strip() : "not known"));
        shown.put("Warnings", amounts.warningsInWords());
        return shown;
    }

    /** Readings of its batches, those taken alike in one row; struck ones left out. */
    Map<String, String> readings() {
        Map<String, List<String>> read = new LinkedHashMap<>();
        for (BatchWork work : batches) {
            for (ReadingRow reading : ReadingRows.of(work)) {
                String name = reading.how().isEmpty() ? reading.kind() : reading.kind() + ", " + reading.how();
                String value = (reading.value() + " " + reading.words()).strip();
                read.computeIfAbsent(name, none -> new ArrayList<>())
                        .add(value + " (" + work.batch().code() + ")");
            }
        }
        Map<String, String> shown = new LinkedHashMap<>();
        read.forEach((kind, values) -> shown.put(kind, String.join(", then ", values)));
        return shown;
    }
}
