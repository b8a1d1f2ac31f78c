package org.cagewall.kiosk.today;

import static org.assertj.core.api.Assertions.assertThat;
import static org.cagewall.tasks.RoomSketch.DAY;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.cagewall.handover.Pack;
import org.cagewall.room.FirstCall;
import org.cagewall.room.Room;
import org.cagewall.tasks.Alarms;
import org.cagewall.tasks.Danger;
import org.cagewall.tasks.RoomSketch;
import org.cagewall.text.Words;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Each danger is told the same on the panel, among the cautions, in the pack and in the document of the sources. */
class DangersTest {

    private static final Words WORDS = Words.english();

    private final Room room = new RoomSketch()
            .wall("North", 1, 1)
            .illFirst(FirstCall.SECOND)
            .away(DAY, DAY.plusDays(3))
            .room();
    private final TodaysWords list = new TodaysWords(room, DAY, WORDS);
    private final Pack pack = Pack.of(room, DAY, room.absences().get(0));

    @ParameterizedTest
    @EnumSource
    void everyDangerIsToldTheSameEverywhere(Danger danger) throws IOException {
        String title = WORDS.say(danger.title());
        String rule = WORDS.say(danger.rule(room));

        assertThat(list.safety().cautions()).contains(new TodayState.Caution(title, rule));
        assertThat(pack.cases()).contains(new Pack.Topic(danger.title(), danger.steps(room)));
        assertThat(Files.readString(Path.of("docs/safety.md"))).contains("| " + title + " | " + rule + " |");
    }

    @Test
    void thePanelThePageOfPhonesAndThePackStopForTheSameAndPhoneInTheSameOrder() {
        Alarms alarms = Alarms.of(room, DAY);

        assertThat(list.stop().rules())
                .isEqualTo(alarms.rules().stream().map(WORDS::say).toList());
        assertThat(pack.door().stop()).isEqualTo(alarms.rules());
        assertThat(pack.door().phones()).isEqualTo(alarms.phones());
        assertThat(list.stop().phones().stream().map(TodayState.Phone::number))
                .containsExactly("0555 0177", "0555 0142", "0555 0190");
        assertThat(alarms.phones().stream().flatMap(phone -> phone.number().stream()))
                .containsExactly("0555 0177", "0555 0142", "0555 0190");
    }

    @Test
    void medicineAndHeatAreCautionedAgainstInTheSameWordsOnScreenAndPaper() {
        String cautions = String.join(
                "\n",
                list.safety().cautions().stream().map(TodayState.Caution::text).toList());

        assertThat(cautions)
                .contains(
                        "Give none, unless the owner has told you to and the label says how.",
                        "No pan, iron or lamp of your own. Leave the owner's heater and lamps as they are.",
                        "Are you pregnant or often ill, or are your lungs weak? Ask a doctor, and tell the owner");
        assertThat(pack.never().stream().map(WORDS::say))
                .contains("Medicine: Give none, unless the owner has told you to and the label says how.");
        assertThat(pack.door().fumes()).contains(Danger.OWN_HEAT);
        assertThat(pack.door().hours().stream().map(WORDS::say))
                .anyMatch(said -> said.startsWith("Are you pregnant or often ill, or are your lungs weak?"));
    }
}
