package org.cagewall.kiosk.cage;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.cagewall.room.Pair;
import org.cagewall.room.Room;
import org.cagewall.text.Words;

/** Puts what a pair has done, beside the room's average, into sentences. Pure; any thread. */
record EvidenceWords(Words words) {

    List<String> of(Room room, Pair pair, LocalDate today) {
        List<String> all = new ArrayList<>();
        long rounds = pair.rounds().stream()
                .filter(round -> !round.eggs().isEmpty())
                .count();
        all.add(words.say("cage.evidence.rounds", rounds, pair.allEggs().count()));
        return all;
    }
}
