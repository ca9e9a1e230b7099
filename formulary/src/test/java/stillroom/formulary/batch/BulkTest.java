package stillroom.formulary.batch;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;
import static stillroom.formulary.plan.Workbench.g;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import stillroom.formulary.batch.BatchEvent.Purpose;
import stillroom.formulary.formula.Formula;
import stillroom.formulary.plan.Workbench;

class BulkTest {
    /** 1000 g less 20 g evaporated, 245 g handed over: a quarter of everything, the loss too. */
    @Test
    void whatOneHandsOverTheOtherReceivesWithAllThatIsInIt() {
        LogWriter giving =
                LogWriter.toner().everyLineAsPlanned("beaker").add(new BatchEvent.VesselWeighed("beaker", g("1280")));
        Vessel beaker = giving.state().vessel("beaker").orElseThrow();
        BatchEvent.BulkReceived bulk = Bulk.of(beaker, g("245"), "260301-1", "jug");
        giving.add(new BatchEvent.HandedOver("beaker", g("245"), "260301-2"));
        LogWriter getting = new LogWriter().vessel("jug").add(bulk);

        Mixture got = getting.state().vessel("jug").orElseThrow().mixture();
        assertThat(got.net()).isEqualTo(g("245"));
        assertThat(got.lost()).isEqualTo(g("5"));
        assertThat(got.of("humectant-1")).isEqualTo(g("7.5"));
        assertThat(giving.state().product().net()).isEqualTo(g("735"));
        assertThat(giving.state().product().of("humectant-1")).isEqualTo(g("22.5"));
    }

    @Test
    void ownAdditionsOfTheChildChangeOnlyTheChild() {
        LogWriter giving = LogWriter.toner().everyLineAsPlanned("beaker");
        BatchEvent.BulkReceived bulk =
                Bulk.withoutLines(Bulk.of(giving.state().vessel("beaker").orElseThrow(), g("500"), "260301-1", "jug"));
        LogWriter child = new LogWriter().vessel("jug").add(bulk).pour("jug", "", "fragrance-1", g("5"), Purpose.LINE);
        AsMade made = AsMade.of(child.state(), Formula.EMPTY, Workbench.BOOK);
        assertThat(made.line("made-fragrance-1").orElseThrow().made().value().doubleValue())
                .isCloseTo(500.0 / 505, offset(1e-9));
        assertThat(made.lots()).anyMatch(lot -> lot.lot().equals(Optional.of("lot-water")));
    }
}
