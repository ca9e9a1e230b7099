package stillroom.formulary.imports;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import stillroom.formulary.material.Constituent;
import stillroom.formulary.material.Material;
import stillroom.formulary.material.MaterialBook;
import stillroom.formulary.material.Substance;
import stillroom.formulary.reference.ReferenceRow;
import stillroom.formulary.reference.ReferenceTable;

/** The names under which cards are known, for finding the card that a name in a sheet means. Thread-safe. */
public final class NameIndex {
    private static final String WATER = "water";
    /** Above this a name counts as the card's, to be confirmed; below it is only offered. Found by trying, no source. */
    private static final double ALIKE = 0.93;

    private static final double WORTH_OFFERING = 0.7;
    private static final int OFFERED = 5;
    private static final double NOTHING_ELSE = 0.95;
    private static final Pattern STRENGTH = Pattern.compile("(\\d+(?:[.,]\\d+)?)\\s*%");
    private static final Pattern PARTS =
            Pattern.compile("\\s+/\\s+|\\s*\\|\\s*|\\s+[-–—]\\s+|\\s*[()\\[\\]]\\s*|\\s*;\\s*|\\s*=\\s*|\\R");

    private final MaterialBook book;
    private final Map<String, Material> materials = new HashMap<>();
    private final Map<String, List<List<String>>> words = new HashMap<>();
    private final Map<String, String> remembered;
    private final Map<String, Set<String>> cards = new HashMap<>();
    private final Map<String, Set<String>> byCas = new HashMap<>();
    private final Map<String, String> commonNames = new HashMap<>();
    private final Map<String, Match> found = new ConcurrentHashMap<>();

    private NameIndex(MaterialBook book, Map<String, String> remembered) {
        this.book = book;
        this.remembered = remembered;
        for (ReferenceRow row : ReferenceTable.read("names/common_names.csv", "name", "inci", "language", "source")) {
            commonNames.put(form(row.required("name")), form(row.required("inci")));
        }
        book.materials().forEach(this::add);
    }

    /** @param remembered key of a card by name in its compared form: what the maker decided before */
    public static NameIndex of(MaterialBook book, Map<String, String> remembered) {
        return new NameIndex(book, Map.copyOf(remembered));
    }

    /** A name as it is compared: lower case, no accents, no signs. */
    public static String form(String name) {
        return Folding.of(name).replaceAll("[^\\p{L}\\p{N}%]+", " ").strip();
    }

    private void add(Material card) {
        materials.put(card.key(), card);
        put(cards, form(card.name()), card.key());
        put(cards, form(card.key()), card.key());
        Optional<Substance> main = main(card);
        main.ifPresent(substance -> {
            put(cards, form(substance.inciName()), card.key());
            substance.casNumbers().forEach(cas -> put(byCas, cas, card.key()));
        });
        String inci = main.map(Substance::inciName).orElse("");
        words.put(card.key(), List.of(Likeness.words(card.name()), Likeness.words(inci)));
    }

    private static void put(Map<String, Set<String>> index, String name, String key) {
        index.computeIfAbsent(name, any -> new LinkedHashSet<>()).add(key);
    }

    /** What the material is bought for: its largest part that is not water. */
    private Optional<Substance> main(Material card) {
        List<Constituent> parts = card.composition().stream()
                .filter(part -> part.role() == Constituent.Role.INGREDIENT)
                .sorted(Comparator.comparingDouble(
                        (Constituent part) -> -part.massFraction().nominal()))
                .toList();
        return parts.stream()
                .filter(part -> !part.substance().equals(WATER))
                .findFirst()
                .or(() -> parts.stream().findFirst())
                .flatMap(part -> book.substance(part.substance()));
    }

    /** Whether some card bears this very name. */
    public boolean knows(String name) {
        return texts(List.of(name)).stream().anyMatch(text -> !same(text).isEmpty());
    }

    /** The card that these names of one ingredient mean. */
    public Match match(List<String> names, String cas) {
        return found.computeIfAbsent(String.join("\n", names) + "\n\n" + cas, any -> matched(names, cas));
    }

    private Match matched(List<String> names, String cas) {
        for (String name : names) {
            String key = remembered.get(form(name));
            if (key != null && (key.isEmpty() || materials.containsKey(key))) {
                Optional<String> card = Optional.of(key).filter(one -> !one.isEmpty());
                return new Match(Match.Kind.REMEMBERED, card, similar(names, key), "You decided so before.");
            }
        }
        List<String> texts = texts(names);
        Set<String> same = new LinkedHashSet<>();
        for (String text : texts) {
            if (same.isEmpty()) {
                same.addAll(same(text));
            }
        }
        if (same.isEmpty() && !cas.isBlank()) {
            same.addAll(byCas.getOrDefault(cas.strip(), Set.of()));
        }
        return same.isEmpty() ? alike(names, texts) : same(names, List.copyOf(same));
    }

    private Set<String> same(String text) {
        Set<String> direct = cards.getOrDefault(text, Set.of());
        if (!direct.isEmpty()) {
            return direct;
        }
        String bare =
                STRENGTH.matcher(text).replaceAll(" ").replaceAll("\\s+", " ").strip();
        Set<String> unmeasured = cards.getOrDefault(bare, Set.of());
        String inci = commonNames.getOrDefault(text, commonNames.getOrDefault(bare, ""));
        return !unmeasured.isEmpty() ? unmeasured : cards.getOrDefault(inci, Set.of());
    }

