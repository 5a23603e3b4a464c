package chargehand.drawing.picture;

import java.util.List;

/**
 * The kinds of line, after ISO 128-2 in the group 0.5/0.25 mm: dashes, gaps and dots are multiples of the line's width
 * (12, 3, 24, 0.5; from memory of the standard).
 */
public enum LineStyle {
    /** The frame of a sheet. */
    FRAME(0.7),
    /** Surfaces to cut on a stage picture, hold points on a sheet. */
    HEAVY(1.2),
    /** Visible edges, crests of threads, the end of full thread. */
    WIDE(0.5),
    /** Graphical symbols: projection, texture. */
    SYMBOL(0.35),
    /** Dimension, extension and leader lines, roots of threads, diagonals of flats. */
    NARROW(0.25),
    /** Hatching of cut faces. */
    HATCH(0.25),
    /** Hidden edges. */
    HIDDEN(0.25, Rhythm.DASHED),
    /** Axes, pitch circles. */
    CHAIN(0.25, Rhythm.DASH_DOT),
    /** Raw stock, adjacent parts. */
    DOUBLE_CHAIN(0.25, Rhythm.DASH_DOT_DOT);

    private final double width;
    private final Rhythm rhythm;

    LineStyle(double width) {
        this(width, Rhythm.CONTINUOUS);
    }

    LineStyle(double width, Rhythm rhythm) {
        this.width = width;
        this.rhythm = rhythm;
    }

    /** The width (mm). */
    public double width() {
        return width;
    }

    /**
     * Dashes and gaps in turn for an open line so long (mm), stretched a little so that it begins and ends with a long
     * dash; empty where the line is continuous, as a chain line too short for one full pattern is.
     */
    public List<Double> dashes(double length) {
        List<Double> pattern = pattern();
        if (pattern.isEmpty()) {
            return List.of();
        }
        double period = pattern.stream().mapToDouble(Double::doubleValue).sum();
        double dash = pattern.getFirst();
        long periods = Math.round((length - dash) / period);
        return periods < 1 ? List.of() : stretched(length / (periods * period + dash));
    }

    /** Dashes and gaps in turn for a closed line so long (mm): a whole number of patterns. */
    public List<Double> dashesRound(double length) {
        List<Double> pattern = pattern();
        double period = pattern.stream().mapToDouble(Double::doubleValue).sum();
        long periods = pattern.isEmpty() ? 0 : Math.round(length / period);
        return periods < 2 ? List.of() : stretched(length / (periods * period));
    }

    private List<Double> stretched(double by) {
        return pattern().stream().map(part -> part * by).toList();
    }

    /** Dashes and gaps in turn, as they are before they are stretched to a line (mm); empty where it is continuous. */
    public List<Double> pattern() {
        return rhythm.widths().stream().map(widths -> widths * width).toList();
    }

    /** How a line is broken. */
    private enum Rhythm {
        CONTINUOUS,
        DASHED,
        DASH_DOT,
        DASH_DOT_DOT;

        /** Dashes and gaps in turn, in widths of the line. */
        List<Double> widths() {
            return switch (this) {
                case CONTINUOUS -> List.of();
                case DASHED -> List.of(12.0, 3.0);
                case DASH_DOT -> List.of(24.0, 3.0, 0.5, 3.0);
                case DASH_DOT_DOT -> List.of(24.0, 3.0, 0.5, 3.0, 0.5, 3.0);
            };
        }
    }
}
