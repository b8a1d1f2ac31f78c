package org.cagewall.kiosk.setup;

import java.util.List;
import java.util.Optional;
import org.cagewall.kiosk.kit.Chips;
import org.cagewall.kiosk.kit.Choice;
import org.cagewall.kiosk.kit.Labelled;
import org.cagewall.kiosk.kit.Stack;
import org.cagewall.room.Keeps;
import org.cagewall.room.Use;
import org.cagewall.text.Words;

/** What a cage is for and which birds it keeps, to be touched: the second only where it makes sense. Event thread. */
final class Uses {

    private final Stack view = new Stack();
    private final Chips<Use> uses;
    private final Chips<Keeps> keeps;
    private final Stack whom;

    Uses(Words words, String name, Use use, Optional<Keeps> kept, Runnable onChange) {
        uses = Chips.oneOf(name, Choice.of(Use.values(), words, "setup.use."), chosen -> {
                    showWhom();
                    onChange.run();
                })
                .choose(List.of(use));
        keeps = Chips.oneOf(name + ".keeps", Choice.of(Keeps.values(), words, "setup.keeps."), chosen -> onChange.run())
                .choose(List.of(kept.orElse(Keeps.MIXED)));
        whom = Labelled.of(words.say("setup.whom"), keeps);
        view.add(Labelled.of(words.say("setup.what-for"), uses));
        view.add(whom);
        showWhom();
    }

    Stack view() {
        return view;
    }

    Use use() {
        return uses.one().orElse(Use.BREEDING);
    }

    Optional<Keeps> keeps() {
        return keepsMany(use()) ? keeps.one() : Optional.empty();
    }

    private void showWhom() {
        whom.setVisible(keepsMany(use()));
        view.revalidate();
    }

    private static boolean keepsMany(Use use) {
        return use == Use.STOCK || use == Use.FLIGHT;
    }
}
