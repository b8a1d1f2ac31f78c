package org.cagewall.paper;

import java.util.Optional;
import org.cagewall.text.Message;

/** What those who draw on cards ask of a card's size, which a sheet cannot know by itself. Any thread. */
@FunctionalInterface
public interface Demand {

    /** Why nothing can be drawn on a card of this size, and what to do; nothing where it can. */
    Optional<Message> against(Size card);
}
