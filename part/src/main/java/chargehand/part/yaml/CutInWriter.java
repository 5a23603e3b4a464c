package chargehand.part.yaml;

import chargehand.part.Body;
import chargehand.part.Depth;
import chargehand.part.HoleCircle;
import chargehand.part.InBore;
import chargehand.part.OnEnd;
import java.util.List;

/** Writes what is cut into the bores and the faces of a turned part. */
final class CutInWriter {
    private final YamlLines lines;

    CutInWriter(YamlLines lines) {
        this.lines = lines;
    }

    void write(Body.Turned body) {
        inBores(body.inBores());
        onEnds(body.onEnds());
    }

    private void inBores(List<InBore> features) {
        if (features.isEmpty()) {
            return;
        }
        lines.begin("in-bores");
        for (int i = 0; i < features.size(); i++) {
            lines.entry();
            inBore(features.get(i), InBoreForm.defaultName(features.get(i), i + 1));
            PartWriter.made(lines, features.get(i));
            lines.endEntry();
        }
        lines.end();
    }

    private void inBore(InBore feature, String defaultName) {
        switch (feature) {
            case InBore.Keyway keyway -> {
                lines.value("keyway", SizeText.write(keyway.width()));
                named(feature, defaultName);
                lines.value("depth", SizeText.write(keyway.depth()));
                PartWriter.around(lines, keyway.around());
            }
            case InBore.OilGroove groove -> {
                lines.value("oil-groove", SizeText.write(groove.width()));
                named(feature, defaultName);
                lines.value("depth", SizeText.write(groove.depth()));
                run(groove.run());
                PartWriter.around(lines, groove.around());
            }
            case InBore.Recess recess -> {
                lines.value("recess", SizeText.write(recess.diameter()));
                named(feature, defaultName);
                lines.value("at", SizeText.write(recess.from()));
                lines.value("width", SizeText.write(recess.width()));
            }
        }
    }

    private void named(InBore feature, String defaultName) {
        PartWriter.name(lines, feature.name(), defaultName);
        lines.words("in", feature.bore());
    }

    private void run(InBore.Run run) {
        switch (run) {
            case InBore.Run.Open() -> {}
            case InBore.Run.Part(var from, var length) ->
                lines.value("at", SizeText.write(from)).value("length", SizeText.write(length));
        }
    }

    private void onEnds(List<OnEnd> features) {
        if (features.isEmpty()) {
            return;
        }
        lines.begin("on-ends");
        for (int i = 0; i < features.size(); i++) {
            lines.entry();
            onEnd(features.get(i), OnEndForm.defaultName(features.get(i), i + 1));
            PartWriter.made(lines, features.get(i));
            lines.endEntry();
        }
        lines.end();
    }

    private void onEnd(OnEnd feature, String defaultName) {
        switch (feature) {
            case OnEnd.Drilled drilled -> {
                lines.value("holes", SizeText.write(drilled.diameter()));
                circle(feature, drilled.circle(), drilled.depth(), defaultName);
            }
            case OnEnd.Tapped tapped -> {
                lines.value("tapped-holes", tapped.thread().designation());
                circle(feature, tapped.circle(), tapped.depth(), defaultName);
                lines.wordsIfAny("fit", tapped.fit());
            }
            case OnEnd.Slot slot -> {
                lines.value("slot", SizeText.write(slot.width()));
                end(feature, defaultName);
                lines.value("depth", SizeText.write(slot.depth()));
                PartWriter.around(lines, slot.around());
            }
            case OnEnd.Centre centre -> {
                lines.value("centre", centre.hole().designation());
                end(feature, defaultName);
                lines.value("stays", centre.stays().text());
            }
        }
    }

    private void end(OnEnd feature, String defaultName) {
        PartWriter.name(lines, feature.name(), defaultName);
        lines.value("end", feature.end().name());
    }

    private void circle(OnEnd feature, HoleCircle circle, Depth depth, String defaultName) {
        end(feature, defaultName);
        lines.value("count", Integer.toString(circle.count()));
        lines.value("circle", SizeText.write(circle.diameter()));
        PartWriter.depth(lines, depth);
        PartWriter.around(lines, circle.around());
    }
}
