package stillroom.ledger.export;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Path;
import stillroom.ledger.store.Aside;
import stillroom.ledger.store.Copies;
import stillroom.ledger.store.Database;
import stillroom.ledger.store.LedgerException;
import stillroom.ledger.store.Sql;

/** The whole workshop as one JSON file. */
public final class WorkshopFile {
    static final String KIND = "workshop";
    static final int FORMAT = 1;
    static final String BODY = "body";
    static final String TEXT = "Text";
    static final String BYTES = "Base64";

    private WorkshopFile() {}

    /**
     * Writes the workshop in a folder, which may be open here or elsewhere meanwhile.
     *
     * @throws LedgerException where there is none
     */
    public static void write(Path folder, OutputStream file) throws IOException {
        try (Aside aside = Aside.copyOf(folder);
                Database copy = Database.open(aside.folder())) {
            OutputStream buffered = new BufferedOutputStream(file, 1 << 16);
            WorkshopWriter.write(copy, buffered);
            buffered.flush();
        }
    }

    /**
     * Reads a workshop into a folder that holds none yet. Nothing is there in the end where any of it cannot be read.
     *
     * @throws LedgerException with one sentence where it cannot be read, or the folder holds a workshop
     */
    public static void read(InputStream file, Path folder) {
        if (Database.existsIn(folder)) {
            throw new LedgerException("The folder " + folder
                    + " holds a workshop already; a whole workshop is imported into an empty folder.");
        }
        try (Aside aside = Aside.empty()) {
            fill(aside.folder(), file);
            Copies.restore(aside.file(), folder);
        }
    }

    private static void fill(Path aside, InputStream file) {
        try (Database fresh = Database.open(aside)) {
            fresh.write(sql -> {
                sql.run("pragma defer_foreign_keys = on");
                fill(sql, file);
                return true;
            });
        } catch (LedgerException fault) {
            throw fault.isRefusalOfTheFile()
                    ? new LedgerException(
                            "The file does not hold together: something in it is missing, stands twice or is of the wrong kind.",
                            fault)
                    : fault;
        }
    }

    private static void fill(Sql sql, InputStream file) {
        JsonFactory json = new JsonFactory();
        try (JsonParser in = json.createParser(file)) {
            new WorkshopReader(json, sql, in).read();
        } catch (JsonProcessingException broken) {
            throw new LedgerException(
                    "The file breaks off or is no JSON, near line "
                            + broken.getLocation().getLineNr() + ".",
                    broken);
        } catch (IllegalArgumentException | IOException unreadable) {
            throw new LedgerException("The file cannot be read: " + unreadable.getMessage() + ".", unreadable);
        }
    }
}
