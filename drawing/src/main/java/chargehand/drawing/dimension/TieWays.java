package chargehand.drawing.dimension;

import chargehand.drawing.picture.Box;
import chargehand.drawing.picture.Mark;
import chargehand.drawing.picture.Point;
import chargehand.drawing.sign.DatumMark;
import chargehand.drawing.sign.Local;
import chargehand.drawing.sign.ToleranceFrame;
import chargehand.drawing.view.Cut;
import chargehand.drawing.view.Side;
import chargehand.part.Bore;
import chargehand.part.Tie;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** Frames for run-out on the features that are tied, and datum letters on what they are tied to. */
final class TieWays {
    private static final List<Double> PARTS = List.of(0.5, 0.25, 0.75, 0.1, 0.9);
    private static final List<Double> STEMS = List.of(5.0, 9.0, 14.0, 20.0, 27.0);

    /** Letters of datums, clear of the two ends, of sections and of what reads as a figure. */
    private static final String LETTERS = "CDEFGH";

    private static final double FRAME = 6;
    private static final double OUT = 6;

    private final Subject subject;
    private final List<String> datums;

    TieWays(Subject subject) {
        this.subject = subject;
        datums = subject.part().ties().stream().map(Tie::to).distinct().toList();
    }

    /** One list of ways for each frame and each datum. */
    List<List<Placing>> all() {
        List<List<Placing>> all = new ArrayList<>();
        for (int i = 0; i < datums.size(); i++) {
            all.add(datum(datums.get(i), letter(i)));
        }
        for (Tie tie : subject.part().ties()) {
            String value = subject.text().figures(tie.runOut());
            all.add(frame(tie.of(), new ToleranceFrame(value, letter(datums.indexOf(tie.to())), Placing.HEIGHT)));
        }
        return all;
    }

    private static String letter(int index) {
        return LETTERS.substring(index % LETTERS.length(), index % LETTERS.length() + 1);
    }

    private List<Placing> frame(String feature, ToleranceFrame frame) {
        Optional<SectionWays> section = section(feature);
        if (section.isPresent()) {
            return section.orElseThrow().leaders(frame, FRAME, PARTS);
        }
        return bore(feature).stream()
                .flatMap(bore -> new LeaderWays(frame, FRAME)
                                .beyond(
                                        new Point(subject.x(bore.from()), subject.size(BoreWays.radius(bore))),
                                        Subject.out(bore.from()))
                                .stream())
                .toList();
    }

    private List<Placing> datum(String feature, String letter) {
        Optional<SectionWays> section = section(feature);
        if (section.isPresent()) {
            List<Placing> ways = new ArrayList<>();
            for (Side side : Side.values()) {
                for (Point tip : section.orElseThrow().tips(side, PARTS)) {
                    onOutline(tip, side, letter, ways);
                }
            }
            return ways;
        }
        return bore(feature).map(bore -> onExtension(bore, letter)).orElse(List.of());
    }

    private void onOutline(Point tip, Side side, String letter, List<Placing> ways) {
        double past = subject.reach().outside(side) - Math.abs(tip.y());
        for (double stem : STEMS) {
            double dislike = side == Side.BELOW ? FRAME : 0;
            ways.add(mark(Placing.pen(), tip, side, new DatumMark(letter, stem, Placing.HEIGHT), dislike + stem));
            if (past > 0) {
                ways.add(mark(
                        Placing.pen(),
                        tip,
                        side,
                        new DatumMark(letter, past + stem, Placing.HEIGHT),
                        dislike + stem + past));
            }
        }
    }

    /** On an extension line out of the bore's mouth, either way. */
    private List<Placing> onExtension(Bore bore, String letter) {
        List<Placing> ways = new ArrayList<>();
        int out = Subject.out(bore.from());
        double wall = subject.size(BoreWays.radius(bore));
        for (int step = 1; step <= 4; step++) {
            Point tip = new Point(subject.x(bore.from()) + out * OUT * step, wall);
            for (Side side : Side.values()) {
                for (double stem : STEMS) {
                    Placing.Pen pen = Placing.pen()
                            .line(
                                    Placing.Kind.EXTENSION,
                                    new Point(subject.x(bore.from()) + out, wall),
                                    tip.moved(out * 3.0, 0));
                    ways.add(mark(pen, tip, side, new DatumMark(letter, stem, Placing.HEIGHT), FRAME * step + stem));
                }
            }
        }
        return ways;
    }

    /** A datum mark whose triangle stands on a point and points away from the axis above or below. */
    private static Placing mark(Placing.Pen pen, Point tip, Side side, DatumMark mark, double cost) {
        Local frame = new Local(tip, side == Side.ABOVE ? 0 : 180);
        for (Mark part : mark.marks(frame, Local.at(tip))) {
            pen.sign(part);
        }
        double half = mark.side() / 2;
        Point near = frame.at(-half, mark.stem());
        Point far = frame.at(half, mark.stem() + mark.side());
        return pen.covers(Box.around(List.of(near, far)))
                .covers(Box.around(List.of(frame.at(-1, 1), frame.at(1, mark.stem()))))
                .at(cost);
    }

    private Optional<SectionWays> section(String name) {
        return IntStream.range(0, subject.body().outside().size())
                .filter(i -> subject.body().outside().get(i).name().equals(name))
                .mapToObj(i -> new SectionWays(subject, i))
                .findFirst();
    }

    private Optional<Bore> bore(String name) {
        return subject.look().cut() == Cut.NONE
                ? Optional.empty()
                : subject.body().inside().stream()
                        .filter(bore -> bore.name().equals(name))
                        .findFirst();
    }
}
