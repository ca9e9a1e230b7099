package stillroom.desk.materials;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stillroom.desk.shell.Input;
import stillroom.desk.shell.PriceReader;
import stillroom.formulary.material.Constituent;
import stillroom.formulary.material.Family;
import stillroom.formulary.material.Material;
import stillroom.formulary.material.Strength;
import stillroom.formulary.material.Substance;
import stillroom.formulary.quantity.Interval;
import stillroom.formulary.quantity.Percent;
import stillroom.formulary.quantity.PercentRange;

/** Reads a card from its form. What cannot be taken is noted in the input, all of it at once. */
final class CardReader {
    private final Input input;
    private final CompositionReader composition;

    CardReader(Input input, Inci inci) {
        this.input = input;
        this.composition = new CompositionReader(input, inci);
    }

    /**
     * What was read; to be used only where the input is sound.
     *
     * @param card the card, its revision the one that the maker was looking at
     * @param added substances that are not in the book yet
     */
    record Read(Material card, List<Substance> added) {
        Read {
            added = List.copyOf(added);
        }
    }

    /** Reads the card; empty where something is refused. */
    Optional<Read> read(String key, LocalDate today) {
        String name = input.required("name", "The name");
        if (!name.isEmpty() && Slug.of(name).isEmpty()) {
            input.refuse("name", "The name needs a letter or a digit.");
        }
        Optional<Family> family = input.choice("family", "Family", Family.class);
        Material bare = Material.named(
                key.isEmpty() ? "unnamed" : key, name.isEmpty() ? "unnamed" : name, family.orElse(Family.OTHER));
        List<Constituent> constituents = composition.read(bare);
        Material card = new Material(
                bare.key(),
                input.whole("revision", "Revision", 0, Integer.MAX_VALUE).orElse(0),
                today,
                bare.name(),
                bare.family(),
                functions(),
                constituents,
                strength(),
                usage(),
                ph("working-ph", "Working pH", 0, 14),
                ownPh(),
                input.number("density", "Density", "0.05", "20"),
                input.text("solubility"),
                input.number("max-celsius", "Highest temperature", "-50", "400"),
                input.lines("cautions"),
                input.text("grade"),
                input.text("supplier"),
                PriceReader.price(input),
                input.text("note"),
                input.number("natural-origin", "Natural origin index", "0", "1"),
                sources(),
                CertificateFields.read(input));
        return input.isSound() ? Optional.of(new Read(card, composition.added())) : Optional.empty();
    }

    private List<String> functions() {
        return Arrays.stream(input.text("functions").split(","))
                .map(String::strip)
                .filter(word -> !word.isEmpty())
                .toList();
    }

    private Optional<Strength> strength() {
        Optional<Percent> low = input.percent("strength-low", "Strength");
        Optional<Percent> high = input.percent("strength-high", "Strength");
        Optional<Strength.Basis> basis = input.choice("strength-basis", "Basis", Strength.Basis.class);
        String of = input.text("strength-of");
        if (low.isEmpty() && high.isEmpty()) {
            if (basis.isPresent() && !input.hasProblem("strength-low") && !input.hasProblem("strength-high")) {
                input.refuse("strength-low", "The figure is missing for this basis.");
            }
            return Optional.empty();
        }
        if (basis.isEmpty() && !input.hasProblem("strength-basis")) {
            input.refuse("strength-basis", "A figure without its basis is not stored: active matter or dry residue?");
        }
        if (of.isEmpty()) {
            input.refuse("strength-of", "What is counted is missing.");
        }
        Optional<PercentRange> range = range("strength", low.or(() -> high), high.or(() -> low));
        return range.isPresent() && basis.isPresent()
                ? Optional.of(new Strength(range.get(), basis.get(), of))
                : Optional.empty();
    }

    private Optional<PercentRange> usage() {
        Optional<Percent> low = input.percent("usage-low", "Usage");
        Optional<Percent> high = input.percent("usage-high", "Usage");
        if (high.isEmpty() && low.isPresent() && !input.hasProblem("usage-high")) {
            return input.refuse("usage-high", "The upper end is missing; a range without one limits nothing.");
        }
        return range("usage", high.isPresent() ? low.or(() -> Optional.of(Percent.ZERO)) : low, high);
    }

    private Optional<PercentRange> range(String field, Optional<Percent> low, Optional<Percent> high) {
        if (low.isEmpty() || high.isEmpty()) {
            return Optional.empty();
        }
        return low.get().compareTo(high.get()) > 0
                ? input.refuse(field + "-high", "The upper end lies below the lower one.")
                : Optional.of(new PercentRange(low.get(), high.get()));
    }

    private Optional<Interval> ownPh() {
        boolean oneFigure = input.text("own-ph-high").isEmpty();
        Optional<Interval> range = ph("own-ph", "Own pH", 0, 14);
        return oneFigure ? range.map(known -> Interval.point(known.low())) : range;
    }

    private Optional<Interval> ph(String field, String what, double lowest, double highest) {
        Optional<Double> low = input.number(field + "-low", what, "-1", "15");
        Optional<Double> high = input.number(field + "-high", what, "-1", "15");
        if (low.isEmpty() && high.isEmpty()) {
            return Optional.empty();
        }
        double from = low.orElse(lowest);
        double to = high.orElse(Math.max(from, highest));
        return from > to
                ? input.refuse(field + "-high", "The upper end lies below the lower one.")
                : Optional.of(new Interval(from, to));
    }

    private Map<String, String> sources() {
        Map<String, String> sources = new HashMap<>();
        for (Fact fact : Fact.values()) {
            String source = input.text(fact.sourceField());
            if (!source.isEmpty()) {
                sources.put(fact.component(), source);
            }
        }
        return sources;
    }
}
