package stillroom.desk.scale;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import stillroom.science.weighing.LineParts;
import stillroom.science.weighing.ScaleLine;

/**
 * A serial line of this computer, read as the file that the system makes of it. The system sets its speed; nothing is
 * sent to the balance.
 */
record SerialLine(Path device) {
    private static final int PIECE = 256;

    /** The last complete line that can be read within the time; none where nothing came or it cannot be opened. */
    Optional<ScaleLine.Reading> newest(ScaleLine pattern, Duration patience) {
        AtomicReference<ScaleLine.Reading> newest = new AtomicReference<>();
        Thread reader = new Thread(() -> read(pattern, patience, newest), "serial line");
        reader.setDaemon(true);
        reader.start();
        try {
            // A line that sends nothing keeps the reader waiting: it is left behind and ends with the line.
            reader.join(patience.toMillis() + 200);
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
        }
        return Optional.ofNullable(newest.get());
    }

    private void read(ScaleLine pattern, Duration patience, AtomicReference<ScaleLine.Reading> newest) {
        long until = System.nanoTime() + patience.toNanos();
        LineParts parts = LineParts.NONE;
        boolean first = !Files.isRegularFile(device);
        byte[] piece = new byte[PIECE];
        try (InputStream stream = Files.newInputStream(device)) {
            int count = stream.read(piece);
            while (count >= 0 && System.nanoTime() < until && !found(newest, first)) {
                parts = parts.and(new String(piece, 0, count, StandardCharsets.ISO_8859_1));
                for (String line : parts.lines()) {
                    // Opened in the middle of a line, its first one may be the end of a longer number.
                    if (!first) {
                        pattern.read(line).ifPresent(newest::set);
                    }
                    first = false;
                }
                count = stream.read(piece);
            }
        } catch (IOException unreadable) {
            // Said as "nothing came": the weight is typed then.
            return;
        }
    }

    /** A device is left as soon as it is at rest; a file is read to its end. */
    private boolean found(AtomicReference<ScaleLine.Reading> newest, boolean first) {
        ScaleLine.Reading reading = newest.get();
        return !first && !Files.isRegularFile(device) && reading != null && reading.stable();
    }
}
