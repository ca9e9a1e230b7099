package stillroom.formulary.rule;

import java.util.List;

/**
 * One row of a rule table.
 *
 * @param id stable, such as {@code eu-annex-v-29} or {@code eu-annex-v-1.b} for a second row of one entry
 * @param table the table as the law names it, such as {@code annex-v}
 * @param entry the entry within it
 * @param name what the row is about, in words
 * @param substances keys of the substances that it names
 * @param demand warnings that the label must carry when the row applies
 * @param note what the row says beyond its columns, may be empty
 */
public record Rule(
        String id,
        String market,
        String table,
        String entry,
        Kind kind,
        String name,
        List<String> substances,
        Scope scope,
        Limit limit,
        LabelDemand demand,
        Span span,
        Citation citation,
        String note) {
    /** What a row does. */
    public enum Kind {
        /** May not be in the products covered. */
        PROHIBITED,
        /** May be in, up to a figure or on a condition. */
        LIMIT,
        /** Is on a list of what is allowed, in the products covered only. */
        LISTED,
        /** To be named on the label above the table's threshold. */
        ALLERGEN,
        /** Advice of a scientific body, no law. */
        GUIDANCE,
        /** Asks something that a composition cannot show, such as a purity: to be looked at whenever it is in. */
        NOTICE
    }

    public Rule {
        substances = List.copyOf(substances);
    }

    public boolean isRead() {
        return citation.readOn().isPresent();
    }
}
