package stillroom.desk.materials;

import static stillroom.desk.materials.ConstituentRows.field;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import stillroom.desk.shell.Input;
import stillroom.formulary.material.CardsInside;
import stillroom.formulary.material.Constituent;
import stillroom.formulary.material.MassFraction;
import stillroom.formulary.material.Material;
import stillroom.formulary.material.Substance;
import stillroom.formulary.quantity.Percent;

/** Reads the rows of a composition; a name that no substance bears becomes an own substance once the maker says so. */
final class CompositionReader {
    private static final double ROUNDING_PERCENT = 1e-6;

    private final Input input;
    private final Inci inci;
    private final Map<String, Substance> added = new HashMap<>();
    private final Map<String, Integer> rowOf = new HashMap<>();
    private final List<Constituent> constituents = new ArrayList<>();

    CompositionReader(Input input, Inci inci) {
        this.input = input;
        this.inci = inci;
    }

    /** @param card key and name of the card that is read: it cannot stand in itself */
    List<Constituent> read(Material card) {
        int rows = ConstituentRows.count(input.typed().values());
        for (int row = 0; row < rows; row++) {
            row(row);
        }
        judgeSum();
        judgeDoubles(rows);
        judgeLoop(card);
        return List.copyOf(constituents);
    }

    /** The substances that are not in the book yet. */
    List<Substance> added() {
        return List.copyOf(added.values());
    }

    private void row(int row) {
        String name = input.text(field(row, "name"));
        Optional<MassFraction> share = share(row, name);
        Constituent.Role role =
                input.choice(field(row, "role"), "Role", Constituent.Role.class).orElse(Constituent.Role.INGREDIENT);
        if (name.isEmpty()) {
            if (share.isPresent()) {
                input.refuse(field(row, "name"), "An INCI name is missing for this share.");
            }
            return;
        }
        Optional<String> key = inside(name).or(() -> substance(row, name));
        if (key.isPresent() && share.isPresent()) {
            constituents.add(new Constituent(key.get(), share.get(), role));
            rowOf.put(key.get(), row);
        }
    }

    /** An INCI name goes before a card of the same name, unless the card is asked for. */
    private Optional<String> inside(String name) {
        return InnerCards.isMarked(name) || inci.named(name).isEmpty()
                ? inci.cards().named(name).map(InnerCards::substance)
                : Optional.empty();
    }

    private Optional<String> substance(int row, String name) {
        if (InnerCards.isMarked(name)) {
            return input.refuse(field(row, "name"), "No card on the shelf has this name, or more than one has it.");
        }
        Optional<Substance> substance = inci.named(name).or(() -> new NewSubstance(input, inci, row).read(name));
        substance
                .filter(known -> inci.substance(known.key()).isEmpty())
                .ifPresent(known -> added.put(known.key(), known));
        return substance.map(Substance::key);
    }

    private void judgeLoop(Material card) {
        Material asked = card.withComposition(constituents.toArray(new Constituent[0]));
        List<String> chain = CardsInside.loop(asked, inci.book());
        if (!chain.isEmpty()) {
            String names = chain.stream()
                    .map(key ->
                            key.equals(card.key()) ? card.name() : inci.cards().name(key))
                    .collect(Collectors.joining(" → "));
            input.refuse(
                    field(rowOf.getOrDefault(CardsInside.MARK + chain.get(1), 0), "name"),
                    "A card cannot hold itself: " + names + ".");
        }
    }

    private Optional<MassFraction> share(int row, String name) {
        Optional<BigDecimal> lower = percent(row, "lower", "Lowest share");
        Optional<BigDecimal> nominal = percent(row, "nominal", "Nominal share");
        Optional<BigDecimal> upper = percent(row, "upper", "Highest share");
        if (lower.isEmpty() && nominal.isEmpty() && upper.isEmpty()) {
            if (!name.isEmpty() && !refused(row)) {
                input.refuse(
                        field(row, "nominal"), "The share is missing: the nominal one, or the lowest and highest.");
            }
            return Optional.empty();
        }
        if (upper.isEmpty() && lower.isPresent() && nominal.isEmpty()) {
            return input.refuse(field(row, "upper"), "The highest share is missing.");
        }
        BigDecimal low = lower.orElse(upper.isPresent() ? BigDecimal.ZERO : nominal.orElse(BigDecimal.ZERO));
        BigDecimal high = upper.orElse(nominal.orElse(low));
        BigDecimal middle = nominal.orElse(low.add(high).divide(BigDecimal.valueOf(2)));
        if (low.compareTo(middle) > 0 || middle.compareTo(high) > 0) {
            return input.refuse(field(row, "upper"), "Lowest, nominal and highest share must ascend.");
        }
        return Optional.of(new MassFraction(fraction(low), fraction(middle), fraction(high)));
    }

    private boolean refused(int row) {
        return List.of("lower", "nominal", "upper").stream().anyMatch(part -> input.hasProblem(field(row, part)));
    }

    private Optional<BigDecimal> percent(int row, String part, String what) {
        return input.percent(field(row, part), what).map(Percent::value);
    }

    private static double fraction(BigDecimal percent) {
        return percent.movePointLeft(2).doubleValue();
    }

    private void judgeSum() {
        double nominal = constituents.stream()
                        .mapToDouble(part -> part.massFraction().nominal())
                        .sum()
                * 100;
        if (nominal > 100 + ROUNDING_PERCENT) {
            input.refuse(
                    ConstituentRows.COUNT,
                    "The nominal shares add up to " + Words.plain(Math.round(nominal * 1e4) / 1e4)
                            + " %, which is more than the whole.");
        }
    }

    private void judgeDoubles(int rows) {
        Set<String> seen = new HashSet<>();
        for (int row = 0; row < rows; row++) {
            String name = input.text(field(row, "name"));
            String key =
                    inside(name).or(() -> inci.named(name).map(Substance::key)).orElse(Slug.of(name));
            if (!name.isEmpty() && !seen.add(key)) {
                input.refuse(field(row, "name"), name + " stands here twice; put its shares together in one row.");
            }
        }
    }
}
