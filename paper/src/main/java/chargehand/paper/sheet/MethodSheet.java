package chargehand.paper.sheet;

import chargehand.drawing.picture.Canvas;
import chargehand.drawing.picture.LineStyle;
import chargehand.drawing.picture.Mark;
import chargehand.drawing.picture.Picture;
import chargehand.drawing.picture.Point;
import chargehand.method.plan.Method;
import chargehand.method.plan.Operation;
import chargehand.method.plan.SetUp;
import chargehand.method.start.BeforeStart;
import java.util.ArrayList;
import java.util.List;

/**
 * Composes the method sheet: a first page with stock, set-ups, tools and cautions, then one page or more for each set-up.
 * Black only; every page says what it belongs to, so that a page found on the floor finds its way back.
 */
public final class MethodSheet {
    /** The widest a stage picture may be (mm). */
    public static final double STAGE_WIDTH = Page.TEXT_WIDTH;

    /** The highest a stage picture may be (mm). */
    public static final double STAGE_HEIGHT = 72;

    private static final double CODE_WIDTH = 27;

    private final SheetFor sheet;
    private final Method method;

    private MethodSheet(SheetFor sheet) {
        this.sheet = sheet;
        this.method = sheet.method();
    }

    /** The pages in order. */
    public static List<Picture> pages(SheetFor sheet) {
        return new MethodSheet(sheet).pages();
    }

    private List<Picture> pages() {
        var canvases = new ArrayList<Canvas>();
        canvases.addAll(
                new Flow(this::firstHeading).addAll(new Overview(method).rows()).pages());
        for (int i = 0; i < method.setUps().size(); i++) {
            canvases.addAll(setUp(i));
        }
        return finished(canvases);
    }

    private List<Picture> finished(List<Canvas> canvases) {
        var pictures = new ArrayList<Picture>();
        for (int i = 0; i < canvases.size(); i++) {
            foot(canvases.get(i), i + 1, canvases.size());
            pictures.add(canvases.get(i).picture(Page.WIDTH, Page.HEIGHT, "Method sheet, " + method.title()));
        }
        return pictures;
    }

    private String about() {
        String job = sheet.job().isBlank() ? "" : sheet.job() + " · ";
        return job + method.title() + " · issue " + method.issue() + " · " + method.count() + " off";
    }

    private double firstHeading(Canvas page, boolean goesOn) {
        double y = Page.TOP + 4;
        page.words(Type.SMALL, Point.of(Page.LEFT, y), about());
        page.words(Type.HEADING, Point.of(Page.LEFT, y + 12), goesOn ? "Method, continued" : "Method");
        sheet.code().ifPresent(code -> {
            page.place(code.picture(CODE_WIDTH), Point.of(Page.RIGHT - CODE_WIDTH, Page.TOP - 3));
            page.words(Type.SMALL, Point.of(Page.RIGHT, Page.TOP + CODE_WIDTH), Mark.Align.RIGHT, sheet.job());
        });
        double rule = Page.TOP + (sheet.code().isPresent() ? CODE_WIDTH + 3 : 20);
        page.line(LineStyle.HEAVY, Point.of(Page.LEFT, rule), Point.of(Page.RIGHT, rule));
        return rule + 4;
    }

    private List<Canvas> setUp(int index) {
        SetUp setUp = method.setUps().get(index);
        var flow = new Flow((page, goesOn) -> heading(page, setUp, goesOn));
        sheet.stage(index).ifPresent(stage -> flow.add(Rows.picture(stage)));
        if (!setUp.instructions().isEmpty()) {
            flow.add(Rows.heading("Set up"));
            setUp.instructions().forEach(instruction -> flow.add(Rows.tick(instruction)));
            flow.add(Rows.rule());
        }
        flow.add(Rows.heading("Before switching on"));
        flow.addAll(Rows.ticks(BeforeStart.of(method, setUp, sheet.kit()), 2));
        flow.add(Rows.rule());
        String sense = sheet.kit().crossReads(setUp.machine());
        for (Operation operation : setUp.operations()) {
            flow.together(new OperationRows(operation, sense).rows());
        }
        return flow.pages();
    }

    private double heading(Canvas page, SetUp setUp, boolean goesOn) {
        double y = Page.TOP + 4;
        page.words(Type.SMALL, Point.of(Page.LEFT, y), about());
        String title = "Set-up " + setUp.number() + " of " + method.setUps().size() + (goesOn ? ", continued" : "");
        page.words(Type.HEADING, Point.of(Page.LEFT, y + 12), title);
        page.words(Type.STRONG, Point.of(Page.RIGHT, y + 5), Mark.Align.RIGHT, setUp.machine());
        page.words(Type.BODY, Point.of(Page.RIGHT, y + 12), Mark.Align.RIGHT, HeldIn.say(setUp.holding()));
        page.line(LineStyle.HEAVY, Point.of(Page.LEFT, y + 16), Point.of(Page.RIGHT, y + 16));
        return y + 20;
    }

    private void foot(Canvas page, int number, int of) {
        page.line(LineStyle.NARROW, Point.of(Page.LEFT, Page.FOOT - 5), Point.of(Page.RIGHT, Page.FOOT - 5));
        page.words(Type.SMALL, Point.of(Page.LEFT, Page.FOOT), sheet.proof());
        page.words(Type.SMALL, Point.of(Page.RIGHT, Page.FOOT), Mark.Align.RIGHT, "page " + number + " of " + of);
    }
}
