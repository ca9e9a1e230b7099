package stillroom.desk.safety;

import stillroom.desk.chemistry.Studied;
import stillroom.desk.shell.Desk;
import stillroom.desk.shell.Judgement;
import stillroom.formulary.formula.Product;
import stillroom.formulary.judgement.safety.OwnExposure;
import stillroom.formulary.judgement.safety.SafetyInput;
import stillroom.formulary.judgement.safety.SafetyInputs;
import stillroom.formulary.judgement.safety.SafetyTable;
import stillroom.ledger.Ledger;
import stillroom.ledger.document.Drawer;

/** What is entered for the assessor's table: by substance for the whole workshop, and an exposure by product. */
public record SafetyBook(Drawer<SafetyInput> substances, Drawer<OwnExposure> exposures) {
    static SafetyBook of(Ledger ledger) {
        return new SafetyBook(
                ledger.drawer("safety-input", SafetyInput.class), ledger.drawer("own-exposure", OwnExposure.class));
    }

    SafetyInputs inputs(Product product) {
        return new SafetyInputs(substances.all(), exposures.read(key(product)));
    }

    static String key(Product product) {
        return Long.toString(product.id());
    }

    /** The table of a version. */
    public static SafetyTable table(Desk desk, Studied of) {
        return SafetyTable.of(
                Judgement.of(desk, of.subject(), of.book()).composition(),
                of.product().brief().type(),
                of.book(),
                Judgement.rules(),
                of(desk.ledger()).inputs(of.product()));
    }
}
