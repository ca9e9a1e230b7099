package stillroom.ledger.exchange;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import stillroom.formulary.material.Constituent;
import stillroom.formulary.material.Family;
import stillroom.formulary.material.Material;
import stillroom.formulary.material.MaterialBook;
import stillroom.formulary.material.OtherNames;
import stillroom.formulary.material.Substance;
import stillroom.formulary.rule.RuleBook;

/** Cards and substances of a book, found by key, name, INCI name or CAS number. Immutable; made once for a book. */
public final class Catalogue {
    /** Up to this share of other ingredients a card still is the substance that it is named for. */
    private static final double OTHERS = 0.05;

    /** From this share on, what is missing to the whole is the moisture of a powder or the water of a hydrate. */
    private static final double NEARLY = 0.85;

    /** A card under the substance's own key is its trade grade, from this share on. */
    private static final double GRADE = 0.5;

    private static final String WATER = "water";

    private final MaterialBook book;
    private final Map<String, Substance> byInci = new HashMap<>();
    private final Map<String, Substance> byCas = new HashMap<>();
    private final Map<String, Material> byName = new HashMap<>();
    private final Map<String, List<Material>> bringing = new LinkedHashMap<>();
    private final Map<String, String> otherNames = new HashMap<>();

    /** @param otherNames INCI name by another name of the same, such as Aqua by Water */
    public Catalogue(MaterialBook book, Map<String, String> otherNames) {
        this.book = book;
        otherNames.forEach((other, inci) -> this.otherNames.put(bare(other), bare(inci)));
        for (Substance substance : book.substances()) {
            byInci.putIfAbsent(bare(substance.inciName()), substance);
            substance.casNumbers().forEach(number -> byCas.putIfAbsent(number, substance));
        }
        for (Material card : book.materials()) {
            byName.putIfAbsent(bare(card.name()), card);
            for (Constituent part : card.composition()) {
                bringing.computeIfAbsent(part.substance(), key -> new ArrayList<>())
                        .add(card);
            }
        }
    }

    /** By INCI name, a common name, or a market's own name. */
    public static Catalogue of(MaterialBook book, RuleBook rules) {
        Map<String, String> inciByName = new HashMap<>(OtherNames.load());
        rules.names().values().forEach(names -> names.forEach((inci, name) -> inciByName.putIfAbsent(name, inci)));
        return new Catalogue(book, inciByName);
    }

    public MaterialBook book() {
        return book;
    }

    /** The card with this key, or with this name. */
    Optional<Material> card(String keyOrName) {
        return book.material(keyOrName)
                .or(() -> book.material(Words.bare(keyOrName)))
                .or(() -> Optional.ofNullable(byName.get(bare(keyOrName))));
    }

    /** The substance that a file means by a key, {@code inci:NAME}, {@code cas:NUMBER} or a bare name. */
    Optional<Substance> substance(String named) {
        if (named.startsWith(FormulaFile.BY_CAS)) {
            return Optional.ofNullable(
                    byCas.get(named.substring(FormulaFile.BY_CAS.length()).strip()));
        }
        if (named.startsWith(FormulaFile.BY_INCI)) {
            return inci(named.substring(FormulaFile.BY_INCI.length()));
        }
        return book.substance(named)
                .or(() -> book.substance(Words.bare(named)))
                .or(() -> inci(named))
                .or(() -> Optional.ofNullable(byCas.get(named)));
    }

    /** Also "Aqua (Water)" and "Aqua/Water". */
    private Optional<Substance> inci(String name) {
        String whole = bare(name);
        return one(whole)
                .or(() -> one(whole.replaceAll("\\s*\\(.*\\)\\s*$", "")))
                .or(() -> one(whole.replaceAll("^.*\\(([^)]*)\\)\\s*$", "$1")))
                .or(() -> one(whole.replaceAll("\\s*/.*$", "")))
                .or(() -> one(whole.replaceAll("^.*/\\s*", "")));
    }

    private Optional<Substance> one(String bare) {
        return Optional.ofNullable(byInci.get(bare))
                .or(() -> Optional.ofNullable(otherNames.get(bare)).map(byInci::get));
    }

    /** The purest card that is nothing but this substance, up to a few percent of others. */
    Optional<Material> pureCard(Substance substance) {
        return bringing.getOrDefault(substance.key(), List.of()).stream()
                .filter(card -> others(card, substance) <= OTHERS)
                .max(Comparator.comparing((Material card) -> card.key().equals(substance.key()))
                        .thenComparingDouble(card -> share(card, substance))
                        .thenComparing(Material::key, Comparator.reverseOrder()));
    }

    /** Cards that bring the substance on purpose, strongest first. */
    List<Material> cardsWith(Substance substance) {
        return bringing.getOrDefault(substance.key(), List.of()).stream()
                .distinct()
                .filter(card -> card.composition().stream()
                        .anyMatch(part ->
                                part.substance().equals(substance.key()) && part.role() == Constituent.Role.INGREDIENT))
                .sorted(Comparator.comparingDouble((Material card) -> share(card, substance))
                        .reversed())
                .toList();
    }

    /** Flower waters and leaf juices: their INCI name means the watery material, not what is dissolved in it. */
    Optional<Material> waterNamed(Substance substance) {
        return substance.key().equals(WATER)
                ? Optional.empty()
                : cardsWith(substance).stream()
                        .filter(card -> card.family() == Family.WATER)
                        .findFirst();
    }

    /** A blend that has an INCI name of its own, such as Glyceryl Stearate SE. */
    Optional<Material> cardUnderInci(String named) {
        return named.startsWith(FormulaFile.BY_INCI)
                ? card(named.substring(FormulaFile.BY_INCI.length()))
                : Optional.empty();
    }

    /** Whether a card is this substance but for a little water or kin, as hydrates, moist powders and trade grades are. */
    boolean isSoldNearlyPure(Substance substance) {
        return bringing.getOrDefault(substance.key(), List.of()).stream()
                .anyMatch(card -> isGrade(card, substance)
                        || (share(card, substance) >= NEARLY
                                && others(card, substance) - waterBeside(card, substance) <= OTHERS));
    }

    private static boolean isGrade(Material card, Substance substance) {
        return card.key().equals(substance.key()) && share(card, substance) >= GRADE;
    }

    private static double waterBeside(Material card, Substance substance) {
        return substance.key().equals(WATER)
                ? 0
                : card.composition().stream()
                        .filter(part -> part.substance().equals(WATER))
                        .filter(part -> part.role() == Constituent.Role.INGREDIENT)
                        .mapToDouble(part -> part.massFraction().nominal())
                        .sum();
    }

    private static double share(Material card, Substance substance) {
        return card.composition().stream()
                .filter(part -> part.substance().equals(substance.key()))
                .mapToDouble(part -> part.massFraction().nominal())
                .sum();
    }

    /** What else is in on purpose; all of it where the substance itself is only brought along. */
    private static double others(Material card, Substance substance) {
        boolean meant = card.composition().stream()
                .anyMatch(
                        part -> part.substance().equals(substance.key()) && part.role() == Constituent.Role.INGREDIENT);
        return !meant
                ? 1
                : card.composition().stream()
                        .filter(part ->
                                !part.substance().equals(substance.key()) && part.role() == Constituent.Role.INGREDIENT)
                        .mapToDouble(part -> part.massFraction().nominal())
                        .sum();
    }

    private static String bare(String name) {
        return name.strip().toLowerCase(Locale.ROOT).replaceAll("\\s+", " ");
    }
}
