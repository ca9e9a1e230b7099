package stillroom.desk.reformulation;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import stillroom.formulary.reformulation.Result;
import stillroom.science.blend.Patience;
import stillroom.science.blend.Progress;

/** A search that would never end by itself: what pages see of it, and that it can be stopped. */
@Timeout(20)
class SearchingTest {
    private static final Progress STEP = new Progress(1, 0, 1);
    private static final Result NOTHING = new Result(List.of(), List.of(), List.of(), List.of(), true, true);

    private static Searching endless() {
        return Searching.begin((patience, found, curve) -> untilStopped(patience));
    }

    private static Result untilStopped(Patience patience) {
        while (!patience.isOver(STEP)) {
            Thread.onSpinWait();
        }
        return NOTHING;
    }

    @Test
    void goesOnUntilItIsStopped() {
        Searching searching = endless();
        searching.await(50);
        assertThat(searching.isOver()).isFalse();
        assertThat(searching.result()).isEmpty();
        assertThat(searching.nodes()).isPositive();
        searching.stop();
        searching.await(10_000);
        assertThat(searching.isOver()).isTrue();
        assertThat(searching.isStopped()).isTrue();
        assertThat(searching.result()).contains(NOTHING);
    }

    @Test
    void oneThatCannotBeAnsweredSaysWhy() {
        Searching searching = Searching.begin((patience, found, curve) -> {
            throw new IllegalArgumentException("There is no price on the card of Water.");
        });
        searching.await(10_000);
        assertThat(searching.isOver()).isTrue();
        assertThat(searching.refused()).contains("no price");
    }

    @Test
    void theOldestOfManyIsStopped() {
        Searches searches = new Searches((subjected, asked) -> endless());
        Searching first = searches.at("0", SearchingTest::endless);
        assertThat(searches.at("0", SearchingTest::endless)).isSameAs(first);
        List<Searching> others = new java.util.ArrayList<>();
        for (int k = 1; k <= 8; k++) {
            others.add(searches.at(Integer.toString(k), SearchingTest::endless));
        }
        first.await(10_000);
        assertThat(first.isOver()).isTrue();
        assertThat(others).noneMatch(Searching::isOver);
        for (int k = 1; k <= 8; k++) {
            searches.stop(Integer.toString(k));
        }
        others.forEach(one -> one.await(10_000));
        assertThat(others).allMatch(Searching::isOver);
    }
}
