package org.cagewall.desk;

import java.security.SecureRandom;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.BiFunction;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Supplier;
import org.cagewall.deed.CardDeed;
import org.cagewall.deed.Circumstances;
import org.cagewall.deed.Line;
import org.cagewall.room.Room;
import org.cagewall.room.care.LogEntry;
import org.cagewall.room.care.LogQuery;
import org.cagewall.store.Endings;
import org.cagewall.store.Recording;
import org.cagewall.store.Store;
import org.cagewall.store.StoreProblem;
import org.cagewall.text.Message;

/**
 * The only writer: takes deeds, has them recorded in one transaction, and hands every listener the new room. Calls may
 * come from any thread and return at once; answers arrive where the lanes say.
 */
public final class Desk implements AutoCloseable {

    private static final String CODE_CHARACTERS = "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ";

    private final DataFolder folder;
    private final Store store;
    private final Lanes lanes;
    private final Clocks clocks;
    private final Failures failures;
    private final List<Consumer<Room>> listeners = new CopyOnWriteArrayList<>();
    private final AtomicLong newestStudy = new AtomicLong();
    private final Supplier<OptionalLong> free;
    private volatile Room room;

    private Desk(DataFolder folder, Store store, Lanes lanes, Clocks clocks, Supplier<OptionalLong> free, Room room) {
        this.folder = folder;
        this.store = store;
        this.lanes = lanes;
        this.clocks = clocks;
        this.free = free;
        this.room = room;
        this.failures = new Failures();
    }

    /**
     * Opens the birdroom in the folder, and makes one where there is none. Blocks; not for the event thread.
     *
     * @throws Unopened when it cannot be opened, with the reason as a sentence
     */
    public static Desk open(DataFolder folder, Lanes lanes, Clocks clocks) {
        return open(folder, lanes, clocks, folder::free);
    }

    /** The same, asking here how many bytes may still be written. */
    static Desk open(DataFolder folder, Lanes lanes, Clocks clocks, Supplier<OptionalLong> free) {
        return open(folder, lanes, clocks, free, Desk::firstRoom);
    }

    /**
     * The same, but with the room as it was kept when the birdroom was last closed, where nothing has been recorded
     * since: so it can be shown at once. Whoever opens it so calls {@link #readAnew} when there is time.
     */
    public static Desk openAtAGlance(DataFolder folder, Lanes lanes, Clocks clocks) {
        return open(folder, lanes, clocks, folder::free, (store, its) -> store.glance(its::today)
                .orElseGet(() -> firstRoom(store, its)));
    }

    private static Desk open(
            DataFolder folder,
            Lanes lanes,
            Clocks clocks,
            Supplier<OptionalLong> free,
            BiFunction<Store, Clocks, Room> firstRoom) {
        Store.keepEngineLogIn(folder.logs().resolve("engine.log"));
        try {
            folder.tellWhatWasTightened();
            Archive.clearAway(folder);
            if (!DataFolder.holdsARoom(folder.path())) {
                Store.create(folder.record(), newCode(), ZoneId.systemDefault().getId());
            }
            Store store = Store.open(
                    folder.record(), reading -> Archive.write(new Book(reading), folder.backupBeforeUpdate()));
            try {
                return new Desk(folder, store, lanes, clocks, free, firstRoom.apply(store, clocks));
            } catch (RuntimeException e) {
                Endings.after(e, store::close);
                throw e;
            }
        } catch (RuntimeException e) {
            Endings.after(e, () -> Endings.all(lanes::close, folder::close));
            throw unopened(folder, e);
        }
    }

    /** What broke goes to the log; a plain refusal, such as a record of a newer version, has nothing more to tell. */
    private static Unopened unopened(DataFolder folder, RuntimeException e) {
        boolean refused = e instanceof StoreProblem && e.getCause() == null;
        if (!refused) {
            new Failures().keep("open", e);
        }
        return new Unopened(
                reason(e).orElse(Message.of("store.cannot-open", folder.path().toString())));
    }

    private static Optional<Message> reason(RuntimeException e) {
        if (e instanceof StoreProblem problem) {
            return Optional.of(problem.why());
        }
        return e instanceof DataFolder.Unavailable unavailable ? Optional.of(unavailable.why()) : Optional.empty();
    }

