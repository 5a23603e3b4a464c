package chargehand.part;

/** How large the teeth of a wheel are, as the drawing gives it. */
public sealed interface ToothSize {
    /** One inch in millimetres, what module and diametral pitch multiply to. */
    double INCH = 25.4;

    /** The module (mm): pitch diameter over teeth. */
    double module();

    /** The figure as written. */
    String text();

    /**
     * So many teeth to an inch of pitch diameter.
     *
     * @param perInch more than zero
     */
    record DiametralPitch(String text, double perInch) implements ToothSize {
        @Override
        public double module() {
            return INCH / perInch;
        }
    }

    /**
     * Pitch diameter over teeth.
     *
     * @param module in millimetres, more than zero
     */
    record Module(String text, double module) implements ToothSize {}
}
