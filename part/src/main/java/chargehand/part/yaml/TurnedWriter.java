package chargehand.part.yaml;

import chargehand.measure.LengthText;
import chargehand.part.Across;
import chargehand.part.Body;
import chargehand.part.Bore;
import chargehand.part.Depth;
import chargehand.part.Edge;
import chargehand.part.End;
import chargehand.part.FlatDepth;
import chargehand.part.Section;
import chargehand.part.Tolerance;
import chargehand.part.ToothSize;
import java.util.List;

/** Writes the shape of a turned part. */
final class TurnedWriter {
    private final YamlLines lines;

    TurnedWriter(YamlLines lines) {
        this.lines = lines;
    }

    void write(Body.Turned body) {
        lines.begin("outside");
        for (int i = 0; i < body.outside().size(); i++) {
            section(body.outside().get(i), SectionForm.defaultName(i + 1));
        }
        lines.end();
        inside(body.inside());
        across(body.across());
        new CutInWriter(lines).write(body);
    }

    private void section(Section section, String defaultName) {
        lines.entry();
        switch (section) {
            case Section.Round round -> lines.value("round", SizeText.write(round.diameter()));
            case Section.Groove groove -> lines.value("groove", SizeText.write(groove.diameter()));
            case Section.Threaded threaded ->
                lines.value("thread", threaded.thread().designation());
            case Section.Cone cone -> cone(cone);
            case Section.Polygon polygon -> polygon(polygon);
            case Section.Toothed toothed -> toothed(toothed);
            case Section.Knurled knurled -> knurled(knurled);
            case Section.Curved curved -> curved(curved);
        }
        PartWriter.name(lines, section.name(), defaultName);
        lines.value("length", SizeText.write(section.stretch().length()));
        PartWriter.edge(lines, "at-a", section.stretch().atA());
        PartWriter.edge(lines, "at-b", section.stretch().atB());
        if (section instanceof Section.Threaded threaded) {
            lines.wordsIfAny("fit", threaded.fit());
        }
        PartWriter.made(lines, section);
        section.stretch().was().ifPresent(was -> lines.value("was", SizeText.write(was)));
        lines.endEntry();
    }

    private void toothed(Section.Toothed toothed) {
        lines.value("teeth", Integer.toString(toothed.teeth()));
        switch (toothed.size()) {
            case ToothSize.DiametralPitch(var text, var perInch) -> lines.value("diametral-pitch", text);
            case ToothSize.Module(var text, var module) -> lines.value("module", text);
        }
        lines.value("pressure-angle", AngleFigures.exact(toothed.pressureAngle()));
        if (!toothed.outside().equals(TeethForm.full(toothed.teeth(), toothed.size()))) {
            lines.value("outside", SizeText.write(toothed.outside()));
        }
    }

    private void curved(Section.Curved curved) {
        lines.value("curve", curved.radius().text())
                .value("from", SizeText.write(curved.towardsA()))
                .value("to", SizeText.write(curved.towardsB()))
                .value("form", curved.bulge().text());
    }

    private void knurled(Section.Knurled knurled) {
        lines.value("knurl", SizeText.write(knurled.diameter()))
                .value("pattern", knurled.pattern().text())
                .value("pitch", knurled.pitch().text());
    }

    private void cone(Section.Cone cone) {
        lines.begin("cone");
        boolean sloped = !cone.taper().isEmpty();
        boolean fromIsWorkedOut = sloped && cone.towardsA().tolerance() instanceof Tolerance.Bracketed;
        if (!fromIsWorkedOut) {
            lines.value("from", SizeText.write(cone.towardsA()));
        }
        if (!sloped || fromIsWorkedOut) {
            lines.value("to", SizeText.write(cone.towardsB()));
        }
        if (sloped) {
            lines.value(cone.taper().endsWith("°") ? "angle" : "taper", cone.taper());
        }
        lines.end();
    }

    private void polygon(Section.Polygon polygon) {
        String flats = SizeText.write(polygon.flats());
        switch (polygon.sides()) {
            case 4 -> lines.value("square", flats);
            case 6 -> lines.value("hexagon", flats);
            default -> {
                lines.begin("flats")
                        .value("sides", Integer.toString(polygon.sides()))
                        .value("across", flats);
                corners(polygon);
                lines.end();
                return;
            }
        }
        corners(polygon);
    }

