package stillroom.ledger.imports;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import stillroom.formulary.imports.Cell;
import stillroom.formulary.imports.Grid;

/**
 * A list of materials laid out by chance: other words and languages, columns in another order, units in headings, in cells or in
 * columns of their own, points or commas, kinds, totals and notes put between. What it means stays known.
 */
final class LaidList {
    private static final BigDecimal THOUSAND = BigDecimal.valueOf(1000);

    /** What prices are for, and where that is said. */
    private enum Priced {
        NOT,
        PER_KILO,
        PER_HUNDRED,
        IN_CELL,
        PACK,
        PACK_AND_KILO
    }

    /** Where the unit of the stock stands. */
    private enum Stocked {
        HEADING_G,
        HEADING_KG,
        CELL,
        UNIT_COLUMN,
        SECOND_ROW
    }

    /** @param grid the sheet; @param meant what it means; @param how it was laid out */
    record Sheet(Grid grid, Meant meant, String how) {}

    private final Random random;
    private final int language;
    private final Priced priced;
    private final Stocked stocked;
    private final boolean packInHeading;
    private final boolean comma;
    private final boolean numbers;
    private final boolean signInHeading;
    private final String sign;
    private final boolean value;
    private final List<String> columns = new ArrayList<>();
    private final List<List<Cell>> rows = new ArrayList<>();
    private final List<Meant.Material> meant = new ArrayList<>();
    private BigDecimal total = BigDecimal.ZERO;

    private LaidList(long seed) {
        random = new Random(seed * 6_007L + 5);
        language = random.nextInt(6);
        priced = one(List.of(Priced.values()));
        stocked = one(List.of(Stocked.values()));
        packInHeading = random.nextBoolean();
        comma = random.nextBoolean();
        numbers = random.nextBoolean();
        signInHeading = random.nextBoolean();
        sign = language == 0 ? one(List.of("£", "$", "€", "GBP")) : one(List.of("€", "EUR"));
        boolean perMass = priced == Priced.PER_KILO || priced == Priced.PER_HUNDRED || priced == Priced.PACK_AND_KILO;
        value = perMass && random.nextInt(3) == 0;
    }

    static Sheet of(long seed) {
        return new LaidList(seed).lay();
    }

    private <T> T one(List<T> all) {
        return all.get(random.nextInt(all.size()));
    }

    private String word(String column) {
        return one(LaidListWords.of(column, language));
    }

    private Sheet lay() {
        columns();
        boolean titled = random.nextBoolean();
        if (titled) {
            rows.add(List.of(Cell.of(word("title"))));
            rows.add(List.of());
        }
        headings();
        body();
        if (value && random.nextBoolean()) {
            total();
        }
        if (random.nextInt(4) == 0) {
            rows.add(List.of());
            rows.add(List.of(Cell.of(word("note"))));
        }
        String how = priced + " " + stocked + (packInHeading ? " pack unit in heading" : "") + " " + columns;
        return new Sheet(new Grid("Sheet1", rows), new Meant("laid out by chance", List.of(), meant), how);
    }

    private void columns() {
        columns.addAll(List.of("name", "stock"));
        switch (priced) {
            case PER_KILO, PER_HUNDRED, IN_CELL -> columns.add("price");
            case PACK -> columns.addAll(List.of("pack", "paid"));
            case PACK_AND_KILO -> columns.addAll(List.of("pack", "paid", "price"));
            case NOT -> {}
        }
        if (value) {
            columns.add("value");
        }
        for (String more : List.of("inci", "code", "lot", "best", "supplier", "level", "place", "received")) {
            if (random.nextInt(5) < 2) {
                columns.add(more);
            }
        }
        if (priced == Priced.NOT && !columns.contains("lot")) {
            columns.add("lot");
        }
        if (random.nextInt(3) > 0) {
            Collections.shuffle(columns, random);
        }
        if (stocked == Stocked.UNIT_COLUMN) {
            columns.add(columns.indexOf("stock") + 1, "unit");
        }
    }

