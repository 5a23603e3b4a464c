package chargehand.app;

import chargehand.book.job.JobNumber;
import chargehand.book.part.DrawnPart;
import chargehand.book.shop.ShopTexts;
import chargehand.book.use.Desk;
import chargehand.book.use.JobFile;
import chargehand.cli.Written;
import chargehand.drawing.picture.Picture;
import chargehand.drawing.sheet.PartDrawing;
import chargehand.method.kit.Kit;
import chargehand.method.kit.yaml.KitFiles;
import chargehand.method.kit.yaml.KitRead;
import chargehand.method.plan.Method;
import chargehand.method.replay.Replay;
import chargehand.paper.sheet.Sheets;
import chargehand.part.Part;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Writes the drawing and the method sheet of jobs into a folder: each as PDF, and every page as SVG. */
final class DemoPrints {
    private final Desk desk;
    private final Path folder;

    DemoPrints(Desk desk, Path folder) {
        this.desk = desk;
        this.folder = folder;
    }

    /** Writes what there is of a job; returns the names of the files. */
    List<String> print(JobNumber number) throws IOException {
        JobFile file = desk.jobs().find(number).orElseThrow();
        Optional<Part> part = file.part().flatMap(DrawnPart::part);
        if (part.isEmpty()) {
            return List.of();
        }
        String name =
                number.number() + "-" + file.part().orElseThrow().issue().face().title();
        String base = name.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-");
        var written = new ArrayList<>(write(base + "-drawing", List.of(PartDrawing.of(part.get()))));
        Optional<Method> method = file.planned().flatMap(planned -> planned.method());
        if (method.isPresent()) {
            written.addAll(write(base + "-method", sheet(part.get(), method.get(), "Job " + number.number())));
        }
        return written;
    }

    private List<Picture> sheet(Part part, Method method, String job) {
        Kit kit = kit(desk.keepTexts().texts());
        return Sheets.method(new Sheets.Proved(part, method, Replay.of(part, method, kit)), kit, job, Optional.empty());
    }

    private static Kit kit(ShopTexts texts) {
        return switch (KitFiles.read(texts.kit())) {
            case KitRead.Sound(Kit kit) -> kit;
            case KitRead.Refused refused ->
                throw new IllegalStateException("a method was planned on a kit that cannot be read");
        };
    }

    private List<String> write(String name, List<Picture> pages) throws IOException {
        var names = new ArrayList<String>();
        Written.pdf(folder.resolve(name + ".pdf"), pages);
        names.add(name + ".pdf");
        for (int i = 0; i < pages.size(); i++) {
            String page = pages.size() == 1 ? name + ".svg" : name + "-" + (i + 1) + ".svg";
            Written.svg(folder.resolve(page), pages.get(i));
            names.add(page);
        }
        return names;
    }
}
