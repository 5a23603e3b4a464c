package chargehand.trade.pin;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import chargehand.trade.Ask;
import chargehand.trade.PublishedRow;
import chargehand.trade.sum.Figure;
import chargehand.trade.table.Row;
import chargehand.trade.table.Table;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class PinSumTest {
    static List<PublishedRow> rows() {
        return PublishedRow.of("strength.json", "pin_double_shear");
    }

    static List<Row> numbered() {
        return Table.read(PublishedRow.class, "published/taper-pins.csv").rows().stream()
                .filter(row -> row.text("series").equals("imperial number"))
                .toList();
    }

    @ParameterizedTest
    @MethodSource("rows")
    void shear_ofPinUnderThrust_isAsComputed(PublishedRow row) {
        Ask ask = Ask.of(
                "pin", "kind", "dowel", "size", row.text("pin_d"), "shaft", "40", "thrust", row.text("F_N") + " N");

        assertThat(ask.megapascals("shearStress")).isCloseTo(row.want("tau_MPa"), row.within("tau_MPa"));
    }

    @ParameterizedTest
    @MethodSource("numbered")
    void size_ofNumberedPin_isThePrintedLargeEnd(Row row) {
        String number = row.text("size").replace("No.", "No. ");
        Ask ask = Ask.of("pin", "kind", "taper", "size", number, "shaft", "100 mm", "torque", "1 Nm");
        // Sheared where it leaves the shaft, 100 mm on at 1 in 48; small pins have come to a point by then.
        double left = row.number("named_dia") * 25.4 - 100.0 / 48;
        if (left > 0) {
            double area = 1000 / (100 * ask.megapascals("shearStress"));
            assertThat(Math.sqrt(area * 4 / Math.PI)).isCloseTo(left, within(1e-5));
        } else {
            ask.isRefusedAt("size", "thinner than half");
        }
    }

    @Test
    void shear_ofTorque_isThatOfTheForceAtTheShaft() {
        Ask torque = Ask.of("pin", "kind", "dowel", "size", "6", "shaft", "25", "torque", "50 Nm");
        // 50 N·m on 25 mm is 2000 N at each of two planes, as 4000 N of thrust would be.
        Ask thrust = Ask.of("pin", "kind", "dowel", "size", "6", "shaft", "25", "thrust", "4000 N");

        assertThat(torque.megapascals("shearStress")).isCloseTo(thrust.megapascals("shearStress"), within(1e-9));
        assertThat(torque.newtonMetres("capacity")).isCloseTo(50 * torque.number("factor"), within(1e-6));
        assertThat(((Figure.OfForce) thrust.figure("capacity")).force().newtons())
                .isCloseTo(4000 * thrust.number("factor"), within(1e-6));
    }

    @Test
    void shear_ofSplitPin_countsItsMetalOnly() {
        Ask split = Ask.of("pin", "kind", "split", "size", "6", "shaft", "25", "thrust", "1000 N");
        Ask solid = Ask.of("pin", "kind", "dowel", "size", "6", "shaft", "25", "thrust", "1000 N");

        assertThat(split.megapascals("shearStress"))
                .isCloseTo(solid.megapascals("shearStress") / 0.7, withinPercentage(1e-6));
        assertThat(split.cautions()).anyMatch(say -> say.contains("not meant to carry load"));
    }

    @Test
    void pin_wronglyAsked_isRefusedBesideItsField() {
        Ask.of("pin", "kind", "dowel", "size", "6", "shaft", "25").isRefusedAt("torque", "torque or the thrust");
        Ask.of("pin", "kind", "dowel", "size", "13", "shaft", "25", "torque", "9 Nm")
                .isRefusedAt("size", "half of it");
        Ask.of("pin", "kind", "dowel", "size", "No. 4", "shaft", "25", "torque", "9 Nm")
                .isRefusedAt("size", "numbered");
        Ask.of("pin", "kind", "taper", "size", "No. 15", "shaft", "25", "torque", "9 Nm")
                .isRefusedAt("size", "1 to 14");
    }
}
