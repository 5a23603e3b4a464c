package chargehand.method.replay;

import chargehand.measure.Length;
import chargehand.method.kit.LatheTool;
import chargehand.method.kit.Tooling;
import chargehand.method.plan.Cut;
import chargehand.part.End;
import chargehand.trade.thread.ScrewThread;
import java.util.Optional;

/** Whether the tool that an operation names is owned and makes such a cut. */
final class ToolCheck {
    private final Tooling tooling;
    private final TurnedWork work;
    private final String named;

    /**
     * Looks at one operation.
     *
     * @param work before it
     * @param named what the operation calls its tool
     */
    ToolCheck(Tooling tooling, TurnedWork work, String named) {
        this.tooling = tooling;
        this.work = work;
        this.named = named;
    }

    /** Whether it can be. */
    boolean suits(Cut cut) {
        var holes = new HoleToolCheck(tooling, named);
        var mills = new MillToolCheck(tooling, named);
        return switch (cut) {
            case Cut.FaceEnd face -> isTurningTool();
            case Cut.TurnDiameter turn -> isTurningTool();
            case Cut.TurnTaper taper -> isTurningTool();
            case Cut.CutGroove groove -> isGroovingTool(groove);
            case Cut.FinishEdge edge -> isEdgeTool() || (edge.inside() && holes.isCountersink());
            case Cut.PartOff part -> isPartingTool(part);
            case Cut.ThreadOutside thread -> isThreadTool(thread);
            case Cut.ThreadInside thread -> isInsideThreadTool(thread, holes);
            case Cut.CentreHole centre -> holes.isCentreDrill(centre.diameter());
            case Cut.DrillAxial drill -> holes.isDrill(drill.diameter());
            case Cut.DrillAcross drill -> holes.isDrill(drill.diameter());
            case Cut.DrillHole drill -> holes.isDrill(drill.diameter());
            case Cut.BoreTo bore -> isBoringBar(bore);
            case Cut.ReamTo ream -> holes.isReamer(ream.diameter());
            case Cut.ReamHole ream -> holes.isReamer(ream.diameter());
            case Cut.TapHole tap -> holes.isTap(tap.thread());
            case Cut.ConeInside cone -> lathe(LatheTool.BoringBar.class).isPresent() || holes.isCountersink(cone);
            case Cut.SlotInBore slot -> isSlottingBar(slot);
            case Cut.RecessInBore recess -> isInsideGroovingTool(recess);
            case Cut.MillFlats flats -> mills.isMill();
            case Cut.MillFace face -> mills.isMill();
            case Cut.MillKeyway keyway -> mills.isMillFor(keyway.width());
            case Cut.CutTeeth teeth -> mills.isGearCutterFor(teeth);
            case Cut.DrillCircle drill -> holes.isDrill(drill.diameter());
            case Cut.SawOff saw -> true;
            case Cut.Deburr deburr -> true;
        };
    }

    private <T extends LatheTool> Optional<T> lathe(Class<T> kind) {
        return tooling.latheTools(kind).stream()
                .filter(tool -> named.equals(tool.name()) || named.startsWith(tool.name() + ","))
                .findFirst();
    }

    private boolean isTurningTool() {
        return lathe(LatheTool.Knife.class).isPresent()
                || lathe(LatheTool.RoundNose.class).isPresent();
    }

    private boolean isEdgeTool() {
        return isTurningTool()
                || lathe(LatheTool.Chamfering.class).isPresent()
                || lathe(LatheTool.BoringBar.class).isPresent();
    }

    private boolean isGroovingTool(Cut.CutGroove groove) {
        Length wide = groove.to().minus(groove.from());
        Length deep = Span.between(groove.from(), groove.to())
                .map(span -> work.largest(span).minus(groove.diameter()).half())
                .orElse(Length.ZERO);
        return lathe(LatheTool.Grooving.class)
                        .filter(tool -> fits(tool.width(), tool.depth(), wide, deep))
                        .isPresent()
                || lathe(LatheTool.Parting.class)
                        .filter(tool -> fits(tool.width(), tool.depth(), wide, deep))
                        .isPresent();
    }

