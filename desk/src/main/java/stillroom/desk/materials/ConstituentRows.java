package stillroom.desk.materials;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import stillroom.formulary.material.Constituent;

/** The rows of the composition on the form: fields {@code c0-name}, {@code c0-lower} and so on. */
final class ConstituentRows {
    /** Field that says how many rows the form holds. */
    static final String COUNT = "rows";

    private static final int MOST_ROWS = 200;
    private static final List<String> PARTS = List.of(
            "name",
            "lower",
            "nominal",
            "upper",
            "role",
            "new",
            "cas",
            "molar-mass",
            "charge",
            "surfactant",
            "counted-as",
            "counted-units");

    private ConstituentRows() {}

    /** One row as typed, by part of the field name. */
    record Row(Map<String, String> typed) {
        static final Row BLANK = new Row(Map.of());

        Row {
            typed = Map.copyOf(typed);
        }

        static Row of(Constituent part, Inci inci) {
            Map<String, String> typed = new HashMap<>();
            typed.put("name", inci.typed(part.substance()));
            typed.put("nominal", Words.percent(part.massFraction().nominal()));
            if (!part.massFraction().isExact()) {
                typed.put("lower", Words.percent(part.massFraction().lower()));
                typed.put("upper", Words.percent(part.massFraction().upper()));
            }
            typed.put("role", part.role().name());
            return new Row(typed);
        }
    }

    static String field(int row, String part) {
        return "c" + row + "-" + part;
    }

    static int count(Map<String, String> form) {
        try {
            return Math.max(0, Math.min(MOST_ROWS, Integer.parseInt(form.getOrDefault(COUNT, "0"))));
        } catch (NumberFormatException notANumber) {
            return 0;
        }
    }

    static Map<String, String> fields(List<Row> rows) {
        Map<String, String> fields = new HashMap<>();
        fields.put(COUNT, Integer.toString(rows.size()));
        for (int i = 0; i < rows.size(); i++) {
            int row = i;
            rows.get(i).typed().forEach((part, value) -> fields.put(field(row, part), value));
        }
        return fields;
    }

    /** The form with one more empty row. */
    static Map<String, String> withRow(Map<String, String> form) {
        List<Row> rows = rows(form);
        if (rows.size() < MOST_ROWS) {
            rows.add(Row.BLANK);
        }
        return replaced(form, rows);
    }

    /** The form without one of its rows; the same form where there is no such row. */
    static Map<String, String> withoutRow(Map<String, String> form, int index) {
        List<Row> rows = rows(form);
        if (0 <= index && index < rows.size()) {
            rows.remove(index);
        }
        return replaced(form, rows);
    }

    private static List<Row> rows(Map<String, String> form) {
        List<Row> rows = new ArrayList<>();
        for (int i = 0; i < count(form); i++) {
            Map<String, String> typed = new HashMap<>();
            for (String part : PARTS) {
                String value = form.get(field(i, part));
                if (value != null) {
                    typed.put(part, value);
                }
            }
            rows.add(new Row(typed));
        }
        return rows;
    }

    private static Map<String, String> replaced(Map<String, String> form, List<Row> rows) {
        Map<String, String> fields = new HashMap<>(form);
        fields.keySet().removeIf(field -> field.matches("c\\d+-.*"));
        fields.putAll(fields(rows));
        return fields;
    }
}
