package chargehand.drawing.dimension;

import chargehand.drawing.picture.Ink;
import chargehand.drawing.picture.LineStyle;
import chargehand.drawing.picture.Mark;
import chargehand.drawing.picture.Path;
import chargehand.drawing.picture.Point;
import chargehand.drawing.sign.Inscription;
import chargehand.drawing.sign.Local;
import chargehand.drawing.sign.Wording;
import chargehand.drawing.view.View;
import chargehand.measure.AngleText;
import chargehand.measure.Length;
import chargehand.measure.LengthText;
import chargehand.measure.LengthUnit;
import chargehand.part.Body;
import chargehand.part.Section;
import chargehand.part.ToothSize;
import chargehand.trade.gear.WheelSizes;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** The data table of a wheel after ISO 2203, which says what its views leave out: everything about the teeth. */
public final class GearTable {
    private static final double LETTERS = 2.5;
    private static final double ROW = 5.4;
    private static final double MARGIN = 1.5;
    private static final double BASE = 1.6;
    private static final int MM_DECIMALS = 3;
    private static final int INCH_DECIMALS = 4;

    private final LengthUnit unit;
    private final List<Row> rows = new ArrayList<>();

    private GearTable(LengthUnit unit) {
        this.unit = unit;
    }

    /** A row: what is said, and what of it. */
    private record Row(Inscription caption, Inscription value) {}

    /** The tables of a part's wheels, none where it has no teeth; of several the name stands at the top. */
    public static List<Dimensioned> of(Body.Turned body, LengthUnit unit) {
        List<Section.Toothed> wheels = body.outside().stream()
                .filter(Section.Toothed.class::isInstance)
                .map(Section.Toothed.class::cast)
                .toList();
        return wheels.stream()
                .map(wheel -> {
                    GearTable table = new GearTable(unit);
                    if (wheels.size() > 1) {
                        table.row("Wheel", wheel.name());
                    }
                    return table.of(wheel);
                })
                .toList();
    }

    private Dimensioned of(Section.Toothed wheel) {
        double module = wheel.size().module();
        WheelSizes sizes = WheelSizes.of(
                wheel.teeth(), module, wheel.pressureAngle(), wheel.outside().length());
        row("Number of teeth", Integer.toString(wheel.teeth()));
        switch (wheel.size()) {
            case ToothSize.DiametralPitch(var text, var perInch) -> row("Diametral pitch", text);
            case ToothSize.Module(var text, var mm) -> row("Module", text);
        }
        row("Pressure angle", AngleText.seconds(wheel.pressureAngle()));
        row("Teeth", "involute, full depth, straight");
        row("Pitch diameter", Wording.DIAMETER + figures(wheel.pitchDiameter()));
        if (sizes.shift() != 0) {
            row("Profile shift", String.format(Locale.ROOT, "%+.3f × module", sizes.shift()));
        }
        row("Tooth depth", figures(sizes.toothDepth()));
        sizes.span().ifPresent(span -> row("Span over " + span.over() + " teeth", figures(span.size())));
        sizes.pins()
                .ifPresent(pins -> row("Over pins of " + Wording.DIAMETER + figures(pins.pin()), figures(pins.size())));
        row(
                "Formed cutter",
                sizes.cutter().map(number -> "no. " + number + " of 8").orElse("none made for so few teeth"));
        return drawn();
    }

    /** A size worked out, without backlash. */
    private String figures(Length length) {
        return switch (unit) {
            case MILLIMETRE -> LengthText.mmFigures(length, MM_DECIMALS);
            case INCH -> LengthText.inchFigures(length, INCH_DECIMALS);
        };
    }

    private void row(String caption, String value) {
        rows.add(new Row(inscription(caption), inscription(value)));
    }

    private static Inscription inscription(String words) {
        return new Inscription(Wording.of(words), LETTERS);
    }

    private Dimensioned drawn() {
        double left =
                rows.stream().mapToDouble(row -> row.caption.width()).max().orElseThrow() + 2 * MARGIN;
        double right = rows.stream().mapToDouble(row -> row.value.width()).max().orElseThrow() + 2 * MARGIN;
        double high = rows.size() * ROW;
        List<Mark> lines = new ArrayList<>();
        List<Placing> words = new ArrayList<>();
        for (int i = 0; i < rows.size(); i++) {
            double base = (i + 1) * ROW - BASE;
            words.add(Placing.pen()
                    .label(rows.get(i).caption, Local.at(new Point(MARGIN, base)))
                    .label(rows.get(i).value, Local.at(new Point(left + MARGIN, base)))
                    .at(0));
            if (i > 0) {
                lines.add(line(new Point(0, i * ROW), new Point(left + right, i * ROW)));
            }
        }
        lines.add(line(new Point(left, 0), new Point(left, high)));
        lines.add(new Mark.Stroke(LineStyle.WIDE, Ink.INK, Path.box(new Point(0, 0), left + right, high)));
        return new Dimensioned(View.of(lines), words, List.of());
    }

    private static Mark line(Point from, Point to) {
        return new Mark.Line(LineStyle.NARROW, Ink.INK, from, to);
    }
}
