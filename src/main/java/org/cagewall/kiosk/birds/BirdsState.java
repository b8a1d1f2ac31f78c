package org.cagewall.kiosk.birds;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.cagewall.kiosk.kit.Problem;
import org.cagewall.kiosk.kit.list.LogFace;
import org.cagewall.kiosk.kit.list.RowFace;
import org.cagewall.kiosk.kit.wall.WallPlan;
import org.cagewall.room.bird.Sex;

/**
 * What the page of birds shows. Immutable; any thread, and free of Swing.
 *
 * @param may what the person who records may do with birds
 * @param page the search, one bird, or a bird that is being added
 * @param search what is looked for, and what was found
 * @param bird the bird looked at
 * @param act what is being recorded of it
 * @param problem what is wrong with what was filled in
 * @param walls the walls with their cages, to choose one
 * @param colours the colours that most birds here have
 * @param years the years in which a bird to be added can have hatched
 */
public record BirdsState(
        May may,
        Page page,
        Search search,
        Optional<Sheet> bird,
        Optional<BirdAct> act,
        Optional<Problem> problem,
        List<WallPlan> walls,
        List<String> colours,
        List<Integer> years) {

    /** Who records: one who keeps the birds, or one who watches over them for a time. */
    public enum May {
        KEEP,
        WATCH
    }

    /** The parts of the page. */
    public enum Page {
        SEARCH,
        BIRD,
        NEW_BIRD
    }

    /** When it happened. */
    public enum Day {
        TODAY,
        YESTERDAY
    }

    /**
     * A search.
     *
     * @param text a part of a ring, a name or a colour
     * @param sexes only these; all, if empty
     * @param places only birds there; anywhere, if empty
     * @param offered the places at which there are birds
     * @param more how many were found beyond the rows
     */
    public record Search(
            String subtitle,
            String text,
            Set<Sex> sexes,
            Set<Whereabouts> places,
            List<Whereabouts> offered,
            List<Row> rows,
            int more) {

        public Search {
            sexes = Set.copyOf(sexes);
            places = Set.copyOf(places);
            offered = List.copyOf(offered);
            rows = List.copyOf(rows);
        }
    }

    /** A bird that was found. */
    public record Row(String ring, RowFace face) {}

    /** One bird: what is known of it, what happened last, what can be recorded now. */
    public record Sheet(
            long id,
            String ring,
            Optional<String> splitRing,
            String subtitle,
            List<Known> known,
            List<LogFace> entries,
            List<BirdAct> acts) {

        public Sheet {
            known = List.copyOf(known);
            entries = List.copyOf(entries);
            acts = List.copyOf(acts);
        }

        /** A bird that is no longer held: there is nothing more to record of it here. */
        Sheet ofThePast() {
            return new Sheet(id, ring, splitRing, subtitle, known, entries, List.of());
        }

        Sheet withEntries(List<LogFace> log) {
            return new Sheet(id, ring, splitRing, subtitle, known, log, acts);
        }
    }

    /** Something known: what it is about, and what is known. */
    public record Known(String label, String value) {}

    public BirdsState {
        walls = List.copyOf(walls);
        colours = List.copyOf(colours);
        years = List.copyOf(years);
    }

    BirdsState finding(Search found) {
        return new BirdsState(may, page, found, bird, act, problem, walls, colours, years);
    }

    BirdsState at(Page other) {
        return new BirdsState(may, other, search, bird, Optional.empty(), Optional.empty(), walls, colours, years);
    }

    BirdsState of(Optional<Sheet> other) {
        return new BirdsState(may, page, search, other, act, problem, walls, colours, years);
    }

    BirdsState doing(Optional<BirdAct> other) {
        return new BirdsState(may, page, search, bird, other, Optional.empty(), walls, colours, years);
    }

    BirdsState wrong(String part, String words) {
        return new BirdsState(
                may, page, search, bird, act, Optional.of(new Problem(part, words)), walls, colours, years);
    }
}
