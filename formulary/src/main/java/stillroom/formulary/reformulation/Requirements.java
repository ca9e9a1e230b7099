package stillroom.formulary.reformulation;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.function.UnaryOperator;
import stillroom.formulary.evaluation.Portion;
import stillroom.formulary.evaluation.Subject;
import stillroom.formulary.judgement.law.LegalCeilings;
import stillroom.formulary.judgement.pot.Emulsion;
import stillroom.formulary.judgement.pot.Pot;
import stillroom.formulary.judgement.pot.Share;
import stillroom.formulary.material.ChargeClass;
import stillroom.formulary.material.Family;
import stillroom.formulary.material.MassFraction;
import stillroom.formulary.material.Substance;
import stillroom.formulary.quantity.Interval;

/** The bands of a wish, as sums over the candidates. */
final class Requirements {
    static final String WATER = "Water";
    static final String COST = "Cost per 100 g";
    static final String NATURAL = "Natural origin";
    static final String HLB = "HLB of the emulsifiers";
    static final String REQUIRED_HLB = "Required HLB of the oils";
    /** How far the one may be from the other, in units; see {@link AgainstOils}. */
    static final String AGAINST = FigureNames.HLB_AGAINST_OILS;

    static final String ANIONIC_CHARGE = "Net anionic charge";
    static final String CATIONIC_CHARGE = "Net cationic charge";

    private static final double PERCENT = 100;
    /** Costs are asked for at so many parts of the currency. */
    private static final double MONEY = 1e4;
    /** What is found by a search lies at its edge; a widened band goes so much beyond. */
    private static final double EDGE = 0.5;

    /** Leaving the middle of a band saves at most the moves of two materials, of which one may hold a tenth of active matter. */
    private static final double PULL_ACTIVE = 20;

    private static final double PULL_MASS = 4;
    /** Between equals only. */
    private static final double PULL_LITTLE = 0.01;

    private static final double PULL_DOSE = 0.1;
    private static final double NONE = Double.NEGATIVE_INFINITY;
    /** A net charge near 0, as of a gum, may move by so much whatever its band; common practice, no source [mmol/kg]. */
    private static final double LEAST_CHARGE_ROOM = 5;

    private final Recast recast;
    private final Present present;
    private final Bands bands;
    private final Set<String> without;
    private final List<Candidate> candidates;
    private final List<Double> now;
    private final List<Requirement> all = new ArrayList<>();

    private Requirements(Recast recast, Present present, Wish wish, List<Candidate> candidates) {
        this.recast = recast;
        this.present = present;
        this.bands = wish.bands();
        this.without = wish.without();
        this.candidates = candidates;
        this.now = candidates.stream().map(Candidate::now).toList();
    }

    static List<Requirement> of(Recast recast, Present present, Wish wish, List<Candidate> candidates) {
        Bands bands = wish.bands();
        Requirements made = new Requirements(recast, present, wish, candidates);
        made.water();
        made.charge();
        made.activeMatter();
        made.families();
        made.doses();
        present.hlb().ifPresent(at -> made.mean(HLB, at, Emulsion::between, Substance::hlb));
        present.requiredHlb().ifPresent(at -> made.mean(REQUIRED_HLB, at, Requirements::all, Substance::requiredHlb));
        made.constituents();
        bands.cost().ifPresent(most -> made.all.add(made.cost(most)));
        bands.natural().ifPresent(least -> made.all.add(made.natural(least)));
        made.law();
        return List.copyOf(made.all);
    }

    static List<Double> values(List<Candidate> candidates, ToDoubleFunction<Candidate> value) {
        return candidates.stream().map(value::applyAsDouble).toList();
    }

    private static double sum(Candidate candidate, java.util.function.Predicate<Share> wanted) {
        return Pot.sum(candidate.contents().stream().filter(wanted).toList());
    }

