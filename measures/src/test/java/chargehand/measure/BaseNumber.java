package chargehand.measure;

/** The plain number in its base unit that a kind of quantity reads from a text; bare lengths in millimetres. */
final class BaseNumber {
    private BaseNumber() {}

    static double read(String quantity, String text) {
        return read(quantity, text, LengthUnit.MILLIMETRE);
    }

    static double read(String quantity, String text, LengthUnit unit) {
        return switch (quantity) {
            case "length" -> Notations.LENGTH.read(text, unit).length().mm();
            case "angle" -> Notations.ANGLE.read(text, unit).degrees();
            case "pitch" -> Notations.PITCH.read(text, unit).inMm();
            case "force" -> Notations.FORCE.read(text, unit).newtons();
            case "torque" -> Notations.TORQUE.read(text, unit).newtonMetres();
            case "pressure" -> Notations.PRESSURE.read(text, unit).megapascals();
            case "pressure rate" -> Notations.PRESSURE_RATE.read(text, unit).barPerMm();
            case "spring rate" -> Notations.SPRING_RATE.read(text, unit).newtonsPerMm();
            case "speed" -> Notations.SPEED.read(text, unit).metresPerMinute();
            case "spindle speed" -> Notations.SPINDLE_SPEED.read(text, unit).rpm();
            case "power" -> Notations.POWER.read(text, unit).watts();
            case "mass" -> Notations.MASS.read(text, unit).kilograms();
            case "temperature" -> Notations.TEMPERATURE.read(text, unit).celsius();
            case "time" -> Notations.WORK_TIME.read(text, unit).seconds();
            case "area" -> Notations.AREA.read(text, unit).squareMm();
            case "volume" -> Notations.VOLUME.read(text, unit).cubicMm();
            case "number" -> Notations.NUMBER.read(text, unit).value();
            case "percentage" -> Notations.PERCENTAGE.read(text, unit).value();
            case "taper" -> Notations.TAPER.read(text, unit).value();
            case "count" -> Notations.count(0, 10_000).read(text, unit);
            default -> throw new IllegalArgumentException("no such quantity in the tests: " + quantity);
        };
    }
}
