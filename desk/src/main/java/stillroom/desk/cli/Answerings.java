package stillroom.desk.cli;

import java.util.Optional;
import stillroom.formulary.constants.AcidConstantsFile;
import stillroom.science.equilibrium.EquilibriumSolver;
import stillroom.science.equilibrium.WaterModel;

/** The commands that programs call again and again, each with nothing but a file. */
public final class Answerings {
    private Answerings() {}

    /** By the name of the command. */
    public static Optional<Answering> named(String command) {
        return switch (command) {
            case "blend" -> Optional.of(blends());
            case "design" -> Optional.of(new Designs());
            case "dose" -> Optional.of(doses());
            case "equilibrium" -> Optional.of(equilibria());
            default -> Optional.empty();
        };
    }

    private static Answering blends() {
        return new Blends(Blends.USUAL_SECONDS);
    }

    static Answering doses() {
        TitrationReader reader = new TitrationReader(new SolutionReader(AcidConstantsFile.shipped()));
        return new JsonLines(asked -> DoseWriter.write(reader.read(asked)));
    }

    static Answering equilibria() {
        SolutionReader reader = new SolutionReader(AcidConstantsFile.shipped());
        EquilibriumSolver solver = new EquilibriumSolver(WaterModel.STANDARD);
        return new JsonLines(asked -> EquilibriumWriter.write(solver.solve(reader.read(asked))));
    }
}
