package chargehand.trade.gear;

import chargehand.measure.Angle;
import chargehand.measure.Figures;
import chargehand.measure.Length;
import chargehand.measure.LengthText;
import chargehand.measure.Ratio;
import chargehand.trade.sum.Answer;
import chargehand.trade.sum.Asked;
import chargehand.trade.sum.Example;
import chargehand.trade.sum.Field;
import chargehand.trade.sum.Figure;
import chargehand.trade.sum.Kinds;
import chargehand.trade.sum.Refusal;
import chargehand.trade.sum.Result;
import chargehand.trade.sum.Source;
import chargehand.trade.sum.Sum;
import chargehand.trade.sum.Working;
import com.google.auto.service.AutoService;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** All sizes of a spur wheel, and what to measure on it. */
@AutoService(Sum.class)
public final class GearSum implements Sum {
    private static final int FEWEST = 5;
    private static final int MOST = 2_000;
    private static final double PIN = 1.728;
    private static final double MOST_SHIFT = 1;
    private static final Angle USUAL_ANGLE = Angle.degrees(20);

    private static final Field<Integer> TEETH =
            Field.required("teeth", "Teeth", Kinds.count(FEWEST, MOST), "30, from 5 to 2000");
    private static final Field<Angle> ANGLE = Field.optional(
            "pressureAngle",
            "Pressure angle",
            Kinds.where(
                    Kinds.ANGLE,
                    angle -> angle.degrees() >= 10 && angle.degrees() <= 30,
                    "is not the pressure angle of a spur wheel, from 10° to 30°"),
            "20 for wheels of today, 14.5 for most old inch wheels; left out, 20");
    private static final Field<Proportions> PROPORTIONS = Field.optional(
            "proportions",
            "Tooth proportions",
            Kinds.choice(
                    "tooth proportions",
                    Map.of("full", Proportions.FULL, "stub", Proportions.STUB, "fine", Proportions.FINE)),
            "full",
            "full; stub (0.8 high); fine (20 DP and finer to the fine-pitch rule)");
    private static final Field<Ratio> SHIFT = Field.optional(
            "shift",
            "Profile shift, over the module",
            Kinds.where(
                    Kinds.NUMBER,
                    shift -> Math.abs(shift.value()) <= MOST_SHIFT,
                    "is more than teeth are shifted: from -1 to 1"),
            "0",
            "0.4 when the cutter was drawn out to save a small pinion from undercut");
    private static final Field<Integer> OVER =
            Field.optional("spanTeeth", "Teeth to span", Kinds.count(1, MOST), "4; left out, the best number");
    private static final Field<Length> PINS =
            Field.optional("pin", "Measuring pins", Kinds.WORK_SIZE, "0.1728 in; left out, 1.728 × the module");
    private static final Field<Integer> MATE =
            Field.optional("mate", "Teeth of the wheel it runs with", Kinds.count(FEWEST, MOST), "60");
    private static final Field<Boolean> MATE_INSIDE =
            Field.optional("mateInside", "Whether that wheel has its teeth inside", Kinds.YES_NO, "no", "yes or no");

    @Override
    public String name() {
        return "gear";
    }

    @Override
    public String title() {
        return "Spur wheel";
    }

    @Override
    public String purpose() {
        return "Gives the blank, the depth, the cutter and the measurements of a spur wheel with involute teeth.";
    }

    @Override
    public List<Field<?>> fields() {
        return List.of(
                TEETH,
                ToothPitch.DIAMETRAL,
                ToothPitch.MODULE,
                ToothPitch.CIRCULAR,
                ANGLE,
                PROPORTIONS,
                SHIFT,
                OVER,
                PINS,
                MATE,
                MATE_INSIDE,
                ToothStrength.FACE,
                ToothStrength.LOAD,
                ToothStrength.RPM);
    }

