package stillroom.ledger.export;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.zip.GZIPInputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stillroom.formulary.batch.Batch;
import stillroom.formulary.batch.LogEntry;
import stillroom.formulary.formula.FormulaVersion;
import stillroom.formulary.formula.Product;
import stillroom.formulary.label.LabelSheet;
import stillroom.formulary.material.Lot;
import stillroom.formulary.material.Material;
import stillroom.formulary.material.Substance;
import stillroom.formulary.meter.MeterCalibration;
import stillroom.formulary.meter.PhMeter;
import stillroom.formulary.plan.Balance;
import stillroom.ledger.KeptKinds;
import stillroom.ledger.Ledger;
import stillroom.ledger.lot.StockCount;
import stillroom.ledger.store.Database;
import stillroom.ledger.workshop.Workshop;

/** The schema in the documents is the one of the records as they are now, and what is exported fits it. */
final class WorkshopSchemaTest {
    private static final Path SCHEMA = Path.of("..", "docs", "schema", "workshop-1.json");
    private static final ObjectMapper JSON = new ObjectMapper();

    private static final Map<String, Class<?>> BODIES = bodies();

    @TempDir
    Path folder;

    private static Map<String, Class<?>> bodies() {
        Map<String, Class<?>> bodies = new LinkedHashMap<>();
        bodies.put("workshop", Workshop.class);
        bodies.put("balance", Balance.class);
        bodies.put("card", Material.class);
        bodies.put("substance", Substance.class);
        bodies.put("lot", Lot.class);
        bodies.put("stock_count", StockCount.class);
        bodies.put("product", Product.class);
        bodies.put("formula_version", FormulaVersion.class);
        bodies.put("label_sheet", LabelSheet.class);
        bodies.put("ph_meter", PhMeter.class);
        bodies.put("calibration", MeterCalibration.class);
        bodies.put("batch", Batch.class);
        bodies.put("log_entry", LogEntry.class);
        return bodies;
    }

    private static ObjectNode schema() {
        RecordSchema records = new RecordSchema();
        ObjectNode schema = JsonNodeFactory.instance.objectNode();
        schema.put("$schema", "https://json-schema.org/draft/2020-12/schema");
        schema.put("title", "A whole workshop, format 1");
        schema.put("type", "object");
        schema.putArray("required").add("stillroom").add("format").add("tables");
        ObjectNode properties = schema.putObject("properties");
        properties.putObject("stillroom").put("const", "workshop");
        properties.putObject("format").put("const", 1);
        ObjectNode tables = properties.putObject("tables");
        tables.put("type", "object");
        ObjectNode named = tables.putObject("properties");
        BODIES.forEach((table, record) -> {
            ObjectNode row = named.putObject(table).put("type", "array").putObject("items");
            row.put("type", "object");
            ObjectNode columns = row.putObject("properties");
            columns.set("body", records.reference(record));
            columns.putObject("bodyText").put("type", "string");
        });
        kinds(named.putObject("document"), KeptKinds.drawers(), records);
        kinds(named.putObject("happening"), KeptKinds.happenings(), records);
        tables.putObject("additionalProperties")
                .put("type", "array")
                .putObject("items")
                .put("type", "object");
        ObjectNode definitions = schema.putObject("$defs");
        records.definitions().forEach(definitions::set);
        return schema;
    }

    /** A table of bodies that are told apart by the column {@code kind}; kinds that are not named may be anything. */
    private static void kinds(ObjectNode table, Map<String, Class<? extends Record>> kinds, RecordSchema records) {
        ObjectNode row = table.put("type", "array").putObject("items");
        row.put("type", "object").putArray("required").add("kind").add("body");
        ArrayNode cases = row.putArray("allOf");
        kinds.forEach((kind, record) -> {
            ObjectNode one = cases.addObject();
            one.putObject("if").putObject("properties").putObject("kind").put("const", kind);
            one.putObject("then").putObject("properties").set("body", records.reference(record));
        });
    }

    @Test
    void theDocumentedSchemaIsThatOfTheRecords() throws IOException {
        String now = JSON.writerWithDefaultPrettyPrinter().writeValueAsString(schema()) + "\n";
        if (Boolean.getBoolean("stillroom.writeSchema")) {
            Files.writeString(SCHEMA, now);
        }
        assertThat(Files.readString(SCHEMA))
                .as("write it again with -Dstillroom.writeSchema=true")
                .isEqualTo(now);
    }

    @Test
    void whatIsExportedFitsTheSchema() throws IOException {
        Path home = Files.createDirectories(folder.resolve("home"));
        try (InputStream packed = WorkshopSchemaTest.class.getResourceAsStream("/versions/schema-10.db.gz");
                GZIPInputStream file = new GZIPInputStream(packed)) {
            Files.copy(file, home.resolve(Database.FILE_NAME));
        }
        Ledger.open(home).close();
        ByteArrayOutputStream exported = new ByteArrayOutputStream();
        WorkshopFile.write(home, exported);
        JsonSchema schema =
                JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012).getSchema(Files.readString(SCHEMA));
        JsonNode file = JSON.readTree(exported.toByteArray());
        assertThat(schema.validate(file)).isEmpty();
        BODIES.keySet()
                .forEach(table ->
                        assertThat(file.get("tables").has(table)).as(table).isTrue());
        ((ObjectNode) file.get("tables").get("product").get(0).get("body")).put("name", 7);
        assertThat(schema.validate(file)).isNotEmpty();
    }
}
