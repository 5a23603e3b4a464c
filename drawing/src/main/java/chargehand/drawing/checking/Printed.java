package chargehand.drawing.checking;

import chargehand.measure.Length;
import chargehand.measure.LengthReader;
import chargehand.measure.LengthUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What stands at one size, taken apart as a reader would.
 *
 * @param text all of it
 * @param times how often it holds: 2 for {@code 2× }
 * @param bracketed whether it is for information only
 * @param lengths the lengths in it, limits apart, in order
 * @param diameters those of them that have the diameter sign before them
 * @param limits the two limits or deviations after the first of them
 */
record Printed(
        String text,
        int times,
        boolean bracketed,
        List<Length> lengths,
        List<Length> diameters,
        Optional<Pair> limits) {
    private static final String MINUS = "\u2212";
    private static final String NUMBER = "(?:\\d+ )?\\d+/\\d+|\\d*\\.?\\d+";
    private static final Pattern TIMES = Pattern.compile("^(\\d+)× ");
    private static final Pattern LIMITS =
            Pattern.compile(" ([+\u2212]?\\d*\\.?\\d+)/([+\u2212]?\\d*\\.?\\d+)(?=$|[ ,])");
    private static final Pattern ANGLE = Pattern.compile("\\d+(?:\\.\\d+)?°(?: ?\\d+['′])?(?: ?\\d+[\"″])?");
    private static final Pattern EVEN = Pattern.compile("±(" + NUMBER + ")");
    private static final Pattern CODE = Pattern.compile(" [A-Za-z]{1,2}\\d{1,2}(?=$|[ ,])");
    private static final Pattern LENGTH = Pattern.compile("(" + NUMBER + ")( mm| in)?");
    private static final Pattern AFTER_SIGN = Pattern.compile("(?<=Ø)" + LENGTH.pattern());

    /** Two limits or deviations, as printed. */
    record Pair(String upper, String lower) {}

    /** Reads what stands at a size. */
    static Printed read(String text, LengthUnit unit, PartSizes sizes) {
        String rest = text;
        Matcher times = TIMES.matcher(rest);
        int count = 1;
        if (times.find()) {
            count = Integer.parseInt(times.group(1));
            rest = rest.substring(times.end());
        }
        for (String known : known(sizes)) {
            rest = rest.replace(known, " ");
        }
        Optional<Pair> limits = limits(rest);
        rest = LIMITS.matcher(rest).replaceAll(both -> isFraction(both) ? "$0" : " ");
        rest = EVEN.matcher(rest).replaceAll(" ");
        rest = CODE.matcher(rest).replaceAll(" ");
        return new Printed(
                text,
                count,
                text.startsWith("("),
                lengths(LENGTH, rest, unit),
                lengths(AFTER_SIGN, rest, unit),
                limits);
    }

    /** What is printed as a whole: threads, angles, tapers, drills by number or letter. */
    private static List<String> known(PartSizes sizes) {
        List<String> known = new ArrayList<>(sizes.threads());
        known.addAll(sizes.angles());
        sizes.tapers().stream().filter(taper -> !taper.isBlank()).forEach(known::add);
        sizes.written().stream()
                .map(one -> one.text())
                .filter(text -> text.startsWith("#") || Character.isLetter(text.charAt(0)))
                .forEach(known::add);
        return known;
    }

    private static Optional<Pair> limits(String text) {
        Optional<Pair> stacked = LIMITS.matcher(text)
                .results()
                .filter(both -> !isFraction(both))
                .map(both -> new Pair(both.group(1), both.group(2)))
                .findFirst();
        return stacked.or(() -> EVEN.matcher(text)
                .results()
                .map(even -> new Pair("+" + even.group(1), MINUS + even.group(1)))
                .findFirst());
    }

    /** Whether two figures with a stroke between are a fraction: no sign and no point in either. */
    private static boolean isFraction(MatchResult both) {
        return both.group().strip().matches("\\d+/\\d+");
    }

    /** The angles that are none of the part's. */
    List<String> angles(PartSizes sizes) {
        return ANGLE.matcher(text)
                .results()
                .map(MatchResult::group)
                .filter(angle -> sizes.angles().stream().noneMatch(own -> own.equals(angle)))
                .filter(angle -> sizes.tapers().stream().noneMatch(own -> own.contains(angle)))
                .toList();
    }

    private static List<Length> lengths(Pattern pattern, String text, LengthUnit unit) {
        return pattern.matcher(text)
                .results()
                .map(MatchResult::group)
                .map(number -> LengthReader.read(number, unit).length())
                .toList();
    }
}
