package chargehand.book.shop;

import chargehand.book.Entered;
import chargehand.book.Objection;
import chargehand.book.Wording;
import chargehand.book.job.JobNumber;
import chargehand.measure.LengthUnit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Map;
import java.util.Optional;

/**
 * What somebody wrote of the shop, field by field.
 *
 * @param fields what is written in each of {@link #NAME}, {@link #UNIT} and {@link #FIRST_JOB}; what is left out stays as it
 *     is, other fields are ignored
 */
public record ShopAsWritten(Map<String, String> fields) {
    public static final String NAME = "name";

    /** The unit of a bare number: {@code mm} or {@code in}. */
    public static final String UNIT = "unit";

    public static final String FIRST_JOB = "firstJob";

    private static final Wording NAME_WORDING = new Wording(NAME, "The name of the shop", 80);
    private static final int MOST_FIRST_JOB = 1_000_000;

    public ShopAsWritten {
        fields = Map.copyOf(fields);
    }

    /** The shop that this means, or every objection to it. */
    public Entered<Shop> read(Shop now) {
        String name = written(NAME).orElse(now.name());
        Optional<LengthUnit> unit = written(UNIT).map(ShopAsWritten::unit).orElse(Optional.of(now.unit()));
        Optional<JobNumber> first = written(FIRST_JOB)
                .map(JobNumber::parse)
                .orElse(Optional.of(now.firstJob()))
                .filter(number -> number.number() <= MOST_FIRST_JOB);
        var objections = new ArrayList<Objection>();
        NAME_WORDING.objectionTo(name).ifPresent(objections::add);
        if (unit.isEmpty()) {
            objections.add(new Objection(UNIT, "The shop's unit is mm or in, not '" + fields.get(UNIT) + "'."));
        }
        if (first.isEmpty()) {
            objections.add(new Objection(
                    FIRST_JOB,
                    "The first job's number is a whole number from 1 to " + MOST_FIRST_JOB + ", not '"
                            + fields.get(FIRST_JOB) + "'."));
        }
        return objections.isEmpty()
                ? Entered.done(new Shop(name, unit.orElseThrow(), first.orElseThrow()))
                : Entered.refused(objections);
    }

    private Optional<String> written(String field) {
        return Optional.ofNullable(fields.get(field)).map(String::strip);
    }

    private static Optional<LengthUnit> unit(String symbol) {
        return Arrays.stream(LengthUnit.values())
                .filter(unit -> unit.symbol().equals(symbol))
                .findFirst();
    }
}