    private Match same(List<String> names, List<String> keys) {
        if (keys.size() == 1) {
            return strengthDiffers(names, keys.get(0))
                    ? new Match(
                            Match.Kind.ALIKE,
                            Optional.of(keys.get(0)),
                            similar(names, keys.get(0)),
                            "The name is the same, the strength is another.")
                    : new Match(
                            Match.Kind.SAME,
                            Optional.of(keys.get(0)),
                            similar(names, keys.get(0)),
                            "The name is the same.");
        }
        Optional<String> exact =
                keys.stream().filter(key -> isNamed(names, key)).findFirst();
        Optional<String> strong =
                keys.stream().filter(key -> hasStrength(names, key)).findFirst();
        List<String> pure =
                keys.stream().filter(key -> share(key) >= NOTHING_ELSE).toList();
        boolean measured = !strengths(String.join(" ", names)).isEmpty();
        if (exact.isEmpty() && strong.isEmpty() && !measured && pure.size() == 1) {
            return new Match(
                    Match.Kind.SAME,
                    Optional.of(pure.get(0)),
                    others(keys, pure.get(0)),
                    "The card that is nothing else.");
        }
        String key = exact.or(() -> strong)
                .orElseGet(() -> keys.stream()
                        .max(Comparator.comparingDouble(this::share))
                        .orElse(keys.get(0)));
        List<String> others = others(keys, key);
        return exact.or(() -> strong).isPresent()
                ? new Match(Match.Kind.SAME, Optional.of(key), others, "Name and strength are the same.")
                : new Match(
                        Match.Kind.ONE_OF_SEVERAL,
                        Optional.of(key),
                        others,
                        "Several cards are bought for this; say which grade it is.");
    }

    private static List<String> others(List<String> keys, String key) {
        return keys.stream().filter(other -> !other.equals(key)).limit(OFFERED).toList();
    }

    /** Share of what the card is bought for, 0 to 1. */
    private double share(String key) {
        return Optional.ofNullable(materials.get(key)).map(Material::composition).orElse(List.of()).stream()
                .filter(part -> part.role() == Constituent.Role.INGREDIENT
                        && !part.substance().equals(WATER))
                .mapToDouble(part -> part.massFraction().nominal())
                .max()
                .orElse(0);
    }

    private boolean isNamed(List<String> names, String key) {
        String name = Optional.ofNullable(materials.get(key))
                .map(card -> form(card.name()))
                .orElse("");
        return names.stream().anyMatch(one -> form(one).equals(name));
    }

    private boolean hasStrength(List<String> names, String key) {
        Set<String> asked = strengths(String.join(" ", names));
        Set<String> offered = strengths(
                Optional.ofNullable(materials.get(key)).map(Material::name).orElse(""));
        return asked.stream().anyMatch(offered::contains);
    }

    private boolean strengthDiffers(List<String> names, String key) {
        Set<String> asked = strengths(String.join(" ", names));
        Set<String> offered = strengths(
                Optional.ofNullable(materials.get(key)).map(Material::name).orElse(""));
        return !asked.isEmpty() && !offered.isEmpty() && asked.stream().noneMatch(offered::contains);
    }

    private static Set<String> strengths(String name) {
        Set<String> strengths = new LinkedHashSet<>();
        Matcher strength = STRENGTH.matcher(name);
        while (strength.find()) {
            strengths.add(strength.group(1).replace(',', '.').replaceAll("\\.0+$", ""));
        }
        return strengths;
    }

    private Match alike(List<String> names, List<String> texts) {
        List<String> similar = similar(names, "");
        if (similar.isEmpty() || likeness(texts, similar.get(0)) < ALIKE) {
            return Match.none(similar);
        }
        return new Match(
                Match.Kind.ALIKE,
                Optional.of(similar.get(0)),
                similar.subList(1, similar.size()),
                "The name looks much like the card's.");
    }

    /** Cards that look like these names, likest first, without the one that is chosen. */
    private List<String> similar(List<String> names, String without) {
        record Ranked(String key, double likeness) {}
        List<List<String>> asked = asked(texts(names));
        List<Ranked> ranked = new ArrayList<>();
        for (Material card : materials.values()) {
            double likeness = card.key().equals(without) ? 0 : likenessOfWords(asked, card.key());
            if (likeness >= WORTH_OFFERING) {
                ranked.add(new Ranked(card.key(), likeness));
            }
        }
        return ranked.stream()
                .sorted(Comparator.comparingDouble((Ranked one) -> -one.likeness())
                        .thenComparing(Ranked::key))
                .limit(OFFERED)
                .map(Ranked::key)
                .toList();
    }

    private double likeness(List<String> texts, String key) {
        return likenessOfWords(asked(texts), key);
    }

    private List<List<String>> asked(List<String> texts) {
        return texts.stream()
                .map(text -> Likeness.words(commonNames.getOrDefault(text, text)))
                .toList();
    }

    private double likenessOfWords(List<List<String>> asked, String key) {
        double best = 0;
        for (List<String> text : asked) {
            for (List<String> name : words.getOrDefault(key, List.of())) {
                best = Math.max(best, Likeness.of(text, name));
            }
        }
        return best;
    }

    /** The names as they stand, then their parts: "Aqua / Water", "Wasser (Aqua)". */
    private static List<String> texts(List<String> names) {
        Set<String> texts = new LinkedHashSet<>();
        names.forEach(name -> texts.add(form(name)));
        for (String name : names) {
            for (String part : PARTS.split(name)) {
                texts.add(form(part));
            }
            for (String part : name.split("/")) {
                texts.add(form(part));
            }
        }
        texts.remove("");
        return List.copyOf(texts);
    }
}
