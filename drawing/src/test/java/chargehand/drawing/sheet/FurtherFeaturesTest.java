package chargehand.drawing.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import chargehand.drawing.FeatureParts;
import chargehand.drawing.dimension.Placing;
import chargehand.drawing.svg.Svg;
import chargehand.part.Part;
import chargehand.part.yaml.PartFile;
import chargehand.part.yaml.PartReading;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** Nothing of a part is missing from its drawing: it is drawn and given, or said in words. */
final class FurtherFeaturesTest {
    private static final String WHEEL = """
            part: Trial wheel
            unit: mm
            material: EN8
            general: ISO 2768-m
            outside:
              - {knurl: 30, pattern: diamond, pitch: 0.8, length: 20}
              - {round: 26, length: 40, name: shank}
              - {round: 90, length: 15, name: flange}
              - {teeth: 20, module: 2.5, pressure-angle: 20°, length: 25}
            inside:
              - {bore: 16 H7, name: bore}
            across:
              - {over-flat: 22, at: 22, length: 20}
            in-bores:
              - {keyway: 5, depth: 2.3, in: bore, name: keyway}
              - {oil-groove: 3, depth: 1, in: bore, at: 30, length: 40, around: 180°, name: oil way}
              - {recess: 20, in: bore, at: 64, width: 6, name: recess}
            on-ends:
              - {holes: 8.5, end: B, count: 6, circle: 74, name: bolt holes}
              - {tapped-holes: M6, end: B, count: 3, circle: 74, depth: 6, around: 30°, name: jacking holes}
            """;

    private static final String PINION = """
            part: Old pinion
            unit: in
            material: EN8
            general: ±.005
            outside:
              - {round: 2.5, length: 1/2, name: boss, was: 2.6}
              - {teeth: 17, diametral-pitch: 5, pressure-angle: 14.5°, length: 2, name: teeth, made: already}
            inside:
              - {bore: 1.25, name: old bore, made: already}
              - {bore: 1.375 H7, name: bore}
            """;

    private static Part part(String text) {
        return ((PartReading.Read) PartFile.read(text)).part();
    }

    private static String notes(String text) {
        return Fitting.of(part(text)).foot().notes().lines().stream()
                .map(lines -> String.join(" ", lines))
                .collect(Collectors.joining("\n"));
    }

    @Test
    void notes_sayHowFeaturesLieRoundTheAxis() {
        assertThat(notes(WHEEL))
                .contains(
                        "Oil way lies 180° round the axis from",
                        "The first of jacking holes lies 30° round the axis from",
                        "Oil grooves are round at the bottom.");
    }

    @Test
    void views_giveWhatIsCutIntoBoresAndFaces() {
        assertThat(said(WHEEL))
                .contains(
                        "5", "18.3", "oil groove 3 wide, 1 deep", "Ø20", "6× Ø8.5 through", "3× M6, 6 deep", "Ø74 PCD");
    }

    private static List<String> said(String text) {
        return Fitting.of(part(text)).views().stream()
                .flatMap(view -> view.view().placed().stream())
                .map(Placing::says)
                .toList();
    }

    @Test
    void tableAndCallouts_giveTeethKnurlAndFlat() {
        String svg = Svg.write(PartDrawing.of(part(WHEEL)));

        assertThat(List.of("Number of teeth", "Module", "knurl RGE 0.8", "over flat"))
                .allSatisfy(words -> assertThat(svg).contains(words));
    }

    @Test
    void notes_sayWhatIsThereAlreadyAndWhatItWas() {
        assertThat(notes(PINION))
                .contains(
                        "as the part comes in, drawn in lines of a dash and two dots: teeth, old bore.",
                        "Boss was 2.6 in diameter and is turned down.");
    }

    @Test
    void ends_areGivenByTheirSignsAndInWords() {
        Fitting fitting = Fitting.of(FeatureParts.ends());

        assertThat(fitting.views().getFirst().view().placed())
                .extracting(Placing::says)
                .contains(
                        "ISO 6411 - B 3.15/10",
                        "ISO 6411 - A 2.5/5.3",
                        "drill and taper-ream 6, 1:50 with the collar in place");
        assertThat(fitting.foot().notes().lines())
                .anyMatch(note -> String.join(" ", note).contains("in end A must stay, in end B must not stay"));
    }

    /** ISO 2553, system A, from memory: depth before the sign, what else is to be said in the fork. */
    @Test
    void edgeForWelding_isGivenByTheSign() {
        Fitting fitting = Fitting.of(FeatureParts.welded());

        assertThat(fitting.views().getFirst().view().placed())
                .extracting(Placing::says)
                .contains("weld 6 bevel 30°, gap 2");
        assertThat(fitting.foot().notes().lines())
                .anyMatch(note -> String.join(" ", note).contains("ISO 2553, system A"));
    }
}
