package stillroom.ledger.imports;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import stillroom.formulary.imports.Guidance;
import stillroom.formulary.imports.NameIndex;
import stillroom.formulary.imports.ReadSheet;
import stillroom.formulary.imports.SheetReading;
import stillroom.formulary.material.MaterialBook;
import stillroom.formulary.material.StarterLibrary;
import stillroom.formulary.material.Substance;
import stillroom.ledger.json.Json;

/** Formulas of the corpus laid out in hundreds of other ways: what is not read right must be flagged. */
class RelaidTest {
    private static final MaterialBook BOOK = StarterLibrary.load();
    private static final NameIndex NAMES = NameIndex.of(BOOK, Map.of());

    @Test
    void noLineOfASheetLaidOutAnewIsSilentlyWrong() throws IOException {
        int from = Integer.getInteger("relaid.from", 0);
        int count = Integer.getInteger("relaid.count", 400);
        List<Meant.Formula> formulas = formulas();
        Marks all = new Marks();
        for (int seed = from; seed < from + count; seed++) {
            Relaid.Sheet sheet = sheet(seed, formulas);
            ReadSheet read = SheetReading.read(sheet.grid(), Guidance.NONE, NAMES::knows);
            int silent = all.silent;
            int faults = all.faults.size();
            all.judge("seed " + seed, sheet.meant(), List.of(read));
            boolean faulty = seed == Integer.getInteger("relaid.show", -1)
                    || Boolean.getBoolean("relaid.all") && all.faults.size() > faults;
            if (all.silent > silent || faulty || seed == Integer.getInteger("relaid.show", -1)) {
                System.out.println("---- seed " + seed + " " + sheet.how());
                sheet.grid()
                        .rows()
                        .forEach(row -> System.out.println(
                                "    " + row.stream().map(cell -> cell.text()).collect(Collectors.joining(" | "))));
            }
        }
        all.faults.stream()
                .filter(fault ->
                        fault.startsWith("SILENT") || Boolean.getBoolean("relaid.all") && fault.startsWith("flagged"))
                .forEach(System.out::println);
        if (Boolean.getBoolean("relaid.all")) {
            all.needless.forEach((doubt, times) -> System.out.println("needless " + times + " " + doubt));
        }
        System.out.println("Sheets laid out anew: " + all);
        assertThat(all.lines).isGreaterThan(count * 4);
        assertThat(all.silent).isZero();
    }

    /** One formula, or two below or beside each other, or one changed over; some with names that nobody knows. */
    private static Relaid.Sheet sheet(int seed, List<Meant.Formula> formulas) {
        Meant.Formula formula = formulas.get(seed % formulas.size());
        Relaid.Sheet one =
                Relaid.of(seed, seed % 4 == 1 ? RelaidTwist.strange(seed, formula) : formula, RelaidTest::inci);
        Relaid.Sheet other = Relaid.of(seed + 50_000L, formulas.get((seed + 7) % formulas.size()), RelaidTest::inci);
        return switch (seed % 30) {
            case 3, 4, 5 -> RelaidTwist.below(one, other);
            case 11, 12 -> RelaidTwist.beside(one, other);
            case 20 -> RelaidTwist.turned(one);
            default -> one;
        };
    }

    /** Formulas in three phases that make 100, with the share of the first line reckoned from the others. */
    private static List<Meant.Formula> formulas() throws IOException {
        List<Meant.Formula> found = new ArrayList<>();
        for (Path file : CorpusTest.files("corpus")) {
            Meant meant = Json.read(Files.readString(Path.of(file + ".json")), Meant.class);
            for (Meant.Formula formula : Optional.ofNullable(meant.formulas()).orElse(List.of())) {
                boolean plain = formula.lines().size() >= 4
                        && formula.lines().stream()
                                .allMatch(line ->
                                        line.phase() != null && line.phase().matches("Phase [ABC]"))
                        && formula.lines().stream()
                                .skip(1)
                                .allMatch(line -> line.amount().matches("[\\d.]+"));
                if (plain) {
                    found.add(formula);
                }
            }
        }
        return found;
    }

    private static String inci(String name) {
        return NAMES.match(List.of(name), "")
                .materialKey()
                .flatMap(BOOK::material)
                .flatMap(card -> card.composition().stream().findFirst())
                .flatMap(part -> BOOK.substance(part.substance()))
                .map(Substance::inciName)
                .orElse(name);
    }
}
