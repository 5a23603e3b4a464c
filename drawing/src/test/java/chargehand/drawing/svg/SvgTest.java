package chargehand.drawing.svg;

import static org.assertj.core.api.Assertions.assertThat;

import chargehand.drawing.Sample;
import chargehand.drawing.lettering.Lettering;
import chargehand.drawing.picture.Canvas;
import chargehand.drawing.picture.LineStyle;
import chargehand.drawing.picture.Path;
import chargehand.drawing.picture.Picture;
import chargehand.drawing.picture.Point;
import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;

final class SvgTest {
    @Test
    void write_everyKindOfMark_isWellFormedWithTheTitleAndTheWords() throws Exception {
        Document svg = parsed(Svg.write(Sample.picture()));

        assertThat(svg.getDocumentElement().getAttribute("width")).isEqualTo("60mm");
        assertThat(svg.getDocumentElement().getAttribute("viewBox")).isEqualTo("0 0 60 50");
        assertThat(svg.getElementsByTagName("title").item(0).getTextContent()).isEqualTo("Every kind of mark");
        assertThat(svg.getElementsByTagName("text").item(0).getTextContent()).isEqualTo("Ram & gland < 1/2");
        assertThat(svg.getElementsByTagName("path").getLength()).isEqualTo(4);
        assertThat(svg.getElementsByTagName("circle").getLength()).isEqualTo(2);
    }

    @Test
    void write_anArc_keepsItAnArc() {
        Path quarter = new Path(Point.of(0, 0), List.of(new Path.Bend(Point.of(2, 2), 2, true)), false);
        Picture picture = new Canvas().stroke(LineStyle.WIDE, quarter).picture(5, 5, "arc");

        assertThat(Svg.write(picture)).contains("d=\"M0 0A2 2 0 0 1 2 2\"");
    }

    @Test
    void write_wordsThatXmlCannotCarry_staysWellFormed() throws Exception {
        Picture picture = new Canvas()
                .words(Lettering.height(5), Point.of(1, 9), "a\u0000b\"<\uD83D\uDD27")
                .picture(20, 10, "\u0007 bell");

        assertThat(parsed(Svg.write(picture))
                        .getElementsByTagName("text")
                        .item(0)
                        .getTextContent())
                .isEqualTo("a b\"<\uD83D\uDD27");
    }

    @Test
    void inline_aPicture_takesThePagesColoursAndSize() {
        assertThat(Svg.inline(Sample.picture()))
                .startsWith("<svg")
                .contains("var(--marking,#1f3f8f)", "viewBox=\"0 0 60 50\"")
                .doesNotContain("60mm");
    }

    @Test
    void number_anyValue_hasNoNeedlessDigits() {
        assertThat(SvgText.number(1.5)).isEqualTo("1.5");
        assertThat(SvgText.number(-0.0004)).isEqualTo("0");
        assertThat(SvgText.number(-0.25)).isEqualTo("-0.25");
        assertThat(SvgText.number(1.005)).isEqualTo("1.005");
        assertThat(SvgText.number(120)).isEqualTo("120");
    }

    private static Document parsed(String svg) throws Exception {
        return DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(new ByteArrayInputStream(svg.getBytes(StandardCharsets.UTF_8)));
    }
}
