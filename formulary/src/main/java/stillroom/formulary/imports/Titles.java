package stillroom.formulary.imports;

import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What the rows around a formula say about it: its name, the size of its batch. */
record Titles(Grid grid, List<Row> rows) {
    private static final Pattern SIZE =
            Pattern.compile("(" + Numeral.FORM + ")\\s*(g|gr|grams?|gramm|kg|kilo|mg|oz|lbs?)?(?![\\p{L}\\d%])");
    /** "12 tins of 30 g" are 360 g; "for 6 jars" says no mass. */
    private static final Pattern PIECES = Pattern.compile(
            "(?<![\\d.,])(\\d{1,4})\\s+(?:\\p{L}[\\p{L}-]*\\s+){0,3}?(?:of|à|a|zu|je|de|di|da|von|van|x|×|@)\\s+("
                    + Numeral.FORM + "\\s*(?:g|gr|grams?|gramm|kg)(?!\\p{L}))");

    private static final Pattern COUNT = Pattern.compile("^\\s*\\d+\\s+\\p{L}{2}");
    private static final Pattern LETTERHEAD = Pattern.compile(
            "(?i)@|www\\.|https?:|\\btel\\b|\\bphone\\b|\\bfax\\b|\\d{5}\\s+\\p{L}|\\b(ltd|gmbh|s\\.?r\\.?l|sarl|inc|bv|oy|ab)\\b|(stra(ß|ss)e|street|road|avenue|\\bvia\\b|\\bcalle\\b|\\brue\\b).*\\d");
    private static final Pattern NO_NAME = Pattern.compile(
            "(sheet|tabelle|feuil|feuille|hoja|foglio|blad|planilha|arkusz|list|table|tab)\\s*\\d*",
            Pattern.CASE_INSENSITIVE);

    /** The name of the product; empty where nothing names it. */
    String name() {
        for (Row row : rows) {
            Optional<String> titled = firstCell(row).flatMap(RowWords::title);
            if (titled.isPresent() && isAround(row)) {
                String name = titled.get().isEmpty() ? behindFirst(row) : titled.get();
                if (!name.isEmpty()) {
                    return name;
                }
            }
            if (isAround(row)
                    && firstCell(row).filter(Titles::saysName).isPresent()
                    && !behindFirst(row).isEmpty()) {
                return behindFirst(row);
            }
        }
        return rows.stream()
                .filter(row -> row.kind() == RowKind.TITLE)
                .flatMap(row -> firstCell(row).stream())
                .filter(text -> !RowWords.isFact(text)
                        && (RowWords.batch(text).isEmpty() || text.matches("\\p{L}.*\\(.*"))
                        && !RowWords.isMethod(text)
                        && !LETTERHEAD.matcher(text).find()
                        && text.matches(".*\\p{L}.*"))
                .findFirst()
                .map(text -> text.replaceAll("^[#*=\\s]+|[:#*=\\s]+$", ""))
                .orElseGet(() -> NO_NAME.matcher(grid.name().strip()).matches()
                        ? ""
                        : grid.name().strip());
    }

    private static boolean saysName(String text) {
        return Folding.of(text)
                .matches(
                        "(product|product name|produkt|produktname|formula|formula name|formel|rezept|rezeptur|recept|recette|receta|ricetta|receita|recipe|recipe name|name|title|titel|nom|produit|producto|prodotto|formule)");
    }

    private static boolean isAround(Row row) {
        return row.kind() == RowKind.TITLE || row.kind() == RowKind.NOTE;
    }

    /** Mass of the batch that the sheet was reckoned for [g]. */
    Optional<BigDecimal> batch(Optional<Mark> mark) {
        for (Row row : rows) {
            Optional<String> said = isAround(row) ? firstCell(row).flatMap(RowWords::batch) : Optional.empty();
            if (said.isPresent()) {
                Optional<BigDecimal> grams = grams(said.get() + " " + behindFirst(row), mark);
                if (grams.isPresent()) {
                    return grams;
                }
            }
        }
        return Optional.empty();
    }

    private static Optional<BigDecimal> grams(String said, Optional<Mark> mark) {
        String lower = said.toLowerCase(Locale.ROOT);
        Matcher pieces = PIECES.matcher(lower);
        if (pieces.find()) {
            Optional<BigDecimal> each = grams(pieces.group(2), mark);
            return each.map(mass -> mass.multiply(new BigDecimal(pieces.group(1))));
        }
        Matcher size = SIZE.matcher(lower);
        if (!size.find() || size.group(2) == null && COUNT.matcher(lower).find()) {
            return Optional.empty();
        }
        BigDecimal grams = Optional.ofNullable(size.group(2))
                .flatMap(UnitWords::of)
                .flatMap(Unit::grams)
                .orElse(BigDecimal.ONE);
        return Numeral.read(size.group(1), mark)
                .filter(numeral -> numeral.flags().isEmpty() && numeral.value().signum() > 0)
                .map(numeral -> numeral.value().multiply(grams));
    }

    private Optional<String> firstCell(Row row) {
        return grid.rows().get(row.place()).stream()
                .filter(cell -> !cell.isBlank() && row.text().startsWith(cell.text()))
                .map(Cell::text)
                .max(java.util.Comparator.comparingInt(String::length));
    }

    private String behindFirst(Row row) {
        return firstCell(row)
                .map(first -> row.text().startsWith(first)
                        ? row.text().substring(first.length()).strip()
                        : "")
                .orElse("");
    }
}
