package stillroom.desk.imports;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import stillroom.formulary.imports.Flag;
import stillroom.formulary.imports.Match;
import stillroom.formulary.imports.ReadMaterial;

/**
 * A material of a list as it would be stored: onto a card that exists, or as a card of its own.
 *
 * @param card what its field says; empty makes a new card
 * @param take whether the maker wants it
 */
public record SettledMaterial(
        ReadMaterial read,
        String field,
        Match match,
        String card,
        Optional<String> materialKey,
        boolean take,
        boolean decidedCard) {
    public static List<SettledMaterial> all(HeldSheet sheet, CardNames cards) {
        List<ReadMaterial> materials = sheet.read().materials();
        return IntStream.range(0, materials.size())
                .mapToObj(i -> of(materials.get(i), sheet.decisions(), cards))
                .toList();
    }

    private static SettledMaterial of(ReadMaterial read, Decisions decisions, CardNames cards) {
        String field = "m-" + read.row();
        Match match = cards.index().match(read.names(), read.cas());
        String card = decisions
                .of("card-" + field)
                .orElse(match.materialKey().map(cards::name).orElse(""));
        return new SettledMaterial(
                read,
                field,
                match,
                card,
                card.isBlank() ? Optional.empty() : cards.key(card),
                !decisions.wereMade() || decisions.isTicked("take-" + field),
                decisions.of("card-" + field).isPresent());
    }

    String name() {
        return card.isBlank() ? read.name() : card;
    }

    public Optional<String> obstacle() {
        return name().isBlank() ? Optional.of("Row " + (read.row() + 1) + " has no name.") : Optional.empty();
    }

    public List<String> doubts() {
        List<String> doubts = new ArrayList<>();
        read.flags().stream().filter(Flag::doubtful).map(Flag::sentence).forEach(doubts::add);
        if (match.isDoubtful() && !decidedCard) {
            doubts.add(match.why());
        }
        return doubts;
    }
}
