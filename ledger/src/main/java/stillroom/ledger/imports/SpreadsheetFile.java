package stillroom.ledger.imports;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import stillroom.formulary.imports.Grid;

/**
 * Opens spreadsheet files: XLSX, and text with separated columns. What a file is, its first bytes say and not its name.
 * Nothing of a file is executed, fetched or written anywhere.
 */
public final class SpreadsheetFile {
    private static final String WAY_OUT = " Save it as XLSX or CSV and take that.";

    private SpreadsheetFile() {}

    /** A file of this computer; its size is asked before it is read. */
    public static Opened open(Path file) {
        try {
            if (!Files.isRegularFile(file)) {
                return new Opened.Refused("There is no file \"" + shown(file.toString()) + "\".");
            }
            if (Files.size(file) > Bounds.FILE_BYTES) {
                return tooLarge(shown(file.toString()));
            }
            return open(file.toString(), Files.readAllBytes(file));
        } catch (IOException unreadable) {
            return new Opened.Refused("\"" + shown(file.toString()) + "\" cannot be read: " + unreadable.getMessage());
        }
    }

    /** What comes down a stream; no more is read than a file may have. */
    public static Opened open(String name, InputStream stream) throws IOException {
        byte[] bytes = stream.readNBytes(Bounds.FILE_BYTES + 1);
        return open(name, bytes);
    }

    /** @param name for messages and as the name of a sheet only; a path in it leads nowhere */
    public static Opened open(String name, byte[] bytes) {
        String shown = shown(name);
        if (bytes.length > Bounds.FILE_BYTES) {
            return tooLarge(shown);
        }
        if (bytes.length == 0) {
            return new Opened.Refused("\"" + shown + "\" is empty.");
        }
        try {
            return opened(shown, bytes);
        } catch (UnreadableSheet fault) {
            return new Opened.Refused("\"" + shown + "\" " + fault.getMessage());
        }
    }

    /** Pasted text. */
    public static Opened openText(String name, String text) {
        return open(name, text.getBytes(StandardCharsets.UTF_8));
    }

    private static Opened opened(String shown, byte[] bytes) {
        if (begins(bytes, 'P', 'K', 3, 4)) {
            return sheets(shown, WorkbookReading.read(bytes));
        }
        if (begins(bytes, 0xD0, 0xCF, 0x11, 0xE0)) {
            throw new UnreadableSheet("is an old XLS file, or one with a password." + WAY_OUT);
        }
        if (begins(bytes, '%', 'P', 'D', 'F')) {
            throw new UnreadableSheet("is a PDF, from which no table can be read." + WAY_OUT);
        }
        if (begins(bytes, 0x89, 'P', 'N', 'G')
                || begins(bytes, 0xFF, 0xD8, 0xFF)
                || begins(bytes, 'G', 'I', 'F', '8')) {
            throw new UnreadableSheet("is a picture, from which no table can be read.");
        }
        if (begins(bytes, 0x1F, 0x8B) || begins(bytes, '7', 'z', 0xBC) || begins(bytes, 'R', 'a', 'r')) {
            throw new UnreadableSheet("is a packed file. Unpack it and take the sheets in it.");
        }
        return sheets(shown, List.of(TextReading.read(shown, bytes)));
    }

    private static Opened sheets(String shown, List<Grid> sheets) {
        return sheets.stream().allMatch(sheet -> sheet.height() == 0)
                ? new Opened.Refused("\"" + shown + "\" holds no cell with anything in it.")
                : new Opened.Sheets(sheets);
    }

    private static boolean begins(byte[] bytes, int... signs) {
        for (int i = 0; i < signs.length; i++) {
            if (i >= bytes.length || (bytes[i] & 0xFF) != signs[i]) {
                return false;
            }
        }
        return true;
    }

    private static Opened tooLarge(String shown) {
        return new Opened.Refused("\"" + shown + "\" is larger than " + Bounds.FILE_BYTES / 1_000_000
                + " MB, which no recipe is. Save the sheets that hold formulas by themselves.");
    }

    /** The last part of a path, without what a screen cannot show. */
    public static String shown(String name) {
        String last = name.replaceAll(".*[/\\\\]", "").replaceAll("\\p{Cntrl}", "");
        return last.isBlank() ? "file" : last.substring(0, Math.min(120, last.length()));
    }

    /** The name without its ending, for a product that a sheet leaves nameless. */
    public static String stem(String name) {
        String shown = shown(name);
        return shown.toLowerCase(Locale.ROOT).matches(".*\\.(csv|xlsx|txt|tsv|xlsm|tab)")
                ? shown.substring(0, shown.lastIndexOf('.'))
                : shown;
    }
}
