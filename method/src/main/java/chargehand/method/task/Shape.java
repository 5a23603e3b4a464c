package chargehand.method.task;

import chargehand.measure.Length;
import chargehand.part.Body;
import chargehand.part.Edge;
import chargehand.part.End;
import chargehand.part.Section;
import java.util.ArrayList;
import java.util.List;

/** Where things lie along a turned part and how its corners turn, for whoever plans it. */
public final class Shape {
    private final Body.Turned body;
    private final List<Length> borders;

    public Shape(Body.Turned body) {
        this.body = body;
        this.borders = borders(body.outside());
    }

    /** Where each section begins, and where the last one ends: asked for too often to be added up each time. */
    private static List<Length> borders(List<Section> outside) {
        var borders = new ArrayList<Length>();
        Length at = Length.ZERO;
        borders.add(at);
        for (Section section : outside) {
            at = at.plus(section.length());
            borders.add(at);
        }
        return List.copyOf(borders);
    }

    /** The part's body. */
    public Body.Turned body() {
        return body;
    }

    public int count() {
        return body.outside().size();
    }

    public Section section(int index) {
        return body.outside().get(index);
    }

    /** Where a section begins, from end A. */
    public Length start(int index) {
        return borders.get(index);
    }

    /** Where a section ends, from end A. */
    public Length end(int index) {
        return borders.get(index + 1);
    }

    /** Where a section's border towards {@code side} lies. */
    public Length border(int index, End side) {
        return side == End.A ? start(index) : end(index);
    }

    /** The larger of a section's two diameters. */
    public Length diameter(int index) {
        Section section = section(index);
        return Length.most(section.diameterTowardsA(), section.diameterTowardsB());
    }

    /** The section's diameter at its border towards {@code side}. */
    public Length diameterTowards(int index, End side) {
        return side == End.A
                ? section(index).diameterTowardsA()
                : section(index).diameterTowardsB();
    }

    /** The index of the next section towards {@code side}; below 0 or {@link #count()} where there is none. */
    public int neighbour(int index, End side) {
        return side == End.A ? index - 1 : index + 1;
    }

    public boolean isSection(int index) {
        return index >= 0 && index < count();
    }

    /** Whether the neighbour towards {@code side} stands prouder than this section at their common border. */
    public boolean isHollow(int index, End side) {
        int neighbour = neighbour(index, side);
        return isSection(neighbour)
                && diameterTowards(neighbour, side.other()).isMoreThan(diameterTowards(index, side));
    }

    /** What the drawing asks at a section's corner. */
    public Edge edge(int index, End side) {
        return side == End.A
                ? section(index).stretch().atA()
                : section(index).stretch().atB();
    }

    /** Whether both neighbours stand prouder, so that the section can only be reached from the side of the work. */
    public boolean isNeck(int index) {
        return isHollow(index, End.A) && isHollow(index, End.B);
    }

    /** The largest diameter between a section and the end {@code free}, the section itself left out. */
    public Length largestTowards(int index, End free) {
        Length largest = Length.ZERO;
        for (int i = neighbour(index, free); isSection(i); i = neighbour(i, free)) {
            largest = Length.most(largest, diameter(i));
        }
        return largest;
    }
}
