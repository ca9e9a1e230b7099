package stillroom.ledger.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.stream.Stream;

/** A folder of its own for work on the side, such as on a copy of a workshop that is in use; gone when closed. */
public final class Aside implements AutoCloseable {
    private final Path folder;

    private Aside(Path folder) {
        this.folder = folder;
    }

    /** With nothing in it yet. */
    public static Aside empty() {
        try {
            return new Aside(Files.createTempDirectory("stillroom"));
        } catch (IOException stuck) {
            throw new LedgerException("The temporary folder cannot be written.", stuck);
        }
    }

    /**
     * With a copy of the workshop in a folder, which may be open here or elsewhere meanwhile.
     *
     * @throws LedgerException where there is none
     */
    public static Aside copyOf(Path workshop) {
        Aside aside = empty();
        try {
            Copies.copyOf(workshop, aside.file());
            return aside;
        } catch (RuntimeException trouble) {
            aside.close();
            throw trouble;
        }
    }

    public Path folder() {
        return folder;
    }

    /** Where the data file of the folder lies. */
    public Path file() {
        return folder.resolve(Database.FILE_NAME);
    }

    @Override
    public void close() {
        try (Stream<Path> all = Files.walk(folder)) {
            for (Path one : all.sorted(Comparator.reverseOrder()).toList()) {
                Files.deleteIfExists(one);
            }
        } catch (IOException left) {
            // What cannot be taken away from the temporary folder is left to the system.
        }
    }
}
