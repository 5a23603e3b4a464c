package chargehand.drawing.dimension;

import chargehand.drawing.picture.Box;
import chargehand.drawing.picture.Segment;
import java.util.Comparator;
import java.util.List;

/**
 * Many straight lines, to be asked often what meets them. They are kept in order of their left ends, so that only those are
 * looked at that can reach.
 */
final class Obstacles {
    private final Segment[] lines;
    private final double[] left;
    private final double[] right;
    private final double[] top;
    private final double[] bottom;
    private final double widest;

    Obstacles(List<Segment> segments) {
        lines = segments.stream()
                .sorted(Comparator.comparingDouble(Obstacles::left))
                .toArray(Segment[]::new);
        left = new double[lines.length];
        right = new double[lines.length];
        top = new double[lines.length];
        bottom = new double[lines.length];
        double most = 0;
        for (int i = 0; i < lines.length; i++) {
            Segment line = lines[i];
            left[i] = left(line);
            right[i] = Math.max(line.from().x(), line.to().x());
            top[i] = Math.min(line.from().y(), line.to().y());
            bottom[i] = Math.max(line.from().y(), line.to().y());
            most = Math.max(most, right[i] - left[i]);
        }
        widest = most;
    }

    private static double left(Segment line) {
        return Math.min(line.from().x(), line.to().x());
    }

    /** How many lie within a box or meet its border. */
    int meeting(Box box) {
        int count = 0;
        for (int i = first(box.left()); i < lines.length && left[i] <= box.right(); i++) {
            if (right[i] >= box.left()
                    && top[i] <= box.bottom()
                    && bottom[i] >= box.top()
                    && (isSquare(i) || lines[i].meets(box))) {
                count++;
            }
        }
        return count;
    }

    /** A level or upright line meets every box that its own box meets. */
    private boolean isSquare(int i) {
        return left[i] == right[i] || top[i] == bottom[i];
    }

    /** How many a line crosses. */
    int crossing(Segment segment) {
        double from = left(segment);
        double to = Math.max(segment.from().x(), segment.to().x());
        double high = Math.min(segment.from().y(), segment.to().y());
        double low = Math.max(segment.from().y(), segment.to().y());
        int count = 0;
        for (int i = first(from); i < lines.length && left[i] <= to; i++) {
            if (right[i] >= from && top[i] <= low && bottom[i] >= high && segment.crosses(lines[i])) {
                count++;
            }
        }
        return count;
    }

    /** The first that can reach so far right: none before it begins near enough. */
    private int first(double x) {
        int low = 0;
        int high = lines.length;
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (left[middle] < x - widest) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        return low;
    }
}
