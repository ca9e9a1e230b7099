package stillroom.ledger.json;

import com.fasterxml.jackson.annotation.JsonProperty;
import com.fasterxml.jackson.annotation.JsonTypeInfo;
import stillroom.formulary.formula.ReadingKind;

/** What the records do not say about their written form themselves. */
final class Shapes {
    private Shapes() {}

    /** A closed set names its case in "kind", first. */
    @JsonTypeInfo(use = JsonTypeInfo.Id.NAME, include = JsonTypeInfo.As.PROPERTY, property = "kind")
    interface Kinded {}

    /** The kind of reading is called "reading", as "kind" is taken. */
    abstract static class ReadingTaken {
        @JsonProperty("reading")
        ReadingKind kind = ReadingKind.OTHER;
    }
}
