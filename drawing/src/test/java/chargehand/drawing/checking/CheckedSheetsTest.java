package chargehand.drawing.checking;

import static org.assertj.core.api.Assertions.assertThat;

import chargehand.drawing.DemoParts;
import chargehand.drawing.RandomParts;
import chargehand.drawing.StressParts;
import chargehand.drawing.sheet.Heading;
import chargehand.drawing.sheet.PartDrawing;
import chargehand.part.Part;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** ISO 129-1 as our drawing rules put it: nothing on anything, arrows on lines, every size once and the part's own. */
final class CheckedSheetsTest {
    /** How many parts made up by chance are drawn besides. */
    private static final int BY_CHANCE = 24;

    static List<Part> parts() {
        return Stream.of(DemoParts.andSamples(), StressParts.all(), RandomParts.of(BY_CHANCE))
                .flatMap(List::stream)
                .toList();
    }

    @ParameterizedTest
    @MethodSource("parts")
    void of_anyPart_findsNothingToPencilIn(Part part) {
        assertThat(SheetCheck.of(PartDrawing.sheet(part, Heading.BLANK)))
                .filteredOn(fault -> !fault.kind().isOnlyCounted())
                .isEmpty();
    }

    @ParameterizedTest
    @MethodSource("chargehand.drawing.FeatureParts#all")
    void of_aPartOfRareFeatures_findsNothingButLinesThatCross(Part part) {
        assertThat(SheetCheck.of(PartDrawing.sheet(part, Heading.BLANK)))
                .extracting(SheetFault::kind)
                .isSubsetOf(FaultKind.EXTENSIONS_CROSS, FaultKind.LEADERS_CROSS, FaultKind.DIMENSION_LINE_CROSSED);
    }
}
