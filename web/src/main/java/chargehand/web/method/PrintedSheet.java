package chargehand.web.method;

import chargehand.book.method.MethodRecord;
import chargehand.drawing.pdf.Pdf;
import chargehand.drawing.picture.Picture;
import chargehand.method.proved.Aid;
import chargehand.paper.sheet.ScanCode;
import chargehand.paper.sheet.Sheets;
import io.javalin.http.NotFoundResponse;
import java.io.IOException;
import java.io.OutputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The method sheet of a job, for the clip above the machine. */
final class PrintedSheet {
    private final Replayed replayed;
    private final List<Aid> aids;
    private final String job;

    PrintedSheet(Replays replays, MethodRecord planned) {
        this.replayed = replays.of(planned)
                .orElseThrow(() -> new NotFoundResponse("Job " + planned.job() + " has no method to print yet."));
        this.aids = replays.aids(planned);
        this.job = planned.job().toString();
    }

    /** Writes it as PDF, with a code that opens the job at {@code site}. */
    void write(OutputStream out, String site) throws IOException {
        var proved = new Sheets.Proved(replayed.part(), replayed.method(), replayed.proof());
        var code = new ScanCode(site + "/jobs/" + job);
        var pages = new ArrayList<Picture>(Sheets.method(proved, replayed.kit(), "Job " + job, Optional.of(code)));
        pages.addAll(Sheets.aids(aids, replayed.kit(), "Job " + job));
        Pdf.write(pages, out);
    }
}
