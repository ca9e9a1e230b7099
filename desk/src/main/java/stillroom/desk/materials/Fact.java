package stillroom.desk.materials;

import java.util.List;

/** The facts of a card that carry a source of their own, by the name of the card's component. */
enum Fact {
    FUNCTIONS("functions", "Functions"),
    COMPOSITION("composition", "Composition"),
    STRENGTH("strength", "Strength"),
    USAGE("usage", "Usual range of use"),
    WORKING_PH("workingPh", "Works at pH"),
    OWN_PH("ownPh", "Own pH"),
    DENSITY("densityGramsPerMillilitre", "Density at 20 °C"),
    SOLUBILITY("solubility", "Solubility"),
    MAX_CELSIUS("maxCelsius", "Highest processing temperature"),
    NATURAL_ORIGIN("naturalOriginIndex", "Natural origin index"),
    CAUTIONS("cautions", "Cautions"),
    NOTE("note", "Note");

    /** Offered where a source is asked for; anything else may be typed. */
    static final List<String> USUAL_SOURCES = List.of(
            "certificate", "data sheet", "safety data sheet", "common practice, no source", "from memory", "measured");

    private final String component;
    private final String words;

    Fact(String component, String words) {
        this.component = component;
        this.words = words;
    }

    /** Key into the sources of a card. */
    String component() {
        return component;
    }

    /** Name of the form field that holds the source. */
    String sourceField() {
        return "source-" + component;
    }

    String words() {
        return words;
    }
}
