package stillroom.ledger.store;

import java.sql.SQLException;
import org.sqlite.SQLiteException;

/** What a database error means to the maker. */
final class Trouble {
    private Trouble() {}

    static LedgerException sentence(SQLException e) {
        return new LedgerException(words(e), e);
    }

    private static String words(SQLException e) {
        if (!(e instanceof SQLiteException lite)) {
            return "The data file could not be used: " + e.getMessage();
        }
        // Extended codes carry the plain one in their low byte.
        return switch (lite.getResultCode().code & 0xff) {
            case 5, 6 -> "The data file is busy with another program; nothing was stored.";
            case 8 -> "The data file cannot be written; nothing was stored.";
            case 10 -> "The disk reported an error; nothing of this was stored.";
            case 11 -> "The data file is damaged; restore a backup.";
            case 13 -> "The disk is full; nothing of this was stored.";
            case 14 -> "The data file cannot be opened.";
            case 19 -> "The data file refused this: " + lite.getMessage();
            case 26 -> "The data file is not a Stillroom file, or it is damaged; restore a backup.";
            default -> "The data file could not be used: " + lite.getMessage();
        };
    }
}
