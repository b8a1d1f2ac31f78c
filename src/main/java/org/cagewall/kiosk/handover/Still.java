package org.cagewall.kiosk.handover;

import net.miginfocom.swing.MigLayout;
import org.cagewall.kiosk.kit.Card;
import org.cagewall.kiosk.kit.Tag;
import org.cagewall.kiosk.kit.WrapLabel;
import org.cagewall.kiosk.kit.list.RowFace;
import org.cagewall.kiosk.theme.TextStyle;
import org.cagewall.kiosk.theme.Tone;

/** A line of a list that is only read. Used on the event thread. */
final class Still {

    private Still() {}

    static Card of(RowFace face) {
        boolean lead = !face.lead().isEmpty();
        Card card = new Card(new MigLayout(
                "insets 12 24 12 20, fillx, gap 0 4", lead ? "[112!][grow,fill][]" : "[0!][grow,fill][]"));
        boolean done = face.state() != RowFace.State.OPEN;
        Tone tone = done ? Tone.SOFT : Tone.INK;
        card.add(new WrapLabel(face.lead(), TextStyle.LEAD, tone), "cell 0 0 1 2, wmin 0, wmax 108, aligny center");
        WrapLabel first = new WrapLabel(face.first(), TextStyle.BUTTON, tone);
        card.add(face.state() == RowFace.State.STRUCK ? first.struckOut() : first, "cell 1 0, wmin 0, growx");
        card.add(new WrapLabel(face.second(), TextStyle.LINE, tone), "cell 1 1, wmin 0, growx");
        face.tag().ifPresent(tag -> card.add(new Tag(tag.kind(), tag.text()), "cell 2 0 1 2, gapleft 12"));
        return card;
    }
}
