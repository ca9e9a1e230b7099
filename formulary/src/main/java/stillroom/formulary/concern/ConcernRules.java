package stillroom.formulary.concern;

import java.util.ArrayList;
import java.util.List;
import stillroom.formulary.Problem;

/**
 * What speaks against entering a concern.
 *
 * @param filled units filled so far
 * @param released whether the batch is released and not recalled
 */
public record ConcernRules(Concerns concerns, int filled, boolean released) implements ConcernCases<List<Problem>> {
    private static List<Problem> written(String field, String text, String sentence) {
        return text.isBlank() ? List.of(new Problem(field, sentence)) : List.of();
    }

    @Override
    public List<Problem> stopped(Concern.Stopped concern) {
        return written(
                "why",
                concern.reason(),
                concern.stop() == Concern.Stop.AWAIT
                        ? "Say which result is waited for."
                        : "Say why the batch is stopped.");
    }

    @Override
    public List<Problem> goneOn(Concern.GoneOn concern) {
        List<Problem> problems =
                new ArrayList<>(written("words", concern.words(), "Give the result, or say why it may go on."));
        if (concerns.stops().stream().noneMatch(stop -> stop.number() == concern.entry())) {
            problems.add(new Problem("entry", "Entry " + concern.entry() + " stops nothing any more."));
        }
        return problems;
    }

    @Override
    public List<Problem> explained(Concern.Explained concern) {
        return written("reason", concern.reason(), "Say how the deviation came about and why it is accepted.");
    }

    /** What leaves by the book may stand there all the same, so too few on the shelf asks for a word and no more. */
    @Override
    public List<Problem> moved(Concern.Moved concern) {
        List<Problem> problems = new ArrayList<>();
        if (concern.units() < 1) {
            problems.add(new Problem("units", "At least one unit moves."));
        }
        boolean leaves = concern.move() == Concern.Move.SALE || concern.move() == Concern.Move.GIFT;
        if (concern.move() != Concern.Move.WITHDRAWN) {
            problems.addAll(written("to", concern.to(), "Name who has them: without a name nobody is warned."));
        }
        if (leaves) {
            concerns.stop(Concern.Stop.HOLD)
                    .ifPresent(hold -> problems.add(new Problem(
                            "move",
                            "On hold: " + hold.concern().reason() + ". No unit leaves until the hold is lifted.")));
            if (!released) {
                problems.add(new Problem("move", "Only units of a released batch leave the workshop."));
            }
        }
        int there = Units.of(filled, concerns).onShelf();
        if (concern.move() != Concern.Move.RETURN
                && concern.units() > there
                && concern.note().isBlank()) {
            problems.add(new Problem(
                    "units",
                    "The book has " + there
                            + " on the shelf; say in the note how there came to be more, or count them."));
        }
        return problems;
    }

    @Override
    public List<Problem> unitsCounted(Concern.UnitsCounted concern) {
        return concern.found() < 0 ? List.of(new Problem("found", "A count is 0 or more.")) : List.of();
    }

    @Override
    public List<Problem> complained(Concern.Complained concern) {
        return written("about", concern.about(), "Write what was said.");
    }

    @Override
    public List<Problem> reacted(Concern.Reacted concern) {
        return written("what", concern.what(), "Write what was seen, where on the body, and how long after use.");
    }

    @Override
    public List<Problem> sampleKept(Concern.SampleKept concern) {
        List<Problem> problems = new ArrayList<>(written("where", concern.where(), "Say where the samples stand."));
        if (concern.units() < 1) {
            problems.add(new Problem("samples", "At least one sample is kept."));
        }
        return problems;
    }

    @Override
    public List<Problem> fillChecked(Concern.FillChecked concern) {
        boolean lighter =
                concern.containers().stream().anyMatch(one -> one.net().signum() <= 0);
        return lighter ? List.of(new Problem("gross", "A filled container weighs more than an empty one.")) : List.of();
    }

    @Override
    public List<Problem> attached(Concern.Attached concern) {
        return written("name", concern.name(), "Name the document.");
    }

    @Override
    public List<Problem> covered(Concern.Covered concern) {
        return List.of();
    }
}
