package stillroom.ledger.batch;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** The chain of hashes through a log: each covers the text of its entry and the hash before it, so all that came earlier. */
final class Chain {
    private Chain() {}

    /** Where the chain of a batch begins: over the batch and the kept version that it is made from (empty if none). */
    static String begin(String batchBody, String versionBody) {
        return sha256(batchBody + "\n" + versionBody);
    }

    static String next(String before, String entryBody) {
        return sha256(before + "\n" + entryBody);
    }

    private static String sha256(String text) {
        try {
            MessageDigest digest = MessageDigest.getInstance("SHA-256");
            return HexFormat.of().formatHex(digest.digest(text.getBytes(StandardCharsets.UTF_8)));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }
}
