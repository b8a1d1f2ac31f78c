package org.cagewall.scan;

import java.util.Optional;

/** Tells a camera that sees from one that gives black, or one and the same picture, for a while. Lane of frames. */
final class Liveliness {

    /** Common practice, no source: a camera that has just been opened takes a second or two to see. */
    private static final long PATIENCE_NANOS = 3_000_000_000L;

    /** Common practice, no source: video calls 16 black, and noise makes it a little lighter. */
    private static final int BLACK = 24;

    private static final int STEP = 7;

    private Optional<Luma> last = Optional.empty();
    private Optional<Long> sameSince = Optional.empty();
    private Optional<Long> blackSince = Optional.empty();

    enum Verdict {
        SEES,
        BLACK,
        FROZEN
    }

    Verdict of(Luma picture, long nanos) {
        sameSince = last.filter(picture::equals).isPresent() ? sameSince : Optional.of(nanos);
        last = Optional.of(picture);
        blackSince = isBlack(picture) ? blackSince.or(() -> Optional.of(nanos)) : Optional.empty();
        if (isLong(sameSince, nanos)) {
            return Verdict.FROZEN;
        }
        return isLong(blackSince, nanos) ? Verdict.BLACK : Verdict.SEES;
    }

    private static boolean isLong(Optional<Long> since, long nanos) {
        return since.filter(start -> nanos - start >= PATIENCE_NANOS).isPresent();
    }

    private static boolean isBlack(Luma picture) {
        for (int y = 0; y < picture.height(); y += STEP) {
            for (int x = 0; x < picture.width(); x += STEP) {
                if (picture.at(x, y) > BLACK) {
                    return false;
                }
            }
        }
        return true;
    }
}
