package chargehand.cli;

import chargehand.method.kit.Kit;
import chargehand.method.kit.yaml.KitFiles;
import chargehand.method.kit.yaml.KitRead;
import chargehand.method.rack.Rack;
import chargehand.method.rack.yaml.RackFile;
import chargehand.method.rack.yaml.RackRead;
import chargehand.part.yaml.PartFile;
import chargehand.part.yaml.PartReading;
import chargehand.part.yaml.tree.Fault;
import java.io.IOException;
import java.nio.charset.MalformedInputException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Reads what a person keeps in files: a part, a kit's folder, a rack. What cannot stand is said with its place. */
public final class OnDisk {
    private static final long MOST_BYTES = 1 << 20;
    private static final String YAML = ".yaml";

    private OnDisk() {}

    /**
     * The text of a file.
     *
     * @throws AskedWrongly when there is no such file, or it is no text, or larger than any that is written by hand
     */
    public static String text(Path file) throws IOException {
        if (!Files.isRegularFile(file)) {
            throw new AskedWrongly("There is no file " + file + ".");
        }
        if (Files.size(file) > MOST_BYTES) {
            throw new AskedWrongly(
                    file + " is larger than " + MOST_BYTES / 1024 + " kB, which no file written by hand is.");
        }
        try {
            return Files.readString(file);
        } catch (MalformedInputException noText) {
            throw new AskedWrongly(file + " is not text in UTF-8.", noText);
        }
    }

    /** The YAML files of a folder by name, with their texts. */
    public static Map<String, String> folder(Path folder) throws IOException {
        if (!Files.isDirectory(folder)) {
            throw new AskedWrongly("There is no folder " + folder + ".");
        }
        var texts = new TreeMap<String, String>();
        try (Stream<Path> files = Files.list(folder)) {
            for (Path file :
                    files.filter(each -> each.toString().endsWith(YAML)).toList()) {
                texts.put(file.getFileName().toString(), text(file));
            }
        }
        return texts;
    }

    /** What a part file says, faults and all. */
    public static PartReading part(Path file) throws IOException {
        return PartFile.read(text(file));
    }

    /**
     * The kit described in a folder.
     *
     * @throws AskedWrongly naming every fault
     */
    public static Kit kit(Path folder) throws IOException {
        Map<String, String> files = folder(folder);
        if (files.isEmpty()) {
            throw new AskedWrongly("There are no files ending in .yaml in " + folder + ", and so no machines.");
        }
        return switch (KitFiles.read(files)) {
            case KitRead.Sound(Kit kit) -> kit;
            case KitRead.Refused refused ->
                throw new AskedWrongly(refused.faults().stream()
                        .map(fault -> line(folder.resolve(fault.file()), fault.fault()))
                        .collect(Collectors.joining("\n")));
        };
    }

    /**
     * The rack described in a file.
     *
     * @throws AskedWrongly naming every fault
     */
    public static Rack rack(Path file) throws IOException {
        return switch (RackFile.read(text(file))) {
            case RackRead.Sound(Rack rack) -> rack;
            case RackRead.Refused refused -> throw new AskedWrongly(lines(file, refused.faults()));
        };
    }

    /** Faults a line each, with the file and the line they stand in. */
    static String lines(Path file, List<Fault> faults) {
        return faults.stream().map(fault -> line(file, fault)).collect(Collectors.joining("\n"));
    }

    private static String line(Path file, Fault fault) {
        String path = fault.path().isEmpty() ? "" : fault.path() + ": ";
        return file + ":" + fault.line() + ": " + path + fault.say();
    }
}
