package chargehand.method.setting;

import chargehand.measure.Length;
import chargehand.measure.LengthText;
import chargehand.measure.SpindleSpeed;
import chargehand.method.holding.ByRule;
import chargehand.method.kit.HoleTools;
import chargehand.method.kit.Lathe;
import chargehand.method.kit.LatheTool;
import chargehand.method.plan.Cut;
import chargehand.method.plan.Settings;
import chargehand.method.task.Bores;
import chargehand.method.work.Standing;
import chargehand.part.Bore;
import chargehand.part.Depth;
import chargehand.part.Edge;
import chargehand.part.End;
import chargehand.part.Size;
import chargehand.trade.drill.Drill;
import chargehand.trade.sum.Working;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Writes the operations along the axis on one lathe: centre, drill, bore, ream, cone and tap, in the order the trade keeps. */
final class InsideWork {
    private static final Length PILOT_ROOM = Length.mm(1);
    private static final Length REAMING_ROOM = Length.mm(0.25);
    private static final Length STEP_DRILLING_FROM = Length.mm(13);
    private static final double PECK_FROM_DIAMETERS = 3;
    private static final Length BORE_FINISH = Length.mm(0.3);
    /** Length of a 118° point over its drill's diameter: 1 / (2 tan 59°). */
    private static final double POINT_OF_DIAMETER = 1 / (2 * Math.tan(Math.toRadians(59)));

    private static final Length DEEPEST_BORING = Length.mm(1);

    private final Making making;
    private final Lathe lathe;
    private final HoleTools tools;
    private final Gauges gauges;
    private final Standing work;

    InsideWork(Making making, Lathe lathe, Standing work) {
        this.making = making;
        this.work = work;
        this.lathe = lathe;
        this.tools = making.kit().tooling().holeTools();
        this.gauges = new Gauges(making.kit().tooling());
    }

    private String size(Length length) {
        return LengthText.both(length, lathe.unit());
    }

    /**
     * A centre hole, to start a drill or to carry a centre.
     *
     * @param hole the diameter beyond which its mouth must not go: that of the hole it starts, or of the work
     */
    Draft centre(End end, Length workDiameter, Length hole) {
        Length most = workDiameter.times(0.4);
        HoleTools.CentreDrill drill = tools.centreDrills().reversed().stream()
                .filter(each -> !each.body().isMoreThan(most) && !mouth(each).isMoreThan(hole))
                .findFirst()
                .orElseGet(() -> tools.centreDrills().getFirst());
        Length mouth = Length.least(mouth(drill), hole);
        var draft = new Draft(
                "Centre end " + end,
                new Cut.CentreHole(end, mouth),
                "centre drill " + drill.designation(),
                lathe.unit());
        speed(draft, mouth, CutKind.CENTRING);
        return draft.takes(OperationTimes.HAND_FEED_MINUTES);
    }

    private static Length mouth(HoleTools.CentreDrill drill) {
        return drill.pilot().plus(drill.body()).half();
    }

    /** All that one bore asks for, beyond a hole already there. */
    List<Draft> bore(Bore bore, End end, Optional<Length> hole) {
        var drafts = new ArrayList<Draft>();
        Length length = making.body().length();
        Length bottom = bottomFrom(bore, end, length);
        switch (bore) {
            case Bore.Drilled drilled ->
                drillTo(drafts, end, bottom, drilled.diameter().length(), hole);
            case Bore.Bored bored -> boreTo(drafts, new Boring(end, bottom, bored.diameter(), bored.name()), hole);
            case Bore.Counterbored counterbored ->
                boreTo(drafts, new Boring(end, bottom, counterbored.diameter(), counterbored.name()), hole);
            case Bore.Reamed reamed -> ream(drafts, end, bottom, reamed, hole);
            case Bore.Tapped tapped -> tap(drafts, end, bottom, tapped, hole);
            case Bore.Coned coned -> cone(drafts, end, coned);
        }
        return drafts;
    }

    private Length bottomFrom(Bore bore, End end, Length length) {
        return switch (bore.depth()) {
            case Depth.Through through -> farSide(end.other());
            case Depth.Blind blind -> Bores.bottom(bore, length);
        };
    }

