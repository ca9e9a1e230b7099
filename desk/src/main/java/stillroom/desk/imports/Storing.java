package stillroom.desk.imports;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stillroom.desk.materials.Slug;
import stillroom.formulary.formula.Brief;
import stillroom.formulary.formula.Formula;
import stillroom.formulary.formula.Line;
import stillroom.formulary.formula.Phase;
import stillroom.formulary.formula.Product;
import stillroom.formulary.imports.NameIndex;
import stillroom.formulary.material.Family;
import stillroom.formulary.material.Material;
import stillroom.ledger.Ledger;

/** Stores what the maker said yes to: a formula with all that belongs to it, or nothing of it. */
public record Storing(Ledger ledger, Instant now, LocalDate today) {
    private static final int LONGEST_NOTE = 15_000;

    /** A new product with a draft of the formula; new cards for the names that ask for one. */
    public Product store(SettledFormula formula, String file, String sheet) {
        return ledger.together(() -> {
            String from = "Imported from " + file
                    + (sheet.isEmpty() || file.startsWith(sheet) ? "" : ", sheet " + sheet) + ".";
            Product product = ledger.products().add(formula.title(), Brief.of(formula.type()), note(formula, from));
            ledger.products().newVersion(product.id(), Optional.empty(), body(formula), from, now);
            return product;
        });
    }

    private static String note(SettledFormula formula, String from) {
        List<String> parts = new ArrayList<>();
        parts.add(from);
        parts.addAll(formula.read().notes().stream()
                .filter(note -> !note.equals(formula.title()))
                .toList());
        List<String> doubts =
                formula.read().doubts().map(flag -> flag.sentence()).toList();
        if (!doubts.isEmpty()) {
            parts.add("To be looked at: " + String.join(" ", doubts));
        }
        String note = String.join("\n", parts);
        return note.substring(0, Math.min(LONGEST_NOTE, note.length()));
    }

    private Formula body(SettledFormula formula) {
        Map<String, List<Line>> phases = new LinkedHashMap<>();
        int count = 0;
        for (SettledLine line : formula.stored()) {
            count++;
            phases.computeIfAbsent(phaseName(line), any -> new ArrayList<>())
                    .add(new Line("i1x" + count, key(line), line.amount().orElseThrow(), lineNote(line)));
        }
        List<Phase> made = new ArrayList<>();
        phases.forEach((name, lines) -> made.add(new Phase("p1x" + (made.size() + 1), name, lines, List.of())));
        return new Formula(made);
    }

    private static String phaseName(SettledLine line) {
        return line.phase().isBlank() ? "First phase" : line.phase().strip();
    }

    private static String lineNote(SettledLine line) {
        List<String> parts = new ArrayList<>();
        if (!line.read().note().isEmpty()) {
            parts.add(line.read().note());
        }
        if (!line.doubts().isEmpty()) {
            parts.add("To be looked at: " + String.join(" ", line.doubts()));
        }
        return String.join(" ", parts);
    }

    /** The card that is meant; where none is, the name as it stands. */
    private String key(SettledLine line) {
        String key = line.materialKey()
                .or(() -> line.newCard()
                        ? Optional.of(newCard(line.name(), line.read().names()))
                        : Optional.empty())
                .orElse(line.name());
        if (line.decidedCard() && !line.read().name().isBlank()) {
            boolean bare = line.materialKey().isEmpty() && !line.newCard();
            ledger.importNames().remember(NameIndex.form(line.read().name()), bare ? "" : key);
        }
        return key;
    }

    /** A card that was made for the same name by a line before is taken again. */
    private String newCard(String name, List<String> names) {
        String wanted = Slug.of(name);
        Optional<Material> before = ledger.materials()
                .book()
                .material(wanted)
                .filter(card -> card.name().equals(name));
        if (before.isPresent()) {
            return wanted;
        }
        String key = freeKey(name);
        ledger.materials().save(Material.named(key, name, Family.OTHER).withRevision(0));
        return key;
    }

    private String freeKey(String name) {
        String stem = Slug.of(name).isEmpty() ? "material" : name;
        return Slug.free(
                stem,
                key -> key.equals("new")
                        || ledger.materials().book().material(key).isPresent());
    }
}
