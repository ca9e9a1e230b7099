package stillroom.formulary.reformulation;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.function.UnaryOperator;
import stillroom.formulary.evaluation.Portion;
import stillroom.formulary.evaluation.Subject;
import stillroom.formulary.judgement.law.LegalCeilings;
import stillroom.formulary.judgement.pot.Emulsion;
import stillroom.formulary.judgement.pot.Pot;
import stillroom.formulary.judgement.pot.PriceBook;
import stillroom.formulary.judgement.pot.Share;
import stillroom.formulary.material.ChargeClass;
import stillroom.formulary.material.Family;
import stillroom.formulary.material.MassFraction;
import stillroom.formulary.material.Substance;
import stillroom.formulary.quantity.Interval;

/** The bands of a wish, as sums over the candidates. */
final class Requirements {
    static final String COST = "Cost per 100 g";
    static final String NATURAL = "Natural origin";
    static final String HLB = "HLB of the emulsifiers";
    static final String REQUIRED_HLB = "Required HLB of the oils";
    static final String ANIONIC_CHARGE = "Anionic charge, net";
    static final String CATIONIC_CHARGE = "Cationic charge, net";

    private static final double NONE = Double.NEGATIVE_INFINITY;
    /** A net charge near 0 may move by so much whatever its band [mmol/kg]. */
    private static final double LEAST_CHARGE_ROOM = 1;

    private final Recast recast;
    private final Present present;
    private final Bands bands;
    private final List<Candidate> candidates;
    private final List<Double> now;
    private final List<Requirement> all = new ArrayList<>();

    private Requirements(Recast recast, Present present, Bands bands, List<Candidate> candidates) {
        this.recast = recast;
        this.present = present;
        this.bands = bands;
        this.candidates = candidates;
        this.now = candidates.stream().map(Candidate::now).toList();
    }

    static List<Requirement> of(Recast recast, Present present, Bands bands, List<Candidate> candidates) {
        Requirements made = new Requirements(recast, present, bands, candidates);
        made.around("Water", "%", values(candidates, one -> 100 * sum(one, Share::isWater)), bands.water(), false);
        made.charge();
        made.activeMatter();
        made.families();
        present.hlb().ifPresent(at -> made.mean(HLB, at, Emulsion::between, Substance::hlb));
        present.requiredHlb().ifPresent(at -> made.mean(REQUIRED_HLB, at, Requirements::all, Substance::requiredHlb));
        made.constituents();
        bands.cost().ifPresent(most -> made.all.add(made.cost(NONE, most)));
        bands.natural().ifPresent(least -> made.all.add(made.natural(least, Double.POSITIVE_INFINITY)));
        made.law();
        return List.copyOf(made.all);
    }

    static List<Double> values(List<Candidate> candidates, ToDoubleFunction<Candidate> value) {
        return candidates.stream().map(value::applyAsDouble).toList();
    }

    private static double sum(Candidate candidate, java.util.function.Predicate<Share> wanted) {
        return Pot.sum(candidate.contents().stream().filter(wanted).toList());
    }

    private void around(String name, String unit, List<Double> values, double width, boolean relative) {
        Requirement bare = new Requirement(name, unit, values, NONE, Double.POSITIVE_INFINITY, Requirement.Kind.FIGURE);
        double at = bare.of(now);
        double room = relative ? Math.abs(at) * width / 100 : width;
        all.add(new Requirement(name, unit, values, at - room, at + room, Requirement.Kind.FIGURE));
    }

    private void activeMatter() {
        for (ChargeClass charge : ChargeClass.values()) {
            List<Double> values = values(candidates, one -> 100 * sum(one, share -> share.isSurfactant(charge)));
            if (values.stream().anyMatch(value -> value > 0)) {
                around(
                        charge.name().charAt(0) + charge.name().substring(1).toLowerCase(java.util.Locale.ROOT)
                                + " active matter",
                        "%",
                        values,
                        bands.activeMatter(),
                        true);
            }
        }
    }

    /** At the present pH, as the evaluation counts it. */
    private void charge() {
        double at = present.charge().orElse(0.0);
        if (at != 0) {
            double sign = Math.signum(at);
            List<Double> values = values(candidates, one -> sign * one.charge().orElse(0) + 0.0);
            double room = Math.max(LEAST_CHARGE_ROOM, Math.abs(at) * bands.charge() / 100);
            all.add(new Requirement(
                    at < 0 ? ANIONIC_CHARGE : CATIONIC_CHARGE,
                    "mmol per kg",
                    values,
                    Math.abs(at) - room,
                    Math.abs(at) + room,
                    Requirement.Kind.FIGURE));
        }
    }

