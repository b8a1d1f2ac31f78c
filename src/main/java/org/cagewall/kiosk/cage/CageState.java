package org.cagewall.kiosk.cage;

import java.util.List;
import java.util.Optional;
import org.cagewall.kiosk.kit.list.RowFace;
import org.cagewall.kiosk.kit.nest.EggLook;
import org.cagewall.room.nest.Lying;
import org.cagewall.room.nest.Stage;

/**
 * What a cage's page shows. Immutable; any thread.
 *
 * @param known whether there is such a cage
 * @param nest what lies in its box, or what there is to say of it
 * @param parting the stages in which its pair is parted, once that has begun
 * @param birds the birds in it, a card each
 * @param flock birds in it that are not known one by one, as a sentence
 * @param entries the last entries and what lapsed among them, the newest first; empty until they have been read
 * @param unread why the entries could not be read, where that failed
 * @param actions what can be recorded now, the likeliest first
 * @param below quieter things to do, below those
 * @param yesterday whether what is touched is recorded for yesterday
 * @param card what is wrong with its card, where something is
 * @param chore what the sitter has to do there at this hour
 */
public record CageState(
        boolean known,
        String title,
        String subtitle,
        Optional<Nest> nest,
        Optional<Parting> parting,
        List<BirdFace> birds,
        Optional<String> flock,
        Optional<List<PastFace>> entries,
        Optional<String> unread,
        List<Action> actions,
        List<Action> below,
        boolean yesterday,
        Optional<CardNotice> card,
        Optional<Chore> chore) {

    /**
     * A line of the sitter's list.
     *
     * @param title what it is
     * @param see what should be seen there
     * @param how what is done, in whole sentences
     * @param answer how its one touch is called
     */
    public record Chore(String title, Optional<String> see, List<String> how, String answer, Answered by) {

        /** What its one touch records. */
        public enum Answered {
            /** That all is well, and that it is done. */
            ALL_WELL,
            /** That it is done. */
            DONE
        }

        public Chore {
            how = List.copyOf(how);
        }
    }

    /** What is wrong with the cage's card, and how that may be settled by whoever is here. */
    public record CardNotice(String sentence, Ways ways) {

        /** A pencil is anybody's, a new card the owner's or a keeper's. */
        public enum Ways {
            PENCIL,
            PENCIL_OR_PRINT
        }
    }

    public CageState {
        birds = List.copyOf(birds);
        entries = entries.map(List::copyOf);
        actions = List.copyOf(actions);
        below = List.copyOf(below);
    }

    static CageState unknown(String title, String sentence) {
        return new CageState(
                false,
                title,
                sentence,
                Optional.empty(),
                Optional.empty(),
                List.of(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                List.of(),
                List.of(),
                false,
                Optional.empty(),
                Optional.empty());
    }

    /**
     * The nest box.
     *
     * @param line the next thing the birds will do
     * @param lots what lies in it, a round each
     * @param sentences what comes next for the keeper, and what is to be known
     * @param allFed what is recorded by one touch once every crop has been seen full; where there are chicks
     */
    public record Nest(String title, String line, List<Lot> lots, List<String> sentences, Optional<String> allFed) {

        public Nest {
            lots = List.copyOf(lots);
            sentences = List.copyOf(sentences);
        }
    }

    /** What lies in the box of one round; the title is empty where there is but one. */
    public record Lot(String title, List<LyingFace> faces) {

        public Lot {
            faces = List.copyOf(faces);
        }

        /** Chicks, and whatever else is not an egg of its round in this box, stand in the first row. */
        List<LyingFace> chicks() {
            return faces.stream().filter(LyingFace::isChick).toList();
        }

        List<LyingFace> eggs() {
            return faces.stream().filter(face -> !face.isChick()).toList();
        }
    }

    /**
     * An egg or a chick as it is drawn.
     *
     * @param name what tests find it by
     * @param lying what it stands for; a dummy stands for nothing
     */
    public record LyingFace(
            String name, EggLook look, String mark, String line, String second, String said, Optional<Lying> lying) {

        boolean isChick() {
            return look == EggLook.HATCHLING || look == EggLook.CHICK || look == EggLook.FLEDGED;
        }
    }

    /** The stages of parting a pair. */
    public record Parting(String title, List<StageFace> stages) {

        public Parting {
            stages = List.copyOf(stages);
        }
    }

    /** One stage of parting. */
    public record StageFace(Stage stage, String first, String second, RowFace.State state) {}

    /** A bird in the cage. */
    public record BirdFace(long id, String sex, String ring, String line) {}

    /** A line of the cage's past. */
    public sealed interface PastFace permits EntryFace, LapsedFace {
        String when();

        String what();
    }

    /** A reminder that nobody answered while it could be acted on. */
    public record LapsedFace(String when, String what) implements PastFace {}

    /**
     * An entry of the log.
     *
     * @param cages how many cages it speaks of
     * @param line the recorded line; empty where the log is not read yet
     */
    public record EntryFace(
            long number, long touch, String when, String what, boolean struck, int cages, Optional<String> line)
            implements PastFace {}

    /** Something that can be recorded by one touch, or that begins with one; due when its time has come. */
    public record Action(String name, String text, boolean due) {}
}
