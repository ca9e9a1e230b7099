package stillroom.formulary.evaluation;

import java.util.List;

/**
 * One thing that the maker should know, with its reason.
 *
 * @param rule stable id of the rule, such as {@code eu-annex-v-29} or {@code balance.total}
 * @param source where the rule comes from: paragraph and bibliography key, or "common practice, no source"
 * @param lines ids of the lines that it concerns; empty for the whole product
 * @param compared the figures that were held against each other
 * @param says what was found, one sentence
 * @param mend what would mend it, one sentence; empty where nothing can
 */
public record Finding(
        Kind kind, String rule, String source, List<String> lines, List<Figure> compared, String says, String mend) {
    /** How much it weighs. Only the first two count as warnings. */
    public enum Kind {
        BREACH,
        PROBABLE_FAULT,
        LOOK_AT_THIS,
        CANNOT_JUDGE,
        STANDING_DUTY;

        public boolean isWarning() {
            return this == BREACH || this == PROBABLE_FAULT;
        }
    }

    public Finding {
        lines = List.copyOf(lines);
        compared = List.copyOf(compared);
    }
}