    /** As supplied; surfactants are kept by their active matter, water by its own band. */
    private void families() {
        Map<Family, Double> present = new EnumMap<>(Family.class);
        candidates.stream()
                .filter(one -> !one.fixed())
                .forEach(one -> present.merge(one.card().family(), one.now(), Double::sum));
        present.forEach((family, share) -> {
            if (family != Family.WATER && family != Family.SURFACTANT && share > 0) {
                String name =
                        family.name().charAt(0) + family.name().substring(1).toLowerCase(java.util.Locale.ROOT);
                around(
                        name + " shelf",
                        "%",
                        values(candidates, one -> !one.fixed() && one.card().family() == family ? 100.0 : 0.0),
                        bands.family(),
                        true);
            }
        });
    }

    private void constituents() {
        bands.constituents()
                .forEach((key, width) -> around(
                        recast.book().substance(key).map(Substance::inciName).orElse(key),
                        "%",
                        values(
                                candidates,
                                one -> 100 * sum(one, share -> share.key().equals(key))),
                        width,
                        true));
    }

    private static List<Share> all(List<Share> shares) {
        return shares;
    }

    /** A mean is kept by two sums: (figure - lowest) times mass adds up to 0 or more, (highest - figure) likewise. */
    private void mean(
            String name,
            double at,
            UnaryOperator<List<Share>> concerned,
            Function<Substance, Optional<Interval>> figure) {
        List<Double> masses = new ArrayList<>();
        List<Double> sums = new ArrayList<>();
        for (Candidate one : candidates) {
            double mass = 0;
            double sum = 0;
            for (Share share : concerned.apply(one.contents())) {
                Optional<Interval> known = share.substance().flatMap(figure);
                mass += known.isPresent() ? share.nominal() : 0;
                sum += share.nominal() * known.map(Interval::middle).orElse(0.0);
            }
            masses.add(mass);
            sums.add(sum);
        }
        all.add(Requirement.of(name, new Requirement.Mean(masses, sums, at - bands.hlb(), true)));
        all.add(Requirement.of(name, new Requirement.Mean(masses, sums, at + bands.hlb(), false)));
    }

    Requirement cost(double min, double max) {
        return new Requirement(
                COST, "", values(candidates, one -> one.costPer100g().orElse(0)), min, max, Requirement.Kind.FIGURE);
    }

    Requirement natural(double min, double max) {
        return new Requirement(
                NATURAL,
                "%",
                values(candidates, one -> 100 * one.card().naturalOriginIndex().orElse(0.0)),
                min,
                max,
                Requirement.Kind.FIGURE);
    }

    private void law() {
        Map<String, List<Share>> contents = new LinkedHashMap<>();
        candidates.forEach(one -> contents.put(one.key(), one.contents()));
        List<Double> even = values(candidates, one -> 1.0 / candidates.size());
        Pot pot = Pot.open(
                subject(even),
                recast.book(),
                PriceBook.ofCards(recast.book()),
                recast.evaluator().rules(),
                recast.asOf());
        for (LegalCeilings ceiling : LegalCeilings.of(pot, recast.asOf(), contents)) {
            List<Double> values = values(candidates, one -> ceiling.counted().getOrDefault(one.key(), 0.0));
            Requirement bare =
                    new Requirement(ceiling.name(), "%", values, NONE, ceiling.percent(), Requirement.Kind.LAW);
            // A formula that breaks the law today may be mended elsewhere; here it only must not get worse.
            double most = Math.max(ceiling.percent(), bare.of(now));
            all.add(new Requirement(ceiling.name(), "%", values, NONE, most, Requirement.Kind.LAW));
        }
    }

    private Subject subject(List<Double> fractions) {
        List<Portion> portions = new ArrayList<>();
        for (int j = 0; j < candidates.size(); j++) {
            portions.add(new Portion(
                    "c" + j, "", candidates.get(j).key(), MassFraction.exactly(Math.min(1, fractions.get(j)))));
        }
        return new Subject(recast.brief(), portions, List.of(), 0, Optional.empty());
    }
}
