package chargehand.method.kit.yaml;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The published schema and the reader agree about keys and kinds, whichever key of a demo file is changed. */
final class KitSchemaTest {
    private static final PublishedSchema SCHEMA = new PublishedSchema(KitFiles.schema());

    static Stream<String> files() {
        return DemoKit.files().keySet().stream();
    }

    private static boolean isRead(String text) {
        return switch (KitFiles.read(Map.of("one.yaml", text))) {
            case KitRead.Sound sound -> true;
            case KitRead.Refused(var faults) ->
                faults.stream().allMatch(fault -> fault.file().isEmpty());
        };
    }

    @Test
    void schema_itself_sound() {
        assertThat(SCHEMA.isOne()).isTrue();
    }

    @ParameterizedTest
    @MethodSource("files")
    void schema_demoFile_accepts(String file) {
        assertThat(SCHEMA.accepts(DemoKit.file(file))).isTrue();
    }

    @ParameterizedTest
    @MethodSource("files")
    void schema_anyKeyChanged_judgesAsTheReader(String file) {
        List<String> texts = KeyChanges.of(DemoKit.file(file));
        assertThat(texts).hasSizeGreaterThanOrEqualTo(30);
        for (String text : texts) {
            assertThat(SCHEMA.accepts(text)).as(text).isEqualTo(isRead(text));
        }
    }
}
