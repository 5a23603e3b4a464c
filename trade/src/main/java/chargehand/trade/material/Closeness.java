package chargehand.trade.material;

/** How many letters must be put in, left out or changed to make one word from another. */
final class Closeness {
    private Closeness() {}

    /** The number of steps, or {@code most + 1} when the words differ in length by more than {@code most}. */
    static int steps(String from, String to, int most) {
        if (Math.abs(from.length() - to.length()) > most) {
            return most + 1;
        }
        int[] row = new int[to.length() + 1];
        for (int column = 0; column < row.length; column++) {
            row[column] = column;
        }
        for (int i = 1; i <= from.length(); i++) {
            int diagonal = row[0];
            row[0] = i;
            for (int j = 1; j < row.length; j++) {
                int changed = diagonal + (from.charAt(i - 1) == to.charAt(j - 1) ? 0 : 1);
                diagonal = row[j];
                row[j] = Math.min(changed, Math.min(row[j], row[j - 1]) + 1);
            }
        }
        return row[to.length()];
    }
}
