package chargehand.timing;

import chargehand.part.Part;
import chargehand.part.yaml.PartFile;
import chargehand.part.yaml.PartReading;
import java.util.Locale;
import java.util.Random;

/**
 * Stepped spindles of so many features, for measuring how planning grows: journals at both ends long enough to
 * be held by, between them sections that rise to a collar in the middle and fall again, every fifth a groove and some chamfered, the last feature in ten a bore.
 */
final class SteppedPart {
    private static final double THINNEST_MM = 20;
    private static final double THICKEST_MM = 44;
    private static final double LONGEST_MM = 170;
    private static final double JOURNAL_MM = 40;
    private static final double DEEPEST_GROOVE_MM = 8;
    private static final int GROOVE_EVERY = 5;
    private static final int CHAMFER_EVERY = 3;

    private final StringBuilder yaml = new StringBuilder();
    private final Random random;
    private final int sections;
    private final int bores;

    private SteppedPart(int features, Random random) {
        this.random = random;
        this.bores = Math.max(1, features / 10);
        this.sections = features - bores;
    }

    /** A part of so many sections and bores, its lengths by chance. */
    static Part of(int features, Random random) {
        return new SteppedPart(features, random).read(features);
    }

    private Part read(int features) {
        line(String.format(Locale.ROOT, "part: Spindle of %d features", features));
        line("material: EN8");
        line("unit: mm");
        line("general: ISO 2768-m");
        line("outside:");
        for (int i = 0; i < sections; i++) {
            section(i);
        }
        line("inside:");
        for (int i = 0; i < bores; i++) {
            line(String.format(
                    Locale.ROOT,
                    "  - {drill: %d, from: %s, depth: %d}",
                    6 + 2 * (i / 2),
                    i % 2 == 0 ? "A" : "B",
                    24 - 4 * (i / 2)));
        }
        return switch (PartFile.read(yaml.toString())) {
            case PartReading.Read read -> read.part();
            case PartReading.Faulty faulty ->
                throw new IllegalStateException(faulty.faults().toString());
        };
    }

    private void section(int index) {
        double between = (LONGEST_MM - 2 * JOURNAL_MM) / Math.max(1, sections - 2);
        boolean journal = index == 0 || index == sections - 1;
        double length = journal ? JOURNAL_MM : Math.max(3, between * (0.75 + random.nextDouble() / 4));
        boolean inside = index > 0
                && index < sections - 1
                && index != sections / 2
                && Math.abs(diameter(index - 1) - diameter(index + 1)) < DEEPEST_GROOVE_MM;
        if (inside && index % GROOVE_EVERY == 2) {
            line(String.format(
                    Locale.ROOT,
                    "  - {groove: %.1f, length: 2}",
                    Math.min(diameter(index - 1), diameter(index + 1)) - 2));
        } else if (index % CHAMFER_EVERY == 0) {
            line(String.format(
                    Locale.ROOT,
                    "  - {round: %.1f, length: %.1f, at-%s: chamfer 0.3}",
                    diameter(index),
                    length,
                    index <= sections / 2 ? "a" : "b"));
        } else {
            line(String.format(Locale.ROOT, "  - {round: %.1f, length: %.1f}", diameter(index), length));
        }
    }

    /** Rising to the collar in the middle and falling from it, so that each end is turned from its own side. */
    private double diameter(int index) {
        double fromMiddle = (double) Math.abs(index - sections / 2) / Math.max(1, sections / 2);
        return THICKEST_MM - (THICKEST_MM - THINNEST_MM) * fromMiddle;
    }

    private void line(String written) {
        yaml.append(written).append('\n');
    }
}
