package chargehand.paper.sheet;

import chargehand.drawing.picture.Canvas;
import chargehand.drawing.picture.Ink;
import chargehand.drawing.picture.Path;
import chargehand.drawing.picture.Picture;
import chargehand.drawing.picture.Point;
import com.google.zxing.EncodeHintType;
import com.google.zxing.WriterException;
import com.google.zxing.qrcode.decoder.ErrorCorrectionLevel;
import com.google.zxing.qrcode.encoder.ByteMatrix;
import com.google.zxing.qrcode.encoder.Encoder;
import java.util.Map;

/**
 * A QR code (ISO/IEC 18004) for an address, drawn as squares so that it prints sharp; a quarter of it may be oily and it still
 * reads (level Q).
 *
 * @param address what it opens, at most {@value #LONGEST} characters so that its squares stay large
 */
public record ScanCode(String address) {
    private static final int LONGEST = 120;

    /** Clear squares all round (the standard's quiet zone). */
    private static final int QUIET = 4;

    public ScanCode {
        if (address.isBlank() || address.length() > LONGEST) {
            throw new IllegalArgumentException("a code opens an address of 1 to " + LONGEST + " characters");
        }
    }

    /** The code as a square picture so wide (mm), its quiet zone included. */
    public Picture picture(double width) {
        ByteMatrix squares = squares();
        double size = width / (squares.getWidth() + 2 * QUIET);
        Canvas canvas = new Canvas();
        for (int y = 0; y < squares.getHeight(); y++) {
            for (int x = 0; x < squares.getWidth(); x++) {
                if (squares.get(x, y) == 1) {
                    Point corner = Point.of((x + QUIET) * size, (y + QUIET) * size);
                    canvas.fill(Ink.INK, Path.box(corner, size, size));
                }
            }
        }
        return canvas.picture(width, width, "Code for " + address);
    }

    private ByteMatrix squares() {
        try {
            return Encoder.encode(address, ErrorCorrectionLevel.Q, Map.of(EncodeHintType.CHARACTER_SET, "UTF-8"))
                    .getMatrix();
        } catch (WriterException impossible) {
            throw new IllegalArgumentException("an address that no code holds: " + address, impossible);
        }
    }
}
