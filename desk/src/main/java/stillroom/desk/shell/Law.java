package stillroom.desk.shell;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import stillroom.formulary.reference.ReferenceFault;
import stillroom.formulary.rule.Country;
import stillroom.formulary.rule.RuleBook;
import stillroom.formulary.rule.RuleTables;
import stillroom.ledger.store.LedgerException;

/** The law on record: the tables of the program, and the maker's own countries in the folder {@code rules} of the data. */
public final class Law {
    private static final String TABLE = ".csv";
    private static final String FOLDER = "rules";

    /** Countries read at the start; set once, before the first page. */
    private static volatile List<Country> own = List.of();

    private static volatile Map<String, String> ownTexts = Map.of();

    private Law() {}

    private static final class Tables {
        static final RuleBook BOOK = with(own);
    }

    /** Everything that judgements look up; read when first asked for. */
    public static RuleBook book() {
        return Tables.BOOK;
    }

    /** The tables of the program with the countries that lie in a data folder, for a command that is done at once. */
    public static RuleBook bookWith(Path dataFolder) {
        return with(countries(dataFolder.resolve(FOLDER)));
    }

    private static RuleBook with(List<Country> countries) {
        RuleBook book = RuleTables.standard();
        for (Country country : countries) {
            book = book.with(country);
        }
        return book;
    }

    /** The text of every table, those of the program and those of the maker's own countries, by file name. */
    public static Map<String, String> texts() {
        Map<String, String> texts = new HashMap<>(RuleTables.texts());
        texts.putAll(ownTexts);
        return texts;
    }

    private static Map<String, String> texts(Path folder) {
        if (!Files.isDirectory(folder)) {
            return Map.of();
        }
        try (Stream<Path> files = Files.walk(folder)) {
            Map<String, String> texts = new HashMap<>();
            for (Path file : files.filter(one -> name(one).endsWith(TABLE)).toList()) {
                texts.put("own " + folder.relativize(file), Files.readString(file));
            }
            return texts;
        } catch (IOException trouble) {
            throw new LedgerException(
                    "The rule tables in " + folder + " cannot be read: " + trouble.getMessage(), trouble);
        }
    }

    /** Codes of the maker's own countries, to choose from. */
    public static List<String> ownMarkets() {
        return own.stream().map(country -> country.law().market()).toList();
    }

    /**
     * Reads the maker's own countries before anything is judged.
     *
     * @throws LedgerException with one sentence that names file and line where a table is not sound
     */
    public static void readOwn(Path dataFolder) {
        own = countries(dataFolder.resolve(FOLDER));
        ownTexts = texts(dataFolder.resolve(FOLDER));
    }

    /** One country for each folder in the folder; none where there is no such folder. */
    public static List<Country> countries(Path folder) {
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        try (Stream<Path> folders = Files.list(folder)) {
            List<Country> countries = new ArrayList<>();
            for (Path one : folders.filter(Files::isDirectory).sorted().toList()) {
                countries.add(country(one));
            }
            return countries;
        } catch (IOException trouble) {
            throw new LedgerException(
                    "The rule tables in " + folder + " cannot be read: " + trouble.getMessage(), trouble);
        }
    }

    private static Country country(Path folder) throws IOException {
        Map<String, String> texts = new HashMap<>();
        try (Stream<Path> files = Files.list(folder)) {
            for (Path file : files.filter(one -> name(one).endsWith(TABLE)).toList()) {
                texts.put(name(file).substring(0, name(file).length() - TABLE.length()), Files.readString(file));
            }
        }
        String market = name(folder).toUpperCase(Locale.ROOT);
        try {
            return RuleTables.country(market, texts);
        } catch (ReferenceFault fault) {
            throw new LedgerException("Rule tables of " + market + ": " + fault.getMessage(), fault);
        }
    }

    private static String name(Path path) {
        return String.valueOf(path.getFileName());
    }
}
