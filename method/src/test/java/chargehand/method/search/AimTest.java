package chargehand.method.search;

import static org.assertj.core.api.Assertions.assertThat;

import chargehand.measure.Length;
import chargehand.method.plan.Cut;
import chargehand.method.plan.Method;
import chargehand.method.plan.Operation;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A cut never leaves a size that its own reading would throw out (common practice: aim at the middle of the limits). */
class AimTest {
    @ParameterizedTest
    @CsvSource({"bearing-bush, 1", "ram, 1", "roller-pin, 1", "sluice-spindle, 1", "union, 2"})
    void plan_demoPart_lastPassLeavesWhatTheReadingAllows(String name, int count) {
        Method method = DemoMethods.plan(name, count);
        assertThat(DemoMethods.operations(method))
                .filteredOn(operation ->
                        isTurnedToSize(operation) && !operation.readings().isEmpty())
                .isNotEmpty()
                .allSatisfy(operation -> assertThat(
                                operation.readings().getFirst().limits().contain(leaves(operation)))
                        .as("%s leaves %s, read within %s", operation.say(), leaves(operation), operation.readings())
                        .isTrue());
    }

    private static boolean isTurnedToSize(Operation operation) {
        return operation.cut() instanceof Cut.TurnDiameter || operation.cut() instanceof Cut.BoreTo;
    }

    private static Length leaves(Operation operation) {
        return operation.settings().passes().getLast().leaves();
    }
}
