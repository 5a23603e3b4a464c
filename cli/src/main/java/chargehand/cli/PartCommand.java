package chargehand.cli;

import chargehand.drawing.picture.Picture;
import chargehand.drawing.picture.ScaledSheet;
import chargehand.drawing.sheet.Heading;
import chargehand.drawing.sheet.MainViewSize;
import chargehand.drawing.sheet.PartDrawing;
import chargehand.measure.LengthUnit;
import chargehand.part.Part;
import chargehand.part.yaml.PartReading;
import chargehand.part.yaml.tree.Fault;
import java.io.IOException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Checks a part's file and draws it. */
final class PartCommand implements Command {
    private static final Option SVG = Option.valued("--svg", "FILE", "Write the drawing as SVG.");
    private static final Option PDF = Option.valued("--pdf", "FILE", "Write the drawing as PDF.");
    private static final Option DXF =
            Option.valued("--dxf", "FILE", "Write the drawing as DXF (release 12), the part at full size.");
    private static final Option FAULTS =
            Option.valued("--faults", "DIR", "Draw every part of a folder and count what is wrong with the drawings.");
    private static final Option JSON = Option.flag("--json", "Print what was found as JSON.");

    private final Terminal terminal;

    PartCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Usage usage() {
        return new Usage(
                "part",
                "FILE",
                List.of(
                        "Check a part's file and draw it.",
                        "",
                        "  ./chargehand part demo/parts/union.yaml --pdf union.pdf",
                        "",
                        "Every fault is named with its line; nothing is drawn until there is none."),
                List.of(SVG, PDF, DXF, FAULTS, JSON));
    }

    @Override
    public int run(Given given) throws IOException {
        Optional<String> folder = given.find(FAULTS.name());
        if (folder.isPresent()) {
            given.noWords();
            return faults(Path.of(folder.get()), given.has(JSON.name()));
        }
        Path file = Path.of(given.onlyWord("FILE"));
        PartReading reading = OnDisk.part(file);
        if (given.has(JSON.name())) {
            terminal.out().append(JsonLines.write(tree(reading))).append('\n');
        }
        return switch (reading) {
            case PartReading.Faulty(List<Fault> faults) -> {
                if (!given.has(JSON.name())) {
                    terminal.err().println(OnDisk.lines(file, faults));
                }
                yield Ended.ASKED_WRONGLY;
            }
            case PartReading.Read read -> {
                draw(read.part(), given);
                if (!given.has(JSON.name())) {
                    say(read);
                }
                yield Ended.ANSWERED;
            }
        };
    }

    private int faults(Path folder, boolean json) throws IOException {
        SheetFaults faults = SheetFaults.of(folder);
        terminal.out()
                .append(json ? JsonLines.write(faults.tree()) : faults.text())
                .append('\n');
        return Ended.ANSWERED;
    }

    private static void draw(Part part, Given given) throws IOException {
        Optional<String> svg = given.find(SVG.name());
        Optional<String> pdf = given.find(PDF.name());
        Optional<String> dxf = given.find(DXF.name());
        if (svg.isEmpty() && pdf.isEmpty() && dxf.isEmpty()) {
            return;
        }
        ScaledSheet sheet = PartDrawing.toScale(part, Heading.BLANK);
        Picture drawing = sheet.picture();
        if (svg.isPresent()) {
            Written.svg(Path.of(svg.get()), drawing);
        }
        if (pdf.isPresent()) {
            Written.pdf(Path.of(pdf.get()), List.of(drawing));
        }
        if (dxf.isPresent()) {
            Written.dxf(Path.of(dxf.get()), sheet);
        }
    }

    private void say(PartReading.Read read) {
        Part part = read.part();
        terminal.out().println(part.title() + ", issue " + part.issue() + ", " + part.material() + ": no faults.");
        read.remarks().forEach(remark -> terminal.out().println("line " + remark.line() + ": " + remark.say()));
    }

    private static Map<String, Object> tree(PartReading reading) {
        var tree = new LinkedHashMap<String, Object>();
        switch (reading) {
            case PartReading.Faulty(List<Fault> faults) -> {
                tree.put("sound", false);
                tree.put("faults", faults.stream().map(PartCommand::tree).toList());
            }
            case PartReading.Read read -> {
                tree.put("sound", true);
                tree.put("part", read.part().title());
                tree.put("issue", read.part().issue());
                tree.put("material", read.part().material());
                tree.put(
                        "main view",
                        tree(MainViewSize.of(read.part().body()), read.part().unit()));
                tree.put(
                        "remarks",
                        read.remarks().stream()
                                .map(remark -> entry(remark.line(), remark.path(), remark.code(), remark.say()))
                                .toList());
            }
        }
        return tree;
    }

    /** How far the part reaches from the origin of its main view, in the unit of the drawing. */
    private static Map<String, Object> tree(MainViewSize size, LengthUnit unit) {
        var tree = new LinkedHashMap<String, Object>();
        tree.put("unit", unit.symbol());
        tree.put("right", size.length().in(unit));
        tree.put("above", size.above().in(unit));
        tree.put("below", size.below().in(unit));
        return tree;
    }

    private static Map<String, Object> tree(Fault fault) {
        return entry(fault.line(), fault.path(), fault.code(), fault.say());
    }

    private static Map<String, Object> entry(int line, String path, Enum<?> code, String say) {
        var entry = new LinkedHashMap<String, Object>();
        entry.put("line", line);
        entry.put("path", path);
        entry.put("code", code.name());
        entry.put("say", say);
        return entry;
    }
}
