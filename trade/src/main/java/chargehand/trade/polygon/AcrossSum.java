package chargehand.trade.polygon;

import chargehand.measure.AngleText;
import chargehand.measure.Length;
import chargehand.measure.LengthText;
import chargehand.trade.sum.Answer;
import chargehand.trade.sum.Asked;
import chargehand.trade.sum.Example;
import chargehand.trade.sum.Field;
import chargehand.trade.sum.Figure;
import chargehand.trade.sum.Kinds;
import chargehand.trade.sum.Refusal;
import chargehand.trade.sum.Result;
import chargehand.trade.sum.Source;
import chargehand.trade.sum.Sum;
import chargehand.trade.sum.Working;
import com.google.auto.service.AutoService;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Flats, corners and the bar for a square, a hexagon or any number of flats. */
@AutoService(Sum.class)
public final class AcrossSum implements Sum {
    /** How far flats and corners that are both given may lie from going together. */
    private static final Length AGREE = Length.mm(0.05);

    private static final Field<Polygon> SHAPE = Field.required(
            "shape",
            "Shape",
            Kinds.by("shape", PolygonName::parse, Polygon::title),
            "hexagon, square, octagon, sides=5");
    private static final Field<Length> FLATS =
            Field.optional("flats", "Across flats", Kinds.WORK_SIZE, "19 mm; or give the corners or the bar");
    private static final Field<Length> CORNERS =
            Field.optional("corners", "Across corners", Kinds.WORK_SIZE, "22 mm; or give the flats or the bar");
    private static final Field<Length> BAR =
            Field.optional("bar", "Round bar", Kinds.WORK_SIZE, "25 mm: the bar in hand, turned or as it comes");

    @Override
    public String name() {
        return "across";
    }

    @Override
    public String title() {
        return "Across flats and corners";
    }

    @Override
    public String purpose() {
        return "Gives flats, corners, the smallest round bar and how deep to mill, for a square, a hexagon or any flats.";
    }

    @Override
    public List<Field<?>> fields() {
        return List.of(SHAPE, FLATS, CORNERS, BAR);
    }

    @Override
    public List<Result> results() {
        return List.of(
                Result.always("flats", "Across flats"),
                Result.always("corners", "Across corners"),
                Result.always("bar", "Smallest round bar for full corners"),
                Result.always("depthOfCut", "Depth of each flat below the round")
                        .shownFine(),
                Result.always("largestFromBar", "Largest across flats from the bar"),
                Result.always("flatWidth", "Width of each flat"),
                Result.always("turn", "Turn from flat to flat"),
                Result.sometimes("overFlatAndCorner", "Over a flat and the corner opposite"));
    }

    @Override
    public List<Example> examples() {
        return List.of(
                new Example("a hexagon from its flats", Map.of("shape", "hexagon", "flats", "19 mm")),
                new Example("the largest square from a bar", Map.of("shape", "square", "bar", "1 in", "unit", "in")),
                new Example(
                        "flats on bar thinner than the corners",
                        Map.of("shape", "hexagon", "flats", "22", "bar", "25")),
                new Example("a five-sided key", Map.of("shape", "sides=5", "corners", "30 mm")));
    }

    @Override
    public Answer work(Asked asked, Working working) {
        Polygon shape = asked.get(SHAPE);
        Length flats = flats(asked, shape, working);
        Length corners = shape.corners(flats);
        Length round = asked.find(BAR).orElse(corners);
        if (!flats.isLessThan(round)) {
            throw Refusal.of(
                    BAR, "the bar must be larger than the " + said(flats, asked) + " across flats to be cut at all.");
        }
        write(shape, flats, round, asked, working);
        var answer = new Answer()
                .with("flats", Figure.of(flats))
                .with("corners", Figure.of(corners))
                .with("bar", Figure.of(corners))
                .with("depthOfCut", Figure.of(shape.depthOfCut(round, flats)))
                .with("largestFromBar", Figure.of(shape.flats(round)))
                .with("flatWidth", Figure.of(shape.flatWidth(round, flats)))
                .with("turn", Figure.of(shape.turn()));
        return shape.hasOppositeFlats()
                ? answer
                : answer.with("overFlatAndCorner", Figure.of(shape.overFlatAndCorner(flats)));
    }

    private static Length flats(Asked asked, Polygon shape, Working working) {
        Optional<Length> given = asked.find(FLATS);
        Optional<Length> corners = asked.find(CORNERS);
        if (given.isPresent()) {
            corners.ifPresent(other -> agree(shape, given.get(), other, asked));
            return given.get();
        }
        Length across = corners.or(() -> asked.find(BAR))
                .orElseThrow(() -> Refusal.of(FLATS, "give the size across flats, across corners or of the bar."));
        Length flats = shape.flats(across);
        working.step(
                corners.isPresent() ? "Across flats from across corners" : "Largest across flats from the bar",
                "s = D cos(180° / n)",
                said(across, asked) + " × cos(180° / " + shape.sides() + ")",
                LengthText.both(flats, asked.unit()),
                Source.GEOMETRY);
        return flats;
    }

    private static void agree(Polygon shape, Length flats, Length corners, Asked asked) {
        Length made = shape.corners(flats);
        if (!made.isWithin(AGREE, corners)) {
            throw Refusal.of(
                    CORNERS,
                    "these corners do not go with the flats, which make them " + said(made, asked)
                            + ": give one of the two.");
        }
    }

    private static void write(Polygon shape, Length flats, Length round, Asked asked, Working working) {
        Length corners = shape.corners(flats);
        working.step(
                "Across corners, and so the smallest round bar for full corners",
                "e = s / cos(180° / n)",
                said(flats, asked) + " / cos(180° / " + shape.sides() + ")",
                LengthText.both(corners, asked.unit()),
                Source.GEOMETRY);
        working.step(
                "Depth of each flat below the round",
                "(D − s) / 2",
                "(" + said(round, asked) + " − " + said(flats, asked) + ") / 2",
                LengthText.both(shape.depthOfCut(round, flats), asked.unit()),
                Source.GEOMETRY);
        working.step(
                "Turn of the work from one flat to the next",
                "360° / n",
                "360° / " + shape.sides(),
                AngleText.minutes(shape.turn()),
                Source.GEOMETRY);
        if (round.isLessThan(corners)) {
            working.caution("The bar is smaller than the corners: they stay round, and each flat is "
                    + LengthText.both(shape.flatWidth(round, flats), asked.unit()) + " wide.");
        }
        if (!shape.hasOppositeFlats()) {
            working.caution("With an odd number of flats none lies opposite another: across flats here is twice the"
                    + " distance from axis to flat, and a calliper reads over a flat and the corner opposite.");
        }
    }

    private static String said(Length size, Asked asked) {
        return LengthText.in(size, asked.unit());
    }
}
