package stillroom.formulary.constants;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import stillroom.science.equilibrium.Dissociation;

/** Reads the table of constants; the only place of the package that touches a resource. */
public final class AcidConstantsFile {

    private static final String RESOURCE = "/reference/constants/acids.csv";

    private AcidConstantsFile() {}

    /** The table that comes with the program. */
    public static AcidConstants shipped() {
        try (InputStream in = AcidConstantsFile.class.getResourceAsStream(RESOURCE)) {
            if (in == null) {
                throw new IllegalStateException(RESOURCE + " is missing from the program");
            }
            return read(RESOURCE, new InputStreamReader(in, StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new UncheckedIOException(RESOURCE + " cannot be read", e);
        }
    }

    /**
     * Reads a table strictly: a wrong row stops with the file's name and the line.
     *
     * @throws IllegalArgumentException naming file, line and what is wrong
     */
    public static AcidConstants read(String fileName, Reader csv) {
        Map<String, AcidConstant> rows = new LinkedHashMap<>();
        try (CsvReader<NamedCsvRecord> reader = CsvReader.builder().ofNamedCsvRecord(csv)) {
            for (NamedCsvRecord line : reader) {
                AcidConstant row = row(fileName, line);
                if (rows.put(row.key(), row) != null) {
                    throw wrong(fileName, line, "the key " + row.key() + " occurs twice", null);
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(fileName + " cannot be read", e);
        }
        return new AcidConstants(rows);
    }

    private static AcidConstant row(String fileName, NamedCsvRecord line) {
        try {
            return parse(line);
        } catch (RuntimeException e) {
            throw wrong(fileName, line, String.valueOf(e.getMessage()), e);
        }
    }

    private static IllegalArgumentException wrong(
            String fileName, NamedCsvRecord line, String what, @org.jspecify.annotations.Nullable Throwable cause) {
        return new IllegalArgumentException(fileName + ", line " + line.getStartingLineNumber() + ": " + what, cause);
    }

    private static AcidConstant parse(NamedCsvRecord line) {
        List<String> pKas = parts(line.getField("pka"));
        List<String> enthalpies = parts(line.getField("enthalpy_kj_mol"));
        return new AcidConstant(
                filled(line, "key"),
                filled(line, "name"),
                filled(line, "cas"),
                Integer.parseInt(filled(line, "charge_fully_protonated")),
                steps(pKas, enthalpies, parts(line.getField("heat_capacity_j_mol_k"))),
                !pKas.isEmpty() && enthalpies.size() == pKas.size() && !enthalpies.contains("?"),
                positive(filled(line, "molar_mass_g_mol")),
                optional(line.getField("free_acid_solubility_g_kg")),
                line.getField("note"),
                filled(line, "reference"),
                isRead(filled(line, "status")));
    }

    private static List<Dissociation> steps(List<String> pKas, List<String> enthalpies, List<String> capacities) {
        sameLength("enthalpies", enthalpies, pKas);
        sameLength("heat capacities", capacities, pKas);
        List<Dissociation> steps = new ArrayList<>();
        for (int i = 0; i < pKas.size(); i++) {
            steps.add(new Dissociation(Double.parseDouble(pKas.get(i)), at(enthalpies, i), at(capacities, i)));
        }
        return steps;
    }

    private static void sameLength(String what, List<String> figures, List<String> pKas) {
        if (!figures.isEmpty() && figures.size() != pKas.size()) {
            throw new IllegalArgumentException(
                    figures.size() + " " + what + " for " + pKas.size() + " pKa values (write ? for an unknown one)");
        }
    }

    private static double at(List<String> figures, int index) {
        return figures.isEmpty() || figures.get(index).equals("?") ? 0 : Double.parseDouble(figures.get(index));
    }

    private static List<String> parts(String field) {
        return field.isBlank()
                ? List.of()
                : Arrays.stream(field.split(";", -1)).map(String::strip).toList();
    }

    private static String filled(NamedCsvRecord line, String column) {
        String field = line.getField(column).strip();
        if (field.isEmpty()) {
            throw new IllegalArgumentException("the column " + column + " is empty");
        }
        return field;
    }

    private static double positive(String field) {
        double number = Double.parseDouble(field);
        if (!(number > 0)) {
            throw new IllegalArgumentException(field + " is not above 0");
        }
        return number;
    }

    private static OptionalDouble optional(String field) {
        return field.isBlank() ? OptionalDouble.empty() : OptionalDouble.of(positive(field.strip()));
    }

    private static boolean isRead(String status) {
        return switch (status) {
            case "read" -> true;
            case "from memory" -> false;
            default -> throw new IllegalArgumentException("status is " + status + ", allowed: read, from memory");
        };
    }
}