    private static Room firstRoom(Store store, Clocks clocks) {
        ZoneId zone = ZoneId.of(store.origin().zone());
        Room room = store.room(clocks.today(zone));
        LocalDate today = clocks.today(room.settings().zone());
        return today.equals(room.day()) ? room : store.room(today);
    }

    private static String newCode() {
        SecureRandom random = new SecureRandom();
        StringBuilder code = new StringBuilder();
        for (int i = 0; i < 3; i++) {
            code.append(CODE_CHARACTERS.charAt(random.nextInt(CODE_CHARACTERS.length())));
        }
        return code.toString();
    }

    public DataFolder folder() {
        return folder;
    }

    public Failures failures() {
        return failures;
    }

    /** The room as it was after the last deed. */
    public Room room() {
        return room;
    }

    public LocalDate today() {
        return clocks.today(room.settings().zone());
    }

    /** This very moment, to measure how long something takes. */
    public Instant instant() {
        return clocks.instant();
    }

    /** The time of day in the room, to the minute. */
    public LocalTime time() {
        return clocks.time(room.settings().zone());
    }

    /** From now on the listener gets each new room, where answers arrive. */
    public void listen(Consumer<Room> listener) {
        listeners.add(listener);
    }

    public void ignore(Consumer<Room> listener) {
        listeners.remove(listener);
    }

    /** Records the deeds of one touch, all or none. */
    public void record(List<Line> lines, Consumer<Outcome> answer) {
        lanes.record().execute(() -> {
            Outcome outcome = recordNow(lines);
            lanes.answers().execute(() -> answer.accept(outcome));
        });
    }

    public void record(Line line, Consumer<Outcome> answer) {
        record(List.of(line), answer);
    }

    private Outcome recordNow(List<Line> lines) {
        try {
            Recording recording = recorded(lines);
            if (recording instanceof Recording.Done done) {
                publish(done.room());
                return new Outcome.Done(done.entries(), done.room());
            }
            if (recording instanceof Recording.Asks asks) {
                return new Outcome.Asks(asks.index(), asks.question());
            }
            Recording.Refused refused = (Recording.Refused) recording;
            return new Outcome.Refused(refused.index(), refused.reason());
        } catch (StoreProblem e) {
            return unwritten(e, e.why());
        } catch (DataFolder.Unavailable e) {
            return unwritten(e, e.why());
        } catch (RuntimeException e) {
            return new Outcome.Failed(failures.keep("record", e));
        }
    }

    /** Nothing counts as recorded before it is seen that the folder which took it is still the one at its place. */
    private Recording recorded(List<Line> lines) {
        folder.requireInPlace();
        Recording recording = store.record(room, lines, today(), clocks.instant());
        folder.requireInPlace();
        return recording;
    }

    private Outcome unwritten(RuntimeException failure, Message why) {
        store.letGo(failure);
        return new Outcome.Unwritten(why, failures.keep("record", failure));
    }

    /** Strikes out everything that was recorded by one touch, the last of it first. */
    public void undo(long touch, String by, String why, Consumer<Outcome> answer) {
        lanes.record().execute(() -> {
            Outcome outcome = undoNow(touch, by, why);
            lanes.answers().execute(() -> answer.accept(outcome));
        });
    }

    private Outcome undoNow(long touch, String by, String why) {
        try {
            List<Line> strikes = new ArrayList<>();
            store.read(reading -> reading.touch(touch)).stream()
                    .sorted(Comparator.comparing(LogEntry::number).reversed())
                    .filter(entry -> !entry.isStruck())
                    .forEach(entry -> strikes.add(new Line(
                            new CardDeed.StruckOut(Math.toIntExact(entry.number()), why),
                            Circumstances.on(today(), by))));
            return strikes.isEmpty() ? new Outcome.Refused(0, Message.of("desk.nothing-to-undo")) : recordNow(strikes);
        } catch (RuntimeException e) {
            return new Outcome.Failed(failures.keep("undo", e));
        }
    }

    /** The entries asked for, the newest first: what a touch needs. */
    public void log(LogQuery query, Consumer<Reading<List<LogEntry>>> answer) {
        lanes.record().execute(() -> {
            Reading<List<LogEntry>> entries = reading("log", book -> book.log(query));
            lanes.answers().execute(() -> answer.accept(entries));
        });
    }

