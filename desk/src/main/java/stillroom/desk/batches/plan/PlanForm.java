package stillroom.desk.batches.plan;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import stillroom.desk.shell.Input;
import stillroom.formulary.plan.Balance;
import stillroom.formulary.plan.BatchSize;
import stillroom.formulary.quantity.Grams;
import stillroom.formulary.quantity.Percent;

/**
 * The size form of a plan, read.
 *
 * @param size none where something typed cannot be taken
 * @param balances those chosen, in the maker's order
 */
record PlanForm(Input input, Optional<BatchSize> size, List<Balance> balances) {
    static final String BY_CONTAINERS = "containers";
    private static final int MOST_BALANCES = 2;

    /** @param owned the workshop's balances */
    static PlanForm read(Input input, List<Balance> owned) {
        List<Balance> balances = owned.isEmpty() ? standIn(input) : chosen(input, owned);
        Optional<BatchSize> size = byContainers(input) ? fromContainers(input) : stated(input);
        return new PlanForm(input, size, balances);
    }

    /** What is to be made, before it is rounded up to the steps of a balance; none while the size cannot be read [g]. */
    Optional<Grams> mass() {
        return size.map(BatchSize::mass);
    }

    static boolean byContainers(Input input) {
        return input.text("by").equals(BY_CONTAINERS);
    }

    /** What goes into one container [g]; none where it cannot be reckoned. */
    static Optional<Grams> fillEach(Input input) {
        Grams overfill = input.grams("overfill", "Overfill").orElse(Grams.ZERO);
        boolean byVolume = input.text("fillUnit").equals("ml");
        Optional<BigDecimal> fill = input.decimal("fill", "The fill", "0", "100000");
        if (fill.isEmpty()) {
            return input.hasProblem("fill") ? Optional.empty() : input.refuse("fill", "What goes into one is missing.");
        }
        if (!byVolume) {
            return Optional.of(new Grams(fill.get()).plus(overfill));
        }
        Optional<BigDecimal> density = input.decimal("density", "Density", "0.2", "3");
        if (density.isEmpty() && !input.hasProblem("density")) {
            return input.refuse(
                    "density",
                    "A fill in ml needs the measured density of the product: weigh a known volume of it, air out.");
        }
        return density.map(d -> new Grams(fill.get().multiply(d)).plus(overfill));
    }

    private static Optional<BatchSize> stated(Input input) {
        Optional<Grams> mass = input.grams("mass", "The batch size");
        if (mass.isEmpty() && !input.hasProblem("mass")) {
            return input.refuse("mass", "The batch size is missing: type the grams to be made.");
        }
        return mass.map(BatchSize.Stated::new);
    }

    private static Optional<BatchSize> fromContainers(Input input) {
        Optional<Integer> containers = input.whole("containers", "The number of containers", 1, 100_000);
        if (containers.isEmpty() && !input.hasProblem("containers")) {
            input.refuse("containers", "The number of containers is missing.");
        }
        Optional<Grams> fillEach = fillEach(input);
        Grams aside = Grams.sum(List.of(
                input.grams("retained", "Retained samples").orElse(Grams.ZERO),
                input.grams("phSample", "pH samples").orElse(Grams.ZERO),
                input.grams("labSample", "Laboratory samples").orElse(Grams.ZERO)));
        Percent loss =
                input.decimal("loss", "Loss", "0", "50").map(Percent::new).orElse(Percent.ZERO);
        if (containers.isEmpty() || fillEach.isEmpty() || !input.isSound()) {
            return Optional.empty();
        }
        return Optional.of(new BatchSize.FromContainers(containers.get(), fillEach.get(), aside, loss));
    }

    private static List<Balance> chosen(Input input, List<Balance> owned) {
        List<String> names = input.all("balance");
        List<Balance> chosen =
                owned.stream().filter(b -> names.contains(b.name())).toList();
        if (chosen.size() > MOST_BALANCES) {
            input.refuse("balance", "A batch uses one balance or two; choose those.");
        }
        return chosen.isEmpty() ? owned.stream().limit(MOST_BALANCES).toList() : chosen;
    }

    /** Where the workshop has no balance on file, the plan asks for the one that stands on the bench. */
    private static List<Balance> standIn(Input input) {
        Grams step = input.decimal("step", "The step", "0.00001", "10")
                .map(Grams::new)
                .orElse(Grams.of("0.1"));
        Grams maximum = input.decimal("maximum", "The maximum", "1", "1000000")
                .map(Grams::new)
                .orElse(Grams.of("2000"));
        if (maximum.compareTo(step) <= 0) {
            input.refuse("maximum", "The maximum must be above the step.");
            return List.of(new Balance("Bench balance", Grams.of("0.1"), Optional.empty(), Grams.of("2000")));
        }
        return List.of(new Balance("Bench balance", step, Optional.empty(), maximum));
    }
}
