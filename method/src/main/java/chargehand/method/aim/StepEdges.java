package chargehand.method.aim;

import chargehand.measure.Length;
import chargehand.measure.Written;
import chargehand.part.Edge;
import chargehand.part.End;
import chargehand.part.Section;
import chargehand.part.Stretch;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Edges between sections whose diameters have been set into the middle of their limits. A step may have become lower by
 * it; an edge that took up the whole of it is taken down with it, which is always less than half the width of fine limits.
 */
final class StepEdges {
    private final List<Section> sections;

    private StepEdges(List<Section> sections) {
        this.sections = sections;
    }

    /** The sections, no edge higher than its step. */
    static List<Section> within(List<Section> sections) {
        var edges = new StepEdges(sections);
        return IntStream.range(0, sections.size()).mapToObj(edges::section).toList();
    }

    private Section section(int index) {
        Section section = sections.get(index);
        Stretch was = section.stretch();
        var fits = new Stretch(was.name(), was.length(), edge(index, End.A), edge(index, End.B), was.made(), was.was());
        return fits.equals(was) ? section : along(fits, section);
    }

    private static Section along(Stretch stretch, Section section) {
        return switch (section) {
            case Section.Round round -> new Section.Round(stretch, round.diameter());
            case Section.Cone cone -> new Section.Cone(stretch, cone.towardsA(), cone.towardsB(), cone.taper());
            case Section.Polygon polygon ->
                new Section.Polygon(stretch, polygon.sides(), polygon.flats(), polygon.corners());
            case Section.Threaded threaded -> new Section.Threaded(stretch, threaded.thread(), threaded.fit());
            case Section.Groove groove -> new Section.Groove(stretch, groove.diameter());
            case Section.Toothed(var was, var teeth, var size, var pressureAngle, var outside) ->
                new Section.Toothed(stretch, teeth, size, pressureAngle, outside);
            case Section.Knurled(var was, var diameter, var pattern, var pitch) ->
                new Section.Knurled(stretch, diameter, pattern, pitch);
            case Section.Curved(var was, var towardsA, var towardsB, var radius, var bulge) ->
                new Section.Curved(stretch, towardsA, towardsB, radius, bulge);
        };
    }

    private static Edge edge(Section section, End end) {
        return end == End.A ? section.stretch().atA() : section.stretch().atB();
    }

    private static Length radius(Section section, End end) {
        return (end == End.A ? section.diameterTowardsA() : section.diameterTowardsB()).half();
    }

    private Optional<Section> neighbour(int index, End end) {
        int beside = end == End.A ? index - 1 : index + 1;
        return beside >= 0 && beside < sections.size() ? Optional.of(sections.get(beside)) : Optional.empty();
    }

    private Edge edge(int index, End end) {
        Edge edge = edge(sections.get(index), end);
        Length step = step(index, end);
        return switch (edge) {
            case Edge.Radius(Written radius)
            when radius.length().isMoreThan(step) ->
                step.isPositive() ? new Edge.Radius(Written.of(step, radius.unit())) : new Edge.Plain();
            case Edge.Chamfer chamfer
            when height(chamfer).isMoreThan(step) ->
                step.isPositive()
                        ? new Edge.Chamfer(
                                Written.of(
                                        step.times(1 / chamfer.angle().tan()),
                                        chamfer.length().unit()),
                                chamfer.angle())
                        : new Edge.Plain();
            case Edge.Radius radius -> radius;
            case Edge.Chamfer chamfer -> chamfer;
            case Edge.Plain plain -> plain;
            case Edge.WeldPreparation prepared -> prepared;
        };
    }

    /** What the step leaves an edge: over a hollow corner, what the edge on top of it does not take. */
    private Length step(int index, End end) {
        Length own = radius(sections.get(index), end);
        Optional<Section> neighbour = neighbour(index, end);
        Length beside = neighbour.map(section -> radius(section, end.other())).orElse(Length.ZERO);
        Length above = neighbour
                .filter(section -> beside.isMoreThan(own))
                .map(section -> height(edge(section, end.other())))
                .orElse(Length.ZERO);
        return own.minus(beside).abs().minus(above);
    }

    private static Length height(Edge edge) {
        return switch (edge) {
            case Edge.Plain plain -> Length.ZERO;
            case Edge.Radius(Written radius) -> radius.length();
            case Edge.Chamfer(Written length, var angle) -> length.length().times(angle.tan());
            case Edge.WeldPreparation prepared -> prepared.depth().length();
        };
    }
}
