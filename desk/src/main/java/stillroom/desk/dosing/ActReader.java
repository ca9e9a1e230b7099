package stillroom.desk.dosing;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import stillroom.desk.shell.Input;
import stillroom.formulary.batch.BatchEvent;
import stillroom.formulary.formula.ReadingKind;
import stillroom.formulary.quantity.Grams;
import stillroom.formulary.quantity.Percent;

/** Reads a form of the page into the event that it means. Problems stand in the input. */
record ActReader(Input input, DosingAsk ask) {
    private static final MathContext SIX_DIGITS = new MathContext(6);

    Optional<BatchEvent> event() {
        Optional<BatchEvent> event = switch (input.text("act")) {
            case "read" -> reading();
            case "sample" -> sample();
            case "titrate" -> titrated();
            default -> input.refuse("act", "This form is not known here; go back and try again.");
        };
        return input.isSound() ? event : Optional.empty();
    }

    /** The pH of the form, which lies between 0 and 14. */
    Optional<Double> pH() {
        Optional<Double> typed = input.number("pH", "The pH", "0", "14");
        return typed.isEmpty() && !input.hasProblem("pH") ? input.refuse("pH", "The pH is missing.") : typed;
    }

    private Optional<BatchEvent> reading() {
        Map<String, String> how = new LinkedHashMap<>();
        how.put("measured", "neat");
        put(how, "electrode", ask.electrode());
        celsius().ifPresent(celsius -> how.put("sample temperature", DosingAsk.plain(celsius) + " °C"));
        input.number("minutes", "The time until it was stable", "0", "600")
                .ifPresent(minutes -> how.put("minutes to stable", DosingAsk.plain(minutes)));
        return pH().map(pH ->
                new BatchEvent.ReadingTaken(ReadingKind.PH, ask.vessel(), Optional.of(pH), "pH", "", how));
    }

    private Optional<Double> celsius() {
        return input.number("celsius", "The temperature", "0", "99");
    }

    private Optional<BatchEvent> sample() {
        pH();
        Optional<Grams> sample = input.grams("sample", "The sample");
        if (sample.isEmpty() && !input.hasProblem("sample")) {
            input.refuse("sample", "The sample is missing: type the grams.");
        }
        Map<String, String> how = new LinkedHashMap<>();
        put(how, "electrode", ask.electrode());
        put(how, "balance", ask.balance());
        Optional<Percent> dilution = dilution();
        Optional<Double> celsius = celsius();
        return sample.flatMap(mass -> dilution.map(percent -> new BatchEvent.TitrationBegun(
                ask.vessel(),
                mass,
                ask.corrector(),
                Optional.of(ask.lot()).filter(code -> !code.isEmpty()),
                percent,
                celsius,
                how)));
    }

    /** From both weighings; poured as it is where neither is given. */
    private Optional<Percent> dilution() {
        Optional<Grams> corrector = input.grams("correctorGrams", "The corrector");
        Optional<Grams> water = input.grams("waterGrams", "The water");
        if (corrector.isEmpty() && water.isEmpty()) {
            return input.isSound() ? Optional.of(Percent.HUNDRED) : Optional.empty();
        }
        if (corrector.filter(mass -> mass.signum() > 0).isEmpty() || water.isEmpty()) {
            return input.refuse(
                    "correctorGrams",
                    "Type both weighings of the dilution, corrector and water; leave both open where it is poured as it is.");
        }
        BigDecimal whole = corrector.get().plus(water.get()).value();
        return Optional.of(new Percent(corrector.get().value().movePointRight(2).divide(whole, SIX_DIGITS)));
    }

    private Optional<BatchEvent> titrated() {
        Optional<Double> pH = pH();
        Optional<Grams> added = input.grams("added", "What is in");
        if (added.isEmpty() && !input.hasProblem("added")) {
            input.refuse("added", "What is in the sample is missing: type the grams, all together.");
        }
        Optional<Integer> titration = input.whole("titration", "The titration", 1, Integer.MAX_VALUE);
        return titration.flatMap(
                number -> added.flatMap(mass -> pH.map(read -> new BatchEvent.TitrationRead(number, mass, read))));
    }

    private static void put(Map<String, String> how, String condition, String said) {
        if (!said.isEmpty()) {
            how.put(condition, said);
        }
    }
}
