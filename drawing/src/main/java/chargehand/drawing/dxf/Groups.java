package chargehand.drawing.dxf;

/**
 * What a DXF file is made of: groups, each a code on one line and its value on the next. Lines end as the format has it, with
 * carriage return and line feed.
 */
final class Groups {
    private static final String END = "\r\n";
    private static final long PARTS = 1_000_000;
    private static final double LARGEST = 1e9;

    private final StringBuilder out = new StringBuilder();

    Groups words(int code, String value) {
        out.append(code < 10 ? "  " : code < 100 ? " " : "")
                .append(code)
                .append(END)
                .append(value)
                .append(END);
        return this;
    }

    Groups whole(int code, int value) {
        return words(code, Integer.toString(value));
    }

    /** A number to the nearest millionth; always with a point, as the format wants it, and never anything but a number. */
    Groups number(int code, double value) {
        if (!(Math.abs(value) < LARGEST)) {
            throw new IllegalArgumentException("no drawing holds the number " + value);
        }
        long millionths = Math.round(value * PARTS);
        String decimals = Long.toString(PARTS + Math.abs(millionths) % PARTS).substring(1);
        int kept = decimals.length();
        while (kept > 1 && decimals.charAt(kept - 1) == '0') {
            kept--;
        }
        return words(
                code, (millionths < 0 ? "-" : "") + Math.abs(millionths) / PARTS + "." + decimals.substring(0, kept));
    }

    /** A place, its first code 10, 11, 12 or 13; the other coordinate has the code ten higher. */
    Groups place(int code, double x, double y) {
        return number(code, x).number(code + 10, y);
    }

    @Override
    public String toString() {
        return out.toString();
    }
}
