package stillroom.ledger.imports;

import java.io.ByteArrayInputStream;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

/**
 * What a sheet says besides its cells: which are merged, which columns are hidden.
 *
 * @param merged ranges as written, such as "A2:A5"
 * @param hiddenColumns counted from 0
 */
record SheetMarks(List<String> merged, Set<Integer> hiddenColumns) {
    static final SheetMarks NONE = new SheetMarks(List.of(), Set.of());
    private static final int MOST_MERGED = 20_000;

    static SheetMarks of(byte[] part) {
        if (part.length == 0) {
            return NONE;
        }
        XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
        factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
        factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
        try {
            return read(factory.createXMLStreamReader(new ByteArrayInputStream(part)));
        } catch (XMLStreamException broken) {
            throw new UnreadableSheet("holds a sheet that is damaged. Save it once more.");
        }
    }

    private static SheetMarks read(XMLStreamReader xml) throws XMLStreamException {
        List<String> merged = new ArrayList<>();
        Set<Integer> hidden = new HashSet<>();
        while (xml.hasNext()) {
            if (xml.next() != XMLStreamConstants.START_ELEMENT) {
                continue;
            }
            String range = xml.getAttributeValue(null, "ref");
            if (xml.getLocalName().equals("mergeCell") && range != null && merged.size() < MOST_MERGED) {
                merged.add(range);
            }
            if (xml.getLocalName().equals("col") && isTrue(xml.getAttributeValue(null, "hidden"))) {
                addColumns(xml, hidden);
            }
        }
        return new SheetMarks(merged, hidden);
    }

    private static boolean isTrue(@org.jspecify.annotations.Nullable String said) {
        return "1".equals(said) || "true".equals(said);
    }

    private static void addColumns(XMLStreamReader xml, Set<Integer> hidden) {
        int first = number(xml.getAttributeValue(null, "min"));
        int last = Math.min(number(xml.getAttributeValue(null, "max")), Bounds.COLUMNS);
        for (int column = first; column <= last && first > 0; column++) {
            hidden.add(column - 1);
        }
    }

    private static int number(@org.jspecify.annotations.Nullable String said) {
        return said != null && said.matches("\\d{1,6}") ? Integer.parseInt(said) : 0;
    }
}
