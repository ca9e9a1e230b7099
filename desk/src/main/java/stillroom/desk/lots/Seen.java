package stillroom.desk.lots;

import java.nio.charset.StandardCharsets;
import java.util.zip.CRC32;
import stillroom.formulary.material.Lot;

/** A mark of what a lot looked like, so that an edit of something that has changed since is noticed. */
final class Seen {
    private Seen() {}

    static String of(Lot lot) {
        CRC32 sum = new CRC32();
        sum.update(lot.toString().getBytes(StandardCharsets.UTF_8));
        return Long.toHexString(sum.getValue());
    }
}
