package chargehand.measure;

import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/** Times that work takes: {@code 90 s}, {@code 25 min}, {@code 1 h 50}, {@code 1:50} (hours and minutes). */
final class WorkTimeNotation implements Notation<WorkTime> {
    private static final BigFraction SIXTY = BigFraction.of(60);
    private static final Ladder.Rung HOUR = new Ladder.Rung(3600, "h", "hr", "hrs", "hour", "hours");
    private static final Ladder.Rung MINUTE = new Ladder.Rung(60, "min", "mins", "m", "minute", "minutes");
    private static final Ladder.Rung SECOND = new Ladder.Rung(1, "s", "sec", "secs", "second", "seconds");

    private final Ladder ladder = new Ladder(this, HOUR, MINUTE, SECOND);

    @Override
    public String name() {
        return "time";
    }

    @Override
    public String examples() {
        return "90 s, 25 min, 1 h 50 or 1:50";
    }

    @Override
    public WorkTime read(String text, LengthUnit bareUnit) {
        Tokens tokens = Tokens.of(text, Plainly.a(name()));
        Numeral first = Numeral.take(tokens).orElseThrow(() -> Plainly.isNot(tokens, this));
        boolean clock = tokens.take(':');
        BigFraction seconds = clock ? clock(first, tokens) : ladder.climb(first, Optional.empty(), tokens);
        Plainly.end(tokens, this);
        return inBounds(seconds, tokens);
    }

    private BigFraction clock(Numeral hours, Tokens tokens) {
        BigFraction minutes = belowSixty(tokens);
        BigFraction seconds = tokens.take(':') ? belowSixty(tokens) : BigFraction.ZERO;
        if (!hours.isWhole()) {
            throw Plainly.isNot(tokens, this);
        }
        return hours.value().multiply(SIXTY).add(minutes).multiply(SIXTY).add(seconds);
    }

    private BigFraction belowSixty(Tokens tokens) {
        return Numeral.take(tokens)
                .filter(Numeral::isWhole)
                .map(Numeral::value)
                .filter(value -> value.compareTo(SIXTY) < 0)
                .orElseThrow(() -> Plainly.isNot(tokens, this));
    }

    private WorkTime inBounds(BigFraction seconds, Tokens tokens) {
        try {
            return WorkTime.seconds(seconds.doubleValue());
        } catch (IllegalArgumentException tooLong) {
            throw Plainly.tooLarge(tokens, this, tooLong);
        }
    }

    @Override
    public String text(WorkTime time, LengthUnit first) {
        return WorkTimeText.of(time);
    }
}
