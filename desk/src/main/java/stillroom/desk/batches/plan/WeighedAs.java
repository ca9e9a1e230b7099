package stillroom.desk.batches.plan;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import stillroom.desk.batches.premix.PremixDrawers;
import stillroom.desk.shell.Choice;
import stillroom.desk.shell.Input;
import stillroom.formulary.formula.Amount;
import stillroom.formulary.formula.Formula;
import stillroom.formulary.formula.Line;
import stillroom.formulary.formula.Phase;
import stillroom.formulary.material.CardsInstead;
import stillroom.formulary.material.Certificate;
import stillroom.formulary.material.Lot;
import stillroom.formulary.material.LotCard;
import stillroom.formulary.material.Material;
import stillroom.formulary.material.MaterialBook;
import stillroom.formulary.material.Strength;
import stillroom.formulary.plan.LineLess;
import stillroom.formulary.plan.LotStock;
import stillroom.formulary.plan.PremixRecipe;
import stillroom.formulary.plan.PremixUse;
import stillroom.formulary.plan.SameActive;
import stillroom.formulary.quantity.Grams;
import stillroom.formulary.quantity.PercentRange;
import stillroom.ledger.lot.StockedLot;

/**
 * How lines are weighed otherwise than the formula says: from a premix, or with a lot of another strength.
 *
 * @param formula as it is weighed
 * @param book with the cards of the lots that count
 * @param premixes in use
 * @param choices what the maker may choose, per line
 */
