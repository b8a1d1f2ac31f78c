package org.cagewall.kiosk.kit;

import java.awt.Component;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.util.List;
import java.util.function.Consumer;
import javax.swing.BorderFactory;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import org.cagewall.kiosk.theme.Sizes;
import org.cagewall.kiosk.theme.Tone;

/** A few words side by side of which one is on, such as "today | yesterday". Used on the event thread. */
public final class Segment<T> extends JPanel {

    private static final long serialVersionUID = 1L;

    private final transient List<Choice<T>> choices;

    public Segment(String name, List<Choice<T>> choices, Consumer<T> onChange) {
        super(new MigLayout("insets 0, gap 0, filly"));
        this.choices = List.copyOf(choices);
        setName(name);
        setOpaque(false);
        int edge = Sizes.px(4);
        setBorder(BorderFactory.createEmptyBorder(edge, edge, edge, edge));
        for (Choice<T> choice : choices) {
            TouchToggle part = new TouchToggle(name + "." + choice.name(), choice.word(), TouchToggle.Ends.SEGMENT);
            part.addActionListener(event -> {
                choose(choice.value());
                onChange.accept(choice.value());
            });
            add(part, "growy");
        }
        choose(choices.get(0).value());
    }

    /** Shows this one as on, without telling anyone. */
    public Segment<T> choose(T value) {
        for (int i = 0; i < choices.size(); i++) {
            Component part = getComponent(i);
            ((TouchToggle) part).setSelected(choices.get(i).value().equals(value));
        }
        return this;
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D brush = Brush.on(graphics);
        Brush.Box box = new Brush.Box(0, 0, getWidth(), getHeight());
        Brush.fill(brush, Tone.TILE.color(), box, getHeight() / 2f);
        Brush.outline(brush, Tone.LINE.color(), Sizes.px(1.5f), box, getHeight() / 2f);
        brush.dispose();
    }
}
