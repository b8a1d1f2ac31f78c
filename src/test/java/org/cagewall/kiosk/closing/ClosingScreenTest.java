package org.cagewall.kiosk.closing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import javax.swing.text.JTextComponent;
import org.cagewall.kiosk.Painted;
import org.cagewall.kiosk.Sat;
import org.cagewall.kiosk.WithDaybook;
import org.cagewall.kiosk.shell.Destination;
import org.cagewall.kiosk.theme.TextSize;
import org.cagewall.tasks.ReadingGrade;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The end of a sitter's day. */
class ClosingScreenTest extends WithDaybook {

    @ParameterizedTest
    @EnumSource
    void whatIsLeftIsSaidAtEveryTextSize(TextSize size) {
        closing(size).png("closing-" + size).assertFit();
    }

    @Test
    void whyTheRestWasNotDoneIsToldOnceForAll() {
        Painted closing = closing(TextSize.NORMAL).press("say-why");
        closing.png("closing-why").assertFit().press("why.no-time").press("record");

        assertThat(book.lines("task-not-done")).hasSize(9).allMatch(line -> line.contains("I had no time"));
        closing.png("closing-done").assertFit();
        assertThat(closing.maybe("say-why")).isEmpty();
    }

    @Test
    void aNoteToTheOwnerIsAnEntry() {
        Painted closing = closing(TextSize.NORMAL);
        closing.after(() -> closing.find("note", JTextComponent.class).setText("The bin is half empty."));

        closing.press("keep-note");

        assertThat(book.lines("\"noted\""))
                .singleElement()
                .asString()
                .contains("The bin is half empty.", "\"by\":\"Tomas\"");
    }

    @Test
    void everySentenceHereIsPlain() {
        for (String key : List.of(
                "left-text",
                "done-text",
                "why",
                "why-title",
                "why-text",
                "last-look",
                "look.doors",
                "look.water",
                "look.bin",
                "look.lights",
                "note",
                "note-text",
                "noted")) {
            ReadingGrade.sentences(WORDS.say("closing." + key))
                    .forEach(sentence -> assertThat(ReadingGrade.ofSentence(sentence))
                            .as("the grade of: %s", sentence)
                            .isLessThanOrEqualTo(6));
        }
    }

    private Painted closing(TextSize size) {
        return Sat.at(
                book,
                size,
                "Tomas",
                new Destination.CloseTheDay(),
                (pen, stage) -> new ClosingScreen(book.desk(), pen, stage, stage, WORDS));
    }
}
