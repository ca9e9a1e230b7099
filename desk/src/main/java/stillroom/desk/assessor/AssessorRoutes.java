package stillroom.desk.assessor;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import stillroom.desk.batches.BatchWork;
import stillroom.desk.chemistry.Studied;
import stillroom.desk.labels.LabelView;
import stillroom.desk.papers.PaperBook;
import stillroom.desk.papers.PaperBook.Filed;
import stillroom.desk.papers.PaperBook.On;
import stillroom.desk.sheets.RecordSheet;
import stillroom.desk.sheets.SheetRoutes;
import stillroom.desk.sheets.Sheets;
import stillroom.desk.shell.Desk;
import stillroom.formulary.formula.Line;
import stillroom.ledger.batch.BatchRow;

/** The assessor's file of a version: one PDF, or a folder with the batch records and documents as well. */
public final class AssessorRoutes {
    private static final String VERSION = "/products/{product}/versions/{version}";

    private AssessorRoutes() {}

    public static void add(RoutesConfig routes, Desk desk) {
        routes.get(VERSION + "/assessor.pdf", request -> file(desk, request));
        routes.get(VERSION + "/assessor.zip", request -> folder(desk, request));
    }

    private static byte[] pdf(Desk desk, Studied of) {
        return Sheets.set(desk.pages(), "assessor/file.jte", AssessorView.file(desk, of));
    }

    private static void file(Desk desk, Context request) {
        Studied of = Studied.of(desk, request);
        Sheets.answer(request, pdf(desk, of), of.about() + " for the assessor");
    }

    private static void folder(Desk desk, Context request) {
        Studied of = Studied.of(desk, request);
        String name = Sheets.fileName(of.about() + " for the assessor");
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(bytes, StandardCharsets.UTF_8)) {
            put(zip, name + ".pdf", pdf(desk, of));
            Optional<byte[]> label = SheetRoutes.label(desk, new LabelView(desk, of.product(), of.version()), "");
            if (label.isPresent()) {
                put(zip, "label.pdf", label.get());
            }
            for (BatchRow row : AssessorView.made(desk, of).toList()) {
                byte[] record = Sheets.set(
                        desk.pages(),
                        "sheets/record.jte",
                        new RecordSheet(BatchWork.of(desk, row.batch().id())).record());
                put(zip, "batch-records/" + Sheets.fileName(row.batch().code()) + ".pdf", record);
            }
            PaperBook filed = PaperBook.of(desk.ledger());
            papers(desk, zip, filed.on(On.PRODUCT, Long.toString(of.product().id())));
            for (String key : of.version().formula().lines().stream()
                    .map(Line::materialKey)
                    .distinct()
                    .toList()) {
                papers(desk, zip, filed.on(On.MATERIAL, key));
            }
        } catch (IOException full) {
            throw new UncheckedIOException(full);
        }
        request.header("Content-Disposition", "attachment; filename=\"" + name + ".zip\"");
        request.contentType("application/zip").result(bytes.toByteArray());
    }

    /** Numbered, so that two documents of one name both find room; no name from outside makes a path. */
    private static void papers(Desk desk, ZipOutputStream zip, List<Filed> papers) throws IOException {
        for (Filed filed : papers) {
            byte[] kept = filed.paper()
                    .file()
                    .flatMap(digest -> desk.ledger().attachments().get(digest))
                    .orElse(new byte[0]);
            if (kept.length > 0) {
                String plain = filed.paper()
                        .fileName()
                        .replaceAll("[^A-Za-z0-9._-]+", "-")
                        .replaceAll("^\\.+", "");
                String place =
                        filed.on() == On.PRODUCT ? "documents/" : "documents/" + Sheets.fileName(filed.of()) + "/";
                put(zip, place + filed.number() + "-" + plain, kept);
            }
        }
    }

    private static void put(ZipOutputStream zip, String name, byte[] bytes) throws IOException {
        zip.putNextEntry(new ZipEntry(name));
        zip.write(bytes);
        zip.closeEntry();
    }
}
