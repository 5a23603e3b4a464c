package chargehand.web.method;

import chargehand.measure.Length;
import chargehand.measure.LengthText;
import chargehand.measure.LengthUnit;
import chargehand.measure.WorkTimeText;
import chargehand.method.plan.Operation;
import chargehand.method.plan.Reading;
import chargehand.method.plan.Settings;
import chargehand.method.start.StopFirst;
import chargehand.trade.sum.Step;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/**
 * An operation as it is shown: every figure in the unit of the dial it is set on.
 *
 * @param tool what cuts
 * @param set what else is set, such as wheels or the dividing head; one line each
 * @param speed in turns a minute, empty where nothing turns
 * @param feed on its dial, empty where it is fed by hand
 * @param feedUnit after the feed
 * @param passes the cuts in order
 * @param hold whether someone else must pass it before the work goes on
 * @param stops where to stop and look before what cannot be taken back
 */
public record OperationFace(
        int number,
        String say,
        String tool,
        List<String> set,
        String speed,
        String feed,
        String feedUnit,
        List<PassFace> passes,
        List<ReadingFace> readings,
        boolean hold,
        List<String> stops,
        List<String> cautions,
        String time,
        List<Step> working) {

    /** One pass: what the dial reads and what it leaves. */
    public record PassFace(int number, String dial, String leaves) {}

    /** A size to measure, in the unit of the machine and in the other. */
    public record ReadingFace(int number, String what, String limits, String other, String gauge) {}

    /** The face of an operation. */
    public static OperationFace of(Operation operation) {
        Settings settings = operation.settings();
        LengthUnit unit = settings.unit();
        return new OperationFace(
                operation.number(),
                operation.say(),
                settings.tool(),
                set(settings),
                settings.speed()
                        .map(speed -> String.format(Locale.ROOT, "%.0f", speed.rpm()))
                        .orElse(""),
                settings.feed()
                        .map(feed -> LengthText.figures(length(feed), unit))
                        .orElse(""),
                settings.feed().map(feed -> unit.symbol() + per(feed)).orElse(""),
                settings.passes().stream().map(pass -> pass(pass, unit)).toList(),
                readings(operation.readings(), unit),
                operation.hold(),
                StopFirst.of(operation),
                operation.cautions(),
                WorkTimeText.of(operation.time()),
                operation.working());
    }

    private static Length length(Settings.Feed feed) {
        return switch (feed) {
            case Settings.Feed.PerTurn perTurn -> perTurn.length();
            case Settings.Feed.PerMinute perMinute -> perMinute.length();
        };
    }

    private static String per(Settings.Feed feed) {
        return switch (feed) {
            case Settings.Feed.PerTurn perTurn -> "/turn";
            case Settings.Feed.PerMinute perMinute -> "/min";
        };
    }

    private static PassFace pass(Settings.Pass pass, LengthUnit unit) {
        return new PassFace(
                pass.number(), LengthText.figures(pass.dial(), unit), LengthText.figures(pass.leaves(), unit));
    }

    private static List<ReadingFace> readings(List<Reading> readings, LengthUnit unit) {
        var faces = new ArrayList<ReadingFace>();
        for (Reading reading : readings) {
            faces.add(new ReadingFace(
                    faces.size() + 1,
                    reading.what(),
                    limits(reading, unit),
                    limits(reading, unit.other()),
                    reading.gauge()));
        }
        return faces;
    }

    private static String limits(Reading reading, LengthUnit unit) {
        return LengthText.figures(reading.limits().least(), unit) + " to "
                + LengthText.in(reading.limits().most(), unit);
    }

    private static List<String> set(Settings settings) {
        var lines = new ArrayList<String>();
        settings.gearing().map(OperationFace::wheels).ifPresent(lines::add);
        settings.indexing().map(OperationFace::crank).ifPresent(lines::add);
        settings.topSlide()
                .map(angle -> String.format(Locale.ROOT, "Top slide at %.2f° from the axis", angle.degrees()))
                .ifPresent(lines::add);
        if (!settings.coolant().isBlank()) {
            lines.add(settings.coolant());
        }
        return lines;
    }

    private static String wheels(Settings.Gearing train) {
        String box = train.gearbox().isBlank() ? "" : ", gearbox " + train.gearbox();
        String marks = train.dialMarks().isBlank() ? "" : "; " + train.dialMarks();
        return "Wheels " + teeth(train.drivers()) + " driving " + teeth(train.driven()) + box + marks;
    }

    private static String teeth(List<Integer> wheels) {
        return wheels.stream().map(String::valueOf).collect(Collectors.joining(" and "));
    }

    private static String crank(Settings.Indexing index) {
        String turns = index.turns() + (index.turns() == 1 ? " turn" : " turns");
        String holes =
                index.holes() == 0 ? "" : " and " + index.holes() + " holes on the " + index.circle() + " circle";
        String geared =
                index.geared().map(gears -> "; plate geared: " + gears.says()).orElse("");
        return "Crank " + turns + holes + " for each of " + index.divisions() + geared;
    }
}
