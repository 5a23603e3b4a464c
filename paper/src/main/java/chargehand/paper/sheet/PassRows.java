package chargehand.paper.sheet;

import chargehand.drawing.picture.Canvas;
import chargehand.drawing.picture.Point;
import chargehand.measure.LengthText;
import chargehand.measure.LengthUnit;
import chargehand.method.plan.Settings;
import chargehand.method.plan.Settings.Pass;
import java.util.List;
import java.util.stream.Collectors;

/** What the dial reads for each pass, and what that leaves: a few on a line, many in columns read downwards. */
final class PassRows {
    private static final int MOST_ON_A_LINE = 5;
    private static final int COLUMNS = 3;
    private static final double LINE = 6.4;

    /** An arrow between spaces at which no line is broken. */
    private static final String ARROW = "\u00a0→\u00a0";

    private final List<Pass> passes;
    private final LengthUnit unit;
    private final String label;

    PassRows(Settings settings, String dialSense) {
        this.passes = settings.passes();
        this.unit = settings.unit();
        this.label = "Dial" + (dialSense.isBlank() ? "" : " (" + dialSense + ")") + " → leaves";
    }

    /** Draws them from here down. @return where the next line may stand */
    double draw(Canvas canvas, double top) {
        if (passes.isEmpty()) {
            return top - 1.5;
        }
        return passes.size() > MOST_ON_A_LINE ? columns(canvas, top) : line(canvas, top);
    }

    private double line(Canvas canvas, double top) {
        String words = passes.stream().map(this::pass).collect(Collectors.joining("; "));
        return canvas.paragraph(
                Type.BODY, Point.of(OperationRows.INDENT, top), OperationRows.ACROSS, label + ": " + words);
    }

    private double columns(Canvas canvas, double top) {
        double first = canvas.paragraph(
                Type.BODY, Point.of(OperationRows.INDENT, top), OperationRows.ACROSS, label + ", in " + unit.symbol());
        int lines = Math.ceilDiv(passes.size(), COLUMNS);
        for (int i = 0; i < passes.size(); i++) {
            int column = i / lines;
            double left = OperationRows.INDENT + column * OperationRows.ACROSS / COLUMNS;
            double y = first + i % lines * LINE;
            canvas.words(
                    Type.SMALL, Point.of(left, y), String.valueOf(passes.get(i).number()));
            canvas.words(Type.BODY, Point.of(left + 7, y), pass(passes.get(i)));
        }
        return first + lines * LINE;
    }

    private String pass(Pass pass) {
        return LengthText.figures(pass.dial(), unit) + ARROW + LengthText.figures(pass.leaves(), unit);
    }
}
