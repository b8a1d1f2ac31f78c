package org.cagewall.kiosk.cage;

import java.util.ArrayList;
import java.util.List;
import org.cagewall.almanac.Evidence;
import org.cagewall.almanac.Measure;
import org.cagewall.almanac.Rate;
import org.cagewall.text.Words;

/** Puts what a pair has done, beside the room's average, into sentences. Pure; any thread. */
record EvidenceWords(Words words) {

    List<String> of(Evidence evidence) {
        List<String> all = new ArrayList<>();
        all.add(words.say("cage.evidence.rounds", evidence.rounds(), evidence.eggs()));
        measured(all, "full", evidence.full());
        measured(all, "hatched", evidence.hatched());
        measured(all, "ringed", evidence.ringed());
        measured(all, "weaned", evidence.weaned());
        if (evidence.speaksForParting().isEmpty()) {
            all.add(words.say("cage.evidence.nothing-speaks"));
        }
        evidence.speaksForParting().stream().map(words::say).forEach(all::add);
        return all;
    }

    private void measured(List<String> all, String what, Measure measure) {
        Rate pair = measure.pair();
        if (pair.of() > 0) {
            String room = measure.room().share().isPresent()
                    ? words.say(
                            "cage.evidence.room", percent(measure.room().share().getAsDouble()))
                    : "";
            all.add(words.say(
                    "cage.evidence." + what,
                    pair.hits(),
                    pair.of(),
                    words.say("cage.evidence.likely", percent(pair.low()), percent(pair.high())),
                    room));
        }
    }

    /** To the nearest whole one. */
    private static int percent(double share) {
        return (int) Math.round(100 * share);
    }
}
