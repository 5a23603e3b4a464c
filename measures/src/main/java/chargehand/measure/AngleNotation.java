package chargehand.measure;

import java.util.Optional;

/** Angles: {@code 5° 30'}, {@code 5.5}, {@code 14 1/2°}, {@code 30'}, {@code 0.1 rad}. A bare number is in degrees. */
final class AngleNotation implements Notation<Angle> {
    private static final int SECONDS_PER_DEGREE = 3600;
    private static final Ladder.Rung DEGREE =
            new Ladder.Rung(SECONDS_PER_DEGREE, "°", "deg", "degs", "degree", "degrees");
    private static final Ladder.Rung MINUTE = new Ladder.Rung(60, "'", "min", "minute", "minutes");
    private static final Ladder.Rung SECOND = new Ladder.Rung(1, "\"", "sec", "second", "seconds");

    private final Ladder ladder = new Ladder(this, DEGREE, MINUTE, SECOND);

    @Override
    public String name() {
        return "angle";
    }

    @Override
    public String examples() {
        return "5.5, 5° 30', 14 1/2° or 0.1 rad";
    }

    @Override
    public Angle read(String text, LengthUnit bareUnit) {
        Tokens tokens = Tokens.of(text, Plainly.a(name()));
        boolean minus = SignedNumber.takeMinus(tokens);
        Numeral first = Numeral.take(tokens).orElseThrow(() -> Plainly.isNot(tokens, this));
        Angle size = size(first, tokens);
        Plainly.end(tokens, this);
        return minus ? size.times(-1) : size;
    }

    private Angle size(Numeral first, Tokens tokens) {
        boolean radians = tokens.take("rad") || tokens.take("radians");
        try {
            return radians
                    ? Angle.radians(first.value().doubleValue())
                    : Angle.degrees(ladder.climb(first, Optional.of(DEGREE), tokens)
                            .divide(SECONDS_PER_DEGREE)
                            .doubleValue());
        } catch (Unreadable unreadable) {
            throw unreadable;
        } catch (IllegalArgumentException tooLarge) {
            throw Plainly.tooLarge(tokens, this, tooLarge);
        }
    }

    @Override
    public String text(Angle angle, LengthUnit first) {
        return AngleText.seconds(angle);
    }
}
