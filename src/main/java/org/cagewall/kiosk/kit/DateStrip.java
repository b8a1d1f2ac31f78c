package org.cagewall.kiosk.kit;

import java.awt.Component;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.function.Consumer;
import javax.swing.JPanel;
import javax.swing.JToggleButton;
import net.miginfocom.swing.MigLayout;
import org.cagewall.kiosk.theme.Sizes;
import org.cagewall.kiosk.theme.TextStyle;
import org.cagewall.kiosk.theme.Tone;
import org.cagewall.text.Words;

/** A month of days of which one is picked by touch; weeks begin on Monday (ISO 8601). Used on the event thread. */
public final class DateStrip extends Pane {

    private static final long serialVersionUID = 1L;

    private final transient Words words;
    private final LocalDate today;
    private final LocalDate earliest;
    private final LocalDate latest;
    private final transient Consumer<LocalDate> onPick;
    private final WrapLabel title =
            new WrapLabel("", TextStyle.LEAD, Tone.INK).lines(1).centred();
    private final JPanel days = new JPanel(new java.awt.GridLayout(7, 7, Sizes.px(4), Sizes.px(4)));
    private final TouchButton before;
    private final TouchButton after;
    private LocalDate chosen;
    private YearMonth month;

    /** Days from earliest to latest can be picked. */
    public DateStrip(
            Words words,
            String name,
            LocalDate today,
            LocalDate earliest,
            LocalDate latest,
            LocalDate chosen,
            Consumer<LocalDate> onPick) {
        super(new MigLayout("insets 0, wrap 3, gap 8", "[72!][grow,fill][72!]"));
        this.words = words;
        this.today = today;
        this.earliest = earliest;
        this.latest = latest;
        this.chosen = chosen;
        this.onPick = onPick;
        this.month = YearMonth.from(chosen);
        setName(name);
        before = turn(name + ".before", words.say("kit.month-before"), -1);
        after = turn(name + ".after", words.say("kit.month-after"), 1);
        add(before, "growx");
        add(title);
        add(after, "growx");
        days.setOpaque(false);
        add(days, "spanx 3, growx");
        fill();
    }

    public LocalDate chosen() {
        return chosen;
    }

    /** Shows this day as picked, without telling anyone. */
    public void choose(LocalDate day) {
        chosen = day;
        if (!YearMonth.from(day).equals(month)) {
            month = YearMonth.from(day);
            fill();
            return;
        }
        for (Component each : days.getComponents()) {
            if (each instanceof Day shown) {
                shown.setSelected(shown.date.equals(day));
            }
        }
    }

    private TouchButton turn(String name, String said, int by) {
        TouchButton.Arrow way = by < 0 ? TouchButton.Arrow.BACK : TouchButton.Arrow.ON;
        return TouchButton.arrow(way, name, said, () -> {
            month = month.plusMonths(by);
            fill();
        });
    }

    private void fill() {
        title.setText(words.say("kit.month." + month.getMonthValue(), String.valueOf(month.getYear())));
        days.removeAll();
        for (DayOfWeek day : DayOfWeek.values()) {
            days.add(new WrapLabel(words.say("kit.weekday." + day.getValue()), TextStyle.TAG, Tone.SOFT)
                    .lines(1)
                    .centred());
        }
        LocalDate first = month.atDay(1);
        LocalDate day = first.minusDays(first.getDayOfWeek().getValue() - 1L);
        for (int i = 0; i < 42; i++) {
            days.add(YearMonth.from(day).equals(month) ? day(day) : new WrapLabel("", TextStyle.TAG, Tone.SOFT));
            day = day.plusDays(1);
        }
        before.setEnabled(!month.atDay(1).minusDays(1).isBefore(earliest));
        after.setEnabled(!month.atEndOfMonth().plusDays(1).isAfter(latest));
        days.revalidate();
        days.repaint();
    }

    private Day day(LocalDate date) {
        Day day = new Day(getName() + "." + date, date, date.equals(today) ? When.TODAY : When.OTHER);
        day.getAccessibleContext()
                .setAccessibleName(words.say(date.equals(today) ? "kit.today" : "kit.day", words.longDay(date)));
        day.setEnabled(!date.isBefore(earliest) && !date.isAfter(latest));
        day.setSelected(date.equals(chosen));
        day.addActionListener(event -> {
            choose(date);
            onPick.accept(date);
        });
        return day;
    }

    private enum When {
        TODAY,
        OTHER
    }

    private static final class Day extends JToggleButton {

        private static final long serialVersionUID = 1L;

        private final LocalDate date;
        private final When when;

        Day(String name, LocalDate date, When when) {
            super(String.valueOf(date.getDayOfMonth()));
            this.date = date;
            this.when = when;
            setName(name);
        }

        @Override
        public void updateUI() {
            setUI(new FingerUI());
        }

        @Override
        public Dimension getPreferredSize() {
            return new Dimension(Sizes.px(64), Sizes.px(52));
        }

        @Override
        public Dimension getMinimumSize() {
            return new Dimension(Sizes.target(), Sizes.target());
        }

        @Override
        protected void paintComponent(Graphics graphics) {
            Graphics2D brush = Brush.on(graphics);
            Brush.Box box = new Brush.Box(0, 0, getWidth(), getHeight());
            ButtonLook look = ButtonLook.of(ButtonKind.PLAIN, getModel());
            Brush.fill(brush, look.ground().color(), box, Sizes.radius());
            if (isEnabled()) {
                Tone line = when == When.TODAY ? Tone.INK : look.line();
                float width = when == When.TODAY ? 2.5f : look.lineWidth();
                Brush.outline(brush, line.color(), Sizes.px(width), box, Sizes.radius());
            }
            brush.setColor(look.ink().color());
            Flow flow = Flow.of(getText(), TextStyle.BUTTON.font(), getWidth(), 1);
            flow.paintCentred(brush, 0, (getHeight() - flow.height()) / 2f, getWidth());
            FocusRing.paint(brush, this, look.ink().color(), box, Sizes.radius());
            brush.dispose();
        }
    }
}
