package chargehand.measure;

import java.math.BigInteger;

/** Whole numbers: {@code 24}, {@code 24 off}. */
final class CountNotation implements Notation<Integer> {
    private final int least;
    private final int most;

    CountNotation(int least, int most) {
        this.least = least;
        this.most = most;
    }

    @Override
    public String name() {
        return "whole number";
    }

    @Override
    public String examples() {
        return "a whole number from " + least + " to " + most;
    }

    @Override
    public Integer read(String text, LengthUnit bareUnit) {
        Tokens tokens = Tokens.of(text, Plainly.a(name()));
        boolean minus = SignedNumber.takeMinus(tokens);
        Numeral numeral = Numeral.take(tokens).orElseThrow(() -> Plainly.isNot(tokens, this));
        tokens.take("off");
        Plainly.end(tokens, this);
        BigInteger size = numeral.value().getNumerator();
        if (!numeral.value().getDenominator().equals(BigInteger.ONE)) {
            throw Plainly.isNot(tokens, this);
        }
        return inBounds(minus ? size.negate() : size, tokens);
    }

    private int inBounds(BigInteger count, Tokens tokens) {
        if (count.compareTo(BigInteger.valueOf(least)) < 0 || count.compareTo(BigInteger.valueOf(most)) > 0) {
            throw new Unreadable(tokens.quoted() + " will not do here: write " + examples() + ".");
        }
        return count.intValueExact();
    }

    @Override
    public String text(Integer count, LengthUnit first) {
        return count.toString();
    }
}
