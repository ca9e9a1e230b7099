package stillroom.ledger.imports;

import java.io.ByteArrayInputStream;
import java.util.HashMap;
import java.util.Map;
import java.util.function.Consumer;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

/** In which part of an XLSX file each sheet stands. */
record SheetParts(Map<String, String> parts) {
    private static final String RELATIONS = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
    private static final String STRICT_RELATIONS = "http://purl.oclc.org/ooxml/officeDocument/relationships";

    static SheetParts of(PackedParts packed) {
        Map<String, String> targets = new HashMap<>();
        each(
                packed.part("xl/_rels/workbook.xml.rels"),
                "Relationship",
                xml -> targets.put(
                        text(xml.getAttributeValue(null, "Id")), text(xml.getAttributeValue(null, "Target"))));
        Map<String, String> parts = new HashMap<>();
        each(packed.part("xl/workbook.xml"), "sheet", xml -> {
            String id = text(xml.getAttributeValue(RELATIONS, "id"));
            String strict = text(xml.getAttributeValue(STRICT_RELATIONS, "id"));
            String target = targets.getOrDefault(id.isEmpty() ? strict : id, "");
            parts.put(
                    text(xml.getAttributeValue(null, "name")),
                    target.startsWith("/") ? target.substring(1) : "xl/" + target);
        });
        return new SheetParts(parts);
    }

    /** The name of the part; one that does not exist where the sheet is not listed. */
    String of(String sheet) {
        return parts.getOrDefault(sheet, "");
    }

    private static void each(byte[] part, String element, Consumer<XMLStreamReader> take) {
        if (part.length == 0) {
            return;
        }
        XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
        factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
        factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
        try {
            XMLStreamReader xml = factory.createXMLStreamReader(new ByteArrayInputStream(part));
            while (xml.hasNext()) {
                if (xml.next() == XMLStreamConstants.START_ELEMENT
                        && xml.getLocalName().equals(element)) {
                    take.accept(xml);
                }
            }
        } catch (XMLStreamException broken) {
            throw new UnreadableSheet("is damaged. Save it once more.");
        }
    }

    private static String text(@org.jspecify.annotations.Nullable String said) {
        return said == null ? "" : said;
    }
}
