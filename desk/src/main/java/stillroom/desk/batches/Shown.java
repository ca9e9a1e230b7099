package stillroom.desk.batches;

import java.util.Collection;
import java.util.List;
import stillroom.desk.shell.Format;
import stillroom.formulary.plan.Balance;
import stillroom.formulary.quantity.Grams;

/** Writes a weighed mass with the decimals that its balance shows: 12.00 on steps of 0.01 g. */
public final class Shown {
    private final List<Balance> balances;

    public Shown(List<Balance> balances) {
        this.balances = List.copyOf(balances);
    }

    /** A mass as this balance shows it; a figure finer than its steps, or of an unknown balance, as it is. */
    public String grams(Grams mass, String balance) {
        return grams(mass, List.of(balance));
    }

    /** A sum of weighings on several balances, with the decimals of the finest. */
    public String grams(Grams mass, Collection<String> names) {
        int shown = balances.stream()
                .filter(balance -> names.contains(balance.name()))
                .mapToInt(balance -> balance.step().value().scale())
                .max()
                .orElse(0);
        return Format.decimal(mass.value(), Math.max(Math.max(0, mass.value().scale()), shown));
    }
}