    private void headings() {
        Map<String, String> below = new HashMap<>();
        List<Cell> heads = new ArrayList<>();
        for (String column : columns) {
            String word = word(column);
            String head = switch (column) {
                case "stock", "level" -> word + massUnit(column, below);
                case "pack" -> word + (packInHeading ? bracket("g") : "");
                case "paid" -> word + (signInHeading ? bracket(sign) : "");
                case "value" -> word + (signInHeading ? bracket(sign) : "");
                case "price" -> price(word);
                default -> word;
            };
            heads.add(Cell.of(head));
        }
        rows.add(heads);
        if (!below.isEmpty()) {
            rows.add(columns.stream()
                    .map(column -> Cell.of(below.getOrDefault(column, "")))
                    .toList());
        }
    }

    private String bracket(String word) {
        return one(List.of(" (" + word + ")", " [" + word + "]", " " + word, ", " + word));
    }

    private String massUnit(String column, Map<String, String> below) {
        switch (stocked) {
            case HEADING_G:
                return bracket("g");
            case HEADING_KG:
                return bracket("kg");
            case SECOND_ROW:
                below.put(column, "(g)");
                return "";
            default:
                return "";
        }
    }

    private String price(String word) {
        if (priced == Priced.IN_CELL) {
            return word;
        }
        String mass = priced == Priced.PER_HUNDRED ? "100 g" : "kg";
        String per = word("per");
        String basis = per.equals("/") ? "/" + mass : per + " " + mass;
        return !signInHeading
                ? word + " " + basis
                : one(List.of(
                        word + " " + sign + " " + basis, word + " (" + sign + " " + basis + ")", sign + " " + basis));
    }

    private void body() {
        List<List<String>> materials = new ArrayList<>(LaidListWords.MATERIALS);
        Collections.shuffle(materials, random);
        int count = 4 + random.nextInt(8);
        boolean kinds = random.nextInt(3) == 0;
        for (int i = 0; i < count; i++) {
            if (kinds && i % 4 == 0) {
                kind(i / 4);
            }
            material(materials.get(i), i);
            if (columns.contains("lot") && random.nextInt(8) == 0) {
                material(materials.get(i), i + 50);
            }
        }
    }

    private void kind(int place) {
        List<Cell> row = new ArrayList<>(Collections.nCopies(columns.size(), Cell.EMPTY));
        int at = random.nextBoolean() ? 0 : columns.indexOf("name");
        row.set(at, Cell.of(LaidListWords.of("kinds", language).get(place)));
        rows.add(row);
    }

    private void material(List<String> names, int number) {
        BigDecimal kilo = new BigDecimal(random.nextInt(9000) + 150).movePointLeft(2);
        BigDecimal pack = new BigDecimal(one(List.of("100", "250", "500", "1000", "2500", "5000", "25000")));
        BigDecimal paid =
                kilo.multiply(pack).divide(THOUSAND, 2, RoundingMode.HALF_UP).max(new BigDecimal("0.50"));
        BigDecimal exact =
                priced == Priced.PACK_AND_KILO ? paid.multiply(THOUSAND).divide(pack, 2, RoundingMode.HALF_UP) : kilo;
        Optional<BigDecimal> stock = random.nextInt(12) == 0
                ? Optional.empty()
                : Optional.of(
                        random.nextInt(10) == 0
                                ? BigDecimal.ZERO
                                : new BigDecimal(random.nextInt(60000) + 20)
                                        .movePointLeft(random.nextInt(3) == 0 ? 1 : 0));
        String lot = columns.contains("lot") && random.nextInt(6) > 0
                ? "L" + (1000 + number * 7) + "-" + random.nextInt(9)
                : "";
        List<Cell> row = new ArrayList<>();
        for (String column : columns) {
            row.add(
                    switch (column) {
                        case "name" -> Cell.of(names.get(0));
                        case "inci" -> Cell.of(names.get(1));
                        case "code" -> Cell.of("RM-" + (100 + number));
                        case "lot" -> Cell.of(lot);
                        case "supplier" -> Cell.of("Supplier " + (1 + random.nextInt(4)));
                        case "place" -> Cell.of(one(List.of("A", "B", "C")) + (1 + random.nextInt(5)));
                        case "best", "received" ->
                            Cell.of("1" + random.nextInt(10) + ".0" + (1 + random.nextInt(9)) + "."
                                    + (2026 + random.nextInt(3)));
                        case "pack" -> packInHeading ? figure(pack, 0) : Cell.of(mass(pack));
                        case "paid" -> money(paid);
                        case "price" -> priceCell(exact);
                        case "stock" -> stock.map(this::stockCell).orElse(Cell.EMPTY);
                        case "level" -> stockCell(new BigDecimal("500"));
                        case "unit" -> Cell.of(unit(stock.orElse(BigDecimal.ZERO)));
                        case "value" -> valueCell(exact, stock);
                        default -> Cell.EMPTY;
                    });
        }
        rows.add(row);
        boolean packed = priced == Priced.PACK || priced == Priced.PACK_AND_KILO;
        meant.add(new Meant.Material(
                names.get(0),
                priced == Priced.NOT
                        ? ""
                        : (packed ? paid : priced == Priced.PER_HUNDRED ? hundred(exact) : exact).toPlainString(),
                priced == Priced.NOT
                        ? ""
                        : packed ? pack.toPlainString() : priced == Priced.PER_HUNDRED ? "100" : "1000",
                stock.map(BigDecimal::toPlainString).orElse(""),
                lot));
    }

