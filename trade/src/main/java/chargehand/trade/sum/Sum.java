package chargehand.trade.sum;

import java.util.List;

/**
 * One workshop calculation, declared once and shown everywhere. An implementation is a public class with a public
 * no-argument constructor, no state, and {@code @AutoService(Sum.class)}: nothing else is needed to add a sum.
 */
public interface Sum {
    /** The name it is asked by, in lower case with hyphens, such as {@code tapping-drill}. */
    String name();

    /** What a person calls it, such as "Tapping drill". */
    String title();

    /** What it answers, in one sentence. */
    String purpose();

    /** What may be asked, in the order of the page. */
    List<Field<?>> fields();

    /** What comes back, in the order of the page. */
    List<Result> results();

    /** Asks that the reference page shows worked, each answered by the build. At least one. */
    List<Example> examples();

    /**
     * Works the sum out, writing each step into {@code working} as it is taken.
     *
     * @throws Refusal when a field, or two together, ask for what the rule cannot give
     */
    Answer work(Asked asked, Working working);
}