    /** Where a through hole comes out: the face as it stands there, or past the slot in which the work will be parted. */
    private Length farSide(End far) {
        return work.slot()
                .filter(slot -> work.isOnBar() && slot.bar() == far)
                .map(Standing.Slot::barSide)
                .orElse(work.face(far));
    }

    private boolean isThrough(End end, Length bottom) {
        Length far = end == End.A ? making.body().length() : Length.ZERO;
        return !end.other().distance(far, bottom).isNegative();
    }

    private void drillTo(List<Draft> drafts, End end, Length bottom, Length diameter, Optional<Length> hole) {
        boolean inSteps = diameter.isMoreThan(STEP_DRILLING_FROM) && hole.isEmpty();
        if (inSteps) {
            tools.drillNotAbove(diameter.half())
                    .ifPresent(pilot -> drafts.add(drill(end, bottom, pilot.diameter(), pilot.designation())));
        }
        String name = tools.drillNotAbove(diameter).map(Drill::designation).orElse(size(diameter));
        drafts.add(drill(end, bottom, diameter, name));
    }

    private Draft drill(End end, Length bottom, Length diameter, String name) {
        Length face = end == End.A ? Length.ZERO : making.body().length();
        Length depth = bottom.minus(face).abs();
        boolean through = isThrough(end, bottom);
        boolean pecks = depth.over(diameter) > PECK_FROM_DIAMETERS;
        String say = "Drill " + name + (through ? " through" : " to " + size(depth) + " full diameter")
                + (pecks
                        ? ", clear the chips every " + LengthText.in(ByRule.up(diameter, lathe.unit()), lathe.unit())
                        : "");
        var draft = new Draft(say, new Cut.DrillAxial(end, diameter, bottom), "drill " + name, lathe.unit());
        SpindleSpeed speed = speed(draft, diameter, CutKind.DRILLING);
        Length feed = Length.mm(Math.min(0.25, 0.02 * diameter.mm()));
        double clearing = pecks ? depth.over(diameter) * 0.15 : 0;
        draft.takes(OperationTimes.HAND_FEED_MINUTES + clearing + OperationTimes.feeding(depth, feed, speed));
        draft.caution("Chips from a drill are sharp and hot: a brush or hook, never fingers.");
        return draft;
    }

    /** Drills to the largest drill that leaves something to bore, where no hole is near enough yet. */
    private Length pilot(List<Draft> drafts, End end, Length bottom, Length under, Optional<Length> hole) {
        Optional<Drill> drill = tools.drillNotAbove(under);
        boolean needed = drill.isPresent()
                && hole.filter(there -> !there.isLessThan(drill.get().diameter()))
                        .isEmpty();
        if (needed
                && hole.filter(there -> under.minus(there).isLessThan(PILOT_ROOM.times(2)))
                        .isEmpty()) {
            drillTo(drafts, end, bottom, drill.get().diameter(), hole);
            return drill.get().diameter();
        }
        return hole.orElse(Length.ZERO);
    }

    /** A bored or counterbored hole: drilled under size, short of a flat bottom by the drill's point, then bored. */
    private void boreTo(List<Draft> drafts, Boring boring, Optional<Length> hole) {
        Length diameter = boring.size().length();
        Length under = diameter.minus(PILOT_ROOM);
        boolean through = isThrough(boring.end(), boring.bottom());
        Length shortOf = through ? boring.bottom() : boring.end().from(boring.bottom(), under.times(POINT_OF_DIAMETER));
        Length face = boring.end() == End.A ? Length.ZERO : making.body().length();
        boolean shallow = !boring.end().other().distance(face, shortOf).isPositive();
        boolean takesBar = hole.filter(
                        there -> takesBar(there, boring.bottom().minus(face).abs()))
                .isPresent();
        if (hole.isPresent() && takesBar && shallow) {
            drafts.add(boring(boring, hole.get()));
            return;
        }
        Length pilot = hole.isPresent() && !takesBar
                ? drilledOut(drafts, boring.end(), shortOf, under)
                : pilot(drafts, boring.end(), shortOf, under, hole);
        drafts.add(boring(boring, pilot));
    }

