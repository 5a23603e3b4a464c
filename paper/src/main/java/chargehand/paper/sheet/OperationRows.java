package chargehand.paper.sheet;

import chargehand.drawing.picture.Canvas;
import chargehand.drawing.picture.LineStyle;
import chargehand.drawing.picture.Point;
import chargehand.measure.Length;
import chargehand.measure.LengthText;
import chargehand.measure.LengthUnit;
import chargehand.method.plan.Operation;
import chargehand.method.plan.Reading;
import chargehand.method.plan.Settings;
import chargehand.method.start.StopFirst;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** One operation on the sheet: its number large, what to do, what to set, what to read, and where to sign. */
final class OperationRows {
    static final double INDENT = 17;
    private static final double FIGURES_AT = 118;
    private static final double TICK = 7;

    /** From the indent to the box at the right. */
    static final double ACROSS = Page.TEXT_WIDTH - INDENT - TICK - 4;

    private final Operation operation;
    private final String dialSense;

    OperationRows(Operation operation, String dialSense) {
        this.operation = operation;
        this.dialSense = dialSense;
    }

    List<Row> rows() {
        var rows = new ArrayList<Row>();
        rows.add(main());
        StopFirst.of(operation).forEach(stop -> rows.add(Rows.stop(stop)));
        operation.cautions().forEach(caution -> rows.add(Rows.care(caution)));
        if (operation.hold()) {
            rows.add(hold());
        } else {
            operation.readings().forEach(reading -> rows.add(reading(reading)));
        }
        rows.add(Rows.rule());
        return rows;
    }

    private LengthUnit unit() {
        return operation.settings().unit();
    }

    private Row main() {
        var canvas = new Canvas();
        canvas.words(Type.NUMBER, Point.of(0, 11.5), String.valueOf(operation.number()));
        double width = FIGURES_AT - INDENT - 3;
        double y = canvas.paragraph(Type.STRONG, Point.of(INDENT, 6), width, operation.say());
        double figures = figures(canvas);
        double room = y < figures ? width : ACROSS;
        y = canvas.paragraph(Type.SMALL, Point.of(INDENT, y), room, underText());
        double passes = new PassRows(operation.settings(), dialSense).draw(canvas, y + 1.5);
        canvas.box(LineStyle.WIDE, Point.of(Page.TEXT_WIDTH - TICK, 2), TICK, TICK);
        return Rows.row(canvas, Math.max(14, Math.max(figures, passes)), operation.say());
    }

    private String underText() {
        Settings settings = operation.settings();
        String tool = settings.tool();
        String coolant = settings.coolant().isBlank() ? "" : " · " + settings.coolant();
        return tool + coolant + gearing() + indexing() + topSlide();
    }

    private String gearing() {
        return operation
                .settings()
                .gearing()
                .map(train -> " · wheels " + join(train.drivers()) + " driving " + join(train.driven())
                        + (train.gearbox().isBlank() ? "" : ", gearbox " + train.gearbox()) + "; "
                        + train.dialMarks())
                .orElse("");
    }

    private static String join(List<Integer> teeth) {
        return teeth.stream().map(String::valueOf).collect(Collectors.joining(" and "));
    }

    private String indexing() {
        return operation
                .settings()
                .indexing()
                .map(index -> " · crank " + index.turns() + (index.turns() == 1 ? " turn" : " turns")
                        + (index.holes() == 0
                                ? ""
                                : " and " + index.holes() + " holes on the " + index.circle() + " circle")
                        + " for each of " + index.divisions()
                        + index.geared()
                                .map(gears -> "; plate geared: " + gears.says())
                                .orElse(""))
                .orElse("");
    }

    private String topSlide() {
        return operation
                .settings()
                .topSlide()
                .map(angle -> String.format(Locale.ROOT, " · top slide at %.2f°", angle.degrees()))
                .orElse("");
    }

    /** Speed and feed, large. */
    private double figures(Canvas canvas) {
        Settings settings = operation.settings();
        double y = 6;
        if (settings.speed().isPresent()) {
            String rpm =
                    String.format(Locale.ROOT, "%.0f", settings.speed().get().rpm());
            canvas.words(Type.FIGURES, Point.of(FIGURES_AT, y), rpm);
            canvas.words(Type.SMALL, Point.of(FIGURES_AT + Type.FIGURES.width(rpm) + 1.2, y), "rpm");
        }
        if (settings.feed().isPresent()) {
            String figures = LengthText.figures(length(settings.feed().get()), unit());
            canvas.words(Type.FIGURES, Point.of(FIGURES_AT + 26, y), figures);
            canvas.words(
                    Type.SMALL,
                    Point.of(FIGURES_AT + 26, y + 4.5),
                    unit().symbol() + (settings.feed().get() instanceof Settings.Feed.PerTurn ? "/turn" : "/min"));
            y += 4.5;
        } else if (settings.speed().isPresent()) {
            canvas.words(Type.SMALL, Point.of(FIGURES_AT + 26, y), "by hand");
        }
        return y + 4;
    }

    private static Length length(Settings.Feed feed) {
        return switch (feed) {
            case Settings.Feed.PerTurn perTurn -> perTurn.length();
            case Settings.Feed.PerMinute perMinute -> perMinute.length();
        };
    }

    private String limits(Reading reading) {
        return LengthText.figures(reading.limits().least(), unit()) + " to "
                + LengthText.in(reading.limits().most(), unit());
    }

    /** A reading with room to write it. */
    private Row reading(Reading reading) {
        var canvas = new Canvas();
        double y = canvas.paragraph(
                Type.BODY,
                Point.of(INDENT, 7),
                Page.TEXT_WIDTH - INDENT - 32,
                "Read " + reading.what() + ": " + limits(reading) + ", " + reading.gauge());
        canvas.box(LineStyle.NARROW, Point.of(Page.TEXT_WIDTH - 28, 1), 28, 10);
        return Rows.row(canvas, Math.max(12.5, y - 3), reading.what());
    }

    /** A hold point: a heavy box; work stops until someone else has passed the readings. */
    private Row hold() {
        var canvas = new Canvas();
        double y = canvas.paragraph(
                Type.STRONG, Point.of(5, 8), Page.TEXT_WIDTH - 10, "STOP. Do not go on until this is passed.");
        for (Reading reading : operation.readings()) {
            y = canvas.paragraph(
                    Type.BODY,
                    Point.of(5, y + 1),
                    Page.TEXT_WIDTH - 40,
                    reading.what() + ": " + limits(reading) + ", " + reading.gauge());
            canvas.line(LineStyle.NARROW, Point.of(Page.TEXT_WIDTH - 34, y - 5), Point.of(Page.TEXT_WIDTH - 5, y - 5));
        }
        canvas.words(Type.BODY, Point.of(5, y + 4), "taken by ________________   passed by ________________");
        double height = y + 9;
        canvas.box(LineStyle.HEAVY, Point.of(0.6, 1.5), Page.TEXT_WIDTH - 1.2, height - 3);
        return Rows.row(canvas, height, "hold point");
    }
}
