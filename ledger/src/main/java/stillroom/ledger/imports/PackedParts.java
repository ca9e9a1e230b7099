package stillroom.ledger.imports;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;

/**
 * Goes through a packed file before anything reads it: counts what comes out, not what it says of itself, and keeps the
 * parts that describe its sheets. Nothing is written to disk, so that a path in the name of a part leads nowhere.
 */
final class PackedParts {
    private final Map<String, byte[]> sheets = new HashMap<>();
    private final Set<String> names = new HashSet<>();

    private PackedParts() {}

    static PackedParts of(byte[] bytes) {
        PackedParts parts = new PackedParts();
        try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(bytes))) {
            parts.read(zip);
        } catch (IOException | IllegalArgumentException broken) {
            throw new UnreadableSheet("is damaged or cut off. Save it once more.");
        }
        return parts;
    }

    private void read(ZipInputStream zip) throws IOException {
        long left = Bounds.UNPACKED_BYTES;
        for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
            if (names.size() >= Bounds.ENTRIES) {
                throw new UnreadableSheet("holds more than " + Bounds.ENTRIES + " parts, which no sheet does.");
            }
            byte[] part = zip.readNBytes((int) left + 1);
            left -= part.length;
            if (left < 0) {
                throw new UnreadableSheet("unpacks to more than " + Bounds.UNPACKED_BYTES / 1_000_000
                        + " MB, which no recipe does. Save the sheets that hold formulas by themselves.");
            }
            keep(entry.getName(), part);
        }
    }

    private void keep(String name, byte[] part) {
        names.add(name);
        if (name.endsWith(".xml") || name.endsWith(".rels")) {
            refuseDefinitions(part);
        }
        if (name.startsWith("xl/worksheets/") && name.endsWith(".xml")) {
            sheets.put(name, part);
        }
        if (name.equals("xl/workbook.xml") || name.equals("xl/_rels/workbook.xml.rels")) {
            sheets.put(name, part);
        }
    }

    /** Sheets define no entities; a file that does wants to fetch or to swell. */
    private static void refuseDefinitions(byte[] part) {
        String beginning =
                new String(part, 0, Math.min(4_096, part.length), StandardCharsets.ISO_8859_1).replace("\u0000", "");
        if (beginning.contains("<!DOCTYPE") || beginning.contains("<!ENTITY")) {
            throw new UnreadableSheet("defines XML of its own, which no sheet does.");
        }
    }

    boolean has(String name) {
        return names.contains(name);
    }

    /** The bytes of a sheet's part, or of the workbook's; empty where there is none. */
    byte[] part(String name) {
        return sheets.getOrDefault(name, new byte[0]);
    }
}
