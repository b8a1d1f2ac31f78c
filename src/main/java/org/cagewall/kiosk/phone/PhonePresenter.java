package org.cagewall.kiosk.phone;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.cagewall.deed.VisitDeed;
import org.cagewall.desk.Desk;
import org.cagewall.kiosk.kit.RowFace;
import org.cagewall.kiosk.shell.Asking;
import org.cagewall.kiosk.shell.Pen;
import org.cagewall.kiosk.shell.Shown;
import org.cagewall.kiosk.shell.Watch;
import org.cagewall.room.LogEntry;
import org.cagewall.room.LogQuery;
import org.cagewall.tasks.Alarms;
import org.cagewall.tasks.Danger;
import org.cagewall.text.Message;
import org.cagewall.text.Words;

/** Shows whom to phone, and keeps what was said by phone. Used on the event thread. */
public final class PhonePresenter {

    private static final int DAYS_OF_CALLS = 21;
    private static final int MOST_CALLS = 4;
    private static final int LONGEST_NAME = 40;

    private final Desk desk;
    private final Pen pen;
    private final Asking asking;
    private final Words words;
    private final Optional<Danger> about;
    private final Shown<PhoneState> shown;
    private final Watch watch;
    private List<LogEntry> calls = List.of();

    public PhonePresenter(
            Desk desk, Pen pen, Asking asking, Words words, Optional<Danger> about, Consumer<PhoneState> view) {
        this.desk = desk;
        this.pen = pen;
        this.asking = asking;
        this.words = words;
        this.about = about;
        this.watch = new Watch(desk, this::refresh);
        this.shown = new Shown<>(state(), view);
    }

    Watch watch() {
        return watch;
    }

    private void refresh() {
        shown.change(state -> state().telling(state.call()));
        LocalDate today = desk.today();
        desk.log(LogQuery.between(today.minusDays(DAYS_OF_CALLS), today), pen.reading(this::keep));
    }

    private void keep(List<LogEntry> log) {
        calls = log.stream()
                .filter(entry -> entry.deed().equals("phoned") && !entry.isStruck())
                .limit(MOST_CALLS)
                .toList();
        shown.change(state -> state().telling(state.call()));
    }

    private PhoneState state() {
        Alarms alarms = Alarms.of(desk.room(), desk.today());
        return new PhoneState(
                words.say("phone.title"),
                words.say(alarms.phones().isEmpty() ? "phone.nobody" : "danger.next"),
                about.map(alarms::phones).orElse(alarms.phones()).stream()
                        .map(this::person)
                        .toList(),
                alarms.rules().stream().map(words::say).toList(),
                calls.stream().map(this::call).toList(),
                Optional.empty());
    }

    private PhoneState.Person person(Alarms.Phone phone) {
        String role = words.say("phone.who." + phone.who().name().toLowerCase(Locale.ROOT));
        String name = phone.name().isBlank() ? role : phone.name();
        boolean saysSo = name.toLowerCase(Locale.ROOT).contains(role.toLowerCase(Locale.ROOT));
        return new PhoneState.Person(
                name,
                phone.first()
                        .map(first -> words.say(
                                "phone.person-first", saysSo ? name : words.say("phone.person", name, role), first))
                        .orElse(saysSo ? name : words.say("phone.person", name, role)),
                phone.number().orElseGet(() -> words.say("phone.no-number")));
    }

    private RowFace call(LogEntry entry) {
        String when = words.shortDay(entry.day())
                + entry.at().map(at -> " " + words.time(at)).orElse("");
        return RowFace.of("", words.say(entry.what()), words.say("phone.by", entry.by(), when));
    }

    void phoned(PhoneState.Person person) {
        shown.change(state -> state.telling(Optional.of(person)));
    }

    void back() {
        shown.change(state -> state.telling(Optional.empty()));
    }

    /** What the call was about and what was agreed is told. */
    void tell(PhoneState.Person person, Optional<String> choice, String inWords, String agreed) {
        String about = Stream.concat(choice.stream(), text(inWords).stream()).collect(Collectors.joining(": "));
        if (about.isBlank()) {
            asking.tell(Message.of("phone.about-what"), Message.of("phone.about-what-text"));
            return;
        }
        String who = person.name()
                .substring(0, Math.min(LONGEST_NAME, person.name().length()))
                .strip();
        pen.record(
                List.of(new VisitDeed.Phoned(who, about, text(agreed))),
                desk.today(),
                Optional.empty(),
                Message.of("phone.kept", who),
                room -> back());
    }

    private static Optional<String> text(String said) {
        return Optional.of(said.strip()).filter(it -> !it.isEmpty());
    }
}
