package org.cagewall.room.bird;

import java.time.LocalDate;
import java.util.Optional;
import org.cagewall.text.Message;

/**
 * Where a bird is for a time, and since when. Immutable; any thread.
 *
 * @param place the name of the show, or with whom it is, where that was told
 */
public record Outing(Whither where, Optional<String> place, LocalDate since) {

    /** At a show, at the vet or on loan, with the name of the place. */
    public Message words() {
        String plain = "word.whither." + Message.word(where);
        return place.map(name -> Message.of("word.out-at", Message.of(plain), name))
                .orElse(Message.of(plain));
    }
}
