package stillroom.ledger.store;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Optional;

/** Documents, kept by the SHA-256 of their bytes; the same document is kept once. Thread-safe. */
public final class Attachments {
    private final Database database;

    public Attachments(Database database) {
        this.database = database;
    }

    /** Keeps a document and says its digest, 64 hexadecimal digits. */
    public String put(String name, byte[] bytes) {
        String digest = digest(bytes);
        database.write(sql -> sql.run(
                "insert into attachment (digest, name, body) values (?, ?, ?) on conflict (digest) do nothing",
                digest,
                name,
                bytes));
        return digest;
    }

    public Optional<byte[]> get(String digest) {
        return database.read(
                sql -> sql.first("select body from attachment where digest = ?", row -> row.bytes("body"), digest));
    }

    /** SHA-256 as 64 hexadecimal digits. */
    public static String digest(byte[] bytes) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
        } catch (NoSuchAlgorithmException everyPlatformHasIt) {
            throw new IllegalStateException(everyPlatformHasIt);
        }
    }
}
