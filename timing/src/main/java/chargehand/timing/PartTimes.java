package chargehand.timing;

import chargehand.drawing.pdf.Pdf;
import chargehand.drawing.picture.Picture;
import chargehand.drawing.sheet.PartDrawing;
import chargehand.drawing.svg.Svg;
import chargehand.method.plan.Bound;
import chargehand.method.plan.Method;
import chargehand.method.plan.Planned;
import chargehand.method.replay.Proof;
import chargehand.method.replay.Replay;
import chargehand.method.search.Planner;
import chargehand.paper.sheet.Sheets;
import chargehand.part.Part;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;

/** What each of the demo's parts takes: to plan, to prove, to draw and to print. */
final class PartTimes {
    private static final int WARM = 3;
    private static final int RUNS = 9;
    private static final int PROCESSES = 3;

    private final Path demo;
    private final DemoWorkshop workshop;
    private final Report report;

    private PartTimes(Path demo, Report report) throws IOException {
        this.demo = demo;
        this.workshop = DemoWorkshop.read(demo);
        this.report = report;
    }

    static void report(Path demo, Report report) throws Exception {
        new PartTimes(demo, report).report();
    }

    private void report() throws Exception {
        report.say("The demo's parts on the demo's kit and rack. Medians of " + RUNS + " after " + WARM
                + " for nothing, and of " + PROCESSES + " processes for the first plan");
        report.say(
                "of a process just started. The plan should take 0.3 s at the most when warm. The sheet is the method's,"
                        + " as PDF.");
        report.say("");
        report.row(List.of(
                "part",
                "plan, warm",
                "worst",
                "first plan",
                "set-ups weighed",
                "replay",
                "drawing SVG",
                "drawing PDF",
                "sheet PDF",
                "load"));
        report.row(List.of("---", "---", "---", "---", "---", "---", "---", "---", "---", "---"));
        for (int number = 0; number < workshop.drawn().size(); number++) {
            row(number);
        }
    }

    private void row(int number) throws Exception {
        DemoWorkshop.Drawn drawn = workshop.drawn().get(number);
        Part part = drawn.part();
        var planner = new Planner(workshop.kit(), workshop.rack());
        if (!(planner.plan(part, drawn.count()) instanceof Planned.Ready(Method method, long weighed, Bound bound))) {
            report.row(List.of(drawn.name(), "no method here", "", "", "", "", "", "", "", Machine.load()));
            return;
        }
        Proof proof = Replay.of(part, method, workshop.kit());
        var proved = new Sheets.Proved(part, method, proof);
        Stopwatch planned = Stopwatch.of(WARM, RUNS, () -> planner.plan(part, drawn.count()));
        report.row(List.of(
                drawn.name(),
                planned.text(),
                Stopwatch.seconds(planned.seconds().getLast()),
                Stopwatch.seconds(FirstPlan.of(demo, number, PROCESSES).median()),
                Long.toString(weighed),
                time(() -> Replay.of(part, method, workshop.kit())) + (proof.made() ? "" : ", not proved"),
                time(() -> Svg.write(PartDrawing.of(part))),
                time(() -> pdf(List.of(PartDrawing.of(part)))),
                time(() -> pdf(Sheets.method(proved, workshop.kit(), "", Optional.empty()))),
                Machine.load()));
    }

    private static String time(Callable<?> work) throws Exception {
        return Stopwatch.of(WARM, RUNS, work).text();
    }

    private static byte[] pdf(List<Picture> pages) throws IOException {
        var out = new ByteArrayOutputStream();
        Pdf.write(pages, out);
        return out.toByteArray();
    }
}
