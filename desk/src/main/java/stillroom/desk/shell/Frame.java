package stillroom.desk.shell;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.List;

/**
 * What every page shows around its own content.
 *
 * @param title of the page, also the browser's
 * @param section which entry of the navigation is current
 * @param workshop name of the workshop
 * @param demonstration whether the data is the invented workshop
 * @param timers running at the bench, shown and heard on every page
 * @param notice one sentence about what just happened, empty for none
 */
public record Frame(
        String title,
        Section section,
        String workshop,
        boolean demonstration,
        List<RunningTimer> timers,
        String notice) {
    public Frame {
        timers = List.copyOf(timers);
    }

    /** The entries of the navigation, in order. */
    public enum Section {
        TODAY("/", "Today"),
        PRODUCTS("/products", "Products"),
        BATCHES("/batches", "Batches"),
        SHELF("/materials", "Shelf"),
        WORKSHOP("/workshop", "Workshop");

        private final String path;
        private final String words;

        Section(String path, String words) {
            this.path = path;
            this.words = words;
        }

        public String path() {
            return path;
        }

        public String words() {
            return words;
        }
    }

    /** A timer at the bench. */
    public record RunningTimer(
            long batchId, String batchCode, String timer, String vessel, String label, Instant until) {
        /** Where it can be stopped. */
        public String href() {
            String of = URLEncoder.encode(vessel, StandardCharsets.UTF_8);
            return "/batches/" + batchId + "/bench?vessel=" + of + "#"
                    + URLEncoder.encode(timer, StandardCharsets.UTF_8);
        }
    }

    public Frame withNotice(String sentence) {
        return new Frame(title, section, workshop, demonstration, timers, sentence);
    }
}
