package chargehand.part.testing;

import static org.assertj.core.api.Assertions.assertThat;

import chargehand.part.Body;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

final class PartGeneratorTest {
    private static Set<String> kinds(PartGenerator.Range range) {
        var generator = new PartGenerator(5, range);
        return IntStream.range(0, 400)
                .mapToObj(i -> generator.turned().body())
                .map(Body.Turned.class::cast)
                .flatMap(body -> body.features().stream())
                .map(feature ->
                        feature.getClass().getName().replaceAll(".*[.]", "") + (feature.isThere() ? " there" : ""))
                .collect(Collectors.toSet());
    }

    @Test
    void all_hasEveryFurtherKind() {
        assertThat(kinds(PartGenerator.Range.ALL))
                .contains(
                        "Section$Toothed",
                        "Section$Knurled",
                        "Section$Curved",
                        "Across$Flat",
                        "InBore$Keyway",
                        "InBore$OilGroove",
                        "InBore$Recess",
                        "OnEnd$Drilled",
                        "OnEnd$Tapped",
                        "OnEnd$Slot",
                        "OnEnd$Centre",
                        "Across$TaperPin",
                        "Across$Slit",
                        "Section$Round there");
    }

    @Test
    void usual_hasNoneOfThem() {
        assertThat(kinds(PartGenerator.Range.USUAL))
                .allMatch(kind ->
                        kind.matches("Section.(Round|Cone|Polygon|Threaded|Groove)|Bore.*|Across.(CrossHole|Keyway)"));
    }
}
