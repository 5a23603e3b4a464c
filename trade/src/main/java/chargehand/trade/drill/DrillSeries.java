package chargehand.trade.drill;

/** How a drill's size is named. */
public enum DrillSeries {
    METRIC,
    NUMBER,
    LETTER,
    FRACTION,
    /** A drill named by a decimal of an inch that no series has. */
    DECIMAL_INCH
}
