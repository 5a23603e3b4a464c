package chargehand.trade.sum;

import chargehand.measure.Angle;
import chargehand.measure.Area;
import chargehand.measure.Force;
import chargehand.measure.Length;
import chargehand.measure.Mass;
import chargehand.measure.Power;
import chargehand.measure.Pressure;
import chargehand.measure.PressureRate;
import chargehand.measure.Speed;
import chargehand.measure.SpringRate;
import chargehand.measure.Temperature;
import chargehand.measure.Torque;
import chargehand.measure.Volume;
import chargehand.measure.WorkTime;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** One value in an answer: a closed set, so that every way of showing it covers every kind. */
public sealed interface Figure {
    record OfLength(Length length) implements Figure {}

    record OfAngle(Angle angle) implements Figure {}

    record OfForce(Force force) implements Figure {}

    record OfTorque(Torque torque) implements Figure {}

    record OfPressure(Pressure pressure) implements Figure {}

    record OfPressureRate(PressureRate rate) implements Figure {}

    record OfSpringRate(SpringRate rate) implements Figure {}

    record OfSpeed(Speed speed) implements Figure {}

    record OfTemperature(Temperature temperature) implements Figure {}

    record OfMass(Mass mass) implements Figure {}

    record OfPower(Power power) implements Figure {}

    record OfTime(WorkTime time) implements Figure {}

    record OfArea(Area area) implements Figure {}

    record OfVolume(Volume volume) implements Figure {}

    /** A whole number: teeth, holes, turns. */
    record Count(long count) implements Figure {}

    /** A plain number: a ratio, a probability, rpm, tpi. */
    record Plain(double number) implements Figure {
        public Plain {
            if (!Double.isFinite(number)) {
                throw new IllegalArgumentException("an answer must be a number, not " + number);
            }
        }
    }

    /** A share of a hundred, given as a plain number. */
    record Percent(double number) implements Figure {
        public Percent {
            if (!Double.isFinite(number)) {
                throw new IllegalArgumentException("an answer must be a number, not " + number);
            }
        }
    }

    /** Turns in a minute, given as a plain number. */
    record PerMinute(double turns) implements Figure {
        public PerMinute {
            if (!Double.isFinite(turns)) {
                throw new IllegalArgumentException("an answer must be a number, not " + turns);
            }
        }
    }

    record Words(String text) implements Figure {}

    record YesNo(boolean yes) implements Figure {}

    record Many(List<Figure> figures) implements Figure {
        public Many {
            figures = List.copyOf(figures);
        }
    }

    /** Named values that belong together, in order. */
    record Group(Map<String, Figure> figures) implements Figure {
        public Group {
            figures = Collections.unmodifiableMap(new LinkedHashMap<>(figures));
        }
    }

    static Figure of(Length length) {
        return new OfLength(length);
    }

    static Figure of(Angle angle) {
        return new OfAngle(angle);
    }

    static Figure of(Force force) {
        return new OfForce(force);
    }

    static Figure of(Torque torque) {
        return new OfTorque(torque);
    }

    static Figure of(Pressure pressure) {
        return new OfPressure(pressure);
    }

    static Figure of(PressureRate rate) {
        return new OfPressureRate(rate);
    }

    static Figure of(SpringRate rate) {
        return new OfSpringRate(rate);
    }

    static Figure of(Speed speed) {
        return new OfSpeed(speed);
    }

    static Figure of(Temperature temperature) {
        return new OfTemperature(temperature);
    }

    static Figure of(Mass mass) {
        return new OfMass(mass);
    }

    static Figure of(Power power) {
        return new OfPower(power);
    }

    static Figure of(WorkTime time) {
        return new OfTime(time);
    }

    static Figure of(Area area) {
        return new OfArea(area);
    }

    static Figure of(Volume volume) {
        return new OfVolume(volume);
    }

    static Figure of(long count) {
        return new Count(count);
    }

    static Figure of(double number) {
        return new Plain(number);
    }

    /** So many of a hundred, shown to a tenth. */
    static Figure percent(double number) {
        return new Percent(number);
    }

    /** So many turns in a minute, shown in whole ones from ten upwards. */
    static Figure rpm(double turns) {
        return new PerMinute(turns);
    }

    static Figure of(String text) {
        return new Words(text);
    }

    static Figure of(boolean yes) {
        return new YesNo(yes);
    }

    static Figure many(Iterable<? extends Figure> figures) {
        var list = new ArrayList<Figure>();
        figures.forEach(list::add);
        return new Many(list);
    }

    static Figure counts(Iterable<Integer> counts) {
        var list = new ArrayList<Figure>();
        counts.forEach(count -> list.add(of((long) count)));
        return new Many(list);
    }
}
