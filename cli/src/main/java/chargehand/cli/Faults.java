package chargehand.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.DirectoryNotEmptyException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.NotDirectoryException;
import java.nio.file.Path;
import java.util.Objects;

/** What is said when a command ends in an exception: a sentence, never a stack trace. */
final class Faults {
    private Faults() {}

    /** Says what happened and hands back how the command ended. */
    static int tell(Throwable fault, Terminal terminal) {
        return switch (fault) {
            case AskedWrongly asked -> said(asked.say(), Ended.ASKED_WRONGLY, terminal);
            case UncheckedIOException wrapped -> tell(Objects.requireNonNull(wrapped.getCause()), terminal);
            case FileSystemException file -> said(wording(file), Ended.WORLD_FAILED, terminal);
            case IOException io -> said("Reading or writing failed: " + io.getMessage(), Ended.WORLD_FAILED, terminal);
            case OutOfMemoryError full ->
                said("This needed more memory than there is; nothing was kept of it.", Ended.WORLD_FAILED, terminal);
            case Throwable defect -> said(reported(defect), Ended.WORLD_FAILED, terminal);
        };
    }

    private static int said(String sentence, int ended, Terminal terminal) {
        terminal.out().flush();
        terminal.err().println(sentence);
        return ended;
    }

    private static String wording(FileSystemException fault) {
        String file = fault.getFile();
        return switch (fault) {
            case NoSuchFileException none -> "There is no file or folder " + file + ".";
            case AccessDeniedException denied -> file + " may not be read or written by this user.";
            case FileAlreadyExistsException there -> file + " is there already.";
            case NotDirectoryException plain -> file + " is not a folder.";
            case DirectoryNotEmptyException full -> "The folder " + file + " is not empty.";
            default -> file + " could not be read or written: " + fault.getReason() + ".";
        };
    }

    /** Keeps the whole of a defect in a file for whoever mends it, and says where. */
    static String reported(Throwable defect) {
        try {
            Path report = Files.createTempFile("chargehand-", ".txt");
            try (var writer = new PrintWriter(report.toFile(), StandardCharsets.UTF_8)) {
                defect.printStackTrace(writer);
            }
            return "Chargehand failed at this, which is a fault of its own. What happened is written in " + report
                    + ".";
        } catch (IOException unwritable) {
            return "Chargehand failed at this, which is a fault of its own: "
                    + defect.getClass().getSimpleName() + ".";
        }
    }
}
