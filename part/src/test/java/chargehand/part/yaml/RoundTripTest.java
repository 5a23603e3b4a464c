package chargehand.part.yaml;

import static org.assertj.core.api.Assertions.assertThat;

import chargehand.part.Part;
import chargehand.part.testing.PartGenerator;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Any part that stands is written as a file that reads back to the same part. */
final class RoundTripTest {
    private static final int PARTS = 400;

    @ParameterizedTest
    @EnumSource
    void write_anyPart_readsBackTheSame(PartGenerator.Range range) {
        var generator = new PartGenerator(20_260_101, range);
        for (int i = 0; i < PARTS; i++) {
            Part part = generator.part();
            String text = PartFile.write(part);

            assertThat(PartFile.read(text))
                    .as(text)
                    .isInstanceOfSatisfying(
                            PartReading.Read.class,
                            read -> assertThat(read.part()).isEqualTo(part));
        }
    }

    @ParameterizedTest
    @EnumSource
    void write_anyPart_isTheSameWrittenAgain(PartGenerator.Range range) {
        var generator = new PartGenerator(7, range);
        for (int i = 0; i < PARTS / 4; i++) {
            String text = PartFile.write(generator.part());

            assertThat(PartFile.write(((PartReading.Read) PartFile.read(text)).part()))
                    .isEqualTo(text);
        }
    }
}
