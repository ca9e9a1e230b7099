package stillroom.desk.start;

import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Opens the address in the person's browser, where there is a screen. */
final class Browser {
    private Browser() {}

    static void open(String address) {
        command(address).ifPresent(Browser::run);
    }

    private static Optional<List<String>> command(String address) {
        String system = System.getProperty("os.name", "").toLowerCase(Locale.ROOT);
        if (system.contains("mac")) {
            return Optional.of(List.of("open", address));
        }
        boolean hasScreen = System.getenv("DISPLAY") != null || System.getenv("WAYLAND_DISPLAY") != null;
        return hasScreen ? Optional.of(List.of("xdg-open", address)) : Optional.empty();
    }

    private static void run(List<String> command) {
        try {
            new ProcessBuilder(command)
                    .redirectErrorStream(true)
                    .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                    .start();
        } catch (IOException noOpener) {
            // The address was printed; the person can open it by hand.
        }
    }
}
