package stillroom.desk.products;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.Collectors;
import stillroom.desk.shell.Format;
import stillroom.desk.shell.Judgement;
import stillroom.formulary.evaluation.Evaluation;
import stillroom.formulary.evaluation.Portion;
import stillroom.formulary.evaluation.Subject;
import stillroom.formulary.formula.Amount;
import stillroom.formulary.formula.Line;
import stillroom.formulary.judgement.Subjects;
import stillroom.formulary.material.Substance;

/**
 * One of two versions side by side.
 *
 * @param substances what is in the pot, by INCI name, largest first [%]
 * @param percents what each line comes to, by id [%]
 */
record Side(Cards cards, Amounts amounts, Map<String, Double> percents, Map<String, Double> substances, int decimals) {
    static Side of(Editing editing) {
        Subject subject =
                Subjects.of(editing.version().formula(), editing.product().brief());
        Evaluation judged = Judgement.of(editing.desk(), subject, editing.book());
        return new Side(
                editing.cards(),
                Amounts.of(judged, editing.workshop()),
                subject.portions().stream()
                        .collect(Collectors.toMap(
                                Portion::lineId, portion -> portion.share().nominal() * 100, (one, other) -> one)),
                substances(judged, editing),
                editing.decimals());
    }

    private static Map<String, Double> substances(Evaluation judged, Editing editing) {
        Map<String, Double> substances = new LinkedHashMap<>();
        judged.composition()
                .shares()
                .forEach(share -> substances.merge(
                        editing.book()
                                .substance(share.substance())
                                .map(Substance::inciName)
                                .orElse(share.substance()),
                        100 * share.inThePot().nominal(),
                        Double::sum));
        return substances;
    }

    String name(Line line) {
        return cards.name(line.materialKey());
    }

    /** The amount in words; of the q.s. line also what it comes to. */
    String amount(Line line) {
        String words = Differences.amount(line.amount(), decimals);
        return line.amount() instanceof Amount.ToHundred ? percent(line) + "\u00a0%, " + words : words;
    }

    String percent(Line line) {
        return Format.figure(percents.getOrDefault(line.id(), 0.0), decimals);
    }
}
