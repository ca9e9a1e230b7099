package stillroom.desk.sheets;

import java.util.List;

/**
 * A label as printed, to the millimetre.
 *
 * @param months period after opening for the open-jar sign, empty for none
 * @param bestBefore whole sentence, empty for none
 * @param contentPoints size of the net content, so that its figures have the height that the market asks for [pt]
 * @param textPoints size of all other text [pt]
 */
public record LabelPrint(
        String name,
        String function,
        String ingredients,
        List<String> sentences,
        String netContent,
        String batchCode,
        String responsiblePerson,
        String months,
        String bestBefore,
        boolean demonstration,
        int widthMillimetres,
        int heightMillimetres,
        double contentPoints,
        double textPoints) {
    public LabelPrint {
        sentences = List.copyOf(sentences);
    }

    LabelPrint at(double points) {
        return new LabelPrint(
                name,
                function,
                ingredients,
                sentences,
                netContent,
                batchCode,
                responsiblePerson,
                months,
                bestBefore,
                demonstration,
                widthMillimetres,
                heightMillimetres,
                contentPoints,
                points);
    }
}
