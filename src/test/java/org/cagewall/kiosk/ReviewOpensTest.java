package org.cagewall.kiosk;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.Optional;
import org.cagewall.kiosk.shell.Destination;
import org.cagewall.kiosk.shell.Layers;
import org.junit.jupiter.api.Test;

/** What happened on days away opens by itself for the owner who is back: once, and without nagging. */
class ReviewOpensTest extends WithDaybook {

    private static final Destination REVIEW = new Destination.Handover();
    private static final Destination WALL = new Destination.Wall();

    private Optional<Layers> stage = Optional.empty();
    private Optional<Kiosk> kiosk = Optional.empty();

    @Test
    void atTheStartAfterDaysAway() {
        inesIsAway();
        book = book.on(LocalDate.of(2026, 4, 21));

        Painted painted = start().png("review-opens").assertFit();

        assertThat(here()).isEqualTo(REVIEW);
        assertThat(painted.names()).contains("strip.A1", "read");
    }

    @Test
    void whenTheOwnerTakesOverAndThenNotAgain() {
        inesIsAway();
        book = book.on(LocalDate.of(2026, 4, 21));
        Painted painted = start();
        painted.after(() -> kiosk().navigator().go(WALL));

        painted.after(() -> kiosk().pen().takenBy("Tomas"));
        painted.after(() -> kiosk().pen().takenBy("Ines"));

        assertThat(here()).isEqualTo(WALL);
        painted.press("nav.handover");
        assertThat(painted.names()).contains("strip.A1");
    }

    @Test
    void asSoonAsTheDaysAwayAreEnded() {
        inesIsAway();
        Painted painted = start();
        assertThat(here()).isEqualTo(new Destination.Today());

        painted.after(() -> book.tell("{\"deed\":\"away-ended\",\"by\":\"Ines\"}"));

        assertThat(kiosk().pen().holder().orElseThrow().name()).isEqualTo("Ines");
        assertThat(here()).isEqualTo(REVIEW);
    }

    @Test
    void notForASitterNorWhileTheOwnerIsAwayNorOnceItIsRead() {
        inesIsAway();
        Painted painted = start();
        painted.after(() -> kiosk().pen().takenBy("Ines"));
        assertThat(here()).isEqualTo(new Destination.Today());
        painted.after(() -> kiosk().end());

        book = book.on(LocalDate.of(2026, 4, 21));
        painted = start().press("read").press("all-read");
        painted.after(() -> kiosk().end());
        start();

        assertThat(here()).isEqualTo(WALL);
    }

    private Painted start() {
        return Painted.of(1280, 800, () -> {
            Layers made = new Layers(WORDS);
            stage = Optional.of(made);
            kiosk = Optional.of(Kiosk.on(made, book.desk(), WORDS));
            return made;
        });
    }

    private Kiosk kiosk() {
        return kiosk.orElseThrow();
    }

    private Destination here() {
        return stage.orElseThrow().here();
    }
}
