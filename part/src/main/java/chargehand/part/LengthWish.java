package chargehand.part;

import java.util.Optional;

/**
 * What somebody wants of one length on a drawing. What it does not say is left to the rules by which lengths are chosen and
 * stacked.
 *
 * @param from one face
 * @param to the other one
 * @param giving whether the length is given at all, and how
 * @param side of the view it stands on
 * @param tier whether it stands before all others or beyond them
 */
public record LengthWish(
        FaceAt from, FaceAt to, Optional<Giving> giving, Optional<LengthSide> side, Optional<Tier> tier) {

    /** Whether and how a length is given. */
    public enum Giving {
        /** As a size that the part is made to. */
        PLAIN("plain"),
        /** In brackets: to be read, not to be worked or measured to. */
        BRACKETED("in brackets"),
        /** Not at all. */
        LEFT_OUT("left out");

        private final String text;

        Giving(String text) {
            this.text = text;
        }

        /** As a part file has it. */
        public String text() {
            return text;
        }
    }

    /** On which side of a view lengths stand. */
    public enum LengthSide {
        ABOVE,
        BELOW
    }

    /** How far out a length stands. */
    public enum Tier {
        /** Nearer the part than all that say nothing of it. */
        NEARER,
        /** Farther out than all that say nothing of it. */
        FARTHER
    }

    /** The length between two faces, with nothing wanted of it. */
    public static LengthWish none(FaceAt from, FaceAt to) {
        return new LengthWish(from, to, Optional.empty(), Optional.empty(), Optional.empty());
    }

    public boolean isEmpty() {
        return giving.isEmpty() && side.isEmpty() && tier.isEmpty();
    }

    public LengthWish with(Giving wanted) {
        return new LengthWish(from, to, Optional.of(wanted), side, tier);
    }

    public LengthWish with(LengthSide wanted) {
        return new LengthWish(from, to, giving, Optional.of(wanted), tier);
    }

    public LengthWish with(Tier wanted) {
        return new LengthWish(from, to, giving, side, Optional.of(wanted));
    }
}
