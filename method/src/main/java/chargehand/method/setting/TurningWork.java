package chargehand.method.setting;

import chargehand.measure.Angle;
import chargehand.measure.Length;
import chargehand.measure.LengthText;
import chargehand.measure.Limits;
import chargehand.measure.SpindleSpeed;
import chargehand.method.kit.Lathe;
import chargehand.method.kit.LatheTool;
import chargehand.method.plan.Cut;
import chargehand.method.plan.Settings;
import chargehand.part.Edge;
import chargehand.part.End;
import chargehand.part.Section;
import chargehand.trade.sum.Source;
import chargehand.trade.sum.Working;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Writes the operations that face, turn, groove, chamfer and part off on one lathe. */
final class TurningWork {
    /** A size at least this fine is finished on its own, read, and passed before going on. */
    private static final Length FINE = Length.mm(0.06);

    private static final double CHAMFER_NEAR_DEGREES = 0.5;

    private final Making making;
    private final Lathe lathe;
    private final Gauges gauges;

    TurningWork(Making making, Lathe lathe) {
        this.making = making;
        this.lathe = lathe;
        this.gauges = new Gauges(making.kit().tooling());
    }

    private String size(Length length) {
        return LengthText.both(length, lathe.unit());
    }

    /**
     * Metal to be faced off.
     *
     * @param raw where the work ends
     * @param to where the part ends
     * @param diameter of the work there
     */
    record Facing(Length raw, Length to, Length diameter) {
        Length deep() {
            return raw.minus(to).abs();
        }
    }

    /**
     * Faces an end: from the raw face to where the part ends.
     *
     * @param length the limits of the length over all, where this is the second face
     */
    Draft face(End end, Facing facing, Optional<Limits> length) {
        boolean cleanUp = facing.deep().isLessThan(Length.mm(0.8));
        boolean fine = length.filter(TurningWork::isFine).isPresent();
        String say = "Face end " + end + (cleanUp ? ", clean up only" : ", take off " + size(facing.deep()))
                + (fine ? "; saddle locked, the last cuts put on with the top slide" : "");
        var draft = new Draft(say, new Cut.FaceEnd(end, facing.to()), knife(LatheTool.Hand.RIGHT), lathe.unit());
        SpindleSpeed speed = speed(draft, facing.diameter(), CutKind.FACING);
        Optional<Length> feed = Feeding.pick(lathe.feeds().across(), Feeding.FINE, lathe.unit(), draft.working());
        feed.ifPresent(each -> draft.feed(Feeding.perTurn(each)));
        int cuts = (int) Math.max(1, Math.ceil(facing.deep().mm() / 1.0)) + (fine ? 1 : 0);
        draft.takes(cuts
                * (OperationTimes.PASS_MINUTES
                        + OperationTimes.feeding(facing.diameter().half(), feed.orElse(Feeding.BY_HAND), speed)));
        length.ifPresent(limits -> draft.reading(gauges.outside("length over all", limits)));
        return fine ? draft.hold() : draft;
    }

    /** Whether limits ask for a cut of their own, read and passed. */
    private static boolean isFine(Limits limits) {
        return !limits.tolerance().isMoreThan(FINE);
    }

    /**
     * Turns a stretch to size in roughing passes and a finishing one.
     *
     * @param hand of the knife: a left-hand one feeds away from the headstock
     */
    Draft turn(OutsideCuts.Turning turning, LatheTool.Hand hand) {
        Section section = making.body().outside().get(turning.section());
        String say = "Turn to Ø " + size(turning.finish()) + " for " + size(turning.length())
                + (hand == LatheTool.Hand.LEFT ? ", feeding away from the headstock" : "");
        var cut = new Cut.TurnDiameter(turning.from(), turning.to(), turning.finish());
        var draft = new Draft(say, cut, knife(hand), lathe.unit());
        cutAlong(draft, turning.start(), turning.finish(), turning.length());
        limits(section).ifPresent(limits -> read(draft, section, limits));
        return draft;
    }

    /** Whether the drawing's limits on a section's diameter ask for a cut of its own, read and passed. */
    boolean isFine(Section section) {
        return limits(section).filter(TurningWork::isFine).isPresent();
    }

    private void read(Draft draft, Section section, Limits limits) {
        draft.reading(gauges.outside("Ø of " + section.name(), limits));
        if (isFine(limits)) {
            draft.hold();
        }
    }

    private Optional<Limits> limits(Section section) {
        return switch (section) {
            case Section.Round round -> Optional.of(making.limits(round.diameter()));
            case Section.Groove groove -> Optional.of(making.limits(groove.diameter()));
            case Section.Threaded threaded -> Optional.of(beforeThread(threaded));
            case Section.Cone cone -> Optional.empty();
            case Section.Polygon polygon -> Optional.empty();
            case Section.Toothed toothed -> Optional.of(making.limits(toothed.outside()));
            case Section.Knurled knurled -> Optional.empty();
            case Section.Curved curved -> Optional.empty();
        };
    }

