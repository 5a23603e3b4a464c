package chargehand.drawing.dxf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import chargehand.drawing.DemoParts;
import chargehand.drawing.RandomParts;
import chargehand.drawing.picture.Box;
import chargehand.drawing.picture.Point;
import chargehand.drawing.sheet.Heading;
import chargehand.drawing.sheet.MainViewSize;
import chargehand.drawing.sheet.PartDrawing;
import chargehand.measure.LengthUnit;
import chargehand.part.Part;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What must hold of every file, after the published description of DXF for release 12 (groups, sections, entities). */
final class DxfTest {
    private static final int BY_CHANCE = 12;

    /** The format keeps a millionth of a unit. */
    private static final double ROUNDED = 2e-6;

    private static final Set<String> LAYERS =
            Set.of("0", "OUTLINE", "THIN", "HIDDEN", "CENTRE", "STOCK", "HATCH", "DIM", "TEXT", "FRAME");

    private static final List<Written> FILES = Stream.concat(
                    DemoParts.andSamples().stream(), RandomParts.of(BY_CHANCE).stream())
            .map(part -> new Written(part, text(part)))
            .toList();

    /** A part and its file. */
    record Written(Part part, String text) {
        @Override
        public String toString() {
            return part.title() + " " + part.drawing();
        }
    }

    private static String text(Part part) {
        return Dxf.write(PartDrawing.toScale(part, Heading.BLANK));
    }

    static List<Written> files() {
        return FILES;
    }

    @ParameterizedTest
    @MethodSource("files")
    void write_anyPart_isReadByTheRulesOfTheFormat(Written file) {
        Reading reading = Reading.of(file.text);

        assertThat(reading.header()).containsEntry("$ACADVER", "AC1009");
        assertThat(reading.header().get("$INSUNITS")).isEqualTo(file.part.unit() == LengthUnit.INCH ? "1" : "4");
        assertThat(reading.layers().keySet()).isEqualTo(LAYERS);
        assertThat(reading.lineTypes()).containsAll(reading.layers().values());
        assertThat(reading.entities()).hasSizeGreaterThan(50).allSatisfy(entity -> {
            assertThat(reading.layers()).containsKey(entity.layer());
            assertThat(reading.lineTypes()).contains(entity.groups().getOrDefault(6, "CONTINUOUS"));
            assertThat(reading.styles()).contains(entity.groups().getOrDefault(7, "STANDARD"));
            entity.groups().keySet().stream()
                    .filter(code -> code >= 10 && code < 60)
                    .forEach(entity::number);
        });
    }

    @ParameterizedTest
    @MethodSource("files")
    void write_anyPart_endsEveryLineOfVertices(Written file) {
        boolean open = false;
        for (Reading.Entity entity : Reading.of(file.text).entities()) {
            boolean vertex = entity.kind().equals("VERTEX") || entity.kind().equals("SEQEND");
            assertThat(vertex).isEqualTo(open);
            open = entity.kind().equals("POLYLINE") || entity.kind().equals("VERTEX");
        }
        assertThat(open).isFalse();
    }

    @ParameterizedTest
    @MethodSource("files")
    void write_anyPart_reachesAsFarAsThePart(Written file) {
        double unit = file.part.unit() == LengthUnit.INCH ? 25.4 : 1;
        Box part = MainViewSize.of(file.part.body()).box();
        Box drawn = mainView(file.text, unit, part.grown(1));

        assertThat(drawn.left()).isCloseTo(part.left(), within(ROUNDED * unit));
        assertThat(drawn.top()).isCloseTo(part.top(), within(ROUNDED * unit));
        assertThat(drawn.bottom()).isCloseTo(part.bottom(), within(ROUNDED * unit));
        if (file.text.contains("The main view is broken")) {
            assertThat(drawn.right()).isLessThan(part.right());
        } else {
            assertThat(drawn.right()).isCloseTo(part.right(), within(ROUNDED * unit));
        }
    }

    /** What the edges that begin within a box cover, those there already too, in millimetres with y down. */
    private static Box mainView(String text, double unit, Box near) {
        List<Point> points = new ArrayList<>();
        for (Reading.Entity entity : Reading.of(text).entities()) {
            List<Point> own = new ArrayList<>();
            boolean edge = entity.layer().equals("OUTLINE") || entity.layer().equals("STOCK");
            if (edge && !entity.kind().equals("POLYLINE") && entity.has(10)) {
                own.add(new Point(unit * entity.number(10), -unit * entity.number(20)));
            }
            if (!own.isEmpty() && entity.has(11)) {
                own.add(new Point(unit * entity.number(11), -unit * entity.number(21)));
            }
            if (own.stream().anyMatch(near::holds)) {
                points.addAll(own);
            }
        }
        return Box.around(points);
    }

    @Test
    void demoParts_thatAreBrokenInTheFile_areTheLongOnes() {
        Set<String> broken = DemoParts.names().stream()
                .filter(name -> text(DemoParts.read(name)).contains("The main view is broken"))
                .collect(Collectors.toSet());

        assertThat(broken).contains("ram").doesNotContain("union", "bearing-bush", "shim", "metric-stud");
    }

    @Test
    void write_aBrokenView_drawsNothingAcrossTheBreak() {
        Reading reading = Reading.of(text(DemoParts.read("ram")));
        List<Reading.Entity> zigzags = reading.entities().stream()
                .filter(entity -> entity.layer().equals("THIN") && entity.kind().equals("VERTEX"))
                .toList();
        double left = zigzags.getFirst().number(10);
        double right = zigzags.getLast().number(10);

        assertThat(right - left).isCloseTo(3, within(1e-6));
        assertThat(reading.entities())
                .filteredOn(entity ->
                        entity.layer().equals("OUTLINE") && entity.kind().equals("LINE"))
                .noneMatch(line -> Math.min(line.number(10), line.number(11)) < left
                        && Math.max(line.number(10), line.number(11)) > right);
    }

    @Test
    void write_underAnotherCountrysFigures_givesTheSameBytes() {
        Part part = DemoParts.read("union");
        String usual = text(part);
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
            assertThat(text(part)).isEqualTo(usual);
        } finally {
            Locale.setDefault(before);
        }
    }

    @Test
    void reading_spoiltFiles_isRefused() {
        String sound = text(DemoParts.read("union"));
        Map<String, String> spoilt = Map.of(
                "cut short", sound.substring(0, sound.length() / 2),
                "no end", sound.replace("  0\r\nEOF\r\n", ""),
                "other line ends", sound.replace("\r\n", "\n"),
                "a letter beyond ASCII", sound.replace("%%p", "±"),
                "an entity of a later release", sound.replace("\r\nSOLID\r\n", "\r\nHATCH\r\n"),
                "no tables", sound.replaceAll("(?s)  0\r\nSECTION\r\n  2\r\nTABLES.*?ENDSEC\r\n", ""));

        spoilt.forEach((how, text) ->
                assertThatThrownBy(() -> Reading.of(text)).as(how).isInstanceOf(RuntimeException.class));
    }
}