    @Override
    public List<Result> results() {
        var sizes = List.of(
                Result.always("pitchDiameter", "Pitch diameter"),
                Result.always("outside", "Outside diameter"),
                Result.always("root", "Root diameter"),
                Result.always("base", "Base circle"),
                Result.always("addendum", "Addendum"),
                Result.always("dedendum", "Dedendum"),
                Result.always("toothDepth", "Depth to cut"),
                Result.always("circularPitch", "Circular pitch").shownFine(),
                Result.always("circularThickness", "Tooth thickness along the pitch circle")
                        .shownFine(),
                Result.always("module", "Module"),
                Result.always("diametralPitch", "Diametral pitch"),
                Result.sometimes("span", "Span over teeth").shownFine(),
                Result.sometimes("cutter", "Cutter number, 8 for the fewest teeth"),
                Result.sometimes("cutterOtherWay", "The same cutter, where 1 is for the fewest teeth"),
                Result.always("chordal", "Chordal thickness and height").shownFine(),
                Result.sometimes("overPins", "Over two pins").shownFine(),
                Result.always("constantChord", "Constant chord and its depth below the tip")
                        .shownFine(),
                Result.sometimes("centres", "Centre distance"));
        return Stream.concat(sizes.stream(), ToothStrength.RESULTS.stream()).toList();
    }

    @Override
    public List<Example> examples() {
        return List.of(
                new Example(
                        "a 10 DP change wheel", Map.of("teeth", "30", "diametralPitch", "10", "pressureAngle", "14.5")),
                new Example(
                        "module 3, drawn out", Map.of("teeth", "24", "module", "3", "shift", "0.4", "spanTeeth", "4")),
                new Example(
                        "the strength of its teeth",
                        Map.of("teeth", "18", "module", "3", "face", "30 mm", "load", "1500 N", "rpm", "200")),
                new Example(
                        "by circular pitch, with its mate",
                        Map.of("teeth", "25", "circularPitch", "1/2 in", "mate", "40")));
    }

    @Override
    public Answer work(Asked asked, Working working) {
        Spur spur = spur(asked, working);
        var write = new GearWorking(spur, asked.unit(), working);
        write.blank();
        write.chordal();
        write.constantChord();
        Answer answer = sizes(spur);
        span(spur, asked, write, answer);
        cutter(spur, working, answer);
        pins(spur, asked, write, answer);
        new ToothStrength(spur, asked, working).add(answer);
        asked.find(MATE).ifPresent(mate -> centres(spur, mate, asked, working, answer));
        warn(spur, asked, working);
        return answer;
    }

    private static Spur spur(Asked asked, Working working) {
        Angle angle = asked.find(ANGLE).orElseGet(() -> usualAngle(working));
        ToothSystem system = ToothSystem.of(asked.get(PROPORTIONS), angle);
        var spur = new Spur(
                asked.get(TEETH),
                ToothPitch.module(asked, working),
                angle,
                system,
                asked.get(SHIFT).value());
        if (spur.addendum() <= 0 || spur.dedendum() <= 0 || spur.root() <= 0) {
            throw Refusal.of(SHIFT, "so much shift leaves no tooth or no wheel: give less.");
        }
        return spur;
    }

    private static Angle usualAngle(Working working) {
        working.fact(
                "No pressure angle is given, so that of wheels of today is taken",
                Math.round(USUAL_ANGLE.degrees()) + "°",
                Source.COMMON_PRACTICE);
        return USUAL_ANGLE;
    }

    private static Answer sizes(Spur spur) {
        return new Answer()
                .with("pitchDiameter", mm(spur.pitchDiameter()))
                .with("outside", mm(spur.outside()))
                .with("root", mm(spur.root()))
                .with("base", mm(spur.base()))
                .with("addendum", mm(spur.addendum()))
                .with("dedendum", mm(spur.dedendum()))
                .with("toothDepth", mm(spur.addendum() + spur.dedendum()))
                .with("circularPitch", mm(spur.circularPitch()))
                .with("circularThickness", mm(spur.circularThickness()))
                .with("module", Figure.of(spur.module()))
                .with("diametralPitch", Figure.of(ToothPitch.INCH / spur.module()))
                .with(
                        "chordal",
                        new Answer()
                                .with("thickness", mm(spur.chordalThickness()))
                                .with("height", mm(spur.chordalHeight()))
                                .asGroup())
                .with(
                        "constantChord",
                        new Answer()
                                .with("thickness", mm(spur.constantChord()))
                                .with("height", mm(spur.constantChordHeight()))
                                .asGroup());
    }