    /** Kept near where it is: by points, or by percent of what there is; of what there is not, by points. */
    private void around(String name, String unit, List<Double> values, double width, Pull pull, Named named) {
        Requirement bare = new Requirement(name, unit, values, NONE, Double.POSITIVE_INFINITY, Requirement.Kind.FIGURE);
        double at = bare.of(now);
        double measure = pull.relative() && at != 0 ? Math.abs(at) / PERCENT : 1;
        double room = pull.relative() && at == 0 && named.width(bands).isEmpty()
                ? 0
                : measure * named.width(bands).orElse(width);
        Band band = new Band(
                at,
                room,
                pull.of(room),
                (wish, bound) -> wish.with(named.with(wish.bands(), outwards(Math.abs(bound - at) / measure))));
        all.add(new Requirement(name, unit, values, at - room, at + room, Requirement.Kind.FIGURE).with(band));
    }

    /** @param perPoint what a point of percent is worth against a change by as much; where 0 the whole band weighs a little */
    private record Pull(boolean relative, double perPoint) {
        double of(double room) {
            return perPoint > 0 ? perPoint * room / PERCENT : PULL_LITTLE;
        }
    }

    /** Where the width of one figure is written down. */
    private record Named(String key, boolean isConstituent) {
        OptionalDouble width(Bands bands) {
            Double own = (isConstituent ? bands.constituents() : bands.own()).get(key);
            return own == null ? OptionalDouble.empty() : OptionalDouble.of(own);
        }

        Bands with(Bands bands, double width) {
            return isConstituent ? bands.withConstituent(key, width) : bands.withOwn(key, width);
        }
    }

    /** Two decimals, so that what is said is enough. */
    private static double outwards(double width) {
        return Math.ceil(width * PERCENT + EDGE) / PERCENT;
    }

    private void water() {
        List<Double> values = values(candidates, one -> PERCENT * sum(one, Share::isWater));
        around(WATER, "%", values, bands.water(), new Pull(false, 0), new Named(WATER, false));
    }

    private void activeMatter() {
        for (ChargeClass charge : ChargeClass.values()) {
            List<Double> values = values(candidates, one -> PERCENT * sum(one, share -> share.isSurfactant(charge)));
            if (values.stream().anyMatch(value -> value > 0)) {
                String name = FigureNames.activeMatter(charge);
                around(name, "%", values, bands.activeMatter(), new Pull(true, PULL_ACTIVE), new Named(name, false));
                boolean harsh = charge == ChargeClass.ANIONIC || charge == ChargeClass.CATIONIC;
                if (bands.noHarsher() && harsh) {
                    noMore(all.size() - 1);
                }
            }
        }
    }

    /** The one of this place may only go down. */
    private void noMore(int i) {
        Requirement one = all.get(i);
        double most = one.of(now);
        Band old = one.band().orElseThrow();
        Band band = new Band(old.at(), old.room(), old.pull(), (wish, bound) -> {
            Wish wider = old.widened().to(wish, bound);
            return bound > most ? wider.with(wider.bands().noHarsher(false)) : wider;
        });
        all.set(i, new Requirement(one.name(), one.unit(), one.values(), one.min(), most, one.kind()).with(band));
    }

    /** At the present pH, as the evaluation counts it. */
    private void charge() {
        double at = present.charge().orElse(0.0);
        if (at == 0) {
            return;
        }
        String name = at < 0 ? ANIONIC_CHARGE : CATIONIC_CHARGE;
        double sign = Math.signum(at);
        List<Double> values = values(candidates, one -> sign * one.charge().orElse(0) + 0.0);
        double width = bands.own().getOrDefault(name, bands.charge());
        double room = Math.max(LEAST_CHARGE_ROOM, Math.abs(at) * width / PERCENT);
        Band band = new Band(
                Math.abs(at),
                room,
                PULL_LITTLE,
                (wish, bound) -> wish.with(wish.bands()
                        .withOwn(name, outwards(PERCENT * Math.abs(bound - Math.abs(at)) / Math.abs(at)))));
        all.add(new Requirement(
                        name, "mmol per kg", values, Math.abs(at) - room, Math.abs(at) + room, Requirement.Kind.FIGURE)
                .with(band));
        if (bands.noHarsher()) {
            noMore(all.size() - 1);
        }
    }

