package chargehand.web.job;

import chargehand.book.job.Job;

/** What a job is called in a line of text. */
final class Titles {
    private static final int LONG_ENOUGH = 72;

    private Titles() {}

    /** The part's title where there is one, else the beginning of what is wanted. */
    static String of(Job job, String part) {
        if (!part.isBlank()) {
            return part;
        }
        String wants = job.request().wants().strip().lines().findFirst().orElse("");
        int stop = wants.indexOf(". ");
        String first = stop > 0 ? wants.substring(0, stop) : wants;
        if (first.length() <= LONG_ENOUGH) {
            return first;
        }
        int space = first.lastIndexOf(' ', LONG_ENOUGH);
        return first.substring(0, space > 0 ? space : LONG_ENOUGH) + " …";
    }

    /** The count, where it says something. */
    static String off(Job job) {
        int count = job.request().count();
        return count + "\u00a0off";
    }
}
