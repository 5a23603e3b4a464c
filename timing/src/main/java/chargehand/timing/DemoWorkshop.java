package chargehand.timing;

import chargehand.book.Objection;
import chargehand.book.demo.DemoShop;
import chargehand.book.demo.DemoTexts;
import chargehand.book.memory.MemoryBook;
import chargehand.book.method.PlannerReply;
import chargehand.method.kit.Kit;
import chargehand.method.kit.yaml.KitFiles;
import chargehand.method.kit.yaml.KitRead;
import chargehand.method.rack.Rack;
import chargehand.method.rack.yaml.RackFile;
import chargehand.method.rack.yaml.RackRead;
import chargehand.part.Part;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * The demo workshop, read from its files.
 *
 * @param kit its machines and tools
 * @param rack its stock
 * @param drawn the parts of its jobs, each with how many are wanted, in the order of the jobs
 */
record DemoWorkshop(Kit kit, Rack rack, List<Drawn> drawn) {
    /** A part and how many of it are wanted. */
    record Drawn(Part part, int count) {
        String name() {
            return part.title() + " × " + count;
        }
    }

    static DemoWorkshop read(Path folder) throws IOException {
        DemoTexts texts = texts(folder);
        return switch (KitFiles.read(texts.kit())) {
            case KitRead.Sound(Kit kit) -> new DemoWorkshop(kit, rack(texts), drawn(texts));
            case KitRead.Refused refused -> throw new IllegalStateException("the demo's kit: " + refused.faults());
        };
    }

    /** Its files as they are. */
    static DemoTexts texts(Path folder) throws IOException {
        return new DemoTexts(
                Files.readString(folder.resolve(DemoTexts.JOBS)),
                files(folder.resolve("parts")),
                files(folder.resolve("kit")),
                Files.readString(folder.resolve("rack.yaml")));
    }

    private static Rack rack(DemoTexts texts) {
        return switch (RackFile.read(texts.rack())) {
            case RackRead.Sound(Rack rack) -> rack;
            case RackRead.Refused refused -> throw new IllegalStateException("the demo's rack: " + refused.faults());
        };
    }

    /** Every part that the demo asks a planner for. */
    private static List<Drawn> drawn(DemoTexts texts) {
        var drawn = new ArrayList<Drawn>();
        var shop = new DemoShop(
                new MemoryBook(),
                (part, count, wishes, shopTexts) -> {
                    drawn.add(new Drawn(part, count));
                    return new PlannerReply.KitFaulty(List.of(new Objection("kit", "Only the asking counts here.")));
                },
                Clock.systemUTC());
        shop.fill(texts);
        return drawn;
    }

    private static Map<String, String> files(Path folder) throws IOException {
        var files = new TreeMap<String, String>();
        try (Stream<Path> list = Files.list(folder)) {
            for (Path file : list.toList()) {
                files.put(file.getFileName().toString(), Files.readString(file));
            }
        }
        return files;
    }
}
