package chargehand.drawing.checking;

import chargehand.drawing.dimension.SizeText;
import chargehand.measure.Angle;
import chargehand.measure.AngleText;
import chargehand.measure.Length;
import chargehand.measure.LengthReader;
import chargehand.measure.LengthUnit;
import chargehand.measure.Written;
import chargehand.part.Across;
import chargehand.part.BlockCut;
import chargehand.part.Body;
import chargehand.part.Bore;
import chargehand.part.Depth;
import chargehand.part.Edge;
import chargehand.part.End;
import chargehand.part.Hole;
import chargehand.part.HoleCircle;
import chargehand.part.InBore;
import chargehand.part.OnEnd;
import chargehand.part.Part;
import chargehand.part.Section;
import chargehand.part.Size;
import chargehand.part.Tie;
import chargehand.part.Tolerance;
import chargehand.part.shape.Solid;
import chargehand.trade.thread.ScrewThread;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/** Every number a part has, taken from the part itself. */
final class PartSizes {
    private final LengthUnit unit;
    private final Set<Length> lengths = new HashSet<>();
    private final List<Size> sizes = new ArrayList<>();
    private final List<Written> written = new ArrayList<>();
    private final Set<String> angles = new HashSet<>();
    private final Set<String> tapers = new HashSet<>();
    private final List<String> threads = new ArrayList<>();
    private final List<Size> diameters = new ArrayList<>();
    private final List<Size> coneEnds = new ArrayList<>();
    private final List<Length> corners = new ArrayList<>();
    private final Set<Length> along = new TreeSet<>();
    private final Set<Length> upward = new TreeSet<>();
    private final Set<Length> called = new TreeSet<>();
    private final Set<String> circles = new HashSet<>();

    PartSizes(Part part) {
        unit = part.unit();
        switch (part.body()) {
            case Body.Turned turned -> turned(turned);
            case Body.Block block -> block(block);
        }
        part.ties().stream().map(Tie::runOut).forEach(written::add);
        sizes.forEach(size -> {
            written.add(size.nominal());
            lengths.add(size.length());
        });
        written.forEach(one -> lengths.add(one.length()));
        between(along);
        between(upward);
    }

    /** All lengths that may be printed. */
    Set<Length> lengths() {
        return lengths;
    }

    /** All sizes with their tolerances. */
    List<Size> sizes() {
        return sizes;
    }

    /** All sizes as written. */
    List<Written> written() {
        return written;
    }

    /** All angles as they are printed. */
    Set<String> angles() {
        return angles;
    }

    Set<String> tapers() {
        return tapers;
    }

    /** Threads and centre holes as a drawing names them, one for each time it is cut. */
    List<String> threads() {
        return threads;
    }

    /** What needs its diameter given: cylinders, grooves, bores, holes. */
    List<Size> diameters() {
        return diameters;
    }

    /** The diameters at the ends of cones, some of which a neighbour gives. */
    List<Size> coneEnds() {
        return coneEnds;
    }

    /** The diameters over corners, which may be given or not. */
    List<Length> corners() {
        return corners;
    }

    /** Positions along the axis or a block's length that must be tied to each other by lengths. */
    Set<Length> along() {
        return along;
    }

    /** Positions across a block. */
    Set<Length> upward() {
        return upward;
    }

    /** Depths that a callout gives. */
    Set<Length> called() {
        return called;
    }

    private void between(Set<Length> positions) {
        for (Length one : positions) {
            positions.stream().filter(other -> other.isMoreThan(one)).forEach(other -> lengths.add(other.minus(one)));
        }
    }

    private void turned(Body.Turned turned) {
        for (int i = 0; i <= turned.outside().size(); i++) {
            along.add(turned.start(i));
        }
        turned.outside().forEach(this::section);
        List<Bore> away = Solid.boresWithinOthers(turned);
        turned.inside().stream()
                .filter(bore -> !(bore.isThere() && away.contains(bore)))
                .forEach(bore -> bore(bore, turned.length()));
        turned.across().forEach(feature -> across(feature, turned));
        turned.inBores().forEach(feature -> inBore(feature, turned));
        turned.onEnds().forEach(this::onEnd);
    }

