package chargehand.drawing.checking;

import chargehand.drawing.sheet.DrawnSheet;
import chargehand.drawing.sheet.DrawnView;
import chargehand.measure.Length;
import chargehand.measure.LengthReader;
import chargehand.measure.LengthUnit;
import chargehand.part.Size;
import chargehand.part.Tolerance;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Compares every printed figure with the part and with the length it is drawn. */
final class SizeChecks {
    /** As near as a drawn length must be (mm on paper). */
    private static final double EXACT = 0.01;

    /** Half of the last decimal of a printed limit (mm): a micrometre, or a tenth of a thou. */
    private static final double LIMIT_MM = 0.001;

    private static final double LIMIT_IN = 0.0001 * 25.4;

    private final DrawnSheet sheet;
    private final PartSizes sizes;
    private final List<SheetFault> faults = new ArrayList<>();

    SizeChecks(DrawnSheet sheet, PartSizes sizes) {
        this.sheet = sheet;
        this.sizes = sizes;
    }

    List<SheetFault> all() {
        for (Claims claim : Claims.of(sheet, sizes)) {
            figures(claim.printed());
            limits(claim.printed());
            drawn(claim);
        }
        return faults;
    }

    private void add(FaultKind kind, String say) {
        faults.add(SheetFault.of(kind, say));
    }

    private void figures(Printed printed) {
        printed.lengths().stream()
                .filter(length -> !sizes.lengths().contains(length))
                .forEach(length -> add(
                        FaultKind.NOT_THE_PARTS,
                        "'" + printed.text() + "': " + length.mm() + " mm is no size of the part"));
        printed.angles(sizes)
                .forEach(angle ->
                        add(FaultKind.NOT_THE_PARTS, "'" + printed.text() + "': no angle of the part is " + angle));
    }

    private void limits(Printed printed) {
        printed.limits().ifPresent(pair -> {
            boolean right = sizes.sizes().stream()
                    .filter(size -> printed.lengths().contains(size.length()))
                    .anyMatch(size -> are(pair, size));
            if (!right) {
                add(FaultKind.NOT_THE_PARTS, "'" + printed.text() + "': the limits are not the part's");
            }
        });
    }

    private boolean are(Printed.Pair pair, Size size) {
        return switch (size.tolerance()) {
            case Tolerance.General() -> false;
            case Tolerance.Bracketed() -> false;
            case Tolerance.Deviations(Length lower, Length upper) -> reads(pair, lower, upper);
            case Tolerance.Letters(var code, Length lower, Length upper) ->
                reads(pair, size.length().plus(lower), size.length().plus(upper));
        };
    }

    private boolean reads(Printed.Pair pair, Length lower, Length upper) {
        return near(pair.upper(), upper) && near(pair.lower(), lower);
    }

    private boolean near(String figures, Length length) {
        LengthUnit unit = sheet.part().unit();
        boolean negative = figures.startsWith("\u2212");
        String bare = figures.replaceFirst("^[+\u2212]", "");
        Length read =
                bare.equals("0") ? Length.ZERO : LengthReader.read(bare, unit).length();
        double off = (negative ? -read.mm() : read.mm()) - length.mm();
        return Math.abs(off) < (unit == LengthUnit.INCH ? LIMIT_IN : LIMIT_MM);
    }

    private void drawn(Claims claim) {
        if (claim.printed().lengths().isEmpty()) {
            return;
        }
        switch (claim.view().shows()) {
            case SIDE, DETAIL -> {
                if (claim.isLevel()) {
                    along(claim, sizes.along());
                } else if (claim.isUpright()) {
                    plain(claim, claim.drawn());
                }
            }
            case TABLE -> {}
            case END, SECTION, FRONT, LEFT, PLAN -> {
                if (claim.isLevel() || claim.isUpright()) {
                    plain(claim, claim.drawn());
                }
            }
        }
    }

    private void plain(Claims claim, double drawn) {
        Length printed = claim.printed().lengths().getFirst();
        double right = claim.view().scale().size(printed);
        if (Math.abs(right - drawn) > EXACT) {
            String say = String.format(
                    Locale.ROOT,
                    "'%s' is drawn %.3f mm long, not %.3f",
                    claim.printed().text(),
                    drawn,
                    right);
            add(FaultKind.NOT_TO_SCALE, say);
        }
    }

    private void along(Claims claim, Collection<Length> positions) {
        Optional<Length> one = position(claim.view(), claim.tips().getFirst().x(), positions);
        Optional<Length> other = position(claim.view(), claim.tips().getLast().x(), positions);
        boolean right = one.isPresent()
                && other.isPresent()
                && one.orElseThrow()
                        .minus(other.orElseThrow())
                        .abs()
                        .equals(claim.printed().lengths().getFirst());
        if (!right) {
            add(FaultKind.NOT_TO_SCALE, "'" + claim.printed().text() + "' does not lie between faces so far apart");
        }
    }

    /** Which position of the part lies at x. */
    static Optional<Length> position(DrawnView view, double x, Collection<Length> positions) {
        return positions.stream()
                .filter(at -> Math.abs(view.scale().x(at) - x) < EXACT)
                .findFirst();
    }
}
