package org.cagewall.files;

import java.io.IOException;
import java.io.StringReader;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.text.ParseException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Optional;
import net.fortuna.ical4j.data.CalendarBuilder;
import net.fortuna.ical4j.data.CalendarOutputter;
import net.fortuna.ical4j.data.ParserException;
import net.fortuna.ical4j.model.Component;
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
import net.fortuna.ical4j.model.property.Status;
import net.fortuna.ical4j.model.property.Summary;
import net.fortuna.ical4j.model.property.Transp;
import net.fortuna.ical4j.model.property.Uid;
import net.fortuna.ical4j.model.property.Version;

/**
 * A calendar's text by RFC 5545, written and read back. Immutable; any thread.
 *
 * @param sequence the revision that all its events share
 */
record CalendarFile(List<CalendarEvent> events, long sequence) {

    private static final String MADE_BY = "-//Cagewall//Birdroom calendar//EN";

    static final CalendarFile NONE = new CalendarFile(List.of(), -1);

    CalendarFile {
        events = List.copyOf(events);
    }

    /** What an earlier file held; nothing, where the text is none of ours. */
    static CalendarFile read(String text) {
        try {
            List<VEvent> events =
                    new CalendarBuilder().build(new StringReader(text)).getComponents(Component.VEVENT);
            return new CalendarFile(
                    events.stream().map(CalendarFile::event).toList(),
                    events.stream().mapToLong(CalendarFile::sequence).max().orElse(NONE.sequence));
        } catch (IOException | ParserException | RuntimeException e) {
            return NONE;
        }
    }

    private static CalendarEvent event(VEvent event) {
        return new CalendarEvent(
                event.getUid().getValue(),
                event.getSummary().getValue(),
                Optional.ofNullable(event.getDescription()).map(Description::getValue),
                day(event.getStartDate().getDate()),
                day(event.getEndDate().getDate()).minusDays(1),
                Status.VEVENT_CANCELLED.equals(event.getStatus())
                        ? CalendarEvent.Standing.IS_OVER
                        : CalendarEvent.Standing.HOLDS);
    }

    private static long sequence(VEvent event) {
        return event.getSequence().getSequenceNo();
    }

    /** The text, with lines that end in CR LF. */
    String text(Instant stamp) {
        net.fortuna.ical4j.model.Calendar calendar = new net.fortuna.ical4j.model.Calendar();
        calendar.getProperties().add(new ProdId(MADE_BY));
        calendar.getProperties().add(Version.VERSION_2_0);
        events.forEach(event -> calendar.getComponents().add(event(event, stamp)));
        StringWriter text = new StringWriter();
        try {
            new CalendarOutputter().output(calendar, text);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return text.toString();
    }

    /** RFC 5545, 3.6.1: the day on which an event of whole days ends is no longer part of it; 3.8.1.11: its status. */
    private VEvent event(CalendarEvent event, Instant stamp) {
        VEvent written = new VEvent(false);
        PropertyList<Property> properties = written.getProperties();
        properties.add(new Uid(event.uid()));
        properties.add(new DtStamp(moment(stamp)));
        properties.add(new Sequence(Math.toIntExact(sequence)));
        properties.add(new DtStart(date(event.first())));
        properties.add(new DtEnd(date(event.last().plusDays(1))));
        properties.add(new Summary(event.summary()));
        event.description().ifPresent(text -> properties.add(new Description(text)));
        properties.add(Transp.TRANSPARENT);
        if (event.isOver()) {
            properties.add(Status.VEVENT_CANCELLED);
        }
        return written;
    }

    private static DateTime moment(Instant instant) {
        DateTime moment = new DateTime(instant.toEpochMilli());
        moment.setUtc(true);
        return moment;
    }

    private static Date date(LocalDate day) {
        try {
            return new Date(DateTimeFormatter.BASIC_ISO_DATE.format(day));
        } catch (ParseException e) {
            throw new IllegalStateException(e);
        }
    }

    private static LocalDate day(Date date) {
        return LocalDate.parse(date.toString(), DateTimeFormatter.BASIC_ISO_DATE);
    }
}
