package stillroom.desk.sidebyside;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stillroom.desk.batches.BatchWork;
import stillroom.desk.products.Amounts;
import stillroom.desk.shell.Desk;
import stillroom.desk.shell.Format;
import stillroom.desk.shell.Judgement;
import stillroom.formulary.batch.BatchEvent.ReadingTaken;
import stillroom.formulary.batch.LogEntry;
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
 * @param batch its newest batch, if it was made
 */
record Version(
        Product product,
        FormulaVersion version,
        MaterialBook book,
        Subject subject,
        Evaluation evaluation,
        Amounts amounts,
        Optional<BatchWork> batch) {
    static Version of(Desk desk, Product product, FormulaVersion version) {
        MaterialBook book = version.kept()
                ? desk.ledger().materials().book(version.cards())
                : desk.ledger().materials().book();
        Subject subject = Subjects.of(version.formula(), product.brief());
        Evaluation evaluation = Judgement.of(desk, subject, book);
        Optional<BatchWork> batch = desk.ledger().batches().fromVersion(product.id(), version.number()).stream()
                .findFirst()
                .map(row -> BatchWork.of(desk, row.batch().id()));
        Amounts amounts = Amounts.of(evaluation, desk.ledger().settings().read());
        return new Version(product, version, book, subject, evaluation, amounts, batch);
    }

    String address() {
        return product.id() + "." + version.number();
    }

    String name() {
        return product.name() + ", version " + version.number();
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
                        Format.range(
                                share.inThePot().lower() * 100, share.inThePot().upper() * 100, 3)));
        return shown;
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

    /** Readings of the newest batch by kind, the latest last; struck ones left out. */
    Map<String, String> readings() {
        Map<String, List<String>> read = new LinkedHashMap<>();
        batch.ifPresent(work -> {
            for (LogEntry entry : work.log()) {
                if (entry.event() instanceof ReadingTaken taken
                        && taken.value().isPresent()
                        && !work.state().struck().contains(entry.number())) {
                    read.computeIfAbsent(Format.words(taken.kind()), none -> new ArrayList<>())
                            .add((Format.figure(taken.value().get(), 2) + " " + taken.unit()).strip());
                }
            }
        });
        Map<String, String> shown = new LinkedHashMap<>();
        read.forEach((kind, values) -> shown.put(kind, String.join(", then ", values)));
        return shown;
    }
}
