package stillroom.ledger.imports;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stillroom.formulary.imports.Cell;
import stillroom.formulary.imports.Grid;

/** Files that are damaged, are something else, or mean harm: refused in a sentence, or read as the text that they are. */
class BadFilesTest {
    private static final String RELATIONS = """
            <?xml version="1.0"?><Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships">%s</Relationships>""";

    @TempDir
    private Path folder;

    private static byte[] zip(Map<String, byte[]> parts) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
            for (Map.Entry<String, byte[]> part : parts.entrySet()) {
                zip.putNextEntry(new ZipEntry(part.getKey()));
                zip.write(part.getValue());
                zip.closeEntry();
            }
        }
        return bytes.toByteArray();
    }

    /** The parts of a workbook with one sheet. */
    private static Map<String, byte[]> workbook(String rows) {
        Map<String, String> texts = new LinkedHashMap<>();
        texts.put("[Content_Types].xml", """
                <?xml version="1.0"?><Types xmlns="http://schemas.openxmlformats.org/package/2006/content-types"><Default Extension="xml" ContentType="application/xml"/><Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/><Override PartName="/xl/workbook.xml" ContentType="application/vnd.openxmlformats-officedocument.spreadsheetml.sheet.main+xml"/><Override PartName="/xl/worksheets/sheet1.xml" ContentType="application/vnd.openxmlformats-officedocument.spreadsheetml.worksheet+xml"/></Types>""");
        texts.put(
                "_rels/.rels",
                RELATIONS.formatted(
                        "<Relationship Id=\"r1\" Type=\"http://schemas.openxmlformats.org/officeDocument/2006/relationships/officeDocument\" Target=\"xl/workbook.xml\"/>"));
        texts.put(
                "xl/_rels/workbook.xml.rels",
                RELATIONS.formatted(
                        "<Relationship Id=\"r1\" Type=\"http://schemas.openxmlformats.org/officeDocument/2006/relationships/worksheet\" Target=\"worksheets/sheet1.xml\"/>"));
        texts.put("xl/workbook.xml", """
                <?xml version="1.0"?><workbook xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main" xmlns:r="http://schemas.openxmlformats.org/officeDocument/2006/relationships"><sheets><sheet name="One" sheetId="1" r:id="r1"/></sheets></workbook>""");
        texts.put("xl/worksheets/sheet1.xml", """
                <?xml version="1.0"?><worksheet xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main"><sheetData>%s</sheetData></worksheet>""".formatted(rows));
        Map<String, byte[]> parts = new LinkedHashMap<>();
        texts.forEach((name, text) -> parts.put(name, text.getBytes(StandardCharsets.UTF_8)));
        return parts;
    }

    private static String refusal(Opened opened) {
        return opened.match(sheets -> "opened: " + sheets, Opened.Refused::sentence);
    }

    private static Grid first(Opened opened) {
        return opened.match(sheets -> sheets.sheets().get(0), refused -> {
            throw new AssertionError(refused.sentence());
        });
    }

    @Test
    void aSheetThatSwellsIsRefusedBeforeItIsRead() throws IOException {
        Map<String, byte[]> parts = workbook("");
        parts.put("xl/worksheets/sheet2.xml", new byte[80_000_000]);
        byte[] bomb = zip(parts);
        assertThat(bomb.length).isLessThan(200_000);
        assertThat(refusal(SpreadsheetFile.open("bomb.xlsx", bomb)))
                .startsWith("\"bomb.xlsx\" unpacks to more than 60 MB");
    }

    @Test
    void aSheetOfManyPartsIsRefused() throws IOException {
        Map<String, byte[]> parts = workbook("");
        for (int i = 0; i < 3_000; i++) {
            parts.put("xl/extra/" + i, new byte[0]);
        }
        assertThat(refusal(SpreadsheetFile.open("many.xlsx", zip(parts)))).contains("more than 2000 parts");
    }

    @Test
    void definitionsInTheXmlAreRefused() throws IOException {
        Map<String, byte[]> parts = workbook("");
        parts.put(
                "xl/worksheets/sheet1.xml",
                "<?xml version=\"1.0\"?><!DOCTYPE x [<!ENTITY a SYSTEM \"file:///etc/hostname\">]><worksheet>&a;</worksheet>"
                        .getBytes(StandardCharsets.UTF_8));
        assertThat(refusal(SpreadsheetFile.open("xml.xlsx", zip(parts)))).contains("defines XML of its own");
    }

    @Test
    void aPartThatNamesAPathIsNowhereWritten() throws IOException {
        Map<String, byte[]> parts = workbook("<row r=\"1\"><c r=\"A1\" t=\"inlineStr\"><is><t>Aqua</t></is></c></row>");
        parts.put("../../escaped.txt", "out".getBytes(StandardCharsets.UTF_8));
        Grid grid = first(SpreadsheetFile.open("../../paths.xlsx", zip(parts)));
        assertThat(grid.cell(0, 0).text()).isEqualTo("Aqua");
        assertThat(Path.of("../../escaped.txt")).doesNotExist();
    }

    @Test
    void aComputedCellGivesItsSavedValueAndSaysSo() throws IOException {
        Grid grid = first(
                SpreadsheetFile.open(
                        "computed.xlsx",
                        zip(
                                workbook(
                                        "<row r=\"1\"><c r=\"A1\"><f>SUM(B1:B9)</f><v>2.5</v></c><c r=\"B1\"><f>1/0</f></c><c r=\"C1\" t=\"e\"><f>1/0</f><v>#DIV/0!</v></c></row>"))));
        assertThat(grid.cell(0, 0).number())
                .hasValueSatisfying(number -> assertThat(number).isEqualByComparingTo("2.5"));
        assertThat(grid.cell(0, 0).is(Cell.Trait.COMPUTED)).isTrue();
        assertThat(grid.cell(0, 1).is(Cell.Trait.FAILED)).isTrue();
        assertThat(grid.cell(0, 2).is(Cell.Trait.FAILED)).isTrue();
    }

    @Test
    void aTruncatedWorkbookIsRefusedAtAnyLength() throws IOException {
        byte[] whole = zip(workbook("<row r=\"1\"><c r=\"A1\"><v>1</v></c></row>".repeat(50)));
        for (int length = 4; length < whole.length - 1; length += 37) {
            byte[] cut = java.util.Arrays.copyOf(whole, length);
            assertThat(refusal(SpreadsheetFile.open("cut.xlsx", cut)))
                    .as("cut at %d", length)
                    .startsWith("\"cut.xlsx\" ");
        }
    }

    @Test
    void aHundredMegabytesAreRefusedUnread() throws IOException {
        Path large = folder.resolve("large.csv");
        try (RandomAccessFile file = new RandomAccessFile(large.toFile(), "rw")) {
            file.setLength(100_000_000);
        }
        assertThat(refusal(SpreadsheetFile.open(large))).contains("larger than 10 MB");
        try (java.io.InputStream stream = Files.newInputStream(large)) {
            assertThat(refusal(SpreadsheetFile.open("-", stream))).contains("larger than 10 MB");
        }
    }

    @Test
    void whatIsSomethingElseIsNamed() {
        Map<String, String> beginnings = Map.of(
                "old.xls", "\u00d0\u00cf\u0011\u00e0",
                "a.pdf", "%PDF-1.7",
                "a.png", "\u0089PNG",
                "page.xls", "<html><table><tr><td>Aqua</td></tr></table></html>",
                "a.gz", "\u001f\u008b");
        Map<String, String> sentences = Map.of(
                "old.xls",
                "old XLS",
                "a.pdf",
                "PDF",
                "a.png",
                "picture",
                "page.xls",
                "a page or a document",
                "a.gz",
                "packed");
        beginnings.forEach((name, text) -> assertThat(
                        refusal(SpreadsheetFile.open(name, text.getBytes(StandardCharsets.ISO_8859_1))))
                .contains(sentences.get(name)));
    }

    @Test
    void aPackedFileOfAnotherKindIsNamed() throws IOException {
        assertThat(refusal(SpreadsheetFile.open("a.xlsx", zip(Map.of("content.xml", new byte[3])))))
                .contains("OpenDocument");
        assertThat(refusal(SpreadsheetFile.open("a.xlsx", zip(Map.of("word/document.xml", new byte[3])))))
                .contains("text document");
        assertThat(refusal(SpreadsheetFile.open("a.xlsx", zip(Map.of("holiday.txt", new byte[3])))))
                .contains("no XLSX file");
    }

    @Test
    void randomBytesAreRefused() {
        for (int seed = 1; seed <= 30; seed++) {
            byte[] noise = new byte[4_000];
            new java.util.Random(seed).nextBytes(noise);
            noise[0] = 1;
            assertThat(SpreadsheetFile.open("noise", noise)).as("seed %d", seed).isInstanceOf(Opened.Refused.class);
        }
    }

    @Test
    void encodingsAreTold() {
        String text = "Öl;2,5\nWasser;97,5\n";
        for (byte[] bytes : List.of(
                text.getBytes(StandardCharsets.UTF_8),
                ("\uFEFF" + text).getBytes(StandardCharsets.UTF_8),
                ("\uFEFF" + text).getBytes(StandardCharsets.UTF_16LE),
                ("\uFEFF" + text).getBytes(StandardCharsets.UTF_16BE),
                text.getBytes(StandardCharsets.UTF_16LE),
                text.getBytes(java.nio.charset.Charset.forName("windows-1252")))) {
            assertThat(first(SpreadsheetFile.open("a.csv", bytes)).cell(0, 0).text())
                    .isEqualTo("Öl");
        }
    }

    @Test
    void textThatIsNotWhatItsMarkSaysIsRemarkedOn() {
        byte[] wrong =
                new byte[] {(byte) 0xEF, (byte) 0xBB, (byte) 0xBF, 'A', ';', '1', '\n', (byte) 0xE4, 'B', ';', '2'};
        assertThat(first(SpreadsheetFile.open("a.csv", wrong)).remarks()).isNotEmpty();
    }

    @Test
    void separatorsAreTold() {
        for (String separator : List.of(",", ";", "\t", "|")) {
            Grid grid = first(SpreadsheetFile.openText(
                    "a", "Name" + separator + "Amount\nAqua" + separator + "70\nGlycerin" + separator + "30\n"));
            assertThat(grid.width()).as(separator).isEqualTo(2);
            assertThat(grid.cell(1, 0).text()).isEqualTo("Aqua");
        }
    }

    @Test
    void anOpenQuotationMarkSwallowsNothingUnseen() {
        Grid grid = first(SpreadsheetFile.openText("a", "Name,Amount\n\"Aqua,70\nGlycerin,30\n"));
        assertThat(grid.height()).isEqualTo(3);
        assertThat(grid.remarks()).isNotEmpty();
    }
}
