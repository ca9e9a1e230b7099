package stillroom.formulary.reformulation;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import stillroom.formulary.evaluation.Evaluation;
import stillroom.formulary.formula.Amount;
import stillroom.formulary.formula.Brief;
import stillroom.formulary.formula.Formula;
import stillroom.formulary.formula.Line;
import stillroom.formulary.formula.Phase;
import stillroom.formulary.formula.ProductType;
import stillroom.formulary.judgement.Evaluator;
import stillroom.formulary.judgement.Subjects;
import stillroom.formulary.judgement.pot.PriceBook;
import stillroom.formulary.material.Material;
import stillroom.formulary.material.StarterLibrary;
import stillroom.formulary.quantity.Grams;
import stillroom.formulary.quantity.Interval;
import stillroom.formulary.quantity.Money;
import stillroom.formulary.quantity.Price;

/** An invented oil-in-water lotion with two non-ionic emulsifiers, two oils and two humectants; invented prices, the library as the shelf. */
final class Lotion {
    static final StarterLibrary BOOK = StarterLibrary.load();
    static final Evaluator EVALUATOR = Evaluator.standard();
    static final LocalDate DAY = LocalDate.of(2026, 11, 25);

    private Lotion() {}

    static Formula formula() {
        Phase water = new Phase(
                "a",
                "Water phase",
                List.of(
                        new Line("w", "water-purified", new Amount.ToHundred(), ""),
                        line("g", "glycerin-99", "3"),
                        line("p", "propanediol", "2"),
                        line("x", "xanthan-gum", "0.25")),
                List.of());
        Phase oil = new Phase(
                "b",
                "Oil phase",
                List.of(
                        line("s", "sunflower-oil", "8"),
                        line("c", "caprylic-capric-triglyceride", "5"),
                        line("e", "polysorbate-60", "1.6"),
                        line("f", "sorbitan-stearate", "2.4")),
                List.of());
        Phase finish =
                new Phase("c", "Cool-down", List.of(line("k", "phenoxyethanol-ethylhexylglycerin", "1")), List.of());
        return new Formula(List.of(water, oil, finish));
    }

    private static Line line(String id, String key, String percent) {
        return new Line(id, key, Amount.fixed(percent), "");
    }

    static Recast recast() {
        Brief brief = new Brief(
                ProductType.BODY_LOTION,
                Set.of(Brief.People.ADULTS),
                "hands",
                "",
                Optional.of(new Interval(5, 5.8)),
                Optional.of(5.4),
                Optional.empty(),
                List.of(),
                "",
                "EU");
        PriceBook prices = key -> Optional.of(new Price(
                Money.of(key.equals("water-purified") ? "0.02" : String.valueOf(0.5 + (key.hashCode() & 63) / 40.0)),
                Grams.of("100")));
        return new Recast(formula(), brief, BOOK, prices, EVALUATOR, DAY);
    }

    static Evaluation evaluation() {
        Recast lotion = recast();
        return EVALUATOR.evaluate(Subjects.of(lotion.formula(), lotion.brief()), BOOK, lotion.prices(), DAY);
    }

    static Shelf shelf() {
        Map<String, Double> onHand = new HashMap<>();
        BOOK.materials().stream().map(Material::key).forEach(key -> onHand.put(key, 1000.0));
        return new Shelf(onHand, OptionalDouble.of(1000));
    }
}
