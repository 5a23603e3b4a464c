package chargehand.method.rack.yaml;

import static org.assertj.core.api.Assertions.assertThat;

import chargehand.method.kit.yaml.DemoKit;
import chargehand.method.kit.yaml.KeyChanges;
import chargehand.method.kit.yaml.PublishedSchema;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The published schema and the reader agree about keys and kinds, whichever key of the demo file is changed. */
final class RackSchemaTest {
    private static final PublishedSchema SCHEMA = new PublishedSchema(RackFile.schema());

    private static final String SHAPES = """
            rack: every shape
            unit: mm
            pieces:
              - {round: 20, name: A, place: top, material: EN8, sure: marked, length: 900, condition: bright, price: 2.5}
              - {hexagon: 20, name: B, place: top, material: EN8, sure: marked, length: 900, condition: black, count: 2}
              - {square: 20, name: C, place: top, material: EN8, sure: unknown, length: 900, condition: cast, note: old}
              - {octagon: 20, name: D, place: top, material: EN8, sure: taken for, length: 900, condition: bright}
              - {flat: {width: 20, thickness: 5}, name: E, place: top, material: EN8, sure: certified, length: 900,
                 condition: reclaimed}
            """;

    @Test
    void schema_itself_sound() {
        assertThat(SCHEMA.isOne()).isTrue();
    }

    @Test
    void schema_demoFile_accepts() {
        assertThat(SCHEMA.accepts(DemoKit.rack())).isTrue();
    }

    @Test
    void schema_anyKeyChanged_judgesAsTheReader() {
        List<String> texts = KeyChanges.of(SHAPES);
        assertThat(texts).hasSizeGreaterThan(100);
        for (String text : texts) {
            assertThat(SCHEMA.accepts(text)).as(text).isEqualTo(RackFile.read(text) instanceof RackRead.Sound);
        }
    }
}
