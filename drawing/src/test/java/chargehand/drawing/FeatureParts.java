package chargehand.drawing;

import chargehand.measure.Angle;
import chargehand.measure.Length;
import chargehand.part.Across;
import chargehand.part.BlockCut;
import chargehand.part.Body;
import chargehand.part.Bulge;
import chargehand.part.CentreHole;
import chargehand.part.Edge;
import chargehand.part.End;
import chargehand.part.FlatDepth;
import chargehand.part.Hole;
import chargehand.part.HoleCircle;
import chargehand.part.InBore;
import chargehand.part.Knurl;
import chargehand.part.Made;
import chargehand.part.OnEnd;
import chargehand.part.Part;
import chargehand.part.Section;
import chargehand.part.Stays;
import chargehand.part.Stretch;
import chargehand.part.ToothSize;
import chargehand.trade.thread.ScrewThread;
import java.util.List;
import java.util.Optional;

/** Parts with what is cut, knurled and drilled besides turning; all invented. */
public final class FeatureParts {
    private FeatureParts() {}

    /** A wheel with a boss and a keyed bore. */
    public static Part wheel() {
        Turning t = Turning.mm("Change wheel");
        return t.round("boss", t.size("40"), "12", t.chamfer("1"), t.plain())
                .toothed("teeth", 24, new ToothSize.Module("3", 3), 20, "20")
                .bored("bore", End.A, t.letters("25", "H7", 0, 0.021), t.through(), t.chamfer("1"))
                .inBore(new InBore.Keyway(
                        "keyway",
                        "bore",
                        t.letters("8", "JS9", -0.018, 0.018),
                        t.size("3.3"),
                        Angle.degrees(0),
                        Made.HERE))
                .part("KH-301", "cast iron GG25");
    }

    /** A pinion in one piece with its shaft. */
    public static Part pinion() {
        Turning t = Turning.inches("Crane pinion");
        return t.round("journal", "1", "1 1/4")
                .toothed("teeth", 14, new ToothSize.DiametralPitch("6", 6), 14.5, "2")
                .round("shaft", "1 1/4", "3")
                .part("KH-302", "EN24");
    }

    public static Part knurled() {
        Turning t = Turning.mm("Locking screw");
        return t.knurled("grip", "30", "16", Knurl.DIAMOND, "1.2")
                .round("neck", "14", "10")
                .knurled("collar", "24", "10", Knurl.STRAIGHT, "1")
                .thread("thread", "M12", "25", t.plain(), t.chamfer("1.5"))
                .part("KH-303", "EN8");
    }

    public static Part flatted() {
        Turning t = Turning.mm("Pump spindle");
        return t.round("shaft", t.letters("20", "h7", -0.021, 0), "60", t.plain(), t.plain())
                .round("end", "16", "30")
                .across(new Across.Flat(
                        "flat",
                        new FlatDepth.Leaving(t.size("14")),
                        t.size("70"),
                        t.size("20"),
                        Angle.degrees(0),
                        Made.HERE))
                .across(new Across.Flat(
                        "seat",
                        new FlatDepth.Below(t.size("2")),
                        t.size("20"),
                        t.size("15"),
                        Angle.degrees(90),
                        Made.HERE))
                .part("KH-304", "EN8");
    }

    /** A flange with plain holes, a smaller circle of tapped ones behind it in a hub. */
    public static Part flange() {
        Turning t = Turning.mm("Pipe flange");
        return t.round("flange", "110", "14")
                .round("hub", t.size("60"), "30", t.radius("3"), t.chamfer("1"))
                .bored("bore", End.A, t.size("30"), t.through(), t.plain())
                .onEnd(new OnEnd.Drilled(
                        "bolt holes",
                        End.A,
                        new HoleCircle(6, t.size("85"), Angle.degrees(0)),
                        t.through(),
                        t.size("11"),
                        Made.HERE))
                .onEnd(new OnEnd.Tapped(
                        "jacking holes",
                        End.B,
                        new HoleCircle(3, t.size("45"), Angle.degrees(60)),
                        t.blind("14"),
                        ScrewThread.parse("M8"),
                        "",
                        Made.HERE))
                .part("KH-305", "EN3");
    }

