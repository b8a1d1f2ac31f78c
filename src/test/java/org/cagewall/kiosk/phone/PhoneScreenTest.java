package org.cagewall.kiosk.phone;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import javax.swing.text.JTextComponent;
import org.cagewall.kiosk.Painted;
import org.cagewall.kiosk.Sat;
import org.cagewall.kiosk.WithDaybook;
import org.cagewall.kiosk.kit.WrapLabel;
import org.cagewall.kiosk.shell.Destination;
import org.cagewall.kiosk.theme.TextSize;
import org.cagewall.tasks.Danger;
import org.cagewall.tasks.ReadingGrade;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Whom to phone, and a call that is kept. */
class PhoneScreenTest extends WithDaybook {

    private PhoneScreen screen;

    @BeforeEach
    void away() {
        inesIsAway();
    }

    @ParameterizedTest
    @EnumSource
    void theNumbersAreLargeAtEveryTextSize(TextSize size) {
        phone(size).png("phone-" + size).assertFit();
    }

    @Test
    void whereNobodyAtAllAnswersAnyVetIsPhonedForASickBirdAndTheSameAgainForAllElse() {
        assertThat(subtitle(phone(TextSize.LARGEST, Optional.of(Danger.ILL)).assertFit()))
                .endsWith("then any vet.");
        assertThat(subtitle(phone(TextSize.LARGEST, Optional.of(Danger.POWER)).assertFit()))
                .endsWith("then all again.");
    }

    private static String subtitle(Painted phone) {
        return phone.find("subtitle", WrapLabel.class).getText();
    }

    @Test
    void aCallAndWhatWasAgreedIsAnEntry() {
        Painted phone = phone(TextSize.NORMAL).press("phoned.Ines");
        phone.png("phone-call").assertFit();

        phone.press("reached.spoke")
                .press("about.ill")
                .press("cage.A1")
                .press("agreed.leave")
                .press("lasts.tomorrow")
                .after(() -> phone.find("in-words", JTextComponent.class).setText("A1 sits low"));
        phone.press("record");

        assertThat(book.lines("\"phoned\""))
                .singleElement()
                .asString()
                .contains(
                        "\"who\":\"Ines\"",
                        "\"cage\":\"A1\"",
                        "\"about\":\"ill\"",
                        "\"agreed\":\"leave\"",
                        "\"until\":\"2026-04-15\"",
                        "A1 sits low",
                        "\"by\":\"Tomas\"");
        phone.png("phone-kept").assertFit().press("phoned.Bird vet").press("back");
    }

    @ParameterizedTest
    @EnumSource
    void whatWasAgreedIsOverInOneTouchAndShowsNoMore(TextSize size) {
        book.tell("""
                {"deed":"phoned","cage":"A1","who":"Ines","about":"ill","agreed":"watch","until":"2026-04-17","by":"Tomas"}
                """);
        Painted phone = phone(size).png("phone-agreed-" + size).assertFit();
        String over = phone.names().stream()
                .filter(name -> name.startsWith("over."))
                .findFirst()
                .orElseThrow();
        assertThat(book.desk().room().agreedOn(book.desk().today())).hasSize(1);

        phone.press(over);

        assertThat(book.desk().room().agreedOn(book.desk().today())).isEmpty();
        assertThat(book.desk().room().agreedOn(book.desk().today().plusDays(1))).isEmpty();
        assertThat(phone.names()).doesNotContain(over);
        assertThat(book.desk().room().callsOn(book.desk().today()))
                .as("the call was made all the same")
                .hasSize(1);
    }

    @Test
    void whomTheOwnerNamedForAnIllBirdIsTheFirstToPhoneForOneAndForNothingElse() {
        book.tell("{\"deed\":\"room-set\",\"ill-first\":\"vet\",\"by\":\"Ines\"}");
        Painted usual = phone(TextSize.NORMAL, Optional.of(Danger.LOOSE));
        Painted urgent = phone(TextSize.NORMAL, Optional.of(Danger.ILL))
                .png("phone-vet-first")
                .assertFit();

        assertThat(people(usual)).containsExactly("phoned.Ines", "phoned.Joan", "phoned.Bird vet");
        assertThat(people(urgent)).containsExactly("phoned.Bird vet", "phoned.Ines", "phoned.Joan");
    }

    private static List<String> people(Painted phone) {
        return phone.names().stream().filter(name -> name.startsWith("phoned.")).toList();
    }

    @Test
    void aCallAboutNothingIsNotKept() {
        phone(TextSize.NORMAL).press("phoned.Joan").press("record").press("answer.ok");

        assertThat(book.lines("\"phoned\"")).isEmpty();
    }

    @Test
    void everySentenceHereIsPlain() {
        for (String key :
                List.of("nobody", "nobody-text", "about-title", "agreed", "about-what", "about-what-text", "when")) {
            ReadingGrade.sentences(WORDS.say("phone." + key, "Ines"))
                    .forEach(sentence -> assertThat(ReadingGrade.ofSentence(sentence))
                            .as("the grade of: %s", sentence)
                            .isLessThanOrEqualTo(6));
        }
    }

    @Test
    void aCardThatIsScannedOverACallAsksFirst() {
        Painted phone = phone(TextSize.NORMAL);
        assertThat(screen.isBegun()).isFalse();

        phone.press("phoned.Ines");

        assertThat(screen.isBegun()).isTrue();
    }

    private Painted phone(TextSize size) {
        return phone(size, Optional.empty());
    }

    private Painted phone(TextSize size, Optional<Danger> about) {
        return Sat.at(book, size, "Tomas", new Destination.Phone(about), (pen, stage) -> {
            screen = new PhoneScreen(book.desk(), pen, stage, stage, WORDS, new Destination.Phone(about));
            return screen;
        });
    }
}
