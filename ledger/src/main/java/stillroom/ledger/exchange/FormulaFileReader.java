package stillroom.ledger.exchange;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import stillroom.formulary.formula.Brief;
import stillroom.formulary.formula.Formula;
import stillroom.formulary.formula.ProductType;
import stillroom.formulary.label.LabelSheet;
import stillroom.formulary.material.Material;
import stillroom.formulary.material.Substance;
import stillroom.formulary.quantity.Percent;

/** Reads formula files. All that is wrong is told at once, never thrown. */
public final class FormulaFileReader {
    private static final int NEWEST_FORMAT = 1_000;

    private FormulaFileReader() {}

    public static Reading read(String text) {
        return read(text.getBytes(StandardCharsets.UTF_8));
    }

    /** @param text in UTF-8, UTF-16 or UTF-32 as JSON allows */
    public static Reading read(byte[] text) {
        try {
            JsonText.Parsed parsed = JsonText.parse(text);
            if (parsed.root() instanceof ObjectNode root) {
                return read(root, new Notes(parsed.lines()));
            }
            return Reading.refused(new FileProblem(1, "", "a formula file is one object in braces"));
        } catch (JsonText.Unreadable broken) {
            return Reading.refused(broken.problem());
        }
    }

    private static Reading read(ObjectNode root, Notes notes) {
        Fields fields = Fields.root(root, notes);
        head(fields);
        String name = fields.text("name");
        Optional<Brief> brief = fields.object("brief").map(BriefSection::read);
        if (brief.isEmpty() && !fields.has("brief")) {
            fields.problem("brief", "brief is missing: what the product is, at least {\"type\": \"face-cream\"}");
        }
        Formula formula = new PhaseSection().read(fields);
        List<Material> materials = all(fields, "materials", "material", MaterialSection::read, Material::key);
        List<Substance> substances = all(fields, "substances", "substance", SubstanceSection::read, Substance::key);
        Optional<FormulaFile.Made> made = fields.object("made").map(FormulaFileReader::made);
        Optional<LabelSheet> label = fields.object("label").map(one -> LabelSection.read(one, name));
        Loops.find(materials).ifPresent(chain -> fields.problem("materials", "a material contains itself: " + chain));
        String note = fields.text("note");
        fields.done();
        FormulaFile file = new FormulaFile(
                name,
                note,
                brief.orElse(Brief.of(ProductType.OTHER_LEAVE_ON)),
                formula,
                made,
                label,
                materials,
                substances,
                notes.kept());
        return new Reading(notes.isSound() ? Optional.of(file) : Optional.empty(), notes.problems(), notes.remarks());
    }

    /** The marks by which a formula file is known; a file without them is read all the same. */
    private static void head(Fields fields) {
        String kind = fields.text("stillroom");
        if (!kind.isEmpty() && !kind.equals("formula")) {
            fields.problem("stillroom", "this file holds \"" + Shown.brief(kind) + "\", not a formula");
        }
        int format = fields.decimal("format", 1, NEWEST_FORMAT)
                .map(BigDecimal::intValue)
                .orElse(FormulaFile.FORMAT);
        if (format > FormulaFile.FORMAT) {
            fields.remark(
                    "format",
                    "format " + format + " is newer than this program, which knows format " + FormulaFile.FORMAT
                            + "; what it does not know is kept and not judged");
        }
    }

    private static FormulaFile.Made made(Fields fields) {
        FormulaFile.Made made = new FormulaFile.Made(
                Spans.interval(fields, "ph", 0, 14),
                fields.decimal("waterLostPercent", 0, 90).map(Percent::new).orElse(Percent.ZERO));
        fields.done();
        return made;
    }

    private static <T> List<T> all(
            Fields root, String list, String word, Function<Fields, Optional<T>> read, Function<T, String> key) {
        List<T> all = new ArrayList<>();
        Set<String> keys = new HashSet<>();
        for (Fields one : root.objects(list, word)) {
            read.apply(one).ifPresent(made -> {
                if (keys.add(key.apply(made))) {
                    all.add(made);
                } else {
                    one.problem("key", "key " + key.apply(made) + " stands there twice");
                }
            });
        }
        return all;
    }
}
