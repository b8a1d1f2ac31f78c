package org.cagewall.kiosk.shell;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/** Which screen is made for which destination; handed to the shell. Immutable; its screens are made on the event thread. */
public final class Screens {

    private final Map<Class<? extends Destination>, Function<Destination, Screen>> makers;

    private Screens(Map<Class<? extends Destination>, Function<Destination, Screen>> makers) {
        this.makers = Map.copyOf(makers);
    }

    public static Screens none() {
        return new Screens(Map.of());
    }

    /** The same, and this one for destinations of that kind. */
    public <D extends Destination> Screens with(Class<D> kind, Function<D, Screen> maker) {
        Map<Class<? extends Destination>, Function<Destination, Screen>> more = new LinkedHashMap<>(makers);
        more.put(kind, destination -> maker.apply(kind.cast(destination)));
        return new Screens(more);
    }

    Optional<Screen> make(Destination destination) {
        return Optional.ofNullable(makers.get(destination.getClass())).map(maker -> maker.apply(destination));
    }
}
