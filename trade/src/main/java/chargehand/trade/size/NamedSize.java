package chargehand.trade.size;

import chargehand.measure.Length;
import chargehand.measure.LengthReader;
import chargehand.measure.LengthText;
import chargehand.measure.LengthUnit;
import chargehand.measure.Unreadable;
import chargehand.measure.Written;
import chargehand.trade.drill.Drill;
import chargehand.trade.sum.Kind;
import chargehand.trade.thread.ScrewThread;

/**
 * A size as written, which may be a length or the name of something that has one: a drill ({@code #7}, {@code letter F}) or
 * a thread ({@code M12}, meaning its major diameter).
 *
 * @param named what it was taken as, in a few words
 * @param length how large it is
 */
record NamedSize(String named, Length length) {
    static final Kind<NamedSize> SIZE = new Reader();

    private static final class Reader implements Kind<NamedSize> {
        @Override
        public String name() {
            return "size";
        }

        @Override
        public NamedSize read(String written, LengthUnit unit) {
            try {
                Written length = LengthReader.read(written, unit);
                return new NamedSize("a length", length.length());
            } catch (Unreadable notALength) {
                return named(written, notALength);
            }
        }

        private static NamedSize named(String written, Unreadable notALength) {
            return Drill.findNamed(written)
                    .map(drill -> new NamedSize("the diameter of drill " + drill, drill.diameter()))
                    .orElseGet(() -> thread(written, notALength));
        }

        private static NamedSize thread(String written, Unreadable notALength) {
            try {
                ScrewThread thread = ScrewThread.parse(written);
                return new NamedSize("the major diameter of " + thread, thread.major());
            } catch (Unreadable notAThreadEither) {
                // What was meant is most likely a length: that is the sentence to show.
                notALength.addSuppressed(notAThreadEither);
                throw notALength;
            }
        }

        @Override
        public String echo(NamedSize size) {
            return echo(size, LengthUnit.MILLIMETRE);
        }

        @Override
        public String echo(NamedSize size, LengthUnit first) {
            return LengthText.both(size.length(), first) + ", " + size.named();
        }
    }
}
