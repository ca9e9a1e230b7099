package stillroom.formulary.formula;

/** What a line may be added up to, and what is read at the bench. */
public enum ReadingKind {
    PH,
    VISCOSITY,
    SHADE,
    TEMPERATURE,
    APPEARANCE,
    ODOUR,
    DENSITY,
    OTHER
}
