package chargehand.cli;

import chargehand.drawing.dxf.Dxf;
import chargehand.drawing.pdf.Pdf;
import chargehand.drawing.picture.Picture;
import chargehand.drawing.picture.ScaledSheet;
import chargehand.drawing.svg.Svg;
import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;

/** Writes files whole or not at all: what stood there before stays until the new one is complete. */
public final class Written {
    private Written() {}

    /** Writes pictures as the pages of a PDF. */
    public static void pdf(Path file, List<Picture> pages) throws IOException {
        whole(file, out -> Pdf.write(pages, out));
    }

    /** Writes a picture as SVG. */
    public static void svg(Path file, Picture picture) throws IOException {
        whole(file, out -> out.write(Svg.write(picture).getBytes(StandardCharsets.UTF_8)));
    }

    /** Writes a sheet as DXF. */
    public static void dxf(Path file, ScaledSheet sheet) throws IOException {
        whole(file, out -> out.write(Dxf.write(sheet).getBytes(StandardCharsets.US_ASCII)));
    }

    private interface Writing {
        void to(OutputStream out) throws IOException;
    }

    private static void whole(Path file, Writing writing) throws IOException {
        Path absolute = file.toAbsolutePath();
        Path folder = absolute.getParent();
        if (folder == null || Files.isDirectory(absolute)) {
            throw new AskedWrongly(file + " is a folder; name a file to write.");
        }
        Files.createDirectories(folder);
        Path unfinished = Files.createTempFile(folder, ".chargehand", ".part");
        try {
            try (OutputStream out = new BufferedOutputStream(Files.newOutputStream(unfinished))) {
                writing.to(out);
            }
            Files.move(unfinished, absolute, StandardCopyOption.REPLACE_EXISTING);
        } finally {
            Files.deleteIfExists(unfinished);
        }
    }
}
