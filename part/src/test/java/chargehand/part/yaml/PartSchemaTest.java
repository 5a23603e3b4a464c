package chargehand.part.yaml;

import static org.assertj.core.api.Assertions.assertThat;

import chargehand.part.testing.PartGenerator;
import chargehand.part.testing.TextMutator;
import chargehand.part.yaml.tree.Fault;
import chargehand.part.yaml.tree.ReadingFault;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;
import org.snakeyaml.engine.v2.schema.CoreSchema;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.ObjectMapper;

/** The published schema and the reader agree as far as a schema can tell: about keys and kinds, not about sizes. */
final class PartSchemaTest {
    private static final int SPOILED = 1_000;

    /** What a schema can tell too. */
    private static final Set<ReadingFault> STRUCTURE = EnumSet.of(
            ReadingFault.KEY_UNKNOWN,
            ReadingFault.KEY_MISSING,
            ReadingFault.KEYS_CLASH,
            ReadingFault.NOTHING_WRITTEN,
            ReadingFault.WRONG_KIND);

    private final SchemaRegistry registry = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12);
    private final Schema schema = registry.getSchema(PartFile.schema(), InputFormat.JSON);

    @Test
    void schema_isOneItself() {
        Schema metaSchema = registry.getSchema(SchemaLocation.of(SpecificationVersion.DRAFT_2020_12.getDialectId()));

        assertThat(metaSchema.validate(PartFile.schema(), InputFormat.JSON)).isEmpty();
    }

    @Test
    void shippedParts_fitTheSchema() throws IOException {
        for (Path file : DemoPartsTest.files()) {
            JsonNode tree = tree(Files.readString(file)).orElseThrow();

            assertThat(schema.validate(tree)).as(file.toString()).isEmpty();
        }
    }

    @ParameterizedTest
    @EnumSource
    void writtenParts_fitTheSchema(PartGenerator.Range range) {
        var generator = new PartGenerator(12, range);
        for (int i = 0; i < 200; i++) {
            String text = PartFile.write(generator.part());

            assertThat(schema.validate(tree(text).orElseThrow())).as(text).isEmpty();
        }
    }

    @Test
    void spoiledFiles_areTakenOrRefusedByBoth() throws IOException {
        List<String> texts = new ArrayList<>();
        for (Path file : DemoPartsTest.files()) {
            texts.add(Files.readString(file));
        }
        var generator = new PartGenerator(13, PartGenerator.Range.ALL);
        for (int i = 0; i < 20; i++) {
            texts.add(PartFile.write(generator.part()));
        }
        var mutator = new TextMutator(32);
        int compared = 0;
        for (int i = 0; i < SPOILED; i++) {
            String text = mutator.spoiled(texts.get(i % texts.size()));
            Optional<JsonNode> tree = tree(text);
            if (tree.isPresent() && !hasOddSpaces(text)) {
                compared += compare(text, schema.validate(tree.get()).isEmpty());
            }
        }
        assertThat(compared).isGreaterThan(SPOILED / 8);
    }

    /** Whether a text holds spaces that patterns of one language count as such and those of another do not. */
    private static boolean hasOddSpaces(String text) {
        return text.indexOf('\u2028') >= 0 || text.indexOf('\uFEFF') >= 0;
    }

    /** One if reader and schema had the same to tell about a file, none if the reader had nothing a schema can tell. */
    private static int compare(String text, boolean fits) {
        return switch (PartFile.read(text)) {
            case PartReading.Read read -> {
                assertThat(fits).as(text).isTrue();
                yield 1;
            }
            case PartReading.Faulty faulty -> {
                boolean structural = faulty.faults().stream().map(Fault::code).anyMatch(STRUCTURE::contains);
                if (structural) {
                    assertThat(fits).as(text + faulty).isFalse();
                }
                yield structural ? 1 : 0;
            }
        };
    }

    /** The tree of a text as JSON, if it is YAML with every key once. */
    private static Optional<JsonNode> tree(String text) {
        try {
            var settings = LoadSettings.builder()
                    .setSchema(new CoreSchema())
                    .setAllowDuplicateKeys(false)
                    .build();
            Object tree = plain(new Load(settings).loadFromString(text));
            return Optional.of(new ObjectMapper().valueToTree(tree));
        } catch (YamlEngineException unreadable) {
            return Optional.empty();
        }
    }

    private static @Nullable Object plain(@Nullable Object value) {
        if (value instanceof Map<?, ?> map) {
            Map<String, @Nullable Object> plain = new LinkedHashMap<>();
            map.forEach((key, entry) -> plain.put(String.valueOf(key), plain(entry)));
            return plain;
        }
        if (value instanceof List<?> list) {
            List<@Nullable Object> plain = new ArrayList<>();
            list.forEach(entry -> plain.add(plain(entry)));
            return plain;
        }
        boolean unknownToJson = value instanceof Double number && !Double.isFinite(number);
        return unknownToJson ? String.valueOf(value) : value;
    }
}
