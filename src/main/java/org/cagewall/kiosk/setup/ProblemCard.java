package org.cagewall.kiosk.setup;

import java.util.Map;
import java.util.Optional;
import net.miginfocom.swing.MigLayout;
import org.cagewall.kiosk.kit.Card;
import org.cagewall.kiosk.kit.Field;
import org.cagewall.kiosk.kit.WrapLabel;
import org.cagewall.kiosk.theme.Tone;
import org.cagewall.kiosk.theme.Type;

/** Says what is wrong: by the field it is about, or here where it is about no field. Used on the event thread. */
final class ProblemCard extends Card {

    private static final long serialVersionUID = 1L;

    private final WrapLabel sentence = new WrapLabel("", Type.TAG, Tone.ATTENTION_INK);

    ProblemCard() {
        super(new MigLayout("insets 10 16, fillx", "[grow,fill]"));
        attention();
        setName("problem.card");
        sentence.setName("problem");
        add(sentence, "wmin 0");
        setVisible(false);
    }

    void say(Optional<Problem> problem, Map<String, Field> fields) {
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
