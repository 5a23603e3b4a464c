package chargehand.trade.packer;

import chargehand.measure.Length;
import chargehand.measure.Pressure;
import chargehand.measure.Ratio;
import chargehand.measure.SpringRate;
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

/** What packer to make next for a valve that must lift at a pressure. */
@AutoService(Sum.class)
public final class PackerSum implements Sum {
    private static final int MOST_TRIALS = 50;

    private static final Kind<Pressure> PRESSURE = Kinds.where(
            Kinds.PRESSURE,
            pressure -> pressure.bar() >= 1e-4 && pressure.bar() <= 5_000,
            "is not a pressure that a valve is set at, more than nothing and at most 5000 bar");
    private static final Kind<Length> THICKNESS = Kinds.where(
            Kinds.LENGTH,
            thickness -> !thickness.isNegative() && thickness.mm() <= 200,
            "is not the thickness of a packer, from nothing to 200 mm");
    private static final Kind<Length> SPRING_SIZE = Kinds.where(
            Kinds.SIZE,
            size -> size.mm() >= 0.05 && size.mm() <= 1_000,
            "is not a size of a spring, from 0.05 mm to 1 m");

    static final Column<Length> THICK = Column.first("packer", THICKNESS);
    static final Column<Pressure> LIFTED = Column.then(":", "lifted", PRESSURE);
    static final Column<SpringRate> RATE = Column.firstIfAny(
            "rate",
            Kinds.where(
                    Kinds.SPRING_RATE,
                    rate -> rate.newtonsPerMm() >= 1e-3 && rate.newtonsPerMm() <= 1e6,
                    "is not the rate of a spring"));
    static final Column<Length> WIRE = Column.mayBe("wire", "wire", SPRING_SIZE);
    static final Column<Length> MEAN = Column.mayBe("mean", "mean", SPRING_SIZE);
    static final Column<Ratio> COILS = Column.mayBe(
            "coils",
            "coils",
            Kinds.where(
                    Kinds.NUMBER,
                    coils -> coils.value() >= 0.5 && coils.value() <= 500,
                    "is not a number of active coils, from 0.5 to 500"));

    static final Field<Pressure> TARGET = Field.required("target", "Pressure to lift at", PRESSURE, "150 psi");
    static final Field<Pressure> TOLERANCE = Field.required("tolerance", "Tolerance either way", PRESSURE, "3 psi");
    static final Field<List<Entry>> TRIALS = Field.required(
            "trials",
            "Tests so far",
            Kinds.listOf(Kinds.entry("packer and pressure", THICK, LIFTED), MOST_TRIALS),
            "1.52 mm:148 psi; 1.60 mm:151 psi, packer and the pressure it lifted at, in the order of the tests");
    static final Field<Pressure> MOST =
            Field.required("most", "Never to be exceeded", PRESSURE, "165 psi, from the competent person");
    static final Field<Length> SEAT =
            Field.optional("seat", "Seat diameter", SPRING_SIZE, "20 mm, to the line it seals on; with the spring");
    static final Field<Entry> SPRING = Field.optional(
            "spring",
            "Spring",
            Kinds.entry("rate, or wire, mean and coils", RATE, WIRE, MEAN, COILS),
            "30 N/mm, or: wire 4 mm mean 24 mm coils 6");
    static final Field<Pressure> GAUGE =
            Field.optional("gauge", "How far the gauge may be off", PRESSURE, "1 psi; left out, 1 % of the target");
    static final Field<Boolean> ADDS =
            Field.optional("adds", "More packer raises the pressure", Kinds.YES_NO, "yes", "yes or no");
    static final Field<Length> STEP = Field.optional(
            "step",
            "Finest change that can be made",
            Kinds.where(
                    Kinds.SIZE,
                    step -> step.mm() >= 0.001 && step.mm() <= 10,
                    "is not a step between packers, from 0.001 to 10 mm"),
            "0.02 mm",
            "0.02 mm");

    @Override
    public String name() {
        return "packer";
    }

    @Override
    public String title() {
        return "Next packer";
    }

    @Override
    public String purpose() {
        return "Tells what packer to make next for a valve that must lift at a pressure, and when to stop testing.";
    }

    @Override
    public List<Field<?>> fields() {
        return List.of(TARGET, TOLERANCE, TRIALS, MOST, SEAT, SPRING, GAUGE, ADDS, STEP);
    }

    @Override
    public List<Result> results() {
        return List.of(
                Result.sometimes("stop", "Do not go on"),
                Result.sometimes("packer", "Packer to make next"),
                Result.sometimes("change", "Change from the last"),
                Result.sometimes("expect", "Its test should read"),
                Result.sometimes("chanceInBand", "Chance of reading inside"),
                Result.always("rate", "Pressure for thickness"),
                Result.always("rateUncertainty", "The same, give or take"),
                Result.sometimes("testsLeft", "Tests to expect yet"));
    }

    @Override
    public List<Example> examples() {
        return List.of(
                new Example(
                        "two tests, nothing known of the spring",
                        Map.of(
                                "target",
                                "150 psi",
                                "tolerance",
                                "2 psi",
                                "most",
                                "165 psi",
                                "trials",
                                "1.50 mm:138 psi; 1.60 mm:143 psi")),
                new Example(
                        "the first test, with spring and seat",
                        Map.of(
                                "target",
                                "7 bar",
                                "tolerance",
                                "0.2 bar",
                                "most",
                                "7.7 bar",
                                "trials",
                                "2 mm:6.1 bar",
                                "seat",
                                "20 mm",
                                "spring",
                                "30 N/mm",
                                "gauge",
                                "0.05 bar")),
                new Example(
                        "a spring by its wire, set already",
                        Map.of(
                                "target",
                                "7 bar",
                                "tolerance",
                                "0.2 bar",
                                "most",
                                "7.7 bar",
                                "trials",
                                "2 mm:6.1 bar; 2.9 mm:7.05 bar",
                                "seat",
                                "20 mm",
                                "spring",
                                "wire 4 mm mean 24 mm coils 6")),
                new Example(
                        "readings that do not fit",
                        Map.of(
                                "target",
                                "150 psi",
                                "tolerance",
                                "2 psi",
                                "most",
                                "165 psi",
                                "trials",
                                "1.50 mm:130 psi; 1.60 mm:149 psi; 1.55 mm:120 psi")));
    }

    @Override
    public Answer work(Asked asked, Working working) {
        return new PackerWork(asked, working).answer();
    }
}
