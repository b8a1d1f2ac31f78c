package org.cagewall.kiosk.phone;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.cagewall.deed.VisitDeed;
import org.cagewall.desk.Desk;
import org.cagewall.kiosk.kit.list.RowFace;
import org.cagewall.kiosk.shell.Asking;
import org.cagewall.kiosk.shell.Destination;
import org.cagewall.kiosk.shell.Pen;
import org.cagewall.kiosk.shell.Refresher;
import org.cagewall.kiosk.shell.Shown;
import org.cagewall.room.Absence;
import org.cagewall.room.Agreement;
import org.cagewall.room.Cage;
import org.cagewall.room.Call;
import org.cagewall.room.CallMatter;
import org.cagewall.room.Reached;
import org.cagewall.room.Room;
import org.cagewall.room.care.LogEntry;
import org.cagewall.room.care.LogQuery;
import org.cagewall.tasks.Alarms;
import org.cagewall.tasks.Danger;
import org.cagewall.tasks.Unphoned;
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
    private final Destination.Phone here;
    private final Shown<PhoneState> shown;
    private final Refresher watch;
    private List<LogEntry> calls = List.of();

    public PhonePresenter(
            Desk desk, Pen pen, Asking asking, Words words, Destination.Phone here, Consumer<PhoneState> view) {
        this.desk = desk;
        this.pen = pen;
        this.asking = asking;
        this.words = words;
        this.here = here;
        this.watch = new Refresher(desk, this::refresh);
        this.shown = new Shown<>(state(), view);
    }

    Refresher watch() {
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
                words.say(alarms.phones().isEmpty() ? Message.of("phone.nobody") : noAnswer()),
                here.about().map(alarms::phones).orElse(alarms.phones()).stream()
                        .map(this::person)
                        .toList(),
                desk.room().agreedOn(desk.today()).stream().map(this::agreed).toList(),
                calls.stream().map(this::call).toList(),
                Optional.empty());
    }

    private Message noAnswer() {
        return here.about().map(Danger::noAnswer).orElse(Danger.NO_ANSWER);
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

    private PhoneState.Agreed agreed(Call call) {
        String said = words.say(call.agreement());
        return new PhoneState.Agreed(
                call.entry(),
                RowFace.of(
                        "",
                        call.cage()
                                .map(cage ->
                                        words.say("today.agreed-at", desk.room().cageName(cage), said))
                                .orElse(said),
                        call.note().orElseGet(() -> words.say(CallMatter.told(call.matter())))));
    }

    /** What was agreed holds no more. */
    void over(PhoneState.Agreed agreed) {
        pen.record(new VisitDeed.AgreementEnded(Math.toIntExact(agreed.call())), Message.of("phone.kept-over"));
    }

    private RowFace call(LogEntry entry) {
        String when = words.shortDay(entry.day())
                + entry.at().map(at -> " " + words.time(at)).orElse("");
        return RowFace.of("", words.say(entry.what()), words.say("phone.by", entry.by(), when));
    }

    void phoned(PhoneState.Person person) {
        shown.change(state -> state.telling(Optional.of(person)));
    }

    boolean isCallOpen() {
        return shown.now().call().isPresent();
    }

    void back() {
        shown.change(state -> state.telling(Optional.empty()));
    }

    /**
     * What was touched and written of a call.
     *
     * @param agreed what was agreed, by touch
     * @param lasts until when that holds
     * @param inWords what else there is to say
     */
    record Told(
            Optional<Reached> reached,
            Optional<CallMatter> about,
            Optional<String> cage,
            Optional<Agreement> agreed,
            Lasts lasts,
            String inWords) {}

    /** Until when something agreed holds. */
    enum Lasts {
        TODAY,
        TOMORROW,
        OWNER_BACK
    }

    /** What the call was about and what was agreed is told. */
    void tell(PhoneState.Person person, Told told) {
        if (told.about().isEmpty()
                || told.about().filter(about -> about == CallMatter.OTHER).isPresent()
                        && text(told.inWords()).isEmpty()) {
            asking.tell(Message.of("phone.about-what"), Message.of("phone.about-what-text"));
            return;
        }
        if (told.reached().isEmpty()) {
            asking.tell(Message.of("phone.reached-what"), Message.of("phone.reached-what-text"));
            return;
        }
        String who = person.name()
                .substring(0, Math.min(LONGEST_NAME, person.name().length()))
                .strip();
        Optional<String> agreed = told.agreed().map(Agreement::word);
        pen.record(
                List.of(new VisitDeed.Phoned(
                        told.cage(),
                        who,
                        told.about().orElse(CallMatter.OTHER).word(),
                        agreed,
                        told.reached(),
                        agreed.map(it -> lastDay(told.lasts())))),
                desk.today(),
                text(told.inWords()),
                Message.of("phone.kept-" + told.reached().orElse(Reached.SPOKE).word(), who),
                room -> back());
    }

    private LocalDate lastDay(Lasts lasts) {
        LocalDate today = desk.today();
        return switch (lasts) {
            case TODAY -> today;
            case TOMORROW -> today.plusDays(1);
            case OWNER_BACK -> desk.room().absenceOn(today).map(Absence::last).orElse(today);
        };
    }

    /** What the call is about, where one came from an alarm or a report. */
    Optional<CallMatter> about() {
        return here.about().map(Danger::matter);
    }

    Optional<String> cage() {
        return here.cage();
    }

    /** The cages of the walk, those that were reported and that nobody has phoned about first. */
    List<String> cages() {
        Room room = desk.room();
        List<String> reported = Unphoned.at(room, desk.today()).stream()
                .map(visit -> room.cageName(visit.cage()))
                .toList();
        return Stream.concat(reported.stream(), room.walk().map(Cage::name))
                .distinct()
                .toList();
    }

    private static Optional<String> text(String said) {
        return Optional.of(said.strip()).filter(it -> !it.isEmpty());
    }
}
