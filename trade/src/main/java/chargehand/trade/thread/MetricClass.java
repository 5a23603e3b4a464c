package chargehand.trade.thread;

import chargehand.measure.Unreadable;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A tolerance class of an outside or an inside metric thread, such as {@code 6g}, {@code 5g6g} or {@code 6H}.
 *
 * @param pitchGrade grade of the effective diameter
 * @param crestGrade grade of the diameter at the crests: the major outside, the minor inside
 * @param position the letter of the fundamental deviation, small outside and capital inside
 */
record MetricClass(int pitchGrade, int crestGrade, char position) {
    private static final String WOULD_DO =
            ": write one or both of an outside class such as 6g, 6h, 6e or 5g6g and an inside class such as 6H or 6G,"
                    + " as in 6g/6H.";
    private static final Pattern OUTSIDE = Pattern.compile("([3-9])([efgh])(?:([468])\\2)?");
    private static final Pattern INSIDE = Pattern.compile("([4-8])([GH])(?:([4-8])\\2)?");
    static final MetricClass USUAL_OUTSIDE = new MetricClass(6, 6, 'g');
    static final MetricClass USUAL_INSIDE = new MetricClass(6, 6, 'H');

    /** The two classes of a fit; either may be left out and is then the usual one. */
    record Pair(MetricClass outside, MetricClass inside) {
        static Pair parse(String fit) {
            var pair = new Pair(USUAL_OUTSIDE, USUAL_INSIDE);
            for (String part : fit.isBlank() ? new String[0] : fit.strip().split("[/ -]+")) {
                pair = pair.with(part, fit);
            }
            return pair;
        }

        private Pair with(String part, String fit) {
            Matcher outer = OUTSIDE.matcher(part);
            if (outer.matches() && (outer.group(3) != null || Integer.parseInt(outer.group(1)) % 2 == 0)) {
                return new Pair(of(outer), inside);
            }
            Matcher inner = INSIDE.matcher(part);
            if (inner.matches()) {
                return new Pair(outside, of(inner));
            }
            throw new Unreadable("'" + fit + "' is not a class of metric thread" + WOULD_DO);
        }

        @Override
        public String toString() {
            return outside + "/" + inside;
        }
    }

    private static MetricClass of(Matcher found) {
        int pitch = Integer.parseInt(found.group(1));
        int crest = found.group(3) == null ? pitch : Integer.parseInt(found.group(3));
        return new MetricClass(pitch, crest, found.group(2).charAt(0));
    }

    @Override
    public String toString() {
        return "" + pitchGrade + position + (crestGrade == pitchGrade ? "" : "" + crestGrade + position);
    }
}
