package chargehand.method.kit;

import chargehand.measure.Length;
import java.util.Optional;

/**
 * The slides of a lathe as the turner reads them.
 *
 * @param cross the cross slide's dial
 * @param crossReads what the cross dial counts
 * @param topSlide the top slide's dial; empty where it has none that can be read
 * @param saddle the saddle's dial or scale; empty where there is none
 * @param topSlideTravel how far the top slide travels, and so how long a taper it turns in one setting
 */
public record Slides(
        Dial cross, CrossReads crossReads, Optional<Dial> topSlide, Optional<Dial> saddle, Length topSlideTravel) {
    /** What a cross dial counts. */
    public enum CrossReads {
        /** What comes off the diameter. */
        DIAMETER("diameter"),
        /** How far the tool goes in. */
        RADIUS("radius");

        private final String word;

        CrossReads(String word) {
            this.word = word;
        }

        /** What it counts, in a word. */
        public String word() {
            return word;
        }

        /** What a dial that counts so does, to be written beside it. */
        public String says() {
            return "reads " + word;
        }
    }

    /** The cross dial reading that takes so much off the diameter, in the dial's own sense, not yet on a division. */
    public Length crossReading(Length offDiameter) {
        return switch (crossReads) {
            case DIAMETER -> offDiameter;
            case RADIUS -> offDiameter.half();
        };
    }

    /** What comes off the diameter for a cross dial reading. */
    public Length offDiameter(Length crossReading) {
        return switch (crossReads) {
            case DIAMETER -> crossReading;
            case RADIUS -> crossReading.times(2);
        };
    }
}
