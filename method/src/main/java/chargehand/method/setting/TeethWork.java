package chargehand.method.setting;

import chargehand.measure.AngleText;
import chargehand.measure.Length;
import chargehand.measure.LengthText;
import chargehand.measure.Limits;
import chargehand.measure.SpindleSpeed;
import chargehand.method.kit.DividingHead;
import chargehand.method.kit.Mill;
import chargehand.method.kit.MillCutter;
import chargehand.method.plan.Cut;
import chargehand.method.plan.Reading;
import chargehand.method.plan.Settings;
import chargehand.part.Section;
import chargehand.trade.sum.Source;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Writes the operation that cuts the teeth of a wheel with a form cutter, space by space round the dividing head. */
final class TeethWork {
    /** What the last time round takes off the depth (common practice). */
    private static final Length LAST = Length.mm(0.25);

    /** The deepest that a form cutter goes at once on a light mill (common practice). */
    private static final Length DEEPEST = Length.mm(2.5);

    /** How far the cutter goes on past where it cuts full depth. */
    private static final Length CLEAR = Length.mm(2);

    private static final double FEED_PER_TOOTH_MM = 0.03;

    /** How much thinner than full a tooth may come out, over its module, for the play it needs (common practice). */
    private static final double PLAY = 0.1;

    private final Making making;
    private final Mill mill;
    private final Divisions divisions;

    TeethWork(Making making, Mill mill, Divisions divisions) {
        this.making = making;
        this.mill = mill;
        this.divisions = divisions;
    }

    Draft cut(Section.Toothed wheel, Length start) {
        MillCutter.GearCutter cutter =
                GearCutters.pick(making.kit().tooling(), wheel).orElseThrow();
        Length depth = wheel.outside().length().minus(wheel.root()).half();
        var cut =
                new Cut.CutTeeth(wheel.teeth(), wheel.pitchDiameter(), wheel.root(), start, start.plus(wheel.length()));
        String say = "Cut " + wheel.teeth() + " teeth, " + LengthText.both(depth, mill.unit())
                + " deep; first touch a light mark all round and count " + wheel.teeth();
        var draft = new Draft(say, cut, cutter.name(), mill.unit());
        workings(draft, wheel, cutter, depth);
        SpindleSpeed speed = Spindle.pick(
                mill.speeds(), cutter.diameter(), CutKind.FORM_MILLING, making.material(), draft.working());
        draft.speed(speed);
        draft.coolant(Coolant.forCut(making.material()));
        List<Settings.Pass> passes = passes(wheel, depth);
        draft.passes(passes);
        Length wanted = Length.mm(FEED_PER_TOOTH_MM * cutter.teeth() * speed.rpm());
        Optional<Length> listed = mill.feeds().notAbove(wanted);
        listed.ifPresent(feed -> draft.feed(new Settings.Feed.PerMinute(feed)));
        Length travel = wheel.length().plus(approach(cutter.diameter(), depth)).plus(CLEAR);
        double space = travel.over(listed.orElse(wanted)) + OperationTimes.INDEX_MINUTES;
        draft.takes(wheel.teeth() * (OperationTimes.INDEX_MINUTES + passes.size() * space));
        draft.reading(over(wheel, draft));
        draft.hold();
        cautions(draft);
        return draft;
    }

    /** How far the cutter's rim stands ahead of its axis at the depth of the spaces. */
    private static Length approach(Length diameter, Length depth) {
        return Length.mm(Math.sqrt(depth.mm() * (diameter.mm() - depth.mm())));
    }

    private void workings(Draft draft, Section.Toothed wheel, MillCutter.GearCutter cutter, Length depth) {
        draft.working()
                .step(
                        "Depth of the spaces, from the blank as turned",
                        "h = (Da − Df) / 2",
                        String.format(
                                Locale.ROOT,
                                "(%.3f − %.3f) / 2",
                                wheel.outside().length().mm(),
                                wheel.root().mm()),
                        LengthText.both(depth, mill.unit()),
                        Source.GEOMETRY);
        draft.working()
                .fact("Cutter for " + wheel.teeth() + " teeth", "number " + cutter.number(), Source.COMMON_PRACTICE);
        DividingHead head = mill.dividingHead().orElseThrow();
        Indexings.plain(head, wheel.teeth(), draft.working());
        Settings.Indexing indexing = divisions.find(head, wheel.teeth()).orElseThrow();
        draft.indexing(indexing);
        indexing.geared().ifPresent(gears -> geared(draft, head, indexing, gears));
    }

    private static void geared(Draft draft, DividingHead head, Settings.Indexing set, Settings.Geared gears) {
        draft.working()
                .step(
                        "Turns the plate must make for one of the work, the crank alone not coming out even",
                        "r = worm − N × (turns + holes / circle)",
                        String.format(
                                Locale.ROOT,
                                "%d − %d × (%d + %d / %d)",
                                head.worm(),
                                set.divisions(),
                                set.turns(),
                                set.holes(),
                                set.circle()),
                        gears.says(),
                        Source.GEOMETRY);
        draft.caution(
                "Draw the pin that locks the plate, or the geared head will not turn; the plate must be free to move.");
    }

    private List<Settings.Pass> passes(Section.Toothed wheel, Length depth) {
        Length rough = depth.minus(LAST);
        int cuts = (int) Math.max(1, Math.ceil(rough.over(DEEPEST)));
        Length outside = wheel.outside().length();
        var passes = new ArrayList<Settings.Pass>();
        for (int i = 1; i <= cuts; i++) {
            Length dial = mill.dials().across().nearest(rough.times((double) i / cuts));
            passes.add(new Settings.Pass(i, dial, outside.minus(dial.times(2))));
        }
        passes.add(new Settings.Pass(cuts + 1, mill.dials().across().nearest(depth), wheel.root()));
        return passes;
    }

    /** The size over as many teeth as a flat anvil bears on at the pitch circle, less the play that teeth need. */
    private Reading over(Section.Toothed wheel, Draft draft) {
        double angle = Math.toRadians(wheel.pressureAngle().degrees());
        double module = wheel.size().module();
        int teeth = (int) Math.max(2, Math.round(wheel.teeth() * angle / Math.PI + 0.5));
        double full = module * Math.cos(angle) * ((teeth - 0.5) * Math.PI + wheel.teeth() * (Math.tan(angle) - angle));
        draft.working()
                .step(
                        "Size over " + teeth + " teeth",
                        "W = m cos α ((k − ½) π + z (tan α − α))",
                        String.format(
                                Locale.ROOT,
                                "m = %.4f mm, α = %s, z = %d, k = %d",
                                module,
                                AngleText.degrees(wheel.pressureAngle(), 2),
                                wheel.teeth(),
                                teeth),
                        LengthText.both(Length.mm(full), mill.unit()),
                        Source.GEOMETRY);
        var limits = new Limits(Length.mm(full - PLAY * module), Length.mm(full));
        return new Gauges(making.kit().tooling()).outside("over " + teeth + " teeth of " + wheel.name(), limits);
    }

    private static void cautions(Draft draft) {
        draft.caution(
                "Set the cutter's middle to the height of the centres before the first space; lock the head for each cut.");
        draft.caution(
                "Take up the crank always the same way and move the sector arms after each space; a hole missed spoils the"
                        + " wheel.");
        draft.caution("Guard on; brush chips only with the cutter stopped.");
    }
}
