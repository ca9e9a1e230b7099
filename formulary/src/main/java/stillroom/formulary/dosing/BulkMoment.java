package stillroom.formulary.dosing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stillroom.formulary.batch.BatchEvent.Purpose;
import stillroom.formulary.batch.Content;
import stillroom.formulary.batch.Evaporation;
import stillroom.formulary.batch.Mixture;
import stillroom.formulary.evaluation.Portion;
import stillroom.formulary.evaluation.Subject;
import stillroom.formulary.formula.Brief;
import stillroom.formulary.formula.Formula;
import stillroom.formulary.formula.Phase;
import stillroom.formulary.formula.ProductType;
import stillroom.formulary.material.MassFraction;
import stillroom.formulary.material.MaterialBook;
import stillroom.formulary.quantity.Grams;
import stillroom.formulary.quantity.Interval;

/**
 * What stands in a vessel at one moment: the liquid, and the acid and base poured into it since an entry of the log.
 *
 * @param liquid all but those additions
 */
public record BulkMoment(Mixture liquid, List<InBulk> additions) {
    public BulkMoment {
        additions = List.copyOf(additions);
    }

    static BulkMoment of(Mixture mixture, int since) {
        List<Content> liquid = new ArrayList<>();
        Map<String, InBulk> additions = new LinkedHashMap<>();
        for (Content content : mixture.contents()) {
            if (content.entry() > since && corrects(content.purpose())) {
                additions.merge(
                        content.materialKey() + " " + content.lot().orElse(""),
                        new InBulk(content.materialKey(), content.lot(), content.mass()),
                        (one, other) -> new InBulk(
                                one.materialKey(), one.lot(), one.mass().plus(other.mass())));
            } else {
                liquid.add(content);
            }
        }
        return new BulkMoment(new Mixture(liquid, mixture.lost()), List.copyOf(additions.values()));
    }

    static boolean corrects(Purpose purpose) {
        return purpose == Purpose.CORRECTION_ACID || purpose == Purpose.CORRECTION_BASE;
    }

    /** The liquid without the additions, less what evaporated [g]. */
    public double liquidGrams() {
        return liquid.net().doubleValue();
    }

    /** Everything that a balance would show [g]. */
    public double grams() {
        return liquidGrams() + added().doubleValue();
    }

    /** All acid and base together [g]. */
    public Grams added() {
        return Grams.sum(additions.stream().map(InBulk::mass).toList());
    }

    /** The liquid alone, as a subject of the same evaluation as a formula. */
    Subject liquidAlone(MaterialBook book) {
        return new BulkMoment(liquid, List.of())
                .subject(Brief.of(ProductType.OTHER_RINSE_OFF), Formula.EMPTY, book, Optional.empty());
    }

    /** The same with more of a corrector poured in. */
    public BulkMoment plus(InBulk more) {
        List<InBulk> all = new ArrayList<>(additions);
        all.add(more);
        return new BulkMoment(liquid, all);
    }

    /** All that is in the vessel, as a subject of the same evaluation as a formula. */
    public Subject subject(Brief brief, Formula formula, MaterialBook book, Optional<Interval> pH) {
        double whole = liquid.asAdded().plus(added()).doubleValue();
        List<Portion> portions = new ArrayList<>();
        byLine().forEach((line, mass) -> {
            double share = mass.doubleValue() / whole;
            if (share > 0 && share <= 1) {
                portions.add(
                        new Portion(line.id(), phase(formula, line), line.materialKey(), MassFraction.exactly(share)));
            }
        });
        return new Subject(brief, portions, formula.phases(), lost(book, whole), pH);
    }

    private record LineOf(String id, String materialKey) {}

    private Map<LineOf, Grams> byLine() {
        Map<LineOf, Grams> grams = new LinkedHashMap<>();
        for (Content content : liquid.contents()) {
            String id = content.lineId().orElse("made-" + content.materialKey());
            grams.merge(new LineOf(id, content.materialKey()), content.mass(), Grams::plus);
        }
        for (InBulk addition : additions) {
            grams.merge(
                    new LineOf("corrected-" + addition.materialKey(), addition.materialKey()),
                    addition.mass(),
                    Grams::plus);
        }
        return grams;
    }

    private static String phase(Formula formula, LineOf line) {
        return formula.phases().stream()
                .filter(phase -> phase.lines().stream().anyMatch(one -> one.id().equals(line.id())))
                .map(Phase::name)
                .findFirst()
                .orElse("corrections");
    }

    private double lost(MaterialBook book, double whole) {
        boolean asWater = new Evaporation(book).of(liquid).asWater();
        return asWater && liquid.lost().signum() > 0 ? liquid.lost().doubleValue() / whole : 0;
    }
}
