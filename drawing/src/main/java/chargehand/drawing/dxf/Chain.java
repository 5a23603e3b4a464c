package chargehand.drawing.dxf;

import chargehand.drawing.picture.Box;
import chargehand.drawing.picture.Point;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * Pieces of a line end to end.
 *
 * @param traces at least one
 * @param closed whether the last one ends where the first begins
 */
record Chain(List<Trace> traces, boolean closed) {
    /** Parts of a way closer together than this are the same place. */
    private static final double SAME = 1e-9;

    Chain {
        traces = List.copyOf(traces);
    }

    /** What is left of it where the paper of an area lies over it. */
    List<Chain> outside(Area area) {
        if (!box().overlaps(area.box())) {
            return List.of(this);
        }
        List<Chain> left = new ArrayList<>();
        List<Trace> current = new ArrayList<>();
        boolean cut = false;
        for (Trace trace : traces) {
            List<Double> ends = ends(trace, area);
            for (int i = 1; i < ends.size(); i++) {
                double from = ends.get(i - 1);
                double to = ends.get(i);
                if (area.holds(trace.at((from + to) / 2))) {
                    cut = true;
                    finish(current, left);
                } else {
                    current.add(ends.size() == 2 ? trace : trace.piece(from, to));
                }
            }
        }
        finish(current, left);
        return cut ? left : List.of(this);
    }

    private static void finish(List<Trace> current, List<Chain> left) {
        if (!current.isEmpty()) {
            left.add(new Chain(current, false));
            current.clear();
        }
    }

    /** Begin, places where it meets the area's sides, end. */
    private static List<Double> ends(Trace trace, Area area) {
        List<Double> met = area.sides().stream()
                .flatMap(side -> trace.meets(side).stream())
                .filter(part -> part > SAME && part < 1 - SAME)
                .sorted()
                .toList();
        List<Double> ends = new ArrayList<>(List.of(0.0));
        for (double part : met) {
            if (part - ends.getLast() > SAME) {
                ends.add(part);
            }
        }
        ends.add(1.0);
        return ends;
    }

    private Box box() {
        return traces.stream().map(Chain::box).reduce(Box::with).orElseThrow();
    }

    private static Box box(Trace trace) {
        return switch (trace) {
            case Trace.Straight(Point from, Point to) -> Box.around(List.of(from, to));
            case Trace.Round(var arc) ->
                Box.around(Stream.of(arc.centre()).toList()).grown(arc.radius());
        };
    }
}
