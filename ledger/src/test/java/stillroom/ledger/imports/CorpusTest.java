package stillroom.ledger.imports;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stillroom.formulary.imports.Grid;
import stillroom.formulary.imports.Guidance;
import stillroom.formulary.imports.NameIndex;
import stillroom.formulary.imports.ReadSheet;
import stillroom.formulary.imports.SheetReading;
import stillroom.formulary.material.StarterLibrary;
import stillroom.ledger.json.Json;

/**
 * Messy sheets of our own making, written by three programs and as many invented people, each with its meaning beside it (invented data; the maker of
 * the files stands in the same folder).
 */
class CorpusTest {
    private static final NameIndex NAMES = NameIndex.of(StarterLibrary.load(), Map.of());

    static List<Path> files(String folder) {
        try (Stream<Path> all =
                Files.list(Path.of(Objects.requireNonNull(CorpusTest.class.getResource("/imports/" + folder))
                        .toURI()))) {
            return all.filter(file -> !file.toString().endsWith(".json")
                            && !file.toString().endsWith(".readme"))
                    .sorted()
                    .toList();
        } catch (IOException | URISyntaxException missing) {
            throw new AssertionError(missing);
        }
    }

    static Marks judged(String folder) throws IOException {
        Marks marks = new Marks();
        for (Path file : files(folder)) {
            Meant meant = Json.read(Files.readString(Path.of(file + ".json")), Meant.class);
            List<Grid> grids = SpreadsheetFile.open(file).match(Opened.Sheets::sheets, refused -> {
                throw new AssertionError(refused.sentence());
            });
            List<ReadSheet> sheets = grids.stream()
                    .map(grid -> SheetReading.read(grid, Guidance.NONE, NAMES::knows))
                    .toList();
            marks.judge(file.getFileName().toString(), meant, sheets);
        }
        System.out.println("Spreadsheets in " + folder + " (" + files(folder).size() + " files): " + marks);
        marks.faults.forEach(System.out::println);
        return marks;
    }

    /**
     * What a set must keep: how many lines it has, how many are right at least, how many of these are flagged at most. Nothing is
     * ever silently wrong. What each set was read like on the first try stands in docs/importing.md.
     */
    @ParameterizedTest(name = "{0}")
    @CsvSource(textBlock = """
                    # set, lines, least right, most flagged though right
                    corpus,                783, 783, 49
                    unforeseen,             92,  92, 16
                    second,                 63,  62,  9
                    third,                 113, 106, 20
                    fourth,                 91,  86, 30
                    fifth,                  93,  93, 33
                    sixth,                  84,  81, 34
                    seventh,                86,  86, 35
                    eighth,                 68,  65, 30
                    by-hobbyist,           159, 157,  9
                    by-german-and-french,  157, 156, 11
                    by-teacher,            193, 191,  6
                    by-contract-maker,     159, 158, 25
                    by-southern-and-dutch, 128, 127,  5
                    by-plain-text,         120, 119, 16
                    by-weigher,            107, 105, 13
                    by-stock-keeper,       127, 127,  0
                    by-blogger,            149, 148,  2
                    by-two-languages,      154, 154, 17
                    by-collector,          124, 120, 44
                    by-long-keeper,        213, 206,  7
                    by-all-sorts,          159, 151, 34
                    by-twenty-makers,      248, 245, 78
                    """)
    void aSetIsReadAsItIsMeant(String set, int lines, int right, int flagged) throws IOException {
        Marks marks = judged(set);
        assertThat(marks.lines).isEqualTo(lines);
        assertThat(marks.silent).isZero();
        assertThat(marks.right).isGreaterThanOrEqualTo(right);
        assertThat(marks.rightButFlagged).isLessThanOrEqualTo(flagged);
    }
}
