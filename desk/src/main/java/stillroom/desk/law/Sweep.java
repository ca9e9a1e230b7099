package stillroom.desk.law;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import stillroom.formulary.change.LawChange;
import stillroom.formulary.change.LawComparison;
import stillroom.formulary.evaluation.Subject;
import stillroom.formulary.formula.Brief;
import stillroom.formulary.formula.FormulaVersion;
import stillroom.formulary.formula.Product;
import stillroom.formulary.judgement.Subjects;
import stillroom.formulary.label.LabelInput;
import stillroom.formulary.label.LabelSheet;
import stillroom.ledger.Ledger;

/**
 * Every stored formula judged by the law of two days, on a few threads beside the daily work. Thread-safe; one sweep is
 * begun once.
 */
final class Sweep {
    /** Two threads leave room for the bench on a small machine, and a larger one does not need more. */
    static final int THREADS = 2;

    /** Which formulas are looked at. */
    enum Which {
        NEWEST("the newest version of each product"),
        EVERY("every version of each product");

        private final String words;

        Which(String words) {
            this.words = words;
        }

        String words() {
            return words;
        }
    }

    /** What is asked: the law of the later day held against that of the earlier one. */
    record Wish(LocalDate from, LocalDate to, Which which) {}

    /** A formula for which something changes. */
    record Changed(long productId, String product, int version, boolean kept, Point.Weight weight, List<Point> points) {
        Changed {
            points = List.copyOf(points);
        }

        String path() {
            return "/products/" + productId + "/law?version=" + version;
        }
    }

    /** A formula that could not be judged, and why. */
    record Failed(String product, String why) {}

    private final Ledger ledger;
    private final LawComparison comparison;
    private final Wish wish;
    private final List<Product> products;
    private final SweepBooks books;
    private final AtomicInteger next = new AtomicInteger();
    private final AtomicInteger done = new AtomicInteger();
    private final AtomicInteger formulas = new AtomicInteger();
    private final ConcurrentLinkedQueue<Changed> changed = new ConcurrentLinkedQueue<>();
    private final ConcurrentLinkedQueue<Failed> failed = new ConcurrentLinkedQueue<>();
    private final CountDownLatch running;
    private final long begunNanos = System.nanoTime();
    private volatile long endedNanos;
    private volatile boolean stopped;
    private volatile List<Changed> sorted = List.of();

    private Sweep(Ledger ledger, LawComparison comparison, Wish wish, int threads) {
        this.ledger = ledger;
        this.comparison = comparison;
        this.wish = wish;
        this.products = ledger.products().products();
        this.books = new SweepBooks(ledger.materials());
        this.running = new CountDownLatch(threads);
    }

    static Sweep begin(Ledger ledger, LawComparison comparison, Wish wish) {
        return begin(ledger, comparison, wish, THREADS);
    }

    static Sweep begin(Ledger ledger, LawComparison comparison, Wish wish, int threads) {
        Sweep sweep = new Sweep(ledger, comparison, wish, threads);
        for (int i = 0; i < threads; i++) {
            Thread worker = new Thread(sweep::work, "law-sweep-" + i);
            worker.setDaemon(true);
            worker.setPriority(Thread.MIN_PRIORITY);
            worker.start();
        }
        return sweep;
    }

    private void work() {
        try {
            for (int i = next.getAndIncrement(); i < products.size() && !stopped; i = next.getAndIncrement()) {
                look(products.get(i));
                done.incrementAndGet();
            }
        } finally {
            end();
        }
    }

    private synchronized void end() {
        if (running.getCount() == 1) {
            sorted = changed.stream()
                    .sorted(Comparator.comparing(Changed::weight)
                            .thenComparing(Changed::product)
                            .thenComparing(Changed::productId)
                            .thenComparing(Changed::version, Comparator.reverseOrder()))
                    .toList();
            endedNanos = System.nanoTime();
        }
        running.countDown();
    }

    /** A formula that cannot be judged is told of and stops no other. */
    private void look(Product product) {
        try {
            for (FormulaVersion version : versions(product)) {
                look(product, version);
            }
        } catch (RuntimeException trouble) {
            failed.add(new Failed(product.name(), String.valueOf(trouble.getMessage())));
        }
    }

    private List<FormulaVersion> versions(Product product) {
        return switch (wish.which()) {
            case EVERY -> ledger.products().versions(product.id());
            case NEWEST -> ledger.products().newest(product.id()).map(List::of).orElse(List.of());
        };
    }

    private void look(Product product, FormulaVersion version) {
        LawChange change = change(ledger, comparison, product, version, books, wish);
        formulas.incrementAndGet();
        Point.Weight weight = Point.weight(change);
        if (weight != Point.Weight.NONE) {
            changed.add(new Changed(
                    product.id(), product.name(), version.number(), version.kept(), weight, Point.of(change)));
        }
    }

    static LawChange change(
            Ledger ledger,
            LawComparison comparison,
            Product product,
            FormulaVersion version,
            SweepBooks books,
            Wish wish) {
        Brief brief = product.brief();
        Subject subject = Subjects.of(version.formula(), brief);
        LabelInput label = ledger.labels()
                .of(product.id(), version.number())
                .map(LabelSheet::input)
                .orElse(LabelInput.named(product.name()));
        return comparison.between(subject, books.of(version), label, wish.from(), wish.to());
    }

    void stop() {
        stopped = true;
    }

    /** Waits until it has ended; for tests and measurements. */
    boolean await(long seconds) {
        try {
            return running.await(seconds, TimeUnit.SECONDS);
        } catch (InterruptedException broken) {
            Thread.currentThread().interrupt();
            return false;
        }
    }

    Wish wish() {
        return wish;
    }

    boolean isRunning() {
        return endedNanos == 0;
    }

    /** Ended before every product was looked at. */
    boolean isStopped() {
        return !isRunning() && done.get() < products.size();
    }

    int products() {
        return products.size();
    }

    int done() {
        return done.get();
    }

    int formulas() {
        return formulas.get();
    }

    double seconds() {
        return ((isRunning() ? System.nanoTime() : endedNanos) - begunNanos) / 1e9;
    }

    /** Gravest first; as many as there are so far while it runs. */
    List<Changed> changed() {
        return isRunning() ? new ArrayList<>(changed) : sorted;
    }

    List<Failed> failed() {
        return List.copyOf(failed);
    }
}
