package org.cagewall.kiosk.kit;

import java.awt.BorderLayout;
import java.awt.Component;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;

/** Words to choose from, one or several, told by a tick and a filled ground. Used on the event thread. */
public final class Chips<T> extends Pane {

    private static final long serialVersionUID = 1L;

    private final transient List<Choice<T>> choices;
    private final transient Consumer<Set<T>> onChange;
    private final Most most;
    private final SideBySide row = new SideBySide();

    private enum Most {
        ONE,
        SEVERAL
    }

    private Chips(String name, List<Choice<T>> choices, Most most, TouchToggle.Ends ends, Consumer<Set<T>> onChange) {
        super(new BorderLayout());
        this.choices = List.copyOf(choices);
        this.most = most;
        this.onChange = onChange;
        setName(name);
        add(row);
        for (Choice<T> choice : choices) {
            TouchToggle chip = new TouchToggle(name + "." + choice.name(), choice.word(), ends);
            chip.addActionListener(event -> changed(chip));
            row.add(chip);
        }
    }

    /** Exactly one can be chosen; a second touch on it leaves it chosen. */
    public static <T> Chips<T> oneOf(String name, List<Choice<T>> choices, Consumer<T> onChange) {
        return new Chips<>(name, choices, Most.ONE, TouchToggle.Ends.CHIP, chosen -> chosen.forEach(onChange));
    }

    /** Exactly one can be chosen, in words as large as a question that must not be missed. */
    public static <T> Chips<T> large(String name, List<Choice<T>> choices, Consumer<T> onChange) {
        return new Chips<>(name, choices, Most.ONE, TouchToggle.Ends.LARGE_CHIP, chosen -> chosen.forEach(onChange));
    }

    /** Any number can be chosen. */
    public static <T> Chips<T> someOf(String name, List<Choice<T>> choices, Consumer<Set<T>> onChange) {
        return new Chips<>(name, choices, Most.SEVERAL, TouchToggle.Ends.CHIP, onChange);
    }

    /** Shows these as chosen, without telling anyone. */
    public Chips<T> choose(Collection<T> values) {
        for (int i = 0; i < choices.size(); i++) {
            chip(i).setSelected(values.contains(choices.get(i).value()));
        }
        return this;
    }

    public Set<T> chosen() {
        Set<T> chosen = new LinkedHashSet<>();
        for (int i = 0; i < choices.size(); i++) {
            if (chip(i).isSelected()) {
                chosen.add(choices.get(i).value());
            }
        }
        return chosen;
    }

    public Optional<T> one() {
        return chosen().stream().findFirst();
    }

    @Override
    public int heightFor(int width) {
        return row.heightFor(width);
    }

    private void changed(TouchToggle touched) {
        if (most == Most.ONE) {
            for (Component each : row.getComponents()) {
                ((TouchToggle) each).setSelected(each == touched);
            }
        }
        onChange.accept(chosen());
    }

    private TouchToggle chip(int index) {
        return (TouchToggle) row.getComponent(index);
    }
}
