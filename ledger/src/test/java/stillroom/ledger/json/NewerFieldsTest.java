package stillroom.ledger.json;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What a newer version wrote stays where it stood when this one writes the record again. */
final class NewerFieldsTest {
    record Part(String id, int amount) {}

    record Whole(String name, Optional<String> note, List<Part> parts, List<Integer> figures) {}

    private static final String BEFORE = "{\"mood\":{\"deep\":1.50},\"name\":\"a\",\"note\":\"was here\","
            + "\"parts\":[{\"id\":\"p\",\"amount\":1,\"glow\":true},{\"id\":\"q\",\"amount\":2,\"glow\":false}],\"figures\":[1]}";

    private static String over(Whole now) {
        return Json.writeOver(Optional.of(BEFORE), now);
    }

    @Test
    void fieldsStayWithTheRecordAndWithEachElementThatIsStillThere() {
        String now = over(new Whole("b", Optional.empty(), List.of(new Part("q", 3), new Part("r", 4)), List.of()));
        assertThat(now)
                .isEqualTo(
                        "{\"name\":\"b\",\"parts\":[{\"id\":\"q\",\"amount\":3,\"glow\":false},{\"id\":\"r\",\"amount\":4}],"
                                + "\"mood\":{\"deep\":1.50}}");
    }

    @Test
    void whatIsKnownAndWasEmptiedIsNoFieldOfANewerVersion() {
        assertThat(over(new Whole("a", Optional.empty(), List.of(), List.of())))
                .doesNotContain("was here", "figures", "glow");
    }

    @Test
    void withoutNewerFieldsTheTextIsThatOfTheRecord() {
        Whole whole = new Whole("a", Optional.of("n"), List.of(new Part("p", 1)), List.of(1, 2));
        assertThat(Json.writeOver(Optional.of(Json.write(whole)), whole)).isEqualTo(Json.write(whole));
        assertThat(Json.writeOver(Optional.empty(), whole)).isEqualTo(Json.write(whole));
        assertThat(Json.writeOver(Optional.of("no JSON"), whole)).isEqualTo(Json.write(whole));
    }
}
