package org.cagewall.store;

import java.io.IOException;
import java.nio.file.Path;
import java.sql.SQLException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.LongConsumer;
import org.cagewall.deed.CardDeed;
import org.cagewall.deed.Deed;
import org.cagewall.deed.Fact;
import org.cagewall.deed.Line;
import org.cagewall.deed.Lines;
import org.cagewall.deed.Rules;
import org.cagewall.deed.Ruling;
import org.cagewall.deed.Scene;
import org.cagewall.deed.Standing;
import org.cagewall.room.Room;
import org.cagewall.room.bird.Bird;
import org.cagewall.room.care.LogEntry;
import org.cagewall.room.care.LogQuery;
import org.cagewall.text.Message;

/**
 * The record on embedded Derby: entries that are only ever inserted, and the live facts that follow from them. Recording
 * uses one connection and belongs to one thread; every reading opens a connection of its own and may run on another.
 */
public final class Store implements AutoCloseable {

    private final String url;
    private final Optional<Glance> glance;
    private final List<SameFile> files;
    private Optional<Session> recording = Optional.empty();
    private Optional<End> last = Optional.empty();
    private final KeptPairs keptPairs = new KeptPairs();

    private Store(String url, Optional<Path> place) {
        this.url = url;
        this.glance = place.map(Glance::new);
        this.files = place.map(Database::files).orElse(List.of());
    }

    /** Where Derby writes of its own troubles. Must be said before the first store is opened. */
    public static void keepEngineLogIn(Path file) {
        Database.keepDerbyLogIn(file);
    }

    public static boolean exists(Path place) {
        return Database.exists(place);
    }

    /** Whether it can be told if there is one: not in a folder that one may not look into. */
    public static boolean canBeTold(Path place) {
        return Database.exists(place) || Database.isMissing(place);
    }

    /**
     * Whether Derby can open what it made there: what stands before a colon in a path it takes for a kind of place, save
     * for the letter of a disk.
     */
    public static boolean canLieAt(Path place) {
        try {
            return place.toFile().getCanonicalPath().indexOf(':', 2) < 0;
        } catch (IOException e) {
            return true;
        }
    }

    /** The number of the schema that this version writes. */
    public static int schema() {
        return Database.SCHEMA;
    }

    /**
     * Makes an empty record.
     *
     * @param code three characters that tell this birdroom's cards from another's
     * @param zone the time zone in which its days are counted
     * @throws StoreProblem when it cannot be made
     */
    public static void create(Path place, String code, String zone) {
        Database.create(place, code, zone);
    }

    /**
     * Takes away what is left of a record whose making was cut short; for a place that has none nothing happens.
     *
     * @throws StoreProblem when it cannot be taken away
     */
    public static void discard(Path place) {
        Database.discard(place);
    }

    /**
     * Opens the record that is there.
     *
     * @throws StoreProblem when it cannot be opened, with the reason as a sentence
     */
    public static Store open(Path place) {
        return open(place, reading -> {});
    }

    /**
     * Opens the record that is there.
     *
     * @param beforeUpdate what is done with the record as it stands before an old one gets the schema of this version;
     *     what it throws leaves the record as it was
     * @throws StoreProblem when it cannot be opened, with the reason as a sentence
     */
    public static Store open(Path place, Consumer<Reading> beforeUpdate) {
        Database.open(
                place,
                () -> reading(Database.url(place), reading -> {
                    beforeUpdate.accept(reading);
                    return reading;
                }));
        return new Store(Database.url(place), Optional.of(place));
    }

    /** Opens a database by Derby's address for it, as tests do that keep theirs in memory. */
    static Store at(String url) {
        return new Store(url, Optional.empty());
    }

    /** What was fixed when the room was made, and how far its record goes. */
    public Origin origin() {
        return recording().inTransaction(session -> new Reading(session).origin());
    }

    /**
     * The room on that day as it was kept when the record was last closed, without reading the record again.
     *
     * @param today what today is in a time zone
     * @return empty where none was kept, or the record has gone on since, or it was kept on a later day
     */
    public Optional<Room> glance(Function<ZoneId, LocalDate> today) {
        return glance.flatMap(this::kept).flatMap(room -> {
            LocalDate day = today.apply(room.settings().zone());
            return day.isBefore(room.day()) ? Optional.empty() : Optional.of(Later.on(room, day));
        });
    }

    private Optional<Room> kept(Glance place) {
        try {
            return place.read(Database.head(url));
        } catch (SQLException e) {
            return Optional.empty();
        }
    }

    /**
     * Keeps the room for the next glance.
     *
     * @throws StoreProblem when it cannot be written; the record does not suffer from that
     */
    public void keep(Room room) {
        glance.ifPresent(place -> {
            try {
                place.keep(Database.head(url), room);
            } catch (IOException | SQLException e) {
                throw Database.unwritten(e);
            }
        });
    }

