package chargehand.trade.sum;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import chargehand.measure.Length;
import chargehand.measure.LengthUnit;
import chargehand.measure.OutOfRange;
import chargehand.measure.Pressure;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What the door of the sums takes for the asker's doing, and what for a defect. */
class AskingTest {
    private static Outcome ask(Supplier<Answer> work) {
        return Asking.ask(new OfTest(work), Map.of(), LengthUnit.MILLIMETRE);
    }

    @Test
    void refusal_inASum_isRefusedAtItsField() {
        Outcome outcome = ask(() -> {
            throw new Refusal("width", "give less.");
        });

        assertThat(outcome).isEqualTo(new Outcome.Refused("width", "give less."));
    }

    @Test
    void quantityFarOutsideTheTrade_isRefused() {
        assertThat(ask(() -> new Answer().with("size", Figure.of(Length.mm(2e9)))))
                .isInstanceOfSatisfying(
                        Outcome.Refused.class,
                        refused -> assertThat(refused.say()).contains("outside the trade", "1000 m"));
        assertThat(ask(() -> new Answer().with("pressure", Figure.of(Pressure.bar(1e18)))))
                .isInstanceOf(Outcome.Refused.class);
    }

    /** A wrong argument inside a sum, a division by nought, or a figure that is none: none of them is the asker's fault. */
    private static List<Supplier<Answer>> defects() {
        return List.of(
                () -> {
                    throw new IllegalArgumentException("a wheel has 10 to 400 teeth");
                },
                () -> new Answer().with("size", Figure.of(Length.mm(0.0 / 0))),
                () -> new Answer().with("size", Figure.of(Length.mm(1 / Math.abs(-0.0)))),
                () -> new Answer().with("ratio", Figure.of(Double.NaN)),
                () -> new Answer().with("ratio", Figure.of(Length.mm(1).over(Length.ZERO))),
                () -> new Answer().with("pressure", Figure.of(Pressure.bar(Double.NaN))),
                () -> new Answer().with("count", Figure.of((long) Math.floorDiv(1, Integer.parseInt("0")))));
    }

    @ParameterizedTest
    @MethodSource("defects")
    void defect_inASum_goesThroughAsWhatItIs(Supplier<Answer> work) {
        assertThatThrownBy(() -> ask(work))
                .isInstanceOfAny(IllegalArgumentException.class, ArithmeticException.class)
                .isNotInstanceOf(OutOfRange.class);
    }

    /** A sum that takes nothing and does as the test says. */
    private record OfTest(Supplier<Answer> answer) implements Sum {
        @Override
        public String name() {
            return "of-test";
        }

        @Override
        public String title() {
            return "Of a test";
        }

        @Override
        public String purpose() {
            return "Does as the test says.";
        }

        @Override
        public List<Field<?>> fields() {
            return List.of();
        }

        @Override
        public List<Result> results() {
            return List.of();
        }

        @Override
        public List<Example> examples() {
            return List.of();
        }

        @Override
        public Answer work(Asked asked, Working working) {
            return answer.get();
        }
    }
}
