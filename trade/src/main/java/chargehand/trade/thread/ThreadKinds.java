package chargehand.trade.thread;

import chargehand.measure.LengthUnit;
import chargehand.measure.Notations;
import chargehand.measure.Pitch;
import chargehand.measure.Unreadable;
import chargehand.trade.sum.Kind;
import chargehand.trade.sum.Kinds;

/** The kinds of field that hold a thread. */
public final class ThreadKinds {
    /** A thread of any series by its designation. */
    public static final Kind<ScrewThread> THREAD = Kinds.by("thread", ScrewThread::parse, ThreadKinds::echo);

    /** A thread that may bring its class of fit: M12-6g. */
    public static final Kind<CalledThread> CALLED =
            Kinds.by("thread", CalledThread::parse, called -> echo(called.thread()) + fit(called));

    /** The lead to cut: written as a pitch, {@code 19 tpi} or {@code 1.5 mm}, or as a thread that has it, {@code G 3/8}. */
    public static final Kind<Pitch> LEAD = new LeadKind();

    private ThreadKinds() {}

    private static String fit(CalledThread called) {
        return called.fit().isEmpty() ? "" : ", class " + called.fit();
    }

    private static String echo(ScrewThread thread) {
        boolean unlisted = !thread.series().table().isEmpty() && !Threads.isListed(thread);
        return thread.designation() + " (" + thread.series().title() + (unlisted ? ", not a listed pitch)" : ")");
    }

    private record LeadKind() implements Kind<Pitch> {
        @Override
        public String name() {
            return "pitch or thread";
        }

        @Override
        public Pitch read(String written, LengthUnit unit) {
            try {
                return Notations.PITCH.read(written, unit);
            } catch (Unreadable notAPitch) {
                return threadLead(written, notAPitch);
            }
        }

        private static Pitch threadLead(String written, Unreadable notAPitch) {
            try {
                return ScrewThread.parse(written).lead();
            } catch (Unreadable notAThread) {
                notAPitch.addSuppressed(notAThread);
                throw beginsAsANumber(written) ? notAPitch : neither(notAThread);
            }
        }

        /** What begins as a number was most likely meant as a pitch: then its own refusal says more. */
        private static boolean beginsAsANumber(String written) {
            return written.matches("[0-9.].*");
        }

        private static Unreadable neither(Unreadable cause) {
            var neither =
                    new Unreadable("this is neither a pitch nor a thread: write 19 tpi, 1.5 mm, G 3/8 or M20x2.5.");
            neither.addSuppressed(cause);
            return neither;
        }

        @Override
        public String echo(Pitch pitch) {
            return echo(pitch, LengthUnit.MILLIMETRE);
        }

        @Override
        public String echo(Pitch pitch, LengthUnit first) {
            return Notations.PITCH.text(pitch, first);
        }
    }
}
