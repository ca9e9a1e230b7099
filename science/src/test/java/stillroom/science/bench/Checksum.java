package stillroom.science.bench;

import java.nio.charset.StandardCharsets;
import java.util.zip.CRC32;

/** Tells whether a generated problem is still the one that other solvers have answered. */
public final class Checksum {
    private Checksum() {}

    public static String of(String text) {
        CRC32 sum = new CRC32();
        sum.update(text.getBytes(StandardCharsets.UTF_8));
        return Long.toHexString(sum.getValue());
    }
}
