package stillroom.desk.reformulation;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stillroom.desk.OpenDesk;
import stillroom.formulary.formula.FormulaVersion;
import stillroom.formulary.formula.ProductType;
import stillroom.formulary.material.Family;
import stillroom.formulary.material.Lot;
import stillroom.formulary.material.Material;
import stillroom.formulary.quantity.Grams;
import stillroom.formulary.quantity.Money;
import stillroom.formulary.quantity.Price;

/**
 * How long "I have no more of this" takes with 120 materials on the shelf, asked over HTTP on the loopback: the first time after
 * the start, then the median and the longest of others, none of which was asked before. Run by {@code desk/bench.sh anew}.
 */
public final class AnewBenchmark {
    private static final int SHELF = 120;
    private static final int ROUNDS = 6;

    private AnewBenchmark() {}

    public static void main(String[] arguments) throws IOException {
        Path folder = Files.createTempDirectory("stillroom-bench");
        try (OpenDesk desk = OpenDesk.in(folder)) {
            desk.post("/demonstration", Map.of());
            System.out.println(fill(desk) + " materials on the shelf");
            List<Double> times = new ArrayList<>();
            List<FormulaVersion> versions = versions(desk);
            for (int round = 0; round < ROUNDS; round++) {
                for (FormulaVersion version : versions) {
                    for (String key : materials(version)) {
                        times.add(ask(desk, version, key, round));
                    }
                }
            }
            System.out.printf("first after the start: %.0f ms%n", times.get(0));
            List<Double> warm = new ArrayList<>(times.subList(times.size() / ROUNDS, times.size()));
            warm.sort(Comparator.naturalOrder());
            System.out.printf(
                    "%d others: median %.0f ms, longest %.0f ms%n",
                    warm.size(), warm.get(warm.size() / 2), warm.get(warm.size() - 1));
        }
    }

    private static int fill(OpenDesk desk) {
        List<String> there = new ArrayList<>(desk.ledger().lots().all().stream()
                .map(stocked -> stocked.lot().materialKey())
                .distinct()
                .toList());
        desk.ledger().materials().book().materials().stream()
                .filter(card -> !card.composition().isEmpty() && !there.contains(card.key()))
                .sorted(Comparator.comparing((Material card) -> card.family() != Family.SURFACTANT)
                        .thenComparing(Material::key))
                .limit(Math.max(0, SHELF - there.size()))
                .forEach(card -> {
                    desk.ledger().lots().add(lot(card.key()));
                    there.add(card.key());
                });
        return there.size();
    }

    private static Lot lot(String key) {
        return new Lot(
                "B-" + key,
                key,
                "",
                "",
                Grams.of("2000"),
                LocalDate.of(2026, 11, 1),
                Optional.empty(),
                Optional.empty(),
                Optional.of(new Price(Money.of("9"), Grams.of("1000"))),
                Lot.State.RELEASED,
                "");
    }

    /** Of the hand wash and the lotion. */
    private static List<FormulaVersion> versions(OpenDesk desk) {
        return desk.ledger().products().products().stream()
                .filter(each -> each.brief().type() == ProductType.HAND_WASH
                        || each.brief().type() == ProductType.HAND_CREAM
                        || each.brief().type() == ProductType.BODY_LOTION)
                .flatMap(each -> desk.ledger().products().newest(each.id()).stream())
                .toList();
    }

    private static List<String> materials(FormulaVersion version) {
        return version.formula().lines().stream()
                .map(line -> line.materialKey())
                .distinct()
                .toList();
    }

    private static double ask(OpenDesk desk, FormulaVersion version, String key, int round) {
        String path = "/products/" + version.productId() + "/versions/" + version.number() + "/anew?without=" + key
                + "&aim=CHANGE&active=" + (10 + round);
        long from = System.nanoTime();
        OpenDesk.Answer page = desk.get(path);
        double milliseconds = (System.nanoTime() - from) / 1e6;
        String state = page.body().contains("Still looking")
                ? "still looking"
                : page.body().contains("1. ") ? "answered" : "explained";
        if (page.status() != 200 || milliseconds > 900) {
            System.out.printf("  %s, %s: %.0f ms, %s%n", key, path.substring(0, 14), milliseconds, state);
        }
        return milliseconds;
    }
}
