package chargehand.drawing.pdf;

import chargehand.drawing.lettering.Weight;
import java.io.IOException;
import java.io.InputStream;
import java.util.EnumMap;
import java.util.Map;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/** The weights of the font that one document uses, each loaded when first used and cut down to what was used. */
final class Fonts {
    private final PDDocument document;
    private final Map<Weight, PDFont> loaded = new EnumMap<>(Weight.class);

    Fonts(PDDocument document) {
        this.document = document;
    }

    PDFont of(Weight weight) throws IOException {
        PDFont font = loaded.get(weight);
        if (font == null) {
            try (InputStream file = weight.open()) {
                font = PDType0Font.load(document, file, true);
            }
            loaded.put(weight, font);
        }
        return font;
    }
}
