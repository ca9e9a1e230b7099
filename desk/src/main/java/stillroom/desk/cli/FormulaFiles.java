package stillroom.desk.cli;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stillroom.desk.chemistry.Studied;
import stillroom.desk.files.FormulaIn;
import stillroom.desk.files.FormulaOut;
import stillroom.desk.materials.Slug;
import stillroom.formulary.formula.FormulaVersion;
import stillroom.formulary.formula.Product;
import stillroom.formulary.material.MaterialBook;
import stillroom.formulary.material.StarterLibrary;
import stillroom.ledger.Ledger;
import stillroom.ledger.store.Aside;
import stillroom.ledger.store.LedgerException;

/** Writes formulas of a workshop, which may be open meanwhile, as files that go under version control. */
final class FormulaFiles {
    private static final int HEAD = 64;

    private FormulaFiles() {}

    /**
     * The newest formula of one product.
     *
     * @param named by its number, or by its name where only one bears it
     */
    static String one(Path workshop, String named) {
        MaterialBook starter = StarterLibrary.load();
        try (Aside copy = Aside.copyOf(workshop);
                Ledger ledger = Ledger.open(copy.folder(), () -> starter)) {
            List<Product> meant = ledger.products().products().stream()
                    .filter(product ->
                            product.name().equalsIgnoreCase(named.strip()) || named.equals(Long.toString(product.id())))
                    .toList();
            if (meant.size() != 1) {
                throw new LedgerException(
                        meant.isEmpty()
                                ? "There is no product \"" + named + "\"."
                                : meant.size() + " products are called \"" + named + "\"; give the number of one.");
            }
            return text(ledger, meant.get(0), starter)
                    .orElseThrow(() -> new LedgerException("\"" + named + "\" has no formula yet."));
        }
    }

    /**
     * The newest formula of every product, under its number and name. A formula file of that name is written again; anything
     * else that stands in the way is left, and refused.
     */
    static List<Path> all(Path workshop, Path into) throws IOException {
        MaterialBook starter = StarterLibrary.load();
        List<Path> written = new ArrayList<>();
        Files.createDirectories(into);
        try (Aside copy = Aside.copyOf(workshop);
                Ledger ledger = Ledger.open(copy.folder(), () -> starter)) {
            for (Product product : ledger.products().products()) {
                Optional<String> text = text(ledger, product, starter);
                if (text.isPresent()) {
                    Path file = into.resolve(product.id() + "-" + Slug.of(product.name()) + ".json");
                    free(file);
                    written.add(Files.writeString(file, text.get()));
                }
            }
        }
        return written;
    }

    private static void free(Path file) throws IOException {
        if (!Files.exists(file)) {
            return;
        }
        try (InputStream there = Files.newInputStream(file)) {
            if (!FormulaIn.looksLikeOne(there.readNBytes(HEAD))) {
                throw new LedgerException("The file " + file + " is no formula file; it is left as it is.");
            }
        }
    }

    private static Optional<String> text(Ledger ledger, Product product, MaterialBook starter) {
        Optional<FormulaVersion> newest = ledger.products().newest(product.id());
        return newest.map(version -> FormulaOut.text(
                ledger, new Studied(product, version, ledger.materials().book(version)), starter));
    }
}
