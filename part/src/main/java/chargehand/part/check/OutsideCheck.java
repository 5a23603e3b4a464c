package chargehand.part.check;

import chargehand.measure.Angle;
import chargehand.measure.Length;
import chargehand.part.Body;
import chargehand.part.Edge;
import chargehand.part.End;
import chargehand.part.Section;
import java.util.List;
import java.util.Optional;

/** Judges how the outside sections stand beside each other: corners, grooves, threads. */
final class OutsideCheck {
    private final List<Section> sections;
    private final Findings findings;

    OutsideCheck(Body.Turned body, Findings findings) {
        this.sections = body.outside();
        this.findings = findings;
    }

    void judge() {
        for (int i = 0; i < sections.size(); i++) {
            String path = Paths.section(i);
            for (End end : End.values()) {
                edge(path + (end == End.A ? ".at-a" : ".at-b"), i, end);
            }
            switch (sections.get(i)) {
                case Section.Groove groove -> groove(path + ".groove", i, groove);
                case Section.Threaded threaded -> thread(path + ".thread", i, threaded);
                case Section.Round round -> {}
                case Section.Cone cone -> {}
                case Section.Polygon polygon -> {}
                case Section.Toothed toothed -> {}
                case Section.Knurled knurled -> {}
                case Section.Curved curved -> point(path, i, curved);
            }
        }
    }

    private Optional<Section> neighbour(int index, End end) {
        int other = end == End.A ? index - 1 : index + 1;
        return other < 0 || other >= sections.size() ? Optional.empty() : Optional.of(sections.get(other));
    }

    /** The diameter of the neighbour where it meets a section; nothing beyond the end of the part. */
    private Length beside(int index, End end) {
        return neighbour(index, end)
                .map(section -> diameter(section, end.other()))
                .orElse(Length.ZERO);
    }

    private static Length diameter(Section section, End end) {
        return switch (end) {
            case A -> section.diameterTowardsA();
            case B -> section.diameterTowardsB();
        };
    }

    private void edge(String path, int index, End end) {
        Section section = sections.get(index);
        Edge edge = end == End.A ? section.stretch().atA() : section.stretch().atB();
        if (edge instanceof Edge.Plain) {
            return;
        }
        Length own = diameter(section, end);
        Length beside = beside(index, end);
        if (own.equals(beside)) {
            findings.fault(
                    path,
                    PartFault.EDGE_WITHOUT_CORNER,
                    "Both sections have the same diameter here: there is no corner.");
        } else if (beside.isMoreThan(own) && !(edge instanceof Edge.Radius)) {
            findings.fault(
                    path,
                    PartFault.CHAMFER_IN_HOLLOW,
                    "This corner is a hollow one, against a larger section: only a radius can lie in it.");
        } else {
            Length above = beside.isMoreThan(own) ? edgeAbove(index, end) : Length.ZERO;
            height(path, edge, own.minus(beside).abs().half().minus(above));
        }
    }

    /** How much of the step over a hollow corner the edge on top of it takes. */
    private Length edgeAbove(int index, End end) {
        return neighbour(index, end)
                .map(section -> end == End.A
                        ? section.stretch().atB()
                        : section.stretch().atA())
                .map(OutsideCheck::height)
                .orElse(Length.ZERO);
    }

    private void height(String path, Edge edge, Length step) {
        Length height = height(edge);
        if (height.isMoreThan(step)) {
            findings.fault(
                    path,
                    PartFault.EDGE_HIGHER_THAN_STEP,
                    "This edge is " + findings.say(height) + " high where the step leaves it "
                            + findings.say(Length.most(step, Length.ZERO)) + ".");
        }
    }