    private void inBore(InBore feature, Body.Turned turned) {
        switch (feature) {
            case InBore.Keyway keyway -> {
                sizes.add(keyway.width());
                Length bore = turned.inside().stream()
                        .filter(other -> other.name().equals(keyway.bore()))
                        .map(Solid::mouthDiameter)
                        .findFirst()
                        .orElseThrow();
                Length toFloor = bore.plus(keyway.depth().length());
                sizes.add(new Size(
                        Written.of(toFloor, keyway.depth().nominal().unit()),
                        asDeviations(keyway.depth().tolerance())));
            }
            case InBore.OilGroove groove -> {
                sizes.add(groove.width());
                sizes.add(groove.depth());
                if (groove.run() instanceof InBore.Run.Part(Size from, Size length)) {
                    stretch(from, length);
                }
            }
            case InBore.Recess recess -> {
                diameter(recess.diameter());
                stretch(recess.from(), recess.width());
            }
        }
    }

    private static Tolerance asDeviations(Tolerance tolerance) {
        return tolerance instanceof Tolerance.Letters(var code, Length lower, Length upper)
                ? new Tolerance.Deviations(lower, upper)
                : tolerance;
    }

    private void stretch(Size from, Size length) {
        sizes.add(from);
        sizes.add(length);
        along.add(from.length());
        along.add(from.length().plus(length.length()));
    }

    private void onEnd(OnEnd feature) {
        switch (feature) {
            case OnEnd.Drilled hole -> {
                for (int i = 0; i < hole.circle().count(); i++) {
                    diameter(hole.diameter());
                }
                circle(hole.end(), hole.circle(), hole.depth());
            }
            case OnEnd.Tapped hole -> {
                for (int i = 0; i < hole.circle().count(); i++) {
                    thread(hole.thread(), hole.fit());
                }
                circle(hole.end(), hole.circle(), hole.depth());
            }
            case OnEnd.Slot slot -> {
                sizes.add(slot.width());
                sizes.add(slot.depth());
            }
            case OnEnd.Centre centre ->
                threads.add("ISO 6411 - " + centre.hole().designation());
        }
    }

    /** A circle that several kinds of holes in one face stand on is given once. */
    private void circle(End end, HoleCircle circle, Depth depth) {
        if (circles.add(end + " " + circle.diameter().length())) {
            diameter(circle.diameter());
        }
        called(depth);
    }

    private void section(Section section) {
        sizes.add(section.stretch().length());
        edge(section.stretch().atA());
        edge(section.stretch().atB());
        switch (section) {
            case Section.Round round -> diameter(round.diameter());
            case Section.Groove groove -> diameter(groove.diameter());
            case Section.Cone cone -> {
                coneEnd(cone.towardsA());
                coneEnd(cone.towardsB());
                tapers.add(cone.taper());
            }
            case Section.Polygon polygon -> {
                sizes.add(polygon.flats());
                lengths.add(polygon.corners());
                lengths.add(asPrinted(polygon.corners()));
                corners.add(polygon.corners());
            }
            case Section.Threaded threaded -> thread(threaded.thread(), threaded.fit());
            case Section.Toothed toothed -> {
                if (toothed.outside().tolerance() instanceof Tolerance.Bracketed) {
                    sizes.add(toothed.outside());
                } else {
                    diameter(toothed.outside());
                }
                angles.add(AngleText.seconds(toothed.pressureAngle()));
            }
            case Section.Curved curved -> {
                coneEnd(curved.towardsA());
                coneEnd(curved.towardsB());
                written.add(curved.radius());
            }
            case Section.Knurled knurled -> {
                diameter(knurled.diameter());
                written.add(knurled.pitch());
            }
        }
    }

    /** A length that nobody wrote, to the decimals that a drawing gives it. */
    private Length asPrinted(Length length) {
        return LengthReader.read(new SizeText(unit).figures(length), unit).length();
    }

    private void edge(Edge edge) {
        switch (edge) {
            case Edge.Plain() -> {}
            case Edge.Chamfer(Written length, Angle angle) -> {
                written.add(length);
                angles.add(AngleText.seconds(angle));
            }
            case Edge.Radius(Written radius) -> written.add(radius);
            case Edge.WeldPreparation(var joint, Written depth, Angle angle, var gap) -> {
                written.add(depth);
                gap.ifPresent(written::add);
                angles.add(AngleText.seconds(angle));
            }
        }
    }

    private void diameter(Size size) {
        sizes.add(size);
        diameters.add(size);
    }

    /** A curved section that comes to a point has no diameter there. */
    private void coneEnd(Size size) {
        if (!size.length().isPositive()) {
            return;
        }
        sizes.add(size);
        coneEnds.add(size);
    }

