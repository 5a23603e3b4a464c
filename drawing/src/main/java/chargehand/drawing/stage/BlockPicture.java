package chargehand.drawing.stage;

import chargehand.drawing.dimension.Annotations;
import chargehand.drawing.dimension.Dimensioned;
import chargehand.drawing.picture.Box;
import chargehand.drawing.picture.Ink;
import chargehand.drawing.picture.LineStyle;
import chargehand.drawing.picture.Mark;
import chargehand.drawing.picture.Path;
import chargehand.drawing.picture.Picture;
import chargehand.drawing.picture.Point;
import chargehand.drawing.sign.Wording;
import chargehand.drawing.view.View;
import java.util.ArrayList;
import java.util.List;

/** Draws a block in a vice: at the left between the jaws, at the right along them, the front jaw before it. */
public final class BlockPicture {
    private static final double MARGIN = 3;
    private static final double JAW = 12;
    private static final double BASE = 10;
    private static final double CLAMP = 4;
    private static final double BETWEEN = 16;
    private static final double MOST = 2;

    private final BlockStage stage;
    private final double scale;
    private final List<Mark> marks = new ArrayList<>();

    private BlockPicture(BlockStage stage, double scale) {
        this.stage = stage;
        this.scale = scale;
    }

    /**
     * The picture of a block's stage.
     *
     * @param width about how wide it should be (mm)
     * @param height about how high it should be (mm)
     */
    public static Picture of(BlockStage stage, double width, double height) {
        double wide = stage.between().plus(stage.along()).mm();
        double tall = Math.max(stage.high().mm(), stage.stock().mm());
        double room = width - 4 * JAW - BETWEEN - 2 * MARGIN;
        double scale = Math.min(MOST, Math.min(room / wide, (height - 45) / tall));
        List<Mark> marks = new BlockPicture(stage, Math.max(scale, 0.02)).drawn(width);
        Box bounds = Box.of(marks).grown(MARGIN);
        return new Picture(
                bounds.width(),
                bounds.height(),
                stage.title(),
                marks.stream()
                        .map(mark -> mark.moved(-bounds.left(), -bounds.top()))
                        .toList());
    }

    /** Both views on one base line at y = 0, the jaws' tops above it. */
    private List<Mark> drawn(double width) {
        double between = scale * stage.between().mm();
        double along = scale * stage.along().mm();
        double front = between + 2 * JAW + BETWEEN + JAW;
        double jaws = scale * Math.max(0, stage.high().minus(stage.above()).mm());
        block(0, between);
        between(between, jaws);
        block(front, along);
        holes(front);
        along(front, along, jaws);
        top(0, between);
        top(front, along);
        return called(width, front, between).marks();
    }

    private void block(double left, double wide) {
        double high = scale * stage.high().mm();
        double stock = scale * stage.stock().mm();
        marks.add(new Mark.Fill(Ink.PAPER, Path.box(new Point(left, -high), wide, high)));
        if (stock > high) {
            stroke(LineStyle.DOUBLE_CHAIN, Ink.INK, Path.box(new Point(left, -stock), wide, stock));
        }
        stroke(LineStyle.WIDE, Ink.INK, Path.box(new Point(left, -high), wide, high));
    }

    /** What holds the block, seen along the jaws. */
    private void between(double wide, double jaws) {
        switch (stage.rest()) {
            case BlockStage.Rest.Vice() -> {
                tint(-JAW, -jaws, JAW, jaws);
                tint(wide, -jaws, JAW, jaws);
                tint(-JAW, 0, wide + 2 * JAW, BASE);
            }
            case BlockStage.Rest.Table(var out, var along) -> table(0, wide, out);
        }
    }

    /** What holds the block, seen square to the jaws. */
    private void along(double front, double wide, double jaws) {
        switch (stage.rest()) {
            case BlockStage.Rest.Vice() -> {
                tint(front - JAW / 2, -jaws, wide + JAW, jaws);
                tint(front - JAW / 2, 0, wide + JAW, BASE);
            }
            case BlockStage.Rest.Table(var between, var out) -> table(front, wide, out);
        }
    }

    /** The table below, a clamp with its heel block over each end that does not stand out, and the edge to cut. */
    private void table(double left, double wide, BlockStage.Out out) {
        double lap = Math.min(JAW / 2, wide / 4);
        double from = out.left() ? left + lap : left - JAW;
        double to = out.right() ? left + wide - lap : left + wide + JAW;
        tint(from, 0, to - from, BASE);
        if (out.left()) {
            edge(left);
        } else {
            clamp(left - JAW, left - JAW, lap);
        }
        if (out.right()) {
            edge(left + wide);
        } else {
            clamp(left + wide - lap, left + wide + JAW - CLAMP, lap);
        }
    }

    private void clamp(double at, double heel, double lap) {
        double high = scale * stage.high().mm();
        tint(at, -high - CLAMP, JAW + lap, CLAMP);
        tint(heel, -high, CLAMP, high);
    }

    private void edge(double x) {
        double high = scale * stage.high().mm();
        stroke(LineStyle.HEAVY, Ink.MARKING, Path.through(List.of(new Point(x, -high), new Point(x, 0))));
    }

    private void tint(double left, double top, double wide, double high) {
        marks.addAll(new Tint().box(left, top, left + wide, top + high).marks());
    }

    private void top(double left, double wide) {
        double high = scale * stage.high().mm();
        if (stage.top()) {
            stroke(
                    LineStyle.HEAVY,
                    Ink.MARKING,
                    Path.through(List.of(new Point(left, -high), new Point(left + wide, -high))));
        }
    }

    private void holes(double front) {
        double high = scale * stage.high().mm();
        for (BlockStage.HoleBelow hole : stage.holes()) {
            double x = front + scale * hole.at().mm();
            double half = scale * hole.diameter().mm() / 2;
            double floor = -high + scale * hole.depth().mm();
            stroke(
                    LineStyle.HEAVY,
                    Ink.MARKING,
                    Path.through(List.of(
                            new Point(x - half, -high),
                            new Point(x - half, floor),
                            new Point(x + half, floor),
                            new Point(x + half, -high))));
            marks.add(new Mark.Line(LineStyle.CHAIN, Ink.INK, new Point(x, -high - 4), new Point(x, floor)));
        }
    }

    private void stroke(LineStyle style, Ink ink, Path path) {
        marks.add(new Mark.Stroke(style, ink, path));
    }

    private Dimensioned called(double width, double front, double between) {
        double high = scale * stage.high().mm();
        double outline = scale * Math.max(stage.high().mm(), stage.stock().mm());
        Annotations annotations = new Annotations(View.of(marks), new Box(-JAW - 5, -1_000, width, 1_000));
        if (!stage.label().isBlank()) {
            annotations.callout(
                    List.of(new Point(between * 0.6, -high), new Point(between * 0.4, -high)),
                    outline,
                    Wording.of(stage.label()),
                    Ink.MARKING);
        }
        for (BlockStage.HoleBelow hole : stage.holes()) {
            if (!hole.label().isBlank()) {
                double x = front + scale * (hole.at().mm() + hole.diameter().mm() / 2);
                annotations.callout(List.of(new Point(x, -high)), outline, Wording.of(hole.label()), Ink.MARKING);
            }
        }
        return annotations.placed();
    }
}