    private void corners(Section.Polygon polygon) {
        if (!polygon.corners().equals(polygon.sharpCorners())) {
            lines.value(
                    "corners",
                    LengthText.exact(
                            polygon.corners(), polygon.flats().nominal().unit()));
        }
    }

    private void inside(List<Bore> bores) {
        if (bores.isEmpty()) {
            return;
        }
        lines.begin("inside");
        for (int i = 0; i < bores.size(); i++) {
            lines.entry();
            bore(bores.get(i), BoreForm.defaultName(i + 1));
            PartWriter.made(lines, bores.get(i));
            lines.endEntry();
        }
        lines.end();
    }

    private void bore(Bore bore, String defaultName) {
        switch (bore) {
            case Bore.Drilled drilled -> plain("drill", SizeText.write(drilled.diameter()), bore, defaultName);
            case Bore.Tapped tapped -> {
                plain("tap", tapped.thread().designation(), bore, defaultName);
                lines.wordsIfAny("fit", tapped.fit());
            }
            case Bore.Bored bored ->
                mouthed("bore", SizeText.write(bored.diameter()), bore, defaultName, bored.mouth());
            case Bore.Reamed reamed ->
                mouthed("ream", SizeText.write(reamed.diameter()), bore, defaultName, reamed.mouth());
            case Bore.Counterbored counterbored ->
                mouthed(
                        "counterbore",
                        SizeText.write(counterbored.diameter()),
                        bore,
                        defaultName,
                        counterbored.mouth());
            case Bore.Coned coned -> {
                lines.value("cone", AngleFigures.exact(coned.angle()));
                PartWriter.name(lines, bore.name(), defaultName);
                from(bore);
                lines.value("mouth", SizeText.write(coned.mouth()));
                lines.value("to", SizeText.write(coned.to()));
            }
        }
    }

    private void mouthed(String key, String size, Bore bore, String defaultName, Edge mouth) {
        plain(key, size, bore, defaultName);
        PartWriter.edge(lines, "mouth", mouth);
    }

    private void plain(String key, String size, Bore bore, String defaultName) {
        lines.value(key, size);
        PartWriter.name(lines, bore.name(), defaultName);
        from(bore);
        PartWriter.depth(lines, bore.depth());
    }

    private void from(Bore bore) {
        if (bore.from() == End.B || bore.depth() instanceof Depth.Blind) {
            lines.value("from", bore.from().name());
        }
    }

    private void across(List<Across> all) {
        if (all.isEmpty()) {
            return;
        }
        lines.begin("across");
        for (int i = 0; i < all.size(); i++) {
            lines.entry();
            across(all.get(i), AcrossForm.defaultName(all.get(i), i + 1));
            PartWriter.around(lines, all.get(i).around());
            PartWriter.made(lines, all.get(i));
            lines.endEntry();
        }
        lines.end();
    }

    private void across(Across across, String defaultName) {
        switch (across) {
            case Across.CrossHole hole -> {
                lines.value("hole", SizeText.write(hole.diameter()));
                PartWriter.name(lines, hole.name(), defaultName);
                lines.value("at", SizeText.write(hole.at()));
                PartWriter.depth(lines, hole.depth());
            }
            case Across.Keyway keyway -> {
                lines.value("keyway", SizeText.write(keyway.width()));
                PartWriter.name(lines, keyway.name(), defaultName);
                lines.value("depth", SizeText.write(keyway.depth()));
                lines.value("at", SizeText.write(keyway.from()));
                lines.value("length", SizeText.write(keyway.length()));
            }
            case Across.TaperPin pin -> {
                lines.value("taper-pin", SizeText.write(pin.nominal()));
                PartWriter.name(lines, pin.name(), defaultName);
                lines.value("at", SizeText.write(pin.at()));
                lines.wordsIfAny("with", pin.with());
            }
            case Across.Slit slit -> {
                lines.value("slit", SizeText.write(slit.width()));
                PartWriter.name(lines, slit.name(), defaultName);
                lines.value("at", SizeText.write(slit.from()));
                lines.value("length", SizeText.write(slit.length()));
                lines.value("walls", slit.walls().text());
            }
            case Across.Flat flat -> {
                String key = flat.depth() instanceof FlatDepth.Below ? "flat" : "over-flat";
                lines.value(key, SizeText.write(flat.depth().size()));
                PartWriter.name(lines, flat.name(), defaultName);
                lines.value("at", SizeText.write(flat.from()));
                lines.value("length", SizeText.write(flat.length()));
            }
        }
    }
}