    private void thread(ScrewThread thread, String fit) {
        String name = thread.designation().replaceAll("(?<=\\d)x(?=\\d)", " × ");
        threads.add(fit.isBlank() ? name : name + " - " + fit);
    }

    private void bore(Bore bore, Length whole) {
        switch (bore) {
            case Bore.Drilled drilled -> {
                diameter(drilled.diameter());
                called(drilled.depth());
            }
            case Bore.Tapped tapped -> {
                thread(tapped.thread(), tapped.fit());
                called(tapped.depth());
            }
            case Bore.Coned coned -> {
                diameter(coned.mouth());
                sizes.add(coned.to());
                angles.add(AngleText.seconds(coned.angle()));
            }
            case Bore.Bored bored -> flat(bored, bored.diameter(), bored.mouth(), whole);
            case Bore.Reamed reamed -> flat(reamed, reamed.diameter(), reamed.mouth(), whole);
            case Bore.Counterbored wide -> flat(wide, wide.diameter(), wide.mouth(), whole);
        }
    }

    private void flat(Bore bore, Size diameter, Edge mouth, Length whole) {
        diameter(diameter);
        edge(mouth);
        if (bore.depth() instanceof Depth.Blind(Size depth)) {
            sizes.add(depth);
            along.add(bore.from() == End.A ? depth.length() : whole.minus(depth.length()));
        }
    }

    private void called(Depth depth) {
        if (depth instanceof Depth.Blind(Size size)) {
            sizes.add(size);
            called.add(size.length());
        }
    }

    private void across(Across feature, Body.Turned turned) {
        switch (feature) {
            case Across.CrossHole hole -> {
                diameter(hole.diameter());
                sizes.add(hole.at());
                along.add(hole.at().length());
                called(hole.depth());
            }
            case Across.Keyway keyway -> {
                sizes.add(keyway.width());
                sizes.add(keyway.length());
                sizes.add(keyway.from());
                along.add(keyway.from().length());
                along.add(keyway.from().length().plus(keyway.length().length()));
                turned.outside()
                        .forEach(section -> lengths.add(
                                section.diameterTowardsA().minus(keyway.depth().length())));
            }
            case Across.TaperPin pin -> {
                tapers.add("1:50");
                sizes.add(pin.nominal());
                sizes.add(pin.at());
                along.add(pin.at().length());
            }
            case Across.Slit slit -> {
                sizes.add(slit.width());
                sizes.add(slit.length());
                sizes.add(slit.from());
                along.add(slit.begins());
                along.add(slit.ends());
            }
            case Across.Flat flat -> {
                sizes.add(flat.depth().size());
                sizes.add(flat.length());
                sizes.add(flat.from());
                along.add(flat.begins());
                along.add(flat.ends());
            }
        }
    }

    private void block(Body.Block block) {
        along.add(Length.ZERO);
        upward.add(Length.ZERO);
        sizes.add(block.length());
        sizes.add(block.width());
        sizes.add(block.thickness());
        along.add(block.length().length());
        upward.add(block.width().length());
        block.holes().forEach(this::hole);
        block.cuts().forEach(this::cut);
    }

    private void cut(BlockCut cut) {
        sizes.add(cut.depth());
        switch (cut) {
            case BlockCut.Slot slot -> {
                sizes.add(slot.width());
                sizes.add(slot.at());
                (slot.along() == BlockCut.Way.X ? upward : along).add(slot.at().length());
                if (slot.run() instanceof BlockCut.Run.Part(Size from, Size length)) {
                    sizes.add(from);
                    sizes.add(length);
                }
            }
            case BlockCut.Step step -> sizes.add(step.width());
        }
    }

    private void hole(Hole hole) {
        sizes.add(hole.x());
        sizes.add(hole.y());
        along.add(hole.x().length());
        upward.add(hole.y().length());
        called(hole.depth());
        switch (hole) {
            case Hole.Drilled drilled -> diameter(drilled.diameter());
            case Hole.Reamed reamed -> diameter(reamed.diameter());
            case Hole.Tapped tapped -> thread(tapped.thread(), "");
            case Hole.Counterbored bored -> {
                diameter(bored.diameter());
                sizes.add(bored.head());
                sizes.add(bored.headDepth());
                called.add(bored.headDepth().length());
            }
        }
    }
}
