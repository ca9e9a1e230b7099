package stillroom.formulary.material;

/** The ion that balances the parent acid or base in a salt, with the charge that it keeps in water. */
public enum CounterIon {
    SODIUM(1),
    POTASSIUM(1),
    LITHIUM(1),
    /** Weak: it is the acid of ammonia, so a pH computation takes it as ammonia, not as a spectator. */
    AMMONIUM(1),
    MAGNESIUM(2),
    CALCIUM(2),
    ZINC(2),
    CHLORIDE(-1),
    BROMIDE(-1),
    METHOSULFATE(-1),
    SULFATE(-2);

    private final int charge;

    CounterIon(int charge) {
        this.charge = charge;
    }

    /** Charge of one ion [elementary charges]. */
    public int charge() {
        return charge;
    }
}
