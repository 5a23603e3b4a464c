package chargehand.part;

import chargehand.measure.Length;
import java.util.List;

/** What a drawing allows on every size that has no tolerance of its own. */
public sealed interface GeneralTolerance {
    /** The deviation allowed either way at a size. */
    Length deviation(Length size);

    /** As the title block says it. */
    String text();

    /**
     * The same either way on every size.
     *
     * @param either the deviation, more than zero
     * @param text as written, such as "±.005"
     */
    record PlusMinus(Length either, String text) implements GeneralTolerance {
        public PlusMinus {
            if (!either.isPositive()) {
                throw new IllegalArgumentException("a general tolerance must be more than zero, not " + either);
            }
        }

        @Override
        public Length deviation(Length size) {
            return either;
        }
    }

    /** The linear classes of ISO 2768-1. Outside their range the nearest row is taken. */
    enum Iso2768 implements GeneralTolerance {
        FINE("ISO 2768-f", 0.05, 0.05, 0.1, 0.15, 0.2, 0.3, 0.5, 0.5),
        MEDIUM("ISO 2768-m", 0.1, 0.1, 0.2, 0.3, 0.5, 0.8, 1.2, 2.0),
        COARSE("ISO 2768-c", 0.2, 0.3, 0.5, 0.8, 1.2, 2.0, 3.0, 4.0),
        VERY_COARSE("ISO 2768-v", 0.5, 0.5, 1.0, 1.5, 2.5, 4.0, 6.0, 8.0);

        private static final List<Integer> UP_TO_MM = List.of(3, 6, 30, 120, 400, 1000, 2000, 4000);

        private final String text;

        @SuppressWarnings("ImmutableEnumChecker") // an unmodifiable list of numbers
        private final List<Double> deviationsMm;

        Iso2768(String text, Double... deviationsMm) {
            this.text = text;
            this.deviationsMm = List.of(deviationsMm);
        }

        @Override
        public Length deviation(Length size) {
            int row = 0;
            while (row < UP_TO_MM.size() - 1 && size.mm() > UP_TO_MM.get(row)) {
                row++;
            }
            return Length.mm(deviationsMm.get(row));
        }

        @Override
        public String text() {
            return text;
        }
    }
}
