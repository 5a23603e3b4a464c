package chargehand.trade.thread;

import chargehand.trade.sum.Kind;
import chargehand.trade.sum.Kinds;

/** The kinds of field that hold a thread. */
public final class ThreadKinds {
    /** A thread of any series by its designation. */
    public static final Kind<ScrewThread> THREAD = Kinds.by("thread", ScrewThread::parse, ThreadKinds::echo);

    private ThreadKinds() {}

    private static String echo(ScrewThread thread) {
        boolean unlisted = !thread.series().table().isEmpty() && !Threads.isListed(thread);
        return thread.designation() + " (" + thread.series().title() + (unlisted ? ", not a listed pitch)" : ")");
    }
}
