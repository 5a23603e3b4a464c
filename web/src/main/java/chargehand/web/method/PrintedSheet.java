package chargehand.web.method;

import chargehand.book.method.Finding;
import chargehand.book.method.MethodRecord;
import chargehand.book.use.JobFile;
import chargehand.drawing.pdf.Pdf;
import chargehand.measure.LengthText;
import chargehand.measure.LengthUnit;
import chargehand.method.kit.Kit;
import chargehand.method.plan.Method;
import chargehand.paper.sheet.MethodSheet;
import chargehand.paper.sheet.ScanCode;
import chargehand.paper.sheet.SheetFor;
import chargehand.web.serving.Counter;
import io.javalin.http.NotFoundResponse;
import java.io.IOException;
import java.io.OutputStream;
import java.util.Optional;

/** The method sheet of a job, for the clip above the machine. */
final class PrintedSheet {
    private final Counter counter;
    private final JobFile file;
    private final MethodRecord planned;

    PrintedSheet(Counter counter, JobFile file, MethodRecord planned) {
        this.counter = counter;
        this.file = file;
        this.planned = planned;
    }

    /** Writes it as PDF, with a code that opens the job at {@code site}. */
    void write(OutputStream out, String site) throws IOException {
        Method method = planned.method().orElseThrow();
        Kit kit = Kits.of(counter, planned.basis().edition())
                .orElseThrow(() -> new NotFoundResponse("The kit that this method was worked out for cannot be read."));
        String address = site + "/jobs/" + file.job().number();
        Pdf.write(
                MethodSheet.pages(new SheetFor(
                        "Job " + file.job().number(),
                        method,
                        proof(),
                        Stages.of(file, planned).all(),
                        kit,
                        Optional.of(new ScanCode(address)))),
                out);
    }

    private String proof() {
        return switch (planned.finding()) {
            case Finding.Found found ->
                found.proof().made()
                        ? "Replayed: comes out as drawn, greatest difference "
                                + LengthText.in(found.proof().worst(), LengthUnit.MILLIMETRE)
                        : "Not proved";
            case Finding.NotHere notHere -> "";
        };
    }
}
