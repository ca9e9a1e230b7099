package stillroom.desk.batches.bench;

import java.util.List;
import java.util.Optional;
import stillroom.desk.shell.Choice;

/** The one thing that fills the bench screen. */
public sealed interface Panel {
    /** Name of the field of a tool that is taken, before the name of the tool. */
    String TOOL = "tool:";

    /** What it is, as a heading. */
    String title();

    /**
     * Weighing one material into a vessel.
     *
     * @param cautions for the person who handles it
     * @param target none for corrections and free-hand work
     * @param dose what a titration asks for now [g], as shown; empty for nothing
     * @param standing the last pH and where it should be, for what moves it; else empty
     * @param scan what was scanned last
     * @param live balances whose line is read
     */
    record Weigh(
            String title,
            String materialKey,
            String name,
            String inci,
            List<String> cautions,
            String purpose,
            Optional<Target> target,
            List<LotChoice> lots,
            String lot,
            List<Choice> balances,
            String balance,
            String meanwhile,
            String dose,
            String standing,
            Scan scan,
            List<Live> live)
            implements Panel {
        public Weigh {
            live = List.copyOf(live);
            cautions = List.copyOf(cautions);
            lots = List.copyOf(lots);
            balances = List.copyOf(balances);
        }

        /** The same with a dose, from a lot that is on the list. */
        Weigh dosed(String grams, String from) {
            boolean known = lots.stream().anyMatch(one -> one.code().equals(from));
            return new Weigh(
                    title,
                    materialKey,
                    name,
                    inci,
                    cautions,
                    purpose,
                    target,
                    lots,
                    known ? from : lot,
                    balances,
                    balance,
                    meanwhile,
                    grams,
                    standing,
                    scan,
                    live);
        }

        /** The same after a lot was scanned. */
        Weigh scanned(Scan other) {
            boolean takes = other.kind() == Scan.Kind.RIGHT || other.kind() == Scan.Kind.DOUBTFUL;
            return new Weigh(
                    title,
                    materialKey,
                    name,
                    inci,
                    cautions,
                    purpose,
                    target,
                    lots,
                    takes ? other.code() : lot,
                    balances,
                    balance,
                    meanwhile,
                    dose,
                    standing,
                    other,
                    live);
        }
    }

    /**
     * What a line asks for.
     *
     * @param figure what is to be weighed in all [g], as shown
     * @param poured what is in already, empty for nothing
     * @param open what is still missing
     * @param toReading what it is added up to, empty for an ordinary line
     * @param readNow kind of the reading that should come before more is added, empty for none
     * @param state how far it is, one sentence
     * @param check how far off the figure may be before it is asked for again [g], empty where the tolerance says all
     */
    record Target(
            String lineId,
            String figure,
            String tolerance,
            String poured,
            String open,
            String toReading,
            String readNow,
            String state,
            String check,
            DeviationBar bar) {}

    /**
     * The pH as last read lies outside the product's band.
     *
     * @param ways the advised one first
     * @param lineId the line that may be accepted as it is, empty where no line is added up to the pH
     */
    record Outside(String title, String says, List<BenchPage.Way> ways, String lineId) implements Panel {
        public Outside {
            ways = List.copyOf(ways);
        }
    }

    /**
     * One line, over its target.
     *
     * @param back how much could be lifted off again, empty where it is mixed in already
     * @param ways what may be done, the mildest first
     */
    record Settle(
            String title,
            String name,
            String materialKey,
            Target target,
            String over,
            String lot,
            String balance,
            String back,
            List<MendShown> ways,
            Optional<Kept> kept)
            implements Panel {
        public Settle {
            ways = List.copyOf(ways);
        }

        /** Whether the figure itself is doubted before anything else. */
        public boolean doubted() {
            return ways.stream().anyMatch(way -> way.title().equals(MendShown.DOUBT));
        }
    }

    /**
     * One way out of an over-pour.
     *
     * @param says totals: what there would be in the end
     * @param additions what would be added for it, from now on
     * @param way where it is done, if that is not on this screen
     * @param act what the form does that takes this way at once, empty for none
     * @param button words of that form's button
     */
    record MendShown(
            String title,
            String says,
            List<String> additions,
            List<String> against,
            Optional<BenchPage.Way> way,
            String act,
            String button) {
        static final String DOUBT = "Typed it wrong";

        /** Whether this says that the figure itself may be wrong. */
        public boolean doubts() {
            return title.equals(DOUBT);
        }

        public MendShown {
            additions = List.copyOf(additions);
            against = List.copyOf(against);
        }
    }

