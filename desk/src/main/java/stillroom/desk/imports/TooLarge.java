package stillroom.desk.imports;

import io.javalin.http.Context;
import java.io.IOException;
import java.io.InputStream;

/** Takes what is too large off the line, so that the other end comes to read the answer. */
final class TooLarge {
    private static final long MOST_TAKEN_OFF_BYTES = 300_000_000;

    private TooLarge() {}

    static void takeOffTheLine(Context request) {
        try {
            InputStream rest = request.req().getInputStream();
            byte[] thrownAway = new byte[1 << 16];
            long left = MOST_TAKEN_OFF_BYTES;
            int read = 0;
            while (left > 0 && read >= 0) {
                read = rest.read(thrownAway);
                left -= read;
            }
        } catch (IOException | IllegalStateException gone) {
            // Nobody is left to read the answer.
        }
    }
}
