package stillroom.ledger.imports;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import stillroom.formulary.formula.Amount;
import stillroom.formulary.formula.ReadingKind;
import stillroom.formulary.imports.Flag;
import stillroom.formulary.imports.ReadFormula;
import stillroom.formulary.imports.ReadLine;
import stillroom.formulary.imports.ReadMaterial;
import stillroom.formulary.imports.ReadSheet;

/** Counts how a file was understood, line by line: right, wrong but flagged, silently wrong. Not thread-safe. */
final class Marks {
    /** Percentages reckoned from grams are rounded to four decimals, and the largest line takes what that leaves. */
    private static final BigDecimal NEAR = new BigDecimal("0.0006");

    int lines;
    int right;
    int rightButFlagged;
    int flagged;
    int silent;
    int titles;
    int titlesRight;
    final List<String> faults = new ArrayList<>();
    /** Doubts about lines that were right, by how often each was raised. */
    final java.util.Map<String, Integer> needless = new java.util.TreeMap<>();

    void judge(String file, Meant meant, List<ReadSheet> sheets) {
        List<ReadFormula> formulas =
                sheets.stream().flatMap(sheet -> sheet.formulas().stream()).toList();
        List<ReadMaterial> materials =
                sheets.stream().flatMap(sheet -> sheet.materials().stream()).toList();
        List<Flag> sheetFlags =
                sheets.stream().flatMap(sheet -> sheet.flags().stream()).toList();
        boolean sheetFlagged = sheetFlags.stream().anyMatch(Flag::doubtful);
        List<Meant.Formula> meantFormulas = meant.formulas() == null ? List.of() : meant.formulas();
        // That nothing at all was understood is said, and so is that the formula into which another was drawn does not
        // add up.
        boolean nothing = formulas.isEmpty() && materials.isEmpty();
        boolean doubted =
                formulas.stream().anyMatch(formula -> formula.doubts().findAny().isPresent());
        List<ReadFormula> left = new ArrayList<>(formulas);
        for (Meant.Formula wanted : meantFormulas) {
            Optional<ReadFormula> read = left.stream()
                    .max(Comparator.comparingLong(formula -> likeness(wanted, formula)))
                    .filter(formula -> likeness(wanted, formula) > 0);
            read.ifPresent(left::remove);
            judge(file, Optional.of(wanted), read, flagsOf(read, sheets), nothing || read.isEmpty() && doubted);
        }
        left.forEach(
                more -> judge(file, Optional.empty(), Optional.of(more), flagsOf(Optional.of(more), sheets), nothing));
        judgeMaterials(
                file, meant.materials() == null ? List.of() : meant.materials(), materials, sheetFlagged, nothing);
    }

    /** What is said of the sheet in which a formula was read; of all sheets where it was read in none. */
    private static List<Flag> flagsOf(Optional<ReadFormula> read, List<ReadSheet> sheets) {
        return sheets.stream()
                .filter(sheet -> read.isEmpty() || sheet.formulas().stream().anyMatch(formula -> formula == read.get()))
                .flatMap(sheet -> sheet.flags().stream())
                .toList();
    }

    /** How many lines a formula that was read has in common with one that was meant. */
    private static long likeness(Meant.Formula meant, ReadFormula read) {
        return meant.lines().stream()
                .mapToLong(line -> read.lines().stream()
                        .filter(one -> one.names().contains(line.name()))
                        .mapToLong(one -> agrees(line, one) ? 2 : 1)
                        .max()
                        .orElse(0))
                .sum();
    }

    private void judge(
            String file,
            Optional<Meant.Formula> wanted,
            Optional<ReadFormula> read,
            List<Flag> sheetFlags,
            boolean nothing) {
        boolean sheetFlagged = sheetFlags.stream().anyMatch(Flag::doubtful);
        List<Meant.Line> meant = wanted.map(Meant.Formula::lines).orElse(List.of());
        List<ReadLine> found = new ArrayList<>(read.map(ReadFormula::lines).orElse(List.of()));
        boolean whole = sheetFlagged
                || nothing
                || read.map(formula -> formula.doubts().findAny().isPresent()).orElse(false);
        wanted.ifPresent(formula ->
                judgeTitle(file, formula.title(), read.map(ReadFormula::title).orElse("")));
        for (Meant.Line line : meant) {
            lines++;
            Optional<ReadLine> same = found.stream()
                    .filter(one -> one.names().contains(line.name()))
                    .findFirst();
            same.ifPresent(found::remove);
            boolean isRight = same.map(one -> agrees(line, one)).orElse(false);
            boolean isFlagged = whole || same.map(ReadLine::isDoubtful).orElseGet(() -> isNamedMissing(line, read));
            if (isRight && isFlagged) {
                java.util.stream.Stream.of(
                                same.stream().flatMap(one -> one.flags().stream()),
                                read.stream().flatMap(ReadFormula::doubts),
                                sheetFlags.stream())
                        .flatMap(flags -> flags)
                        .filter(Flag::doubtful)
                        .map(flag -> flag.sentence().replaceAll("\"[^\"]*\"|\\d[\\d.,]*", "*"))
                        .distinct()
                        .forEach(doubt -> needless.merge(doubt, 1, Integer::sum));
            }
            count(file + ": " + line + " <> " + same.map(Marks::shown).orElse("nothing"), isRight, isFlagged);
        }
        for (ReadLine more : found) {
            boolean isFlagged = whole || more.isDoubtful();
            flagged += isFlagged ? 1 : 0;
            silent += isFlagged ? 0 : 1;
            faults.add((isFlagged ? "flagged " : "SILENT ") + file + ": not meant: " + shown(more));
        }
    }