    /** As supplied; surfactants are kept by their active matter, water by its own band, what stands in by its dose. */
    private void families() {
        Map<Family, Double> there = new EnumMap<>(Family.class);
        candidates.stream()
                .filter(one -> isOnShelf(one, one.card().family()))
                .forEach(one -> there.merge(one.card().family(), one.now(), Double::sum));
        there.forEach((family, share) -> {
            if (FigureNames.isShelf(family) && share > 0) {
                String name = FigureNames.shelf(family);
                List<Double> values = values(candidates, one -> isOnShelf(one, family) ? PERCENT : 0.0);
                around(name, "%", values, bands.family(), new Pull(true, PULL_MASS), new Named(name, false));
            }
        });
    }

    private static boolean isOnShelf(Candidate one, Family family) {
        return !one.fixed() && one.card().family() == family && Candidates.isFree(family);
    }

    /** What stands in for a line that goes: as much of the dose that does the same. */
    private void doses() {
        candidates.stream()
                .filter(this::goesForItsEffect)
                .map(Candidate::card)
                .distinct()
                .forEach(gone -> {
                    String name = FigureNames.dose(gone.name());
                    List<Double> values = values(
                            candidates,
                            one -> one.inPlace()
                                    .filter(place -> place.of().equals(gone.name()))
                                    .map(place -> PERCENT / place.dose())
                                    .orElse(0.0));
                    double room = bands.own().getOrDefault(name, bands.family());
                    Band band = new Band(
                            PERCENT,
                            room,
                            PULL_DOSE,
                            (wish, bound) ->
                                    wish.with(wish.bands().withOwn(name, outwards(Math.abs(bound - PERCENT)))));
                    all.add(new Requirement(name, "%", values, PERCENT - room, PERCENT + room, Requirement.Kind.FIGURE)
                            .with(band));
                });
    }

    private boolean goesForItsEffect(Candidate one) {
        return one.now() > 0
                && without.contains(one.key())
                && !Candidates.isFree(one.card().family());
    }

    private void constituents() {
        bands.constituents().forEach((key, width) -> {
            String name = recast.book().substance(key).map(Substance::inciName).orElse(key);
            List<Double> values = values(
                    candidates, one -> PERCENT * sum(one, share -> share.key().equals(key)));
            around(name, "%", values, width, new Pull(true, PULL_MASS), new Named(key, true));
        });
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
        double room = bands.own().getOrDefault(name, bands.hlb());
        Band.Widened widened = (wish, bound) -> wish.with(wish.bands().withOwn(name, outwards(Math.abs(bound - at))));
        all.add(Requirement.of(name, new Requirement.Mean(masses, sums, at - room, true))
                .with(new Band(at, room, PULL_LITTLE, widened)));
        all.add(Requirement.of(name, new Requirement.Mean(masses, sums, at + room, false))
                .with(new Band(at, room, 0, widened)));
    }

    private Requirement cost(double most) {
        List<Double> values = values(candidates, one -> one.costPer100g().orElse(0));
        Band band = new Band(
                most, 0, 0, (wish, bound) -> wish.with(wish.bands().withCost(Math.ceil(bound * MONEY + EDGE) / MONEY)));
        return new Requirement(COST, "", values, NONE, most, Requirement.Kind.FIGURE).with(band);
    }

    private Requirement natural(double least) {
        List<Double> values = values(
                candidates, one -> PERCENT * one.card().naturalOriginIndex().orElse(0.0));
        Band band = new Band(
                least,
                0,
                0,
                (wish, bound) ->
                        wish.with(wish.bands().withNatural(Math.max(0, Math.floor(bound * PERCENT - EDGE) / PERCENT))));
        return new Requirement(NATURAL, "%", values, least, Double.POSITIVE_INFINITY, Requirement.Kind.FIGURE)
                .with(band);
    }

    private void law() {
        Map<String, List<Share>> contents = new LinkedHashMap<>();
        candidates.forEach(one -> contents.put(one.key(), one.contents()));
        List<Double> even = values(candidates, one -> 1.0 / candidates.size());
        Pot pot = recast.pot(subject(even));
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
