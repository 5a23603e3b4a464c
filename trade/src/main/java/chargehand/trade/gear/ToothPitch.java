package chargehand.trade.gear;

import chargehand.measure.Figures;
import chargehand.measure.Length;
import chargehand.measure.LengthUnit;
import chargehand.measure.Ratio;
import chargehand.trade.sum.Asked;
import chargehand.trade.sum.Field;
import chargehand.trade.sum.Kind;
import chargehand.trade.sum.Kinds;
import chargehand.trade.sum.Refusal;
import chargehand.trade.sum.Source;
import chargehand.trade.sum.Working;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/** The pitch of teeth, however it is given: diametral pitch, module or circular pitch. */
final class ToothPitch {
    /** One inch in millimetres, what diametral pitch and module multiply to. */
    static final double INCH = 25.4;

    private static final double LEAST_MODULE = 0.05;
    private static final double MOST_MODULE = 100;

    static final Field<Ratio> DIAMETRAL = Field.optional(
            "diametralPitch",
            "Diametral pitch",
            Kinds.where(
                    Kinds.NUMBER,
                    pitch -> inRange(INCH / pitch.value()),
                    "is not a diametral pitch that wheels are cut to, from 1/4 to 500"),
            "10; or give the module or the circular pitch");
    static final Field<Double> MODULE = Field.optional(
            "module",
            "Module",
            Kinds.where(
                    Kinds.by("module", ToothPitch::module, Figures::four),
                    ToothPitch::inRange,
                    "is not a module that wheels are cut to, from 0.05 to 100 mm"),
            "2.5, always in millimetres");
    static final Field<Length> CIRCULAR = Field.optional(
            "circularPitch",
            "Circular pitch",
            Kinds.where(
                    Kinds.SIZE,
                    pitch -> inRange(pitch.mm() / Math.PI),
                    "is not a circular pitch that wheels are cut to"),
            "1/2 in; tooth to tooth along the pitch circle");

    private ToothPitch() {}

    private static boolean inRange(double module) {
        return module >= LEAST_MODULE && module <= MOST_MODULE;
    }

    private static double module(String written) {
        String bare = written.toLowerCase(Locale.ROOT).replaceAll("^(module|mod|m)\\s*|\\s*mm$", "");
        Kind<Ratio> number = Kinds.NUMBER;
        return number.read(bare, LengthUnit.MILLIMETRE).value();
    }

    /** The module (mm) of what was given, with the step that leads to it. */
    static double module(Asked asked, Working working) {
        List<String> given = Stream.of(DIAMETRAL, MODULE, CIRCULAR)
                .filter(asked::has)
                .map(Field::name)
                .toList();
        if (given.size() != 1) {
            throw Refusal.of(
                    DIAMETRAL,
                    given.isEmpty()
                            ? "give the diametral pitch, the module or the circular pitch."
                            : "give one of " + String.join(" and ", given) + ", not both.");
        }
        if (asked.has(MODULE)) {
            return asked.get(MODULE);
        }
        return asked.has(DIAMETRAL) ? byDiametral(asked, working) : byCircular(asked, working);
    }

    private static double byDiametral(Asked asked, Working working) {
        double pitch = asked.get(DIAMETRAL).value();
        return step(working, "25.4 / P", "25.4 / " + Figures.four(pitch), INCH / pitch);
    }

    private static double byCircular(Asked asked, Working working) {
        double pitch = asked.get(CIRCULAR).mm();
        return step(working, "p / π", Figures.atMost(4, pitch) + " / π", pitch / Math.PI);
    }

    private static double step(Working working, String formula, String numbers, double module) {
        working.step("Module, in millimetres", formula, numbers, Figures.atMost(4, module) + " mm", Source.GEOMETRY);
        return module;
    }
}
