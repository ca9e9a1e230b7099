package stillroom.desk.cli;

import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** What a command that computes reads: one file or standard input. It always answers as JSON. */
final class OneInput {
    @Parameters(arity = "0..1", paramLabel = "FILE", description = "A file, or - for standard input.")
    private String file = "-";

    @Option(names = "--json", description = "Answer as JSON, as this command does anyway.")
    private boolean json;

    String file() {
        return file;
    }
}
