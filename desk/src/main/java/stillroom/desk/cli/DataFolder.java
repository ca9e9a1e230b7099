package stillroom.desk.cli;

import java.nio.file.Path;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** The option that names the folder of a workshop, the same for all commands that open one, before or after the command. */
public final class DataFolder {
    public static final Path USUAL = Path.of(System.getProperty("user.home"), "Stillroom");

    @Option(
            names = "--data",
            paramLabel = "DIR",
            description = "Folder of the workshop's data. Usually Stillroom in your home folder.")
    private @Nullable Path path;

    @Spec(Spec.Target.MIXEE)
    private @Nullable CommandSpec command;

    Path path() {
        if (path != null) {
            return path;
        }
        OptionSpec before = command == null || command.parent() == null
                ? null
                : command.parent().findOption("--data");
        Path named = before == null ? null : before.getValue();
        return named == null ? USUAL : named;
    }
}
