package chargehand.method.plan;

import chargehand.measure.Angle;
import chargehand.measure.Length;
import chargehand.part.End;
import chargehand.trade.thread.ScrewThread;

/** What one operation does to the work, as geometry in the finished part's own positions. */
public sealed interface Cut {
    /** Faces an end flat: everything beyond {@code at} towards that end is taken off. */
    record FaceEnd(End end, Length at) implements Cut {}

    /** Makes a centre hole in an end face. */
    record CentreHole(End end, Length diameter) implements Cut {}

    /**
     * Drills on the axis from an end.
     *
     * @param to where the full diameter ends, along the axis; beyond it lies the drill's 118° point unless it comes out
     */
    record DrillAxial(End end, Length diameter, Length to) implements Cut {}

    /** Bores from an end to a flat bottom at {@code to}, or right through. */
    record BoreTo(End end, Length diameter, Length to) implements Cut {}

    /** Reams from an end to {@code to}. */
    record ReamTo(End end, Length diameter, Length to) implements Cut {}

    /** Cuts a cone into an end: {@code mouth} at the face at position {@code at}, narrowing to {@code narrow}. */
    record ConeInside(End end, Length at, Length mouth, Angle included, Length narrow) implements Cut {}

    /** Turns a cylinder. */
    record TurnDiameter(Length from, Length to, Length diameter) implements Cut {}

    /** Turns a cone between two diameters. */
    record TurnTaper(Length from, Length to, Length atFrom, Length atTo, TaperWay way) implements Cut {}

    /** Cuts a groove or undercut with a tool of its own width or less. */
    record CutGroove(Length from, Length to, Length diameter) implements Cut {}

    /**
     * Chamfers or rounds a corner, or leaves a radius in a hollow one.
     *
     * @param at where the corner is along the axis
     * @param diameter the diameter at the corner
     * @param towards the side of the corner on which the material lies
     * @param inside whether it is the mouth of a bore
     */
    record FinishEdge(Length at, Length diameter, End towards, boolean inside, EdgeForm form) implements Cut {}

    /** Parts off: a slot from {@code from} to {@code to} down to the axis or the bore. The part lies on the A or B side. */
    record PartOff(Length from, Length to, End partSide) implements Cut {}

    /** Saws across, leaving the work from {@code from} to {@code to}. */
    record SawOff(Length from, Length to) implements Cut {}

    /** Cuts an outside thread over a stretch already turned to size. */
    record ThreadOutside(ScrewThread thread, Length from, Length to, ThreadWay way) implements Cut {}

    /** Cuts an inside thread from an end to {@code to} in a hole already drilled or bored to size. */
    record ThreadInside(ScrewThread thread, End end, Length to, ThreadWay way) implements Cut {}

    /** Mills flats evenly round the axis. */
    record MillFlats(int sides, Length flats, Length from, Length to) implements Cut {}

    /**
     * Cuts the spaces between the straight teeth of a wheel, one after the other.
     *
     * @param pitchDiameter of the wheel
     * @param root the diameter at the bottom of the spaces
     */
    record CutTeeth(int teeth, Length pitchDiameter, Length root, Length from, Length to) implements Cut {}

    /**
     * Drills holes along the axis, evenly on a circle round it.
     *
     * @param circle the diameter through the middles of the holes
     * @param around the angle of the first round the axis
     * @param through whether they go right through, else {@code depth} from the end face
     */
    record DrillCircle(End end, int count, Length circle, Angle around, Length diameter, boolean through, Length depth)
            implements Cut {}

    /** Drills across the axis at an angle round it, through or to a depth from the outside. */
    record DrillAcross(Length at, Length diameter, Angle around, boolean through, Length depth) implements Cut {}

    /** Mills a keyway. */
    record MillKeyway(Length from, Length length, Length width, Length depth, Angle around) implements Cut {}

    /**
     * Planes a slot along the wall of a bore, the spindle locked, the saddle carrying a tool on its side to and fro.
     *
     * @param end from which the tool goes in
     * @param bore the diameter of the bore
     * @param depth from the wall of the bore at the middle of the slot
     * @param around its angle round the axis, 0° up
     */
    record SlotInBore(
            End end, Length from, Length to, Length bore, Length width, Length depth, Angle around, SlotForm form)
            implements Cut {}

    /** Cuts a groove all round the wall of a bore, with a tool that goes in from an end. */
    record RecessInBore(End end, Length from, Length to, Length diameter) implements Cut {}

    /** Brings a face of a block to size: {@code to} is the size over this face and the one opposite. */
    record MillFace(Holding.Face face, Length to) implements Cut {}

    /** Drills, reams or taps a hole square to the top of a block. */
    record DrillHole(Length x, Length y, Length diameter, boolean through, Length depth) implements Cut {}

    record ReamHole(Length x, Length y, Length diameter, boolean through, Length depth) implements Cut {}

    record TapHole(Length x, Length y, ScrewThread thread, boolean through, Length depth) implements Cut {}

    /** Takes the burrs off. */
    record Deburr() implements Cut {}

    /** How a taper is turned. */
    enum TaperWay {
        TOP_SLIDE,
        TAILSTOCK_SET_OVER
    }

    /** The bottom of a slot. */
    enum SlotForm {
        /** Flat, for a key. */
        SQUARE,
        /** Round, for oil. */
        ROUND
    }

    /** How a thread is cut. */
    enum ThreadWay {
        DIE_FROM_TAILSTOCK,
        SCREW_CUT,
        TAP_FROM_TAILSTOCK,
        TAP_BY_HAND
    }

    /** The form of a finished edge. */
    sealed interface EdgeForm {
        record Chamfer(Length length, Angle angle) implements EdgeForm {}

        record Radius(Length radius) implements EdgeForm {}
    }
}
