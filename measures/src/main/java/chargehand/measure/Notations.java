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
    public static final Notation<Force> FORCE = Units.force();

    /** Turning moments in N·m, N·mm, lbf ft, lbf in or kgf m. */
    public static final Notation<Torque> TORQUE = Units.torque();

    /** Pressures and stresses in bar, MPa, N/mm², kPa, GPa, psi or tonf/in². */
    public static final Notation<Pressure> PRESSURE = Units.pressure();

    /** Change of pressure with the thickness of a packer, in bar/mm or psi/thou. */
    public static final Notation<PressureRate> PRESSURE_RATE = Units.pressureRate();

    /** Spring rates in N/mm or lbf/in. */
    public static final Notation<SpringRate> SPRING_RATE = Units.springRate();

    /** Cutting speeds in m/min, m/s or ft/min. */
    public static final Notation<Speed> SPEED = Units.speed();

    /** Spindle speeds; a bare number is revolutions per minute. */
    public static final Notation<SpindleSpeed> SPINDLE_SPEED = Units.spindleSpeed();

    /** Power in W, kW or hp (550 ft lbf/s). */
    public static final Notation<Power> POWER = Units.power();

    /** Masses in kg, g, tonnes, lb, oz, cwt (112 lb) or tons (2240 lb). */
    public static final Notation<Mass> MASS = Units.mass();

    /** Temperatures; a bare number is in degrees Celsius. */
    public static final Notation<Temperature> TEMPERATURE = Units.temperature();

    /** Working times in h, min and s, or h:mm. */
    public static final Notation<WorkTime> WORK_TIME = new WorkTimeNotation();

    /** Areas; a bare number is in square millimetres or square inches, as bare lengths are. */
    public static final Notation<Area> AREA = Units.area();

    /** Volumes; a bare number is in cubic millimetres or cubic inches, as bare lengths are. */
    public static final Notation<Volume> VOLUME = Units.volume();

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
