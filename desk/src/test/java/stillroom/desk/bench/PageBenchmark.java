package stillroom.desk.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import stillroom.desk.OpenDesk;
import stillroom.formulary.batch.Batch;
import stillroom.formulary.batch.LogEntry;
import stillroom.ledger.Ledger;
import stillroom.ledger.batch.BatchQuery;
import stillroom.ledger.batch.BatchRow;

/**
 * Every kind of page of a workshop with 2,000 batches, asked for over HTTP on the loopback: median and worst of warm
 * requests. Run by {@code desk/bench.sh}.
 */
public final class PageBenchmark {
    private static final int BATCHES = 2_000;
    private static final int WARM = 15;
    private static final int COUNTED = 30;

    private PageBenchmark() {}

    public static void main(String[] arguments) throws IOException {
        Path folder = Files.createTempDirectory("stillroom-bench");
        try (OpenDesk desk = OpenDesk.in(folder)) {
            desk.post("/demonstration", Map.of());
            fill(desk.ledger());
            System.out.printf("%-60s %10s %10s%n", "page, " + BATCHES + " batches", "median ms", "worst ms");
            double worst = 0;
            for (String page : pages(desk.ledger())) {
                worst = Math.max(worst, measure(desk, page));
            }
            System.out.printf("slowest median: %.1f ms%n", worst);
        }
    }

    /** Copies the logs of the demonstration's batches until there are enough. */
    private static void fill(Ledger ledger) {
        List<BatchRow> models = ledger.batches().page(BatchQuery.ALL, 0, 100).rows();
        for (int made = models.size(); made < BATCHES; made++) {
            Batch model = models.get(made % models.size()).batch();
            String code = "bench-" + made;
            ledger.together(() -> copy(ledger, model, code));
        }
    }

    private static Batch copy(Ledger ledger, Batch model, String code) {
        Batch batch = ledger.batches()
                .open(model.productId(), model.version(), code, model.openedOn())
                .orElseThrow();
        for (LogEntry entry : ledger.batches().log(model.id())) {
            ledger.batches().append(batch.id(), code + "-" + entry.number(), entry.at(), entry.by(), entry.event());
        }
        return batch;
    }

    private static Set<String> pages(Ledger ledger) {
        Set<String> pages = new LinkedHashSet<>(List.of(
                "/",
                "/products",
                "/products/new",
                "/materials",
                "/materials/glycerin-99",
                "/materials/new",
                "/lots",
                "/workshop",
                "/batches"));
        ledger.products().products().forEach(product -> {
            pages.add("/products/" + product.id());
            ledger.products().versions(product.id()).forEach(version -> {
                String path = "/products/" + product.id() + "/versions/" + version.number();
                pages.add(path);
                pages.add(path + "/plan");
                pages.add(path + "/label");
            });
        });
        for (BatchRow row : ledger.batches().page(BatchQuery.ALL, 0, 6).rows()) {
            String path = "/batches/" + row.batch().id();
            pages.addAll(List.of(path, path + "/bench", path + "/as-made", path + "/fill", path + "/label"));
        }
        return pages;
    }

    private static double measure(OpenDesk desk, String page) {
        double[] millis = new double[COUNTED];
        for (int i = -WARM; i < COUNTED; i++) {
            long begun = System.nanoTime();
            int status = desk.get(page).status();
            if (status != 200) {
                System.out.printf("%-60s answered %d%n", page, status);
                return 0;
            }
            if (i >= 0) {
                millis[i] = (System.nanoTime() - begun) / 1e6;
            }
        }
        Arrays.sort(millis);
        System.out.printf("%-60s %10.1f %10.1f%n", page, millis[COUNTED / 2], millis[COUNTED - 1]);
        return millis[COUNTED / 2];
    }
}
