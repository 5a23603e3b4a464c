package chargehand.trade.gear;

import chargehand.measure.Angle;
import chargehand.measure.Figures;
import chargehand.trade.sum.Source;
import chargehand.trade.table.Row;
import chargehand.trade.table.Table;
import java.util.ArrayList;
import java.util.List;

/**
 * One system that a wheel may have been cut to.
 *
 * @param name such as "10 DP", "module 2" or "10 DP stub"
 * @param module pitch diameter over teeth (mm)
 * @param often how likely such a wheel is before anything is measured; only ratios count
 */
record WheelSystem(String name, double module, Angle pressureAngle, ToothSystem teeth, double often) {
    private static final Angle OLD = Angle.degrees(14.5);
    private static final Angle NEW = Angle.degrees(20);
    private static final Table PITCHES = Table.read(WheelSystem.class, "pitches.csv");
    private static final List<WheelSystem> ALL = all();

    /** Every system of every usual pitch. */
    static List<WheelSystem> list() {
        return ALL;
    }

    static Source source() {
        return PITCHES.source();
    }

    Spur wheel(int count, double shift) {
        return new Spur(count, module, pressureAngle, teeth, shift);
    }

    private static List<WheelSystem> all() {
        var all = new ArrayList<WheelSystem>();
        for (Row row : PITCHES.rows()) {
            double pitch = row.number("pitch");
            double often = row.number("often");
            if (row.text("kind").equals("DP")) {
                diametral(pitch, often, all);
            } else {
                module(pitch, often, all);
            }
        }
        return List.copyOf(all);
    }

    /** Most old inch wheels are 14½°, later ones 20°, a few stub. */
    private static void diametral(double pitch, double often, List<WheelSystem> all) {
        String name = Figures.four(pitch) + " DP";
        double module = ToothPitch.INCH / pitch;
        all.add(new WheelSystem(name, module, OLD, ToothSystem.full(OLD), 0.40 * often));
        all.add(new WheelSystem(name, module, NEW, ToothSystem.full(NEW), 0.22 * often));
        all.add(new WheelSystem(name + " stub", module, NEW, ToothSystem.STUB, 0.05 * often));
    }

    /** Wheels by module are 20° but for a few. */
    private static void module(double module, double often, List<WheelSystem> all) {
        String name = "module " + Figures.four(module);
        all.add(new WheelSystem(name, module, NEW, ToothSystem.full(NEW), 0.30 * often));
        all.add(new WheelSystem(name, module, OLD, ToothSystem.full(OLD), 0.02 * often));
        all.add(new WheelSystem(name + " stub", module, NEW, ToothSystem.STUB, 0.01 * often));
    }
}
