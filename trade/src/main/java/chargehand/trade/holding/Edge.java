package chargehand.trade.holding;

import java.util.OptionalDouble;

/**
 * One piece of the outline of work across its axis. A jaw is a flat face square to its axis; it stops at the furthest point
 * of the outline that lies before it. Millimetres and radians.
 */
sealed interface Edge {
    /**
     * How far out this piece reaches before a jaw.
     *
     * @param turned how far the work is turned from where its outline was drawn, the jaw pointing along nought
     * @param halfJaw half the width of the jaw face
     */
    OptionalDouble reach(double turned, double halfJaw);

    /** Part of a circle about the axis, from one angle to a larger one. */
    record Land(double radius, double from, double to) implements Edge {
        @Override
        public OptionalDouble reach(double turned, double halfJaw) {
            double middle = Math.IEEEremainder((from + to) / 2 + turned, 2 * Math.PI);
            double half = (to - from) / 2;
            double nearest = Math.max(0, Math.abs(middle) - half);
            boolean before = nearest < Math.PI / 2 && radius * Math.sin(nearest) <= halfJaw;
            return before ? OptionalDouble.of(radius * Math.cos(nearest)) : OptionalDouble.empty();
        }
    }

    /** A straight flank or flat between two points, each by angle and distance from the axis. */
    record Straight(double angle, double radius, double otherAngle, double otherRadius) implements Edge {
        @Override
        public OptionalDouble reach(double turned, double halfJaw) {
            double x = radius * Math.cos(angle + turned);
            double y = radius * Math.sin(angle + turned);
            double dx = otherRadius * Math.cos(otherAngle + turned) - x;
            double dy = otherRadius * Math.sin(otherAngle + turned) - y;
            double from = 0;
            double to = 1;
            if (dy == 0) {
                if (Math.abs(y) > halfJaw) {
                    return OptionalDouble.empty();
                }
            } else {
                double low = (-halfJaw - y) / dy;
                double high = (halfJaw - y) / dy;
                from = Math.max(from, Math.min(low, high));
                to = Math.min(to, Math.max(low, high));
            }
            double reach = x + Math.max(from * dx, to * dx);
            return from <= to && reach > 0 ? OptionalDouble.of(reach) : OptionalDouble.empty();
        }
    }
}