    /** The blank of a thread: never over the major diameter, and a little under does no harm. */
    private static Limits beforeThread(Section.Threaded threaded) {
        Length major = threaded.thread().major();
        return new Limits(major.minus(threaded.thread().pitch().length().times(0.06)), major);
    }

    private void cutAlong(Draft draft, Length start, Length finish, Length length) {
        Working working = draft.working();
        SpindleSpeed speed = speed(draft, start, CutKind.ROUGHING);
        Optional<Length> feed = Feeding.pick(lathe.feeds().along(), Feeding.ROUGH, lathe.unit(), working);
        feed.ifPresent(each -> draft.feed(Feeding.perTurn(each)));
        Length perTurn = feed.orElse(Feeding.BY_HAND);
        double metres = Math.PI * start.mm() * speed.rpm() / 1000;
        Length deepest = CutDepth.deepest(lathe, making.material(), metres, perTurn, working);
        List<Settings.Pass> passes = CutDepth.passes(lathe, start, finish, deepest, working);
        draft.passes(passes);
        draft.takes(passes.size() * (OperationTimes.PASS_MINUTES + OperationTimes.feeding(length, perTurn, speed)));
    }

    /** Turns a cone with the top slide, from the cylinder already there. */
    Draft taper(Section.Cone cone, Length start, Length end) {
        Length a = cone.towardsA().length();
        Length b = cone.towardsB().length();
        Angle half = Angle.arctan(a.minus(b).abs().half().over(cone.length()));
        String say = "Turn the taper Ø " + size(Length.most(a, b)) + " to Ø " + size(Length.least(a, b)) + " over "
                + size(cone.length()) + ", top slide at " + String.format(Locale.ROOT, "%.2f°", half.degrees());
        var cut = new Cut.TurnTaper(start, end, a, b, Cut.TaperWay.TOP_SLIDE);
        var draft = new Draft(say, cut, knife(LatheTool.Hand.RIGHT), lathe.unit()).topSlide(half);
        draft.working()
                .step(
                        "Half angle of the taper, which the top slide is set to",
                        "tan(α/2) = (D − d) / (2 l)",
                        String.format(
                                Locale.ROOT,
                                "(%.3f − %.3f) / (2 × %.3f)",
                                Math.max(a.mm(), b.mm()),
                                Math.min(a.mm(), b.mm()),
                                cone.length().mm()),
                        String.format(Locale.ROOT, "%.3f°", half.degrees()),
                        Source.GEOMETRY);
        SpindleSpeed speed = speed(draft, Length.most(a, b), CutKind.ROUGHING);
        int cuts = (int) Math.max(2, Math.ceil(a.minus(b).abs().mm() / 2));
        draft.takes(2
                + cuts * (OperationTimes.PASS_MINUTES + OperationTimes.feeding(cone.length(), Feeding.BY_HAND, speed)));
        draft.reading(gauges.outside(
                "Ø at the small end of " + cone.name(),
                making.limits(a.isLessThan(b) ? cone.towardsA() : cone.towardsB())));
        return draft;
    }

    /**
     * What a groove is cut from.
     *
     * @param touched the diameter on which its tool is touched
     * @param surface the diameter over the groove itself
     */
    record Ground(Length touched, Length surface) {}

    /** Cuts a groove. */
    Draft groove(Section.Groove groove, Length start, Ground ground) {
        Length from = ground.touched();
        Length deep = ground.surface().minus(groove.diameter().length()).half();
        String tool = GroovingTools.pick(making.kit().tooling(), groove.length(), deep)
                .orElse("grooving tool");
        Length bottom = groove.diameter().length();
        String say = "Groove " + size(groove.length()) + " wide to Ø " + size(bottom);
        var cut = new Cut.CutGroove(start, start.plus(groove.length()), bottom);
        var draft = new Draft(say, cut, tool, lathe.unit());
        SpindleSpeed speed = speed(draft, from, CutKind.GROOVING);
        Length dial = lathe.slides().cross().nearest(lathe.slides().crossReading(from.minus(bottom)));
        draft.passes(List.of(new Settings.Pass(1, dial, bottom)));
        draft.takes(OperationTimes.HAND_FEED_MINUTES
                + OperationTimes.feeding(from.minus(bottom).abs().half(), Length.mm(0.04), speed));
        draft.reading(gauges.outside("Ø of " + groove.name(), making.limits(groove.diameter())));
        return draft;
    }

