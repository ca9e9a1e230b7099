package stillroom.desk.law;

import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import stillroom.desk.law.ProductLawPage.Pair;
import stillroom.desk.law.ProductLawPage.Turn;
import stillroom.desk.shell.Choice;
import stillroom.desk.shell.Desk;
import stillroom.desk.shell.FindingWords;
import stillroom.desk.shell.Format;
import stillroom.desk.shell.Frame.Section;
import stillroom.desk.shell.Input;
import stillroom.desk.shell.Judgement;
import stillroom.desk.shell.Typed;
import stillroom.formulary.change.LawChange;
import stillroom.formulary.evaluation.Evaluation;
import stillroom.formulary.formula.FormulaVersion;
import stillroom.formulary.formula.Product;
import stillroom.formulary.judgement.Subjects;

/** One product by the law of two days. */
final class ProductLawView {
    private ProductLawView() {}

    static void show(Desk desk, Context request) {
        Product product = desk.ledger()
                .products()
                .product(Desk.id(request, "product"))
                .orElseThrow(() -> new NotFoundResponse("There is no such product."));
        List<FormulaVersion> versions = desk.ledger().products().versions(product.id());
        if (versions.isEmpty()) {
            throw new NotFoundResponse(product.name() + " has no formula yet.");
        }
        Days days = Days.of(Input.ofQuery(request), desk.today());
        FormulaVersion version = version(request, versions);
        ProductLawPage page = page(desk, request, product, versions, version, days);
        if (days.typed().isSound()) {
            desk.pages().show(request, "law/product.jte", page);
        } else {
            desk.pages().showAgain(request, "law/product.jte", page);
        }
    }

    private static FormulaVersion version(Context request, List<FormulaVersion> versions) {
        String asked = Optional.ofNullable(request.queryParam("version")).orElse("");
        return versions.stream()
                .filter(one -> Integer.toString(one.number()).equals(asked))
                .findFirst()
                .orElse(versions.get(versions.size() - 1));
    }

    private static ProductLawPage page(
            Desk desk,
            Context request,
            Product product,
            List<FormulaVersion> versions,
            FormulaVersion version,
            Days days) {
        SweepBooks books = new SweepBooks(desk.ledger().materials());
        Sweep.Wish wish = new Sweep.Wish(days.from(), days.to(), Sweep.Which.EVERY);
        LawChange change = Sweep.change(desk.ledger(), Judgement.comparison(), product, version, books, wish);
        Evaluation later = Judgement.of(Subjects.of(version.formula(), product.brief()), books.of(version), days.to());
        return new ProductLawPage(
                desk.frame(request, product.name() + ": law of two days", Section.PRODUCTS),
                product,
                new Typed(
                        java.util.Map.of(
                                "version", Integer.toString(version.number()),
                                "from", days.typed().value("from", days.from().toString()),
                                "to", days.typed().value("to", days.to().toString())),
                        days.typed().problems()),
                versions.stream()
                        .map(one -> new Choice(Integer.toString(one.number()), "Version " + one.number()))
                        .toList(),
                product.brief().market(),
                Format.day(days.from()),
                Format.day(days.to()),
                Format.day(later.lawRecordedOn()),
                change.appeared(),
                change.gone(),
                change.reweighed().stream()
                        .map(one -> new Pair(FindingWords.of(one.before()), one.after()))
                        .toList(),
                Point.of(change).stream()
                        .filter(point -> point.rule().isEmpty())
                        .map(point -> new SweepPage.PointRow(point.what(), "", point.says()))
                        .toList(),
                change.rows().stream().map(ProductLawView::turn).toList(),
                (int) later.findings().stream()
                        .filter(finding -> !change.appeared().contains(finding))
                        .filter(finding -> change.reweighed().stream()
                                .noneMatch(one -> one.after().equals(finding)))
                        .count());
    }

    private static Turn turn(LawChange.RowTurn row) {
        return new Turn(
                Format.day(row.day()),
                row.turn().words(),
                row.rule(),
                row.name(),
                String.join(", ", row.substances()),
                row.source() + (row.amendedBy().isEmpty() ? "" : ", by " + row.amendedBy()));
    }

    /** Two days as typed; where they do not go together, what is wrong stands beside them and today is shown. */
    record Days(LocalDate from, LocalDate to, Typed typed) {
        static Days of(Input input, LocalDate today) {
            Optional<LocalDate> from = input.has("from") ? input.day("from", "The first day") : Optional.empty();
            Optional<LocalDate> to = input.has("to") ? input.day("to", "The other day") : Optional.empty();
            LocalDate first = from.orElse(today);
            LocalDate second = to.orElse(first.isBefore(today) ? today : first.plusYears(2));
            if (input.isSound() && second.isBefore(first)) {
                input.refuse("to", "The other day lies before the first one.");
                return new Days(first, first, input.typed());
            }
            return new Days(first, second.isBefore(first) ? first : second, input.typed());
        }
    }
}
