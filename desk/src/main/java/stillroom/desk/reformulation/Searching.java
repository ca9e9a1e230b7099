package stillroom.desk.reformulation;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import stillroom.formulary.reformulation.Answer;
import stillroom.formulary.reformulation.Recast;
import stillroom.formulary.reformulation.Reformulation;
import stillroom.formulary.reformulation.Result;
import stillroom.formulary.reformulation.Shelf;
import stillroom.formulary.reformulation.TradeOff;
import stillroom.formulary.reformulation.Wish;
import stillroom.science.blend.Patience;

/** One search on a thread of its own: pages look at what it has so far, and may stop it. */
final class Searching {
    private static final long MOST_NANOSECONDS = 30_000_000_000L;
    private static final int CURVE_POINTS = 6;

    private final CountDownLatch over = new CountDownLatch(1);
    private final List<Answer> found = new ArrayList<>();
    private final long begun = System.nanoTime();
    private volatile boolean stop;
    private volatile long nodes;
    private volatile @Nullable Result result;
    private volatile List<TradeOff> curve = List.of();
    private volatile String refused = "";

    /** What a search does: told when to stop, it tells what it finds. */
    @FunctionalInterface
    interface Work {
        Result run(Patience patience, Consumer<Answer> found, Consumer<List<TradeOff>> curve);
    }

    static Searching begin(Recast recast, Shelf shelf, Wish wish, Optional<Asked.CurveOf> curve) {
        return begin((patience, found, drawn) -> {
            Reformulation work = new Reformulation(recast, shelf, patience);
            Result solved = work.solve(wish, found);
            curve.ifPresent(of -> work.curve(wish, of.first(), of.second(), CURVE_POINTS, drawn));
            return solved;
        });
    }

    static Searching begin(Work work) {
        Searching searching = new Searching();
        Thread thread = new Thread(() -> searching.run(work), "reformulation");
        thread.setDaemon(true);
        thread.start();
        return searching;
    }

    private void run(Work work) {
        try {
            Patience patience = progress -> {
                nodes++;
                return stop || System.nanoTime() - begun > MOST_NANOSECONDS;
            };
            result = work.run(patience, this::add, points -> curve = points);
        } catch (IllegalArgumentException why) {
            refused = String.valueOf(why.getMessage());
        } finally {
            over.countDown();
        }
    }

    private synchronized void add(Answer answer) {
        found.add(answer);
    }

    /** Waits a moment, so that a short search is over when its page is written. */
    void await(long milliseconds) {
        try {
            over.await(milliseconds, TimeUnit.MILLISECONDS);
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
        }
    }

    /** One that is over cannot be stopped any more. */
    void stop() {
        stop = !isOver();
    }

    boolean isOver() {
        return over.getCount() == 0;
    }

    synchronized List<Answer> found() {
        return List.copyOf(found);
    }

    Optional<Result> result() {
        return Optional.ofNullable(result);
    }

    List<TradeOff> curve() {
        return curve;
    }

    /** Why it cannot be answered; empty where it can. */
    String refused() {
        return refused;
    }

    /** Stopped by the maker or by the clock, whatever came of it. */
    boolean isStopped() {
        return stop || result().map(Result::stopped).orElse(false);
    }

    long nodes() {
        return nodes;
    }
}
