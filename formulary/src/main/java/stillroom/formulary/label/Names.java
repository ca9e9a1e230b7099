package stillroom.formulary.label;

import java.util.Map;
import java.util.Optional;
import stillroom.formulary.material.MaterialBook;
import stillroom.formulary.material.Substance;
import stillroom.formulary.rule.MarketLaw;

/** Names of substances as a market prints them: the INCI name, or the market's own. */
record Names(MaterialBook book, Map<String, String> ofMarket, Optional<MarketLaw> law) {
    /** The colour index number under which the market's list of colourants has it; else its usual name. */
    String ofColourant(String substance) {
        String plain = of(substance, false);
        return law.stream()
                .flatMap(known -> known.naming(substance).stream())
                .filter(rule -> rule.table().equals("annex-iv"))
                .map(rule -> "CI " + rule.entry())
                .findFirst()
                .orElse(plain);
    }

    String of(String substance, boolean nano) {
        Optional<Substance> known = book.substance(substance);
        String inci = known.map(Substance::inciName).orElse(substance);
        String name = ofMarket.getOrDefault(inci, inci);
        boolean suffix = nano && known.map(one -> one.is("nano")).orElse(false);
        return suffix && !name.endsWith("(nano)") ? name + " (nano)" : name;
    }
}
