package chargehand.trade.wear;

import chargehand.measure.Angle;
import chargehand.measure.Length;
import chargehand.trade.sum.Answer;
import chargehand.trade.sum.Asked;
import chargehand.trade.sum.Column;
import chargehand.trade.sum.Entry;
import chargehand.trade.sum.Example;
import chargehand.trade.sum.Field;
import chargehand.trade.sum.Kind;
import chargehand.trade.sum.Kinds;
import chargehand.trade.sum.Result;
import chargehand.trade.sum.Sum;
import chargehand.trade.sum.Working;
import com.google.auto.service.AutoService;
import java.util.List;
import java.util.Map;

/** What a worn shaft or spindle cleans up at. */
@AutoService(Sum.class)
public final class CleanUpSum implements Sum {
    private static final int MOST_READINGS = 300;
    private static final int MOST_STEPS = 100;

    private static final Kind<Length> ON_WORK = Kinds.where(
            Kinds.SIZE,
            size -> size.mm() >= 0.1 && size.mm() <= 10_000,
            "is not a size on worn work, from 0.1 mm to 10 m");

    static final Column<String> STATION = Column.first("station", Kinds.TEXT);
    static final Column<Angle> ANGLE = Column.then(
            ":", "angle", Kinds.where(Kinds.ANGLE, angle -> Math.abs(angle.degrees()) <= 360, "is more than a turn"));
    static final Column<Length> DIAMETER = Column.mayBe(":", "diameter", ON_WORK);
    static final Column<Length> RADIUS = Column.mayBe(":r", "radius", ON_WORK);

    static final Field<List<Entry>> READINGS = Field.required(
            "readings",
            "Readings",
            Kinds.listOf(Kinds.entry("station, angle and diameter", STATION, ANGLE, DIAMETER, RADIUS), MOST_READINGS),
            "A:0:25.31 mm; A:90:25.24 mm; B:0:25.36 mm, place, angle and diameter; or a radius from the true axis, A:0:r12.65");
    static final Field<Length> NEW_SIZE =
            Field.optional("newSize", "Size when new", ON_WORK, "25.40 mm; tells the wear");
    static final Field<Length> LEAST = Field.optional(
            "least", "Least size", ON_WORK, "24.5 mm, below which it is scrap, from the responsible person");
    static final Field<List<Length>> STEPS = Field.optional(
            "steps",
            "Sizes the shop turns to",
            Kinds.listOf(ON_WORK, MOST_STEPS),
            "25.25, 25.0, 24.75; left out, the next 0.1 mm or 0.005 in below");
    static final Field<Length> ALLOW = Field.optional(
            "allow",
            "Wear, ovality and taper that may stay",
            Kinds.where(Kinds.SIZE, allow -> allow.mm() <= 10, "is more wear than may stay anywhere, above 10 mm"),
            "0.05 mm",
            "0.05 mm");

    @Override
    public String name() {
        return "clean-up";
    }

    @Override
    public String title() {
        return "What cleans up";
    }

    @Override
    public String purpose() {
        return "Tells from readings of a worn outside diameter how oval and tapered it is, what it cleans up at, and what"
                + " is left.";
    }

    @Override
    public List<Field<?>> fields() {
        return List.of(READINGS, NEW_SIZE, LEAST, STEPS, ALLOW);
    }

    @Override
    public List<Result> results() {
        return List.of(
                Result.always("verdict", "Verdict"),
                Result.always("ovality", "Most out of round").shownFine(),
                Result.always("taper", "Difference from place to place").shownFine(),
                Result.sometimes("wear", "Most worn below new").shownFine(),
                Result.always("worst", "Smallest reading").shownFine(),
                Result.always("cleansAt", "Cleans up at").shownFine(),
                Result.sometimes("cleansAtOneSide", "Cleans up at, if all wear is on one side and the axis must stay")
                        .shownFine(),
                Result.sometimes("turnTo", "Turn to").shownFine(),
                Result.sometimes("left", "Left above the least size").shownFine(),
                Result.always("why", "Why"));
    }

    @Override
    public List<Example> examples() {
        return List.of(
                new Example(
                        "a worn valve spindle",
                        Map.of(
                                "readings",
                                "A:0:25.31; A:90:25.24; B:0:25.36; B:90:25.33",
                                "newSize",
                                "25.40",
                                "least",
                                "24.50",
                                "steps",
                                "25.25, 25.00, 24.75, 24.50")),
                new Example(
                        "in inches, by radius from the centres",
                        Map.of(
                                "readings",
                                "collar:0:r.498; collar:180:r.4995; neck:0:r.4992; neck:180:r.4991",
                                "newSize",
                                "1",
                                "least",
                                ".985",
                                "unit",
                                "in")),
                new Example(
                        "worn past its least size",
                        Map.of("readings", "1:0:39.2; 1:60:38.7; 1:120:39.0", "newSize", "40", "least", "38.8")));
    }

    @Override
    public Answer work(Asked asked, Working working) {
        var question = new CleanUpQuestion(asked);
        Survey survey = question.survey();
        return new CleanUp(survey, asked, working).answer(question.isByRadius());
    }
}
