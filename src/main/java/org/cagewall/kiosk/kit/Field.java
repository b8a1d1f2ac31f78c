package org.cagewall.kiosk.kit;

import java.awt.Container;
import java.awt.Dimension;
import java.awt.Rectangle;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.util.function.Consumer;
import java.util.stream.Stream;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import javax.swing.JTextField;
import javax.swing.ScrollPaneConstants;
import javax.swing.event.DocumentEvent;
import javax.swing.event.DocumentListener;
import javax.swing.text.JTextComponent;
import net.miginfocom.swing.MigLayout;
import org.cagewall.kiosk.theme.Sizes;
import org.cagewall.kiosk.theme.TextStyle;
import org.cagewall.kiosk.theme.Tone;

/** A label and a place to write below it, on one line or several. Used on the event thread. */
public final class Field extends Pane {

    private static final long serialVersionUID = 1L;

    private final JTextComponent text;
    private String given;
    private final WrapLabel wrong = new WrapLabel("", TextStyle.TAG, Tone.ATTENTION_INK);

    private Field(String name, String label, JTextComponent text, javax.swing.JComponent shown) {
        super(new MigLayout("insets 0, wrap 1, fillx, gap 0 6, hidemode 3, novisualpadding", "[grow,fill]"));
        this.text = text;
        this.given = text.getText();
        text.setName(name);
        text.getAccessibleContext().setAccessibleName(label);
        WrapLabel above = new WrapLabel(label, TextStyle.TAG, Tone.SOFT);
        above.setLabelFor(text);
        add(above, "wmin 0");
        add(shown, "growx");
        wrong.setVisible(false);
        wrong.setName(name + ".wrong");
        add(wrong, "wmin 0");
        text.addFocusListener(new FocusAdapter() {
            @Override
            public void focusGained(FocusEvent event) {
                comeIntoView();
            }
        });
    }

    /** A key brought the keyboard here: its label and what is wrong with it are seen with it. */
    private void comeIntoView() {
        if (FocusRing.isShown(this)) {
            scrollRectToVisible(new Rectangle(getSize()));
        }
    }

    /** One line. */
    public static Field line(String name, String label, String value) {
        JTextField line = new TallField(value);
        return new Field(name, label, line, line);
    }

    /** Several lines: a note. */
    public static Field note(String name, String label, String value) {
        JTextArea area = new NoteArea(value);
        JScrollPane pane =
                new JScrollPane(
                        area,
                        ScrollPaneConstants.VERTICAL_SCROLLBAR_AS_NEEDED,
                        ScrollPaneConstants.HORIZONTAL_SCROLLBAR_NEVER) {
                    private static final long serialVersionUID = 1L;

                    @Override
                    public void updateUI() {
                        super.updateUI();
                        setBorder(new com.formdev.flatlaf.ui.FlatScrollPaneBorder());
                    }
                };
        return new Field(name, label, area, pane);
    }

    /** Tells of every change. */
    public Field onChange(Consumer<String> told) {
        text.getDocument().addDocumentListener(new DocumentListener() {
            @Override
            public void insertUpdate(DocumentEvent event) {
                told.accept(text.getText());
            }

            @Override
            public void removeUpdate(DocumentEvent event) {
                told.accept(text.getText());
            }

            @Override
            public void changedUpdate(DocumentEvent event) {
                told.accept(text.getText());
            }
        });
        return this;
    }

    /** Runs this when Enter is pressed in a one-line field. */
    public Field onEnter(Runnable then) {
        if (text instanceof JTextField line) {
            line.addActionListener(event -> then.run());
        }
        return this;
    }

    public String value() {
        return text.getText();
    }

    /** Whether a hand wrote in one of the fields of this part what is not taken over yet. */
    public static boolean isAnyWrittenIn(Container part) {
        return Stream.of(part.getComponents())
                .anyMatch(each -> each instanceof Field field
                        ? !field.given.equals(field.value())
                        : each instanceof Container inner && isAnyWrittenIn(inner));
    }

    public void value(String other) {
        given = other;
        if (!other.equals(text.getText())) {
            text.setText(other);
        }
    }

    /** Says below the field what is wrong with it; nothing, if the sentence is empty. */
    public void wrong(String sentence) {
        wrong.setText(sentence);
        wrong.setVisible(!sentence.isEmpty());
        revalidate();
    }

    /** Puts the keyboard here. */
    public void focus() {
        text.requestFocusInWindow();
    }

    private static final class TallField extends JTextField {

        private static final long serialVersionUID = 1L;

        TallField(String value) {
            super(value, 12);
        }

        @Override
        public void updateUI() {
            super.updateUI();
            setFont(TextStyle.LINE.font());
        }

        @Override
        public Dimension getPreferredSize() {
            Dimension size = super.getPreferredSize();
            return new Dimension(size.width, Math.max(size.height, Sizes.px(56)));
        }

        @Override
        public Dimension getMinimumSize() {
            return new Dimension(Sizes.px(96), getPreferredSize().height);
        }
    }

    private static final class NoteArea extends JTextArea {

        private static final long serialVersionUID = 1L;

        NoteArea(String value) {
            super(value, 3, 20);
            setLineWrap(true);
            setWrapStyleWord(true);
            setBorder(
                    javax.swing.BorderFactory.createEmptyBorder(Sizes.px(10), Sizes.px(3), Sizes.px(10), Sizes.px(3)));
            setFocusTraversalKeys(java.awt.KeyboardFocusManager.FORWARD_TRAVERSAL_KEYS, null);
            setFocusTraversalKeys(java.awt.KeyboardFocusManager.BACKWARD_TRAVERSAL_KEYS, null);
        }

        @Override
        public void updateUI() {
            super.updateUI();
            setFont(TextStyle.LINE.font());
        }
    }
}
