package chargehand.web.drawing;

import chargehand.book.part.DrawnPart;
import chargehand.book.use.JobFile;
import chargehand.drawing.dxf.Dxf;
import chargehand.drawing.pdf.Pdf;
import chargehand.drawing.picture.ScaledSheet;
import chargehand.drawing.sheet.Heading;
import chargehand.drawing.sheet.PartDrawing;
import chargehand.drawing.svg.Svg;
import chargehand.part.Part;
import chargehand.web.serving.Counter;
import chargehand.web.serving.Pages;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** The drawing as a file to print, to send or to put into something else. */
public final class DrawingFiles implements Pages {
    private final Counter counter;

    public DrawingFiles(Counter counter) {
        this.counter = counter;
    }

    @Override
    public void add(RoutesConfig routes) {
        routes.get("/jobs/{job}/drawing.pdf", this::pdf);
        routes.get("/jobs/{job}/drawing.svg", this::svg);
        routes.get("/jobs/{job}/drawing.dxf", this::dxf);
        routes.get("/jobs/{job}/part.yaml", this::file);
    }

    private void pdf(Context context) throws IOException {
        var pdf = new ByteArrayOutputStream();
        Pdf.write(List.of(sheet(context).picture()), pdf);
        context.contentType("application/pdf").result(pdf.toByteArray());
    }

    private void svg(Context context) {
        context.contentType("image/svg+xml; charset=utf-8")
                .result(Svg.write(sheet(context).picture()));
    }

    /** Browsers show no DXF: it is offered to be kept, under the job's name. */
    private void dxf(Context context) {
        String dxf = Dxf.write(sheet(context));
        attached(context, ".dxf");
        context.contentType("image/vnd.dxf").result(dxf.getBytes(StandardCharsets.US_ASCII));
    }

    private void file(Context context) {
        JobFile file = counter.job(context);
        String text = file.part()
                .map(drawn -> drawn.issue().text())
                .orElseThrow(() -> new NotFoundResponse("Job " + file.job().number() + " has no drawing yet."));
        attached(context, ".yaml");
        context.contentType("application/yaml; charset=utf-8").result(text);
    }

    private static void attached(Context context, String ending) {
        context.header("Content-Disposition", "attachment; filename=\"job-" + Counter.number(context) + ending + "\"");
    }

    private ScaledSheet sheet(Context context) {
        JobFile file = counter.job(context);
        DrawnPart drawn = file.part()
                .filter(saved -> saved.part().isPresent())
                .orElseThrow(
                        () -> new NotFoundResponse(
                                "Job " + file.job().number()
                                        + " has no drawing that can be printed yet: it is not drawn, or something in it is to be mended."));
        Part part = drawn.part().orElseThrow();
        String shop = counter.desk().keepShop().shop().name();
        Heading heading = JobHeading.of(shop, file.job(), drawn.issue(), part, "http://" + context.host());
        return PartDrawing.toScale(part, heading);
    }
}
