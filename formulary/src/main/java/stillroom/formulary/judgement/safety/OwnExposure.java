package stillroom.formulary.judgement.safety;

/**
 * Daily exposure to one product as the maker or an assessor gives it, where the tables have none or another one holds.
 *
 * @param milligramsPerKilogramDay product that stays on the body, per body weight and day [mg/kg/d]
 */
public record OwnExposure(double milligramsPerKilogramDay, String source) {
    public OwnExposure {
        if (!(milligramsPerKilogramDay > 0) || source.isBlank()) {
            throw new IllegalArgumentException("an exposure above 0 and its source are needed");
        }
    }
}