    /** Whether a doubt names the row that was left out. */
    private static boolean isNamedMissing(Meant.Line line, Optional<ReadFormula> read) {
        return read.stream()
                .flatMap(formula -> formula.lines().stream())
                .flatMap(one -> one.flags().stream())
                .anyMatch(flag -> flag.doubtful()
                        && flag.sentence().contains("was left out")
                        && flag.sentence().contains(line.name()));
    }

    private void judgeTitle(String file, String wanted, String read) {
        titles++;
        boolean same = wanted.equals(read.isEmpty() ? SpreadsheetFile.stem(file) : read);
        titlesRight += same ? 1 : 0;
        if (!same) {
            faults.add("title " + file + ": \"" + wanted + "\" <> \"" + read + "\"");
        }
    }

    private void judgeMaterials(
            String file, List<Meant.Material> meant, List<ReadMaterial> read, boolean sheetFlagged, boolean nothing) {
        List<ReadMaterial> left = new ArrayList<>(read);
        for (Meant.Material material : meant) {
            lines++;
            // A material may stand there with several lots.
            Optional<ReadMaterial> same = left.stream()
                    .filter(one -> one.names().contains(material.name()))
                    .max(Comparator.comparing(one -> agrees(material, one)));
            same.ifPresent(left::remove);
            boolean isRight = same.map(one -> agrees(material, one)).orElse(false);
            boolean isFlagged = same.map(ReadMaterial::isDoubtful).orElse(sheetFlagged || (read.isEmpty() && nothing));
            count(file + ": " + material + " <> " + same, isRight, isFlagged);
        }
        if (read.size() > meant.size()) {
            silent += sheetFlagged ? 0 : read.size() - meant.size();
            flagged += sheetFlagged ? read.size() - meant.size() : 0;
            faults.add((sheetFlagged ? "flagged " : "SILENT ") + file + ": " + (read.size() - meant.size())
                    + " materials that are none");
        }
    }

    private void count(String what, boolean isRight, boolean isFlagged) {
        right += isRight ? 1 : 0;
        rightButFlagged += isRight && isFlagged ? 1 : 0;
        flagged += !isRight && isFlagged ? 1 : 0;
        silent += !isRight && !isFlagged ? 1 : 0;
        if (!isRight) {
            faults.add((isFlagged ? "flagged " : "SILENT ") + what);
        }
    }

    private static boolean agrees(Meant.Line meant, ReadLine read) {
        boolean phase = meant.phase() == null || bare(meant.phase()).equals(bare(read.phase()));
        return phase
                && read.amount().map(amount -> agrees(meant.amount(), amount)).orElse(false);
    }

    /** "Phase A" and "A" name the same phase; names of phases are shown with a capital. */
    private static String bare(String phase) {
        String plain = phase.replaceFirst("(?i)^(phase|fase)\\s+(?=\\S{1,3}$)", "");
        return plain.isEmpty() ? plain : plain.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + plain.substring(1);
    }

    private static boolean agrees(String meant, Amount amount) {
        return amount.match(
                fixed -> meant.matches("[\\d.]+")
                        && fixed.percent()
                                        .value()
                                        .subtract(new BigDecimal(meant))
                                        .abs()
                                        .compareTo(NEAR)
                                <= 0,
                () -> meant.equals("rest"),
                reading -> meant.equals(reading.reading() == ReadingKind.PH ? "ph" : "needed"));
    }

    private static boolean agrees(Meant.Material meant, ReadMaterial read) {
        return same(meant.paid(), read.price().map(price -> price.paid().value()))
                && same(meant.grams(), read.price().map(price -> price.amount().value()))
                && same(meant.stock(), read.stock().map(stock -> stock.value()))
                && read.lot().equals(meant.lot());
    }

    private static boolean same(String meant, Optional<BigDecimal> read) {
        return meant.isEmpty()
                ? read.isEmpty()
                : read.map(value -> value.compareTo(new BigDecimal(meant)) == 0).orElse(false);
    }

    private static String shown(ReadLine line) {
        return line.names() + " " + line.amount() + " [" + line.phase() + "] " + line.nameCell() + " " + line.flags();
    }

    @Override
    public String toString() {
        return lines + " lines: " + right + " right (" + rightButFlagged + " of them flagged), " + flagged
                + " wrong or too many and flagged, " + silent + " silently wrong; titles " + titlesRight + " of "
                + titles;
    }
}
