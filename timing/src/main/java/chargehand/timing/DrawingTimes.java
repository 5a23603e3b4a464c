package chargehand.timing;

import chargehand.drawing.dxf.Dxf;
import chargehand.drawing.pdf.Pdf;
import chargehand.drawing.picture.Picture;
import chargehand.drawing.picture.ScaledSheet;
import chargehand.drawing.sheet.Heading;
import chargehand.drawing.sheet.PartDrawing;
import chargehand.drawing.svg.Svg;
import chargehand.part.Part;
import chargehand.part.yaml.PartFile;
import chargehand.part.yaml.PartReading;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;

/** The drawing of a shaft of fifteen sections, from the part to each kind of file. */
final class DrawingTimes {
    private static final String FILE = "fifteen-sections.yaml";
    private static final int WARM = 5;
    private static final int RUNS = 9;

    private DrawingTimes() {}

    static List<Measured> measured() throws Exception {
        Part shaft = shaft();
        ScaledSheet laidOut = PartDrawing.toScale(shaft, Heading.BLANK);
        return List.of(
                Measured.of(
                                "drawing of a shaft of 15 sections as SVG, warm",
                                Stopwatch.of(
                                        WARM, RUNS, () -> Svg.write(sheet(shaft).picture())))
                        .aim("50 ms")
                        .beside("writing alone: "
                                + Stopwatch.of(WARM, RUNS, () -> Svg.write(laidOut.picture()))
                                        .text()),
                Measured.of(
                                "the same as PDF",
                                Stopwatch.of(WARM, RUNS, () -> pdf(sheet(shaft).picture())))
                        .aim("150 ms")
                        .beside("writing alone: "
                                + Stopwatch.of(WARM, RUNS, () -> pdf(laidOut.picture()))
                                        .text()),
                Measured.of("the same as DXF", Stopwatch.of(WARM, RUNS, () -> Dxf.write(sheet(shaft))))
                        .beside("writing alone: "
                                + Stopwatch.of(WARM, RUNS, () -> Dxf.write(laidOut))
                                        .text()));
    }

    private static ScaledSheet sheet(Part part) {
        return PartDrawing.toScale(part, Heading.BLANK);
    }

    private static Part shaft() throws IOException {
        try (InputStream file = DrawingTimes.class.getResourceAsStream(FILE)) {
            String text = new String(Objects.requireNonNull(file, FILE).readAllBytes(), StandardCharsets.UTF_8);
            return switch (PartFile.read(text)) {
                case PartReading.Read read -> read.part();
                case PartReading.Faulty faulty -> throw new IllegalStateException(FILE + ": " + faulty.faults());
            };
        }
    }

    private static byte[] pdf(Picture page) throws IOException {
        var out = new ByteArrayOutputStream();
        Pdf.write(List.of(page), out);
        return out.toByteArray();
    }
}
