package stillroom.ledger;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import stillroom.formulary.batch.Batch;
import stillroom.formulary.batch.BatchEvent;
import stillroom.formulary.batch.LogEntry;
import stillroom.formulary.formula.Brief;
import stillroom.formulary.formula.Formula;
import stillroom.formulary.formula.FormulaVersion;
import stillroom.formulary.formula.Product;
import stillroom.formulary.material.Lot;
import stillroom.formulary.material.Material;
import stillroom.formulary.material.Substance;
import stillroom.formulary.meter.MeterCalibration;
import stillroom.formulary.meter.PhMeter;
import stillroom.formulary.plan.Balance;
import stillroom.ledger.lot.StockCount;
import stillroom.ledger.lot.StockedLot;
import stillroom.ledger.workshop.Workshop;

/** A workshop of random records, stored, closed, opened again and read back, is equal in every component. */
final class WorkshopContractTest {
    @TempDir
    Path folder;

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void aStoredWorkshopReadsBackEqual(long seed) {
        RandomRecords random = new RandomRecords(seed);
        Workshop workshop = random.of(Workshop.class);
        Map<String, PhMeter> meters = distinct(random.several(PhMeter.class, 3), PhMeter::name);
        List<MeterCalibration> calibrations = random.several(MeterCalibration.class, 12);
        Map<String, Balance> balances = distinct(random.several(Balance.class, 4), Balance::name);
        Map<String, Material> cards = distinct(random.several(Material.class, 30), Material::key);
        Map<String, Substance> substances = distinct(random.several(Substance.class, 20), Substance::key);
        Map<String, Lot> lots = distinct(random.several(Lot.class, 20), Lot::code);
        List<StockCount> counts = new ArrayList<>();
        List<Product> products = new ArrayList<>();
        List<FormulaVersion> versions = new ArrayList<>();
        List<Batch> batches = new ArrayList<>();
        Map<Long, List<LogEntry>> logs = new HashMap<>();
        try (Ledger ledger = Ledger.open(folder, Workbench::starter)) {
            ledger.settings().write(workshop);
            meters.values().forEach(ledger.meters()::write);
            calibrations.forEach(ledger.meters()::add);
            ledger.equipment().writeBalances(List.copyOf(balances.values()));
            cards.replaceAll((key, card) -> Workbench.done(ledger.materials().save(card)));
            substances.values().forEach(ledger.materials()::save);
            lots.values().forEach(lot -> assertThat(ledger.lots().add(lot)).isTrue());
            lots.keySet().forEach(code -> counts.add(count(ledger, random, code)));
            for (int i = 0; i < 6; i++) {
                Product product =
                        ledger.products().add(random.of(String.class), random.of(Brief.class), random.of(String.class));
                products.add(product);
                versions.add(version(ledger, random, product, i % 2 == 0));
                batches.add(batch(ledger, random, product, i));
            }
            batches.forEach(batch -> logs.put(batch.id(), log(ledger, random, batch)));
        }
        try (Ledger ledger = Ledger.open(folder, Workbench::starter)) {
            assertThat(ledger.settings().read()).isEqualTo(workshop);
            assertThat(ledger.equipment().balances()).containsExactlyElementsOf(balances.values());
            assertThat(ledger.meters().meters()).containsExactlyInAnyOrderElementsOf(meters.values());
            assertThat(ledger.meters().calibrations())
                    .containsExactlyInAnyOrderElementsOf(calibrations)
                    .isSortedAccordingTo(Comparator.comparing(
                                    (MeterCalibration one) -> one.at().toEpochMilli())
                            .reversed());
            assertThat(ledger.materials().own()).containsExactlyInAnyOrderElementsOf(cards.values());
            assertThat(ledger.materials().ownSubstances()).containsExactlyInAnyOrderElementsOf(substances.values());
            assertThat(ledger.lots().all().stream().map(StockedLot::lot))
                    .containsExactlyInAnyOrderElementsOf(lots.values());
            assertThat(lots.keySet().stream().flatMap(code -> ledger.lots().counts(code).stream()))
                    .containsExactlyInAnyOrderElementsOf(counts);
            assertThat(ledger.products().products()).containsExactlyInAnyOrderElementsOf(products);
            assertThat(products.stream().flatMap(product -> ledger.products().versions(product.id()).stream()))
                    .containsExactlyElementsOf(versions);
            for (Batch batch : batches) {
                assertThat(ledger.batches().byCode(batch.code())).contains(batch);
                assertThat(ledger.batches().log(batch.id())).isEqualTo(logs.get(batch.id()));
                assertThat(ledger.batches().firstAltered(batch.id())).isEmpty();
            }
        }
    }

    private static StockCount count(Ledger ledger, RandomRecords random, String code) {
        StockCount drawn = random.of(StockCount.class);
        return ledger.lots().countStock(code, drawn.found(), drawn.reason(), drawn.at(), drawn.by());
    }

    private static FormulaVersion version(Ledger ledger, RandomRecords random, Product product, boolean keep) {
        FormulaVersion draft = ledger.products()
                .newVersion(
                        product.id(),
                        random.of(FormulaVersion.class).basedOn(),
                        random.of(Formula.class),
                        random.of(String.class),
                        random.of(Instant.class));
        return keep ? Workbench.done(ledger.products().keep(product.id(), draft.number(), draft.edit())) : draft;
    }

    private static Batch batch(Ledger ledger, RandomRecords random, Product product, int i) {
        Optional<Integer> version = i % 2 == 0 ? Optional.of(1) : Optional.empty();
        Batch drawn = random.of(Batch.class);
        return ledger.batches()
                .open(product.id(), version, drawn.code() + "-" + i, drawn.openedOn())
                .orElseThrow();
    }

    private static List<LogEntry> log(Ledger ledger, RandomRecords random, Batch batch) {
        List<LogEntry> log = new ArrayList<>();
        for (int i = 0; i < 25; i++) {
            LogEntry drawn = random.of(LogEntry.class);
            // These two refer to an entry, which has to be there.
            if (!(drawn.event() instanceof BatchEvent.Struck) && !(drawn.event() instanceof BatchEvent.LotsNamed)) {
                log.add(ledger.batches().append(batch.id(), "r" + i, drawn.at(), drawn.by(), drawn.event()));
            }
        }
        return log;
    }

    private static <T> Map<String, T> distinct(List<T> records, Function<T, String> key) {
        return records.stream()
                .collect(Collectors.toMap(key, record -> record, (first, second) -> first, HashMap::new));
    }
}
