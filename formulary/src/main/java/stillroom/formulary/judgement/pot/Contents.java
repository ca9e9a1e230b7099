package stillroom.formulary.judgement.pot;

import java.util.List;
import java.util.Optional;
import stillroom.formulary.evaluation.Portion;
import stillroom.formulary.evaluation.Subject;
import stillroom.formulary.formula.Brief;
import stillroom.formulary.material.MassFraction;
import stillroom.formulary.material.MaterialBook;

/** What one material holds, opened by the same function as a whole formula. */
public final class Contents {
    private Contents() {}

    /** Substances of 1 g of the material [g/g]. */
    public static List<Share> of(String materialKey, Brief brief, MaterialBook book) {
        Portion whole = new Portion(materialKey, "", materialKey, MassFraction.exactly(1));
        Subject alone = new Subject(brief, List.of(whole), List.of(), 0, Optional.empty());
        return Opening.open(alone, book).composition().shares().stream()
                .map(share -> new Share(share, book.substance(share.substance())))
                .toList();
    }
}
