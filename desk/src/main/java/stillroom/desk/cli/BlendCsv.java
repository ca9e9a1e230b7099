package stillroom.desk.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Turns a file of materials and one of limits into a problem. */
final class BlendCsv {
    private static final String NAME = "material";
    private static final String COST = "cost_per_kg";
    private static final String MOST = "max_fraction";
    private static final String LEAST = "min_dose_if_used";

    private BlendCsv() {}

    /**
     * @param atMost without it the least doses are left aside, as the problem then is one without counting
     * @throws IllegalArgumentException where a figure or column cannot be read
     */
    static ObjectNode problem(Path materials, Path limits, @Nullable Integer atMost) throws IOException {
        ObjectNode problem = JsonNodeFactory.instance.objectNode();
        ArrayNode into = problem.putArray("materials");
        try (CsvReader<NamedCsvRecord> rows = CsvReader.builder().ofNamedCsvRecord(materials)) {
            rows.forEach(row -> material(row, into.addObject(), atMost != null));
        }
        ArrayNode bounds = problem.putArray("limits");
        try (CsvReader<NamedCsvRecord> rows = CsvReader.builder().ofNamedCsvRecord(limits)) {
            rows.forEach(row -> limit(row, bounds.addObject()));
        }
        if (atMost != null) {
            problem.put("atMost", atMost);
        }
        return problem;
    }

    private static void material(NamedCsvRecord row, ObjectNode into, boolean counted) {
        into.put("name", text(row, NAME));
        number(row, COST, into, "cost");
        number(row, MOST, into, "max");
        if (counted) {
            number(row, LEAST, into, "minIfUsed");
        }
        ObjectNode properties = into.putObject("properties");
        for (String column : row.getHeader()) {
            if (!Set.of(NAME, COST, MOST, LEAST).contains(column)) {
                number(row, column, properties, column);
            }
        }
    }

    private static void limit(NamedCsvRecord row, ObjectNode into) {
        into.put("property", text(row, "property"));
        number(row, "min", into, "min");
        number(row, "max", into, "max");
    }

    private static String text(NamedCsvRecord row, String column) {
        return row.findField(column)
                .map(String::strip)
                .orElseThrow(() -> new IllegalArgumentException("the column \"" + column + "\" is missing"));
    }

    /** An empty cell stays unsaid. */
    private static void number(NamedCsvRecord row, String column, ObjectNode into, String field) {
        String typed = text(row, column);
        if (typed.isEmpty()) {
            return;
        }
        try {
            into.put(field, Double.parseDouble(typed));
        } catch (NumberFormatException notANumber) {
            throw new IllegalArgumentException(
                    "line " + row.getStartingLineNumber() + ", \"" + column + "\": \"" + typed + "\" is no number");
        }
    }
}
