package org.cagewall.store;

import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;
import org.cagewall.deed.Fact;
import org.cagewall.deed.Subject;

/** What the facts that came and went with an entry are about, and of what kinds they are. Bound to one thread. */
final class Touched {

    private final Map<Subject, Set<Class<? extends Fact>>> kinds = new LinkedHashMap<>();
    private final Set<Long> entries = new LinkedHashSet<>();

    /** A fact that belongs to the entry of that number has come or gone. */
    void add(Fact fact, long entry) {
        entries.add(entry);
        kinds.computeIfAbsent(fact.subject(entry), subject -> new HashSet<>()).add(fact.getClass());
    }

    /** The entries whose facts came or went. */
    Set<Long> entries() {
        return entries;
    }

    Set<Subject> subjects() {
        return kinds.keySet();
    }

    /** The kinds of fact about the room as a whole. */
    Set<Class<? extends Fact>> ofRoom() {
        return kinds.getOrDefault(Subject.ROOM, Set.of());
    }

    /** The cages, each with the kinds of fact about it. */
    Map<Long, Set<Class<? extends Fact>>> cages() {
        return of(Subject.Kind.CAGE);
    }

    private Map<Long, Set<Class<? extends Fact>>> of(Subject.Kind kind) {
        Map<Long, Set<Class<? extends Fact>>> of = new HashMap<>();
        kinds.forEach((subject, each) -> {
            if (subject.kind() == kind) {
                of.put(subject.id(), each);
            }
        });
        return of;
    }

    Set<Long> birds() {
        return ids(Subject.Kind.BIRD);
    }

    /** The pairs, each with the kinds of fact about it. */
    Map<Long, Set<Class<? extends Fact>>> kindsOfPairs() {
        return of(Subject.Kind.PAIR);
    }

    Set<Long> pairs() {
        return ids(Subject.Kind.PAIR);
    }

    /** Whether one of these kinds of fact came or went. */
    boolean any(Set<Class<? extends Fact>> these) {
        return kinds.values().stream().anyMatch(of -> these.stream().anyMatch(of::contains));
    }

    private Set<Long> ids(Subject.Kind kind) {
        Set<Long> ids = new LinkedHashSet<>();
        kinds.keySet().stream().filter(subject -> subject.kind() == kind).forEach(subject -> ids.add(subject.id()));
        return ids;
    }
}
