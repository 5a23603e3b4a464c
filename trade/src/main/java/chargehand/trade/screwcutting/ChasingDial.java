package chargehand.trade.screwcutting;

import chargehand.measure.Pitch;
import java.math.BigInteger;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * A dial geared to the leadscrew, by whose marks the nut is closed so that the tool drops into the same groove.
 *
 * <p>The nut closes on any thread of the leadscrew, but the tool meets the work's thread only where the carriage stands a
 * whole number of both leads from where it started. With P the leadscrew's pitch and l the lead cut, that happens every
 * least common multiple of P and l, which is {@code k} threads of the leadscrew. A dial with T teeth comes round once in T
 * threads, so its marks repeat only when T is a multiple of k. All exact fractions.
 *
 * @param leadscrew pitch of the leadscrew
 * @param teeth of the wheel that meshes with the leadscrew
 * @param marks evenly spaced on the dial
 */
public record ChasingDial(Pitch leadscrew, int teeth, int marks) {

    /** When the nut may be closed for a lead. */
    public sealed interface Closing {
        /** Wherever it will close. */
        record Anywhere() implements Closing {}

        /** At these marks, counted from 1, the last being the one that the first cut was started on. */
        record AtMarks(List<Integer> marks) implements Closing {
            public AtMarks {
                marks = List.copyOf(marks);
            }
        }

        /** Not until the thread is done: the lathe is run back with the nut closed. */
        record KeepClosed() implements Closing {}
    }

    /** How many threads of the leadscrew lie between places where the tool meets the groove again. */
    public BigInteger threadsBetween(Pitch lead) {
        // lcm(l, P) / P with l / P = a / b in lowest terms is a.
        return lead.mm().divide(leadscrew.mm()).getNumerator();
    }

    /** When the nut may be closed for a lead. */
    public Closing closing(Pitch lead) {
        BigInteger between = threadsBetween(lead);
        if (between.equals(BigInteger.ONE)) {
            return new Closing.Anywhere();
        }
        if (BigInteger.valueOf(teeth).mod(between).signum() != 0) {
            return new Closing.KeepClosed();
        }
        return new Closing.AtMarks(IntStream.rangeClosed(1, marks)
                .filter(mark -> isMultiple(BigFraction.of(mark).multiply(teeth).divide(marks), between))
                .boxed()
                .toList());
    }

    private static boolean isMultiple(BigFraction threads, BigInteger of) {
        return threads.divide(of).getDenominator().equals(BigInteger.ONE);
    }
}
