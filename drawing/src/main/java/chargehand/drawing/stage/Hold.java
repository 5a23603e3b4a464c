package chargehand.drawing.stage;

import chargehand.measure.Length;

/** How work is held, as far as a picture shows it. Spans run from a position to a later one. */
public sealed interface Hold {
    /**
     * Jaws of a chuck on the outside; the jaws' own number is in the words beside the picture.
     *
     * @param jaws what bears on the work
     */
    record Chuck(Grip grip, Support support, Jaws jaws) implements Hold {
        /** Bare hard jaws. */
        public Chuck(Grip grip, Support support) {
            this(grip, support, Jaws.HARD);
        }
    }

    /** What bears on work in a chuck. */
    enum Jaws {
        HARD,
        /** Hard jaws with a soft sheet between them and the work. */
        PACKED,
        /** Soft jaws bored to the work, with a seat behind it. */
        SOFT
    }

    /** Jaws of a chuck opening in a bore at the headstock's end. */
    record JawsInside(Grip grip) implements Hold {}

    /** A collet closing on the outside. */
    record Collet(Grip grip, Support support) implements Hold {}

    /** Between centres, driven by a dog at the grip. */
    record Centres(Grip grip) implements Hold {}

    /** On a mandrel that bears in the bore along the grip, between centres. */
    record Mandrel(Grip grip) implements Hold {}

    /** On a stub mandrel that stands out of a chuck and bears in the bore along the grip. */
    record StubMandrel(Grip grip) implements Hold {}

    /**
     * Against a faceplate, clamps over a face that looks away from it.
     *
     * @param grip from the plate to the face clamped; its diameter is that outside which the clamps bear
     * @param outside the diameter of what is clamped
     */
    record Faceplate(Grip grip, Length outside) implements Hold {}

    /** In a chuck on the dividing head. */
    record DividingHead(Grip grip, Support support) implements Hold {}

    /** Laid in vee blocks or along a vice, for work across the axis. */
    record Vee(Grip grip) implements Hold {}

    /** Between the jaws of the saw's vice, or clamped down. */
    record Clamped(Grip grip) implements Hold {}

    /** Where it bears. */
    Grip grip();

    /**
     * Where something bears on the work.
     *
     * @param from position where it begins to bear
     * @param to position where it ends, later
     * @param diameter of what it bears on
     */
    record Grip(Length from, Length to, Length diameter) {
        public Grip {
            if (!from.isLessThan(to)) {
                throw new IllegalArgumentException("a grip runs from less to more, not " + from + " to " + to);
            }
        }
    }

    /** What holds the outer end. */
    sealed interface Support {
        record None() implements Support {}

        /** The tailstock's centre. */
        record Centre() implements Support {}

        /** A fixed steady at a position. */
        record FixedSteady(Length at, Length diameter) implements Support {}

        /** A steady that follows the tool, with the tailstock's centre. */
        record TravellingSteady() implements Support {}
    }
}
