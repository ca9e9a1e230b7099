package stillroom.formulary.reformulation;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stillroom.formulary.evaluation.Portion;
import stillroom.formulary.formula.Formula;
import stillroom.formulary.judgement.Subjects;
import stillroom.formulary.material.Material;

/**
 * Natural origin of a formula by ISO 16128-2 where some cards have no index: such an index lies between 0 and 1, so the content lies
 * between what is guaranteed and what it could be at most.
 *
 * @param guaranteed each unknown index counted as 0 [%]
 * @param atMost each unknown index counted as 1 [%]
 * @param unknown materials without an index, that of which there is most first, as its index moves the content most
 */
public record Origin(double guaranteed, double atMost, List<Unknown> unknown) {
    private static final double PERCENT = 100;

    public Origin {
        unknown = List.copyOf(unknown);
    }

    /** @param percent of the formula, by which its index could raise the content */
    public record Unknown(String materialKey, String name, double percent) {}

    public boolean isKnown() {
        return unknown.isEmpty();
    }

    static Origin of(Recast recast, Formula formula) {
        double guaranteed = 0;
        Map<String, Unknown> unknown = new LinkedHashMap<>();
        for (Portion portion : Subjects.of(formula, recast.brief()).portions()) {
            double percent = PERCENT * portion.share().nominal();
            Optional<Material> card = recast.book().material(portion.materialKey());
            Optional<Double> index = card.flatMap(Material::naturalOriginIndex);
            guaranteed += percent * index.orElse(0.0);
            if (index.isEmpty() && percent > 0) {
                String key = portion.materialKey();
                String name = card.map(Material::name).orElse(key);
                unknown.merge(
                        key,
                        new Unknown(key, name, percent),
                        (one, more) -> new Unknown(key, name, one.percent() + more.percent()));
            }
        }
        List<Unknown> largest = new ArrayList<>(unknown.values());
        largest.sort(Comparator.comparingDouble(each -> -each.percent()));
        double open = largest.stream().mapToDouble(Unknown::percent).sum();
        return new Origin(guaranteed, guaranteed + open, largest);
    }
}
