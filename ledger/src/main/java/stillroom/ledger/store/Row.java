package stillroom.ledger.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** One row of an answer, read by column name. Valid only while its reader runs. */
public final class Row {
    private final ResultSet result;

    Row(ResultSet result) {
        this.result = result;
    }

    /** A text that is never missing. */
    public String text(String column) {
        return maybeText(column)
                .orElseThrow(() -> new LedgerException("The data file lacks a value in " + column + "."));
    }

    public Optional<String> maybeText(String column) {
        return Sql.asked(() -> Optional.ofNullable(result.getString(column)));
    }

    /** Bytes that are never missing. */
    public byte[] bytes(String column) {
        byte[] bytes = Sql.asked(() -> result.getBytes(column));
        return bytes == null ? new byte[0] : bytes;
    }

    /** The value as the file holds it: a text, a whole number, bytes, or nothing. */
    public @Nullable Object value(String column) {
        return Sql.asked(() -> result.getObject(column));
    }

    /** An integer; 0 where it is missing. */
    public long integer(String column) {
        return Sql.asked(() -> result.getLong(column));
    }

    public Optional<Long> maybeInteger(String column) {
        return Sql.asked(() -> {
            long value = result.getLong(column);
            return result.wasNull() ? Optional.<Long>empty() : Optional.of(value);
        });
    }

    /** Moves on; false after the last row. */
    boolean next() throws SQLException {
        return result.next();
    }
}