    /** The room as it stands, read anew. */
    public Room room(LocalDate today) {
        return recording().inTransaction(session -> new RoomReader(session).read(today));
    }

    /**
     * Records the deeds of one touch in one transaction, all or none.
     *
     * @param known the room as the person saw it; where the record has gone on since, it is read anew and the deeds are
     *     judged by that
     * @param now the real instant, kept with every entry
     * @throws StoreProblem when nothing could be recorded, or what was written is no longer where it belongs
     */
    public Recording record(Room known, List<Line> lines, LocalDate today, Instant now) {
        requireInPlace();
        try {
            Touch touch = recording().inTransaction(session -> {
                Touch made = new Touch(session, keptPairs, known, today, now);
                made.record(lines, last);
                requireInPlace();
                return made;
            });
            requireInPlace();
            last = Optional.of(touch.end());
            return touch.done();
        } catch (RolledBack e) {
            keptPairs.clear();
            return e.answer;
        } catch (SqlProblem e) {
            keptPairs.clear();
            return violated(e)
                    .map(reason -> (Recording) new Recording.Refused(lines.size() - 1, reason))
                    .orElseThrow(() -> Database.unwritten(e));
        } catch (RuntimeException e) {
            keptPairs.clear();
            throw e;
        }
    }

    private void requireInPlace() {
        SameFile.missing(files).ifPresent(why -> {
            throw new StoreProblem(why);
        });
    }

    /**
     * Lends a reading of the record on a connection of its own.
     *
     * @throws StoreProblem when a page of it is damaged
     */
    public <T> T read(Function<Reading, T> use) {
        try {
            return reading(url, use);
        } catch (SqlProblem e) {
            throw Database.isDamaged(e) ? new StoreProblem(Message.of("store.damaged"), e) : e;
        }
    }

    /**
     * Puts a record that was exported back, entry by entry, each with its number, instant and digest. The store must be
     * new.
     *
     * @param progress hears after each entry how many are back
     * @return how many entries were put back
     * @throws StoreProblem when a line is not understood or its digest does not fit
     */
    public long restore(Iterable<SealedLine> lines, LocalDate today, LongConsumer progress) {
        Room empty = room(today);
        return recording().inTransaction(session -> new Touch(session, keptPairs, empty, today, Instant.EPOCH)
                .restore(lines, progress));
    }

    /** Lets go of the database after something broke, and adds to that what it says to it; the next use opens it anew. */
    public void letGo(Throwable broken) {
        Endings.after(broken, this::close);
    }

    /**
     * Shuts the database. One whose files have gone is left as it is: to shut it would write into whatever lies in their
     * place.
     *
     * @throws StoreProblem when it does not end in good order
     */
    @Override
    public synchronized void close() {
        requireInPlace();
        Optional<Session> opened = recording;
        recording = Optional.empty();
        last = Optional.empty();
        Endings.all(() -> opened.ifPresent(Session::close), () -> Database.shutDown(url));
    }

    private static <T> T reading(String url, Function<Reading, T> use) {
        try (Session session = Session.open(url)) {
            return session.inTransaction(within -> use.apply(new Reading(within)));
        }
    }

    /** Opened when it is first needed: a glance needs none. */
    private Session recording() {
        Session opened = recording.orElseGet(() -> Session.open(url));
        recording = Optional.of(opened);
        return opened;
    }

    /** The sentence for a constraint that was violated, where that is what happened. */
    private static Optional<Message> violated(Throwable cause) {
        for (Throwable each = cause; each != null; each = each.getCause()) {
            if (each instanceof SQLException sql
                    && sql.getSQLState() != null
                    && sql.getSQLState().startsWith("23")) {
                return Optional.of(Constraints.sentence(sql.getMessage()));
            }
        }
        return Optional.empty();
    }

    /** A reading of the record, of its lines as far as they went when it began. Valid only while it is lent. */
    public static final class Reading {

        private final Session session;
        private final RoomReader.Head head;

        Reading(Session session) {
            this.session = session;
            this.head = new RoomReader(session).head();
        }

        public List<LogEntry> log(LogQuery query) {
            return new LogReader(session).read(query);
        }

        /** The entries recorded by one touch. */
        public List<LogEntry> touch(long first) {
            return new LogReader(session).touch(first);
        }

        public Optional<LogEntry> entry(long number) {
            return new LogReader(session).entry(number);
        }

        public Optional<Bird> bird(String name) {
            return new PastRegister(session).bird(name);
        }

        /** The room with every bird, pair, check and outcome there ever was, as of that day. */
        public Room everything(LocalDate today) {
            return new RoomReader(session).readEverything(today);
        }

