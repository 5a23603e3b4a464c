package chargehand.method.setting;

import chargehand.measure.Length;
import chargehand.method.kit.LatheTool;
import chargehand.method.kit.Tooling;
import chargehand.method.task.Bores;
import chargehand.part.Body;
import chargehand.part.Bore;
import chargehand.part.Depth;
import chargehand.part.End;
import chargehand.part.InBore;
import java.util.Comparator;
import java.util.Optional;

/** What cuts into the wall of a bore, and where along the axis. */
public final class InnerTools {
    /** What a tool runs out beyond the bore, so that the chip breaks off. */
    private static final Length RUN_OUT = Length.mm(4);

    private final Tooling tooling;
    private final Body.Turned body;

    public InnerTools(Tooling tooling, Body.Turned body) {
        this.tooling = tooling;
        this.body = body;
    }

    /** A stretch of the axis. */
    public record Stretch(Length from, Length to) {
        Length length() {
            return to.minus(from);
        }
    }

    /** The bore that something is cut into. */
    public Bore bore(InBore inBore) {
        return body.inside().stream()
                .filter(bore -> bore.name().equals(inBore.bore()))
                .findFirst()
                .orElseThrow();
    }

    /** The end from which a tool goes in: that of a blind bore, else any that is open. */
    public boolean isOpen(InBore inBore, End end) {
        Bore bore = bore(inBore);
        return bore.from() == end || Bores.isThrough(bore);
    }

    /** Where it lies along the axis. */
    public Stretch stretch(InBore inBore) {
        return switch (inBore) {
            case InBore.Keyway keyway -> whole(bore(keyway));
            case InBore.OilGroove groove ->
                switch (groove.run()) {
                    case InBore.Run.Open open -> whole(bore(groove));
                    case InBore.Run.Part(var from, var length) ->
                        new Stretch(from.length(), from.length().plus(length.length()));
                };
            case InBore.Recess recess ->
                new Stretch(
                        recess.from().length(),
                        recess.from().length().plus(recess.width().length()));
        };
    }

    private Stretch whole(Bore bore) {
        Length deep = bore.depth() instanceof Depth.Blind(var size) ? size.length() : body.length();
        return bore.from() == End.A
                ? new Stretch(Length.ZERO, deep)
                : new Stretch(body.length().minus(deep), body.length());
    }

    /** Whether there is a tool for it that goes in from this end. */
    public boolean has(InBore inBore, End end) {
        return isOpen(inBore, end)
                && switch (inBore) {
                    case InBore.Keyway keyway ->
                        Bores.isThrough(bore(keyway)) && slotting(keyway, end).isPresent();
                    case InBore.OilGroove groove -> slotting(groove, end).isPresent();
                    case InBore.Recess recess -> grooving(recess, end).isPresent();
                };
    }

    /** The stoutest bar for a slot. */
    Optional<LatheTool.Slotting> slotting(InBore inBore, End end) {
        Length hole = Bores.diameter(bore(inBore));
        Length deep = deep(inBore, end).plus(RUN_OUT);
        return tooling.latheTools(LatheTool.Slotting.class).stream()
                .filter(bar -> !bar.leastBore().isMoreThan(hole) && !bar.reach().isLessThan(deep))
                .filter(bar -> bar.widths().contain(width(inBore)))
                .max(Comparator.comparing(LatheTool.Slotting::leastBore));
    }

    /** The widest blade for a recess. */
    Optional<LatheTool.InsideGrooving> grooving(InBore.Recess recess, End end) {
        Length hole = Bores.diameter(bore(recess));
        Length wall = recess.diameter().length().minus(hole).half();
        return tooling.latheTools(LatheTool.InsideGrooving.class).stream()
                .filter(tool -> !tool.leastBore().isMoreThan(hole)
                        && !tool.reach().isLessThan(deep(recess, end))
                        && !tool.depth().isLessThan(wall)
                        && !tool.width().isMoreThan(recess.width().length()))
                .max(Comparator.comparing(LatheTool.InsideGrooving::width));
    }

    private Length deep(InBore inBore, End end) {
        Stretch stretch = stretch(inBore);
        return end == End.A ? stretch.to() : body.length().minus(stretch.from());
    }

    static Length width(InBore inBore) {
        return switch (inBore) {
            case InBore.Keyway keyway -> keyway.width().length();
            case InBore.OilGroove groove -> groove.width().length();
            case InBore.Recess recess -> recess.width().length();
        };
    }
}
