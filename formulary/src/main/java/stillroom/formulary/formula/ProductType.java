package stillroom.formulary.formula;

/** The kind of product, which decides limits, exposure and labels. */
public enum ProductType {
    HAND_WASH(false, "hand wash"),
    SHOWER_GEL(false, "shower gel"),
    SHAMPOO(false, "shampoo"),
    HAIR_CONDITIONER(false, "hair conditioner, rinsed off"),
    FACE_CLEANSER(false, "face cleanser"),
    MAKE_UP_REMOVER(false, "make-up remover"),
    SOLID_CLEANSER(false, "solid cleanser"),
    BODY_LOTION(true, "body lotion"),
    FACE_CREAM(true, "face cream or serum"),
    HAND_CREAM(true, "hand cream"),
    TONER(true, "toner or lotion for the face"),
    BALM(true, "balm"),
    LIP_PRODUCT(true, "lip product"),
    EYE_PRODUCT(true, "eye product"),
    DEODORANT(true, "deodorant, not sprayed"),
    HAIR_LEAVE_IN(true, "hair product, left in"),
    FOOT_CARE(true, "foot care"),
    BODY_OIL(true, "body oil"),
    FINE_FRAGRANCE(true, "fragrance"),
    OTHER_RINSE_OFF(false, "other, rinsed off"),
    OTHER_LEAVE_ON(true, "other, left on");

    private final boolean leaveOn;
    private final String words;

    ProductType(boolean leaveOn, String words) {
        this.leaveOn = leaveOn;
        this.words = words;
    }

    public boolean leaveOn() {
        return leaveOn;
    }

    /** As a person reads it. */
    public String words() {
        return words;
    }
}
