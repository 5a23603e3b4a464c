package chargehand.method.kit.yaml;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.schema.CoreSchema;
import tools.jackson.databind.ObjectMapper;

/** A schema that we publish, as an independent validator understands it. */
public final class PublishedSchema {
    private final SchemaRegistry registry = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12);
    private final String text;
    private final Schema schema;

    public PublishedSchema(String text) {
        this.text = text;
        this.schema = registry.getSchema(text, InputFormat.JSON);
    }

    /** Whether it is itself a sound schema. */
    public boolean isOne() {
        SchemaLocation dialect = SchemaLocation.of(SpecificationVersion.DRAFT_2020_12.getDialectId());
        return registry.getSchema(dialect).validate(text, InputFormat.JSON).isEmpty();
    }

    /** Whether it accepts a text that must be sound YAML. */
    public boolean accepts(String yaml) {
        LoadSettings settings =
                LoadSettings.builder().setSchema(new CoreSchema()).build();
        Object tree = new Load(settings).loadFromString(yaml);
        return schema.validate(new ObjectMapper().valueToTree(tree)).isEmpty();
    }
}
