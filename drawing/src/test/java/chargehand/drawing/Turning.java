package chargehand.drawing;

import chargehand.measure.Angle;
import chargehand.measure.Length;
import chargehand.measure.LengthReader;
import chargehand.measure.LengthText;
import chargehand.measure.LengthUnit;
import chargehand.measure.Written;
import chargehand.part.Across;
import chargehand.part.Body;
import chargehand.part.Bore;
import chargehand.part.Depth;
import chargehand.part.Edge;
import chargehand.part.End;
import chargehand.part.GeneralTolerance;
import chargehand.part.InBore;
import chargehand.part.Knurl;
import chargehand.part.Made;
import chargehand.part.OnEnd;
import chargehand.part.Part;
import chargehand.part.Section;
import chargehand.part.Size;
import chargehand.part.Stretch;
import chargehand.part.Texture;
import chargehand.part.Tie;
import chargehand.part.Tolerance;
import chargehand.part.ToothSize;
import chargehand.trade.thread.ScrewThread;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Builds parts for tests the way one would describe them: section after section from end A. */
public final class Turning {
    private final String title;
    private final LengthUnit unit;
    private final List<Section> outside = new ArrayList<>();
    private final List<Bore> inside = new ArrayList<>();
    private final List<Across> across = new ArrayList<>();
    private final List<InBore> inBores = new ArrayList<>();
    private final List<OnEnd> onEnds = new ArrayList<>();
    private final List<Tie> ties = new ArrayList<>();

    private Turning(String title, LengthUnit unit) {
        this.title = title;
        this.unit = unit;
    }

    public static Turning mm(String title) {
        return new Turning(title, LengthUnit.MILLIMETRE);
    }

    public static Turning inches(String title) {
        return new Turning(title, LengthUnit.INCH);
    }

    public Size size(String written) {
        return Size.general(written(written));
    }

    public Size letters(String written, String code, double lower, double upper) {
        return new Size(written(written), new Tolerance.Letters(code, Length.mm(lower), Length.mm(upper)));
    }

    public Size deviations(String written, Length lower, Length upper) {
        return new Size(written(written), new Tolerance.Deviations(lower, upper));
    }

    public Written written(String text) {
        return LengthReader.read(text, unit);
    }

    private Stretch stretch(String name, String length, Edge atA, Edge atB) {
        return new Stretch(name, size(length), atA, atB);
    }

    public Edge plain() {
        return new Edge.Plain();
    }

    public Edge chamfer(String length) {
        return new Edge.Chamfer(written(length), Angle.degrees(45));
    }

    public Edge radius(String radius) {
        return new Edge.Radius(written(radius));
    }

    public Turning round(String name, String diameter, String length) {
        return round(name, size(diameter), length, plain(), plain());
    }

    public Turning round(String name, Size diameter, String length, Edge atA, Edge atB) {
        outside.add(new Section.Round(stretch(name, length, atA, atB), diameter));
        return this;
    }

    public Turning cone(String name, String towardsA, String towardsB, String length) {
        outside.add(new Section.Cone(stretch(name, length, plain(), plain()), size(towardsA), size(towardsB), ""));
        return this;
    }

    public Turning groove(String name, String diameter, String length) {
        outside.add(new Section.Groove(stretch(name, length, plain(), plain()), size(diameter)));
        return this;
    }

    public Turning thread(String name, String designation, String length, Edge atA, Edge atB) {
        outside.add(new Section.Threaded(stretch(name, length, atA, atB), ScrewThread.parse(designation), ""));
        return this;
    }

    public Turning polygon(String name, int sides, String flats, String length, Edge atA, Edge atB) {
        Size across = size(flats);
        Length corners = across.length().times(1 / Math.cos(Math.PI / sides));
        outside.add(new Section.Polygon(stretch(name, length, atA, atB), sides, across, corners));
        return this;
    }

    public Turning polygon(String name, int sides, String flats, String corners, String length) {
        Length over = written(corners).length();
        outside.add(new Section.Polygon(stretch(name, length, plain(), plain()), sides, size(flats), over));
        return this;
    }

    public Turning toothed(String name, int teeth, ToothSize size, double pressureAngle, String length) {
        Length tips = Section.Toothed.fullOutside(teeth, size);
        Size outside = new Size(written(LengthText.figures(tips, unit)), new Tolerance.Bracketed());
        outside(new Section.Toothed(
                stretch(name, length, plain(), plain()), teeth, size, Angle.degrees(pressureAngle), outside));
        return this;
    }

    public Turning knurled(String name, String diameter, String length, Knurl pattern, String pitch) {
        return outside(new Section.Knurled(
                stretch(name, length, chamfer("1"), chamfer("1")), size(diameter), pattern, written(pitch)));
    }

    /** Adds a plain round that was there when the work came in. */
    public static void there(Turning t, Size diameter, String length, String name) {
        Stretch stretch = new Stretch(name, t.size(length), t.plain(), t.plain(), Made.ALREADY, Optional.empty());
        t.outside(new Section.Round(stretch, diameter));
    }

    public Turning outside(Section section) {
        outside.add(section);
        return this;
    }

    public Turning inBore(InBore feature) {
        inBores.add(feature);
        return this;
    }

    public Turning onEnd(OnEnd feature) {
        onEnds.add(feature);
        return this;
    }

    public Turning bore(Bore bore) {
        inside.add(bore);
        return this;
    }

    public Turning drilled(String name, End from, String diameter) {
        return bore(new Bore.Drilled(name, from, new Depth.Through(), size(diameter)));
    }

    public Turning drilled(String name, End from, String diameter, String depth) {
        return bore(new Bore.Drilled(name, from, new Depth.Blind(size(depth)), size(diameter)));
    }

    public Turning bored(String name, End from, Size diameter, Depth depth, Edge mouth) {
        return bore(new Bore.Bored(name, from, depth, diameter, mouth));
    }

    public Depth blind(String depth) {
        return new Depth.Blind(size(depth));
    }

    public Depth through() {
        return new Depth.Through();
    }

    public Turning across(Across feature) {
        across.add(feature);
        return this;
    }

    public Turning crossHole(String name, String diameter, String at, double around) {
        return across(new Across.CrossHole(name, size(diameter), size(at), new Depth.Through(), Angle.degrees(around)));
    }

    public Turning keyway(String name, String width, String depth, String from, String length) {
        return across(new Across.Keyway(name, size(width), size(depth), size(from), size(length), Angle.degrees(0)));
    }

    public Turning tie(String of, String to, String runOut) {
        ties.add(new Tie(of, to, written(runOut)));
        return this;
    }

    public Body.Turned body() {
        return new Body.Turned(outside, inside, across, inBores, onEnds);
    }

    public Part part(String drawing, String material) {
        return part(drawing, material, body());
    }

    /** A block under this part's title. */
    public Part block(String drawing, Body.Block block) {
        return part(drawing, "EN3", block);
    }

    private Part part(String drawing, String material, Body body) {
        GeneralTolerance general = unit == LengthUnit.INCH
                ? new GeneralTolerance.PlusMinus(Length.thou(5), "±.005")
                : GeneralTolerance.Iso2768.MEDIUM;
        return new Part(
                title, drawing, "A", unit, material, "", general, Optional.of(new Texture(3.2)), body, ties, List.of());
    }
}