    /** Another material than the line's, poured on purpose or by mistake. */
    record Instead(String title, String lineId, String name, List<Group> all, List<Choice> balances, String balance)
            implements Panel {
        public Instead {
            all = List.copyOf(all);
            balances = List.copyOf(balances);
        }
    }

    /**
     * Naming the lots of a weighing afterwards.
     *
     * @param says the weighing
     * @param mass of the weighing [g], as written
     */
    record NameLots(String title, int entry, String says, String mass, List<LotChoice> lots, String lot)
            implements Panel {
        public NameLots {
            lots = List.copyOf(lots);
        }
    }

    /** Giving a batch up, with what that costs. */
    record GiveUp(String title, String says) implements Panel {}

    /** Taking something back out of a vessel. */
    record Back(String title, List<Choice> materials, String material, String balance) implements Panel {}

    /**
     * A step of the procedure, or work outside it.
     *
     * @param stepId empty for work outside the procedure
     */
    record Step(
            String title,
            String stepId,
            String doing,
            String celsius,
            String speed,
            String minutes,
            String seeIt,
            List<String> cautions)
            implements Panel {
        public Step {
            cautions = List.copyOf(cautions);
        }
    }

    /** A vessel of the workshop's list, and how clean it is. */
    record Listed(String name, String says) {}

    /**
     * Making a vessel ready, or giving a phase to one that is in use.
     *
     * @param phaseId the phase that has no vessel yet, empty for none
     * @param listed vessels of the workshop's list
     * @param tools spatulas, stirrers and the like of that list
     * @param inUse vessels that it could go into
     * @param needs how much is to go in, one sentence
     */
    record Ready(
            String title,
            String proposedName,
            List<PhaseTick> phases,
            List<Listed> listed,
            List<Listed> tools,
            String phaseId,
            List<String> inUse,
            String needs)
            implements Panel {
        public Ready {
            inUse = List.copyOf(inUse);
            phases = List.copyOf(phases);
            listed = List.copyOf(listed);
            tools = List.copyOf(tools);
        }
    }

    record PhaseTick(String id, String name, boolean ticked) {}

    /** Putting all of one vessel into another. */
    record Combine(String title, List<Choice> vessels, String from, String into, boolean advised, String why)
            implements Panel {
        public Combine {
            vessels = List.copyOf(vessels);
        }
    }

    /** Taking a reading. */
    record Read(
            String title,
            List<BenchPage.Way> kinds,
            String kind,
            String band,
            List<String> before,
            List<String> electrodes)
            implements Panel {
        public Read {
            kinds = List.copyOf(kinds);
            before = List.copyOf(before);
            electrodes = List.copyOf(electrodes);
        }
    }

    /**
     * Choosing what is added outside the plan.
     *
     * @param standing the last pH and where it should be, for what moves it; else empty
     */
    record Pick(
            String title,
            String standing,
            List<BenchPage.Way> purposes,
            List<BenchPage.Way> likely,
            List<Group> all,
            String purpose)
            implements Panel {
        public Pick {
            purposes = List.copyOf(purposes);
            likely = List.copyOf(likely);
            all = List.copyOf(all);
        }
    }

    record Group(String name, List<Choice> materials) {
        public Group {
            materials = List.copyOf(materials);
        }
    }

    /**
     * Putting the whole vessel on the balance.
     *
     * @param expected what it should weigh by the book, empty where the tare is not known
     * @param returned address at which the water that evaporated is returned, empty for none
     */
    record Gross(String title, String expected, List<String> before, String returned) implements Panel {
        public Gross {
            before = List.copyOf(before);
        }
    }

    /** Taking something out; mass and purpose stand in the form where they are known. */
    record Sample(String title, String mass, String what) implements Panel {}

    /** Letting the batch stand. */
    record Rest(String title, String due) implements Panel {}

    /** Looking again after a rest. */
    record Look(String title, String due, String lookFor, boolean resting) implements Panel {}

    record Timer(String title) implements Panel {}

    record Note(String title) implements Panel {}

    /** Striking an entry. */
    record Strike(String title, int entry, String says) implements Panel {}

    /** Reading a weight again. */
    record Again(String title, int entry, String says, String at, boolean early) implements Panel {}

    /**
     * Nothing of the procedure is open here.
     *
     * @param ways on, the advised one first
     */
    record Done(String title, String says, List<BenchPage.Way> ways) implements Panel {
        public Done {
            ways = List.copyOf(ways);
        }
    }

    /**
     * A balance whose line is read.
     *
     * @param here whether the line is one of the computer where the program runs
     */
    record Live(String balance, boolean here, int baud) {}

    /** One lot to pour from. */
    record LotChoice(String code, String words, String doubt) {}
}
