package stillroom.desk.sheets;

import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.pdfboxout.PDFontSupplier;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.svgsupport.BatikSVGDrawer;
import com.openhtmltopdf.util.XRLog;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import stillroom.desk.shell.Assets;

/** Sets well-formed HTML as a tagged PDF with embedded fonts. Loads nothing from elsewhere. Thread-safe. */
public final class Pdf {
    static {
        XRLog.setLoggingEnabled(false);
        Logger.getLogger("org.apache.fontbox").setLevel(Level.SEVERE);
        Logger.getLogger("org.apache.pdfbox").setLevel(Level.SEVERE);
    }

    private Pdf() {}

    /** The PDF file of a sheet. */
    public static byte[] of(String html) {
        ByteArrayOutputStream file = new ByteArrayOutputStream(64_000);
        try (PDDocument document = new PDDocument()) {
            PdfRendererBuilder builder = new PdfRendererBuilder();
            builder.usePDDocument(document);
            // Pictures that stand in the sheet itself are taken; nothing is fetched.
            builder.useUriResolver((base, address) -> address.startsWith("data:image/") ? address : null);
            builder.usePdfUaAccessibility(true);
            builder.useSVGDrawer(new BatikSVGDrawer());
            addFont(builder, document, "fonts/Lato-Regular.ttf", "Lato", 400, FontStyle.NORMAL);
            addFont(builder, document, "fonts/Lato-Italic.ttf", "Lato", 400, FontStyle.ITALIC);
            addFont(builder, document, "fonts/Lato-Bold.ttf", "Lato", 700, FontStyle.NORMAL);
            addFont(builder, document, "fonts/Vollkorn-SemiBold.ttf", "Vollkorn", 600, FontStyle.NORMAL);
            builder.withHtmlContent(html, null);
            builder.toStream(file);
            builder.run();
        } catch (IOException broken) {
            throw new UncheckedIOException("a sheet could not be set", broken);
        }
        return file.toByteArray();
    }

    private static void addFont(
            PdfRendererBuilder builder, PDDocument document, String asset, String family, int weight, FontStyle style)
            throws IOException {
        TrueTypeFont font = new TTFParser()
                .parse(new RandomAccessReadBuffer(Assets.read(asset).orElseThrow()));
        // Ligatures have no characters of their own: copied or read aloud, "caution" would lose its "ti".
        font.setEnableGsub(false);
        builder.useFont(new PDFontSupplier(PDType0Font.load(document, font, true)), family, weight, style, true);
    }
}
