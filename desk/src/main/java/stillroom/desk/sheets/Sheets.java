package stillroom.desk.sheets;

import java.nio.charset.StandardCharsets;
import stillroom.desk.shell.Assets;

/** What all printed sheets share. */
final class Sheets {
    /** The style of sheets in A4. */
    static final String CSS = new String(Assets.read("sheets/sheet.css").orElseThrow(), StandardCharsets.UTF_8);

    private Sheets() {}
}