    private static Figure mm(double millimetres) {
        return Figure.of(Length.mm(millimetres));
    }

    private static void span(Spur spur, Asked asked, GearWorking write, Answer answer) {
        int over = asked.find(OVER).orElseGet(spur::bestOver);
        if (!spur.spans(over)) {
            if (asked.has(OVER)) {
                throw Refusal.of(
                        OVER,
                        "over " + over + " teeth the jaws would miss the flanks: over " + spur.bestOver()
                                + " is best here.");
            }
            return;
        }
        write.span(over);
        answer.with(
                "span",
                new Answer()
                        .with("teeth", Figure.of((long) over))
                        .with("size", mm(spur.span(over)))
                        .asGroup());
    }

    private static void cutter(Spur spur, Working working, Answer answer) {
        Cutters.number(spur.teeth())
                .ifPresentOrElse(
                        number -> {
                            working.fact("Cutter of the set of eight", "number " + number, Cutters.source());
                            answer.with("cutter", Figure.of((long) number));
                            answer.with("cutterOtherWay", Figure.of((long) Cutters.otherWay(number)));
                        },
                        () -> working.caution(
                                "No cutter of the set is for fewer than 12 teeth: generate the teeth or make a cutter."));
    }

    private static void pins(Spur spur, Asked asked, GearWorking write, Answer answer) {
        double pin = asked.find(PINS).map(Length::mm).orElse(PIN * spur.module());
        if (!spur.takes(pin)) {
            if (asked.has(PINS)) {
                throw Refusal.of(
                        PINS,
                        "pins of this size do not rest on the flanks: about "
                                + LengthText.in(Length.mm(PIN * spur.module()), asked.unit()) + " would.");
            }
            return;
        }
        write.pins(pin);
        answer.with(
                "overPins",
                new Answer()
                        .with("pin", mm(pin))
                        .with("size", mm(spur.overPins(pin)))
                        .asGroup());
    }

    private static void centres(Spur spur, int mate, Asked asked, Working working, Answer answer) {
        if (spur.shift() != 0) {
            throw Refusal.of(
                    MATE, "with shifted teeth the centre distance also hangs on the mate's shift: leave it out.");
        }
        boolean inside = asked.get(MATE_INSIDE);
        if (inside && mate <= spur.teeth()) {
            throw Refusal.of(MATE, "a wheel with its teeth inside has more of them than the pinion in it.");
        }
        Length centres = Length.mm(spur.module() * (inside ? mate - spur.teeth() : mate + spur.teeth()) / 2);
        working.step(
                inside ? "Centre distance in the wheel about it" : "Centre distance",
                inside ? "m (z2 − z1) / 2" : "m (z2 + z1) / 2",
                Figures.atMost(4, spur.module()) + " × (" + mate + (inside ? " − " : " + ") + spur.teeth() + ") / 2",
                LengthText.both(centres, asked.unit()),
                Source.GEOMETRY);
        answer.with("centres", Figure.of(centres));
    }

    private static void warn(Spur spur, Asked asked, Working working) {
        working.caution("These sizes leave no backlash: cut a little deeper, by what the drawing or the mate asks.");
        if (spur.teeth() < spur.fewestWithoutUndercut()) {
            working.caution("So few teeth are undercut at the root by a rack or hob, and weaker for it.");
        }
        if (asked.has(ToothPitch.DIAMETRAL) || !asked.has(ANGLE)) {
            working.caution(
                    "Old inch wheels are mostly 14½°: teeth of 14½° and 20° do not run together. Check the mate.");
        }
    }
}
