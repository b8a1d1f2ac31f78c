package org.cagewall.kiosk.cage;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import org.cagewall.deed.BirdDeed;
import org.cagewall.room.nest.Crops;
import org.cagewall.room.nest.EggFinding;
import org.cagewall.room.nest.Feet;
import org.cagewall.room.nest.PartedFor;
import org.cagewall.room.nest.WhyRemoved;
import org.cagewall.text.Message;

/** The sheets on which nests are told of; free of Swing. Used on the event thread. */
interface NestForms {

    /** One egg or chick of several. */
    void choose(Message title, List<CageState.LyingFace> faces, Consumer<CageState.LyingFace> then);

    /**
     * What each egg shows against the light; those not looked at are left out.
     *
     * @param due once all of these have been looked at, nothing more need be touched
     */
    void candle(
            Message title,
            List<CageState.LyingFace> eggs,
            List<CageState.LyingFace> due,
            Consumer<Map<CageState.LyingFace, EggFinding>> then);

    /** Which egg is taken out, and why if that is not plain from what is known of it. */
    void takeOut(
            Message title, List<CageState.LyingFace> eggs, BiConsumer<CageState.LyingFace, Optional<WhyRemoved>> then);

    /** Which chick gets this ring, or another. */
    void ring(
            Message title,
            Optional<String> offered,
            List<CageState.LyingFace> chicks,
            BiConsumer<CageState.LyingFace, String> then);

    /** What a look into the box showed. */
    void look(Message title, int chicks, Consumer<Looked> then);

    record Looked(int chicks, Crops crops, Feet feet, boolean damp, boolean plucked, boolean cleaned) {}

    /** What lies in a nest of which nothing is known yet. */
    void found(Message title, LocalDate day, Consumer<Found> then);

    record Found(int eggs, Optional<LocalDate> first, int chicks, int age) {}

    /** A treatment by its label; never how much of it. */
    void treat(Message title, Optional<String> lastProduct, BirdDeed.TreatedFor reason, Consumer<Treated> then);

    record Treated(String product, BirdDeed.TreatedFor reason) {}

    /** Why a pair is parted, below what speaks for it and against. */
    void part(Message title, List<String> evidence, Consumer<PartedFor> then);

    /** What a pair has done. */
    void read(Message title, List<String> sentences);
}
