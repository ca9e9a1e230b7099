package stillroom.formulary.concern;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stillroom.formulary.quantity.Grams;

/** Something about a batch as a whole, entered into its log like every other act: never erased, struck where untrue. */
public sealed interface Concern {
    /** The answer of the one case that this concern is. */
    <R> R match(ConcernCases<R> cases);

    /** Why a batch does not go on. */
    enum Stop {
        /** Nothing more is done to the bulk, and no unit leaves. */
        HOLD,
        /** A result of a laboratory or of a later look is waited for; the release waits with it. */
        AWAIT,
        /** The work rests for now; the next act at the bench ends it. */
        PAUSE
    }

    /**
     * The batch is stopped.
     *
     * @param reason why, or which result is waited for
     * @param by when it should be settled
     */
    record Stopped(Stop stop, String reason, Optional<LocalDate> by) implements Concern {
        @Override
        public <R> R match(ConcernCases<R> cases) {
            return cases.stopped(this);
        }
    }

    /**
     * A stop is over.
     *
     * @param entry number of the entry that stopped the batch
     * @param words the result, or why the batch may go on
     */
    record GoneOn(int entry, String words) implements Concern {
        @Override
        public <R> R match(ConcernCases<R> cases) {
            return cases.goneOn(this);
        }
    }

    /**
     * A deviation that no weighing explains has its reason.
     *
     * @param deviation its stable name, such as {@code hold Kettle}
     */
    record Explained(String deviation, String reason) implements Concern {
        @Override
        public <R> R match(ConcernCases<R> cases) {
            return cases.explained(this);
        }
    }

    /** How units leave the shelf or come back. */
    enum Move {
        SALE,
        GIFT,
        /** Came back from somebody. */
        RETURN,
        /** Broken, used up as a tester, destroyed: gone, and known to be gone. */
        WITHDRAWN
    }

    /**
     * Units went somewhere.
     *
     * @param to whom, or from whom they came back; may be empty for what was withdrawn
     */
    record Moved(Move move, int units, LocalDate on, String to, String note) implements Concern {
        @Override
        public <R> R match(ConcernCases<R> cases) {
            return cases.moved(this);
        }
    }

    /** The units on the shelf were counted by hand. */
    record UnitsCounted(int found, String note) implements Concern {
        @Override
        public <R> R match(ConcernCases<R> cases) {
            return cases.unitsCounted(this);
        }
    }

    /** Somebody was not content with a unit; what touches health is {@link Reacted}. */
    record Complained(LocalDate on, String from, String about) implements Concern {
        @Override
        public <R> R match(ConcernCases<R> cases) {
            return cases.complained(this);
        }
    }

    /**
     * A skin reaction or another undesirable effect was reported.
     *
     * @param from who reported it, no more than is needed to ask back
     * @param serious whether it took a doctor, a hospital, or did lasting harm: the law may ask for a report at once
     */
    record Reacted(LocalDate on, String from, String what, boolean serious) implements Concern {
        @Override
        public <R> R match(ConcernCases<R> cases) {
            return cases.reacted(this);
        }
    }

    /** Retained samples were put away. */
    record SampleKept(int units, Optional<Grams> mass, String where, LocalDate until, String note) implements Concern {
        @Override
        public <R> R match(ConcernCases<R> cases) {
            return cases.sampleKept(this);
        }
    }

    /** One container of a fill check [g]. */
    record Container(Grams gross, Grams tare) {
        public Grams net() {
            return gross.minus(tare);
        }
    }

    /**
     * Filled containers were weighed one by one.
     *
     * @param nominal declared content, turned into g where it is declared in ml [g]
     * @param tareDeviation standard deviation of the empty containers, 0 where each was tared [g]
     */
    record FillChecked(String pack, Grams nominal, List<Container> containers, Grams tareDeviation) implements Concern {
        public FillChecked {
            containers = List.copyOf(containers);
        }

        public List<Grams> net() {
            return containers.stream().map(Container::net).toList();
        }

        @Override
        public <R> R match(ConcernCases<R> cases) {
            return cases.fillChecked(this);
        }
    }

    /**
     * A document belongs to the batch.
     *
     * @param digest SHA-256 of its bytes, 64 hexadecimal digits
     * @param size of the document [bytes]
     */
    record Attached(String name, String digest, long size) implements Concern {
        @Override
        public <R> R match(ConcernCases<R> cases) {
            return cases.attached(this);
        }
    }

    /**
     * What the log refers to and does not hold itself, as it was at this moment; entered by the program before a decision.
     *
     * @param digests SHA-256 of each thing's text, by its name, such as {@code lot L-17}
     */
    record Covered(Map<String, String> digests) implements Concern {
        public Covered {
            digests = Map.copyOf(digests);
        }

        @Override
        public <R> R match(ConcernCases<R> cases) {
            return cases.covered(this);
        }
    }
}