    private static boolean fits(Length width, Length reach, Length wide, Length deep) {
        return !width.isMoreThan(wide.plus(Deviation.ALLOWED)) && !reach.isLessThan(deep);
    }

    private boolean isSlottingBar(Cut.SlotInBore slot) {
        return lathe(LatheTool.Slotting.class)
                .filter(bar ->
                        !bar.leastBore().isMoreThan(slot.bore()) && bar.widths().contain(slot.width()))
                .filter(bar -> !bar.reach().isLessThan(deep(slot.end(), slot.from(), slot.to())))
                .isPresent();
    }

    private boolean isInsideGroovingTool(Cut.RecessInBore recess) {
        Length hole = new Hollow(work, recess.end()).least(recess.end() == End.A ? recess.to() : recess.from());
        return lathe(LatheTool.InsideGrooving.class)
                .filter(tool -> !tool.leastBore().isMoreThan(hole)
                        && !tool.reach().isLessThan(deep(recess.end(), recess.from(), recess.to())))
                .filter(tool -> fits(
                        tool.width(),
                        tool.depth(),
                        recess.to().minus(recess.from()),
                        recess.diameter().minus(hole).half()))
                .isPresent();
    }

    /** How deep a tool goes in from an end. */
    private Length deep(End end, Length from, Length to) {
        return end.other().distance(work.face(end), end == End.A ? to : from);
    }

    private boolean isPartingTool(Cut.PartOff part) {
        Length deep = Span.between(part.from(), part.to())
                .map(span -> work.largest(span).half())
                .orElse(Length.ZERO);
        return lathe(LatheTool.Parting.class)
                .filter(tool -> fits(tool.width(), tool.depth(), part.to().minus(part.from()), deep))
                .isPresent();
    }

    private boolean isThreadTool(Cut.ThreadOutside cut) {
        return switch (cut.way()) {
            case DIE_FROM_TAILSTOCK -> named.startsWith("die " + cut.thread().designation()) && isDieOwned(cut);
            case SCREW_CUT -> isScrewCutter(LatheTool.Side.OUTSIDE, cut.thread());
            case TAP_FROM_TAILSTOCK, TAP_BY_HAND -> false;
        };
    }

    private boolean isDieOwned(Cut.ThreadOutside cut) {
        return tooling.findDie(cut.thread().designation()).isPresent()
                && tooling.tailstockDieHolder()
                        .filter(largest -> !cut.thread().major().isMoreThan(largest))
                        .isPresent();
    }

    private boolean isInsideThreadTool(Cut.ThreadInside cut, HoleToolCheck holes) {
        return switch (cut.way()) {
            case TAP_FROM_TAILSTOCK, TAP_BY_HAND -> holes.isTap(cut.thread());
            case SCREW_CUT -> isScrewCutter(LatheTool.Side.INSIDE, cut.thread());
            case DIE_FROM_TAILSTOCK -> false;
        };
    }

    private boolean isScrewCutter(LatheTool.Side side, ScrewThread thread) {
        return lathe(LatheTool.ScrewCutter.class)
                .filter(tool -> tool.side() == side)
                .filter(tool -> tool.pitches().contain(thread.pitch().length()))
                .filter(tool -> Math.abs(tool.angle().degrees()
                                - thread.form().includedAngle().degrees())
                        <= HoleToolCheck.FORM_NEAR)
                .isPresent();
    }

    private boolean isBoringBar(Cut.BoreTo bore) {
        Length pilot = new Hollow(work, bore.end()).pilot(bore.to(), bore.diameter());
        Length deep = bore.end().other().distance(work.face(bore.end()), bore.to());
        Length most = Length.least(deep, work.span().length());
        return lathe(LatheTool.BoringBar.class)
                .filter(bar ->
                        !bar.leastBore().isMoreThan(pilot) && !bar.reach().isLessThan(most))
                .isPresent();
    }
}