    /** Whether a hole lets a bar in that reaches so deep. */
    private boolean takesBar(Length hole, Length depth) {
        return BoringBars.pick(making.kit().tooling(), hole, depth).isPresent();
    }

    private Length drilledOut(List<Draft> drafts, End end, Length bottom, Length under) {
        Length diameter = tools.drillNotAbove(under).map(Drill::diameter).orElse(under);
        drillTo(drafts, end, bottom, diameter, Optional.of(diameter));
        return diameter;
    }

    private record Boring(End end, Length bottom, Size size, String name) {}

    private Draft boring(Boring boring, Length start) {
        Length diameter = boring.size().length();
        Length face = boring.end() == End.A ? Length.ZERO : making.body().length();
        Length depth = boring.bottom().minus(face).abs();
        String tool = BoringBars.pick(making.kit().tooling(), start, depth)
                .map(LatheTool.BoringBar::name)
                .orElse("boring bar");
        String say = "Bore to Ø " + size(diameter) + " for " + size(depth);
        var draft = new Draft(say, new Cut.BoreTo(boring.end(), diameter, boring.bottom()), tool, lathe.unit());
        SpindleSpeed speed = speed(draft, diameter, CutKind.BORING);
        Working working = draft.working();
        Optional<Length> feed = Feeding.pick(lathe.feeds().along(), Feeding.FINE, lathe.unit(), working);
        feed.ifPresent(each -> draft.feed(Feeding.perTurn(each)));
        List<Settings.Pass> passes = CutDepth.passes(lathe, start, diameter, DEEPEST_BORING, working);
        draft.passes(passes);
        draft.takes(passes.size()
                * (OperationTimes.PASS_MINUTES + OperationTimes.feeding(depth, feed.orElse(Feeding.BY_HAND), speed)));
        draft.reading(gauges.inside("Ø of " + boring.name(), making.limits(boring.size())));
        if (!making.limits(boring.size()).tolerance().isMoreThan(Length.mm(0.06))) {
            draft.hold();
        }
        return draft;
    }

    private void ream(List<Draft> drafts, End end, Length bottom, Bore.Reamed bore, Optional<Length> hole) {
        Length diameter = bore.diameter().length();
        Length pilot = pilot(drafts, end, bottom, diameter.minus(REAMING_ROOM), hole);
        if (diameter.minus(pilot).isMoreThan(BORE_FINISH.times(3))) {
            throw new IllegalStateException("no drill near enough under " + diameter + " to ream");
        }
        String name = tools.reamers().stream()
                .filter(reamer -> reamer.diameter().equals(diameter))
                .map(HoleTools.Reamer::designation)
                .findFirst()
                .orElse(size(diameter));
        var draft = new Draft("Ream " + name, new Cut.ReamTo(end, diameter, bottom), "reamer " + name, lathe.unit());
        SpindleSpeed speed = speed(draft, diameter, CutKind.REAMING);
        Length face = end == End.A ? Length.ZERO : making.body().length();
        draft.takes(OperationTimes.HAND_FEED_MINUTES
                + OperationTimes.feeding(bottom.minus(face).abs(), Length.mm(0.2), speed));
        draft.caution("Never turn a reamer backwards; draw it out still turning forwards.");
        draft.reading(gauges.inside("Ø of " + bore.name(), making.limits(bore.diameter())));
        drafts.add(draft);
    }

    private void tap(List<Draft> drafts, End end, Length bottom, Bore.Tapped bore, Optional<Length> hole) {
        Length size = bore.thread().minorInternal();
        Length room = Bores.isThrough(bore)
                ? bottom
                : end.other().from(bottom, bore.thread().pitch().length().times(3));
        if (hole.filter(there -> !there.isLessThan(size)).isEmpty()) {
            drafts.add(drill(end, room, size, TappingDrills.name(tools, bore.thread())));
        }
        var cut = new Cut.ThreadInside(bore.thread(), end, bottom, Cut.ThreadWay.TAP_FROM_TAILSTOCK);
        String thread = bore.thread().designation();
        var draft = new Draft("Tap " + thread, cut, "tap " + thread, lathe.unit());
        speed(draft, bore.thread().major(), CutKind.TAPPING);
        draft.coolant(Coolant.forThread(making.material()));
        draft.takes(2);
        drafts.add(draft);
    }

