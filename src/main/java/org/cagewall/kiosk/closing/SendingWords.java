package org.cagewall.kiosk.closing;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.cagewall.cards.Symbols;
import org.cagewall.handover.DayNote;
import org.cagewall.handover.InParts;
import org.cagewall.handover.MailLink;
import org.cagewall.handover.SmsLink;
import org.cagewall.room.Person;
import org.cagewall.room.Room;
import org.cagewall.text.Words;

/** Puts the note of a day into messages whose links fit into symbols. Used on the event thread, free of Swing. */
final class SendingWords {

    private final Room room;
    private final Words words;

    SendingWords(Room room, Words words) {
        this.room = room;
        this.words = words;
    }

    /** As a text message where the owner's number is known, and as an e-mail whose address the phone asks for. */
    List<ClosingState.Way> ways(DayNote note) {
        List<String> text =
                note.sentences().stream().map(words::say).map(this::capital).toList();
        List<ClosingState.Way> ways = new ArrayList<>();
        Optional<String> written = room.owner().flatMap(Person::phone);
        Optional<String> number = written.flatMap(SmsLink::number);
        number.ifPresent(dialled -> ways.add(way(
                "text-message",
                words.say("closing.to", room.owner().map(Person::name).orElse(""), written.orElse(dialled)),
                text,
                part -> new SmsLink(List.of(dialled), part).text())));
        String subject = words.say("daynote.subject", note.day());
        ways.add(way(
                "e-mail",
                words.say(number.isPresent() ? "closing.to-anybody" : "closing.to-anybody-since"),
                text,
                part -> MailLink.toAnybody(subject, part).text()));
        return ways;
    }

    private ClosingState.Way way(String name, String to, List<String> text, UnaryOperator<String> link) {
        List<ClosingState.Part> parts = InParts.of(text, part -> Symbols.holds(link.apply(part))).stream()
                .map(part -> new ClosingState.Part(part, link.apply(part)))
                .toList();
        return new ClosingState.Way(name, words.say("closing.way." + name), to, parts);
    }

    private String capital(String sentence) {
        return sentence.substring(0, 1).toUpperCase(Locale.ROOT) + sentence.substring(1);
    }
}
