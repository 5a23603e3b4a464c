package chargehand.measure;

import java.util.List;

/** Every notation but the counts, for tests over all of them. */
final class AllNotations {
    static final List<Notation<?>> LIST = List.of(
            Notations.LENGTH,
            Notations.ANGLE,
            Notations.PITCH,
            Notations.FORCE,
            Notations.TORQUE,
            Notations.PRESSURE,
            Notations.PRESSURE_RATE,
            Notations.SPRING_RATE,
            Notations.SPEED,
            Notations.SPINDLE_SPEED,
            Notations.POWER,
            Notations.MASS,
            Notations.TEMPERATURE,
            Notations.WORK_TIME,
            Notations.AREA,
            Notations.VOLUME,
            Notations.NUMBER,
            Notations.PERCENTAGE,
            Notations.TAPER);

    private AllNotations() {}
}
