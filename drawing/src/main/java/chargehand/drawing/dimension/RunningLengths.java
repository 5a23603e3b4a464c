package chargehand.drawing.dimension;

import chargehand.drawing.picture.Ink;
import chargehand.drawing.picture.LineStyle;
import chargehand.drawing.picture.Mark;
import chargehand.drawing.sign.Inscription;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;

/**
 * Lengths from one face set on one line (ISO 129-1, running dimensions): a circle at the origin, an arrow at each end, each
 * value at the end of its extension line. They take the room of one tier where many would be stacked.
 *
 * @param origin the face all are given from (mm along the side)
 * @param spans the lengths, each beginning or ending at the origin
 */
record RunningLengths(double origin, List<Span> spans) {
    /** The circle at the origin (mm; from memory of the standard). */
    static final double CIRCLE = 1.5;

    /** Fewer than this are better stacked. */
    private static final int FEW = 6;

    private static final double SAME = 1e-6;

    /** From the end of an extension line to its value, and between two values side by side (mm). */
    private static final double CLEAR = 0.8;

    RunningLengths {
        spans = List.copyOf(spans);
    }

    /** The largest set of these lengths from one face that can stand on one line; empty where there are too few. */
    static Optional<RunningLengths> among(List<Span> all) {
        Map<Double, List<Span>> byFace = new TreeMap<>();
        for (Span span : all) {
            byFace.computeIfAbsent(span.from(), face -> new ArrayList<>()).add(span);
            byFace.computeIfAbsent(span.to(), face -> new ArrayList<>()).add(span);
        }
        return byFace.entrySet().stream()
                .map(face -> new RunningLengths(face.getKey(), face.getValue()))
                .filter(running -> running.spans.size() >= FEW && running.hasRoom())
                .max(Comparator.comparingInt(running -> running.spans.size()));
    }

    /** Those that do not stand on this line. */
    List<Span> others(List<Span> all) {
        return all.stream().filter(span -> !spans.contains(span)).toList();
    }

    /** Where its extension lines lie, the origin's first. */
    List<Double> ends() {
        return DoubleStream.concat(DoubleStream.of(origin), spans.stream().mapToDouble(this::end))
                .boxed()
                .collect(Collectors.toList());
    }

    private double end(Span span) {
        return Math.abs(span.from() - origin) < SAME ? span.to() : span.from();
    }

    private static Inscription text(Span span) {
        return Subject.inscription(span.wording());
    }

    /** Whether the values have room side by side. */
    private boolean hasRoom() {
        List<Span> sorted =
                spans.stream().sorted(Comparator.comparingDouble(this::end)).toList();
        for (int i = 1; i < sorted.size(); i++) {
            Span before = sorted.get(i - 1);
            Span after = sorted.get(i);
            double need = (text(before).ascent() + text(after).ascent()) / 2
                    + Math.max(text(before).descent(), text(after).descent())
                    + CLEAR;
            if (end(after) - end(before) < need) {
                return false;
            }
        }
        return spans.stream().allMatch(span -> span.length() > CIRCLE + 4);
    }

    /** Draws them, their line so far out. */
    List<Placing> draw(LengthStack stack, double out) {
        List<Placing> placed = new ArrayList<>();
        Placing.Pen zero = Placing.pen();
        stack.extension(zero, origin, out);
        zero.sign(new Mark.Circle(LineStyle.NARROW, Ink.INK, stack.rail().at(origin, out), CIRCLE));
        placed.add(zero.at(0));
        spans.forEach(span -> placed.add(draw(span, stack, out)));
        return placed;
    }

    private Placing draw(Span span, LengthStack stack, double out) {
        Rail rail = stack.rail();
        double end = end(span);
        Placing.Pen pen = Placing.pen();
        stack.extension(pen, end, out);
        pen.line(Placing.Kind.DIMENSION, rail.at(origin, out), rail.at(end, out));
        pen.arrow(rail.at(end, out), end > origin ? rail.turned() : rail.turned() + 180);
        Inscription text = text(span);
        double from = out + LengthStack.OVERSHOOT + CLEAR;
        return pen.label(text, rail.endwise(end, from, text)).at(0);
    }
}
