package chargehand.web.drawing;

import chargehand.drawing.dimension.GivenLengths;
import chargehand.drawing.dimension.GivenLengths.Given;
import chargehand.part.Body;
import chargehand.part.LengthWish;
import chargehand.part.Part;
import chargehand.part.yaml.PartFile;
import chargehand.part.yaml.PartReading;
import chargehand.web.drawing.Lengths.Clash;
import chargehand.web.serving.Form;
import chargehand.web.serving.Pages;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.List;
import java.util.Optional;

/**
 * Has a length of the drawing otherwise: writes the wish into the part's file as it stands in the field and saves that as if
 * it had been typed. A length that would be said twice is not taken; what it follows from is named.
 */
public final class LengthsPage implements Pages {
    private final DrawingPage drawings;

    public LengthsPage(DrawingPage drawings) {
        this.drawings = drawings;
    }

    @Override
    public void add(RoutesConfig routes) {
        routes.post("/jobs/{job}/drawing/lengths", this::change);
    }

    private void change(Context context) {
        Form form = Form.of(context);
        String text = DrawingPage.text(form);
        switch (PartFile.read(text)) {
            case PartReading.Faulty faulty ->
                drawings.refuse(
                        context, List.of("Mend what is wrong in the text first, then change its lengths."), List.of());
            case PartReading.Read read -> {
                if (read.part().body() instanceof Body.Turned body) {
                    change(context, text, read.part(), Wanted.applied(sent(form), read.part(), body));
                } else {
                    unknown(context);
                }
            }
        }
    }

    private static String sent(Form form) {
        String key = form.value("do");
        return key.equals("add") ? Wanted.added(form.value("from"), form.value("to")) : key;
    }

    private void unknown(Context context) {
        drawings.refuse(
                context, List.of("The drawing has changed and has no such length now: choose it again."), List.of());
    }

    private void change(Context context, String text, Part part, Optional<List<LengthWish>> wishes) {
        if (wishes.isEmpty()) {
            unknown(context);
            return;
        }
        String changed = PartFile.with(text, part, wishes.orElseThrow());
        switch (PartFile.read(changed)) {
            case PartReading.Faulty faulty -> {
                List<String> says = faulty.faults().stream()
                        .map(fault -> fault.say())
                        .distinct()
                        .toList();
                clash(
                        context,
                        says.stream().map(say -> new Clash(say, List.of())).toList());
            }
            case PartReading.Read read -> {
                List<Clash> clashes = clashes(part, read.part());
                if (clashes.isEmpty()) {
                    drawings.save(context, changed);
                } else {
                    clash(context, clashes);
                }
            }
        }
    }

    private void clash(Context context, List<Clash> clashes) {
        drawings.refuse(context, List.of("Nothing was changed; why is said below, beside the lengths."), clashes);
    }

    /** What cannot be had of what is newly wanted. */
    private static List<Clash> clashes(Part before, Part after) {
        Lengths lengths = Lengths.of(after);
        GivenLengths given = GivenLengths.of(after);
        List<GivenLengths.Circle> known = GivenLengths.of(before).circles();
        List<Clash> circles = given.circles().stream()
                .filter(circle -> !known.contains(circle))
                .map(circle -> Lengths.clash(lengths.faces(), circle))
                .toList();
        List<Clash> needed = given.lengths().stream()
                .filter(LengthsPage::isNeeded)
                .map(length -> new Clash(
                        length.says() + " from " + lengths.faces().get(length.from()) + " to "
                                + lengths.faces().get(length.to())
                                + " is the last length that gives a face its place: give another one there first.",
                        List.of()))
                .toList();
        return circles.isEmpty() ? needed : circles;
    }

    private static boolean isNeeded(Given length) {
        return !length.bracketed()
                && length.wish()
                        .giving()
                        .filter(giving -> giving != LengthWish.Giving.PLAIN)
                        .isPresent();
    }
}
