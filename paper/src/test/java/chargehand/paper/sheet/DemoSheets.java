package chargehand.paper.sheet;

import chargehand.method.kit.Kit;
import chargehand.method.kit.yaml.KitFiles;
import chargehand.method.kit.yaml.KitRead;
import chargehand.method.plan.Planned;
import chargehand.method.rack.Rack;
import chargehand.method.rack.yaml.RackFile;
import chargehand.method.rack.yaml.RackRead;
import chargehand.method.search.Planner;
import chargehand.part.Part;
import chargehand.part.yaml.PartFile;
import chargehand.part.yaml.PartReading;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.TreeMap;
import java.util.stream.Stream;

/** The demo workshop read from its files, for tests that print what it would print. */
final class DemoSheets {
    private static final Path DEMO = Path.of("..", "demo");

    private DemoSheets() {}

    static Kit kit() throws IOException {
        var files = new TreeMap<String, String>();
        try (Stream<Path> list = Files.list(DEMO.resolve("kit"))) {
            for (Path file : list.toList()) {
                files.put(file.getFileName().toString(), Files.readString(file));
            }
        }
        return ((KitRead.Sound) KitFiles.read(files)).kit();
    }

    static Rack rack() throws IOException {
        return ((RackRead.Sound) RackFile.read(Files.readString(DEMO.resolve("rack.yaml")))).rack();
    }

    static Part part(String name) throws IOException {
        String text = Files.readString(DEMO.resolve("parts").resolve(name + ".yaml"));
        return ((PartReading.Read) PartFile.read(text)).part();
    }

    static Planned.Ready planned(String name, int count) throws IOException {
        return (Planned.Ready) new Planner(kit(), rack()).plan(part(name), count);
    }
}
