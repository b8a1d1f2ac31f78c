package org.cagewall.handover;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.net.URI;
import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.cagewall.handover.MailLink.Header;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Links that a phone turns into a message, held to the documents that define them. */
class LinksTest {

    /** RFC 5724, section 2.5: all its examples. */
    static Stream<Arguments> textMessages() {
        return Stream.of(
                Arguments.of("sms:+15105550101", new SmsLink(List.of("+15105550101"), "")),
                Arguments.of("sms:+15105550101,+15105550102", new SmsLink(List.of("+15105550101", "+15105550102"), "")),
                Arguments.of(
                        "sms:+15105550101?body=hello%20there", new SmsLink(List.of("+15105550101"), "hello there")));
    }

    @ParameterizedTest
    @MethodSource("textMessages")
    void aTextMessageIsWrittenAsItsStandardShows(String written, SmsLink link) {
        assertThat(link.text()).isEqualTo(written);
    }

    /** RFC 6068, sections 6.1, 6.2 and 6.3: its examples as links, those inside a page of HTML left out. */
    static Stream<Arguments> mails() {
        return Stream.of(
                mail("mailto:chris@example.com", "chris@example.com"),
                mail(
                        "mailto:infobot@example.com?subject=current-issue",
                        "infobot@example.com",
                        "subject",
                        "current-issue"),
                mail(
                        "mailto:infobot@example.com?body=send%20current-issue",
                        "infobot@example.com", "body", "send current-issue"),
                mail(
                        "mailto:infobot@example.com?body=send%20current-issue%0D%0Asend%20index",
                        "infobot@example.com", "body", "send current-issue\r\nsend index"),
                mail(
                        "mailto:list@example.org?In-Reply-To=%3C3469A91.D10AF4C@example.com%3E",
                        "list@example.org", "In-Reply-To", "<3469A91.D10AF4C@example.com>"),
                mail(
                        "mailto:majordomo@example.com?body=subscribe%20bamboo-l",
                        "majordomo@example.com", "body", "subscribe bamboo-l"),
                mail(
                        "mailto:joe@example.com?cc=bob@example.com&body=hello",
                        "joe@example.com",
                        "cc",
                        "bob@example.com",
                        "body",
                        "hello"),
                mail("mailto:gorby%25kremvax@example.com", "gorby%kremvax@example.com"),
                mail("mailto:unlikely%3Faddress@example.com?blat=foop", "unlikely?address@example.com", "blat", "foop"),
                mail("mailto:Mike%26family@example.org", "Mike&family@example.org"),
                mail("mailto:%22not%40me%22@example.org", "\"not@me\"@example.org"),
                mail("mailto:%22oh%5C%5Cno%22@example.org", "\"oh\\\\no\"@example.org"),
                mail(
                        "mailto:%22%5C%5C%5C%22it's%5C%20ugly%5C%5C%5C%22%22@example.org",
                        "\"\\\\\\\"it's\\ ugly\\\\\\\"\"@example.org"),
                mail("mailto:user@example.org?subject=caf%C3%A9", "user@example.org", "subject", "caf\u00e9"),
                mail(
                        "mailto:user@example.org?subject=%3D%3Futf-8%3FQ%3Fcaf%3DC3%3DA9%3F%3D",
                        "user@example.org", "subject", "=?utf-8?Q?caf=C3=A9?="),
                mail(
                        "mailto:user@example.org?subject=%3D%3Fiso-8859-1%3FQ%3Fcaf%3DE9%3F%3D",
                        "user@example.org", "subject", "=?iso-8859-1?Q?caf=E9?="),
                mail(
                        "mailto:user@example.org?subject=caf%C3%A9&body=caf%C3%A9",
                        "user@example.org", "subject", "caf\u00e9", "body", "caf\u00e9"),
                mail(
                        "mailto:user@%E7%B4%8D%E8%B1%86.example.org?subject=Test&body=NATTO",
                        "user@\u7d0d\u8c46.example.org", "subject", "Test", "body", "NATTO"));
    }

    private static Arguments mail(String written, String to, String... headers) {
        List<Header> pairs = Stream.iterate(0, i -> i + 2)
                .limit(headers.length / 2)
                .map(i -> new Header(headers[i], headers[i + 1]))
                .toList();
        return Arguments.of(written, new MailLink(List.of(to), pairs));
    }

    @ParameterizedTest
    @MethodSource("mails")
    void anEMailIsWrittenAsItsStandardShows(String written, MailLink link) {
        assertThat(link.text()).isEqualTo(written);
    }

    /** RFC 6068, section 2: the part before the question mark may be empty. */
    @Test
    void anEMailToAnybodyHasNoAddress() {
        assertThat(MailLink.toAnybody("The birds", "a\nb").text())
                .isEqualTo("mailto:?subject=The%20birds&body=a%0D%0Ab");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "A1 & A2: 100% + \"fine\" = 2?",
                "caf\u00e9 \u7d0d\u8c46 \ud83d\udc26",
                "#,;:@/[]\\<>{}|^`",
                "a+b",
                "M\u00e4use, 30 \u00b0C!"
            })
    void whatIsSaidComesBackByAnotherHand(String said) {
        String sms = new SmsLink(List.of("+15105550101"), said).text();
        String mail = MailLink.toAnybody(said, said).text();

        assertThat(List.of(sms, mail)).allSatisfy(link -> {
            assertThat(link).isEqualTo(URI.create(link).toASCIIString());
            String fields = link.substring(link.indexOf('?') + 1).replace("+", "%2B");
            assertThat(Arrays.stream(fields.split("&"))
                            .map(field -> field.substring(field.indexOf('=') + 1))
                            .map(value -> URLDecoder.decode(value, StandardCharsets.UTF_8)))
                    .containsOnly(said);
        });
    }

    /** RFC 3966, section 5.1.1: what people write between digits says nothing. The zero in brackets: common practice, no source. */
    @ParameterizedTest
    @CsvSource({
        "0555 0142, 05550142",
        "+1-510-555-0101, +15105550101",
        "+44 (0)20 7946 0018, +442079460018",
        "(0555) 0142, 05550142",
        "mobile 0555/0142, 05550142",
        "+1 (510) 555-0101 after six, +15105550101"
    })
    void aNumberIsDialledWithoutWhatStandsBetweenItsDigits(String written, String dialled) {
        assertThat(SmsLink.number(written)).contains(dialled);
    }

    @Test
    void aTextWithoutANumberGivesNone() {
        assertThat(SmsLink.number("ask Joan")).isEmpty();
        assertThatThrownBy(() -> new SmsLink(List.of(), "hello")).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new SmsLink(List.of("05 55"), "hello")).isInstanceOf(IllegalArgumentException.class);
    }
}
