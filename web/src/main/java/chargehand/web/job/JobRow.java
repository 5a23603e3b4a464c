package chargehand.web.job;

import chargehand.book.job.JobLine;
import chargehand.book.job.Request;

/**
 * A job as one line of the book.
 *
 * @param about for what and for whom
 * @param standing its stage, and what it waits for
 * @param wanted by when, empty where no day was named
 * @param late whether that day has passed while the job is open
 */
public record JobRow(int number, String title, String off, String about, String standing, String wanted, boolean late) {
    static JobRow of(JobLine line) {
        Request request = line.job().request();
        boolean late = line.job().stage().isOpen()
                && request.wantedBy().filter(Days::isPast).isPresent();
        return new JobRow(
                line.job().number().number(),
                Titles.of(line.job(), line.part()),
                Titles.off(line.job()),
                request.asset() + " · " + request.asker(),
                standing(line),
                request.wantedBy().map(Days::ahead).orElse(""),
                late);
    }

    private static String standing(JobLine line) {
        String word = line.job().stage().word();
        return line.job()
                .standing()
                .waitsFor()
                .map(what -> word + ", waits for " + what)
                .orElse(word);
    }
}
