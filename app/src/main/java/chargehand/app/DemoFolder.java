package chargehand.app;

import chargehand.book.demo.DemoTexts;
import chargehand.cli.AskedWrongly;
import chargehand.cli.OnDisk;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** The demo workshop's files, which lie in {@code demo} at the root of the project. */
final class DemoFolder {
    private DemoFolder() {}

    /** The files, from the folder that the launcher names, or else the one that stands here. */
    static DemoTexts read() throws IOException {
        Path demo = Home.demo();
        if (!Files.isDirectory(demo)) {
            throw new AskedWrongly("There is no folder " + demo + " with the demo workshop's files in it.");
        }
        return new DemoTexts(
                OnDisk.text(demo.resolve(DemoTexts.JOBS)),
                OnDisk.folder(demo.resolve("parts")),
                OnDisk.folder(demo.resolve("kit")),
                OnDisk.text(demo.resolve("rack.yaml")));
    }
}
