package chargehand.drawing;

import chargehand.measure.Angle;
import chargehand.measure.Length;
import chargehand.part.Across;
import chargehand.part.Bore;
import chargehand.part.Edge;
import chargehand.part.End;
import chargehand.part.Part;
import chargehand.trade.thread.ScrewThread;
import java.util.List;

/** Parts that between them need every kind of line and size; all invented. */
public final class SampleParts {
    private SampleParts() {}

    /** The worked example of automatic dimensioning: a spindle with a flange, a groove and a thread. */
    public static Part spindle() {
        Turning t = Turning.mm("Spindle");
        return t.round("tail", "20", "25")
                .groove("undercut", "16", "3")
                .round("journal", t.letters("25", "h7", -0.021, 0), "12", t.plain(), t.plain())
                .round("flange", "50", "12")
                .round("body", "30", "38")
                .thread("thread", "M24", "30", t.plain(), t.chamfer("2"))
                .part("KH-101", "steel 070M20");
    }

    /** A whistle-valve union: a hexagon between two pipe threads, bored through, a cone seat. */
    public static Part union() {
        Turning t = Turning.inches("Whistle-valve union");
        return t.thread("lower thread", "G 1/2", "5/8", t.chamfer("1/16"), t.plain())
                .groove("lower undercut", ".700", "1/8")
                .polygon(
                        "hexagon",
                        6,
                        "1 1/8",
                        "1/2",
                        new Edge.Chamfer(t.written("1/16"), Angle.degrees(30)),
                        new Edge.Chamfer(t.written("1/16"), Angle.degrees(30)))
                .groove("upper undercut", ".540", "1/8")
                .thread("upper thread", "G 3/8", "9/16", t.plain(), t.chamfer("1/16"))
                .drilled("hole", End.A, "3/8")
                .bore(new Bore.Coned("seat", End.B, t.through(), t.size("1/2"), Angle.degrees(60), t.size("3/8")))
                .part("KH-214", "gunmetal LG2");
    }

    public static Part bush() {
        Turning t = Turning.mm("Bearing bush");
        return t.round("outside", t.letters("45", "p6", 0.026, 0.042), "60", t.chamfer("1"), t.chamfer("1"))
                .bored("bore", End.A, t.letters("32", "H7", 0, 0.025), t.through(), t.chamfer("1"))
                .crossHole("oil hole", "6", "30", 0)
                .tie("outside", "bore", "0.02")
                .part("KH-220", "phosphor bronze PB1");
    }

    public static Part ram() {
        Turning t = Turning.mm("Feed-pump ram");
        return t.thread("end", "M20x1.5", "30", t.chamfer("1.5"), t.plain())
                .groove("undercut", "17.5", "4")
                .round("ram", t.letters("28", "f7", -0.041, -0.020), "480", t.plain(), t.plain())
                .cone("nose", "28", "18", "20")
                .round("tip", t.size("18"), "12", t.plain(), t.radius("2"))
                .tie("ram", "end", "0.03")
                .part("KH-231", "stainless steel 431S29");
    }

    public static Part pin() {
        Turning t = Turning.inches("Fairlead roller pin");
        return t.round("head", t.size("1 3/4"), "3/8", t.chamfer("1/16"), t.plain())
                .round(
                        "shank",
                        t.deviations("1 1/4", Length.thou(-2), Length.thou(-1)),
                        "4 1/2",
                        t.radius("1/16"),
                        t.chamfer("1/16"))
                .crossHole("split pin hole", "1/4", "4 1/2", 0)
                .drilled("grease hole", End.A, "1/4", "2 1/2")
                .across(new Across.CrossHole(
                        "grease outlet", t.size("3/16"), t.size("2 3/8"), t.blind("5/8"), Angle.degrees(90)))
                .part("KH-205", "steel EN8");
    }

    public static Part square() {
        Turning t = Turning.mm("Sluice spindle end");
        return t.thread("screw", "Tr 30x6 LH", "80", t.chamfer("3"), t.plain())
                .round("shank", "24", "40")
                .round("collar", "40", "15")
                .round("neck", "24", "20")
                .polygon("square", 4, "19", "24", "30")
                .part("KH-240", "naval brass CZ112");
    }

    public static Part keyed() {
        Turning t = Turning.mm("Winch shaft");
        return t.round("seat", t.letters("35", "k6", 0.002, 0.018), "60", t.chamfer("1"), t.radius("1"))
                .round("collar", "50", "20")
                .cone("taper", "35", "28", "70")
                .thread("nut thread", "M20x1.5", "25", t.plain(), t.chamfer("1.5"))
                .keyway("keyway", "10", "5", "8", "45")
                .tie("taper", "seat", "0.02")
                .part("KH-250", "steel EN8");
    }

    public static Part hub() {
        Turning t = Turning.mm("Flanged hub");
        return t.round("flange", t.size("80"), "14", t.chamfer("1"), t.plain())
                .round("hub", t.size("50"), "36", t.radius("3"), t.chamfer("1.5"))
                .bored("bore", End.A, t.letters("25", "H7", 0, 0.021), t.through(), t.plain())
                .bore(new Bore.Counterbored("recess", End.A, t.blind("6"), t.size("40"), t.plain()))
                .bore(new Bore.Tapped("tapped", End.B, t.blind("15"), ScrewThread.parse("M30x2"), ""))
                .part("KH-260", "cast iron GG25");
    }

    public static List<Part> turned() {
        return List.of(spindle(), union(), bush(), ram(), pin(), square(), keyed(), hub());
    }
}
