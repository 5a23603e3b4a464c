package chargehand.part.yaml;

import chargehand.measure.Unreadable;
import chargehand.part.Drafting;
import chargehand.part.DrawingIssue;
import chargehand.part.Projection;
import chargehand.part.yaml.tree.Form;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads and writes how a part's drawing is made out. */
final class DraftingForm {
    private static final String FIRST_LETTER = "A";
    private static final Pattern LETTER = Pattern.compile("[A-Z]{1,2}");
    private static final Pattern DATE = Pattern.compile("([0-9]{4})-([0-9]{2})-([0-9]{2})");
    private static final int LONGEST_BY = 10;

    private DraftingForm() {}

    static Drafting read(Form form) {
        Projection projection =
                form.find("projection", DraftingForm::projection).orElse(Drafting.USUAL.projection());
        List<DrawingIssue> issues = form.rows("issues", (issue, number) -> issue(issue));
        return new Drafting(projection, issues, LengthWishForm.read(form));
    }

    /** The letter of the last issue in the table; that of a first issue where there is no table. */
    static String lastLetter(Drafting drafting) {
        return drafting.issues().isEmpty()
                ? FIRST_LETTER
                : drafting.issues().getLast().letter();
    }

    private static Projection projection(String text) {
        return Arrays.stream(Projection.values())
                .filter(known -> known.text().equals(text.toLowerCase(Locale.ROOT)))
                .findFirst()
                .orElseThrow(() -> new Unreadable("Views stand in first angle or third angle."));
    }

    private static Optional<DrawingIssue> issue(Form form) {
        String letter = form.value("letter", DraftingForm::letter, FIRST_LETTER);
        String what = form.text("what");
        LocalDate date = form.value("date", DraftingForm::date, LocalDate.EPOCH);
        String by = form.value("by", DraftingForm::initials, "");
        Optional<String> at = form.findText("at");
        return form.build(() -> new DrawingIssue(letter, what, date, by, at));
    }

    private static String letter(String text) {
        String letter = text.toUpperCase(Locale.ROOT);
        if (!LETTER.matcher(letter).matches()) {
            throw new Unreadable("An issue has a letter, or two after Z: write B.");
        }
        return letter;
    }

    private static LocalDate date(String text) {
        Matcher date = DATE.matcher(text);
        if (!date.matches()) {
            throw new Unreadable("A date is written year first: 2026-03-14.");
        }
        return day(date)
                .orElseThrow(() ->
                        new Unreadable("There is no day " + text + ". A date is written year first: 2026-03-14."));
    }

    private static Optional<LocalDate> day(Matcher date) {
        try {
            return Optional.of(LocalDate.of(number(date, 1), number(date, 2), number(date, 3)));
        } catch (DateTimeException notInTheCalendar) {
            return Optional.empty();
        }
    }

    private static int number(Matcher date, int group) {
        return Integer.parseInt(date.group(group));
    }

    private static String initials(String text) {
        if (text.length() > LONGEST_BY) {
            throw new Unreadable("Initials are short, at most " + LONGEST_BY + " letters: write J.V.");
        }
        return text;
    }

    static void write(Drafting drafting, YamlLines lines) {
        if (drafting.projection() != Drafting.USUAL.projection()) {
            lines.words("projection", drafting.projection().text());
        }
        if (!drafting.issues().isEmpty()) {
            lines.begin("issues");
            drafting.issues().forEach(issue -> write(issue, lines));
            lines.end();
        }
        LengthWishForm.write(drafting.lengths(), lines);
    }

    private static void write(DrawingIssue issue, YamlLines lines) {
        lines.entry().words("letter", issue.letter());
        lines.words("what", issue.what()).words("date", issue.date().toString()).words("by", issue.by());
        issue.at().ifPresent(at -> lines.words("at", at));
        lines.endEntry();
    }
}