    /** How far an edge reaches square to the axis; nothing where its own size or angle is refused anyway. */
    static Length height(Edge edge) {
        Length reach = SectionCheck.reach(edge);
        return switch (edge) {
            case Edge.Plain() -> Length.ZERO;
            case Edge.Radius radius -> reach;
            case Edge.WeldPreparation prepared ->
                SizeCheck.isMakeable(prepared.depth().length())
                        ? prepared.depth().length()
                        : Length.ZERO;
            case Edge.Chamfer(var length, var angle) ->
                angle.degrees() > 0 && angle.degrees() < 90 ? chamferHeight(reach, angle) : Length.ZERO;
        };
    }

    private static Length chamferHeight(Length reach, Angle angle) {
        return Length.mm(Math.min(reach.mm() * angle.tan(), SizeCheck.MOST.mm()));
    }

    /** A curved section comes to a point only where the part ends. */
    private void point(String path, int index, Section.Curved curved) {
        if (curved.towardsA().length().isZero() && index > 0) {
            inside(path + ".from");
        }
        if (curved.towardsB().length().isZero() && index < sections.size() - 1) {
            inside(path + ".to");
        }
    }

    private void inside(String path) {
        findings.fault(
                path,
                PartFault.CURVE_POINT,
                "A curved section comes to a point only at the end of the part: inside it there must be something left.");
    }

    private void groove(String path, int index, Section.Groove groove) {
        Length bottom = groove.diameter().length();
        for (End end : End.values()) {
            Optional<Section> neighbour = neighbour(index, end);
            if (neighbour.isEmpty() || !beside(index, end).isMoreThan(bottom)) {
                findings.fault(
                        path,
                        PartFault.GROOVE_NOT_NARROWER,
                        "A groove is narrower than what lies on both sides of it; towards end " + end
                                + neighbour
                                        .map(section -> " lies " + findings.say(beside(index, end)) + ".")
                                        .orElse(" the part ends: write it as round."));
            } else if (neighbour.get() instanceof Section.Threaded threaded) {
                root(path, bottom, threaded);
            }
        }
    }

    private void root(String path, Length bottom, Section.Threaded threaded) {
        Length root = threaded.thread().core();
        if (bottom.isMoreThan(root)) {
            findings.fault(
                    path,
                    PartFault.GROOVE_ABOVE_THREAD_ROOT,
                    "The root of " + threaded.thread().designation() + " measures " + findings.say(root)
                            + ": a groove for its tool is no larger than that.");
        }
    }

    private void thread(String path, int index, Section.Threaded threaded) {
        boolean fromA = isEntry(index, End.A, threaded);
        boolean fromB = isEntry(index, End.B, threaded);
        if (!fromA && !fromB) {
            findings.fault(
                    path,
                    PartFault.THREAD_WITHOUT_ENTRY,
                    "Neither side of this thread lets a tool or die begin: the part must end there or be no larger than"
                            + " the thread's root, "
                            + findings.say(threaded.thread().core()) + ".");
            return;
        }
        for (End end : End.values()) {
            if (isEntry(index, end, threaded)) {
                begin(path, threaded, end);
            } else if (beside(index, end).isMoreThan(threaded.thread().major())) {
                findings.remark(
                        path,
                        PartRemark.THREAD_AT_SHOULDER,
                        "This thread runs up to a larger shoulder towards end " + end
                                + ": the last turns cannot be full without a groove.");
            }
        }
    }

    private boolean isEntry(int index, End end, Section.Threaded threaded) {
        return !beside(index, end).isMoreThan(threaded.thread().core());
    }

    private void begin(String path, Section.Threaded threaded, End end) {
        boolean grooved = neighbourIsGroove(threaded, end);
        Edge edge = end == End.A ? threaded.stretch().atA() : threaded.stretch().atB();
        if (edge instanceof Edge.Plain && !grooved) {
            findings.remark(
                    path,
                    PartRemark.THREAD_WITHOUT_CHAMFER,
                    "This thread begins at a sharp corner towards end " + end
                            + ": a chamfer down to its root helps the nut on.");
        }
    }

    private boolean neighbourIsGroove(Section.Threaded threaded, End end) {
        return neighbour(sections.indexOf(threaded), end)
                .filter(Section.Groove.class::isInstance)
                .isPresent();
    }
}
