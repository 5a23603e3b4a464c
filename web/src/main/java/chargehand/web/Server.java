package chargehand.web;

import chargehand.web.drawing.DrawingFiles;
import chargehand.web.drawing.DrawingPage;
import chargehand.web.drawing.LengthsPage;
import chargehand.web.job.DoorPage;
import chargehand.web.job.JobBookPage;
import chargehand.web.job.JobPage;
import chargehand.web.job.ProvingPage;
import chargehand.web.job.RequestPages;
import chargehand.web.kit.KitPage;
import chargehand.web.machine.MachinePage;
import chargehand.web.method.MethodPage;
import chargehand.web.method.Replays;
import chargehand.web.serving.Counter;
import chargehand.web.serving.FaultPages;
import chargehand.web.serving.Guard;
import chargehand.web.serving.Looks;
import chargehand.web.serving.Pages;
import chargehand.web.serving.Sketches;
import chargehand.web.serving.Views;
import chargehand.web.sum.SumPages;
import chargehand.web.sum.SumResource;
import io.javalin.Javalin;
import io.javalin.config.JavalinConfig;
import java.net.URI;
import java.util.List;

/** Serves the pages, to this machine only until people sign in. */
public final class Server implements AutoCloseable {
    private static final String THIS_MACHINE = "127.0.0.1";

    /** The largest form or JSON body: a drawing of the greatest length, every character of it written as three. */
    private static final long MOST_BYTES = 1_000_000;

    private static final long GRACE_MILLIS = 5_000;

    private final Javalin javalin;

    private Server(Javalin javalin) {
        this.javalin = javalin;
    }

    /**
     * Starts serving.
     *
     * @param port to listen at, 0 for any that is free
     */
    public static Server start(Counter counter, int port) {
        return new Server(Javalin.create(config -> configure(config, counter)).start(THIS_MACHINE, port));
    }

    /** Where the job book is to be found. */
    public URI address() {
        return URI.create("http://" + THIS_MACHINE + ":" + javalin.port() + "/");
    }

    /** Answers what was asked already and stops. */
    @Override
    public void close() {
        javalin.stop();
    }

    private static void configure(JavalinConfig config, Counter counter) {
        config.startup.showJavalinBanner = false;
        config.startup.showOldJavalinVersionWarning = false;
        config.concurrency.useVirtualThreads = true;
        config.http.maxRequestSize = MOST_BYTES;
        config.http.defaultContentType = "text/plain; charset=utf-8";
        config.jetty.modifyServer(server -> server.setStopTimeout(GRACE_MILLIS));
        config.jetty.modifyHttpConfiguration(http -> http.setSendServerVersion(false));
        config.routes.before(Guard::check);
        pages(counter, new Views()).forEach(pages -> pages.add(config.routes));
    }

    private static List<Pages> pages(Counter counter, Views views) {
        Sketches sketches = new Sketches();
        DrawingPage drawings = new DrawingPage(counter, views, sketches);
        Replays replays = new Replays(counter);
        return List.of(
                new Looks(),
                new JobBookPage(counter, views),
                new RequestPages(counter, views),
                new JobPage(counter, views, sketches),
                drawings,
                new LengthsPage(drawings),
                new DrawingFiles(counter),
                new MethodPage(replays, views),
                new MachinePage(replays, views),
                new ProvingPage(counter, views),
                new DoorPage(counter, views),
                new KitPage(counter, views),
                new SumPages(counter, views),
                new SumResource(counter),
                new FaultPages(views));
    }
}
