package stillroom.desk.assessor;

import java.util.List;
import stillroom.desk.batches.ReadingRows.ReadingRow;
import stillroom.desk.safety.SafetySheet;

/**
 * All that stands in the assessor's file, in words.
 *
 * @param missing what it lacks, one sentence each
 * @param facts of the brief, name and words
 * @param figures expected of the formula
 * @param notMade codes of batches that were planned and nothing more
 * @param ingredients the ingredient list of the label
 */
public record AssessorFile(
        String workshop,
        boolean demonstration,
        String about,
        String printed,
        String law,
        List<String> missing,
        List<Fact> facts,
        List<Share> composition,
        List<Raw> materials,
        List<Fact> figures,
        List<Preservative> preservatives,
        SafetySheet safety,
        List<Found> findings,
        List<BatchOf> batches,
        String notMade,
        List<Paper> papers,
        String ingredients,
        List<String> warnings) {
    /** A name and what there is to say. */
    public record Fact(String name, String words) {}

    /** One constituent of the product; percentages are of the product in the pot. */
    public record Share(String inci, String cas, String functions, String percent, String range, String role) {}

    /** One trade material as the formula asks for it. */
    public record Raw(String name, String inci, String supplier, String percent, String papers) {}

    /** One preservative at the product's pH. */
    public record Preservative(String name, String total, String undissociated, String free, String note) {}

    /** One finding with its ground. */
    public record Found(String kind, String says, String rule, String source) {}

    /** One batch of this version, with what was read of it. */
    public record BatchOf(String code, String opened, String stage, String made, List<ReadingRow> readings) {}

    /** A document on the product. */
    public record Paper(String title, String kind, String dated, String reviewBy, String note) {}
}
