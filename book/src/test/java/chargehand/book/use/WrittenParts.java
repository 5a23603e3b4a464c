package chargehand.book.use;

import chargehand.book.Objection;
import chargehand.book.part.PartReader;
import chargehand.book.part.PartReading;
import chargehand.measure.Length;
import chargehand.measure.LengthReader;
import chargehand.measure.LengthUnit;
import chargehand.part.Body;
import chargehand.part.Edge;
import chargehand.part.GeneralTolerance;
import chargehand.part.Part;
import chargehand.part.Section;
import chargehand.part.Size;
import chargehand.part.Stretch;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Reads drawings of plain pins in a small notation of the tests' own: the title on the first line, then one diameter and one
 * length to a line, such as {@code 20 mm x 50 mm}.
 */
final class WrittenParts implements PartReader {
    @Override
    public PartReading read(String text) {
        List<String> lines = text.lines().toList();
        var objections = new ArrayList<Objection>();
        var sections = new ArrayList<Section>();
        for (int line = 1; line < lines.size(); line++) {
            try {
                sections.add(section(lines.get(line)));
            } catch (IllegalArgumentException unread) {
                objections.add(new Objection("line " + (line + 1), String.valueOf(unread.getMessage())));
            }
        }
        if (sections.isEmpty()) {
            objections.add(new Objection("outside", "A pin has at least one section."));
        }
        return objections.isEmpty()
                ? new PartReading.Drawn(part(lines.getFirst(), sections))
                : new PartReading.Faulty(objections);
    }

    private static Section section(String line) {
        String[] sizes = line.split(" x ", -1);
        if (sizes.length != 2) {
            throw new IllegalArgumentException("A section is written 'diameter x length', not '" + line + "'.");
        }
        Edge plain = new Edge.Plain();
        return new Section.Round(new Stretch("section", size(sizes[1]), plain, plain), size(sizes[0]));
    }

    private static Size size(String text) {
        return Size.general(LengthReader.read(text, LengthUnit.MILLIMETRE));
    }

    private static Part part(String title, List<Section> sections) {
        return new Part(
                title,
                "",
                "A",
                LengthUnit.MILLIMETRE,
                "bright mild steel",
                "",
                new GeneralTolerance.PlusMinus(Length.mm(0.1), "±0.1"),
                Optional.empty(),
                new Body.Turned(sections, List.of(), List.of()),
                List.of(),
                List.of());
    }
}
