package chargehand.trade.holding;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * The outline of work that looks the same after each of some equal turns, as a wheel or a hexagon does.
 *
 * @param repeats after how many equal turns it is round again
 * @param edges its whole outline
 * @param corners where its outline changes
 */
record Outline(int repeats, List<Edge> edges, List<Corner> corners) {
    /** How much narrower a space is at the root than at the tip, as involute and spline spaces about are. */
    private static final double ROOT_SHARE = 0.4;

    /**
     * A point of the outline.
     *
     * @param angle about the axis (radians)
     * @param radius from the axis (mm)
     */
    record Corner(double angle, double radius) {}

    Outline {
        edges = List.copyOf(edges);
        corners = List.copyOf(corners);
    }

    /**
     * Teeth of equal pitch with straight flanks.
     *
     * @param outside diameter over the tips (mm)
     * @param root diameter at the root (mm)
     * @param gap width of a space at the tips along the circle (mm)
     */
    static Outline toothed(int teeth, double outside, double root, double gap) {
        double tip = outside / 2;
        double bottom = root / 2;
        double halfGap = gap / 2 / tip;
        double halfRoot = ROOT_SHARE * halfGap;
        double pitch = 2 * Math.PI / teeth;
        var edges = new ArrayList<Edge>();
        var corners = new ArrayList<Corner>();
        for (int i = 0; i < teeth; i++) {
            double at = i * pitch;
            edges.add(new Edge.Straight(at - halfGap, tip, at - halfRoot, bottom));
            edges.add(new Edge.Land(bottom, at - halfRoot, at + halfRoot));
            edges.add(new Edge.Straight(at + halfRoot, bottom, at + halfGap, tip));
            edges.add(new Edge.Land(tip, at + halfGap, at + pitch - halfGap));
            corners.add(new Corner(at - halfGap, tip));
            corners.add(new Corner(at - halfRoot, bottom));
            corners.add(new Corner(at + halfRoot, bottom));
            corners.add(new Corner(at + halfGap, tip));
        }
        return new Outline(teeth, edges, corners);
    }

    /**
     * Equal flats with sharp corners.
     *
     * @param outside diameter over the corners (mm)
     */
    static Outline flatted(int sides, double outside) {
        double pitch = 2 * Math.PI / sides;
        var edges = new ArrayList<Edge>();
        var corners = new ArrayList<Corner>();
        for (int i = 0; i < sides; i++) {
            edges.add(new Edge.Straight((i - 0.5) * pitch, outside / 2, (i + 0.5) * pitch, outside / 2));
            corners.add(new Corner((i - 0.5) * pitch, outside / 2));
        }
        return new Outline(sides, edges, corners);
    }

    /** How far from the axis a jaw stops on the work turned so far. */
    double reach(double turned, double halfJaw) {
        double most = 0;
        for (Edge edge : edges) {
            OptionalDouble reach = edge.reach(turned, halfJaw);
            most = Math.max(most, reach.orElse(0));
        }
        return most;
    }
}
