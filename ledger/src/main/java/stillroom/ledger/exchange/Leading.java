package stillroom.ledger.exchange;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import stillroom.formulary.evaluation.Finding;
import stillroom.formulary.formula.Formula;
import stillroom.formulary.formula.Line;
import stillroom.formulary.formula.Phase;
import stillroom.formulary.material.Constituent;
import stillroom.formulary.material.Family;
import stillroom.formulary.material.Material;
import stillroom.formulary.material.Substance;

/**
 * Leads the lines of a file to cards: the file's own first, then the library's. A substance without a card that is pure is
 * taken as pure, with a finding; what is known nowhere becomes a card without composition, which a judgement reports.
 */
public final class Leading {
    private static final String FORMAT = "docs/file-format.md";
    private static final double WHOLE = 0.995;
    private static final int MOST_NAMED = 4;

    private final Catalogue catalogue;
    private final Catalogue own;
    /** The file's cards once their constituents are led to substances. */
    private final Catalogue ownLed;

    private final FormulaFile file;
    private final Map<String, Material> cards = new LinkedHashMap<>();
    private final Map<String, Substance> substances = new LinkedHashMap<>();
    private final Map<String, String> names = new HashMap<>();
    private final Map<String, List<String>> takenAsPure = new LinkedHashMap<>();
    private final List<Finding> found = new ArrayList<>();

    private Leading(FormulaFile file, Catalogue catalogue) {
        this.file = file;
        this.catalogue = catalogue;
        file.substances().forEach(one -> substances.put(one.key(), one));
        this.own = new Catalogue(new OwnBook(cardMap(file.materials()), substances, Optional.empty()), Map.of());
        file.materials().forEach(card -> cards.put(card.key(), led(card)));
        this.ownLed = new Catalogue(new OwnBook(cards, substances, Optional.empty()), Map.of());
    }

    public static ReadyFormula lead(FormulaFile file, Catalogue catalogue) {
        return new Leading(file, catalogue).ready();
    }

    private ReadyFormula ready() {
        List<Phase> phases = new ArrayList<>();
        for (Phase phase : file.formula().phases()) {
            List<Line> lines = phase.lines().stream().map(this::led).toList();
            phases.add(new Phase(phase.id(), phase.name(), lines, phase.steps()));
        }
        takenAsPure.forEach((key, lines) -> found.add(pure(key, lines)));
        return new ReadyFormula(
                file, new Formula(phases), new OwnBook(cards, substances, Optional.of(catalogue.book())), names, found);
    }

    private static Map<String, Material> cardMap(List<Material> materials) {
        return materials.stream().collect(Collectors.toMap(Material::key, card -> card));
    }

    private Line led(Line line) {
        Material card = card(line.materialKey(), line.id());
        names.put(line.id(), card.name());
        rest(card, line.id());
        return new Line(line.id(), card.key(), line.amount(), line.note());
    }

    private Material card(String named, String lineId) {
        boolean byKey = !named.startsWith(FormulaFile.BY_INCI) && !named.startsWith(FormulaFile.BY_CAS);
        Optional<Material> card =
                byKey ? own.card(named).map(one -> kept(one.key())).or(() -> catalogue.card(named)) : Optional.empty();
        return card.or(() -> substance(named).map(one -> of(one, lineId)))
                .or(() -> catalogue.cardUnderInci(named))
                .orElseGet(() -> unknown(named));
    }

    private Material kept(String key) {
        Material card = cards.get(key);
        if (card == null) {
            throw new IllegalStateException("the file's own card " + key + " was lost");
        }
        return card;
    }

    private Optional<Substance> substance(String named) {
        return own.substance(named).or(() -> catalogue.substance(named));
    }

    private Material of(Substance substance, String lineId) {
        Optional<Material> pure = ownLed.pureCard(substance)
                .or(() -> catalogue.pureCard(substance))
                .or(() -> catalogue.waterNamed(substance));
        return pure.orElseGet(() -> {
            if (!catalogue.cardsWith(substance).isEmpty() && !catalogue.isSoldNearlyPure(substance)) {
                takenAsPure
                        .computeIfAbsent(substance.key(), key -> new ArrayList<>())
                        .add(lineId);
            }
            return cards.computeIfAbsent("pure-" + substance.key(), key -> asPure(key, substance));
        });
    }

    private Material asPure(String key, Substance substance) {
        Family family = catalogue.cardsWith(substance).stream()
                .map(Material::family)
                .filter(one -> one != Family.WATER)
                .findFirst()
                .orElseGet(() -> shelf(substance));
        return Material.named(key, substance.inciName(), family)
                .withComposition(Constituent.exactly(substance.key(), 1));
    }

    private static Family shelf(Substance substance) {
        if (substance.is("preservative-annex-v")) {
            return Family.PRESERVATIVE;
        }
        if (substance.is("chelator")) {
            return Family.CHELATOR;
        }
        return substance.is("colourant") ? Family.COLOURANT : Family.OTHER;
    }

    private Material unknown(String named) {
        String name = NamedBy.shown(named);
        return cards.computeIfAbsent("unknown:" + name, key -> Material.named(key, name, Family.OTHER));
    }

    /** The card with keys of substances in place of names; what is known nowhere keeps its name. */
    private Material led(Material card) {
        Constituent[] parts = card.composition().stream()
                .map(part -> new Constituent(led(part.substance()), part.massFraction(), part.role()))
                .toArray(Constituent[]::new);
        return card.withComposition(parts);
    }

    private String led(String named) {
        if (named.startsWith(CompositionFields.CARD)) {
            String key = named.substring(CompositionFields.CARD.length());
            return CompositionFields.CARD
                    + catalogue
                            .card(key)
                            .map(Material::key)
                            .filter(one -> own.card(key).isEmpty())
                            .orElse(key);
        }
        return substance(named).map(Substance::key).orElse(NamedBy.shown(named));
    }

    /** What a card does not account for is not judged, and that is said. */
    private void rest(Material card, String lineId) {
        double most = card.composition().stream()
                .mapToDouble(part -> part.massFraction().upper())
                .sum();
        if (file.materials().stream().anyMatch(one -> one.key().equals(card.key())) && most > 0 && most < WHOLE) {
            found.add(new Finding(
                    Finding.Kind.CANNOT_JUDGE,
                    "file.composition-rest",
                    FORMAT,
                    List.of(lineId),
                    List.of(),
                    "No composition for the rest of " + card.name() + ": its constituents make at most "
                            + Math.round(most * 1000) / 10.0 + " %.",
                    "State what the rest is, or let one constituent be q.s. to 100."));
        }
    }

    private Finding pure(String key, List<String> lines) {
        Substance substance = catalogue.book().substance(key).orElseThrow();
        String cards = catalogue.cardsWith(substance).stream()
                .limit(MOST_NAMED)
                .map(Material::key)
                .collect(Collectors.joining(", "));
        return new Finding(
                Finding.Kind.LOOK_AT_THIS,
                "file.taken-as-pure",
                FORMAT,
                lines,
                List.of(),
                substance.inciName() + " is reckoned as 100 % of itself; the library holds it only in " + cards + ".",
                "If the percentage means the material as bought, name its card: " + cards + ".");
    }
}
