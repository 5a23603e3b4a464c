package chargehand.measure;

/** The unit in which a person writes or reads a length. */
public enum LengthUnit {
    MILLIMETRE("mm"),
    INCH("in");

    private final String symbol;

    LengthUnit(String symbol) {
        this.symbol = symbol;
    }

    /** The unit as it is written after a number. */
    public String symbol() {
        return symbol;
    }

    /** The unit to show small beside this one. */
    public LengthUnit other() {
        return switch (this) {
            case MILLIMETRE -> INCH;
            case INCH -> MILLIMETRE;
        };
    }
}
