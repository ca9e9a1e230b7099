package stillroom.desk.law;

import java.math.BigDecimal;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import stillroom.formulary.formula.Amount;
import stillroom.formulary.formula.Brief;
import stillroom.formulary.formula.Formula;
import stillroom.formulary.formula.Line;
import stillroom.formulary.formula.Phase;
import stillroom.formulary.formula.ProductType;
import stillroom.formulary.material.Material;
import stillroom.formulary.quantity.Interval;
import stillroom.formulary.quantity.Percent;
import stillroom.ledger.Ledger;

/** Invented formulas of 15 to 40 lines from the starter library, the same for the same seed. */
final class ManyFormulas {
    private static final int FEWEST = 15;
    private static final int MOST = 40;
    private static final String[] MARKETS = {"EU", "EU", "EU", "UK", "US"};

    private ManyFormulas() {}

    /** Stores so many products with one version each, every second one kept. */
    static void store(Ledger ledger, int products, long seed) {
        Random random = new Random(seed);
        List<Material> cards = new ArrayList<>(ledger.materials().book().materials());
        for (int made = 0; made < products; ) {
            int batch = Math.min(500, products - made);
            int first = made;
            ledger.together(() -> {
                for (int i = 0; i < batch; i++) {
                    store(ledger, random, cards, first + i);
                }
                return batch;
            });
            made += batch;
        }
    }

    private static void store(Ledger ledger, Random random, List<Material> cards, int number) {
        long product = ledger.products()
                .add("Invented product " + number, brief(random), "")
                .id();
        ledger.products()
                .newVersion(
                        product, Optional.empty(), formula(random, cards), "", Instant.parse("2026-11-01T08:00:00Z"));
        if (number % 2 == 0) {
            ledger.products().keep(product, 1, 1);
        }
    }

    private static Brief brief(Random random) {
        ProductType[] types = ProductType.values();
        return new Brief(
                types[random.nextInt(types.length)],
                Set.of(Brief.People.ADULTS),
                "",
                "",
                random.nextInt(3) == 0 ? Optional.of(new Interval(4.5, 5.5)) : Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                List.of(),
                "",
                MARKETS[random.nextInt(MARKETS.length)]);
    }

    static Formula formula(Random random, List<Material> cards) {
        int lines = FEWEST + random.nextInt(MOST - FEWEST + 1);
        List<Material> chosen = new ArrayList<>(cards);
        Collections.shuffle(chosen, random);
        List<Line> all = new ArrayList<>();
        all.add(new Line("l0", "water-purified", new Amount.ToHundred(), ""));
        for (int i = 1; i < lines; i++) {
            BigDecimal percent = BigDecimal.valueOf(1 + random.nextInt(200), 2);
            all.add(new Line("l" + i, chosen.get(i).key(), new Amount.Fixed(new Percent(percent)), ""));
        }
        int cut = all.size() / 2;
        return new Formula(List.of(
                new Phase("a", "A", all.subList(0, cut), List.of()),
                new Phase("b", "B", all.subList(cut, all.size()), List.of())));
    }
}
