package chargehand.cli;

import chargehand.drawing.checking.FaultKind;
import chargehand.drawing.checking.SheetCheck;
import chargehand.drawing.checking.SheetFault;
import chargehand.drawing.sheet.Heading;
import chargehand.drawing.sheet.PartDrawing;
import chargehand.part.yaml.PartFile;
import chargehand.part.yaml.PartReading;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * What a checker would pencil in on the drawings of a folder of parts.
 *
 * @param sheets by the name of the part's file
 */
record SheetFaults(Map<String, List<SheetFault>> sheets) {
    /**
     * Draws and checks every part of a folder.
     *
     * @throws AskedWrongly when there is no such folder, no part in it, or one that cannot be read
     */
    static SheetFaults of(Path folder) throws IOException {
        Map<String, String> files = OnDisk.folder(folder);
        if (files.isEmpty()) {
            throw new AskedWrongly("There are no files ending in .yaml in " + folder + ", and so no parts.");
        }
        var sheets = new LinkedHashMap<String, List<SheetFault>>();
        files.forEach((name, text) -> sheets.put(name, check(folder.resolve(name), text)));
        return new SheetFaults(sheets);
    }

    private static List<SheetFault> check(Path file, String text) {
        return switch (PartFile.read(text)) {
            case PartReading.Read read -> SheetCheck.of(PartDrawing.sheet(read.part(), Heading.BLANK));
            case PartReading.Faulty(var faults) -> throw new AskedWrongly(OnDisk.lines(file, faults));
        };
    }

    /** As JSON: counts by kind for each part and in all, and what each fault is. */
    Map<String, Object> tree() {
        var tree = new LinkedHashMap<String, Object>();
        tree.put(
                "parts",
                sheets.entrySet().stream()
                        .map(sheet -> tree(sheet.getKey(), sheet.getValue()))
                        .toList());
        tree.put("all", counts(all()));
        return tree;
    }

    private static Map<String, Object> tree(String file, List<SheetFault> faults) {
        var tree = new LinkedHashMap<String, Object>();
        tree.put("file", file);
        tree.put("counts", counts(faults));
        tree.put("faults", faults.stream().map(SheetFaults::tree).toList());
        return tree;
    }

    private static Map<String, Object> tree(SheetFault fault) {
        var tree = new LinkedHashMap<String, Object>();
        tree.put("kind", fault.kind().text());
        tree.put("say", fault.say());
        fault.at().ifPresent(at -> {
            tree.put("x", Math.round(at.x()));
            tree.put("y", Math.round(at.y()));
        });
        return tree;
    }

    private List<SheetFault> all() {
        return sheets.values().stream().flatMap(Collection::stream).toList();
    }

    /** Every kind with how often it is there. */
    private static Map<String, Long> counts(List<SheetFault> faults) {
        var counts = new LinkedHashMap<String, Long>();
        for (FaultKind kind : FaultKind.values()) {
            counts.put(
                    kind.text(),
                    faults.stream().filter(fault -> fault.kind() == kind).count());
        }
        return counts;
    }

    /** As text: a line for each part, what is wrong under it, and the counts in all. */
    String text() {
        var lines = new ArrayList<String>();
        sheets.forEach((file, faults) -> {
            lines.add(file + ": " + inWords(faults));
            faults.stream()
                    .filter(fault -> !fault.kind().isOnlyCounted())
                    .forEach(fault -> lines.add("    " + fault.kind().text() + ": " + fault.say() + place(fault)));
        });
        lines.add(sheets.size() + " drawings in all: " + inWords(all()));
        return String.join("\n", lines);
    }

    private static String place(SheetFault fault) {
        return fault.at()
                .map(at -> ", at " + Math.round(at.x()) + " mm from the left and " + Math.round(at.y())
                        + " mm from the top")
                .orElse("");
    }

    private static String inWords(List<SheetFault> faults) {
        Map<FaultKind, Long> counts = faults.stream()
                .collect(Collectors.groupingBy(
                        SheetFault::kind, () -> new EnumMap<>(FaultKind.class), Collectors.counting()));
        return counts.isEmpty()
                ? "nothing"
                : Arrays.stream(FaultKind.values())
                        .filter(counts::containsKey)
                        .map(kind -> kind.text() + " " + counts.get(kind))
                        .collect(Collectors.joining(", "));
    }
}
