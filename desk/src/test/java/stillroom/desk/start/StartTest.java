package stillroom.desk.start;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a person sees when the program starts, and when it does not: one sentence, and the data untouched. */
class StartTest {
    @TempDir
    Path folder;

    private record Ended(int status, String out, String err) {}

    private static Process launch(String... arguments) throws IOException {
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:TieredStopAtLevel=1",
                "-cp",
                System.getProperty("java.class.path"),
                "stillroom.desk.start.Main"));
        command.addAll(List.of(arguments));
        return new ProcessBuilder(command).start();
    }

    private static Ended run(String... arguments) throws IOException, InterruptedException {
        Process process = launch(arguments);
        String out = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        String err = new String(process.getErrorStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(process.waitFor(60, TimeUnit.SECONDS)).isTrue();
        return new Ended(process.exitValue(), out, err);
    }

    private static void refusesInOneSentence(Ended ended, String... words) {
        assertThat(ended.status()).isNotZero();
        assertThat(ended.err().strip().lines()).hasSize(1);
        assertThat(ended.err()).contains(words).doesNotContain("Exception");
    }

    @Test
    void helpNamesTheOptions() throws Exception {
        Ended help = run("--help");
        assertThat(help.status()).isZero();
        assertThat(help.out()).contains("--data", "--port", "127.0.0.1");
    }

    @Test
    void unknownOptionIsOneSentence() throws Exception {
        refusesInOneSentence(run("--colour", "blue"), "--colour", "--help");
    }

    /** A file and no options takes the short way, an option the long one: both answer alike. */
    @Test
    void commandsAnswerAlikeWithAndWithoutOptions() throws Exception {
        Path problem = Files.writeString(
                folder.resolve("blend.json"),
                "{\"id\": \"µ\", \"materials\": [{\"name\": \"a\", \"cost\": 3}, {\"name\": \"b\", \"cost\": 1, \"max\": 0.6}]}");
        Ended atOnce = run("blend", problem.toString());
        Ended withOption = run("blend", "--seconds", "5", problem.toString());
        assertThat(atOnce.status()).isZero();
        assertThat(atOnce.out()).contains("\"id\":\"µ\"", "\"status\":\"optimal\"", "\"objective\":1.8");
        assertThat(untimed(atOnce)).isEqualTo(untimed(withOption));
    }

    private static String untimed(Ended ended) {
        return ended.out().replaceAll("\"seconds\":[^,}]*", "");
    }

    @Test
    void fileThatIsNotThereIsOneSentence() throws Exception {
        for (String command : List.of("blend", "dose")) {
            refusesInOneSentence(run(command, folder.resolve("none.json").toString()), "none.json", "not there");
        }
    }

    @Test
    void printsItsAddressAndRefusesASecondCopyOnTheSameData() throws Exception {
        Process first = launch("--data", folder.toString(), "--port", "0", "--no-browser");
        try {
            BufferedReader out = first.inputReader(StandardCharsets.UTF_8);
            assertThat(out.readLine()).startsWith("Stillroom is at http://127.0.0.1:");
            refusesInOneSentence(run("--data", folder.toString(), "--port", "0", "--no-browser"), folder.toString());
        } finally {
            first.destroy();
            assertThat(first.waitFor(20, TimeUnit.SECONDS)).isTrue();
        }
    }

    @Test
    void takenPortIsOneSentence() throws Exception {
        try (ServerSocket taken = new ServerSocket(0, 1, InetAddress.getByName("127.0.0.1"))) {
            String port = Integer.toString(taken.getLocalPort());
            refusesInOneSentence(
                    run("--data", folder.toString(), "--port", port, "--no-browser"), "Port " + port, "--port");
        }
    }

    @Test
    void placeThatIsNoFolderIsOneSentence() throws Exception {
        Path file = Files.writeString(folder.resolve("a-file"), "mine");
        refusesInOneSentence(run("--data", file.resolve("below").toString(), "--port", "0", "--no-browser"), "below");
        assertThat(file).hasContent("mine");
    }

    @Test
    void fileOfANewerVersionIsOneSentenceAndUntouched() throws Exception {
        Process first = launch("--data", folder.toString(), "--port", "0", "--no-browser");
        first.inputReader(StandardCharsets.UTF_8).readLine();
        first.destroy();
        assertThat(first.waitFor(20, TimeUnit.SECONDS)).isTrue();
        Path file = folder.resolve("stillroom.db");
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + file);
                Statement statement = connection.createStatement()) {
            statement.executeUpdate(
                    "insert into flyway_schema_history (installed_rank, version, description, type, script,"
                            + " installed_by, execution_time, success) values (999, '999', 'later', 'SQL', 'V999', 'x', 1, 1)");
        }
        byte[] before = Files.readAllBytes(file);
        refusesInOneSentence(run("--data", folder.toString(), "--port", "0", "--no-browser"), "newer");
        assertThat(Files.readAllBytes(file)).isEqualTo(before);
    }
}
