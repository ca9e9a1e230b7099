package stillroom.formulary.material;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stillroom.formulary.reference.ReferenceRow;
import stillroom.formulary.reference.ReferenceTable;

/**
 * The raw materials that come with the program, under generic names, each figure with its source.
 *
 * <p>Immutable. A fault in the tables is a {@link stillroom.formulary.reference.ReferenceFault} that names file and line.
 */
public final class StarterLibrary implements MaterialBook {
    static final String[] MATERIAL_COLUMNS = {
        "key", "revised_on", "name", "family", "functions", "solubility", "cautions", "note", "source"
    };

    private final Map<String, Material> materials;
    private final Map<String, Substance> substances;

    private StarterLibrary(Map<String, Material> materials, Map<String, Substance> substances) {
        this.materials = materials;
        this.substances = substances;
    }

    /** Reads the four tables of the program's own jar. */
    public static StarterLibrary load() {
        return of(
                ReferenceTable.read("materials/substances.csv", SubstanceTable.COLUMNS),
                ReferenceTable.read("materials/materials.csv", MATERIAL_COLUMNS),
                ReferenceTable.read("materials/compositions.csv", CompositionTable.COLUMNS),
                ReferenceTable.read("materials/facts.csv", FactTable.COLUMNS));
    }

    static StarterLibrary of(
            List<ReferenceRow> substanceRows,
            List<ReferenceRow> materialRows,
            List<ReferenceRow> compositionRows,
            List<ReferenceRow> factRows) {
        Map<String, Substance> substances = SubstanceTable.of(substanceRows);
        Map<String, ReferenceRow> cards = new LinkedHashMap<>();
        for (ReferenceRow row : materialRows) {
            if (cards.put(row.required("key"), row) != null) {
                throw row.fault("material " + row.required("key") + " appears twice");
            }
        }
        CompositionTable compositions = CompositionTable.of(compositionRows, cards.keySet(), substances.keySet());
        FactTable facts = FactTable.of(factRows, cards.keySet());
        Map<String, Material> materials = new LinkedHashMap<>();
        for (Map.Entry<String, ReferenceRow> entry : cards.entrySet()) {
            materials.put(entry.getKey(), card(entry.getValue(), compositions, facts));
        }
        return new StarterLibrary(materials, substances);
    }

    @Override
    public Optional<Material> material(String key) {
        return Optional.ofNullable(materials.get(key));
    }

    @Override
    public Optional<Substance> substance(String key) {
        return Optional.ofNullable(substances.get(key));
    }

    /** In the order of the table: by family, then as a maker would look for them. */
    @Override
    public List<Material> materials() {
        return List.copyOf(materials.values());
    }

    @Override
    public List<Substance> substances() {
        return List.copyOf(substances.values());
    }

    private static Material card(ReferenceRow row, CompositionTable compositions, FactTable facts) {
        String key = row.required("key");
        return new Material(
                key,
                1,
                date(row),
                row.required("name"),
                row.choice("family", Family.class),
                row.list("functions"),
                compositions.constituents(key),
                facts.strength(key),
                facts.percent(key, FactTable.Fact.USAGE_PERCENT),
                facts.interval(key, FactTable.Fact.WORKING_PH),
                facts.interval(key, FactTable.Fact.OWN_PH),
                facts.point(key, FactTable.Fact.DENSITY_G_PER_ML),
                row.text("solubility"),
                facts.point(key, FactTable.Fact.MAX_CELSIUS),
                row.list("cautions"),
                "",
                "",
                Optional.empty(),
                row.text("note"),
                facts.point(key, FactTable.Fact.NATURAL_ORIGIN_INDEX),
                sources(row, compositions, facts));
    }

    /** The words of a card share the source of its row; each figure and the composition have their own. */
    private static Map<String, String> sources(ReferenceRow row, CompositionTable compositions, FactTable facts) {
        String key = row.required("key");
        String words = row.required("source");
        Map<String, String> sources = new HashMap<>();
        for (String component : List.of("functions", "solubility", "cautions", "note")) {
            if (!row.text(component).isEmpty()) {
                sources.put(component, words);
            }
        }
        if (!compositions.source(key).isEmpty()) {
            sources.put("composition", compositions.source(key));
        }
        facts.addSources(key, sources);
        return sources;
    }

    private static LocalDate date(ReferenceRow row) {
        try {
            return LocalDate.parse(row.required("revised_on"));
        } catch (DateTimeException e) {
            throw row.fault("\"" + row.text("revised_on") + "\" is not a date as year-month-day");
        }
    }
}
