package stillroom.formulary.reformulation;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
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
    private static final double NONE = Double.NEGATIVE_INFINITY;
    /** Counts so far off that a newcomer without a figure is not taken where HLB is kept. */
    private static final double UNKNOWN_HLB = 200;

    private final Recast recast;
    private final Bands bands;
    private final List<Candidate> candidates;
    private final List<Double> now;
    private final List<Requirement> all = new ArrayList<>();

    private Requirements(Recast recast, Bands bands, List<Candidate> candidates) {
        this.recast = recast;
        this.bands = bands;
        this.candidates = candidates;
        this.now = candidates.stream().map(Candidate::now).toList();
    }

    static List<Requirement> of(Recast recast, Bands bands, List<Candidate> candidates) {
        Requirements made = new Requirements(recast, bands, candidates);
        made.around("Water", "%", values(candidates, one -> 100 * sum(one, Share::isWater)), bands.water(), false);
        made.charge();
        made.activeMatter();
        made.families();
        made.hlb("HLB of the emulsifiers", Emulsion::between, Substance::hlb, Emulsion::hlbOrWhy);
        made.hlb("Required HLB of the oils", Emulsion::oils, Substance::requiredHlb, Emulsion::requiredHlbOrWhy);
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

    /** Permanent charges only: what the pH makes of the others is for the evaluation to say. */
    private void charge() {
        List<Double> values = values(
                candidates,
                one -> one.contents().stream()
                        .mapToDouble(share -> 1000 * share.nominal() * charge(share))
                        .sum());
        double at = new Requirement("", "", values, NONE, Double.POSITIVE_INFINITY, Requirement.Kind.FIGURE).of(now);
        if (at != 0) {
            String name = at < 0 ? "Anionic charge, net" : "Cationic charge, net";
            List<Double> positive =
                    values.stream().map(value -> value * Math.signum(at) + 0.0).toList();
            around(name, "mmol per kg", positive, bands.charge(), true);
        }
    }

    private static double charge(Share share) {
        double sign = share.hasCharge(ChargeClass.CATIONIC) ? 1 : share.hasCharge(ChargeClass.ANIONIC) ? -1 : 0;
        return sign * share.substance().flatMap(Substance::chargeMolPerKilogram).orElse(0.0);
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

    /** A mean is kept by a sum: (figure - lowest) times mass adds up to 0 or more. Only where it applies now. */
    private void hlb(
            String name,
            Function<List<Share>, List<Share>> concerned,
            Function<Substance, Optional<Interval>> figure,
            Function<List<Share>, stillroom.formulary.evaluation.Outcome<stillroom.formulary.evaluation.Figure>>
                    present) {
        List<Share> shares = Pot.open(
                        subject(now),
                        recast.book(),
                        recast.prices(),
                        recast.evaluator().rules(),
                        recast.asOf())
                .shares();
        present.apply(shares)
                .match(
                        known -> {
                            mean(name + ", from below", concerned, figure, known.value() - bands.hlb(), 1);
                            mean(name + ", from above", concerned, figure, known.value() + bands.hlb(), -1);
                            return true;
                        },
                        because -> false);
    }

    private void mean(
            String name,
            Function<List<Share>, List<Share>> concerned,
            Function<Substance, Optional<Interval>> figure,
            double bound,
            double sign) {
        List<Double> values = values(
                candidates,
                one -> concerned.apply(one.contents()).stream()
                        .mapToDouble(share -> sign
                                * share.nominal()
                                * share.substance()
                                        .flatMap(figure)
                                        .map(hlb -> hlb.middle() - bound)
                                        .orElse(-sign * UNKNOWN_HLB))
                        .sum());
        all.add(new Requirement(name, "", values, 0, Double.POSITIVE_INFINITY, Requirement.Kind.MEAN));
    }

    Requirement cost(double min, double max) {
        return new Requirement(
                "Cost per 100 g",
                "",
                values(candidates, one -> one.costPer100g().orElse(0)),
                min,
                max,
                Requirement.Kind.FIGURE);
    }

    Requirement natural(double min, double max) {
        return new Requirement(
                "Natural origin",
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