        /** Hands out every entry in the order of the numbers, as it was written. */
        public void lines(Consumer<SealedLine> consumer) {
            session.each(
                    "SELECT number, recorded, digest, line FROM entry WHERE number <= ? ORDER BY number",
                    rows -> consumer.accept(
                            new SealedLine(rows.getLong(1), rows.getString(2), rows.getString(3), rows.getString(4))),
                    head.number());
        }

        /** The three characters of this birdroom and its time zone, as they were fixed when it was made. */
        public Origin origin() {
            return new Origin(head.code(), head.zone(), head.number(), head.digest());
        }

        /**
         * Follows the chain of digests from the first entry to the last.
         *
         * @return the first entry that does not fit: one past the last where the head does not; empty when all fit
         */
        public Optional<Long> firstBroken() {
            String[] digest = {Chain.START};
            long[] at = {0, 0};
            lines(line -> {
                at[0]++;
                digest[0] = Chain.next(digest[0], line.line());
                if (at[1] == 0 && (line.entry() != at[0] || !line.digest().equals(digest[0]))) {
                    at[1] = at[0];
                }
            });
            if (at[1] == 0 && (head.number() != at[0] || !head.digest().equals(digest[0]) || runsOn())) {
                at[1] = at[0] + 1;
            }
            return at[1] == 0 ? Optional.empty() : Optional.of(at[1]);
        }

        /** Whether there are entries that the head, as it stands now, knows nothing of. */
        private boolean runsOn() {
            return session.numbers("SELECT MAX(e.number) FROM entry e, head h WHERE e.number > h.number")
                            .get(0)
                    > 0;
        }
    }

    /** The number and the digest of the last entry that was recorded here; a number has one digest for ever. */
    private record End(long number, String digest) {}

    /** What was fixed when the room was made, and how far its record goes. */
    public record Origin(String code, String zone, long entries, String digest) {}

    /** Brings a transaction to its end with an answer; never leaves this class. */
    private static final class RolledBack extends RuntimeException {

        private static final long serialVersionUID = 1;

        private final transient Recording answer;

        RolledBack(Recording answer) {
            super(null, null, false, false);
            this.answer = answer;
        }
    }

    /** One transaction in the making. */
    private static final class Touch {

        private final Session session;
        private final KeptPairs keptPairs;
        private final LocalDate today;
        private final Instant now;
        private final RoomReader reader;
        private final PastRegister register;
        private final List<Long> entries = new ArrayList<>();
        private Room room;
        private String digest = Chain.START;

        Touch(Session session, KeptPairs keptPairs, Room known, LocalDate today, Instant now) {
            this.session = session;
            this.keptPairs = keptPairs;
            this.room = known;
            this.today = today;
            this.now = now.truncatedTo(ChronoUnit.MILLIS);
            this.reader = new RoomReader(session, keptPairs);
            this.register = new PastRegister(session, reader, () -> Optional.of(room));
        }

        void record(List<Line> lines, Optional<End> last) {
            lockHead(last);
            for (int i = 0; i < lines.size(); i++) {
                record(i, lines.get(i));
            }
            keepHead();
        }

        Recording done() {
            return new Recording.Done(List.copyOf(entries), room);
        }

        End end() {
            return new End(room.head(), digest);
        }

        /**
         * The head is written first, so that no other program can record until this has ended. Where it still is as this
         * one left it, it need not be read.
         */
        private void lockHead(Optional<End> last) {
            boolean follows = last.filter(end -> end.number() == room.head()).isPresent()
                    && room.day().equals(today)
                    && session.write("UPDATE head SET number = number WHERE id = 1 AND number = ?", room.head()) == 1;
            if (follows) {
                digest = last.orElseThrow().digest();
            } else {
                readHead();
            }
        }

        private void readHead() {
            session.write("UPDATE head SET number = number WHERE id = 1");
            RoomReader.Head head = reader.head();
            digest = head.digest();
            if (head.number() != room.head() || !room.day().equals(today)) {
                keptPairs.clear();
                room = reader.read(today);
            }
        }

        private void keepHead() {
            session.write("UPDATE head SET number = ?, digest = ? WHERE id = 1", room.head(), digest);
        }

