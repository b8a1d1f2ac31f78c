package org.cagewall.kiosk.handover;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.cagewall.deed.AwayDeed;
import org.cagewall.deed.Deed;
import org.cagewall.deed.VisitDeed;
import org.cagewall.desk.Desk;
import org.cagewall.handover.Review;
import org.cagewall.kiosk.shell.Asking;
import org.cagewall.kiosk.shell.Destination;
import org.cagewall.kiosk.shell.Navigator;
import org.cagewall.kiosk.shell.Notices;
import org.cagewall.kiosk.shell.Pen;
import org.cagewall.kiosk.shell.Shown;
import org.cagewall.room.Absence;
import org.cagewall.room.Role;
import org.cagewall.room.Room;
import org.cagewall.room.care.How;
import org.cagewall.room.care.LogEntry;
import org.cagewall.room.care.LogQuery;
import org.cagewall.tasks.Audience;
import org.cagewall.tasks.DailyList;
import org.cagewall.tasks.Kind;
import org.cagewall.tasks.Task;
import org.cagewall.text.Message;
import org.cagewall.text.Words;

/** Has what happened on days away read and ticked. Free of Swing; used on the event thread. */
final class ReviewActs {

    /** What the owner reads where no days away lie behind: the last n days. */
    private static final int DAYS_READ = 7;

    private final Desk desk;
    private final Pen pen;
    private final Navigator navigator;
    private final Asking asking;
    private final Notices notices;
    private final Words words;
    private final Shown<HandoverState> shown;
    private HandoverState.View view = new HandoverState.AtAGlance();
    private List<LogEntry> log = List.of();

    ReviewActs(
            Desk desk,
            Pen pen,
            Navigator navigator,
            Asking asking,
            Notices notices,
            Words words,
            Shown<HandoverState> shown) {
        this.desk = desk;
        this.pen = pen;
        this.navigator = navigator;
        this.asking = asking;
        this.notices = notices;
        this.words = words;
        this.shown = shown;
    }

    private record Days(LocalDate from, LocalDate to) {}

    private Days days() {
        Room room = desk.room();
        LocalDate today = desk.today();
        return room.absenceOn(today)
                .map(away -> new Days(away.from(), today))
                .or(() -> room.absenceBefore(today)
                        .filter(Absence::cameAbout)
                        .map(away -> new Days(away.from(), away.last())))
                .orElseGet(() -> new Days(today.minusDays(DAYS_READ - 1L), today));
    }

    /** Whether days away are over and not wholly read. */
    static boolean waits(Room room, LocalDate today) {
        return backTask(room, today).findAny().isPresent();
    }

    private static Stream<Task> backTask(Room room, LocalDate today) {
        return DailyList.of(room, today, Audience.OWNER).stream()
                .filter(task -> task.kind() == Kind.BACK && task.isOpen());
    }

    /** Shows it from its beginning, once it is read. */
    void open() {
        view = new HandoverState.AtAGlance();
        read();
    }

    /** Reads anew what was recorded of those days. */
    void read() {
        Days days = days();
        desk.study(
                book -> book.log(LogQuery.between(days.from(), days.to())),
                answer -> answer.then(this::keep, this::refused, notices::failed));
    }

    private void keep(List<LogEntry> entries) {
        log = entries;
        if (shown.now().tab() == HandoverState.Tab.WHAT_HAPPENED) {
            show();
        }
    }

    private void refused(Message why) {
        asking.tell(Message.of("handover.not-read"), why);
    }

    private void show() {
        Days days = days();
        Review review = Review.of(desk.room(), log, days.from(), days.to());
        ReviewWords say = new ReviewWords(words, desk.room(), desk.today());
        if (view instanceof HandoverState.OneCage one) {
            view = say.cage(review, one.cage());
        }
        HandoverState.Reading none =
                waits(desk.room(), desk.today()) ? HandoverState.Reading.TO_READ : HandoverState.Reading.ALL_READ;
        HandoverState.Happened page = say.happened(review, view);
        shown.change(state -> new HandoverState(
                words.say("handover.title"),
                words.say("handover.read-days", words.shortDay(days.from()), words.shortDay(days.to())),
                HandoverState.Tab.WHAT_HAPPENED,
                page.unread() > 0 ? page : page.in(none)));
    }

    // ------------------------------------------------------------------ what is looked at

    void glance() {
        look(new HandoverState.AtAGlance());
    }

    /** Every line, from this section on. */
    void lines(String section) {
        look(new HandoverState.LineByLine(section));
    }

    /** All that happened at one cage. */
    void cage(String name) {
        look(new HandoverState.OneCage(name, "", List.of()));
    }

    private void look(HandoverState.View other) {
        view = other;
        show();
    }

    void openCage(String name) {
        navigator.go(Destination.Cage.byHand(name));
    }

    // ------------------------------------------------------------------ what is ticked

    /** A line was touched. */
    void touch(HandoverState.Row row) {
        if (row.touch() instanceof HandoverState.Go go) {
            navigator.go(go.to());
        } else if (row.touch() instanceof HandoverState.Tick tick
                && shown.now().page() instanceof HandoverState.Happened happened) {
            List<Deed> deeds = new ArrayList<>(seen(tick).toList());
            int read = deeds.size();
            if (deeds.containsAll(unread(happened))) {
                deeds.addAll(back());
            }
            record(deeds, Message.of("handover.ticked", read));
        }
    }

    void tickAll() {
        if (shown.now().page() instanceof HandoverState.Happened happened) {
            List<Deed> deeds = new ArrayList<>(unread(happened));
            deeds.addAll(back());
            if (pen.holder().filter(person -> person.role() != Role.SITTER).isPresent()) {
                shown.change(state -> new HandoverState(
                        state.title(), state.subtitle(), state.tab(), happened.in(HandoverState.Reading.TICKING)));
            }
            record(deeds, Message.of("handover.all-ticked"));
        }
    }

    private static List<Deed> unread(HandoverState.Happened happened) {
        return happened.sections().stream()
                .flatMap(section -> section.rows().stream())
                .filter(row -> row.touch() instanceof HandoverState.Tick)
                .flatMap(row -> seen((HandoverState.Tick) row.touch()))
                .distinct()
                .toList();
    }

    private void record(List<Deed> deeds, Message done) {
        pen.record(deeds, desk.today(), Optional.empty(), done, room -> {});
    }

    private static Stream<Deed> seen(HandoverState.Tick tick) {
        return Stream.concat(
                tick.entries().stream().map(entry -> new AwayDeed.EntrySeen(Math.toIntExact(entry))),
                tick.days().stream().map(ReviewActs::done));
    }

    /** With the last line the days away are read. */
    private List<Deed> back() {
        return backTask(desk.room(), desk.today())
                .map(Task::id)
                .map(ReviewActs::done)
                .toList();
    }

    private static Deed done(String task) {
        return new VisitDeed.TaskDone(task, Optional.of(How.HAND));
    }
}
