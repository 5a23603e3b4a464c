package chargehand.method.search;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import chargehand.method.plan.Cut;
import chargehand.method.plan.Operation;
import chargehand.method.plan.Planned;
import chargehand.part.Part;
import org.junit.jupiter.api.Test;

/** An edge prepared for welding is a bevel that the top slide cuts. */
class WeldEdgeTest {
    @Test
    void plan_stubForWelding_bevelsItsEndToTheDepthAndAngleOfTheDrawing() {
        Part part = DemoMethods.read("""
                part: Stub for welding
                material: EN8
                unit: mm
                general: ±0.2
                outside:
                  - round: 40
                    length: 60
                    at-b: weld V 6 x 30° gap 2
                """);
        assertThat(DemoMethods.plan(part, 1)).isInstanceOfSatisfying(Planned.Ready.class, ready -> {
            Operation bevel = DemoMethods.operations(ready.method())
                    .filter(operation -> operation.cut() instanceof Cut.FinishEdge)
                    .findFirst()
                    .orElseThrow();
            assertThat(bevel.say()).startsWith("Bevel for welding, 6 mm");
            assertThat(((Cut.FinishEdge) bevel.cut()).form())
                    .isInstanceOfSatisfying(Cut.EdgeForm.Chamfer.class, form -> {
                        assertThat(form.angle().degrees()).isCloseTo(60, within(1e-9));
                        assertThat(form.length().mm() * form.angle().tan()).isCloseTo(6, within(1e-5));
                    });
        });
    }
}
