package chargehand.drawing.dimension;

import static org.assertj.core.api.Assertions.assertThat;

import chargehand.drawing.SampleParts;
import chargehand.drawing.Turning;
import chargehand.measure.Length;
import chargehand.measure.LengthUnit;
import chargehand.part.Body;
import chargehand.part.Part;
import java.util.List;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * That lengths define a part when they make a tree over its faces: Dori, Dimensioning analysis, Communications of the ACM
 * 35(10), 1992. Which tree is chosen is our own; the spindle is the worked example of our drawing rules.
 */
final class AxialSchemeTest {
    private static final SizeText MM = new SizeText(LengthUnit.MILLIMETRE);

    @Test
    void of_theWorkedExample_givesItsSixLengths() {
        assertThat(written(AxialScheme.of(body(SampleParts.spindle()), MM)))
                .containsExactly(
                        "0.0-40.0 40", "0.0-120.0 120", "25.0-28.0 3", "25.0-40.0 15", "40.0-52.0 12", "90.0-120.0 30");
    }

    @Test
    void of_aHexagonBetweenThreads_givesItsWidthInBrackets() {
        List<AxialDimension> lengths = AxialScheme.of(body(SampleParts.union()), new SizeText(LengthUnit.INCH));

        assertThat(lengths)
                .extracting(length -> length.wording().toString())
                .containsExactly("5/8", "1 15/16", "1/8", "(1/2)", "1/8", "9/16");
    }

    @Test
    void of_manyCollarsInARow_givesTheirPlacesFromOneFaceSoThatTolerancesDoNotAddUp() {
        Turning comb = Turning.mm("Comb");
        for (int i = 0; i < 5; i++) {
            comb.round("land " + i, "40", "8").groove("gap " + i, "34", "3");
        }
        List<AxialDimension> lengths =
                AxialScheme.of(comb.round("last", "40", "8").body(), MM);

        assertThat(lengths.stream().filter(length -> length.length().equals(Length.mm(3))))
                .hasSize(5);
        assertThat(lengths.stream().filter(length -> length.length().equals(Length.mm(8))))
                .hasSizeLessThanOrEqualTo(2);
    }

    @ParameterizedTest
    @MethodSource("chargehand.drawing.SampleParts#turned")
    void of_anyPart_placesEveryFaceOnceAndNoneTwice(Part part) {
        List<AxialDimension> given = AxialScheme.of(body(part), new SizeText(part.unit())).stream()
                .filter(length -> !length.wording().toString().startsWith("("))
                .toList();
        FaceTree tree = new FaceTree();
        TreeSet<Length> faces = new TreeSet<>();
        for (AxialDimension length : given) {
            assertThat(tree.join(length.from(), length.to())).isTrue();
            faces.add(length.from());
            faces.add(length.to());
        }
        assertThat(faces).hasSize(body(part).outside().size() + 1);
        assertThat(tree.isWhole(faces.size())).isTrue();
    }

    @Test
    void join_aLengthThatFollowsFromOthers_isRefused() {
        FaceTree tree = new FaceTree();

        assertThat(tree.join(Length.ZERO, Length.mm(40))).isTrue();
        assertThat(tree.join(Length.ZERO, Length.mm(120))).isTrue();
        assertThat(tree.join(Length.mm(40), Length.mm(120))).isFalse();
    }

    private static Body.Turned body(Part part) {
        return (Body.Turned) part.body();
    }

    private static List<String> written(List<AxialDimension> lengths) {
        return lengths.stream()
                .map(length -> length.from().mm() + "-" + length.to().mm() + " " + length.wording())
                .toList();
    }
}
