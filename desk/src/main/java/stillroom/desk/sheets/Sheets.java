package stillroom.desk.sheets;

import io.javalin.http.Context;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import stillroom.desk.shell.Assets;
import stillroom.desk.shell.Pages;

/** What all printed sheets share: style, sizes, and how many pages they take. */
public final class Sheets {
    /** Size of ordinary text [pt]. */
    static final double USUAL_POINTS = 9.5;

    /** Below this a sheet is no longer read at the bench. */
    private static final double SMALLEST_POINTS = 7;

    private static final double STEP = 0.5;

    private static final String STYLE = style("sheets/sheet.css");
    private static final String COMPACT = style("sheets/compact.css");

    private Sheets() {}

    /** A sheet of any length. */
    public static byte[] set(Pages pages, String template, Object sheet) {
        return set(pages, template, sheet, USUAL_POINTS);
    }

    /** A sheet on one page where that goes in letters that can be read; else of any length in usual ones. */
    public static byte[] onOnePage(Pages pages, String template, Object sheet) {
        for (String style : List.of(STYLE, STYLE + COMPACT)) {
            for (double points = USUAL_POINTS; points >= SMALLEST_POINTS; points -= STEP) {
                byte[] file = set(pages, template, sheet, style, points);
                if (pageCount(file) == 1) {
                    return file;
                }
            }
        }
        return set(pages, template, sheet);
    }

    /** The same for a sheet of several parts, each of which begins a page; else on as few pages as may be. */
    public static byte[] onPages(Pages pages, String template, Object sheet, int wished) {
        byte[] best = set(pages, template, sheet);
        int fewest = pageCount(best);
        for (double points = USUAL_POINTS - STEP; fewest > wished && points >= SMALLEST_POINTS; points -= STEP) {
            byte[] file = set(pages, template, sheet, points);
            if (pageCount(file) < fewest) {
                best = file;
                fewest = pageCount(file);
            }
        }
        return best;
    }

    private static byte[] set(Pages pages, String template, Object sheet, double points) {
        return set(pages, template, sheet, STYLE, points);
    }

    private static byte[] set(Pages pages, String template, Object sheet, String style, double points) {
        String size = String.format(Locale.ROOT, "body { font-size: %.2fpt; }%n", points);
        return Pdf.of(pages.render(template, Map.of("page", sheet, "css", size + style)));
    }

    private static String style(String asset) {
        return new String(Assets.read(asset).orElseThrow(), StandardCharsets.UTF_8);
    }

    /** Answers with a PDF under a name that every system takes. */
    public static void answer(Context request, byte[] file, String name) {
        request.header("Content-Disposition", "inline; filename=\"" + fileName(name) + ".pdf\"");
        request.contentType("application/pdf").result(file);
    }

    /** A name of small letters, digits and hyphens. */
    public static String fileName(String name) {
        return name.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-");
    }

    static int pageCount(byte[] file) {
        try (PDDocument document = Loader.loadPDF(file)) {
            return document.getNumberOfPages();
        } catch (IOException unreadable) {
            throw new UncheckedIOException("a sheet just set cannot be read", unreadable);
        }
    }
}
