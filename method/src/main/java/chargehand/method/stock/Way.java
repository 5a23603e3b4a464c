package chargehand.method.stock;

/** How pieces are got out of a length of stock. */
public enum Way {
    /** Made at the end of the bar, which passes through the lathe's spindle, and parted off. */
    FROM_BAR("made at the end of the bar and parted off"),
    /** Sawn to bare blanks, a piece each. */
    SAWN("sawn to a blank for each piece"),
    /** Sawn to blanks with a stub to hold by, which is parted off at the end. */
    SAWN_WITH_STUB("sawn to a blank with a stub to hold by"),
    /** The part itself, come back to be altered. */
    AS_IT_CAME("the part itself as it came");

    private final String words;

    Way(String words) {
        this.words = words;
    }

    /** The way for a person, to stand after "is". */
    public String words() {
        return words;
    }
}
