package chargehand.app;

import java.nio.file.Path;

/** Where the program stands, as its launcher says; the folder it was called in where nothing is said. */
final class Home {
    private static final String PROPERTY = "chargehand.home";

    private Home() {}

    /** The demo workshop's files. */
    static Path demo() {
        return root().resolve("demo");
    }

    /** Where the part of SQLite that is not Java is unpacked, once. */
    static Path natives() {
        return root().resolve("build").resolve("native");
    }

    private static Path root() {
        return Path.of(System.getProperty(PROPERTY, "."));
    }
}
