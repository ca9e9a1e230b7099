package stillroom.desk.shell;

import java.util.Optional;
import stillroom.formulary.quantity.Grams;
import stillroom.formulary.quantity.Money;
import stillroom.formulary.quantity.Price;

/** Reads what was paid for how much: the fields {@code paid} and {@code paid-grams}, both or neither. */
public final class PriceReader {
    private PriceReader() {}

    /** None where nothing was typed, or where it was refused. */
    public static Optional<Price> price(Input input) {
        Optional<Money> paid = input.money("paid", "Price");
        Optional<Grams> amount = input.grams("paid-grams", "Amount");
        if (paid.isPresent() && amount.map(Grams::isZero).orElse(true) && !input.hasProblem("paid-grams")) {
            return input.refuse("paid-grams", "For how many grams was this paid?");
        }
        if (amount.isPresent() && paid.isEmpty() && !input.hasProblem("paid")) {
            return input.refuse("paid", "What was paid for this amount is missing.");
        }
        return paid.isPresent() && amount.isPresent()
                ? Optional.of(new Price(paid.get(), amount.get()))
                : Optional.empty();
    }
}