    /** Chamfers or rounds a corner. */
    Draft corner(Edge edge, Length at, Length diameter, End side) {
        String say;
        Cut.EdgeForm form;
        switch (edge) {
            case Edge.Chamfer chamfer -> {
                say = "Chamfer " + chamfer.length().text() + " × "
                        + String.format(Locale.ROOT, "%.0f°", chamfer.angle().degrees()) + " at Ø " + size(diameter);
                form = chamfer(chamfer);
            }
            case Edge.WeldPreparation prepared -> {
                say = "Bevel for welding, " + size(prepared.depth().length()) + " deep, "
                        + String.format(Locale.ROOT, "%.1f°", prepared.angle().degrees()) + " to the face, at Ø "
                        + size(diameter);
                form = chamfer(prepared.chamfer());
            }
            case Edge.Radius radius -> {
                say = "Radius " + radius.radius().text() + " at Ø " + size(diameter);
                form = new Cut.EdgeForm.Radius(radius.radius().length());
            }
            case Edge.Plain plain -> throw new IllegalArgumentException("a plain corner is not cut");
        }
        var cut = new Cut.FinishEdge(at, diameter, side.other(), false, form);
        var draft = new Draft(say, cut, chamferingTool(form), lathe.unit());
        if (form instanceof Cut.EdgeForm.Chamfer chamfer && !isToolsOwn(chamfer)) {
            draft.topSlide(chamfer.angle());
        }
        if (edge instanceof Edge.WeldPreparation) {
            draft.caution("Depth, angle and gap are the welder's: whoever answers for the weld agrees them first.");
        }
        speed(draft, diameter, CutKind.CHAMFERING);
        draft.takes(OperationTimes.HAND_FEED_MINUTES);
        return draft;
    }

    private static Cut.EdgeForm chamfer(Edge.Chamfer chamfer) {
        return new Cut.EdgeForm.Chamfer(chamfer.length().length(), chamfer.angle());
    }

    /** Whether a chamfer is at the 45° to which chamfering tools are ground; any other is cut with the top slide. */
    private static boolean isToolsOwn(Cut.EdgeForm.Chamfer chamfer) {
        return Math.abs(chamfer.angle().degrees() - 45) < CHAMFER_NEAR_DEGREES;
    }

    /** Parts off the finished work, leaving a little to face. */
    Draft partOff(Cut.PartOff cut, Length diameter) {
        LatheTool.Parting tool = PartingTools.pick(making.kit().tooling(), diameter)
                .orElseThrow(() -> new IllegalStateException("no parting tool reaches through " + diameter));
        var draft = new Draft("Part off, leaving a little to face", cut, tool.name(), lathe.unit());
        SpindleSpeed speed = speed(draft, diameter, CutKind.PARTING);
        draft.takes(OperationTimes.HAND_FEED_MINUTES + OperationTimes.feeding(diameter.half(), Length.mm(0.05), speed));
        draft.caution(
                "Parting: keep the overhang short and the tool square and on centre; catch the work, never by hand.");
        draft.coolant("cutting oil, plenty");
        return draft;
    }

    /** Takes the burrs off. */
    Draft deburr() {
        String tool = making.kit().tooling().deburring().stream().findFirst().orElse("smooth file");
        var draft = new Draft("Take off all burrs", new Cut.Deburr(), tool, lathe.unit());
        draft.caution("File left-handed, sleeves up, clear of the chuck; no cloth or gloves near turning work.");
        return draft.takes(OperationTimes.HAND_FEED_MINUTES);
    }

    private SpindleSpeed speed(Draft draft, Length diameter, CutKind kind) {
        SpindleSpeed speed = Spindle.pick(lathe.speeds(), diameter, kind, making.material(), draft.working());
        draft.speed(speed);
        draft.coolant(Coolant.forCut(making.material()));
        return speed;
    }

    private String knife(LatheTool.Hand hand) {
        return making.kit().tooling().latheTools(LatheTool.Knife.class).stream()
                .filter(knife -> knife.hand() == hand)
                .map(LatheTool.Knife::name)
                .findFirst()
                .orElse("knife tool");
    }

    /** The round nose nearest to a radius from below, or the smallest. */
    private String roundNose(Length radius) {
        List<LatheTool.RoundNose> owned = making.kit().tooling().latheTools(LatheTool.RoundNose.class).stream()
                .sorted(Comparator.comparing(LatheTool.RoundNose::radius))
                .toList();
        return owned.reversed().stream()
                .filter(tool -> !tool.radius().isMoreThan(radius))
                .findFirst()
                .or(() -> owned.stream().findFirst())
                .map(LatheTool.RoundNose::name)
                .orElse("form tool");
    }

    private String chamferingTool(Cut.EdgeForm form) {
        if (form instanceof Cut.EdgeForm.Chamfer chamfer && !isToolsOwn(chamfer)) {
            return knife(LatheTool.Hand.RIGHT);
        }
        return form instanceof Cut.EdgeForm.Radius round
                ? roundNose(round.radius())
                : making.kit().tooling().latheTools(LatheTool.Chamfering.class).stream()
                        .map(LatheTool.Chamfering::name)
                        .findFirst()
                        .orElse("knife tool set over");
    }
}
