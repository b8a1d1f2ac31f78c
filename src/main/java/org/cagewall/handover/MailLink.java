package org.cagewall.handover;

import java.util.List;
import java.util.stream.Collectors;

/**
 * A link that a phone opens as an e-mail to be sent (RFC 6068). Immutable; any thread.
 *
 * @param to addresses; none, where whoever sends it is to choose
 * @param headers subject, body and others, in their order
 */
public record MailLink(List<String> to, List<Header> headers) {

    /** RFC 6068, section 2: what may stand in a header as it is. */
    private static final String IN_HEADERS = "!$'()*+,;:@";

    /** RFC 6068, section 2, and RFC 5322, section 3.2.3: what may stand before the at sign as it is. */
    private static final String IN_NAMES = "!$'*+";

    /** One header of the message and what it says; a line break is a line feed, or a carriage return with one. */
    public record Header(String name, String value) {}

    public MailLink {
        to = List.copyOf(to);
        headers = List.copyOf(headers);
    }

    /** An e-mail whose address is chosen by whoever sends it. */
    public static MailLink toAnybody(String subject, String body) {
        return new MailLink(List.of(), List.of(new Header("subject", subject), new Header("body", body)));
    }

    /** The link, percent-encoded in UTF-8, with line breaks as %0D%0A. ASCII only. */
    public String text() {
        String addresses = to.stream().map(MailLink::address).collect(Collectors.joining(","));
        String said = headers.stream().map(MailLink::field).collect(Collectors.joining("&"));
        return "mailto:" + addresses + (said.isEmpty() ? "" : "?" + said);
    }

    private static String address(String address) {
        int at = address.lastIndexOf('@');
        if (at < 1) {
            throw new IllegalArgumentException("an e-mail address has an at sign: " + address);
        }
        return Percent.encoded(address.substring(0, at), IN_NAMES)
                + "@"
                + Percent.encoded(address.substring(at + 1), "");
    }

    private static String field(Header header) {
        String value = header.value().replaceAll("\r?\n", "\r\n");
        return Percent.encoded(header.name(), "") + "=" + Percent.encoded(value, IN_HEADERS);
    }
}
