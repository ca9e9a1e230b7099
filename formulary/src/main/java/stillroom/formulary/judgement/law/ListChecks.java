package stillroom.formulary.judgement.law;

import java.util.List;
import java.util.function.Consumer;
import java.util.function.Predicate;
import stillroom.formulary.evaluation.Finding;
import stillroom.formulary.judgement.pot.Item;
import stillroom.formulary.judgement.pot.NamingRow;
import stillroom.formulary.judgement.pot.Pot;
import stillroom.formulary.judgement.pot.Share;
import stillroom.formulary.judgement.pot.Words;
import stillroom.formulary.material.Family;
import stillroom.formulary.material.Material;
import stillroom.formulary.rule.MarketLaw;
import stillroom.formulary.rule.Rule;

/** Where only what is on a list is allowed (colourants, preservatives, UV filters): what our record does not hold. */
final class ListChecks {
    private ListChecks() {}

    static void preservatives(Pot pot, Consumer<Finding> report) {
        pot.rules()
                .law(pot.brief().market())
                .filter(law -> holds(law, "annex-v"))
                .ifPresent(law -> {
                    for (Item item : pot.items(Family.PRESERVATIVE)) {
                        boolean known = item.material().map(Material::composition).orElse(List.of()).stream()
                                .anyMatch(part -> law.lists("annex-v", namesOf(pot, part.substance()), pot.asOf())
                                        || pot.book()
                                                .substance(part.substance())
                                                .map(substance -> substance.is("preservative-booster"))
                                                .orElse(false));
                        boolean opened = item.material()
                                .map(card -> !card.composition().isEmpty())
                                .orElse(false);
                        if (opened && !known) {
                            report.accept(new Finding(
                                    Finding.Kind.LOOK_AT_THIS,
                                    "law.unlisted-preservative",
                                    "annex V as recorded",
                                    List.of(item.portion().lineId()),
                                    List.of(),
                                    item.name()
                                            + " stands as a preservative, but our record of annex V names none of its parts.",
                                    "Look it up in annex V; the record is not complete."));
                        }
                    }
                });
    }

    /** A constituent of a card under its names; a premix has none of its own. */
    private static List<String> namesOf(Pot pot, String substance) {
        return pot.shares().stream()
                .filter(share -> share.key().equals(substance))
                .findFirst()
                .map(Share::names)
                .orElse(List.of(substance));
    }

    static void colourants(Pot pot, Consumer<Finding> report) {
        unlisted(pot, "annex-iv", "law.unlisted-colourant", share -> share.is("colourant"), "a colourant", report);
        List<NamingRow> rows = pot.rows().stream()
                .filter(row -> row.rule().table().equals("annex-iv")
                        && row.rule().span().countsOn(pot.asOf()))
                .toList();
        for (Share share : pot.where(share -> share.isIngredient() && share.is("colourant"))) {
            List<Rule> naming = rows.stream()
                    .filter(row -> row.shares().contains(share))
                    .map(NamingRow::rule)
                    .toList();
            if (naming.stream()
                    .noneMatch(rule -> rule.scope().covers(pot.brief().type()))) {
                // A colourant is allowed only where its entry names the field of application.
                naming.stream()
                        .findFirst()
                        .ifPresent(rule -> report.accept(RowFinding.prohibited(new Applying(rule, List.of(share)))));
            }
        }
    }

    static void filters(Pot pot, Consumer<Finding> report) {
        unlisted(pot, "annex-vi", "law.unlisted-uv-filter", share -> share.is("uv-filter"), "a UV filter", report);
    }

    private static void unlisted(
            Pot pot, String table, String id, Predicate<Share> wanted, String what, Consumer<Finding> report) {
        pot.rules().law(pot.brief().market()).filter(law -> holds(law, table)).ifPresent(law -> {
            List<Share> strangers = pot.where(share ->
                    share.isIngredient() && wanted.test(share) && !law.lists(table, share.names(), pot.asOf()));
            if (!strangers.isEmpty()) {
                report.accept(new Finding(
                        Finding.Kind.LOOK_AT_THIS,
                        id,
                        table.replace('-', ' ') + " as recorded",
                        Pot.lines(strangers),
                        List.of(),
                        Words.list(Pot.names(strangers)) + ": " + what + " that our record of "
                                + table.replace('-', ' ') + " does not name.",
                        "Look it up there; the record is not complete."));
            }
        });
    }

    private static boolean holds(MarketLaw law, String table) {
        return law.rules().stream().anyMatch(rule -> rule.table().equals(table));
    }
}
