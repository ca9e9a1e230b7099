package stillroom.desk.imports;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import stillroom.desk.shell.Typed;
import stillroom.formulary.imports.Flag;
import stillroom.formulary.imports.Match;
import stillroom.formulary.imports.ReadMaterial;

/**
 * A material of a list as it would be stored: onto a card that exists, or as a card of its own.
 *
 * @param read as it stands in the list
 * @param fields what of it was changed by the maker
 * @param card what its field says; empty makes a new card
 * @param take whether the maker wants it
 * @param right whether the maker said that what was doubted is right
 */
public record SettledMaterial(
        ReadMaterial read,
        MaterialFields fields,
        String field,
        Match match,
        String card,
        Optional<String> materialKey,
        boolean take,
        boolean decidedCard,
        boolean right) {
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
                MaterialFields.of(read, field, decisions),
                field,
                match,
                card,
                card.isBlank() ? Optional.empty() : cards.key(card),
                !decisions.wereMade() || decisions.isTicked("take-" + field),
                decisions.of("card-" + field).isPresent(),
                decisions.isTicked("right-" + field));
    }

    /** As it would be stored. */
    public ReadMaterial settled() {
        return fields.material();
    }

    /** What its fields say, and what is wrong with them. */
    public Typed typed() {
        return fields.typed();
    }

    String name() {
        return card.isBlank() ? read.name() : card;
    }

    /** What keeps it from being stored. */
    public List<String> obstacles() {
        List<String> obstacles = new ArrayList<>();
        String row = "Row " + (read.row() + 1);
        if (name().isBlank()) {
            obstacles.add(row + " has no name.");
        }
        typed().problems().forEach(problem -> obstacles.add(row + " (" + name() + "): " + problem.sentence()));
        return obstacles;
    }

    /** What may be wrong and was not decided by the maker. */
    public List<String> doubts() {
        List<String> doubts = new ArrayList<>();
        if (!isRight()) {
            read.flags().stream().filter(Flag::doubtful).map(Flag::sentence).forEach(doubts::add);
        }
        if (match.isDoubtful() && !decidedCard) {
            doubts.add(match.why());
        }
        return doubts;
    }

    /** Whether the maker changed its figures, or said that they are right. */
    public boolean isRight() {
        return right || fields.own();
    }
}
