package chargehand.measure;

import java.util.Optional;
import java.util.function.Function;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Ratios, in kinds that differ in what a bare number means and in how they are shown. All of them read {@code 75 %},
 * {@code 3/4}, {@code 2:1}, {@code 1 in 48} and {@code 3/4 in per ft}.
 */
final class RatioNotation implements Notation<Ratio> {
    /** A plain number: {@code 0.15}; shown to six decimals. */
    static final Notation<Ratio> NUMBER = new RatioNotation(
            "number", "0.75, 3/4, 75 % or 2:1", Optional.of(BigFraction.ONE), RatioNotation::numberText);

    /** A percentage, whose bare number is so many in a hundred: {@code 75}; shown to three decimals. */
    static final Notation<Ratio> PERCENTAGE = new RatioNotation(
            "percentage", "75 or 75 %", Optional.of(BigFraction.of(1, 100)), RatioNotation::percentText);

    /** A taper on diameter, whose bare number, save a vulgar fraction, is refused; shown as 1 in so many. */
    static final Notation<Ratio> TAPER =
            new RatioNotation("taper", "1 in 48, 1:48 or 3/4 in per ft", Optional.empty(), RatioNotation::taperText);

    private static final BigFraction INCHES_PER_FOOT = BigFraction.of(12);
    private static final int NUMBER_DECIMALS = 6;
    private static final int PERCENT_DECIMALS = 3;
    private static final int TAPER_DECIMALS = 3;

    private final String name;
    private final String examples;
    private final Optional<BigFraction> ofBare;
    private final Function<Ratio, String> shown;

    private RatioNotation(String name, String examples, Optional<BigFraction> ofBare, Function<Ratio, String> shown) {
        this.name = name;
        this.examples = examples;
        this.ofBare = ofBare;
        this.shown = shown;
    }

    @Override
    public String name() {
        return name;
    }

    @Override
    public String examples() {
        return examples;
    }

    @Override
    public Ratio read(String text, LengthUnit bareUnit) {
        Tokens tokens = Tokens.of(text, Plainly.a(name));
        boolean minus = SignedNumber.takeMinus(tokens);
        Numeral first = Numeral.take(tokens).orElseThrow(() -> Plainly.isNot(tokens, this));
        BigFraction size = size(first, tokens);
        Plainly.end(tokens, this);
        return new Ratio(minus ? size.negate() : size);
    }

    private BigFraction size(Numeral first, Tokens tokens) {
        if (tokens.take('%') || tokens.take("percent")) {
            return first.value().divide(BigFraction.of(100));
        }
        if (takePerFoot(tokens)) {
            return first.value().divide(INCHES_PER_FOOT);
        }
        if (takeIn(tokens)) {
            return first.value().divide(second(tokens));
        }
        return bare(first, tokens);
    }

    /** Reads what stands between the two numbers of a ratio: {@code 1 in 48}, {@code 1-in-48}, {@code 1:48}, {@code 2 to 1}. */
    private static boolean takeIn(Tokens tokens) {
        boolean dashed = tokens.peek().filter(token -> token.isSign('-')).isPresent()
                && tokens.ahead(1).filter(token -> token.isWord("in")).isPresent()
                && tokens.ahead(2).filter(token -> token.isSign('-')).isPresent();
        tokens.skip(dashed ? 1 : 0);
        boolean found = tokens.take(':') || tokens.take("in") || tokens.take("to");
        tokens.skip(dashed ? 1 : 0);
        return found;
    }

    private BigFraction second(Tokens tokens) {
        return Numeral.take(tokens)
                .filter(numeral -> !numeral.isZero())
                .orElseThrow(() -> Plainly.isNot(tokens, this))
                .value();
    }

    private BigFraction bare(Numeral first, Tokens tokens) {
        Optional<BigFraction> factor = first.isVulgar() ? Optional.of(BigFraction.ONE) : ofBare;
        return first.value().multiply(factor.orElseThrow(() -> Plainly.isNot(tokens, this)));
    }

    /** Reads {@code in per ft} or {@code per foot}, the rise of an American taper. */
    private static boolean takePerFoot(Tokens tokens) {
        int unit = tokens.peek()
                        .flatMap(LengthMark::find)
                        .filter(LengthMark.INCH::equals)
                        .isPresent()
                ? 1
                : 0;
        boolean per = tokens.ahead(unit)
                .filter(token -> token.isSign('/') || token.isWord("per"))
                .isPresent();
        boolean foot = tokens.ahead(unit + 1)
                .flatMap(LengthMark::find)
                .filter(LengthMark.FOOT::equals)
                .isPresent();
        tokens.skip(per && foot ? unit + 2 : 0);
        return per && foot;
    }

    @Override
    public String text(Ratio ratio, LengthUnit first) {
        return shown.apply(ratio);
    }

    private static String numberText(Ratio ratio) {
        return Figures.atMost(NUMBER_DECIMALS, ratio.value());
    }

    private static String percentText(Ratio ratio) {
        return Figures.atMost(PERCENT_DECIMALS, 100 * ratio.value()) + " %";
    }

    private static String taperText(Ratio ratio) {
        return ratio.exact().signum() == 0 ? "no taper" : "1 in " + Figures.atMost(TAPER_DECIMALS, 1 / ratio.value());
    }
}
