package org.cagewall.almanac;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import org.cagewall.room.Span;
import org.cagewall.room.Timing;
import org.cagewall.room.Usual;

/**
 * What is usual for a species, as it holds in this room. A species that no timetable is shipped for has only what the
 * owner has set, and nothing is expected of it otherwise. Immutable; any thread.
 *
 * @param species its usual name
 */
public record Timetable(String species, Map<Timing, Value> values) implements Usual {

    public Timetable {
        values = Map.copyOf(values);
    }

    public Optional<Value> value(Timing timing) {
        return Optional.ofNullable(values.get(timing));
    }

    @Override
    public Optional<Span> span(Timing timing) {
        return value(timing).map(Value::span);
    }

    /** Whether anything is known of this species. */
    public boolean isKnown() {
        return !values.isEmpty();
    }

    Timetable with(Value value) {
        Map<Timing, Value> more = new EnumMap<>(Timing.class);
        more.putAll(values);
        more.put(value.timing(), value);
        return new Timetable(species, more);
    }
}
