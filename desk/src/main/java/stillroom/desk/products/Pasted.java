package stillroom.desk.products;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stillroom.desk.shell.Decimals;
import stillroom.formulary.formula.Amount;
import stillroom.formulary.quantity.Percent;

/**
 * One line out of a spreadsheet: a name and a percentage.
 *
 * @param typed the whole line as it was pasted
 * @param materialKey the card that the name means; where there is none, the name itself
 * @param known whether there is such a card
 * @param amount empty where no figure could be read
 */
record Pasted(String typed, String name, String materialKey, boolean known, Optional<Amount> amount) {
    /** Reads columns parted by tabs, semicolons or several blanks; the percentage may stand before or behind the name. */
    static List<Pasted> read(List<String> lines, Cards cards) {
        List<Pasted> pasted = new ArrayList<>();
        for (String line : lines) {
            pasted.add(read(line, cards));
        }
        return pasted;
    }

    private static Pasted read(String line, Cards cards) {
        String[] columns = line.strip().split("\\s*[\\t;]\\s*|\\s{2,}");
        String first = columns[0];
        String second = columns.length > 1 ? columns[1] : "";
        boolean turned = amount(second).isEmpty() && amount(first).isPresent();
        String name = turned ? second : first;
        Optional<String> key = cards.key(name);
        return new Pasted(line, name, key.orElse(name), key.isPresent(), amount(turned ? first : second));
    }

    private static Optional<Amount> amount(String typed) {
        if (AmountKind.read("", typed) == AmountKind.TO_HUNDRED) {
            return Optional.of(new Amount.ToHundred());
        }
        return Decimals.read(typed.replaceFirst("\\s*%$", ""))
                .filter(figure -> figure.signum() >= 0 && figure.compareTo(BigDecimal.valueOf(100)) <= 0)
                .map(figure -> new Amount.Fixed(new Percent(figure)));
    }

    /** What keeps the line from being added; empty where nothing does. */
    Optional<String> problem() {
        if (name.isBlank()) {
            return Optional.of("There is no name in \"" + typed + "\".");
        }
        return amount.isPresent()
                ? Optional.empty()
                : Optional.of("There is no percentage from 0 to 100 in \"" + typed + "\".");
    }
}
