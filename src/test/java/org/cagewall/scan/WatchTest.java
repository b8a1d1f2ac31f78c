package org.cagewall.scan;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.awt.image.BufferedImage;
import java.util.concurrent.atomic.AtomicLong;
import org.cagewall.room.card.CardCode;
import org.junit.jupiter.api.Test;

class WatchTest {

    private static final String CARD = new CardCode("B7K", 14, "Q2").text();
    private static final String NEIGHBOUR = new CardCode("B7K", 15, "Q2").text();
    private static final String THIRD = new CardCode("B7K", 16, "Q2").text();
    private static final long FRAME_NANOS = 66_000_000;

    private final AtomicLong clock = new AtomicLong();
    private final Watch watch = new Watch(clock::get);

    @Test
    void aCardThatStaysInViewIsOneScan() {
        assertThat(watch.see(view(CARD, 300)).flatMap(Decoding.Found::text)).contains(CARD);
        for (int frame = 0; frame < 60; frame++) {
            clock.addAndGet(FRAME_NANOS);
            assertThat(watch.see(view(CARD, 300 + frame))).isEmpty();
        }
    }

    @Test
    void aCardThatComesBackAfterAMomentIsANewScan() {
        watch.see(view(CARD, 300));
        clock.addAndGet(Watch.MOMENT_NANOS / 2);
        assertThat(watch.see(view(CARD, 300))).isEmpty();
        clock.addAndGet(Watch.MOMENT_NANOS + 1);
        assertThat(watch.see(view(CARD, 300)).flatMap(Decoding.Found::text)).contains(CARD);
    }

    @Test
    void theNextCardIsAScanAtOnce() {
        watch.see(view(CARD, 300));
        assertThat(watch.see(view(NEIGHBOUR, 300)).flatMap(Decoding.Found::text))
                .contains(NEIGHBOUR);
        assertThat(watch.see(view(CARD, 300))).isEmpty();
    }

    @Test
    void aCardNearerTheMiddleIsSeenBesideOneThatStays() {
        BufferedImage both = empty();
        DecoderTest.draw(both, CARD, 4, 20, 20, 4);
        DecoderTest.draw(both, NEIGHBOUR, 4, 340, 200, 4);
        BufferedImage alone = empty();
        DecoderTest.draw(alone, CARD, 4, 20, 20, 4);
        assertThat(watch.see(Luma.of(alone)).flatMap(Decoding.Found::text)).contains(CARD);
        boolean seen = false;
        for (int frame = 0; frame < 6; frame++) {
            seen |= watch.see(Luma.of(both))
                    .filter(found -> found.text().filter(NEIGHBOUR::equals).isPresent()
                            && found.others().contains(CARD))
                    .isPresent();
        }
        assertThat(seen).isTrue();
    }

    /** A camera is led along the cages: the next card comes to where the last one was, and another one with it. */
    @Test
    void anotherCardAtThePlaceOfTheLastOneIsReadWithWhatLiesBesideIt() {
        BufferedImage next = empty();
        DecoderTest.draw(next, NEIGHBOUR, 4, 20, 200, 4);
        DecoderTest.draw(next, THIRD, 4, 420, 200, 4);
        watch.see(view(CARD, 20));

        assertThat(watch.see(Luma.of(next))).hasValueSatisfying(found -> {
            assertThat(found.text()).contains(THIRD);
            assertThat(found.others()).containsExactly(NEIGHBOUR);
        });
    }

    /** Not each look reads every card: what lies beside the one in the middle is no scan when it alone is read. */
    @Test
    void ofTwoCardsThatStayInViewTheOneBesideTheMiddleIsNeverAScan() {
        assertThat(watch.see(view(CARD, 342)).flatMap(Decoding.Found::text)).contains(CARD);
        clock.addAndGet(FRAME_NANOS);

        assertThat(watch.see(view(NEIGHBOUR, 600))).isEmpty();
        clock.addAndGet(FRAME_NANOS);
        assertThat(watch.see(view(CARD, 342))).isEmpty();
        clock.addAndGet(Watch.MOMENT_NANOS + 1);

        assertThat(watch.see(view(NEIGHBOUR, 600)).flatMap(Decoding.Found::text))
                .contains(NEIGHBOUR);
    }

    @Test
    void aCodeThatIsNoCardKeepsNoCardBesideItFromBeingRead() {
        BufferedImage both = empty();
        DecoderTest.draw(both, "SEED", 4, 342, 200, 4);
        watch.see(Luma.of(both));
        DecoderTest.draw(both, CARD, 4, 600, 200, 4);

        boolean seen = false;
        for (int frame = 0; frame < 6; frame++) {
            seen |= watch.see(Luma.of(both))
                    .flatMap(Decoding.Found::text)
                    .filter(CARD::equals)
                    .isPresent();
        }
        assertThat(seen).isTrue();
    }

    @Test
    void aCodeIsInViewUntilItHasBeenAwayForAMoment() {
        assertThat(watch.sight()).isEqualTo(Watch.Sight.NOTHING);
        watch.see(view(CARD, 300));
        clock.addAndGet(Watch.MOMENT_NANOS / 2);
        watch.see(Luma.of(empty()));
        assertThat(watch.sight()).isEqualTo(Watch.Sight.CODE);

        clock.addAndGet(Watch.MOMENT_NANOS);
        watch.see(Luma.of(empty()));

        assertThat(watch.sight()).isEqualTo(Watch.Sight.NOTHING);
    }

    /** A clock on which every look takes a while: the slow passes take turns, and none is left out for ever. */
    @Test
    void aCardThatOnlyASlowPassReadsIsReadWithinAFewPictures() {
        Watch slow = new Watch(() -> clock.addAndGet(Watch.BUDGET_NANOS / 4));
        WornCards.Worn blurred = WornCards.of(1).card(Wear.MOTION, 44);
        int frames = 0;
        while (slow.see(blurred.picture()).isEmpty() && frames < 10) {
            frames++;
        }
        assertThat(frames).isBetween(1, 6);
    }

    @Test
    void picturesWithoutACardAreNoScan() {
        assertThat(watch.see(Luma.of(empty()))).isEmpty();
        assertThat(watch.see(Luma.of(1, 1, new byte[1]))).isEmpty();
    }

    private static Luma view(String text, int left) {
        BufferedImage picture = empty();
        DecoderTest.draw(picture, text, 4, left, 200, 4);
        return Luma.of(picture);
    }

    private static BufferedImage empty() {
        return DecoderTest.blank(800, 600, new Color(190, 185, 180));
    }
}
