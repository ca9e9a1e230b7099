package stillroom.formulary.plan;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import stillroom.formulary.formula.Amount;
import stillroom.formulary.formula.Formula;
import stillroom.formulary.formula.Line;
import stillroom.formulary.formula.Phase;
import stillroom.formulary.formula.ReadingKind;
import stillroom.formulary.formula.Step;
import stillroom.formulary.material.Family;
import stillroom.formulary.material.Lot;
import stillroom.formulary.material.Material;
import stillroom.formulary.material.MaterialBook;
import stillroom.formulary.material.Substance;
import stillroom.formulary.quantity.Grams;
import stillroom.formulary.quantity.Percent;
import stillroom.formulary.quantity.PercentRange;

/** Invented materials, formulas and lots for the tests of plan and batch. */
public final class Workbench {
    public static final LocalDate TODAY = LocalDate.of(2026, 3, 1);
    public static final Balance KITCHEN = new Balance("bench balance", g("0.1"), Optional.empty(), g("5000"));
    public static final Balance FINE = new Balance("fine balance", g("0.01"), Optional.empty(), g("500"));

    private Workbench() {}

    /** Cards whose key begins with its family, such as {@code preservative-1}. */
    public static final MaterialBook BOOK = new MaterialBook() {
        @Override
        public Optional<Material> material(String key) {
            if (key.startsWith("unknown")) {
                return Optional.empty();
            }
            String family = key.contains("-") ? key.substring(0, key.indexOf('-')) : key;
            return Optional.of(Material.named(
                    key, key.replace('-', ' '), Family.valueOf(family.toUpperCase(java.util.Locale.ROOT))));
        }

        @Override
        public Optional<Substance> substance(String key) {
            return Optional.empty();
        }

        @Override
        public List<Material> materials() {
            return List.of();
        }

        @Override
        public List<Substance> substances() {
            return List.of();
        }
    };

    public static Grams g(String figure) {
        return Grams.of(figure);
    }

    public static Line line(String id, String material, Amount amount) {
        return new Line(id, material, amount, "");
    }

    public static Step step(String id, String doing) {
        return new Step(id, doing, Optional.empty(), "", Optional.empty(), "", "");
    }

    public static Lot lot(String code, String material, Lot.State state, String expires) {
        return new Lot(
                code,
                material,
                "",
                "",
                g("1000"),
                LocalDate.of(2025, 6, 1),
                Optional.empty(),
                expires.isEmpty() ? Optional.empty() : Optional.of(LocalDate.parse(expires)),
                Optional.empty(),
                state,
                "");
    }

    /** Water q.s., humectant, preservative, an acid to pH, in two phases. */
    public static Formula toner() {
        Phase water = new Phase(
                "a",
                "water",
                List.of(
                        line("w", "water", new Amount.ToHundred()),
                        line("h", "humectant-1", Amount.fixed("3")),
                        line("s", "salt-1", Amount.fixed("0.5"))),
                List.of(step("a1", "Stir until clear.")));
        Phase rest = new Phase(
                "b",
                "cool",
                List.of(
                        line("p", "preservative-1", Amount.fixed("0.9")),
                        line(
                                "c",
                                "acid-1",
                                new Amount.ToReading(
                                        ReadingKind.PH, Percent.of("0.2"), PercentRange.of("0.1", "0.4")))),
                List.of(step("b1", "Stir in.")));
        return new Formula(List.of(water, rest));
    }

    /** A formula that adds up to 100 %, with or without a q.s. line. */
    public static Formula random(Random random) {
        boolean toHundred = random.nextInt(3) > 0;
        int count = 2 + random.nextInt(14);
        List<Line> lines = new ArrayList<>();
        BigDecimal left = BigDecimal.valueOf(100);
        String[] families = {"humectant", "preservative", "oil", "active", "salt"};
        for (int i = 0; i < count; i++) {
            BigDecimal percent = BigDecimal.valueOf(random.nextInt(600), random.nextInt(3) + 1)
                    .min(left);
            left = left.subtract(percent);
            String key = families[random.nextInt(families.length)] + "-" + random.nextInt(4);
            lines.add(line("l" + i, key, new Amount.Fixed(new Percent(percent))));
        }
        lines.add(line("w", "water", toHundred ? new Amount.ToHundred() : new Amount.Fixed(new Percent(left))));
        int cut = random.nextInt(lines.size());
        return new Formula(List.of(
                new Phase("a", "first", lines.subList(0, cut), List.of()),
                new Phase("b", "second", lines.subList(cut, lines.size()), List.of())));
    }
}