    /** A plain bush with an oil groove that is closed at one end, an oil hole to it and a recess. */
    public static Part grooved() {
        Turning t = Turning.mm("Grooved bush");
        return t.round("outside", t.letters("50", "p6", 0.026, 0.042), "60", t.chamfer("1"), t.chamfer("1"))
                .bored("bore", End.A, t.letters("36", "H7", 0, 0.025), t.through(), t.chamfer("1"))
                .crossHole("oil hole", "5", "20", 0)
                .inBore(new InBore.OilGroove(
                        "oil groove",
                        "bore",
                        t.size("5"),
                        t.size("1.5"),
                        new InBore.Run.Part(t.size("8"), t.size("34")),
                        Angle.degrees(180),
                        Made.HERE))
                .inBore(new InBore.Recess("ring groove", "bore", t.size("48"), t.size("4"), t.size("40"), Made.HERE))
                .part("KH-306", "phosphor bronze PB1");
    }

    /** A winch shaft that comes back to be turned under size and screwed anew, its collar and bearing left alone. */
    public static Part altered() {
        Turning t = Turning.mm("Winch shaft to be repaired");
        Turning.there(t, t.size("40"), "60", "bearing");
        Turning.there(t, t.size("55"), "15", "collar");
        return t.outside(new Section.Round(
                        new Stretch("seat", t.size("70"), t.plain(), t.plain(), Made.HERE, Optional.of(t.size("40"))),
                        t.letters("38", "h7", -0.025, 0)))
                .outside(new Section.Threaded(
                        new Stretch(
                                "thread",
                                t.size("30"),
                                t.plain(),
                                t.chamfer("2"),
                                Made.HERE,
                                Optional.of(t.size("32"))),
                        ScrewThread.parse("M30x2"),
                        ""))
                .keyway("keyway", "10", "5", "90", "40")
                .across(new Across.CrossHole(
                        "old hole", t.size("6"), t.size("20"), t.through(), Angle.degrees(0), Made.ALREADY))
                .part("KH-307", "EN8");
    }

    /** A spindle with all that is asked of its ends: centres that must stay and must not, a slot, a taper pin, a slit. */
    public static Part ends() {
        Turning t = Turning.mm("Governor spindle");
        return t.round("journal", t.letters("25", "h7", -0.021, 0), "60", t.chamfer("1"), t.plain())
                .round("body", "40", "50")
                .round("tail", t.size("30"), "40", t.plain(), t.chamfer("1"))
                .across(new Across.TaperPin(
                        "pin hole", t.size("6"), t.size("85"), "the collar", Angle.degrees(0), Made.HERE))
                .onEnd(new OnEnd.Centre("centre A", End.A, centre("B", 3.15), Stays.MUST, Made.HERE))
                .onEnd(new OnEnd.Centre("centre B", End.B, centre("A", 2.5), Stays.MUST_NOT, Made.HERE))
                .part("KH-308", "EN24");
    }

    /** A screwed plug with a slot across its head, and a collet sleeve split through one wall. */
    public static Part slotted() {
        Turning t = Turning.mm("Slotted plug");
        return t.thread("thread", "M20x1.5", "25", t.chamfer("1.5"), t.plain())
                .round("head", t.size("28"), "10", t.plain(), t.chamfer("1"))
                .onEnd(new OnEnd.Slot("slot", End.B, t.size("4"), t.size("4"), Angle.degrees(0), Made.HERE))
                .part("KH-309", "brass CZ121");
    }

    public static Part split() {
        Turning t = Turning.mm("Split bush");
        return t.round("outside", t.size("40"), "50", t.chamfer("1"), t.chamfer("1"))
                .bored("bore", End.A, t.letters("25", "H7", 0, 0.021), t.through(), t.plain())
                .across(new Across.Slit(
                        "slit", t.size("2"), t.size("0"), t.size("50"), Across.Walls.ONE, Angle.degrees(0), Made.HERE))
                .part("KH-310", "EN8");
    }

