package org.cagewall.kiosk.shell;

import static org.assertj.core.api.Assertions.assertThat;

import javax.swing.JTextField;
import javax.swing.text.JTextComponent;
import org.junit.jupiter.api.Test;

class WrittenTest {

    private final Written written = new Written();

    @Test
    void theLastCharactersComeOutAndWhatStoodThereStays() {
        JTextComponent note = new JTextField("moult");
        type(note, " C123");

        written.takeOut(4);

        assertThat(note.getText()).isEqualTo("moult ");
    }

    @Test
    void whatWasMarkedAndWrittenOverComesBack() {
        JTextComponent note = new JTextField("moult");
        note.selectAll();
        type(note, "C123");

        written.takeOut(4);

        assertThat(note.getText()).isEqualTo("moult");
    }

    @Test
    void onlyTheFieldThatWasWrittenInChanges() {
        JTextComponent first = new JTextField();
        JTextComponent second = new JTextField();
        type(first, "A1");
        type(second, "C123");

        written.takeOut(4);

        assertThat(first.getText()).isEqualTo("A1");
        assertThat(second.getText()).isEmpty();
    }

    private void type(JTextComponent field, String text) {
        if (field.getSelectedText() == null) {
            field.setCaretPosition(field.getText().length());
        }
        for (char c : text.toCharArray()) {
            written.goesInto(field);
            field.replaceSelection(String.valueOf(c));
            field.setCaretPosition(field.getText().length());
        }
    }
}