        private void record(int index, Line line) {
            long entry = room.head() + 1;
            Scene scene = new Scene(room, register, line.told(), today, entry);
            Ruling ruling = Rules.judge(line, scene);
            if (ruling instanceof Ruling.Refused refused) {
                throw new RolledBack(new Recording.Refused(index, refused.reason()));
            }
            if (ruling instanceof Ruling.Asks asks) {
                throw new RolledBack(new Recording.Asks(index, asks.question()));
            }
            Deed resolved = line.deed().resolved(scene);
            String text = Lines.write(new Line(resolved, line.told()));
            Touched touched = keep(scene, resolved, text, now.toString());
            room = reader.refresh(room, touched, entry);
            List<Message> problems = Standing.problems(room, register, touched.subjects());
            if (!problems.isEmpty()) {
                throw new RolledBack(new Recording.Refused(index, Message.of("deed.stands-wrong", problems.get(0))));
            }
        }

        private Touched keep(Scene scene, Deed deed, String text, String recorded) {
            long entry = scene.entry();
            entries.add(entry);
            digest = Chain.next(digest, text);
            session.write(
                    "INSERT INTO entry (number, touch, recorded, person, deed, day, line, digest)"
                            + " VALUES (?, ?, ?, ?, ?, ?, ?, ?)",
                    entry,
                    entries.get(0),
                    recorded,
                    Rules.recorder(deed, scene),
                    deed.deed(),
                    scene.on(),
                    text,
                    digest);
            Touched touched = new Touched();
            List<Fact> facts = deed.facts(scene);
            FactTables.insert(session, entry, scene.on(), facts);
            facts.forEach(fact -> touched.add(fact, entry));
            if (deed instanceof CardDeed.StruckOut strike) {
                strike(entry, strike).forEach(row -> touched.add(row.fact(), row.entry()));
            }
            mention(scene, deed, touched);
            return touched;
        }

        private List<Row<? extends Fact>> strike(long entry, CardDeed.StruckOut strike) {
            session.write(
                    "INSERT INTO strike (entry, struck, why) VALUES (?, ?, ?)", entry, strike.entry(), strike.why());
            return FactTables.delete(session, strike.entry());
        }

        /** The cages and birds with which the entry is to be shown. */
        private void mention(Scene scene, Deed deed, Touched touched) {
            Set<Long> birds = new HashSet<>(touched.birds());
            Set<Long> cages = new HashSet<>(touched.cages().keySet());
            deed.mentionsBirds().forEach(name -> scene.bird(name).map(Bird::id).ifPresent(birds::add));
            deed.mentionsCages().forEach(name -> scene.room().cage(name).ifPresent(cage -> cages.add(cage.id())));
            scene.told().cage().flatMap(scene.room()::cage).ifPresent(cage -> cages.add(cage.id()));
            birds.forEach(id -> scene.room()
                    .bird(id)
                    .flatMap(bird -> bird.cageOn(scene.on()))
                    .ifPresent(cages::add));
            cages.forEach(id -> mention(scene.entry(), "CAGE", id));
            birds.forEach(id -> mention(scene.entry(), "BIRD", id));
        }

        private void mention(long entry, String kind, long id) {
            session.write("INSERT INTO mention (entry, kind, id) VALUES (?, ?, ?)", entry, kind, id);
        }

        long restore(Iterable<SealedLine> lines, LongConsumer progress) {
            lockHead(Optional.empty());
            if (room.head() != 0) {
                throw new StoreProblem(Message.of("store.not-empty"));
            }
            lines.forEach(line -> {
                restore(line);
                progress.accept(room.head());
            });
            keepHead();
            return room.head();
        }

        private void restore(SealedLine sealed) {
            long entry = room.head() + 1;
            boolean fits =
                    sealed.entry() == entry && Chain.next(digest, sealed.line()).equals(sealed.digest());
            if (!fits || !(Lines.read(sealed.line(), today) instanceof Lines.Understood understood)) {
                throw new StoreProblem(Message.of("store.broken-line", entry));
            }
            Line line = understood.line();
            Scene scene = new Scene(room, register, line.told(), today, entry);
            entries.clear();
            try {
                Touched touched = keep(scene, line.deed(), sealed.line(), sealed.recorded());
                room = reader.refreshWithoutPast(room, touched, entry);
            } catch (RuntimeException e) {
                throw notRestored(line, scene, e);
            }
        }

        /** Which entry cannot be put back, and why, as the rules tell it or else the schema. */
        private static StoreProblem notRestored(Line line, Scene scene, RuntimeException broken) {
            if (Database.isFull(broken)) {
                return Database.unwritten(broken);
            }
            Message why =
                    judged(line.beingSure(), scene).or(() -> violated(broken)).orElse(Message.of("store.entry-odd"));
            return new StoreProblem(Message.of("store.entry-refused", scene.entry(), why), broken);
        }

        private static Optional<Message> judged(Line line, Scene scene) {
            try {
                return Rules.judge(line, scene) instanceof Ruling.Refused refused
                        ? Optional.of(refused.reason())
                        : Optional.empty();
            } catch (RuntimeException e) {
                return Optional.empty();
            }
        }
    }
}
