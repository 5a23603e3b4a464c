package chargehand.web.method;

import chargehand.book.method.MethodRecord;
import chargehand.book.part.DrawnPart;
import chargehand.book.part.PartIssue;
import chargehand.method.kit.Kit;
import chargehand.method.plan.Method;
import chargehand.method.plan.SetUp;
import chargehand.method.replay.Proof;
import chargehand.method.replay.Replay;
import chargehand.paper.stage.StageDrawing;
import chargehand.part.Part;
import chargehand.web.serving.Counter;
import chargehand.web.serving.Plate;
import java.util.List;
import java.util.Optional;

/**
 * A method carried out again on the part and the kit it was worked out for, whatever they have become since, so that its
 * stages can be drawn.
 *
 * @param stages a picture for each set-up as an element of a page, in their order; empty text where there is none
 */
public record Replayed(Part part, Method method, Kit kit, Proof proof, List<String> stages) {
    private static final double WIDTH = 150;
    private static final double HEIGHT = 84;

    /** The replay of a planning on its kit; empty where no method was found. */
    static Optional<Replayed> of(Counter counter, MethodRecord planned, Kit kit) {
        return planned.method().flatMap(method -> part(counter, planned).map(part -> of(part, method, kit)));
    }

    private static Replayed of(Part part, Method method, Kit kit) {
        Proof proof = Replay.of(part, method, kit);
        List<String> stages = new StageDrawing(part, kit)
                .all(method, proof, WIDTH, HEIGHT).stream()
                        .map(picture -> picture.map(Plate::of).orElse(""))
                        .toList();
        return new Replayed(part, method, kit, proof, stages);
    }

    private static Optional<Part> part(Counter counter, MethodRecord planned) {
        return counter.desk().jobs().drawings(planned.job()).stream()
                .filter(issue -> issue.version() == planned.basis().version())
                .findFirst()
                .flatMap(Replayed::part);
    }

    private static Optional<Part> part(PartIssue issue) {
        return DrawnPart.of(issue).part();
    }

    /** The picture of one set-up as an element of a page; empty text where there is none. */
    public String stage(SetUp setUp) {
        int index = setUp.number() - 1;
        return index < stages.size() ? stages.get(index) : "";
    }
}
