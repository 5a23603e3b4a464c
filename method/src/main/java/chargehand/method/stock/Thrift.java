package chargehand.method.stock;

import chargehand.measure.Length;
import chargehand.method.rack.Piece;
import chargehand.part.Body;
import chargehand.part.Part;
import chargehand.part.Section;
import java.util.Comparator;

/**
 * Which stock a thrifty hand reaches for first. The metal used up counts by what it is worth (an offcut less than a bar,
 * a reclaimed piece less still), and what is turned away counts once more for the work of it.
 */
final class Thrift {
    /** Shorter than this a piece is an offcut. */
    private static final Length OFFCUT = Length.mm(300);

    /** What is shorter than this when the job is done is not put back. */
    private static final Length NOT_WORTH_KEEPING = Length.mm(50);

    /** An offcut beside a bar of the same size. */
    private static final double OFFCUT_WORTH = 0.5;

    /** A reclaimed piece beside a bar of the same size. */
    private static final double RECLAIMED_WORTH = 0.25;

    private Thrift() {}

    /** The same material first, then the least metal and work, then by name. */
    static Comparator<Candidate> bestFirst(Part part, int count) {
        double made = count * outsideVolume(part);
        return Comparator.comparing(Candidate::match)
                .thenComparingDouble(candidate -> cost(candidate, count, made))
                .thenComparing(candidate -> candidate.piece().name())
                .thenComparing(Candidate::way);
    }

    private static double cost(Candidate candidate, int count, double made) {
        double area = candidate.raw().areaSquareMm();
        Length cutInto =
                candidate.gives().perPiece().minus(candidate.allowances().stub());
        double intoSwarf = count * cutInto.mm() * area - made;
        return usedUp(candidate).mm() * area * worth(candidate.piece()) + intoSwarf;
    }

    private static Length usedUp(Candidate candidate) {
        Yield gives = candidate.gives();
        Length left = gives.left().isLessThan(NOT_WORTH_KEEPING) ? Length.ZERO : gives.left();
        return candidate.piece().length().length().times(gives.lengths()).minus(left);
    }

    static double worth(Piece piece) {
        if (piece.condition() == Piece.Condition.RECLAIMED) {
            return RECLAIMED_WORTH;
        }
        return piece.length().length().isLessThan(OFFCUT) ? OFFCUT_WORTH : 1;
    }

    /** The volume within the part's outside, bores not taken off (mm³). */
    static double outsideVolume(Part part) {
        return switch (part.body()) {
            case Body.Turned body ->
                body.outside().stream().mapToDouble(Thrift::volume).sum();
            case Body.Block block ->
                block.length().length().mm()
                        * block.width().length().mm()
                        * block.thickness().length().mm();
        };
    }

    /** A cone frustum between the section's two diameters; a regular prism where it has flats. */
    private static double volume(Section section) {
        double length = section.length().mm();
        if (section instanceof Section.Polygon polygon) {
            return new Raw.Polygon(polygon.sides(), polygon.flats().length()).areaSquareMm() * length;
        }
        double a = section.diameterTowardsA().mm();
        double b = section.diameterTowardsB().mm();
        return Math.PI / 12 * (a * a + a * b + b * b) * length;
    }
}
