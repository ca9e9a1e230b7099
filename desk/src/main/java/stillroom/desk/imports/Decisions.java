package stillroom.desk.imports;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import stillroom.formulary.imports.Guidance;
import stillroom.formulary.imports.Mark;
import stillroom.formulary.imports.Meaning;
import stillroom.formulary.imports.RowKind;
import stillroom.formulary.imports.Unit;

/**
 * What the maker decided about a sheet, as the fields of its page say it.
 *
 * @param fields typed or chosen, by name of the field; a field that is absent leaves the guess as it is
 */
public record Decisions(Map<String, String> fields) {
    public static final Decisions NONE = new Decisions(Map.of());

    public Decisions {
        fields = Map.copyOf(fields);
    }

    Optional<String> of(String field) {
        return Optional.ofNullable(fields.get(field));
    }

    boolean isTicked(String field) {
        return fields.containsKey(field);
    }

    /** Whether the page of the sheet has been sent at all: then an absent tick is a decision. */
    boolean wereMade() {
        return fields.containsKey("seen");
    }

    Guidance guidance() {
        Map<Integer, Meaning> columns = new HashMap<>();
        Map<Integer, RowKind> rows = new HashMap<>();
        fields.forEach((field, said) -> {
            number(field, "column-")
                    .ifPresent(place -> one(said, Meaning.class).ifPresent(kind -> columns.put(place, kind)));
            number(field, "row-").ifPresent(place -> one(said, RowKind.class).ifPresent(kind -> rows.put(place, kind)));
        });
        return new Guidance(
                of("mark").flatMap(said -> one(said, Mark.class)),
                of("unit").flatMap(said -> one(said, Unit.class)),
                of("turned").filter(said -> !said.isEmpty()).map("yes"::equals),
                columns,
                rows);
    }

    private static Optional<Integer> number(String field, String stem) {
        String rest = field.startsWith(stem) ? field.substring(stem.length()) : "";
        return rest.matches("\\d{1,6}") ? Optional.of(Integer.parseInt(rest)) : Optional.empty();
    }

    private static <E extends Enum<E>> Optional<E> one(String said, Class<E> kinds) {
        for (E kind : kinds.getEnumConstants()) {
            if (kind.name().equals(said)) {
                return Optional.of(kind);
            }
        }
        return Optional.empty();
    }
}
