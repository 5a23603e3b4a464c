package chargehand.part.check;

import chargehand.measure.Length;
import chargehand.part.GeneralTolerance;
import chargehand.part.Size;
import chargehand.part.Tolerance;

/** Judges one size at a time. */
final class SizeCheck {
    /** Nothing smaller is made here or can be seen. */
    static final Length LEAST = Length.mm(0.01);

    /** Nothing larger is made in a shop of this kind. */
    static final Length MOST = Length.mm(10_000);

    private final GeneralTolerance general;
    private final Findings findings;

    SizeCheck(GeneralTolerance general, Findings findings) {
        this.general = general;
        this.findings = findings;
    }

    /** Whether a surface that a size lies over is a shaft or a hole in the sense of ISO 286. */
    enum Kind {
        SHAFT,
        HOLE,
        EITHER
    }

    void judge(String path, Size size, Kind kind) {
        judge(path, size.length());
        if (isMakeable(size.length())) {
            judgeLimits(path, size);
            judgeLetters(path, size, kind);
        }
    }

    void judge(String path, Length length) {
        if (length.isLessThan(LEAST)) {
            findings.fault(
                    path,
                    PartFault.SIZE_TOO_SMALL,
                    "A size here is more than " + findings.say(LEAST) + ", not " + findings.say(length) + ".");
        }
        if (length.isMoreThan(MOST)) {
            findings.fault(
                    path,
                    PartFault.SIZE_TOO_LARGE,
                    findings.say(length) + " is more than any part here: check the figure and its unit.");
        }
    }

    static boolean isMakeable(Length length) {
        return !length.isLessThan(LEAST) && !length.isMoreThan(MOST);
    }

    private void judgeLimits(String path, Size size) {
        Length least = size.limits(general).least();
        if (!least.isPositive()) {
            findings.fault(
                    path,
                    PartFault.LIMITS_TOO_WIDE,
                    "With its tolerance this size could be " + findings.say(least)
                            + ": give it limits of its own that leave something.");
        }
    }

    private void judgeLetters(String path, Size size, Kind kind) {
        if (size.tolerance() instanceof Tolerance.Letters(var code, var lower, var upper)) {
            boolean hole = Character.isUpperCase(code.charAt(0));
            if (hole && kind == Kind.SHAFT) {
                findings.fault(
                        path,
                        PartFault.LETTERS_OF_OTHER_KIND,
                        code + " is for a hole: an outside size takes small letters, such as h7.");
            } else if (!hole && kind == Kind.HOLE) {
                findings.fault(
                        path,
                        PartFault.LETTERS_OF_OTHER_KIND,
                        code + " is for a shaft: an inside size takes capital letters, such as H7.");
            }
        }
    }
}
