package stillroom.desk.files;

import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import stillroom.formulary.formula.Formula;
import stillroom.formulary.formula.FormulaVersion;
import stillroom.formulary.formula.Line;
import stillroom.formulary.formula.Phase;
import stillroom.formulary.formula.Product;
import stillroom.formulary.material.CardsInside;
import stillroom.formulary.material.Constituent;
import stillroom.formulary.material.Material;
import stillroom.formulary.material.MaterialBook;
import stillroom.formulary.rule.RuleBook;
import stillroom.ledger.Ledger;
import stillroom.ledger.exchange.Catalogue;
import stillroom.ledger.exchange.FileProblem;
import stillroom.ledger.exchange.FormulaFileReader;
import stillroom.ledger.exchange.Leading;
import stillroom.ledger.exchange.Reading;
import stillroom.ledger.exchange.ReadyFormula;

/**
 * A formula file on its way into the workshop.
 *
 * @param ready led to cards; empty where the file cannot be read
 * @param problems all that was wrong
 * @param remarks what was understood with a doubt
 */
public record FormulaIn(Optional<ReadyFormula> ready, List<FileProblem> problems, List<FileProblem> remarks) {
    private static final String CARD = "material:";

    public static FormulaIn read(byte[] text, MaterialBook book, RuleBook rules) {
        Reading reading = FormulaFileReader.read(text);
        Optional<ReadyFormula> ready = reading.file().map(file -> Leading.lead(file, Catalogue.of(book, rules)));
        List<FileProblem> loops = ready.map(FormulaIn::loops).orElse(List.of());
        return loops.isEmpty()
                ? new FormulaIn(ready, reading.problems(), reading.remarks())
                : new FormulaIn(Optional.empty(), loops, reading.remarks());
    }

    /** Cards of the file that come back to themselves through cards of the workshop; within the file the reader sees it. */
    private static List<FileProblem> loops(ReadyFormula ready) {
        return Stream.concat(
                        ready.file().materials().stream().map(Material::key),
                        ready.formula().lines().stream().map(Line::materialKey))
                .distinct()
                .flatMap(key -> ready.book().material(key).stream())
                .map(card -> CardsInside.loop(card, ready.book()))
                .filter(chain -> !chain.isEmpty())
                .map(chain -> new FileProblem(
                        0,
                        "materials",
                        "a material contains itself through a card of the workshop: " + String.join(" → ", chain)))
                .toList();
    }

    /** Whether a file begins as a JSON object does. */
    public static boolean looksLikeOne(byte[] bytes) {
        int at = bytes.length > 2 && bytes[0] == (byte) 0xEF ? 3 : 0;
        while (at < bytes.length && Character.isWhitespace(bytes[at])) {
            at++;
        }
        return at < bytes.length && bytes[at] == '{';
    }

    /**
     * Stores it as a product of its own with a draft version, all or nothing. A card of the file whose key another card of the
     * workshop bears gets a key of its own.
     */
    public FormulaVersion store(Ledger ledger, Instant now) {
        ReadyFormula formula = ready.orElseThrow();
        return ledger.together(() -> {
            Map<String, String> keys = new LinkedHashMap<>();
            Formula led = formula.formula();
            led.lines().forEach(line -> card(ledger, formula.book(), line.materialKey(), keys));
            Product product = ledger.products()
                    .add(
                            formula.file().name(),
                            formula.file().brief(),
                            formula.file().note());
            FormulaVersion version = ledger.products()
                    .newVersion(product.id(), Optional.empty(), renamed(led, keys), "from a file", now);
            formula.file().label().ifPresent(label -> ledger.labels().write(product.id(), version.number(), label));
            KeptFields.write(ledger, product.id(), version.number(), formula.file());
            return version;
        });
    }

    private static void card(Ledger ledger, MaterialBook from, String key, Map<String, String> keys) {
        Optional<Material> card = from.material(key);
        if (keys.containsKey(key) || card.isEmpty()) {
            return;
        }
        keys.put(key, key);
        for (Constituent part : card.get().composition()) {
            if (part.substance().startsWith(CARD)) {
                card(ledger, from, part.substance().substring(CARD.length()), keys);
            } else {
                substance(ledger, from, part.substance());
            }
        }
        MaterialBook there = ledger.materials().book();
        Material wanted = card.get();
        Optional<Material> standing = there.material(key);
        if (standing.filter(one -> one.withRevision(wanted.revision()).equals(wanted))
                .isPresent()) {
            return;
        }
        String free = key;
        for (int i = 2; there.material(free).isPresent(); i++) {
            free = key + "-" + i;
        }
        keys.put(key, free);
        ledger.materials().save(rekeyed(wanted, free, keys));
    }

    private static void substance(Ledger ledger, MaterialBook from, String key) {
        if (ledger.materials().book().substance(key).isEmpty()) {
            from.substance(key).ifPresent(one -> ledger.materials().save(one));
        }
    }

    private static Material rekeyed(Material card, String key, Map<String, String> keys) {
        List<Constituent> composition = card.composition().stream()
                .map(part -> part.substance().startsWith(CARD)
                        ? new Constituent(
                                CARD
                                        + keys.getOrDefault(
                                                part.substance().substring(CARD.length()),
                                                part.substance().substring(CARD.length())),
                                part.massFraction(),
                                part.role())
                        : part)
                .toList();
        return card.withKey(key).withRevision(0).withComposition(composition.toArray(Constituent[]::new));
    }

    private static Formula renamed(Formula formula, Map<String, String> keys) {
        return new Formula(formula.phases().stream()
                .map(phase -> new Phase(
                        phase.id(),
                        phase.name(),
                        phase.lines().stream()
                                .map(line -> new Line(
                                        line.id(),
                                        keys.getOrDefault(line.materialKey(), line.materialKey()),
                                        line.amount(),
                                        line.note()))
                                .toList(),
                        phase.steps()))
                .toList());
    }
}
