package stillroom.desk.imports;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stillroom.desk.lots.LotCode;
import stillroom.desk.materials.Slug;
import stillroom.formulary.imports.NameIndex;
import stillroom.formulary.imports.ReadMaterial;
import stillroom.formulary.material.Family;
import stillroom.formulary.material.Lot;
import stillroom.formulary.material.Material;
import stillroom.formulary.material.MaterialBook;
import stillroom.formulary.quantity.Grams;
import stillroom.ledger.Ledger;
import stillroom.ledger.store.Saved;

/** Stores a list of materials: cards, their prices, and a lot where the list names an amount on the shelf. */
public record StoringMaterials(Ledger ledger, LocalDate today) {
    /** All of them, or none where one cannot be stored. Gives back how many were stored. */
    public int store(List<SettledMaterial> materials, String file) {
        return ledger.together(() -> {
            List<SettledMaterial> taken =
                    materials.stream().filter(SettledMaterial::take).toList();
            taken.forEach(material -> store(material, file));
            return taken.size();
        });
    }

    private void store(SettledMaterial material, String file) {
        MaterialBook book = ledger.materials().book();
        Optional<Material> before = material.materialKey().flatMap(book::material);
        String key = before.map(Material::key).orElseGet(() -> freeKey(material.name(), book));
        Optional<Material> changed = before.isPresent()
                ? priced(before.get(), material.settled(), file)
                : Optional.of(card(key, material, file));
        changed.ifPresent(card -> {
            if (ledger.materials().save(card) instanceof Saved.Stale<Material>) {
                throw new IllegalStateException("the card " + key + " changed meanwhile");
            }
        });
        material.settled()
                .stock()
                .filter(stock -> stock.signum() > 0)
                .ifPresent(stock -> add(key, material, stock, file));
        if (material.decidedCard()) {
            ledger.importNames().remember(NameIndex.form(material.read().name()), key);
        }
    }

    private static String freeKey(String name, MaterialBook book) {
        String stem = Slug.of(name).isEmpty() ? "material" : name;
        return Slug.free(stem, key -> key.equals("new") || book.material(key).isPresent());
    }

    private Material card(String key, SettledMaterial material, String file) {
        ReadMaterial read = material.settled();
        Material bare = Material.named(key, material.name(), Family.OTHER);
        List<String> functions = read.function().isBlank() ? List.of() : List.of(read.function());
        return new Material(
                key,
                0,
                today,
                bare.name(),
                bare.family(),
                functions,
                List.of(),
                bare.strength(),
                bare.usage(),
                bare.workingPh(),
                bare.ownPh(),
                bare.densityGramsPerMillilitre(),
                "",
                bare.maxCelsius(),
                List.of(),
                "",
                read.supplier(),
                read.price(),
                note(read, file),
                Optional.empty(),
                bare.sources());
    }

    private static String note(ReadMaterial read, String file) {
        List<String> parts = new ArrayList<>();
        if (read.names().size() > 1) {
            parts.add("Also named "
                    + String.join(", ", read.names().subList(1, read.names().size())) + ".");
        }
        if (!read.cas().isBlank()) {
            parts.add("CAS number in the list: " + read.cas() + ".");
        }
        if (!read.note().isBlank()) {
            parts.add(read.note());
        }
        parts.add("Imported from " + file + ".");
        return String.join(" ", parts);
    }

    /** The card with supplier and price of the list, where these say something new. */
    private Optional<Material> priced(Material card, ReadMaterial read, String file) {
        boolean same = (read.price().isEmpty() || read.price().equals(card.price()))
                && (read.supplier().isBlank() || read.supplier().equals(card.supplier()));
        if (same) {
            return Optional.empty();
        }
        return Optional.of(new Material(
                card.key(),
                card.revision(),
                today,
                card.name(),
                card.family(),
                card.functions(),
                card.composition(),
                card.strength(),
                card.usage(),
                card.workingPh(),
                card.ownPh(),
                card.densityGramsPerMillilitre(),
                card.solubility(),
                card.maxCelsius(),
                card.cautions(),
                card.grade(),
                read.supplier().isBlank() ? card.supplier() : read.supplier(),
                read.price().or(card::price),
                card.note(),
                card.naturalOriginIndex(),
                card.sources()));
    }

    /** What lies on the shelf without a release of its own waits in quarantine until the maker has looked at it. */
    private void add(String key, SettledMaterial material, Grams stock, String file) {
        ReadMaterial read = material.settled();
        String wanted = read.lot().strip();
        boolean usable = LotCode.FORM.matcher(wanted).matches()
                && ledger.lots().lot(wanted).isEmpty();
        String code = usable
                ? wanted
                : LotCode.propose(
                        material.name(), taken -> ledger.lots().lot(taken).isPresent());
        String note = "Imported from " + file + "."
                + (read.received().isEmpty()
                        ? " The day of receipt is not known; the day of import stands for it."
                        : "");
        ledger.lots()
                .add(new Lot(
                        code,
                        key,
                        usable ? "" : wanted,
                        read.supplier(),
                        stock,
                        read.received().orElse(today),
                        Optional.empty(),
                        read.expires(),
                        read.price(),
                        Lot.State.QUARANTINE,
                        note));
    }
}
