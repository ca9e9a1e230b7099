package stillroom.formulary.batch;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class ChainEngineTest {
    /** Made with another program: {@code printf '%s\n%s' 000...0 abc | sha256sum} (GNU coreutils). */
    @Test
    void linkIsSha256OfThePreviousHashAndTheText() {
        assertThat(Chain.link(Chain.START, "abc"))
                .isEqualTo("ac10ec504bb4ed3d77c3b3d1cf8fc534a2f6658185a64fc00b24a1afce46cec3");
    }

    @Test
    void anAlteredEntryChangesEveryLaterHash() {
        String head = Chain.link(Chain.link(Chain.START, "30.0 g"), "next");
        assertThat(Chain.link(Chain.link(Chain.START, "30.1 g"), "next")).isNotEqualTo(head);
    }
}
