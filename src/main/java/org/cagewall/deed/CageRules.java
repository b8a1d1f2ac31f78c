package org.cagewall.deed;

import java.util.Optional;
import java.util.stream.Stream;
import org.cagewall.room.Cage;
import org.cagewall.room.Place;
import org.cagewall.room.Wall;
import org.cagewall.room.card.CardCode;
import org.cagewall.room.nest.Nest;
import org.cagewall.text.Message;

/** Rules about walls and cages. Pure; any thread. */
final class CageRules {

    private CageRules() {}

    /** There is such a cage, retired or not; else the nearest name is offered. */
    static Rule known(String name) {
        return scene -> scene.room().cage(name).isPresent() ? Ruling.ALLOWED : unknown(scene, name);
    }

    /** There is such a cage and it is in use. */
    static Rule inUse(String name) {
        return scene -> {
            Optional<Cage> found = scene.room().cage(name);
            if (found.isEmpty()) {
                return unknown(scene, name);
            }
            Cage cage = found.get();
            if (cage.retired().isPresent()) {
                return Ruling.refuses(
                        "deed.cage-retired", cage.name(), cage.retired().get());
            }
            return cage.joinedTo()
                    .map(partner -> Ruling.refuses(
                            "deed.cage-joined", cage.name(), scene.room().cageName(partner)))
                    .orElse(Ruling.ALLOWED);
        };
    }

    /** A task is written DATE/CAGE/KIND, so a slash would tear the name apart. */
    static Rule nameFitsATask(String name) {
        return scene -> Ruling.refusesIf(name.contains("/"), "deed.cage-slash", name);
    }

    static Rule nameIsFree(String name) {
        return scene -> Ruling.refusesIf(scene.room().cage(name).isPresent(), "deed.cage-taken", name);
    }

    static Rule cardNumbersAreLeft() {
        return scene -> Ruling.refusesIf(
                scene.register().highestCageNumber() >= CardCode.HIGHEST_NUMBER,
                "deed.cages-full",
                CardCode.HIGHEST_NUMBER);
    }

    static Rule wallIsKnown(String name) {
        return scene -> {
            if (scene.room().wall(name).isPresent()) {
                return Ruling.ALLOWED;
            }
            Stream<String> names = scene.room().walls().stream().map(Wall::name);
            return Names.nearest(name, names)
                    .map(near -> Ruling.refuses("deed.wall-unknown", name, near))
                    .orElse(Ruling.refuses("deed.no-wall", name));
        };
    }

    static Rule wallNameIsFree(String name) {
        return scene -> Ruling.refusesIf(scene.room().wall(name).isPresent(), "deed.wall-taken", name);
    }

    static Rule placeIsFree(String cage, String wall, int row, int column) {
        return scene -> {
            Optional<Wall> found = scene.room().wall(wall);
            if (found.isEmpty()) {
                return Ruling.ALLOWED;
            }
            Wall there = found.get();
            if (row > there.rows() || column > there.columns()) {
                return Ruling.refuses("deed.off-the-wall", there.name(), there.rows(), there.columns(), row, column);
            }
            return scene.room()
                    .cageAt(new Place(there.id(), row, column))
                    .filter(other -> !Names.same(other.name(), cage))
                    .map(other -> Ruling.refuses("deed.place-taken", other.name(), there.name(), row, column))
                    .orElse(Ruling.ALLOWED);
        };
    }

    static Rule isEmpty(String name) {
        return scene -> {
            int heads = scene.room()
                    .cage(name)
                    .map(cage -> scene.room().birdsOf(cage).size() + cage.flock())
                    .orElse(0);
            return Ruling.refusesIf(heads > 0, "deed.cage-not-empty", name, heads);
        };
    }

    /** No other cage is part of it by a pulled divider. */
    static Rule standsAlone(String name) {
        return scene -> scene.room()
                .cage(name)
                .flatMap(cage -> scene.room().cages().stream()
                        .filter(other -> other.joinedTo().equals(Optional.of(cage.id())))
                        .findFirst())
                .map(other -> Ruling.refuses("deed.cage-has-part", name, other.name()))
                .orElse(Ruling.ALLOWED);
    }

    static Rule twoCages(String one, String other) {
        return scene -> Ruling.refusesIf(Names.same(one, other), "deed.same-cage", one);
    }

    static Rule areJoined(String cage, String with) {
        return scene -> {
            boolean joined = scene.room()
                    .cage(with)
                    .flatMap(Cage::joinedTo)
                    .equals(scene.room().cage(cage).map(Cage::id));
            return Ruling.refusesIf(!joined, "deed.not-joined", cage, with);
        };
    }

    static Rule holdsNoPair(String name) {
        return scene -> scene.room()
                .cage(name)
                .flatMap(scene.room()::pairIn)
                .map(pair -> Ruling.refuses("deed.cage-has-pair", name, pair.label()))
                .orElse(Ruling.ALLOWED);
    }

    static Rule isForBreeding(String name) {
        return scene -> scene.room()
                .cage(name)
                .map(cage -> Ruling.asksIf(
                        cage.use() != org.cagewall.room.Use.BREEDING, "deed.not-for-breeding", cage.name(), cage.use()))
                .orElse(Ruling.ALLOWED);
    }

    static Rule boxHangs(String name) {
        return scene -> Ruling.asksIf(
                scene.room()
                        .cage(name)
                        .filter(cage -> cage.box().hanging().isEmpty())
                        .isPresent(),
                "deed.no-box",
                name);
    }

    static Rule noBoxHangs(String name) {
        return scene -> Ruling.asksIf(
                scene.room().cage(name).filter(cage -> cage.box().isOn()).isPresent(), "deed.box-already", name);
    }

    static Rule noLiveEggs(String name) {
        return scene -> {
            Nest nest = scene.nest(scene.theCage(name).id());
            long eggs =
                    nest.eggs().stream().filter(lying -> lying.egg().mayHatch()).count();
            int chicks = nest.chicksInBox().size();
            return eggs > 0
                    ? new Ruling.Asks(Message.of("deed.box-on-eggs", name, eggs))
                    : Ruling.asksIf(chicks > 0, "nest.box-on-chicks", name, chicks);
        };
    }

    static Rule twoNests(String one, String other) {
        return scene -> Ruling.refusesIf(Names.same(one, other), "nest.same-nest", one);
    }

    /** A chick weaned into a cage that holds a pair at work is odd. */
    static Rule takesAnother(String name) {
        return scene -> scene.room()
                .cage(name)
                .flatMap(scene::pairAt)
                .filter(scene.room()::together)
                .map(pair -> (Ruling) new Ruling.Asks(Message.of("nest.weaned-to-pair", name, pair.label())))
                .orElse(Ruling.ALLOWED);
    }

    private static Ruling unknown(Scene scene, String name) {
        return new Ruling.Refused(Rules.unknownCage(scene.room(), name));
    }
}
