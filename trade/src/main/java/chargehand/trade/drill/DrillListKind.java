package chargehand.trade.drill;

import chargehand.measure.Length;
import chargehand.measure.LengthReader;
import chargehand.measure.LengthUnit;
import chargehand.measure.Unreadable;
import chargehand.trade.sum.Kind;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * The drills a shop owns: single drills and runs of them, such as {@code 1 to 13 by 0.5, 1/16 to 1/2 by 1/64, #1 to #60, A to
 * Z, 14.5}. A run without a step takes every listed drill between.
 */
public final class DrillListKind implements Kind<List<Drill>> {
    /** A shop's drills. */
    public static final Kind<List<Drill>> DRILLS = new DrillListKind();

    private static final int MOST = 1000;
    private static final int MOST_NAMED = 12;
    private static final Pattern RUN = Pattern.compile("(?i)(.+?)\\s+to\\s+(.+?)(?:\\s+by\\s+(.+))?");

    private DrillListKind() {}

    @Override
    public String name() {
        return "list of drills";
    }

    @Override
    public List<Drill> read(String written, LengthUnit unit) {
        Set<Drill> drills = new LinkedHashSet<>();
        for (String entry : written.split(written.contains(";") ? ";" : ",", -1)) {
            if (!entry.isBlank()) {
                drills.addAll(entry(entry.strip(), unit));
            }
            if (drills.size() > MOST) {
                throw new Unreadable("this is more than " + MOST + " drills: leave some out.");
            }
        }
        if (drills.isEmpty()) {
            throw new Unreadable("write at least one drill, such as 10.2 mm.");
        }
        return new ArrayList<>(drills);
    }

    private static List<Drill> entry(String entry, LengthUnit unit) {
        Matcher run = RUN.matcher(entry);
        if (!run.matches()) {
            return List.of(Drill.parse(entry, unit));
        }
        Drill one = Drill.parse(run.group(1), unit);
        Drill other = Drill.parse(run.group(2), unit);
        Length least = Length.least(one.diameter(), other.diameter());
        Length most = Length.most(one.diameter(), other.diameter());
        if (run.group(3) != null) {
            return stepped(least, most, LengthReader.read(run.group(3), unit).length());
        }
        return Drills.list(one.series()).stream()
                .filter(drill ->
                        !drill.diameter().isLessThan(least) && !drill.diameter().isMoreThan(most))
                .toList();
    }

    private static List<Drill> stepped(Length least, Length most, Length step) {
        if (!step.isPositive() || most.minus(least).over(step) > MOST) {
            throw new Unreadable(
                    "the step between drills must be more than nothing and give at most " + MOST + " drills.");
        }
        var drills = new ArrayList<Drill>();
        for (Length at = least; !at.isMoreThan(most); at = at.plus(step)) {
            drills.add(ofSize(at, step));
        }
        return drills;
    }

    /** A size in a run of even millimetre steps is a metric drill; otherwise it is named in 64ths where it is one. */
    private static Drill ofSize(Length at, Length step) {
        boolean metric = step.nanometres() % (Length.NM_PER_MM / 100) == 0;
        return metric ? Drills.metric(at) : Drills.fraction(at);
    }

    @Override
    public String echo(List<Drill> drills) {
        String named = drills.stream().limit(MOST_NAMED).map(Drill::designation).collect(Collectors.joining(", "));
        return drills.size() <= MOST_NAMED ? named : named + " and " + (drills.size() - MOST_NAMED) + " more";
    }
}
