package chargehand.web.method;

import chargehand.book.method.MethodRecord;
import chargehand.book.use.JobFile;
import chargehand.drawing.picture.Picture;
import chargehand.method.plan.SetUp;
import chargehand.web.serving.Plate;
import java.util.List;
import java.util.Optional;

/** The pictures of the work in its holdings, one for each set-up of a method. */
public final class Stages {
    private final List<Optional<Picture>> pictures;

    private Stages(List<Optional<Picture>> pictures) {
        this.pictures = pictures;
    }

    /** The pictures of a planning, as far as the part it was planned for is the one that is drawn. */
    public static Stages of(JobFile file, MethodRecord planned) {
        return new Stages(List.of());
    }

    List<Optional<Picture>> all() {
        return pictures;
    }

    /** The picture of one set-up as an SVG element; empty where there is none. */
    public String inline(SetUp setUp) {
        int index = setUp.number() - 1;
        return index < pictures.size() ? pictures.get(index).map(Plate::of).orElse("") : "";
    }
}
