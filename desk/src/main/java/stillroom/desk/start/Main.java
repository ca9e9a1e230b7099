package stillroom.desk.start;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import stillroom.desk.cli.Answering;
import stillroom.desk.cli.Answerings;

/**
 * {@code ./stillroom}. A command that programs call again and again, with a file and no options, is answered at once: reading
 * a command line as {@link Program} does takes longer than solving a problem.
 */
public final class Main {
    private Main() {}

    public static void main(String[] arguments) {
        PrintWriter out = inUtf8(FileDescriptor.out);
        PrintWriter err = inUtf8(FileDescriptor.err);
        Optional<Answering> atOnce = atOnce(arguments);
        int status =
                atOnce.isPresent() ? answer(atOnce.get(), arguments[1], out, err) : Program.run(out, err, arguments);
        if (status != Program.RUNNING) {
            System.exit(status);
        }
    }

    private static Optional<Answering> atOnce(String... arguments) {
        boolean alone = arguments.length == 2 && !isOption(arguments[1]);
        return alone ? Answerings.named(arguments[0]) : Optional.empty();
    }

    private static boolean isOption(String argument) {
        return argument.startsWith("-") && !argument.equals("-") || argument.startsWith("@");
    }

    private static int answer(Answering answering, String file, PrintWriter out, PrintWriter err) {
        try {
            return answering.answer(file, out, err);
        } catch (IOException | RuntimeException fault) {
            err.println(Faults.sentence(fault));
            return 1;
        }
    }

    /** JSON is UTF-8 whatever the terminal says. */
    private static PrintWriter inUtf8(FileDescriptor to) {
        return new PrintWriter(new FileOutputStream(to), true, StandardCharsets.UTF_8);
    }
}
