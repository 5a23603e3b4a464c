package chargehand.web.drawing;

import chargehand.book.job.Job;
import chargehand.book.part.PartIssue;
import chargehand.drawing.sheet.Heading;
import chargehand.paper.sheet.ScanCode;
import chargehand.part.Part;
import java.time.ZoneId;
import java.util.Optional;

/** What the book says of a job in the title block of its drawing. */
final class JobHeading {
    /** So wide that a telephone reads the code at arm's length, its clear border included (mm). */
    private static final double CODE = 28;

    private JobHeading() {}

    /**
     * The heading of a job's drawing.
     *
     * @param shop whose drawing it is
     * @param saved who wrote the part's file and when; the part's own table of issues goes before that
     * @param site where the job's page is found
     */
    static Heading of(String shop, Job job, PartIssue saved, Part part, String site) {
        boolean issued = !part.drafting().issues().isEmpty();
        String number = job.number().toString();
        return new Heading(
                shop,
                "Job " + number,
                job.request().asset(),
                "",
                issued ? "" : saved.by().who(),
                issued
                        ? ""
                        : saved.by()
                                .at()
                                .atZone(ZoneId.systemDefault())
                                .toLocalDate()
                                .toString(),
                Optional.of(new ScanCode(site + "/jobs/" + number).picture(CODE)));
    }
}
