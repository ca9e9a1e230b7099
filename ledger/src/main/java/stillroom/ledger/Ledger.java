package stillroom.ledger;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import stillroom.formulary.material.MaterialBook;
import stillroom.formulary.material.StarterLibrary;
import stillroom.formulary.trial.TrialSet;
import stillroom.formulary.trial.ViscosityCurve;
import stillroom.ledger.batch.BatchBook;
import stillroom.ledger.document.Drawer;
import stillroom.ledger.document.Happenings;
import stillroom.ledger.export.CsvTables;
import stillroom.ledger.formula.ProductShelf;
import stillroom.ledger.imports.NameChoices;
import stillroom.ledger.label.LabelBook;
import stillroom.ledger.lot.LotBook;
import stillroom.ledger.material.MaterialShelf;
import stillroom.ledger.meter.MeterBook;
import stillroom.ledger.seal.SealBook;
import stillroom.ledger.store.Aside;
import stillroom.ledger.store.Attachments;
import stillroom.ledger.store.Copies;
import stillroom.ledger.store.Database;
import stillroom.ledger.store.LedgerException;
import stillroom.ledger.trace.TraceBook;
import stillroom.ledger.workshop.Equipment;
import stillroom.ledger.workshop.Settings;

/** The workshop's memory: one folder, one file. Safe to use from many threads. */
public final class Ledger implements AutoCloseable {
    private final Database database;
    private final Settings settings;
    private final Equipment equipment;
    private final MaterialShelf materials;
    private final LotBook lots;
    private final ProductShelf products;
    private final BatchBook batches;
    private final LabelBook labels;
    private final MeterBook meters;
    private final TraceBook traces;
    private final Attachments attachments;
    private final SealBook seals;

    private Ledger(Database database, Supplier<? extends MaterialBook> starter) {
        this.database = database;
        this.settings = new Settings(database);
        this.equipment = new Equipment(database);
        this.materials = new MaterialShelf(database, once(starter));
        this.lots = new LotBook(database);
        this.products = new ProductShelf(database, materials);
        this.batches = new BatchBook(database);
        this.labels = new LabelBook(database);
        this.meters = new MeterBook(database);
        this.traces = new TraceBook(database, batches, lots);
        this.attachments = new Attachments(database);
        this.seals = new SealBook(database, batches, attachments);
    }

    /**
     * Opens the workshop in a folder, creating both where there is none.
     *
     * @param starter the starter library, asked for once, when first needed
     * @throws stillroom.ledger.store.LedgerException with one sentence where the folder cannot be written, another copy
     *     uses it, or the file is damaged or from a newer version; nothing is changed then
     */
    public static Ledger open(Path folder, Supplier<? extends MaterialBook> starter) {
        return new Ledger(Database.open(folder), starter);
    }

    /** As {@link #open(Path, Supplier)}, with the starter library of the program. */
    public static Ledger open(Path folder) {
        return open(folder, StarterLibrary::load);
    }

    /** Whether a folder holds a workshop already. */
    public static boolean existsIn(Path folder) {
        return Database.existsIn(folder);
    }

    public Settings settings() {
        return settings;
    }

    public Equipment equipment() {
        return equipment;
    }

    public MaterialShelf materials() {
        return materials;
    }

    public LotBook lots() {
        return lots;
    }

    public ProductShelf products() {
        return products;
    }

    public BatchBook batches() {
        return batches;
    }

    public LabelBook labels() {
        return labels;
    }

    public MeterBook meters() {
        return meters;
    }

    /**
     * The records of one kind that are read and written whole.
     *
     * @param kind name of the drawer, the same for ever, in lower case with hyphens
     */
    public <T> Drawer<T> drawer(String kind, Class<T> type) {
        return new Drawer<>(database, kind, type);
    }

    /**
     * What happened to things of one kind, in order.
     *
     * @param kind the same for ever, in lower case with hyphens
     */
    public <T> Happenings<T> happenings(String kind, Class<T> type) {
        return new Happenings<>(database, kind, type);
    }

    public Attachments attachments() {
        return attachments;
    }

    public SealBook seals() {
        return seals;
    }

    public TraceBook traces() {
        return traces;
    }

    /** What names in spreadsheets have meant. */
    public NameChoices importNames() {
        return new NameChoices(database);
    }

    /** Several changes as one: all are stored, or none where the work or a part of it throws. Others wait meanwhile. */
    public <T> T together(Supplier<T> work) {
        return database.write(sql -> work.get());
    }

    /** Several answers from one consistent moment. */
    public <T> T atOneMoment(Supplier<T> questions) {
        return database.read(sql -> questions.get());
    }

    /** Writes a consistent copy of everything to a new file while work goes on. */
    public void backupTo(Path file) {
        database.copyTo(file);
    }

    /** As {@link #backupTo}, of a folder that this or another process may have open. */
    public static void backup(Path folder, Path file) {
        Copies.copyOf(folder, file);
    }

    /**
     * Writes the workshop in a folder, which this or another process may have open, as CSV tables into another folder that is
     * empty or new.
     *
     * @return the files
     */
    public static List<Path> exportTables(Path folder, Path into) throws IOException {
        Files.createDirectories(into);
        try (Stream<Path> there = Files.list(into)) {
            if (there.findAny().isPresent()) {
                throw new LedgerException("The folder " + into + " is not empty; an export overwrites nothing.");
            }
        }
        try (Aside aside = Aside.copyOf(folder);
                Ledger copy = open(aside.folder())) {
            return new CsvTables(
                            copy.products,
                            copy.materials,
                            copy.lots,
                            copy.batches,
                            copy.drawer(TrialSet.DRAWER, TrialSet.class).list(),
                            copy.drawer(ViscosityCurve.DRAWER, ViscosityCurve.class)
                                    .list())
                    .write(into);
        }
    }

    /**
     * Puts a copy in the place of the workshop in a folder. What stood there is kept beside it under another name.
     *
     * @return where the former file now lies, or the folder itself where there was none
     * @throws stillroom.ledger.store.LedgerException where the copy is not sound or the folder is in use; nothing is
     *     changed then
     */
    public static Path restore(Path copy, Path folder) {
        return Copies.restore(copy, folder);
    }

    @Override
    public void close() {
        database.close();
    }

    private static Supplier<MaterialBook> once(Supplier<? extends MaterialBook> starter) {
        return new Supplier<>() {
            private @Nullable MaterialBook book;

            @Override
            public synchronized MaterialBook get() {
                if (book == null) {
                    book = starter.get();
                }
                return book;
            }
        };
    }
}
