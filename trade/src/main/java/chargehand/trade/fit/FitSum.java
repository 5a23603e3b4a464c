package chargehand.trade.fit;

import chargehand.measure.Length;
import chargehand.measure.LengthText;
import chargehand.measure.LengthUnit;
import chargehand.measure.Unreadable;
import chargehand.trade.sum.Answer;
import chargehand.trade.sum.Asked;
import chargehand.trade.sum.Example;
import chargehand.trade.sum.Field;
import chargehand.trade.sum.Figure;
import chargehand.trade.sum.Kind;
import chargehand.trade.sum.Kinds;
import chargehand.trade.sum.Refusal;
import chargehand.trade.sum.Result;
import chargehand.trade.sum.Source;
import chargehand.trade.sum.Sum;
import chargehand.trade.sum.Working;
import com.google.auto.service.AutoService;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** Limits of a hole and a shaft by ISO 286, and what they do together. */
@AutoService(Sum.class)
public final class FitSum implements Sum {
    private static final Source FITS = Source.memory("ISO 286-1:2010, clearance and interference");

    private static final Kind<ToleranceClass> HOLE_CLASS = Kinds.where(
            Kinds.by("tolerance class of a hole", ToleranceClass::parse, ToleranceClass::toString),
            ToleranceClass::hole,
            "is a shaft's class: a hole is written with a capital letter, such as H7");
    private static final Kind<ToleranceClass> SHAFT_CLASS = Kinds.where(
            Kinds.by("tolerance class of a shaft", ToleranceClass::parse, ToleranceClass::toString),
            wanted -> !wanted.hole(),
            "is a hole's class: a shaft is written with a small letter, such as g6");

    private static final Field<Length> SIZE =
            Field.required("size", "Nominal size", Kinds.SIZE, "25 mm or 1 in, the size both parts are named by");
    private static final Field<ToleranceClass> HOLE =
            Field.optional("hole", "Hole", HOLE_CLASS, "H7; leave it out for the shaft alone");
    private static final Field<ToleranceClass> SHAFT =
            Field.optional("shaft", "Shaft", SHAFT_CLASS, "g6; leave it out for the hole alone");

    @Override
    public String name() {
        return "fit";
    }

    @Override
    public String title() {
        return "Limits and fits";
    }

    @Override
    public String purpose() {
        return "Gives the limits of a hole and a shaft by their ISO 286 classes, and how loose or tight they come together.";
    }

    @Override
    public List<Field<?>> fields() {
        return List.of(SIZE, HOLE, SHAFT);
    }

    @Override
    public List<Result> results() {
        return List.of(
                Result.sometimes("hole", "Hole").shownFine(),
                Result.sometimes("shaft", "Shaft").shownFine(),
                Result.sometimes("clearanceMax", "Most clearance, negative for interference")
                        .shownFine(),
                Result.sometimes("clearanceMin", "Least clearance, negative for interference")
                        .shownFine(),
                Result.sometimes("kind", "Kind of fit"));
    }

    @Override
    public List<Example> examples() {
        return List.of(
                new Example("a sliding fit", Map.of("size", "25 mm", "hole", "H7", "shaft", "g6")),
                new Example("a bush pressed in", Map.of("size", "1 1/4 in", "hole", "H7", "shaft", "s6")),
                new Example("a bearing seat by the shaft basis", Map.of("size", "40 mm", "hole", "K7", "shaft", "h6")),
                new Example("a shaft alone", Map.of("size", "20 mm", "shaft", "h9")));
    }

    @Override
    public Answer work(Asked asked, Working working) {
        if (!asked.has(HOLE) && !asked.has(SHAFT)) {
            throw Refusal.of(HOLE, "a class is wanted for the hole, the shaft or both, such as H7 and g6.");
        }
        var answer = new Answer();
        asked.find(HOLE).ifPresent(wanted -> answer.with("hole", limits(zone(asked, HOLE, wanted, working))));
        asked.find(SHAFT).ifPresent(wanted -> answer.with("shaft", limits(zone(asked, SHAFT, wanted, working))));
        if (asked.has(HOLE) && asked.has(SHAFT)) {
            addFit(fit(asked), asked.unit(), answer, working);
        }
        return answer;
    }

    private static ToleranceZone zone(
            Asked asked, Field<ToleranceClass> field, ToleranceClass wanted, Working working) {
        try {
            ToleranceZone zone = Iso286.limits(asked.get(SIZE), wanted, working);
            working.step(
                    "Limits of " + wanted,
                    "limits = size + deviations",
                    LengthText.mm(zone.nominal(), LengthText.MICROMETRE) + " " + Microns.signed(zone.lower()) + " to "
                            + Microns.signed(zone.upper()),
                    said(zone.limits().least(), asked.unit()) + " to "
                            + said(zone.limits().most(), asked.unit()),
                    FITS);
            return zone;
        } catch (Unreadable unreadable) {
            throw Refusal.of(field, unreadable.say());
        }
    }

    private static Fit fit(Asked asked) {
        var silent = new Working();
        return new Fit(zone(asked, HOLE, asked.get(HOLE), silent), zone(asked, SHAFT, asked.get(SHAFT), silent));
    }

    private static void addFit(Fit fit, LengthUnit unit, Answer answer, Working working) {
        working.step(
                "Most clearance",
                "ES − ei",
                Microns.plain(fit.hole().upper()) + " − ("
                        + Microns.plain(fit.shaft().lower()) + ") µm",
                said(fit.clearanceMax(), unit),
                FITS);
        working.step(
                "Least clearance",
                "EI − es",
                Microns.plain(fit.hole().lower()) + " − ("
                        + Microns.plain(fit.shaft().upper()) + ") µm",
                said(fit.clearanceMin(), unit),
                FITS);
        answer.with("clearanceMax", Figure.of(fit.clearanceMax()))
                .with("clearanceMin", Figure.of(fit.clearanceMin()))
                .with("kind", Figure.of(fit.kind().name().toLowerCase(Locale.ROOT)));
        if (fit.clearanceMin().isNegative()) {
            working.caution(
                    "Parts that are pressed or shrunk together can fly out of the press or burst: stand clear of"
                            + " the line of the press and use a guard.");
        }
    }

    private static String said(Length length, LengthUnit unit) {
        return LengthText.both(length, unit);
    }

    private static Figure limits(ToleranceZone zone) {
        return new Answer()
                .with("upper", Figure.of(zone.upper()))
                .with("lower", Figure.of(zone.lower()))
                .with("max", Figure.of(zone.limits().most()))
                .with("min", Figure.of(zone.limits().least()))
                .asGroup();
    }
}
