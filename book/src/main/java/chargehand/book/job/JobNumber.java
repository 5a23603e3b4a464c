package chargehand.book.job;

import java.util.Optional;

/**
 * The number a job is known by in the shop, given by the book and never given twice.
 *
 * @param number from 1 to 9 999 999
 */
public record JobNumber(int number) implements Comparable<JobNumber> {
    private static final int MOST = 9_999_999;
    private static final int MOST_DIGITS = 7;

    public JobNumber {
        if (number < 1 || number > MOST) {
            throw new IllegalArgumentException("a job number lies between 1 and " + MOST + ", not " + number);
        }
    }

    /** The number as a person writes it, with or without a sign in front such as {@code #214}; empty for anything else. */
    public static Optional<JobNumber> parse(String text) {
        String digits = text.strip().replaceFirst("^#", "");
        boolean number = digits.matches("[0-9]{1," + MOST_DIGITS + "}") && Integer.parseInt(digits) > 0;
        return number ? Optional.of(new JobNumber(Integer.parseInt(digits))) : Optional.empty();
    }

    public JobNumber next() {
        return new JobNumber(number + 1);
    }

    @Override
    public int compareTo(JobNumber other) {
        return Integer.compare(number, other.number);
    }

    @Override
    public String toString() {
        return Integer.toString(number);
    }
}
