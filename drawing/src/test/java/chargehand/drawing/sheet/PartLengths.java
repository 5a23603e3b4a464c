package chargehand.drawing.sheet;

import chargehand.measure.Length;
import chargehand.part.Across;
import chargehand.part.Body;
import chargehand.part.Bore;
import chargehand.part.Depth;
import chargehand.part.Edge;
import chargehand.part.Hole;
import chargehand.part.Part;
import chargehand.part.Section;
import chargehand.part.Size;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** All lengths that a drawing of a part may print: its own sizes, and what lies between any two of its faces. */
final class PartLengths {
    private final Set<Length> all = new HashSet<>();
    private final List<Size> cylinders = new ArrayList<>();

    PartLengths(Part part) {
        switch (part.body()) {
            case Body.Turned turned -> turned(turned);
            case Body.Block block -> block(block);
        }
    }

    Set<Length> all() {
        return all;
    }

    /** The diameters of plain cylinders, grooves and flat-bottomed bores. */
    List<Size> cylinders() {
        return cylinders;
    }

    private void turned(Body.Turned turned) {
        for (int i = 0; i < turned.outside().size(); i++) {
            section(turned.outside().get(i));
            for (int j = i + 1; j <= turned.outside().size(); j++) {
                all.add(turned.start(j).minus(turned.start(i)));
            }
        }
        turned.inside().forEach(this::bore);
        turned.across().forEach(feature -> across(feature, turned));
    }

    private void section(Section section) {
        edge(section.stretch().atA());
        edge(section.stretch().atB());
        switch (section) {
            case Section.Round round -> cylinder(round.diameter());
            case Section.Groove groove -> cylinder(groove.diameter());
            case Section.Cone cone -> {
                all.add(cone.towardsA().length());
                all.add(cone.towardsB().length());
            }
            case Section.Polygon polygon -> {
                all.add(polygon.flats().length());
                all.add(polygon.corners());
            }
            case Section.Threaded threaded -> {}
        }
    }

    private void edge(Edge edge) {
        if (edge instanceof Edge.Radius(var radius)) {
            all.add(radius.length());
        }
    }

    private void cylinder(Size size) {
        all.add(size.length());
        cylinders.add(size);
    }

    private void bore(Bore bore) {
        if (bore.depth() instanceof Depth.Blind(Size depth)) {
            all.add(depth.length());
        }
        switch (bore) {
            case Bore.Bored bored -> cylinder(bored.diameter());
            case Bore.Reamed reamed -> cylinder(reamed.diameter());
            case Bore.Counterbored wide -> cylinder(wide.diameter());
            case Bore.Drilled drilled -> all.add(drilled.diameter().length());
            case Bore.Coned coned -> all.add(coned.mouth().length());
            case Bore.Tapped tapped -> {}
        }
    }

    private void across(Across feature, Body.Turned turned) {
        switch (feature) {
            case Across.CrossHole hole -> {
                all.add(hole.at().length());
                all.add(hole.diameter().length());
            }
            case Across.Keyway keyway -> {
                all.add(keyway.from().length());
                all.add(keyway.length().length());
                all.add(keyway.width().length());
                for (Section section : turned.outside()) {
                    all.add(section.diameterTowardsA().minus(keyway.depth().length()));
                }
            }
        }
    }

    private void block(Body.Block block) {
        all.add(block.length().length());
        all.add(block.width().length());
        all.add(block.thickness().length());
        for (Hole hole : block.holes()) {
            all.add(hole.x().length());
            all.add(hole.y().length());
        }
    }
}
