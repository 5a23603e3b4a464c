package chargehand.app;

import chargehand.book.Entered;
import chargehand.book.demo.DemoShop;
import chargehand.book.job.JobNumber;
import chargehand.book.memory.MemoryBook;
import chargehand.book.use.Desk;
import chargehand.cli.AskedWrongly;
import chargehand.cli.Command;
import chargehand.cli.Ended;
import chargehand.cli.Given;
import chargehand.cli.Option;
import chargehand.cli.Terminal;
import chargehand.cli.Usage;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneId;
import java.util.List;
import java.util.stream.Collectors;

/** Makes the demo workshop with its jobs, plans them, and prints or serves them. */
final class DemoCommand implements Command {
    private static final Option ONCE =
            Option.flag("--once", "Write every planned job's papers into a folder, and end.");
    private static final Option OUT = Option.valued("--out", "FOLDER", "Where --once writes; out when left out.");

    private final Terminal terminal;

    DemoCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Usage usage() {
        return new Usage(
                "demo",
                "",
                List.of(
                        "Make the demo workshop, plan its jobs, and serve it.",
                        "",
                        "The harbour workshop of Kelderhaven and everything in it is invented. Nothing is kept: its book lasts as",
                        "long as the program runs."),
                List.of(ONCE, OUT, Serving.PORT));
    }

    @Override
    public int run(Given given) throws IOException {
        given.noWords();
        Clock clock = Clock.system(ZoneId.systemDefault());
        var book = new MemoryBook();
        var planner = new ShopPlanner();
        DemoShop.Filled filled = fill(new DemoShop(book, planner, clock));
        Desk desk = Desk.at(book, planner, clock);
        terminal.out()
                .println(filled.jobs().size() + " jobs in the book, "
                        + filled.ready().size() + " with a proved method.");
        if (given.has(ONCE.name())) {
            print(desk, filled, Path.of(given.find(OUT.name()).orElse("out")));
        } else {
            Serving.serve(desk, Serving.port(given.find(Serving.PORT.name())), terminal);
        }
        return Ended.ANSWERED;
    }

    private void print(Desk desk, DemoShop.Filled filled, Path folder) throws IOException {
        var prints = new DemoPrints(desk, folder);
        for (JobNumber job : filled.jobs()) {
            List<String> files = prints.print(job);
            if (!files.isEmpty()) {
                terminal.out().println("Job " + job.number() + ": " + String.join(", ", files));
            }
        }
        terminal.out().println("They lie in " + folder + ".");
    }

    private static DemoShop.Filled fill(DemoShop shop) throws IOException {
        return switch (shop.fill(DemoFolder.read())) {
            case Entered.Done<DemoShop.Filled> done -> done.value();
            case Entered.Refused<DemoShop.Filled> refused ->
                throw new AskedWrongly(refused.objections().stream()
                        .map(objection -> objection.field() + ": " + objection.say())
                        .collect(Collectors.joining("\n")));
        };
    }
}
