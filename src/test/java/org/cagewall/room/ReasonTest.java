package org.cagewall.room;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.stream.Stream;
import org.cagewall.text.Words;
import org.junit.jupiter.api.Test;

/** What the record holds as a name is told in the reader's words; what somebody wrote stands as it was written. */
class ReasonTest {

    private static final Words WORDS = Words.english();

    @Test
    void everyNameOfAReasonOrACallOrASightHasItsWords() {
        assertThat(Stream.of(Reason.values(), CallMatter.values(), Noticed.values())
                        .flatMap(Stream::of)
                        .map(WORDS::heading))
                .hasSizeGreaterThan(20)
                .noneMatch(word -> word.startsWith("["));
    }

    @Test
    void everyNameStandsInTheDocumentOfTheRecord() throws IOException {
        String document = Files.readString(Path.of("docs/record.md"));

        assertThat(Stream.concat(
                        Stream.of(Reason.values()).map(Reason::id),
                        Stream.of(CallMatter.values()).map(CallMatter::word)))
                .allMatch(name -> document.contains("`" + name + "`"));
    }

    @Test
    void aNameIsToldInWords() {
        assertThat(WORDS.say(Reason.told("no-time"))).isEqualTo("no time");
        assertThat(WORDS.say(CallMatter.told("ill"))).isEqualTo("a sick bird");
    }

    @Test
    void aSentenceOfAnEarlierVersionStandsAsItWasSaid() {
        assertThat(WORDS.say(Reason.told("I had no time"))).isEqualTo("I had no time");
        assertThat(WORDS.say(Reason.told("{0} of a pair's chicks"))).isEqualTo("{0} of a pair's chicks");
    }

    @Test
    void whatWasAddedFollowsTheReason() {
        assertThat(WORDS.say(Reason.told("not-sure", Optional.of("two dishes?"))))
                .isEqualTo("not sure how: two dishes?");
    }
}
