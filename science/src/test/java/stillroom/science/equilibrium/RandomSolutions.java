package stillroom.science.equilibrium;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;

/** Random mixtures, from traces to syrups; the seed decides everything. */
final class RandomSolutions {
    private final SplittableRandom random;

    RandomSolutions(long seed) {
        random = new SplittableRandom(seed);
    }

    /** One to ten random acids and bases with charges up to 4 and one to three strong ions. */
    Solution next(double mostMolPerKg, boolean mayBeOpen) {
        List<Component> components = new ArrayList<>();
        int count = random.nextInt(0, 11);
        for (int i = 0; i < count; i++) {
            components.add(new Component(system(i), amount(mostMolPerKg)));
        }
        List<StrongIon> ions = new ArrayList<>();
        for (int i = random.nextInt(0, 4); i > 0; i--) {
            int charge = random.nextInt(1, 3) * (random.nextBoolean() ? 1 : -1);
            ions.add(new StrongIon("ion" + i, charge, amount(mostMolPerKg)));
        }
        Optional<DissolvedGas> air = mayBeOpen && random.nextInt(4) == 0
                ? Optional.of(new DissolvedGas(Acids.CARBONIC, 0.034, -19.98, 0.00042))
                : Optional.empty();
        double celsius = random.nextBoolean() ? 25 : random.nextDouble(5, 60);
        return new Solution(components, ions, celsius, air);
    }

    private AcidBase system(int index) {
        int top = random.nextInt(-1, 5);
        int steps = random.nextInt(1, top + 5);
        List<Dissociation> dissociations = new ArrayList<>();
        double pKa = random.nextDouble(-3, 6);
        for (int i = 0; i < steps; i++) {
            dissociations.add(
                    new Dissociation(Math.min(pKa, 15), random.nextDouble(-20, 60), random.nextDouble(-250, 50)));
            pKa += random.nextDouble(-0.5, 5);
        }
        return new AcidBase("x" + index, top, dissociations);
    }

    private double amount(double most) {
        return random.nextInt(10) == 0 ? 0 : most * Math.pow(10, random.nextDouble(-6, 0));
    }
}
