package stillroom.formulary.judgement.craft;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;
import stillroom.formulary.evaluation.Figure;
import stillroom.formulary.evaluation.Finding;
import stillroom.formulary.judgement.pot.Item;
import stillroom.formulary.judgement.pot.Pot;
import stillroom.formulary.judgement.pot.Share;
import stillroom.formulary.judgement.pot.Words;
import stillroom.formulary.material.Constituent;
import stillroom.formulary.material.Material;
import stillroom.formulary.material.Substance;

/** What is missing before anything can be said; a gap is never passed over in silence. */
final class KnowledgeChecks {
    private KnowledgeChecks() {}

    static void compositions(Pot pot, Consumer<Finding> report) {
        Set<String> unknown = Set.copyOf(pot.composition().unknown());
        tell(pot, unknown, report);
        List<String> strangers = pot.shares().stream()
                .filter(share -> share.substance().isEmpty())
                .map(Share::key)
                .toList();
        if (!strangers.isEmpty()) {
            report.accept(new Finding(
                    Finding.Kind.CANNOT_JUDGE,
                    "knowledge.substance",
                    CraftChecks.PRACTICE,
                    Pot.lines(pot.where(share -> share.substance().isEmpty())),
                    List.of(),
                    "Nothing is recorded about " + Words.list(strangers) + ".",
                    "Add the substance with its INCI name and tags."));
        }
    }

    private static void tell(Pot pot, Set<String> unknown, Consumer<Finding> report) {
        Set<String> names = new LinkedHashSet<>();
        Set<String> lines = new LinkedHashSet<>();
        for (Item item : pot.items()) {
            if (unknown.contains(item.portion().materialKey()) || containsUnknown(item, unknown)) {
                names.add(item.material().isPresent() ? item.name() : item.name() + " (no card)");
                lines.add(item.portion().lineId());
            }
        }
        if (names.isEmpty()) {
            return;
        }
        report.accept(new Finding(
                Finding.Kind.CANNOT_JUDGE,
                "knowledge.composition",
                CraftChecks.PRACTICE,
                List.copyOf(lines),
                List.of(Figure.exactly(
                        "Share without composition",
                        pot.composition().unknownFraction() * 100,
                        "%",
                        "sum of these lines as added")),
                "No composition for " + Words.list(List.copyOf(names)) + ".",
                "Enter the constituents from the data sheet."));
    }

    private static boolean containsUnknown(Item item, Set<String> unknown) {
        return item.material().stream()
                .flatMap(card -> card.composition().stream())
                .anyMatch(part -> part.substance().startsWith("material:")
                        && unknown.contains(part.substance().substring("material:".length())));
    }

    static void loops(Pot pot, Consumer<Finding> report) {
        for (String chain : pot.loops()) {
            report.accept(new Finding(
                    Finding.Kind.CANNOT_JUDGE,
                    "knowledge.loop",
                    CraftChecks.PRACTICE,
                    List.of(),
                    List.of(),
                    "A premix contains itself: " + chain + ".",
                    "Break the chain at one of these cards."));
        }
    }

    /** Perfumes without their table of allergens cannot be labelled. */
    static void perfume(Pot pot, Consumer<Finding> report) {
        List<Item> open = pot.items().stream()
                .filter(item -> item.material().isPresent()
                        && isOpenPerfume(pot, item.material().get()))
                .toList();
        if (open.isEmpty()) {
            return;
        }
        report.accept(new Finding(
                Finding.Kind.CANNOT_JUDGE,
                "knowledge.allergens",
                CraftChecks.PRACTICE,
                open.stream().map(item -> item.portion().lineId()).toList(),
                List.of(),
                "The allergens are open: no allergen table for "
                        + Words.list(open.stream().map(Item::name).distinct().toList()) + ".",
                "Enter the allergens from the certificate as parts of the perfume."));
    }

    private static boolean isOpenPerfume(Pot pot, Material card) {
        return card.composition().stream().noneMatch(part -> part.role() == Constituent.Role.FRAGRANCE_PART)
                && card.composition().stream()
                        .flatMap(part -> pot.book().substance(part.substance()).stream())
                        .anyMatch(KnowledgeChecks::hidesItsParts);
    }

    /** An oil or a compound; a single fragrance chemical is its own allergen table. */
    private static boolean hidesItsParts(Substance substance) {
        return substance.is("essential-oil")
                || (substance.is("fragrance") && substance.casNumbers().isEmpty());
    }
}
