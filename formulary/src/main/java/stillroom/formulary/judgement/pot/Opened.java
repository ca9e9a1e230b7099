package stillroom.formulary.judgement.pot;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stillroom.formulary.evaluation.Composition;
import stillroom.formulary.material.Constituent;
import stillroom.formulary.material.Material;
import stillroom.formulary.material.MaterialBook;

/** A card taken apart through its premixes, for checks that ask what goes in with a line. */
public final class Opened {
    private static final String CARD = "material:";
    private static final int DEEPEST = 8;

    private Opened() {}

    /** The constituents of the card and of every card inside it, premixes themselves left out. */
    public static List<Constituent> parts(Optional<Material> card, MaterialBook book) {
        List<Constituent> parts = new ArrayList<>();
        card.ifPresent(known -> add(known, book, DEEPEST, parts));
        return parts;
    }

    /** The substances of a card in the book with their ranges, its premixes opened; what has no composition is named. */
    public static Composition substances(String card, MaterialBook book) {
        return Opening.open(card, book).composition();
    }

    private static void add(Material card, MaterialBook book, int deep, List<Constituent> parts) {
        for (Constituent part : card.composition()) {
            if (!part.substance().startsWith(CARD)) {
                parts.add(part);
            } else if (deep > 0) {
                book.material(part.substance().substring(CARD.length()))
                        .ifPresent(inner -> add(inner, book, deep - 1, parts));
            }
        }
    }
}
