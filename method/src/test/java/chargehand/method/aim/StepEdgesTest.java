package chargehand.method.aim;

import static org.assertj.core.api.Assertions.assertThat;

import chargehand.part.Body;
import chargehand.part.Edge;
import chargehand.part.Part;
import chargehand.part.check.PartCheck;
import chargehand.part.testing.PartGenerator;
import chargehand.part.yaml.PartFile;
import chargehand.part.yaml.PartReading;
import org.junit.jupiter.api.Test;

/** An edge as high as its step stays as high as the step, wherever the middle of the limits puts it. */
final class StepEdgesTest {
    private static final int PARTS = 400;

    private static Part shouldered(String edges) {
        String yaml = """
                part: Journal
                unit: mm
                material: EN8
                general: ISO 2768-m
                outside:
                  - {round: 30, length: 20}
                  - {round: 24 k6, length: 40, %s}
                """.formatted(edges);
        return switch (PartFile.read(yaml)) {
            case PartReading.Read read -> read.part();
            case PartReading.Faulty faulty -> throw new AssertionError(faulty.faults());
        };
    }

    /** 24 k6 is 24 +0.015/+0.002 by ISO 286-2: its middle stands 4.25 µm prouder on the radius. */
    @Test
    void at_radiusAsHighAsItsShoulder_takenDownWithIt() {
        Edge edge = turned(Aim.at(shouldered("at-a: radius 3")))
                .outside()
                .get(1)
                .stretch()
                .atA();
        assertThat(edge).isInstanceOf(Edge.Radius.class);
        assertThat(((Edge.Radius) edge).radius().length().mm()).isEqualTo(2.99575);
    }

    @Test
    void at_radiusBelowItsShoulder_leftAlone() {
        Edge edge = turned(Aim.at(shouldered("at-a: radius 2")))
                .outside()
                .get(1)
                .stretch()
                .atA();
        assertThat(((Edge.Radius) edge).radius().length().mm()).isEqualTo(2);
    }

    @Test
    void at_randomParts_standAsShapesStill() {
        var generator = new PartGenerator(63003);
        for (int i = 0; i < PARTS; i++) {
            Part part = generator.part();
            assertThat(PartCheck.of(Aim.at(part)).faults())
                    .as("part %d: %s", i, part.body())
                    .isEmpty();
        }
    }

    private static Body.Turned turned(Part part) {
        return (Body.Turned) part.body();
    }
}
