package stillroom.ledger.imports;

import java.util.ArrayList;
import java.util.List;

/** Columns separated by commas in which decimals stand behind commas as well: "Glycerin,2,5" is two columns and no three. */
final class DecimalCommas {
    private DecimalCommas() {}

    /** Joins the two halves where the first row shows how many columns there are. */
    static List<List<String>> joined(List<List<String>> records, List<String> remarks) {
        int width = records.stream()
                .filter(record ->
                        record.stream().filter(field -> !field.isBlank()).count() > 1)
                .mapToInt(List::size)
                .findFirst()
                .orElse(0);
        List<List<String>> joined = new ArrayList<>();
        boolean found = false;
        for (List<String> record : records) {
            List<String> whole = record.size() > width && width > 1 ? join(record, width) : record;
            found = found || whole != record;
            joined.add(whole);
        }
        if (found) {
            remarks.add(
                    "Commas part the columns and the decimals alike; figures in two halves were put together. Look at each.");
        }
        return joined;
    }

    private static List<String> join(List<String> record, int width) {
        List<String> whole = new ArrayList<>();
        int over = record.size() - width;
        for (int i = 0; i < record.size(); i++) {
            boolean half = over > 0
                    && i + 1 < record.size()
                    && record.get(i).strip().matches("\\d{1,4}")
                    && record.get(i + 1).matches("\\d{1,4}\\s*(%|g|kg)?\\s*");
            whole.add(half ? record.get(i) + "," + record.get(i + 1) : record.get(i));
            if (half) {
                over--;
                i++;
            }
        }
        return whole.size() < record.size() ? whole : record;
    }
}
