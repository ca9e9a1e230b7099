package stillroom.science.blend;

/** Which ingredients a search has decided to leave out or to use. */
final class Decisions {
    private static final byte UNDECIDED = 0;
    private static final byte ABSENT = 1;
    private static final byte USED = 2;

    private final byte[] of;

    private Decisions(byte[] of) {
        this.of = of;
    }

    /** What is required is used; what cannot be above 0 is absent; the rest is open. */
    static Decisions first(Blend blend) {
        Decisions first = new Decisions(new byte[blend.size()]);
        for (int j = 0; j < blend.size(); j++) {
            Ingredient ingredient = blend.ingredients().get(j);
            if (ingredient.required()) {
                first.use(j);
            } else if (ingredient.most() == 0) {
                first.leaveOut(j);
            }
        }
        return first;
    }

    Decisions copy() {
        return new Decisions(of.clone());
    }

    boolean undecided(int j) {
        return of[j] == UNDECIDED;
    }

    boolean absent(int j) {
        return of[j] == ABSENT;
    }

    boolean used(int j) {
        return of[j] == USED;
    }

    void leaveOut(int j) {
        of[j] = ABSENT;
    }

    void use(int j) {
        of[j] = USED;
    }

    Decisions with(int j, boolean used) {
        Decisions changed = copy();
        changed.of[j] = used ? USED : ABSENT;
        return changed;
    }
}