    /** A long reading. Only the newest one asked for gets its answer; those overtaken are dropped. */
    public <T> void study(Function<Book, T> use, Consumer<Reading<T>> answer) {
        long number = newestStudy.incrementAndGet();
        lanes.study().execute(() -> {
            if (number != newestStudy.get()) {
                return;
            }
            Reading<T> result = reading("study", use);
            lanes.answers().execute(() -> {
                if (number == newestStudy.get()) {
                    answer.accept(result);
                }
            });
        });
    }

    /** A long job, such as a backup, a document or a print. Unlike a study it is never overtaken: its answer comes. */
    public <T> void work(Function<Book, T> job, Consumer<Reading<T>> answer) {
        lanes.study().execute(() -> {
            Reading<T> result = reading("work", job);
            lanes.answers().execute(() -> answer.accept(result));
        });
    }

    /** The same for a job that tells how far it has come; that, too, arrives where answers do. */
    public <P, T> void work(BiFunction<Book, Consumer<P>, T> job, Consumer<P> progress, Consumer<Reading<T>> answer) {
        work(book -> job.apply(book, step -> lanes.answers().execute(() -> progress.accept(step))), answer);
    }

    /** How much may still be written on the disk of the record; no answer where the system does not say. */
    public void space(Consumer<Space> answer) {
        lanes.record().execute(() -> free.get().ifPresent(bytes -> {
            Space space = Space.of(bytes, room.settings().leastSpace());
            lanes.answers().execute(() -> answer.accept(space));
        }));
    }

    /** Decodes a picture aside, so that nothing waits for it. */
    public <T> void decode(Supplier<T> work, Consumer<Reading<T>> answer) {
        lanes.frames().execute(() -> {
            Reading<T> result = attempt("decode", work);
            lanes.answers().execute(() -> answer.accept(result));
        });
    }

    /** A picture that is too much for the memory, or a driver that lacks a part, is a failure like any other. */
    private <T> Reading<T> attempt(String where, Supplier<T> work) {
        try {
            return new Reading.Got<>(work.get());
        } catch (RuntimeException | OutOfMemoryError | LinkageError e) {
            return new Reading.Failed<>(failures.keep(where, e));
        }
    }

    private <T> Reading<T> reading(String where, Function<Book, T> use) {
        try {
            return new Reading.Got<>(store.read(reading -> use.apply(new Book(reading))));
        } catch (StoreProblem e) {
            failures.keep(where, e);
            return new Reading.Refused<>(e.why());
        } catch (DataFolder.Unavailable e) {
            return new Reading.Refused<>(e.why());
        } catch (RuntimeException e) {
            return new Reading.Failed<>(failures.keep(where, e));
        }
    }

    /** Reads the room anew where the day has changed; the kiosk asks every so often. */
    public void turnTheDay() {
        if (!today().equals(room.day())) {
            readAnew();
        }
    }

    /** Reads the whole room from the record, and hands it on where it is not what was known. */
    public void readAnew() {
        lanes.record().execute(() -> {
            try {
                Room read = store.room(today());
                if (!read.equals(room)) {
                    publish(read);
                }
                store.keep(read);
            } catch (RuntimeException e) {
                failures.keep("day", e);
            }
        });
    }

    private void publish(Room next) {
        room = next;
        lanes.answers().execute(() -> listeners.forEach(listener -> listener.accept(next)));
    }

    /**
     * Ends the lanes, shuts the record in good order and gives the folder free, each whatever became of the others.
     *
     * @throws DataFolder.Unavailable when the record did not end in good order
     */
    @Override
    public void close() {
        try {
            Endings.all(lanes::close, this::keepGlance, store::close, folder::close);
        } catch (StoreProblem e) {
            failures.keep("close", e);
            throw new DataFolder.Unavailable(e.why());
        }
    }

    private void keepGlance() {
        try {
            folder.requireInPlace();
            store.keep(room);
        } catch (StoreProblem | DataFolder.Unavailable e) {
            failures.keep("close", e);
        }
    }

    /** The birdroom cannot be opened, and why. */
    public static final class Unopened extends RuntimeException {

        private static final long serialVersionUID = 1;

        private final transient Message why;

        Unopened(Message why) {
            super(why.key());
            this.why = why;
        }

        public Message why() {
            return why;
        }
    }
}
