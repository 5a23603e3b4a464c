package chargehand.timing;

import chargehand.trade.thread.ScrewThread;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;

/**
 * A thread as it is found and read: worn by up to 0.3 mm, read with calipers to 0.05 mm and by a pitch gauge to half a thread
 * to the inch.
 */
record WornThread(ScrewThread truth, double diameterMm, double tpi) {
    private static final double MOST_WORN_MM = 0.3;
    private static final double CALIPERS_MM = 0.05;
    private static final double GAUGE_TPI = 0.5;

    /** What writing the reading down to a tenth of a thread may add. */
    private static final double WRITTEN_TPI = 0.05;

    static WornThread of(ScrewThread truth, Random random) {
        double worn = random.nextDouble() * MOST_WORN_MM;
        double misread = (2 * random.nextDouble() - 1) * CALIPERS_MM;
        double tpi = pitchTpi(truth) + (2 * random.nextDouble() - 1) * GAUGE_TPI;
        return new WornThread(truth, truth.major().mm() - worn + misread, tpi);
    }

    /** What a person would write down, wear and doubt included; form and taper if they were looked at. */
    Map<String, String> ask(boolean looked) {
        var ask = new HashMap<String, String>();
        ask.put("diameter", String.format(Locale.ROOT, "%.2f mm", diameterMm));
        ask.put("tpi", String.format(Locale.ROOT, "%.1f", tpi));
        ask.put("worn", MOST_WORN_MM + " mm");
        if (looked) {
            ask.put("angle", String.valueOf(truth.form().includedAngle().degrees()));
            ask.put("taper", truth.isTaper() ? "yes" : "no");
        }
        return ask;
    }

    /** Whether a thread, worn and misread so far at the most, could have given these readings. */
    boolean allows(ScrewThread thread, boolean looked) {
        boolean alike = thread.form().includedAngle().equals(truth.form().includedAngle())
                && thread.isTaper() == truth.isTaper();
        return density(thread) > 0 && (alike || !looked);
    }

    /** How likely a thread gives these readings, up to a factor that all share: even wear, misread evenly either way. */
    private double density(ScrewThread thread) {
        if (Math.abs(pitchTpi(thread) - tpi) > GAUGE_TPI + WRITTEN_TPI) {
            return 0;
        }
        double shortMm = thread.major().mm() - diameterMm;
        double most = Math.min(MOST_WORN_MM, shortMm + CALIPERS_MM);
        double least = Math.max(0, shortMm - CALIPERS_MM);
        return Math.max(0, most - least);
    }

    /** The chance of a guess among those that the readings, as they were drawn, are likeliest of. */
    double chanceAtBest(List<ScrewThread> listed) {
        double best = listed.stream().mapToDouble(this::density).max().orElse(0);
        double same = 1e-9;
        long alike =
                listed.stream().filter(thread -> density(thread) > best - same).count();
        return density(truth) > best - same ? 1.0 / alike : 0;
    }

    /** The listed thread of the nearest diameter, and of those the nearest pitch. */
    ScrewThread nearest(List<ScrewThread> listed) {
        return listed.stream()
                .min(Comparator.comparingDouble(
                                (ScrewThread one) -> Math.abs(one.major().mm() - diameterMm))
                        .thenComparingDouble(one -> Math.abs(pitchTpi(one) - tpi)))
                .orElseThrow();
    }

    private static double pitchTpi(ScrewThread thread) {
        return thread.pitch().tpi().doubleValue();
    }
}
