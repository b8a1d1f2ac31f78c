package org.cagewall.kiosk.kit;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import net.miginfocom.swing.MigLayout;
import org.cagewall.kiosk.theme.TextStyle;
import org.cagewall.kiosk.theme.Tone;

/** Says what is wrong: by the field it is about, or here where it is about no field. Used on the event thread. */
public final class ProblemCard extends Card {

    private static final long serialVersionUID = 1L;

    private final transient Map<String, Field> fields = new HashMap<>();
    private final WrapLabel sentence = new WrapLabel("", TextStyle.TAG, Tone.ATTENTION_INK);

    public ProblemCard() {
        super(new MigLayout("insets 10 16, fillx", "[grow,fill]"));
        attention();
        setName("problem.card");
        sentence.setName("problem");
        add(sentence, "wmin 0");
        setVisible(false);
    }

    /** What is wrong with this part is said by this field from now on. */
    public Field about(String part, Field field) {
        fields.put(part, field);
        return field;
    }

    /** The fields are gone: others take their place. */
    public void forgetFields() {
        fields.clear();
    }

    public void say(Optional<Problem> problem) {
        fields.values().forEach(field -> field.wrong(""));
        setVisible(false);
        problem.ifPresent(it -> {
            Field field = fields.get(it.part());
            if (field != null) {
                field.wrong(it.words());
                field.focus();
            } else {
                sentence.setText(it.words());
                setVisible(true);
            }
        });
    }
}
