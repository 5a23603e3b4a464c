package chargehand.measure;

/** Lengths with the words they were written in. */
final class LengthNotation implements Notation<Written> {
    @Override
    public String name() {
        return "length";
    }

    @Override
    public String examples() {
        return LengthReader.EXAMPLES;
    }

    @Override
    public Written read(String text, LengthUnit bareUnit) {
        return LengthReader.read(text, bareUnit);
    }

    @Override
    public String text(Written written, LengthUnit first) {
        return LengthText.both(written.length(), first);
    }
}
