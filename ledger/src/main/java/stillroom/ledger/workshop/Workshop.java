package stillroom.ledger.workshop;

import java.util.List;

/**
 * Whose workshop this is, and how it likes its figures.
 *
 * @param name as it stands on sheets
 * @param responsiblePerson name of the person or firm that answers for the products on the label
 * @param addressLines of the responsible person, as printed
 * @param market code of the market whose law is asked unless a brief says otherwise: EU, UK, US
 * @param currency three letters, such as EUR
 * @param decimalsShown decimals of percentages on screen and paper, 0 to 4
 * @param demonstration whether this is the invented workshop; every page and sheet then says so
 */
public record Workshop(
        String name,
        String responsiblePerson,
        List<String> addressLines,
        String market,
        String currency,
        int decimalsShown,
        boolean demonstration) {
    /** What a new ledger holds until the maker says more. */
    public static final Workshop UNNAMED = new Workshop("", "", List.of(), "EU", "EUR", 2, false);

    public Workshop {
        if (decimalsShown < 0 || decimalsShown > 4) {
            throw new IllegalArgumentException("decimals shown are " + decimalsShown + ", allowed 0 to 4");
        }
        addressLines = List.copyOf(addressLines);
    }
}
