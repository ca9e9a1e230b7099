package stillroom.formulary.batch;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/**
 * Links the entries of a log: each hash covers the entry and, through the one before, all earlier ones. It shows an
 * alteration only to someone who holds a head hash kept elsewhere, such as printed on the signed record.
 */
public final class Chain {
    /** What stands before the first entry: 64 zeros. */
    public static final String START = "0".repeat(64);

    private Chain() {}

    /**
     * SHA-256 over the previous hash, a line feed and the entry's canonical text in UTF-8, as 64 hexadecimal digits.
     *
     * @param previousHash hash of the entry before, or {@link #START}
     */
    public static String link(String previousHash, String canonicalText) {
        byte[] text = (previousHash + "\n" + canonicalText).getBytes(StandardCharsets.UTF_8);
        return HexFormat.of().formatHex(sha256().digest(text));
    }

    private static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException everyPlatformHasIt) {
            throw new IllegalStateException(everyPlatformHasIt);
        }
    }
}
