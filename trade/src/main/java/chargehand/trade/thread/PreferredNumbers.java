package chargehand.trade.thread;

import java.util.List;

/** The R40 series of preferred numbers, ISO 3: forty to a decade, and what ISO 965-1 rounds its tolerances to. */
final class PreferredNumbers {
    /** Steps from one tolerance grade to the next: four of R40 are one of R10, a factor of 1.25. */
    static final int STEPS_PER_GRADE = 4;

    private static final List<Integer> R40 = List.of(
            100, 106, 112, 118, 125, 132, 140, 150, 160, 170, 180, 190, 200, 212, 224, 236, 250, 265, 280, 300, 315,
            335, 355, 375, 400, 425, 450, 475, 500, 530, 560, 600, 630, 670, 710, 750, 800, 850, 900, 950);
    private static final int DECADE = 1000;

    private PreferredNumbers() {}

    /** The number so many steps along the series from one that is in it, from 10 to 10 000 with ties kept as printed. */
    static double along(double number, int steps) {
        double decade = 1;
        double mantissa = number;
        while (mantissa < R40.getFirst()) {
            mantissa *= 10;
            decade /= 10;
        }
        while (mantissa >= DECADE) {
            mantissa /= 10;
            decade *= 10;
        }
        int at = nearest(mantissa) + steps;
        int turns = Math.floorDiv(at, R40.size());
        return R40.get(Math.floorMod(at, R40.size())) * decade * Math.pow(10, turns);
    }

    private static int nearest(double mantissa) {
        int best = 0;
        for (int i = 1; i < R40.size(); i++) {
            if (Math.abs(R40.get(i) - mantissa) < Math.abs(R40.get(best) - mantissa)) {
                best = i;
            }
        }
        return best;
    }
}
