package stillroom.desk.assessor;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import stillroom.desk.assessor.AssessorFile.Raw;
import stillroom.desk.batches.Cards;
import stillroom.desk.chemistry.Studied;
import stillroom.desk.papers.PaperBook;
import stillroom.desk.papers.PaperBook.On;
import stillroom.formulary.formula.Line;
import stillroom.formulary.material.Material;

/** The trade materials of a formula, with who makes them and what documents are on file. */
final class Raws {
    private Raws() {}

    static List<Raw> of(Studied of, PaperBook papers) {
        Cards cards = new Cards(of.book());
        return of.version().formula().lines().stream()
                .map(line -> raw(line, cards, papers))
                .toList();
    }

    private static Raw raw(Line line, Cards cards, PaperBook papers) {
        Optional<Material> card = cards.card(line.materialKey());
        return new Raw(
                cards.name(line.materialKey()),
                cards.inci(line.materialKey()),
                card.map(Material::supplier).orElse(""),
                line.amount()
                        .match(
                                fixed -> fixed.percent().toString(),
                                () -> "q.s. to 100",
                                to -> to.range().low() + " to " + to.range().high()),
                papers.on(On.MATERIAL, line.materialKey()).stream()
                        .map(filed -> filed.paper().kind().words())
                        .distinct()
                        .collect(Collectors.joining(", ")));
    }
}
