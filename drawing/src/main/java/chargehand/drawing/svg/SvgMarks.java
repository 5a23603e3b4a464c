package chargehand.drawing.svg;

import chargehand.drawing.picture.Ink;
import chargehand.drawing.picture.LineStyle;
import chargehand.drawing.picture.Mark;
import chargehand.drawing.picture.Path;
import chargehand.drawing.picture.Point;
import java.util.List;
import java.util.function.Function;

/** The elements of the marks, one a line. */
final class SvgMarks {
    private final StringBuilder out = new StringBuilder();
    private final Function<Ink, String> colours;

    SvgMarks(Function<Ink, String> colours) {
        this.colours = colours;
    }

    void add(Mark mark) {
        switch (mark) {
            case Mark.Line line -> line(line);
            case Mark.Stroke(LineStyle style, Ink ink, Path path) ->
                element("path", "d=\"%s\" fill=\"none\"".formatted(data(path)), lined(style, ink, dashes(style, path)));
            case Mark.Fill(Ink ink, Path path) -> element("path", "d=\"%s\"".formatted(data(path)), filled(ink));
            case Mark.Circle(LineStyle style, Ink ink, Point centre, double radius) ->
                element(
                        "circle",
                        round(centre, radius) + " fill=\"none\"",
                        lined(style, ink, style.dashesRound(2 * Math.PI * radius)));
            case Mark.Disc(Ink ink, Point centre, double radius) ->
                element("circle", round(centre, radius), filled(ink));
            case Mark.Words words -> words(words);
        }
    }

    private void line(Mark.Line line) {
        Point from = line.from();
        Point to = line.to();
        element(
                "path",
                "d=\"M%sL%s\"".formatted(at(from), at(to)),
                lined(line.style(), line.ink(), line.style().dashes(from.distance(to))));
    }

    private void words(Mark.Words words) {
        String turned = words.turned() == 0
                ? ""
                : " transform=\"rotate(%s %s)\"".formatted(SvgText.number(-words.turned()), at(words.at()));
        String weight = words.lettering().weight().number() == 400
                ? ""
                : " font-weight=\"" + words.lettering().weight().number() + "\"";
        out.append("<text x=\"%s\" y=\"%s\" font-size=\"%s\"%s%s%s %s>%s</text>\n"
                .formatted(
                        SvgText.number(words.at().x()),
                        SvgText.number(words.at().y()),
                        SvgText.number(words.lettering().size()),
                        weight,
                        anchor(words.align()),
                        turned,
                        filled(words.ink()),
                        SvgText.escaped(words.text())));
    }

    private static String anchor(Mark.Align align) {
        return switch (align) {
            case LEFT -> "";
            case MIDDLE -> " text-anchor=\"middle\"";
            case RIGHT -> " text-anchor=\"end\"";
        };
    }

    private void element(String name, String shape, String look) {
        out.append('<')
                .append(name)
                .append(' ')
                .append(shape)
                .append(' ')
                .append(look)
                .append("/>\n");
    }

    private static List<Double> dashes(LineStyle style, Path path) {
        return path.closed() ? style.dashesRound(path.length()) : style.dashes(path.length());
    }

    private String lined(LineStyle style, Ink ink, List<Double> dashes) {
        String dashing = dashes.isEmpty() ? "" : " stroke-dasharray=\"%s\"".formatted(SvgText.numbers(dashes));
        return "stroke=\"%s\" stroke-width=\"%s\"%s"
                .formatted(colours.apply(ink), SvgText.number(style.width()), dashing);
    }

    private String filled(Ink ink) {
        return "fill=\"%s\"".formatted(colours.apply(ink));
    }

    private static String data(Path path) {
        StringBuilder data = new StringBuilder("M" + at(path.start()));
        path.runs().forEach(run -> data.append(data(run)));
        return path.closed() ? data.append('Z').toString() : data.toString();
    }

    private static String data(Path.Run run) {
        return switch (run) {
            case Path.Straight(Point to) -> "L" + at(to);
            case Path.Bend(Point to, double radius, boolean clockwise) -> {
                String r = SvgText.number(radius);
                yield "A%s %s 0 0 %s %s".formatted(r, r, clockwise ? "1" : "0", at(to));
            }
        };
    }

    private static String round(Point centre, double radius) {
        return "cx=\"%s\" cy=\"%s\" r=\"%s\""
                .formatted(SvgText.number(centre.x()), SvgText.number(centre.y()), SvgText.number(radius));
    }

    private static String at(Point point) {
        return SvgText.number(point.x()) + " " + SvgText.number(point.y());
    }

    @Override
    public String toString() {
        return out.toString();
    }
}
