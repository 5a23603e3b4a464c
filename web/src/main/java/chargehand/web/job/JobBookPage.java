package chargehand.web.job;

import chargehand.book.job.JobQuery;
import chargehand.book.job.JobQuery.Order;
import chargehand.book.job.Stage;
import chargehand.web.serving.Counter;
import chargehand.web.serving.Frame;
import chargehand.web.serving.Frame.Section;
import chargehand.web.serving.Pages;
import chargehand.web.serving.Views;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** The job book: what is open, stage by stage; or what was looked for, page by page. */
public final class JobBookPage implements Pages {
    private static final String ALL = "all";
    private static final int ON_BOARD = 12;
    private static final int ON_PAGE = 25;
    private static final int LONGEST_WORDS = 200;
    private static final int MOST_PAGES = 100_000;

    /** What wants a hand first stands first. */
    private static final List<Stage> BOARD = List.of(
            Stage.IN_HAND,
            Stage.TO_BE_PROVED,
            Stage.READY,
            Stage.BEING_DRAWN,
            Stage.ASKED_FOR,
            Stage.STOPPED,
            Stage.PASSED);

    private final Counter counter;
    private final Views views;

    public JobBookPage(Counter counter, Views views) {
        this.counter = counter;
        this.views = views;
    }

    /**
     * A stage to look at by itself.
     *
     * @param here whether it is what is shown now
     */
    public record Sieve(String label, int count, String address, boolean here) {}

    /**
     * Some jobs under a heading.
     *
     * @param more where the rest is, empty when these are all
     */
    public record Shelf(String heading, int total, List<JobRow> rows, String more) {}

    /**
     * The page.
     *
     * @param words what was looked for
     * @param place which page of how many, empty when there is only one
     */
    public record Board(
            Frame frame, String words, String stage, List<Sieve> sieves, List<Shelf> shelves, Place place) {}

    /**
     * Where in a long list.
     *
     * @param before the page before, empty at the first
     * @param after the page after, empty at the last
     */
    public record Place(String say, String before, String after) {
        static final Place ONLY = new Place("", "", "");
    }

    @Override
    public void add(RoutesConfig routes) {
        routes.get("/", this::show);
    }

    private void show(Context context) {
        String words = shortened(asked(context, "q").strip());
        String stage = asked(context, "stage");
        views.show(context, "jobs", words.isEmpty() && stage.isEmpty() ? board() : list(words, stage, page(context)));
    }

    private static String asked(Context context, String name) {
        String given = context.queryParam(name);
        return given == null ? "" : given;
    }

    private static String shortened(String words) {
        return words.length() <= LONGEST_WORDS ? words : words.substring(0, LONGEST_WORDS);
    }

    private static int page(Context context) {
        String page = asked(context, "page");
        return page.matches("[1-9][0-9]{0,4}") ? Math.min(Integer.parseInt(page), MOST_PAGES) : 1;
    }

    private Frame frame() {
        return counter.frame("Job book", Section.JOBS);
    }

    private Board board() {
        var shelves = new ArrayList<Shelf>();
        for (Stage stage : BOARD) {
            var found = counter.desk()
                    .jobs()
                    .list(JobQuery.all().in(EnumSet.of(stage)).by(Order.WANTED).size(ON_BOARD));
            if (found.total() > 0) {
                String more = found.total() > ON_BOARD ? address("", stage.word(), 1) : "";
                shelves.add(new Shelf(capital(stage.word()), found.total(), rows(found), more));
            }
        }
        return new Board(frame(), "", "", sieves(""), shelves, Place.ONLY);
    }

    private Board list(String words, String stage, int page) {
        JobQuery query = JobQuery.words(words).in(stages(stage)).page(page).size(ON_PAGE);
        var found = counter.desk().jobs().list(query);
        String heading = found.total() == 1 ? "1 job" : found.total() + " jobs";
        return new Board(
                frame(),
                words,
                stage,
                sieves(stage),
                List.of(new Shelf(heading, found.total(), rows(found), "")),
                place(words, stage, found));
    }

    private static List<JobRow> rows(chargehand.book.job.JobPage page) {
        return page.lines().stream().map(JobRow::of).toList();
    }

    private static Set<Stage> stages(String stage) {
        return Stage.parse(stage).<Set<Stage>>map(EnumSet::of).orElse(EnumSet.allOf(Stage.class));
    }

    private static Place place(String words, String stage, chargehand.book.job.JobPage found) {
        int page = found.query().page();
        int pages = found.pages();
        return pages == 1 && page == 1
                ? Place.ONLY
                : new Place(
                        "Page " + page + " of " + pages,
                        page > 1 ? address(words, stage, Math.min(page - 1, pages)) : "",
                        page < pages ? address(words, stage, page + 1) : "");
    }

    private List<Sieve> sieves(String here) {
        Map<Stage, Integer> counts = counter.desk().jobs().counts();
        var sieves = new ArrayList<Sieve>();
        int open = counts.entrySet().stream()
                .filter(entry -> entry.getKey().isOpen())
                .mapToInt(Map.Entry::getValue)
                .sum();
        sieves.add(new Sieve("Open", open, "/", here.isEmpty()));
        Arrays.stream(Stage.values())
                .filter(counts::containsKey)
                .map(stage -> sieve(stage, counts, Stage.parse(here)))
                .forEach(sieves::add);
        int all = counts.values().stream().mapToInt(Integer::intValue).sum();
        sieves.add(new Sieve("All", all, address("", ALL, 1), here.equals(ALL)));
        return sieves;
    }

    private static Sieve sieve(Stage stage, Map<Stage, Integer> counts, Optional<Stage> here) {
        return new Sieve(
                capital(stage.word()),
                counts.getOrDefault(stage, 0),
                address("", stage.word(), 1),
                here.filter(stage::equals).isPresent());
    }

    private static String address(String words, String stage, int page) {
        return "/?q=" + encoded(words) + "&stage=" + encoded(stage) + (page == 1 ? "" : "&page=" + page);
    }

    private static String encoded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }

    private static String capital(String word) {
        return word.substring(0, 1).toUpperCase(Locale.ROOT) + word.substring(1);
    }
}
