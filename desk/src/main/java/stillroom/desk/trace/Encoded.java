package stillroom.desk.trace;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;

/** Text as it stands in an address. */
final class Encoded {
    private Encoded() {}

    static String of(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }
}
