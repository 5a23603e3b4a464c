package chargehand.drawing.stage;

import chargehand.measure.Length;
import chargehand.measure.Written;
import chargehand.part.Across;
import chargehand.part.End;
import chargehand.part.Size;
import chargehand.part.shape.Profile;
import chargehand.part.shape.Solid;
import chargehand.part.shape.Station;
import java.util.List;

/**
 * Positions along the machine's bed: 0 where the drawn work begins, growing away from the headstock.
 *
 * @param headstock the end of the part that points to the headstock
 * @param origin the part's position that is 0 on the bed
 */
record Bed(End headstock, Length origin) {
    Length along(Length at) {
        return headstock == End.A ? at.minus(origin) : origin.minus(at);
    }

    /** Where a span begins on the bed. */
    Length first(Length from, Length to) {
        return Length.least(along(from), along(to));
    }

    /** Where a span ends on the bed. */
    Length last(Length from, Length to) {
        return Length.most(along(from), along(to));
    }

    Profile along(Profile profile) {
        List<Station> stations = profile.stations().stream()
                .map(station -> new Station(along(station.at()), station.radius()))
                .toList();
        return new Profile(headstock == End.A ? stations : stations.reversed());
    }

    Solid.ThreadPlace along(Solid.ThreadPlace place) {
        return new Solid.ThreadPlace(place.name(), place.thread(), place.inside(), along(place.root()));
    }

    Solid.FlatsPlace along(Solid.FlatsPlace place) {
        return new Solid.FlatsPlace(
                place.name(),
                place.sides(),
                place.across(),
                place.corners(),
                first(place.from(), place.to()),
                last(place.from(), place.to()));
    }

    Across along(Across feature) {
        return switch (feature) {
            case Across.CrossHole(var name, var diameter, var at, var depth, var around, var made) ->
                new Across.CrossHole(name, diameter, at(at, along(at.length())), depth, around, made);
            case Across.Keyway(var name, var width, var depth, var from, var length, var around, var made) ->
                new Across.Keyway(name, width, depth, begins(from, feature), length, around, made);
            case Across.TaperPin(var name, var nominal, var at, var with, var around, var made) ->
                new Across.TaperPin(name, nominal, at(at, along(at.length())), with, around, made);
            case Across.Slit(var name, var width, var from, var length, var walls, var around, var made) ->
                new Across.Slit(name, width, begins(from, feature), length, walls, around, made);
            case Across.Flat(var name, var depth, var from, var length, var around, var made) ->
                new Across.Flat(name, depth, begins(from, feature), length, around, made);
        };
    }

    /** Where a feature begins on the bed, for the size that says where it begins on the part. */
    private Size begins(Size from, Across feature) {
        return at(from, first(feature.begins(), feature.ends()));
    }

    private static Size at(Size size, Length position) {
        return new Size(
                new Written(size.nominal().text(), position, size.nominal().unit()), size.tolerance());
    }

    Hold.Grip along(Hold.Grip grip) {
        return new Hold.Grip(first(grip.from(), grip.to()), last(grip.from(), grip.to()), grip.diameter());
    }
}