    private void cone(List<Draft> drafts, End end, Bore.Coned bore) {
        Length face = end == End.A ? Length.ZERO : making.body().length();
        String angle = String.format(Locale.ROOT, "%.0f°", bore.angle().degrees());
        var cut = new Cut.ConeInside(
                end, face, bore.mouth().length(), bore.angle(), bore.to().length());
        boolean countersink = tools.countersinks().stream()
                .anyMatch(tool -> Math.abs(tool.angle().degrees() - bore.angle().degrees()) < 0.5
                        && !tool.largest().isLessThan(bore.mouth().length()));
        String tool = countersink ? "countersink " + angle : barFor(bore) + ", top slide at half the angle";
        String say = "Cut the " + angle + " cone to Ø " + size(bore.mouth().length()) + " at the mouth";
        var draft = new Draft(say, cut, tool, lathe.unit());
        if (!countersink) {
            draft.topSlide(bore.angle().half());
        }
        speed(draft, bore.mouth().length(), CutKind.BORING);
        draft.takes(countersink ? OperationTimes.HAND_FEED_MINUTES : 4);
        draft.reading(gauges.inside("Ø of " + bore.name() + " at the mouth", making.limits(bore.mouth())));
        drafts.add(draft);
    }

    /** The bar that enters the narrow end of a cone. */
    private String barFor(Bore.Coned bore) {
        Length narrow = bore.to().length();
        Length depth = bore.mouth()
                .length()
                .minus(narrow)
                .half()
                .times(1 / bore.angle().half().tan());
        return BoringBars.pick(making.kit().tooling(), narrow, depth)
                .map(LatheTool.BoringBar::name)
                .orElse("boring bar");
    }

    /** The edge at the mouth of a bore: at the face, or at the bottom of what opens it out from the same end. */
    Optional<Draft> mouth(Bore bore, End end) {
        Edge edge = Bores.mouth(bore);
        return switch (edge) {
            case Edge.Plain plain -> Optional.empty();
            case Edge.WeldPreparation prepared ->
                throw new IllegalArgumentException("no mouth of a bore is prepared for welding: " + prepared);
            case Edge.Chamfer chamfer -> {
                var form = new Cut.EdgeForm.Chamfer(chamfer.length().length(), chamfer.angle());
                String tool = named(LatheTool.Chamfering.class, "chamfering tool");
                yield Optional.of(
                        edge("Chamfer the mouth " + chamfer.length().text(), mouthCut(bore, end, form), tool));
            }
            case Edge.Radius radius -> {
                var form = new Cut.EdgeForm.Radius(radius.radius().length());
                String tool = named(LatheTool.RoundNose.class, "form tool");
                yield Optional.of(edge("Round the mouth " + radius.radius().text(), mouthCut(bore, end, form), tool));
            }
        };
    }

    private Cut.FinishEdge mouthCut(Bore bore, End end, Cut.EdgeForm form) {
        Length at =
                end.other().from(end == End.A ? Length.ZERO : making.body().length(), Bores.opens(bore, making.body()));
        return new Cut.FinishEdge(at, Bores.diameter(bore), end.other(), true, form);
    }

    private Draft edge(String say, Cut.FinishEdge cut, String tool) {
        var draft = new Draft(say, cut, tool, lathe.unit());
        speed(draft, cut.diameter(), CutKind.CHAMFERING);
        return draft.takes(OperationTimes.HAND_FEED_MINUTES);
    }

    private String named(Class<? extends LatheTool> kind, String otherwise) {
        return making.kit().tooling().latheTools(kind).stream()
                .map(LatheTool::name)
                .findFirst()
                .orElse(otherwise);
    }

    private SpindleSpeed speed(Draft draft, Length diameter, CutKind kind) {
        SpindleSpeed speed = Spindle.pick(lathe.speeds(), diameter, kind, making.material(), draft.working());
        draft.speed(speed);
        draft.coolant(Coolant.forCut(making.material()));
        return speed;
    }
}
