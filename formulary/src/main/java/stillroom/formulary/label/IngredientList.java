package stillroom.formulary.label;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import stillroom.formulary.judgement.pot.Pot;
import stillroom.formulary.material.Family;
import stillroom.formulary.material.MassFraction;
import stillroom.formulary.material.Substance;

/**
 * The ingredient list in the order of the market: descending as added, then what the market lets float (ours: still
 * descending), then allergens, then colourants.
 */
final class IngredientList {
    private final Pot pot;
    private final MarketForm form;
    private final Names names;
    private final Map<String, LabelEntry> entries = new LinkedHashMap<>();

    private IngredientList(Pot pot, Names names) {
        this.pot = pot;
        this.form = MarketForm.of(pot.brief().market());
        this.names = names;
    }

    static List<LabelEntry> of(Pot pot, Named.Sums named, Names names) {
        IngredientList list = new IngredientList(pot, names);
        named.shares().forEach((substance, share) -> list.put(substance, share, list.block(substance, share)));
        if (list.form.allergens()) {
            list.addAllergens();
        }
        return list.entries.values().stream()
                .map(list::settled)
                .sorted(Comparator.comparing(LabelEntry::block)
                        .thenComparing(entry -> -entry.share().nominal())
                        .thenComparing(LabelEntry::name))
                .toList();
    }

    private LabelEntry.Block block(String substance, MassFraction share) {
        if (colours(substance)) {
            return LabelEntry.Block.COLOURANT;
        }
        return form.isFree(share.nominal()) ? LabelEntry.Block.FREE : LabelEntry.Block.ORDERED;
    }

    /** White pigments, filters and powders are colourants only where a card of the colour shelf brings them. */
    private boolean colours(String substance) {
        Optional<Substance> known = pot.book().substance(substance).filter(one -> one.is("colourant"));
        boolean onlyColours =
                known.filter(one -> !one.is("uv-filter") && !one.is("powder")).isPresent();
        return onlyColours
                || (known.isPresent()
                        && pot.items(Family.COLOURANT).stream()
                                .flatMap(item -> item.material().stream())
                                .flatMap(card -> card.composition().stream())
                                .anyMatch(part -> part.substance().equals(substance)));
    }

    private void put(String substance, MassFraction share, LabelEntry.Block block) {
        String name =
                block == LabelEntry.Block.COLOURANT ? names.ofColourant(substance) : names.of(substance, form.nano());
        LabelEntry before = entries.get(name);
        entries.put(
                name,
                before == null
                        ? new LabelEntry(name, List.of(substance), share, block)
                        : joined(before, substance, share));
    }

    private static LabelEntry joined(LabelEntry before, String substance, MassFraction share) {
        Set<String> substances = new LinkedHashSet<>(before.substances());
        substances.add(substance);
        MassFraction sum = new MassFraction(
                Math.min(1, before.share().lower() + share.lower()),
                Math.min(1, before.share().nominal() + share.nominal()),
                Math.min(1, before.share().upper() + share.upper()));
        return new LabelEntry(before.name(), List.copyOf(substances), sum, before.block());
    }

    /** Two substances under one name can pass 1 % together. */
    private LabelEntry settled(LabelEntry entry) {
        boolean byWeight = entry.block() == LabelEntry.Block.FREE || entry.block() == LabelEntry.Block.ORDERED;
        LabelEntry.Block block = byWeight
                ? form.isFree(entry.share().nominal()) ? LabelEntry.Block.FREE : LabelEntry.Block.ORDERED
                : entry.block();
        return new LabelEntry(entry.name(), entry.substances(), entry.share(), block);
    }

    private void addAllergens() {
        Set<String> printed = new LinkedHashSet<>();
        entries.values().forEach(entry -> printed.add(entry.name()));
        for (Allergens.Declared allergen : Allergens.of(pot, pot.asOf())) {
            List<String> already = new ArrayList<>(allergen.substances());
            already.removeIf(substance -> !printed.contains(names.of(substance, form.nano())));
            if (already.isEmpty() && printed.add(allergen.name())) {
                entries.put(
                        allergen.name(),
                        new LabelEntry(
                                allergen.name(), allergen.substances(), allergen.share(), LabelEntry.Block.ALLERGEN));
            }
        }
    }
}
