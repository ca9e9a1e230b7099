package stillroom.desk.materials;

import io.javalin.http.Context;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import stillroom.desk.shell.Choice;
import stillroom.desk.shell.Desk;
import stillroom.desk.shell.Format;
import stillroom.desk.shell.Frame.Section;
import stillroom.formulary.judgement.pot.Opened;
import stillroom.formulary.material.Family;
import stillroom.formulary.material.Material;
import stillroom.formulary.material.MaterialBook;
import stillroom.formulary.material.Substance;

/** Builds the list of materials: own cards and the starter library in one. */
final class ShelfList {
    /** More rows than this are asked for: a list that long is not read anyway. */
    private static final int FIRST_ROWS = 60;

    private final Inci inci;
    private final ShelfStock stock;
    private final Set<String> own;
    private final List<Material> cards;

    private ShelfList(Desk desk) {
        MaterialBook book = desk.ledger().materials().book();
        inci = new Inci(book);
        stock = ShelfStock.of(desk.ledger().lots(), desk.today());
        own = desk.ledger().materials().own().stream().map(Material::key).collect(Collectors.toSet());
        cards = book.materials();
    }

    static ShelfPage page(Desk desk, Context request) {
        return new ShelfList(desk).page(desk, request, ShelfQuery.of(request));
    }

    private ShelfPage page(Desk desk, Context request, ShelfQuery query) {
        List<Material> found = cards.stream()
                .filter(card -> fits(card, query))
                .sorted(order(query))
                .toList();
        List<ShelfPage.Row> rows = found.stream()
                .limit(query.all() ? found.size() : FIRST_ROWS)
                .map(this::row)
                .toList();
        return new ShelfPage(
                desk.frame(request, "Shelf", Section.SHELF),
                query,
                families(),
                kinds(),
                rows,
                found.size(),
                cards.size());
    }

    /** What begins as typed comes first, then what stands on the shelf, then by name. */
    private Comparator<Material> order(ShelfQuery query) {
        String begins = query.words().toLowerCase(Locale.ROOT);
        return Comparator.comparing(
                        (Material card) -> !card.name().toLowerCase(Locale.ROOT).startsWith(begins))
                .thenComparing(card -> stock.lots(card.key()).isEmpty())
                .thenComparing(Material::name, String.CASE_INSENSITIVE_ORDER);
    }

    private boolean fits(Material card, ShelfQuery query) {
        return (query.family().isEmpty() || card.family().name().equals(query.family()))
                && fitsKind(card, query.kind())
                && query.isIn(text(card));
    }

    private boolean fitsKind(Material card, String kind) {
        return switch (kind) {
            case ShelfQuery.STOCKED -> !stock.lots(card.key()).isEmpty();
            case ShelfQuery.OWN -> own.contains(card.key());
            case ShelfQuery.STARTER -> !own.contains(card.key());
            default -> true;
        };
    }

    /** All that is looked through for a card, in lower case. */
    private String text(Material card) {
        Stream<String> constituents = Opened.parts(Optional.of(card), inci.book()).stream()
                .flatMap(part -> inci.substance(part.substance()).stream())
                .flatMap(ShelfList::names);
        return Stream.of(Stream.of(card.name(), card.supplier()), card.functions().stream(), constituents)
                .flatMap(words -> words)
                .collect(Collectors.joining(" "))
                .toLowerCase(Locale.ROOT);
    }

    private static Stream<String> names(Substance substance) {
        return Stream.concat(Stream.of(substance.inciName()), substance.casNumbers().stream());
    }

    private ShelfPage.Row row(Material card) {
        return new ShelfPage.Row(
                card.key(),
                card.name(),
                inci.labelNames(card),
                Format.words(card.family()),
                String.join(", ", card.functions()),
                own.contains(card.key()) ? "own card" : "starter library",
                stock.lots(card.key()).isEmpty() ? "" : Format.grams(stock.onHand(card.key())) + " g",
                stock.words(card.key()));
    }

    private static List<Choice> families() {
        return Stream.concat(Stream.of(new Choice("", "all families")), Choice.of(Family.class, Format::words).stream())
                .toList();
    }

    private static List<Choice> kinds() {
        return ShelfQuery.KINDS.stream()
                .map(kind -> new Choice(kind, kindWords(kind)))
                .toList();
    }

    private static String kindWords(String kind) {
        return switch (kind) {
            case ShelfQuery.STOCKED -> "with lots on the shelf";
            case ShelfQuery.OWN -> "own cards";
            case ShelfQuery.STARTER -> "starter library";
            default -> "all cards";
        };
    }
}
