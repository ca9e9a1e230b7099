package stillroom.desk.files;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import stillroom.desk.chemistry.Studied;
import stillroom.formulary.material.Constituent;
import stillroom.formulary.material.Material;
import stillroom.formulary.material.MaterialBook;
import stillroom.ledger.Ledger;
import stillroom.ledger.exchange.FormulaFile;
import stillroom.ledger.exchange.FormulaFileWriter;

/**
 * A version of a formula as a file that stands by itself: with those of its cards and substances that are not the starter
 * library's, and with what a newer version wrote into the file that it came from.
 */
public final class FormulaOut {
    private static final String CARD = "material:";

    private final Studied of;
    private final MaterialBook starter;
    private final Map<String, Material> cards = new LinkedHashMap<>();
    private final Set<String> substances = new LinkedHashSet<>();

    private FormulaOut(Studied of, MaterialBook starter) {
        this.of = of;
        this.starter = starter;
    }

    public static String text(Ledger ledger, Studied of, MaterialBook starter) {
        return FormulaFileWriter.write(new FormulaOut(of, starter).file(ledger));
    }

    private FormulaFile file(Ledger ledger) {
        Deque<String> open = new ArrayDeque<>();
        of.version().formula().lines().forEach(line -> open.add(line.materialKey()));
        while (!open.isEmpty()) {
            of.book().material(open.poll()).ifPresent(card -> take(card, open));
        }
        KeptFields kept = KeptFields.of(ledger, of.product().id(), of.version().number());
        return new FormulaFile(
                of.product().name(),
                of.product().note(),
                of.product().brief(),
                of.version().formula(),
                kept.made(),
                ledger.labels().of(of.product().id(), of.version().number()),
                List.copyOf(cards.values()),
                substances.stream()
                        .flatMap(key -> of.book().substance(key).stream())
                        .filter(one ->
                                starter.substance(one.key()).filter(one::equals).isEmpty())
                        .toList(),
                kept.fields());
    }

    private void take(Material card, Deque<String> open) {
        boolean known = cards.containsKey(card.key()) || same(card);
        if (known) {
            return;
        }
        cards.put(card.key(), card);
        for (Constituent part : card.composition()) {
            if (part.substance().startsWith(CARD)) {
                open.add(part.substance().substring(CARD.length()));
            } else {
                substances.add(part.substance());
            }
        }
    }

    private boolean same(Material card) {
        return starter.material(card.key())
                .filter(one -> one.withRevision(card.revision()).equals(card))
                .isPresent();
    }
}
