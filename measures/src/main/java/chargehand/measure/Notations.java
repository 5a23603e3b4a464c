package chargehand.measure;

/**
 * Every kind of quantity that can be written, with the reading and the showing of it. A bare number is refused where it
 * could mean several things (force, torque, pressure, …) and taken as stated where it could not.
 */
public final class Notations {
    /** Lengths; a bare number is in the unit given ({@link LengthReader}). */
    public static final Notation<Written> LENGTH = new LengthNotation();

    /** Angles; a bare number is in degrees. */
    public static final Notation<Angle> ANGLE = new AngleNotation();

    /** Pitches of threads; a bare number is in millimetres, and refused where bare lengths are inches. */
    public static final Notation<Pitch> PITCH = new PitchNotation();

    /** Forces in N, kN, lbf, tonf (2240 lbf) or kgf. */
    public static final Notation<Force> FORCE = new UnitNotation<>("force", "450 N, 1.2 kN or 100 lbf", Units::force);

    /** Turning moments in N·m, N·mm, lbf ft, lbf in or kgf m. */
    public static final Notation<Torque> TORQUE =
            new UnitNotation<>("torque", "40 N·m, 500 N·mm or 30 lbf ft", Units::torque);

    /** Pressures and stresses in bar, MPa, N/mm², kPa, GPa, psi or tonf/in². */
    public static final Notation<Pressure> PRESSURE =
            new UnitNotation<>("pressure", "150 psi, 10 bar, 250 MPa or 250 N/mm2", Units::pressure);

    /** Change of pressure with the thickness of a packer, in bar/mm or psi/thou. */
    public static final Notation<PressureRate> PRESSURE_RATE =
            new UnitNotation<>("pressure per thickness", "12 bar/mm or 4.4 psi/thou", Units::pressureRate);

    /** Spring rates in N/mm or lbf/in. */
    public static final Notation<SpringRate> SPRING_RATE =
            new UnitNotation<>("spring rate", "3.5 N/mm or 20 lbf/in", Units::springRate);

    /** Cutting speeds in m/min, m/s or ft/min. */
    public static final Notation<Speed> SPEED = new UnitNotation<>("speed", "25 m/min or 80 ft/min", Units::speed);

    /** Spindle speeds; a bare number is revolutions per minute. */
    public static final Notation<SpindleSpeed> SPINDLE_SPEED =
            new UnitNotation<>("spindle speed", "320 rpm", Units::spindleSpeed);

    /** Power in W, kW or hp (550 ft lbf/s). */
    public static final Notation<Power> POWER = new UnitNotation<>("power", "1.5 kW, 750 W or 2 hp", Units::power);

    /** Masses in kg, g, tonnes, lb, oz, cwt (112 lb) or tons (2240 lb). */
    public static final Notation<Mass> MASS = new UnitNotation<>("mass", "2.5 kg, 800 g or 5 1/2 lb", Units::mass);

    /** Temperatures; a bare number is in degrees Celsius. */
    public static final Notation<Temperature> TEMPERATURE =
            new UnitNotation<>("temperature", "20 °C or 68 °F", Units::temperature);

    /** Working times in h, min and s, or h:mm. */
    public static final Notation<WorkTime> WORK_TIME = new WorkTimeNotation();

    /** Areas; a bare number is in square millimetres or square inches, as bare lengths are. */
    public static final Notation<Area> AREA = new UnitNotation<>("area", "120 mm² or 2.5 in²", Units::area);

    /** Volumes; a bare number is in cubic millimetres or cubic inches, as bare lengths are. */
    public static final Notation<Volume> VOLUME =
            new UnitNotation<>("volume", "1500 mm³, 20 cm³ or 1.2 in³", Units::volume);

    /** Plain numbers and ratios: {@code 0.15}, {@code 3/4}, {@code 2:1}, {@code 75 %}. */
    public static final Notation<Ratio> NUMBER = RatioNotation.NUMBER;

    /** Percentages; a bare number is so many in a hundred. */
    public static final Notation<Ratio> PERCENTAGE = RatioNotation.PERCENTAGE;

    /** Tapers on diameter: {@code 1 in 48}, {@code 1:48}, {@code 3/4 in per ft}. */
    public static final Notation<Ratio> TAPER = RatioNotation.TAPER;

    private Notations() {}

    /** Whole numbers within the bounds, both included: {@code 24}. */
    public static Notation<Integer> count(int least, int most) {
        return new CountNotation(least, most);
    }
}
