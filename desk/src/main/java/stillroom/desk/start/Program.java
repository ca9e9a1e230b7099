package stillroom.desk.start;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import stillroom.desk.cli.BackupCommand;
import stillroom.desk.cli.BlendCommand;
import stillroom.desk.cli.DataFolder;
import stillroom.desk.cli.DesignCommand;
import stillroom.desk.cli.DoseCommand;
import stillroom.desk.cli.EquilibriumCommand;
import stillroom.desk.cli.ExportCommand;
import stillroom.desk.cli.ImportCommand;
import stillroom.desk.cli.RestoreCommand;
import stillroom.desk.cli.VerifyCommand;
import stillroom.desk.cli.formula.EvaluateCommand;
import stillroom.desk.cli.formula.LabelCommand;
import stillroom.desk.cli.formula.PlanCommand;
import stillroom.desk.cli.formula.RecipeCommand;
import stillroom.desk.shell.Law;
import stillroom.desk.shell.Workspace;
import stillroom.ledger.store.LedgerException;

/** {@code ./stillroom}: opens the workshop and serves it to the browser of this computer. */
@Command(
        name = "stillroom",
        description =
                "The bench-side program of a small cosmetic workshop, served to the browser of this computer only.",
        mixinStandardHelpOptions = true,
        version = "Stillroom 0.1.0",
        sortOptions = false,
        subcommands = {
            EvaluateCommand.class,
            LabelCommand.class,
            PlanCommand.class,
            RecipeCommand.class,
            EquilibriumCommand.class,
            DoseCommand.class,
            DesignCommand.class,
            BlendCommand.class,
            ImportCommand.class,
            ExportCommand.class,
            BackupCommand.class,
            RestoreCommand.class,
            VerifyCommand.class
        })
final class Program implements Callable<Integer> {
    static final int USUAL_PORT = 8417;

    @Option(
            names = "--data",
            paramLabel = "DIR",
            description =
                    "Folder of the workshop's data; made where there is none. Usually Stillroom in your home folder.")
    private Path data = DataFolder.USUAL;

    @Option(
            names = "--port",
            paramLabel = "N",
            description = "Port on 127.0.0.1; 0 takes any free one. Usually " + USUAL_PORT + ".")
    private int port = USUAL_PORT;

    @Option(names = "--no-browser", description = "Print the address and open no browser.")
    private boolean noBrowser;

    @Option(
            names = "--first-page-only",
            hidden = true,
            description = "Answer one page to oneself, compute a little and stop: warms the class archive.")
    private boolean firstPageOnly;

    /** @return the exit status, or {@link #RUNNING} */
    static int run(PrintWriter out, PrintWriter err, String... arguments) {
        CommandLine line = commandLine(arguments)
                .setOut(out)
                .setErr(err)
                .setParameterExceptionHandler(Program::misread)
                .setExecutionExceptionHandler((fault, command, parsed) -> refused(command, fault));
        return line.execute(line.getCommandSpec().userObject() instanceof Program ? arguments : behind(arguments));
    }

    /** Reading all commands takes longer than solving a problem: those that programs call again and again stand alone. */
    private static CommandLine commandLine(String... arguments) {
        String first = arguments.length == 0 ? "" : arguments[0];
        return switch (first) {
            case "blend" -> alone(new BlendCommand(), first);
            case "design" -> alone(new DesignCommand(), first);
            case "dose" -> alone(new DoseCommand(), first);
            case "equilibrium" -> alone(new EquilibriumCommand(), first);
            default -> new CommandLine(new Program());
        };
    }

    private static CommandLine alone(Object command, String name) {
        return new CommandLine(command).setCommandName("stillroom " + name);
    }

    private static String[] behind(String... arguments) {
        return Arrays.copyOfRange(arguments, 1, arguments.length);
    }

    /** Not an exit status: the server runs on. */
    static final int RUNNING = -1;

    @Override
    public Integer call() {
        if (port < 0 || port > 65_535) {
            throw new LedgerException("Port " + port + " does not exist; choose 1 to 65535, or 0 for any free one.");
        }
        Law.readOwn(data);
        Workspace workspace = Workspace.open(data, Starter.LIBRARY);
        Running running = Running.start(workspace, port);
        if (firstPageOnly) {
            running.visitAndStop();
            Warming.compute();
            return 0;
        }
        running.announce(System.out, !noBrowser);
        return RUNNING;
    }

    private static int misread(CommandLine.ParameterException fault, String[] arguments) {
        PrintWriter out = fault.getCommandLine().getErr();
        out.println(fault.getMessage() + ". See ./stillroom --help");
        return 2;
    }

    /** One sentence for the person; where the answer was to be JSON, the same there. */
    private static int refused(CommandLine command, Exception fault) {
        String sentence = Faults.sentence(fault);
        command.getErr().println(sentence);
        if (command.getParseResult().hasMatchedOption("--json")) {
            command.getOut().println(JsonNodeFactory.instance.objectNode().put("error", sentence));
        }
        return 1;
    }
}
