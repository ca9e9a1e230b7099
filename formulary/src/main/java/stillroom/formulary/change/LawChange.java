package stillroom.formulary.change;

import java.time.LocalDate;
import java.util.List;
import stillroom.formulary.evaluation.Finding;

/**
 * What changes for a product between two days of law, its formula and cards being the same.
 *
 * @param appeared findings of the later day alone, those of the label included
 * @param gone findings of the earlier day alone
 * @param reweighed findings of both days, in another weight
 * @param label what its label gains and loses
 * @param rows rule rows naming its substances that begin, end or run out of stock time in between, by day
 */
public record LawChange(
        LocalDate from,
        LocalDate to,
        List<Finding> appeared,
        List<Finding> gone,
        List<Reweighed> reweighed,
        LabelChange label,
        List<RowTurn> rows) {
    public LawChange {
        appeared = List.copyOf(appeared);
        gone = List.copyOf(gone);
        reweighed = List.copyOf(reweighed);
        rows = List.copyOf(rows);
    }

    /** Whether nothing changes for the product, not even what older stock may do. */
    public boolean isEmpty() {
        return appeared.isEmpty() && gone.isEmpty() && reweighed.isEmpty() && label.isEmpty() && rows.isEmpty();
    }

    /** The same finding on both days. */
    public record Reweighed(Finding before, Finding after) {
        /** Whether it weighs more on the later day. */
        public boolean isWorse() {
            return after.kind().compareTo(before.kind()) < 0;
        }
    }

    /** What a label gains and loses; warnings as they would be printed, by key where there is no wording. */
    public record LabelChange(
            List<String> namesAdded, List<String> namesGone, List<String> warningsAdded, List<String> warningsGone) {
        public LabelChange {
            namesAdded = List.copyOf(namesAdded);
            namesGone = List.copyOf(namesGone);
            warningsAdded = List.copyOf(warningsAdded);
            warningsGone = List.copyOf(warningsGone);
        }

        public boolean isEmpty() {
            return namesAdded.isEmpty() && namesGone.isEmpty() && warningsAdded.isEmpty() && warningsGone.isEmpty();
        }
    }

    /**
     * A rule row that turns on a day.
     *
     * @param rule id of the row
     * @param name what it is about
     * @param day the first day of the new state
     * @param amendedBy the act, may be empty
     * @param source paragraph, source and reading
     */
    public record RowTurn(
            String rule,
            String name,
            Turn turn,
            LocalDate day,
            String amendedBy,
            String source,
            List<String> substances) {
        public RowTurn {
            substances = List.copyOf(substances);
        }
    }

    /** What happens to a row on its day. */
    public enum Turn {
        /** New products must satisfy it. */
        BEGINS("begins for products newly placed on the market"),
        /** It counts no longer. */
        ENDS("ends"),
        /** Older stock that does not satisfy it may no longer be sold. */
        STOCK_ENDS("older stock may no longer be sold");

        private final String words;

        Turn(String words) {
            this.words = words;
        }

        /** What the maker reads. */
        public String words() {
            return words;
        }
    }
}