    private static BigDecimal hundred(BigDecimal kilo) {
        return kilo.movePointLeft(1).setScale(2, RoundingMode.HALF_UP);
    }

    private Cell priceCell(BigDecimal kilo) {
        if (priced != Priced.IN_CELL) {
            return money(priced == Priced.PER_HUNDRED ? hundred(kilo) : kilo);
        }
        String per = word("per");
        return Cell.of(amount(kilo, 2) + " " + sign + (per.equals("/") ? "/kg" : " " + per + " kg"));
    }

    private Cell valueCell(BigDecimal kilo, Optional<BigDecimal> stock) {
        BigDecimal price = priced == Priced.PER_HUNDRED ? hundred(kilo).multiply(BigDecimal.TEN) : kilo;
        BigDecimal worth = price.multiply(stock.orElse(BigDecimal.ZERO)).divide(THOUSAND, 2, RoundingMode.HALF_UP);
        total = total.add(worth);
        return stock.isPresent() ? money(worth) : Cell.EMPTY;
    }

    private Cell money(BigDecimal value) {
        if (signInHeading) {
            return figure(value, 2);
        }
        return Cell.of(language == 0 && sign.length() == 1 ? sign + amount(value, 2) : amount(value, 2) + " " + sign);
    }

    private Cell figure(BigDecimal value, int places) {
        return numbers
                ? new Cell(value.stripTrailingZeros().toPlainString(), Optional.of(value), Set.of())
                : Cell.of(amount(value, places));
    }

    private Cell stockCell(BigDecimal grams) {
        return switch (stocked) {
            case HEADING_G, SECOND_ROW -> figure(grams, 0);
            case HEADING_KG -> figure(grams.divide(THOUSAND), 0);
            case CELL -> Cell.of(mass(grams));
            case UNIT_COLUMN -> figure(unit(grams).equals("kg") ? grams.divide(THOUSAND) : grams, 0);
        };
    }

    private static String unit(BigDecimal grams) {
        return grams.compareTo(THOUSAND) >= 0 ? "kg" : "g";
    }

    private String mass(BigDecimal grams) {
        boolean kilo = grams.compareTo(THOUSAND) >= 0;
        return amount(kilo ? grams.divide(THOUSAND) : grams, 0)
                + (random.nextInt(4) == 0 ? "" : " ")
                + (kilo ? "kg" : "g");
    }

    /** With at least so many decimals. */
    private String amount(BigDecimal value, int places) {
        BigDecimal plain = value.stripTrailingZeros();
        String text = plain.setScale(Math.max(places, Math.max(plain.scale(), 0)), RoundingMode.UNNECESSARY)
                .toPlainString();
        return comma ? text.replace('.', ',') : text;
    }

    private void total() {
        List<Cell> row = new ArrayList<>(Collections.nCopies(columns.size(), Cell.EMPTY));
        row.set(columns.indexOf("value"), money(total));
        int at = columns.indexOf("value") == 0
                ? columns.size() - 1
                : random.nextBoolean() ? 0 : columns.indexOf("value") - 1;
        row.set(at, Cell.of(word("total")));
        rows.add(row);
    }
}
