package stillroom.ledger.workshop;

import java.util.List;
import stillroom.formulary.plan.Balance;

/** The balances of the workshop. */
public final class Equipment {
    /** In the maker's order. */
    public List<Balance> balances() {
        throw new UnsupportedOperationException();
    }

    /** Replaces the whole list; names must differ. */
    public void writeBalances(List<Balance> balances) {
        throw new UnsupportedOperationException();
    }
}
