package stillroom.ledger.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import stillroom.formulary.batch.BatchEvent;
import stillroom.formulary.formula.Amount;
import stillroom.formulary.formula.Brief;
import stillroom.formulary.formula.Formula;
import stillroom.formulary.formula.Line;
import stillroom.formulary.formula.ProductType;
import stillroom.formulary.formula.ReadingKind;
import stillroom.formulary.material.Lot;
import stillroom.formulary.quantity.Grams;

final class JsonTest {
    /** Words that files out there contain: this list only grows. */
    private static final Set<String> WORDS = Set.of(
            "fixed",
            "to-hundred",
            "to-reading",
            "stated",
            "from-containers",
            "planned",
            "begun",
            "vessel-ready",
            "poured",
            "read-again",
            "line-accepted",
            "step-done",
            "timer-started",
            "timer-stopped",
            "combined",
            "vessel-weighed",
            "sampled",
            "reading-taken",
            "rest-begun",
            "rest-ended",
            "filled",
            "handed-over",
            "bulk-received",
            "noted",
            "struck",
            "decided");

    @Test
    void theWordsOfTheFileFormatStay() {
        Set<String> words = new TreeSet<>();
        for (Class<?> set : Kinds.SETS) {
            for (Class<?> shape : set.getPermittedSubclasses()) {
                assertThat(words.add(Kinds.of(shape)))
                        .as("%s is told apart", shape)
                        .isTrue();
            }
        }
        assertThat(words).containsAll(WORDS);
    }

    @Test
    void aLineReadsAsAPersonWouldWriteIt() {
        assertThat(Json.write(new Line("l1", "glycerin", Amount.fixed("2.50"), "")))
                .isEqualTo(
                        "{\"id\":\"l1\",\"materialKey\":\"glycerin\",\"amount\":{\"kind\":\"fixed\",\"percent\":2.5}}");
    }

    @Test
    void decimalsKeepEveryDigit() {
        String typed = "123456789.123456789123456789";
        String text = Json.write(new BatchEvent.VesselWeighed("A", Grams.of(typed)));
        assertThat(text).contains(":" + typed + "}");
        assertThat(Json.read(text, BatchEvent.class)).isEqualTo(new BatchEvent.VesselWeighed("A", Grams.of(typed)));
    }

    @Test
    void smallAndRoundDecimalsAreWrittenWithoutExponent() {
        assertThat(Json.write(List.of(Grams.of("0.0000001"), Grams.of("1E+3"), Grams.of("100.00"))))
                .isEqualTo("[0.0000001,1000,100]");
    }

    @Test
    void decimalsAreReadFromTextsToo() {
        assertThat(Json.read("\"2.50\"", Grams.class)).isEqualTo(Grams.of("2.5"));
    }

    @Test
    void equalRecordsAreEqualTextsWhateverTheOrderOfTheirSets() {
        Brief one = brief(Set.of(Brief.People.PREGNANT, Brief.People.ADULTS, Brief.People.EYE_AREA));
        assertThat(Json.write(one)).contains("\"people\":[\"ADULTS\",\"PREGNANT\",\"EYE_AREA\"]");
        BatchEvent reading = new BatchEvent.ReadingTaken(
                ReadingKind.PH, "A", java.util.Optional.of(5.2), "pH", "", Map.of("z", "1", "a", "2", "m", "3"));
        assertThat(Json.write(reading))
                .startsWith("{\"kind\":\"reading-taken\",\"reading\":\"PH\"")
                .endsWith("\"how\":{\"a\":\"2\",\"m\":\"3\",\"z\":\"1\"}}");
    }

    private static Brief brief(Set<Brief.People> people) {
        Brief plain = Brief.of(ProductType.TONER);
        return new Brief(
                plain.type(),
                people,
                plain.where(),
                plain.feel(),
                plain.phBand(),
                plain.phTarget(),
                plain.priceCeilingPer100g(),
                plain.claims(),
                plain.pack(),
                plain.market());
    }

    @Test
    void whatIsMissingIsEmpty() {
        assertThat(Json.read("{}", Formula.class)).isEqualTo(Formula.EMPTY);
        BatchEvent.Poured poured = (BatchEvent.Poured) Json.read(
                "{\"kind\":\"poured\",\"vessel\":\"A\",\"materialKey\":\"water\",\"mass\":1,\"purpose\":\"LINE\"}",
                BatchEvent.class);
        assertThat(poured.lot()).isEmpty();
        assertThat(poured.note()).isEmpty();
    }

    @Test
    void whatCannotBeEmptyIsAskedForByName() {
        assertThatThrownBy(() -> Json.read("{\"code\":\"L1\",\"materialKey\":\"water\",\"received\":5}", Lot.class))
                .isInstanceOf(UnreadableJson.class)
                .hasMessageContaining("receivedOn");
    }

    @Test
    void fieldsOfANewerVersionArePassedOver() {
        assertThat(Json.read("{\"phases\":[],\"fromTheFuture\":{\"a\":[1]}}", Formula.class))
                .isEqualTo(Formula.EMPTY);
    }

    @Test
    void rubbishIsRefusedInOneSentence() {
        for (String rubbish : Arrays.asList(
                "",
                "{",
                "null",
                "[1]",
                "{\"kind\":\"unheard-of\"}",
                "{\"kind\":\"vessel-weighed\",\"vessel\":\"A\",\"gross\":\"much\"}",
                "{\"kind\":\"vessel-weighed\",\"vessel\":\"A\",\"gross\":NaN}",
                "{\"kind\":\"combined\",\"from\":{}}")) {
            assertThatThrownBy(() -> Json.read(rubbish, BatchEvent.class))
                    .as(rubbish)
                    .isInstanceOf(UnreadableJson.class)
                    .message()
                    .doesNotContain("\n");
        }
    }
}
