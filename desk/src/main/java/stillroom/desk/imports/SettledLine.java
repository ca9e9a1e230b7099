package stillroom.desk.imports;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stillroom.formulary.formula.Amount;
import stillroom.formulary.imports.Flag;
import stillroom.formulary.imports.Match;
import stillroom.formulary.imports.ReadLine;

/**
 * A line as it would be stored: what was read, over it what the maker decided.
 *
 * @param field what the names of its fields end with
 * @param card what its field of the card says; empty keeps the bare name
 * @param materialKey the card, where the field names one
 * @param newCard whether a card is to be made of the name
 * @param others names of cards that may be meant instead
 * @param decidedAmount whether the amount is the maker's own
 * @param decidedCard whether the card is the maker's own choice
 */
public record SettledLine(
        ReadLine read,
        String field,
        Match match,
        String phase,
        Optional<Amount> amount,
        String amountTyped,
        String card,
        Optional<String> materialKey,
        boolean newCard,
        boolean decidedAmount,
        boolean decidedCard,
        boolean leftOut,
        List<String> others) {
    private static final int OTHERS = 3;

    public SettledLine {
        others = List.copyOf(others);
    }

    static SettledLine of(ReadLine line, int formula, Decisions decisions, CardNames cards) {
        String field = formula + "-" + line.row();
        Match match = cards.index().match(line.names(), line.cas());
        String guessed = match.materialKey().map(cards::name).orElse("");
        String shown = line.amount()
                .map(stillroom.formulary.imports.TypedAmount::write)
                .orElse("");
        String typed = decisions.of("amount-" + field).orElse(shown);
        boolean ownAmount = !typed.equals(shown);
        String card = decisions.of("card-" + field).orElse(guessed);
        return new SettledLine(
                line,
                field,
                match,
                decisions.of("phase-" + field).orElse(line.phase()),
                ownAmount ? stillroom.formulary.imports.TypedAmount.read(typed) : line.amount(),
                typed,
                card,
                card.isBlank() ? Optional.empty() : cards.key(card),
                decisions.isTicked("new-" + field),
                ownAmount,
                decisions.of("card-" + field).isPresent(),
                decisions.wereMade() && decisions.of("leave-" + field).isPresent(),
                match.others().stream().limit(OTHERS).map(cards::name).toList());
    }

    /** The name that the line has where it has no card. */
    String name() {
        return card.isBlank() ? read.name() : card;
    }

    /** What keeps it from being stored. */
    Optional<String> obstacle() {
        if (leftOut) {
            return Optional.empty();
        }
        if (amount.isEmpty()) {
            return Optional.of(
                    decidedAmount
                            ? "\"" + amountTyped
                                    + "\" is no amount: type per cent from 0 to 100, q.s. to 100, or q.s. to pH."
                            : "Row " + (read.row() + 1) + " (" + read.name() + ") has no amount that can be taken.");
        }
        return name().isBlank() ? Optional.of("Row " + (read.row() + 1) + " has no name.") : Optional.empty();
    }

    /** What may be wrong and was not decided by the maker. */
    public List<String> doubts() {
        List<String> doubts = new ArrayList<>();
        if (!decidedAmount) {
            read.flags().stream().filter(Flag::doubtful).map(Flag::sentence).forEach(doubts::add);
        }
        if (match.isDoubtful() && !decidedCard) {
            doubts.add(match.why());
        }
        return doubts;
    }

    /** What only says how it was read. */
    public List<String> notes() {
        return read.flags().stream()
                .filter(flag -> !flag.doubtful())
                .map(Flag::sentence)
                .toList();
    }
}
