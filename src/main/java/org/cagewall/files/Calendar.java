package org.cagewall.files;

import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.text.ParseException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import net.fortuna.ical4j.data.CalendarOutputter;
import net.fortuna.ical4j.model.Date;
import net.fortuna.ical4j.model.DateTime;
import net.fortuna.ical4j.model.Property;
import net.fortuna.ical4j.model.PropertyList;
import net.fortuna.ical4j.model.component.VEvent;
import net.fortuna.ical4j.model.property.Description;
import net.fortuna.ical4j.model.property.DtEnd;
import net.fortuna.ical4j.model.property.DtStamp;
import net.fortuna.ical4j.model.property.DtStart;
import net.fortuna.ical4j.model.property.ProdId;
import net.fortuna.ical4j.model.property.Sequence;
import net.fortuna.ical4j.model.property.Summary;
import net.fortuna.ical4j.model.property.Transp;
import net.fortuna.ical4j.model.property.Uid;
import net.fortuna.ical4j.model.property.Version;
import org.cagewall.room.Room;
import org.cagewall.text.Message;

/**
 * The room's days as a phone's calendar reads them (RFC 5545): whole days, and the same names in every file, so that a
 * later import changes what an earlier one brought. Pure; any thread.
 */
public final class Calendar {

    /** The file that a whole export holds. */
    public static final String FILE = "calendar.ics";

    private static final String MADE_BY = "-//Cagewall//Birdroom calendar//EN";

    private Calendar() {}

    /**
     * The calendar as text with CR LF; empty where there is nothing to show, since RFC 5545 knows no empty calendar.
     *
     * @param room the room as it stands; the number of its last entry is the sequence of every event
     * @param today for which the open tasks are listed
     * @param stamp when the record was last written to, or when the calendar is made
     * @param words the reader's language
     */
    public static Optional<String> of(Room room, LocalDate today, Instant stamp, Function<Message, String> words) {
        List<CalendarEntry> entries = new CalendarEntries(room, today).all();
        if (entries.isEmpty()) {
            return Optional.empty();
        }
        net.fortuna.ical4j.model.Calendar calendar = new net.fortuna.ical4j.model.Calendar();
        calendar.getProperties().add(new ProdId(MADE_BY));
        calendar.getProperties().add(Version.VERSION_2_0);
        entries.forEach(entry -> calendar.getComponents().add(event(entry, room.head(), stamp, words)));
        return Optional.of(written(calendar));
    }

    /** RFC 5545, 3.6.1: the day on which an event of whole days ends is no longer part of it. */
    private static VEvent event(CalendarEntry entry, long head, Instant stamp, Function<Message, String> words) {
        VEvent event = new VEvent(false);
        PropertyList<Property> properties = event.getProperties();
        properties.add(new Uid(entry.uid()));
        properties.add(new DtStamp(moment(stamp)));
        properties.add(new Sequence(Math.toIntExact(head)));
        properties.add(new DtStart(day(entry.first())));
        properties.add(new DtEnd(day(entry.last().plusDays(1))));
        properties.add(new Summary(words.apply(entry.summary())));
        entry.description().map(words).ifPresent(text -> properties.add(new Description(text)));
        properties.add(Transp.TRANSPARENT);
        return event;
    }

    private static DateTime moment(Instant instant) {
        DateTime moment = new DateTime(instant.toEpochMilli());
        moment.setUtc(true);
        return moment;
    }

    private static Date day(LocalDate day) {
        try {
            return new Date(DateTimeFormatter.BASIC_ISO_DATE.format(day));
        } catch (ParseException e) {
            throw new IllegalStateException(e);
        }
    }

    private static String written(net.fortuna.ical4j.model.Calendar calendar) {
        StringWriter text = new StringWriter();
        try {
            new CalendarOutputter().output(calendar, text);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return text.toString();
    }
}