    /** A pipe end with its edge bevelled for a weld all round. */
    public static Part welded() {
        Turning t = Turning.mm("Pipe end");
        Edge bevel = new Edge.WeldPreparation(
                Edge.Joint.SINGLE_V, t.written("6"), Angle.degrees(30), Optional.of(t.written("2")));
        return t.round("flange", t.size("90"), "12", t.chamfer("1"), t.plain())
                .round("pipe", t.size("60"), "80", t.plain(), bevel)
                .drilled("bore", End.A, "44")
                .part("KH-312", "S275");
    }

    /** A handle with half a ball, a swelling grip and a long fillet. */
    public static Part curved() {
        Turning t = Turning.mm("Ball handle");
        curve(t, "15", "0", "30", "15", Bulge.CONVEX);
        t.round("neck", "14", "8");
        curve(t, "100", "14", "14", "50", Bulge.CONVEX);
        t.round("waist", "12", "10");
        curve(t, "15", "12", "20", "8", Bulge.CONCAVE);
        return t.round("collar", "20", "10").part("KH-313", "EN1A");
    }

    private static void curve(Turning t, String radius, String from, String to, String length, Bulge bulge) {
        Stretch stretch = new Stretch("curve of " + radius + " over " + length, t.size(length), t.plain(), t.plain());
        t.outside(new Section.Curved(stretch, t.size(from), t.size(to), t.written(radius), bulge));
    }

    /** A block whose holes lie one behind another as seen from the front. */
    public static Part block() {
        Turning t = Turning.mm("Clamp block");
        return t.block(
                "KH-311",
                new Body.Block(
                        t.size("90"),
                        t.size("50"),
                        t.size("30"),
                        List.of(
                                new Hole.Drilled("bolt hole", t.size("20"), t.size("15"), t.through(), t.size("12")),
                                new Hole.Tapped(
                                        "stud hole",
                                        t.size("20"),
                                        t.size("38"),
                                        t.blind("14"),
                                        ScrewThread.parse("M8")),
                                new Hole.Reamed(
                                        "dowel hole",
                                        t.size("70"),
                                        t.size("25"),
                                        t.blind("20"),
                                        t.letters("10", "H7", 0, 0.015)))));
    }

    /** A block with a slot right across, a short one, a step, and holes from their floors. */
    public static Part slottedBlock() {
        Turning t = Turning.mm("Slotted block");
        return t.block(
                "KH-314",
                new Body.Block(
                        t.size("90"),
                        t.size("50"),
                        t.size("30"),
                        List.of(
                                new Hole.Drilled("floor hole", t.size("40"), t.size("25"), t.through(), t.size("8")),
                                new Hole.Counterbored(
                                        "screw hole",
                                        t.size("55"),
                                        t.size("8"),
                                        t.through(),
                                        t.size("6.6"),
                                        t.size("11"),
                                        t.size("6.5"))),
                        List.of(
                                new BlockCut.Slot(
                                        "long slot",
                                        BlockCut.Way.X,
                                        t.size("25"),
                                        t.size("12"),
                                        t.size("8"),
                                        new BlockCut.Run.Open()),
                                new BlockCut.Step("step", BlockCut.Side.LEFT, t.size("15"), t.size("10")),
                                new BlockCut.Slot(
                                        "short slot",
                                        BlockCut.Way.Y,
                                        t.size("70"),
                                        t.size("8"),
                                        t.size("6"),
                                        new BlockCut.Run.Part(t.size("34"), t.size("14"))))));
    }

    private static CentreHole centre(String form, double pilot) {
        return CentreHole.list().stream()
                .filter(hole -> hole.form() == CentreHole.Form.valueOf(form)
                        && hole.pilot().equals(Length.mm(pilot)))
                .findFirst()
                .orElseThrow();
    }

    public static List<Part> all() {
        return List.of(
                wheel(),
                pinion(),
                knurled(),
                flatted(),
                flange(),
                grooved(),
                altered(),
                ends(),
                slotted(),
                split(),
                block(),
                welded(),
                curved(),
                slottedBlock());
    }
}
