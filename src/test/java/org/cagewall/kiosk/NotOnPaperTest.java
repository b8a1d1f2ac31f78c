package org.cagewall.kiosk;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.cagewall.deed.RoomDeed;
import org.cagewall.deed.VisitDeed;
import org.cagewall.desk.TestDesk;
import org.cagewall.room.Role;
import org.cagewall.room.care.Answer;
import org.cagewall.room.care.How;
import org.cagewall.text.Message;
import org.junit.jupiter.api.Test;

/** A letter that paper cannot show is said where it is entered, painted without a window. */
class NotOnPaperTest extends InAPainting {

    @Test
    void aNameWithALetterThatPaperLacksIsAskedAboutAndRecordedAllTheSame() {
        add("鳥子");
        painted.png("not-on-paper").assertFit();
        assertThat(String.join(" ", painted.texts()))
                .contains("Printed cards and pages cannot show 鳥 子. A ? stands there in its place.");
        assertThat(desk.room().person("鳥子")).isEmpty();

        painted.press("answer.sure");

        assertThat(desk.room().person("鳥子")).isPresent();
    }

    @Test
    void itIsLeftWhereThatIsAnswered() {
        add("鳥子");
        painted.press("answer.no");

        assertThat(desk.room().person("鳥子")).isEmpty();
    }

    @Test
    void whoBearsSuchANameRecordsWithoutBeingAskedAgain() {
        add("鳥子");
        painted.press("answer.sure");
        painted.after(() -> {
            kiosk.pen().takenBy("鳥子");
            kiosk.pen()
                    .record(
                            new VisitDeed.Check("A2", Answer.WELL, How.HAND, Optional.empty(), Optional.empty()),
                            Message.of("shell.taken-back"));
        });

        assertThat(TestDesk.newest(desk, 1).get(0).answer()).contains(Answer.WELL);
    }

    @Test
    void aNoteWithSuchALetterIsAskedAboutToo() {
        long before = desk.room().head();
        painted.after(() -> kiosk.pen()
                .record(
                        List.of(RoomDeed.RoomSet.described(
                                Optional.of("Zoë's room"), Optional.empty(), Optional.empty())),
                        desk.today(),
                        Optional.of("as agreed 🐤"),
                        Message.of("shell.taken-back"),
                        room -> {}));

        assertThat(String.join(" ", painted.texts())).contains("cannot show 🐤.");
        assertThat(desk.room().head()).isEqualTo(before);
    }

    private void add(String name) {
        painted.after(() -> kiosk.pen()
                .record(
                        new RoomDeed.PersonAdded(name, Role.KEEPER, Optional.of("0555 0199")),
                        Message.of("shell.taken-back")));
    }
}
