package org.cagewall.kiosk.shell;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import net.miginfocom.swing.MigLayout;
import org.cagewall.kiosk.kit.Chips;
import org.cagewall.kiosk.kit.Choice;
import org.cagewall.kiosk.kit.Pane;
import org.cagewall.kiosk.kit.WrapLabel;
import org.cagewall.kiosk.theme.Sizes;
import org.cagewall.kiosk.theme.TextStyle;
import org.cagewall.kiosk.theme.Tone;
import org.cagewall.tasks.Reply;
import org.cagewall.tasks.Vital;
import org.cagewall.text.Words;

/** The questions about a bird that is different, each with a large yes and no. Used on the event thread. */
public final class Questions extends Pane {

    private static final long serialVersionUID = 1L;

    private final transient Map<Vital, Chips<Reply>> asked = new EnumMap<>(Vital.class);

    /**
     * These questions, none of them answered by the program beforehand.
     *
     * @param answered what a person has answered already
     * @param onReply told of all answers given, whenever one is
     */
    public Questions(
            Words words, List<Vital> questions, Map<Vital, Reply> answered, Consumer<Map<Vital, Reply>> onReply) {
        super(new MigLayout(
                Sizes.isRoomy() ? "insets 0, fillx, wrap 2, gap 16 16" : "insets 0, fillx, wrap 1, gap 0 8",
                Sizes.isRoomy() ? "[grow,fill][280!,fill]" : "[grow,fill]"));
        for (Vital vital : questions) {
            Chips<Reply> chips = Chips.large(
                    vital.word(),
                    List.of(
                            new Choice<>("yes", words.say("tasks.reply-yes"), Reply.YES),
                            new Choice<>("no", words.say("tasks.reply-no"), Reply.NO)),
                    chosen -> onReply.accept(replies()));
            chips.choose(Optional.ofNullable(answered.get(vital)).stream().toList());
            asked.put(vital, chips);
            add(new WrapLabel(words.say(vital.question()), TextStyle.ACTION, Tone.INK), "wmin 0, growx");
            add(chips);
        }
    }

    /** The answers given; what was left open is not among them. */
    public Map<Vital, Reply> replies() {
        Map<Vital, Reply> replies = new EnumMap<>(Vital.class);
        asked.forEach((vital, chips) -> chips.one().ifPresent(reply -> replies.put(vital, reply)));
        return replies;
    }
}
