package chargehand.method.aim;

import chargehand.measure.Length;
import chargehand.measure.Limits;
import chargehand.measure.Written;
import chargehand.part.Body;
import chargehand.part.Bore;
import chargehand.part.Part;
import chargehand.part.Section;
import chargehand.part.Size;
import chargehand.part.Tolerance;

/**
 * The part as it is to be made: every diameter that is turned or bored to fine limits of its own is taken at the middle of
 * them, since the nominal size may be the very edge of what is allowed, or outside it, as for 38 F7. The limits stay what they
 * are. Wider limits that hold the nominal leave it as it is. An edge that takes up a whole step is taken down with it.
 *
 * <p>Sizes that a tool settles (drilled, reamed, tapped, threaded) and sizes under the general tolerance are left alone.
 */
public final class Aim {
    /** Limits no further apart than this are fine: their edge is no place to aim at (common practice). */
    private static final Length FINE = Length.mm(0.1);

    private final Part part;

    private Aim(Part part) {
        this.part = part;
    }

    /** The part with its toleranced diameters in the middle of their limits. */
    public static Part at(Part part) {
        return switch (part.body()) {
            case Body.Turned turned -> new Aim(part).turned(turned);
            case Body.Block block -> part;
        };
    }

    private Part turned(Body.Turned body) {
        var aimed = body.with(
                StepEdges.within(body.outside().stream().map(this::section).toList()),
                body.inside().stream().map(this::bore).toList());
        return new Part(
                part.title(),
                part.drawing(),
                part.issue(),
                part.unit(),
                part.material(),
                part.duty(),
                part.general(),
                part.texture(),
                aimed,
                part.ties(),
                part.notes(),
                part.drafting());
    }

    private Section section(Section section) {
        return switch (section) {
            case Section.Round round -> new Section.Round(round.stretch(), middle(round.diameter()));
            case Section.Groove groove -> new Section.Groove(groove.stretch(), middle(groove.diameter()));
            case Section.Cone cone -> cone;
            case Section.Polygon polygon -> polygon;
            case Section.Threaded threaded -> threaded;
            case Section.Toothed toothed -> toothed;
            case Section.Knurled knurled -> knurled;
            case Section.Curved curved -> curved;
        };
    }

    private Bore bore(Bore bore) {
        return switch (bore) {
            case Bore.Bored(var name, var from, var depth, var diameter, var mouth, var made) ->
                new Bore.Bored(name, from, depth, middle(diameter), mouth, made);
            case Bore.Counterbored(var name, var from, var depth, var diameter, var mouth, var made) ->
                new Bore.Counterbored(name, from, depth, middle(diameter), mouth, made);
            case Bore.Drilled drilled -> drilled;
            case Bore.Reamed reamed -> reamed;
            case Bore.Tapped tapped -> tapped;
            case Bore.Coned coned -> coned;
        };
    }

    private Size middle(Size size) {
        if (!size.isToleranced()) {
            return size;
        }
        Limits limits = size.limits(part.general());
        if (limits.tolerance().isMoreThan(FINE) && limits.contain(size.length())) {
            return size;
        }
        Length middle = limits.middle();
        var rest = new Tolerance.Deviations(
                limits.least().minus(middle), limits.most().minus(middle));
        return new Size(Written.of(middle, size.nominal().unit()), rest);
    }
}
