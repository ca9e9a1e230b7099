package stillroom.desk.dosing;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import stillroom.formulary.dosing.PhWish;
import stillroom.science.dosing.Instrument;

/**
 * What the person has chosen on the page; it stands in the address and, hidden, in each form.
 *
 * @param lot code, empty where the bottle is not booked
 * @param target empty where neither the brief nor the person says one
 * @param electrode name of the meter, "strip", or empty
 * @param step of the balance [g]
 * @param repeatability of the meter [pH]
 */
record DosingAsk(
        String vessel,
        String corrector,
        String lot,
        Optional<Double> target,
        double halfBand,
        String balance,
        double step,
        String electrode,
        double repeatability) {
    static final String STRIP = "strip";

    boolean strips() {
        return electrode.equals(STRIP);
    }

    Map<String, String> fields() {
        Map<String, String> fields = new LinkedHashMap<>();
        fields.put("vessel", vessel);
        fields.put("corrector", corrector);
        fields.put("lot", lot);
        fields.put("target", target.map(DosingAsk::plain).orElse(""));
        fields.put("halfBand", plain(halfBand));
        fields.put("balance", balance);
        fields.put("electrode", electrode);
        return fields;
    }

    String query() {
        return fields().entrySet().stream()
                .map(field -> field.getKey() + "=" + URLEncoder.encode(field.getValue(), StandardCharsets.UTF_8))
                .collect(Collectors.joining("&", "?", ""));
    }

    DosingAsk with(String otherCorrector, String otherLot) {
        return new DosingAsk(
                vessel, otherCorrector, otherLot, target, halfBand, balance, step, electrode, repeatability);
    }

    Optional<PhWish> wish() {
        Instrument instrument = strips() ? Instrument.strips(step) : Instrument.meter(repeatability, step);
        return target.map(pH ->
                new PhWish(corrector, Optional.of(lot).filter(code -> !code.isEmpty()), pH, halfBand, instrument));
    }

    static String plain(double value) {
        return java.math.BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
    }
}
