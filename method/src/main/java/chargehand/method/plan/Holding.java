package chargehand.method.plan;

import chargehand.measure.Angle;
import chargehand.measure.Length;
import chargehand.part.End;
import java.util.List;

/** How the work is held. */
public sealed interface Holding {
    /** The total indicator reading to expect as held, against what the work is held by; 0 where nothing turns. */
    default Length runOut() {
        return switch (this) {
            case InChuck chuck -> chuck.runOut();
            case InCollet collet -> collet.runOut();
            case BetweenCentres centres -> centres.runOut();
            case OnMandrel mandrel -> mandrel.runOut();
            case OnStub stub -> stub.runOut();
            case OnFaceplate plate -> plate.runOut();
            case InDividingHead head -> head.runOut();
            case LaidAcross laid -> Length.ZERO;
            case InVice vice -> Length.ZERO;
            case OnTable table -> Length.ZERO;
            case Clamped clamped -> Length.ZERO;
        };
    }

    /**
     * In a chuck on the spindle.
     *
     * @param chuck its name in the kit
     * @param jaws 3 self-centring, 4 independent (dialled true) or 6
     * @param bearing what bears on the work, and from which side
     * @param grip where it bears; the diameter is that of the bore where jaws open in one
     * @param headstock the end of the part that points to the headstock
     * @param support what holds the outer end, if anything
     * @param runOut the total indicator reading to expect as held, after dialling where the chuck is dialled
     */
    record InChuck(String chuck, int jaws, Bearing bearing, Grip grip, End headstock, Support support, Length runOut)
            implements Holding {
        /** Held by bare jaws that close on stock. */
        public InChuck(String chuck, int jaws, Grip grip, End headstock, Support support, Length runOut) {
            this(chuck, jaws, new Bearing.Closing(false), grip, headstock, support, runOut);
        }

        /** The same with something else that bears on the work. */
        public InChuck with(Bearing other) {
            return new InChuck(chuck, jaws, other, grip, headstock, support, runOut);
        }

        /** The same with another grip. */
        public InChuck with(Grip other) {
            return new InChuck(chuck, jaws, bearing, other, headstock, support, runOut);
        }
    }

    /** In a collet; as a chuck, with the collet's own run-out. */
    record InCollet(String collet, Grip grip, End headstock, Support support, Length runOut) implements Holding {}

    /**
     * Between centres, driven by a dog.
     *
     * @param driven the end of the part at the headstock, where the dog sits
     * @param dog where the dog bears
     */
    record BetweenCentres(End driven, Grip dog, Length runOut) implements Holding {}

    /**
     * On a mandrel through its own finished bore, between centres.
     *
     * @param mandrel its name in the kit, or what to turn it from
     * @param bore the diameter of the bore it sits in
     * @param from where it bears, from end A
     * @param to where it bears to
     */
    record OnMandrel(String mandrel, Length bore, Length from, Length to, End headstock, Length runOut)
            implements Holding {}

    /**
     * On a stub mandrel through or into its own finished bore, the mandrel turned to fit in the chuck it stays in.
     *
     * @param mandrel its name in the kit
     * @param bore the diameter of the bore it sits in
     * @param from where it bears, from end A
     * @param to where it bears to
     */
    record OnStub(String mandrel, Length bore, Length from, Length to, End headstock, Length runOut)
            implements Holding {}

    /**
     * Against the faceplate with a faced end, clamps bearing on a face that looks to the tailstock, dialled true.
     *
     * @param headstock the end of the part against the plate
     * @param clamped where along the axis the face lies that the clamps bear on
     * @param within the diameter inside which no clamp reaches
     * @param rim whether that face is the outer end's own, so that it cannot be faced
     */
    record OnFaceplate(End headstock, Length clamped, Length within, boolean rim, Length runOut) implements Holding {}

    /** In the dividing head's chuck on the mill, to be turned by plate and sector arms. */
    record InDividingHead(String head, Grip grip, End headstock, Support support, Length runOut) implements Holding {}

    /** A round part laid in vee blocks or gripped along the vice on a mill or drill, turned to an angle. */
    record LaidAcross(String vice, Grip grip, Angle around) implements Holding {}

    /**
     * A block in a machine vice.
     *
     * @param fixed the face against the fixed jaw
     * @param down the face on the parallels
     * @param height how far the work stands above the jaws
     */
    record InVice(String vice, Face fixed, Face down, Length height) implements Holding {}

    /**
     * A block clamped down on a machine's table, its edges or its top open where no clamp stands.
     *
     * @param down the face on the table
     * @param out the edges that stand out over the table's edge or a slot, so that a cutter passes them; none for holes
     */
    record OnTable(Face down, List<Face> out) implements Holding {
        public OnTable {
            out = List.copyOf(out);
        }
    }

    /** Held in the saw's vice, before anything is true. */
    record Clamped(String with, Length from, Length to) implements Holding {}

    /**
     * Where and on what the work is gripped.
     *
     * @param from along the axis, from end A; may lie on stock below 0 or beyond the length
     * @param to the other end of the grip, more than {@code from}
     * @param diameter of the surface gripped as it stands then (over flats for a hexagon)
     */
    record Grip(Length from, Length to, Length diameter) {
        public Grip {
            if (!from.isLessThan(to)) {
                throw new IllegalArgumentException("a grip runs from less to more, not " + from + " to " + to);
            }
        }

        public Length length() {
            return to.minus(from);
        }
    }

    /** What bears on work that is held in a chuck. */
    sealed interface Bearing {
        /**
         * Hard jaws closing on the outside.
         *
         * @param packed whether copper or card of one thickness lies between them and a surface that is not to be marked
         */
        record Closing(boolean packed) implements Bearing {}

        /**
         * Hard jaws opening in a bore.
         *
         * @param packed whether copper or card of one thickness lies between them and a bore that is not to be marked
         */
        record Opening(boolean packed) implements Bearing {}

        /** Soft jaws, bored where they are to the diameter gripped: they mark nothing and hold all round. */
        record SoftJaws() implements Bearing {}

        /**
         * A bush bored to the diameter gripped and slit along one side, closed on the work by hard jaws outside it.
         *
         * @param outside its diameter, on which the jaws close
         * @param slit how wide it is slit
         */
        record SplitBush(Length outside, Length slit) implements Bearing {}
    }

    /** What holds the outer end. */
    sealed interface Support {
        /** Nothing. */
        record None() implements Support {}

        /** The tailstock centre in a centre hole at the outer end. */
        record Centre() implements Support {}

        /** A fixed steady on a turned place. */
        record FixedSteady(Length at, Length diameter) implements Support {}

        /** A travelling steady that follows the tool, with the tailstock centre. */
        record TravellingSteady() implements Support {}
    }

    /** A face of a block: ends along x, sides along y, top and bottom along z. */
    enum Face {
        LEFT,
        RIGHT,
        NEAR,
        FAR,
        BOTTOM,
        TOP;

        /** The face over against this one. */
        public Face opposite() {
            return switch (this) {
                case LEFT -> RIGHT;
                case RIGHT -> LEFT;
                case NEAR -> FAR;
                case FAR -> NEAR;
                case BOTTOM -> TOP;
                case TOP -> BOTTOM;
            };
        }
    }
}
