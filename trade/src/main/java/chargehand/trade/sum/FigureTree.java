package chargehand.trade.sum;

import chargehand.measure.Length;
import chargehand.measure.Pressure;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * Figures as a neutral tree of maps, lists, text, numbers and truth values, which any writer of JSON takes as it is. Every
 * quantity is a map from unit to number, in full precision; a plain number stands alone.
 */
public final class FigureTree {
    private FigureTree() {}

    /** One figure as a tree. */
    public static Object of(Figure figure) {
        return switch (figure) {
            case Figure.OfLength(var length) -> of(length);
            case Figure.OfAngle(var angle) -> units("deg", angle.degrees());
            case Figure.OfForce(var force) -> units("N", force.newtons(), "lbf", force.pounds());
            case Figure.OfTorque(var torque) -> units("Nm", torque.newtonMetres(), "lbfft", torque.poundFeet());
            case Figure.OfPressure(var pressure) -> of(pressure);
            case Figure.OfPressureRate(var rate) -> units("barPerMm", rate.barPerMm(), "psiPerThou", rate.psiPerThou());
            case Figure.OfSpringRate(var rate) ->
                units("NPerMm", rate.newtonsPerMm(), "lbfPerIn", rate.poundsPerInch());
            case Figure.OfSpeed(var speed) ->
                units("mPerMin", speed.metresPerMinute(), "ftPerMin", speed.feetPerMinute());
            case Figure.OfTemperature(var temperature) ->
                units("C", temperature.celsius(), "F", temperature.fahrenheit());
            case Figure.OfMass(var mass) -> units("kg", mass.kilograms(), "lb", mass.pounds());
            case Figure.OfPower(var power) -> units("W", power.watts(), "hp", power.horsepower());
            case Figure.OfTime(var time) -> units("s", time.seconds());
            case Figure.OfArea(var area) -> units("mm2", area.squareMm(), "in2", area.squareInches());
            case Figure.OfVolume(var volume) -> units("mm3", volume.cubicMm(), "in3", volume.cubicInches());
            case Figure.Count(var count) -> count;
            case Figure.Plain(var number) -> number;
            case Figure.Percent(var number) -> number;
            case Figure.PerMinute(var turns) -> turns;
            case Figure.Words(var text) -> text;
            case Figure.YesNo(var yes) -> yes;
            case Figure.Many(var figures) ->
                figures.stream().map(FigureTree::of).toList();
            case Figure.Group(var figures) -> of(figures);
        };
    }

    /** Named figures as a map, in their order. */
    public static Map<String, Object> of(Map<String, Figure> figures) {
        var tree = new LinkedHashMap<String, Object>();
        figures.forEach((name, figure) -> tree.put(name, of(figure)));
        return tree;
    }

    private static Map<String, Object> of(Length length) {
        return units("mm", length.mm(), "in", length.in());
    }

    private static Map<String, Object> of(Pressure pressure) {
        Map<String, Object> tree = units("MPa", pressure.megapascals(), "bar", pressure.bar());
        tree.put("psi", pressure.psi());
        return tree;
    }

    private static Map<String, Object> units(String unit, double number) {
        var tree = new LinkedHashMap<String, Object>();
        tree.put(unit, number);
        return tree;
    }

    private static Map<String, Object> units(String unit, double number, String other, double inOther) {
        Map<String, Object> tree = units(unit, number);
        tree.put(other, inOther);
        return tree;
    }
}
