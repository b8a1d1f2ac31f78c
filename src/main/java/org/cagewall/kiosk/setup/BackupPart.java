package org.cagewall.kiosk.setup;

import javax.swing.JComponent;
import net.miginfocom.swing.MigLayout;
import org.cagewall.desk.Desk;
import org.cagewall.kiosk.kit.ButtonKind;
import org.cagewall.kiosk.kit.Card;
import org.cagewall.kiosk.kit.Stack;
import org.cagewall.kiosk.kit.TouchButton;
import org.cagewall.kiosk.kit.TouchScroll;
import org.cagewall.kiosk.kit.WrapLabel;
import org.cagewall.kiosk.shell.Notices;
import org.cagewall.kiosk.shell.Refresher;
import org.cagewall.kiosk.theme.TextStyle;
import org.cagewall.kiosk.theme.Tone;
import org.cagewall.text.Words;

/** Backups: one more, and those that are kept. Used on the event thread. */
final class BackupPart extends Part {

    private final Words words;
    private final Stack whole = new Stack(16);
    private final BackupPresenter presenter;

    BackupPart(Desk desk, Notices notices, Words words) {
        super(new MigLayout("insets 0, fill", "push[760!,fill]push", "[0:0,grow,fill]"));
        this.words = words;
        view.add(new TouchScroll(words, "backups", whole), "grow, wmin 0, hmin 0");
        presenter = new BackupPresenter(desk, notices, words, this::render);
    }

    @Override
    Refresher watch() {
        return presenter.watch();
    }

    private void render(BackupState state) {
        whole.removeAll();
        Card card = new Card(new MigLayout("insets 26 32 28 32, fillx, wrap 1, gap 0 14, hidemode 3", "[grow,fill]"));
        card.add(new WrapLabel(words.say("setup.backup-title"), TextStyle.TITLE, Tone.INK), "wmin 0");
        card.add(new WrapLabel(words.say("setup.backup-text", state.folder()), TextStyle.LINE, Tone.SOFT), "wmin 0");
        TouchButton now = TouchButton.of(
                        ButtonKind.MAIN, "back-up", words.say("setup.back-up"), () -> presenter.backUp())
                .type(TextStyle.ACTION)
                .tall(80);
        now.setEnabled(state.work() == BackupState.Work.NONE);
        card.add(now);
        if (state.work() == BackupState.Work.WRITING) {
            card.add(new WrapLabel(words.say("setup.backing-up"), TextStyle.LINE, Tone.INK), "wmin 0");
        }
        state.said().ifPresent(said -> {
            WrapLabel label = new WrapLabel(said, TextStyle.BUTTON, Tone.INK);
            label.setName("backed-up");
            card.add(label, "wmin 0");
        });
        problem.say(state.problem());
        card.add(problem, "wmin 0");
        whole.add(card);
        whole.add(kept(state));
        whole.revalidate();
        whole.repaint();
    }

    private JComponent kept(BackupState state) {
        Card card = new Card(new MigLayout("insets 16 32 18 32, fillx, wrap 1, gap 0 6", "[grow,fill]"));
        card.add(new WrapLabel(words.say("setup.kept"), TextStyle.TAG, Tone.SOFT));
        if (state.kept().isEmpty()) {
            card.add(new WrapLabel(words.say("setup.none-kept"), TextStyle.LINE, Tone.INK), "wmin 0");
        }
        state.kept().forEach(name -> card.add(new WrapLabel(name, TextStyle.LINE, Tone.INK), "wmin 0"));
        state.space().ifPresent(space -> card.add(new WrapLabel(space, TextStyle.LINE, Tone.SOFT), "wmin 0, gaptop 8"));
        return card;
    }
}
