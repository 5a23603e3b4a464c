package chargehand.method.setting;

import chargehand.measure.AngleText;
import chargehand.method.kit.MillCutter;
import chargehand.method.kit.Tooling;
import chargehand.part.Section;
import chargehand.part.ToothSize;
import chargehand.trade.gear.Cutters;
import java.util.Optional;

/** Picks the form cutter for the teeth of a wheel: its pitch, its pressure angle, and its number for so many teeth. */
public final class GearCutters {
    private static final double MODULE_NEAR = 0.002;
    private static final double ANGLE_NEAR_DEGREES = 0.1;

    private GearCutters() {}

    /** The cutter owned, if there is one. */
    public static Optional<MillCutter.GearCutter> pick(Tooling tooling, Section.Toothed wheel) {
        return tooling.millCutters(MillCutter.GearCutter.class).stream()
                .filter(cutter -> Math.abs(cutter.module() - wheel.size().module()) <= MODULE_NEAR)
                .filter(cutter -> Math.abs(cutter.pressureAngle().degrees()
                                - wheel.pressureAngle().degrees())
                        <= ANGLE_NEAR_DEGREES)
                .filter(cutter -> Cutters.number(wheel.teeth()).equals(Optional.of(cutter.number())))
                .findFirst();
    }

    /** What cutter a wheel wants, in words. */
    public static String wanted(Section.Toothed wheel) {
        String pitch = switch (wheel.size()) {
            case ToothSize.Module module -> "module " + module.text();
            case ToothSize.DiametralPitch pitched -> pitched.text() + " diametral pitch";
        };
        String angle = ", " + AngleText.degrees(wheel.pressureAngle(), 2);
        return pitch
                + angle
                + Cutters.number(wheel.teeth())
                        .map(number -> ", number " + number + " of the set of eight")
                        .orElse(", for fewer than twelve teeth");
    }
}
