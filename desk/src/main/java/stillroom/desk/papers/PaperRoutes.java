package stillroom.desk.papers;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.http.NotFoundResponse;
import io.javalin.http.UploadedFile;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import stillroom.desk.papers.PaperBook.Filed;
import stillroom.desk.papers.PaperBook.On;
import stillroom.desk.papers.PapersPage.Row;
import stillroom.desk.shell.Desk;
import stillroom.desk.shell.Format;
import stillroom.desk.shell.Frame.Section;
import stillroom.desk.shell.Input;
import stillroom.desk.shell.Transfer;
import stillroom.desk.shell.Typed;
import stillroom.formulary.formula.Product;
import stillroom.formulary.material.Material;
import stillroom.formulary.material.Paper;

/** Documents: the list on one thing, filing one, taking one out, and the kept file. */
public final class PaperRoutes {
    private static final String ON = "/papers/{on}/{of}";
    private static final String TEMPLATE = "papers/papers.jte";

    private PaperRoutes() {}

    public static void add(RoutesConfig routes, Desk desk) {
        routes.get(
                ON,
                request -> desk.pages()
                        .show(request, TEMPLATE, Asked.of(desk, request).page(Typed.NOTHING)));
        routes.post(ON, request -> file(desk, request));
        routes.post(ON + "/{number}/remove", request -> remove(desk, request));
        routes.get(ON + "/{number}/file", request -> kept(desk, request));
    }

    /** The thing in the path of a request. */
    private record Asked(Desk desk, Context request, On on, String of, String name) {
        static Asked of(Desk desk, Context request) {
            String of = request.pathParam("of");
            On on = On.at(request.pathParam("on")).orElseThrow(Asked::none);
            return new Asked(desk, request, on, of, name(desk, on, of).orElseThrow(Asked::none));
        }

        private static NotFoundResponse none() {
            return new NotFoundResponse("There is nothing here that documents could be on.");
        }

        private static Optional<String> name(Desk desk, On on, String of) {
            return switch (on) {
                case MATERIAL -> desk.ledger().materials().book().material(of).map(Material::name);
                case LOT ->
                    desk.ledger()
                            .lots()
                            .lot(of)
                            .map(stocked -> "Lot " + stocked.lot().code());
                case PRODUCT ->
                    of.matches("\\d{1,18}")
                            ? desk.ledger()
                                    .products()
                                    .product(Long.parseLong(of))
                                    .map(Product::name)
                            : Optional.empty();
            };
        }

        String path() {
            return "/papers/" + on.path() + "/" + of;
        }

        PapersPage page(Typed typed) {
            return new PapersPage(
                    desk.frame(request, name + ", documents", on == On.PRODUCT ? Section.PRODUCTS : Section.SHELF),
                    name,
                    "/" + on.path() + "/" + of,
                    path(),
                    PaperBook.of(desk.ledger()).on(on, of).stream()
                            .map(this::row)
                            .toList(),
                    typed);
        }

        private Row row(Filed filed) {
            Paper paper = filed.paper();
            return new Row(
                    filed.number(),
                    paper.kind().words(),
                    paper.title(),
                    paper.dated().map(Format::day).orElse(""),
                    paper.reviewBy().map(Format::day).orElse(""),
                    paper.dueBy(desk.today()),
                    paper.file().isPresent() ? path() + "/" + filed.number() + "/file" : "",
                    paper.fileName(),
                    paper.note());
        }
    }

    private static void file(Desk desk, Context request) {
        Asked asked = Asked.of(desk, request);
        Input input = Input.of(request);
        Optional<Paper> read = read(desk, request, input);
        if (read.isPresent()) {
            PaperBook.of(desk.ledger()).file(asked.on(), asked.of(), read.get());
            request.redirect(asked.path() + "?did=added", HttpStatus.SEE_OTHER);
        } else {
            desk.pages().showAgain(request, TEMPLATE, asked.page(input.typed()));
        }
    }

    private static Optional<Paper> read(Desk desk, Context request, Input input) {
        Optional<Paper.Kind> kind = input.choice("kind", "The kind", Paper.Kind.class);
        String title = input.required("title", "The title");
        Optional<LocalDate> dated = input.day("dated", "The day on it");
        Optional<LocalDate> review = input.day("reviewBy", "The day of the review");
        Optional<UploadedFile> file = Transfer.sent(request, "file");
        if (!input.isSound()) {
            return Optional.empty();
        }
        return Optional.of(new Paper(
                kind.orElse(Paper.Kind.OTHER),
                title,
                dated,
                review,
                file.map(one -> desk.ledger().attachments().put(one.filename(), Transfer.bytes(one))),
                file.map(UploadedFile::filename).orElse(""),
                input.text("note")));
    }

    private static void remove(Desk desk, Context request) {
        Asked asked = Asked.of(desk, request);
        PaperBook.of(desk.ledger()).remove(asked.on(), asked.of(), (int) Desk.id(request, "number"));
        request.redirect(asked.path() + "?did=saved", HttpStatus.SEE_OTHER);
    }

    private static void kept(Desk desk, Context request) {
        Asked asked = Asked.of(desk, request);
        long number = Desk.id(request, "number");
        List<Filed> papers = PaperBook.of(desk.ledger()).on(asked.on(), asked.of());
        Paper paper = papers.stream()
                .filter(filed -> filed.number() == number)
                .map(Filed::paper)
                .findFirst()
                .orElseThrow(() -> new NotFoundResponse("There is no such document."));
        byte[] bytes = paper.file()
                .flatMap(digest -> desk.ledger().attachments().get(digest))
                .orElseThrow(() -> new NotFoundResponse("No file is kept for this document."));
        Transfer.handBack(request, paper.fileName(), bytes);
    }
}
