package stillroom.desk.materials;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import stillroom.desk.shell.Format;
import stillroom.formulary.material.Material;

/** The revisions of a card with what each of them changed, newest first. */
public final class CardHistory {
    private CardHistory() {}

    /**
     * One revision.
     *
     * @param changed one sentence for each thing that differs from the revision before
     */
    public record Revision(int number, String day, List<String> changed) {
        public Revision {
            changed = List.copyOf(changed);
        }
    }

    /** @param revisions oldest first */
    static List<Revision> of(List<Material> revisions, Inci inci, String currency) {
        List<Revision> history = new ArrayList<>();
        for (int i = 0; i < revisions.size(); i++) {
            Material card = revisions.get(i);
            List<String> changed =
                    i == 0 ? List.of("First card.") : changed(revisions.get(i - 1), card, inci, currency);
            history.add(0, new Revision(card.revision(), Format.day(card.revisedOn()), changed));
        }
        return List.copyOf(history);
    }

    private static List<String> changed(Material before, Material after, Inci inci, String currency) {
        Map<String, String> old = facts(before, inci, currency);
        Map<String, String> now = facts(after, inci, currency);
        List<String> changed = new ArrayList<>();
        now.forEach((what, value) -> {
            String was = Objects.requireNonNullElse(old.get(what), "");
            if (!was.equals(value)) {
                changed.add(what + ": " + shown(was) + " → " + shown(value) + ".");
            }
        });
        if (changed.isEmpty() && !before.sources().equals(after.sources())) {
            changed.add("Sources only.");
        }
        return changed;
    }

    private static String shown(String value) {
        return value.isEmpty() ? "nothing" : value;
    }

    private static Map<String, String> facts(Material card, Inci inci, String currency) {
        Map<String, String> facts = new LinkedHashMap<>();
        facts.put("Name", card.name());
        facts.put("Family", Format.words(card.family()));
        for (Fact fact : Fact.values()) {
            facts.put(fact.words(), "");
        }
        facts.put(CardFacts.CERTIFICATE, "");
        CardFacts.of(card).forEach(row -> facts.put(row.words(), row.value()));
        facts.put(Fact.COMPOSITION.words(), composition(card, inci));
        facts.put(Fact.CAUTIONS.words(), String.join(" ", card.cautions()));
        facts.put("Grade", card.grade());
        facts.put("Supplier", card.supplier());
        facts.put(
                "Price", card.price().map(price -> Words.price(price, currency)).orElse(""));
        return facts;
    }

    private static String composition(Material card, Inci inci) {
        return String.join(
                "; ",
                card.composition().stream()
                        .map(part -> inci.name(part.substance()) + " " + Words.share(part.massFraction()) + " ("
                                + Words.role(part.role()) + ")")
                        .toList());
    }
}
