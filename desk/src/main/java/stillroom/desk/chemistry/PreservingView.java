package stillroom.desk.chemistry;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import stillroom.desk.chemistry.PreservingPage.Against;
import stillroom.desk.chemistry.PreservingPage.GrowthRow;
import stillroom.desk.chemistry.PreservingPage.State;
import stillroom.desk.shell.Format;
import stillroom.desk.shell.Frame;
import stillroom.formulary.evaluation.Outcome;
import stillroom.formulary.evaluation.PreservativeState;
import stillroom.formulary.evaluation.PreservativeState.Inhibition;
import stillroom.formulary.evaluation.Preserving;
import stillroom.formulary.quantity.Interval;

/** Puts the page on preservation together. */
final class PreservingView {
    private PreservingView() {}

    static PreservingPage page(Frame frame, Studied of, Preserving preserving) {
        return new PreservingPage(
                frame,
                of,
                preserving.ph().map(ph -> Format.range(ph, 1)).orElse(""),
                preserving.ph().isPresent(),
                preserving.states().stream().map(PreservingView::state).toList(),
                preserving.states().stream()
                        .flatMap(one -> against(one).stream())
                        .toList(),
                PreservingCurve.of(preserving),
                preserving
                        .waterActivity()
                        .match(
                                figure -> Format.range(figure.low(), figure.high(), 2),
                                because -> "not known: " + because),
                preserving.waterActivity().match(figure -> figure.method(), because -> ""),
                preserving.growth().stream().map(PreservingView::growth).toList(),
                String.join(", ", preserving.boosters()),
                Preserving.CHALLENGE);
    }

    private static State state(PreservativeState state) {
        return new State(
                state.name(),
                small(state.totalRangePercent()) + " %",
                Format.range(state.undissociatedPercent(), 1) + " %",
                lost(state.inOilPercent()),
                lost(state.inMicellesPercent()),
                free(state),
                state.solubilityPercent()
                        .map(most ->
                                Format.figure(most, 2) + " %" + (state.mayCrystallise() ? ": it may crystallise" : ""))
                        .orElse("not recorded"),
                state.note());
    }

    private static String lost(Outcome<Interval> share) {
        return share.match(known -> Format.range(known, 0) + " %", because -> "not known");
    }

    static String free(PreservativeState state) {
        return state.freeIsAtMost()
                ? "at most " + small(Interval.point(state.freePercent().high())) + " %"
                : small(state.freePercent()) + " %";
    }

    /** Three decimals, as inhibitory concentrations go down to thousandths of a percent. */
    static String small(Interval percent) {
        return Format.range(percent, 3);
    }

    private static List<Against> against(PreservativeState state) {
        List<Against> rows = new ArrayList<>();
        for (Inhibition one : state.against()) {
            rows.add(new Against(
                    state.name(),
                    one.group().words(),
                    small(one.publishedPercent()) + " %",
                    free(state),
                    stands(state, one),
                    one.source()));
        }
        return rows;
    }

    private static String stands(PreservativeState state, Inhibition one) {
        double short_ = one.publishedPercent().low()
                - (state.freeIsAtMost()
                        ? state.freePercent().high()
                        : state.freePercent().low());
        return switch (one.standing()) {
            case BELOW_ALL ->
                "gap: short of the lowest published figure by " + (state.freeIsAtMost() ? "at least " : "")
                        + Format.figure(short_, 3) + " %";
            case AMONG -> "among the published figures: some strains were inhibited there, others not";
            case ABOVE_ALL -> "no gap by these figures; the product itself may say otherwise";
            case NOT_KNOWN -> "not known: the upper end reaches published figures, what is lost is not known";
        };
    }

    private static GrowthRow growth(Preserving.Growth group) {
        String stands = switch (group.standing()) {
            case HURDLE -> "a hurdle: drier than any tabled member needs";
            case SOME_GROW -> "a hurdle for some: " + group.organism() + " has been seen to grow there";
            case ALL_GROW -> "no hurdle";
        };
        return new GrowthRow(
                group.group().words(), Format.range(group.least(), 2), group.organism(), stands, group.source());
    }

    static String plain(double value) {
        return String.format(Locale.ROOT, "%.5g", value);
    }
}