public record WeighedAs(
        Formula formula,
        MaterialBook book,
        List<PremixUse> premixes,
        List<LineChoice> choices,
        Optional<LineLess> less) {
    /** Begins the names of the fields in which a premix lot is chosen. */
    static final String PREMIX = "weigh-";
    /** Begins the names of the fields in which same grams or same active is chosen. */
    static final String ACTIVE = "active-";

    private static final String SAME_ACTIVE = "same-active";
    /** Below this a lot is as strong as its card. */
    private static final double NOTEWORTHY = 0.002;

    /** A question about one line. */
    public record LineChoice(String field, String label, List<Choice> choices, String value) {
        public LineChoice {
            choices = List.copyOf(choices);
        }
    }

    static WeighedAs of(PlanDesk desk, Input input, PlanForm form) {
        Reading reading = new Reading(desk, input, form);
        desk.version().formula().phases().forEach(reading::phase);
        return new WeighedAs(
                reading.formula,
                new CardsInstead(desk.book(), reading.cards),
                List.copyOf(reading.premixes),
                List.copyOf(reading.choices),
                reading.less);
    }

    /** Limits of the lines as they are weighed: a premix may be more of its line than the material. */
    Map<String, PercentRange> allowed(Map<String, PercentRange> limits) {
        Map<String, PercentRange> allowed = less.map(one -> one.applied(limits)).orElse(limits);
        for (PremixUse use : premixes) {
            allowed = use.applied(allowed);
        }
        return allowed;
    }

    /** Standard uncertainty that a line has from its premix, as a part of itself. */
    static double relative(PercentRange range) {
        double low = range.low().value().doubleValue();
        double high = range.high().value().doubleValue();
        return low + high > 0 ? (high - low) / 2 / (low + high) : 0;
    }

    private static final class Reading {
        private final PlanDesk desk;
        private final Input input;
        private final Map<String, Material> cards = new HashMap<>();
        private final List<PremixUse> premixes = new ArrayList<>();
        private final List<LineChoice> choices = new ArrayList<>();
        private final PlanForm form;
        private final Optional<LineLess> less;
        private Formula formula;

        Reading(PlanDesk desk, Input input, PlanForm form) {
            this.desk = desk;
            this.input = input;
            this.form = form;
            this.less = less();
            this.formula = less.map(one -> one.applied(desk.version().formula()))
                    .orElse(desk.version().formula());
        }

        /** Of a batch that is made to be blended with one in which a line is over. */
        private Optional<LineLess> less() {
            Optional<Grams> less = input.grams("less", "What the line holds less");
            if (form.mass().isEmpty() || less.isEmpty()) {
                return Optional.empty();
            }
            LineLess line =
                    new LineLess(input.text("lessLine"), less.get(), form.mass().get());
            return line.fits(desk.version().formula())
                    ? Optional.of(line)
                    : input.refuse("mass", "So small a batch cannot hold so much less of one line: make more.");
        }

        void phase(Phase phase) {
            for (Line line : phase.lines()) {
                strength(line);
                premix(phase, line);
            }
        }

        private void strength(Line line) {
            Optional<Material> card = desk.book().material(line.materialKey());
            if (card.isEmpty()) {
                return;
            }
            List<StockedLot> sound = soundLots(line.materialKey());
            LotStrengths lots = LotStrengths.of(card.get(), sound, needed(line));
            lots.card(desk.book()).ifPresent(as -> cards.put(as.key(), as));
            OptionalDouble factor = lots.factor();
            if (factor.isEmpty() || Math.abs(factor.getAsDouble() - 1) < NOTEWORTHY) {
                return;
            }
            SameActive same = new SameActive(line.id(), factor.getAsDouble());
            if (!same.fits(formula)) {
                return;
            }
            String chosen = input.text(ACTIVE + line.id());
            if (chosen.equals(SAME_ACTIVE)) {
                formula = same.applied(formula);
            }
            choices.add(new LineChoice(
                    ACTIVE + line.id(),
                    card.get().name() + ": " + lots.says() + ", the card says "
                            + LotStrengths.percent(card.get().strength().orElseThrow()) + " %",
                    List.of(
                            new Choice("", "Same grams"),
                            new Choice(SAME_ACTIVE, "Same active matter; the q.s. line takes the difference")),
                    chosen));
        }

        /** What the line takes by the card; none while the size is not known [g]. */
        private Optional<Grams> needed(Line line) {
            return form.mass()
                    .flatMap(mass -> line.amount() instanceof Amount.Fixed fixed
                            ? Optional.of(fixed.percent().of(mass))
                            : Optional.empty());
        }

        private void premix(Phase phase, Line line) {
            List<Choice> lots = new ArrayList<>(List.of(new Choice("", "As it is")));
            String chosen = input.text(PREMIX + line.id());
            for (Line carrier : phase.lines()) {
                if (carrier.id().equals(line.id())) {
                    continue;
                }
                for (PremixRecipe recipe :
                        new PremixDrawers(desk.desk()).diluting(line.materialKey(), carrier.materialKey())) {
                    sound(recipe.materialKey()).forEach(lot -> offer(line, carrier, recipe, lot, chosen, lots));
                }
            }
            if (lots.size() > 1) {
                choices.add(new LineChoice(
                        PREMIX + line.id(),
                        desk.book()
                                        .material(line.materialKey())
                                        .map(Material::name)
                                        .orElse(line.materialKey()) + ": weighed",
                        lots,
                        chosen));
            }
        }

        private List<StockedLot> soundLots(String key) {
            return desk.desk().ledger().lots().ofMaterial(key).stream()
                    .filter(stocked -> stocked.onHand().signum() > 0)
                    .filter(stocked -> stocked.lot().state() == Lot.State.RELEASED
                            && !stocked.lot().expiredOn(desk.desk().today()))
                    .toList();
        }

        private List<Lot> sound(String key) {
            return soundLots(key).stream().map(StockedLot::lot).toList();
        }

        private void offer(Line line, Line carrier, PremixRecipe recipe, Lot lot, String chosen, List<Choice> lots) {
            Optional<Strength> strength = lot.certificate()
                    .flatMap(Certificate::strength)
                    .or(() -> desk.book().material(recipe.materialKey()).flatMap(Material::strength));
            if (strength.isEmpty()) {
                return;
            }
            PremixUse use = new PremixUse(
                    line.id(), recipe.materialKey(), strength.get().percent().middle(), carrier.id());
            if (!use.fits(formula)) {
                return;
            }
            lots.add(new Choice(
                    lot.code(), "From premix lot " + lot.code() + ", " + LotStrengths.percent(strength.get()) + " %"));
            if (lot.code().equals(chosen)) {
                formula = use.applied(formula);
                premixes.add(use);
                desk.book()
                        .material(recipe.materialKey())
                        .ifPresent(card -> cards.put(
                                card.key(), LotCard.of(card, lot, desk.book()).card()));
            }
        }
    }

    /** The lots that a plan may count on: of the formula as it is weighed; a premix only from the lot chosen. */
    List<LotStock> shelf(PlanDesk desk, Input input) {
        List<String> chosen =
                premixes.stream().map(use -> input.text(PREMIX + use.lineId())).toList();
        List<String> premixKeys = premixes.stream().map(PremixUse::premixKey).toList();
        List<String> wanted = formula.lines().stream().map(Line::materialKey).toList();
        return desk.desk().ledger().lots().all().stream()
                .filter(stocked -> wanted.contains(stocked.lot().materialKey()))
                .filter(stocked -> !premixKeys.contains(stocked.lot().materialKey())
                        || chosen.contains(stocked.lot().code()))
                .map(stocked -> new LotStock(stocked.lot(), stocked.onHand()))
                .toList();
    }
}
