package chargehand.book.job;

import java.util.EnumSet;
import java.util.Set;

/**
 * Which jobs to list.
 *
 * @param text words that all must begin a word of the job, in any order: number, asset, what is wanted, asker, part; blank
 *     for all jobs
 * @param stages the stages to list
 * @param order which first
 * @param page which page, from 1
 * @param size how many to a page, 1 to 500
 */
public record JobQuery(String text, Set<Stage> stages, Order order, int page, int size) {
    /** Jobs to a page where nothing else is asked. */
    public static final int USUAL_SIZE = 50;

    private static final int MOST_SIZE = 500;
    private static final int MOST_PAGE = 1_000_000;

    /** Which jobs come first. */
    public enum Order {
        /** The newest number first. */
        NEWEST,
        /** The earliest day wanted by first, jobs without one last, then the oldest number. */
        WANTED
    }

    public JobQuery {
        stages = Set.copyOf(stages);
        if (page < 1 || page > MOST_PAGE || size < 1 || size > MOST_SIZE) {
            throw new IllegalArgumentException("no page " + page + " of " + size + " jobs");
        }
    }

    /** Every job, newest first. */
    public static JobQuery all() {
        return new JobQuery("", EnumSet.allOf(Stage.class), Order.NEWEST, 1, USUAL_SIZE);
    }

    /** Every job in which the words occur, newest first. */
    public static JobQuery words(String text) {
        return new JobQuery(text, EnumSet.allOf(Stage.class), Order.NEWEST, 1, USUAL_SIZE);
    }

    public JobQuery in(Set<Stage> wanted) {
        return new JobQuery(text, wanted, order, page, size);
    }

    public JobQuery by(Order wanted) {
        return new JobQuery(text, stages, wanted, page, size);
    }

    public JobQuery page(int wanted) {
        return new JobQuery(text, stages, order, wanted, size);
    }

    public JobQuery size(int wanted) {
        return new JobQuery(text, stages, order, page, wanted);
    }

    /** How many lines lie before this page. */
    public int before() {
        return (page - 1) * size;
    }
}
