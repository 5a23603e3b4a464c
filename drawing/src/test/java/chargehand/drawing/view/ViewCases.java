package chargehand.drawing.view;

import chargehand.drawing.FeatureParts;
import chargehand.drawing.SampleParts;
import chargehand.drawing.Turning;
import chargehand.drawing.picture.Box;
import chargehand.drawing.picture.Canvas;
import chargehand.drawing.picture.Picture;
import chargehand.measure.Length;
import chargehand.part.Body;
import chargehand.part.Bore;
import chargehand.part.End;
import chargehand.part.Part;
import chargehand.part.shape.Solid;
import chargehand.part.shape.Station;
import chargehand.trade.thread.ScrewThread;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Supplier;

/** Views without sizes that between them show every kind of line there is, each as a picture; the parts are invented. */
final class ViewCases {
    private static final double BETWEEN = 12;
    private static final double MARGIN = 3;

    private static final Map<String, Supplier<List<View>>> CASES = cases();

    private ViewCases() {}

    static List<String> names() {
        return List.copyOf(CASES.keySet());
    }

    /** The views of a case in a row. */
    static Picture picture(String name) {
        List<View> views = Objects.requireNonNull(CASES.get(name), name).get();
        Canvas canvas = new Canvas();
        double left = MARGIN;
        double highest =
                views.stream().mapToDouble(view -> -view.bounds().top()).max().orElseThrow();
        double lowest =
                views.stream().mapToDouble(view -> view.bounds().bottom()).max().orElseThrow();
        for (View view : views) {
            Box box = view.bounds();
            double right = left - box.left();
            view.marks().forEach(mark -> canvas.put(mark.moved(right, highest + MARGIN)));
            left += box.width() + BETWEEN;
        }
        return canvas.picture(left - BETWEEN + MARGIN, highest + lowest + 2 * MARGIN, name);
    }

    private static Map<String, Supplier<List<View>>> cases() {
        Map<String, Supplier<List<View>>> cases = new LinkedHashMap<>();
        cases.put("thread-outside", () -> outside(stud(), Cut.NONE));
        cases.put("thread-outside-cut", () -> outside(tube(), Cut.HALF));
        cases.put("thread-inside-through", () -> outside(nut(), Cut.FULL));
        cases.put("thread-inside-blind", () -> outside(blind(), Cut.HALF));
        cases.put("break-out", () -> outside(SampleParts.pin(), Cut.LOCAL));
        cases.put("break-out-long", () -> List.of(SideView.of(longShaft())));
        cases.put("square", () -> outside(SampleParts.square(), Cut.NONE));
        cases.put("detail", ViewCases::detail);
        cases.put("wheel", () -> features(FeatureParts.wheel(), Cut.HALF));
        cases.put("pinion", () -> features(FeatureParts.pinion(), Cut.NONE));
        cases.put("knurl", () -> features(FeatureParts.knurled(), Cut.NONE));
        cases.put("flat", () -> features(FeatureParts.flatted(), Cut.NONE));
        cases.put("flange-holes", () -> features(FeatureParts.flange(), Cut.HALF));
        cases.put("altered", () -> features(FeatureParts.altered(), Cut.NONE));
        cases.put("end-slot", () -> features(FeatureParts.slotted(), Cut.NONE));
        cases.put("end-slot-cut", () -> features(FeatureParts.slotted(), Cut.HALF));
        cases.put("slit", () -> features(FeatureParts.split(), Cut.HALF));
        cases.put("taper-pin", () -> features(FeatureParts.ends(), Cut.NONE));
        cases.put("block", () -> block((Body.Block) FeatureParts.block().body()));
        cases.put(
                "block-slots",
                () -> block((Body.Block) FeatureParts.slottedBlock().body()));
        cases.put("curved", () -> features(FeatureParts.curved(), Cut.NONE));
        cases.put("oil-groove", () -> features(FeatureParts.grooved(), Cut.FULL));
        return cases;
    }

    private static List<View> outside(Part part, Cut cut) {
        Solid solid = Solid.of((Body.Turned) part.body());
        return List.of(
                EndView.of(solid, 1, End.B),
                SideView.of(new Look(solid, AxialScale.of(1), cut)),
                EndView.of(solid, 1, End.A));
    }

    private static List<View> block(Body.Block block) {
        return List.of(BlockView.front(block, 1), BlockView.left(block, 1), BlockView.plan(block, 1));
    }

    private static List<View> features(Part part, Cut cut) {
        Look look = Look.of((Body.Turned) part.body(), AxialScale.of(1), cut);
        return List.of(EndView.of(look, End.B), SideView.of(look), EndView.of(look, End.A));
    }

    static Part stud() {
        Turning t = Turning.mm("Stud");
        return t.thread("nut end", "M20", "30", t.chamfer("2"), t.plain())
                .round("shank", "20", "40")
                .thread("other end", "M16x1", "20", t.plain(), t.chamfer("1"))
                .part("KH-1", "8.8");
    }

    static Part tube() {
        Turning t = Turning.mm("Tube");
        return t.thread("thread", "G 1", "20", t.chamfer("1.5"), t.plain())
                .round("collar", "45", "20")
                .thread("taper thread", "R 3/4", "20", t.plain(), t.plain())
                .drilled("bore", End.A, "16")
                .part("KH-2", "brass");
    }

    static Part nut() {
        Turning t = Turning.mm("Nut");
        return t.polygon("hexagon", 6, "46", "24", t.chamfer("3"), t.chamfer("3"))
                .bore(new Bore.Tapped("thread", End.A, t.through(), ScrewThread.parse("M30"), ""))
                .part("KH-3", "8");
    }

    static Part blind() {
        Turning t = Turning.mm("Boss");
        return t.round("boss", "50", "60")
                .round("flange", "70", "10")
                .bore(new Bore.Tapped("thread", End.A, t.blind("30"), ScrewThread.parse("M24"), ""))
                .part("KH-4", "EN8");
    }

    private static Look longShaft() {
        Turning t = Turning.mm("Shaft");
        Solid shaft = Solid.of(t.round("shaft", "40", "600")
                .drilled("grease hole", End.B, "8", "60")
                .crossHole("outlet", "6", "550", 0)
                .body());
        return new Look(shaft, Shortening.of(shaft, 0.5), Cut.LOCAL);
    }

    private static List<View> detail() {
        Solid spindle = Solid.of((Body.Turned) SampleParts.spindle().body());
        Look look = new Look(spindle, AxialScale.of(0.5), Cut.NONE);
        Detail detail = new Detail(look, Side.ABOVE, new Station(Length.mm(26.5), Length.mm(10)), Length.mm(5), 5);
        return List.of(SideView.of(look).with(View.of(List.of(detail.ring()))), detail.view());
    }
}
