package chargehand.drawing.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import chargehand.drawing.svg.Svg;
import chargehand.part.Part;
import chargehand.part.yaml.PartFile;
import chargehand.part.yaml.PartReading;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** Features that no view shows are at least said in words: nothing of a part is missing from its drawing. */
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
        return Fitting.of(part(text)).notes().lines().stream()
                .map(lines -> String.join(" ", lines))
                .collect(Collectors.joining("\n"));
    }

    @Test
    void notes_nameWhatIsCutIntoBoresAndFaces() {
        assertThat(notes(WHEEL))
                .contains(
                        "Keyway, in bore: 5 wide, 2.3 deep above the bore",
                        "Oil way, in bore: 3 wide, 1 deep, round at the bottom, 40 long, beginning 30 from end A",
                        "Recess, in bore: 20 diameter, 6 wide, beginning 64 from end A",
                        "Bolt holes, from end B: 6 × 8.5 diameter, through, evenly on a circle of 74 diameter",
                        "Jacking holes, from end B: 3 × M6, 6 deep");
    }

    @Test
    void callouts_giveTeethKnurlAndFlat() {
        String svg = Svg.write(PartDrawing.of(part(WHEEL)));

        assertThat(List.of("20 teeth, module 2.5, 20°", "knurl, diamond, pitch 0.8", "over flat"))
                .allSatisfy(words -> assertThat(svg).contains(words));
    }

    @Test
    void notes_sayWhatIsThereAlreadyAndWhatItWas() {
        assertThat(notes(PINION))
                .contains(
                        "There already as the part comes in: teeth, old bore.",
                        "Boss was 2.6 in diameter and is turned down.");
    }
}
