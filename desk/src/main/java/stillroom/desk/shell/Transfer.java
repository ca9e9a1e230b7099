package stillroom.desk.shell;

import io.javalin.http.Context;
import io.javalin.http.UploadedFile;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Optional;

/** Files that come in with a form, and files that are handed back. */
public final class Transfer {
    /** More than any form or file that is taken; beyond it the other end is cut off. */
    private static final long MOST_TAKEN_OFF_BYTES = 300_000_000;

    private Transfer() {}

    /** The file sent under a name; empty where none was chosen. */
    public static Optional<UploadedFile> sent(Context request, String name) {
        return Optional.ofNullable(request.uploadedFile(name)).filter(file -> file.size() > 0);
    }

    public static byte[] bytes(UploadedFile file) {
        return bytes(file, Integer.MAX_VALUE);
    }

    /** At most so many bytes of a file. */
    public static byte[] bytes(UploadedFile file, int most) {
        try (InputStream content = file.content()) {
            return content.readNBytes(most);
        } catch (IOException broken) {
            throw new UncheckedIOException("the file that was sent cannot be read", broken);
        }
    }

    /** Handed back as a file, never shown within a page: what is in it comes from elsewhere. */
    public static void handBack(Context request, String name, byte[] bytes) {
        String plain = name.replaceAll("[^A-Za-z0-9._-]+", "-");
        request.header("Content-Disposition", "attachment; filename=\"" + plain + "\"");
        request.contentType("application/octet-stream").result(bytes);
    }

    /** Takes what is too large off the line: cut off while it is still sending, the other end would not read the answer. */
    public static void takeOffTheLine(Context request) {
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
