package org.cagewall.kiosk.kit.paper;

import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.util.Arrays;
import javax.swing.JPanel;
import org.cagewall.kiosk.theme.Sizes;
import org.cagewall.kiosk.theme.Tone;

/**
 * Shows a QR symbol, dark on white in any light so that it can be scanned, with its quiet zone of four modules (ISO/IEC
 * 18004). Used on the event thread.
 */
public final class QrView extends JPanel {

    private static final long serialVersionUID = 1L;
    private static final int QUIET_ZONE = 4;

    private final boolean[][] dark;

    /** Shows these modules, {@code dark[row][column]}; {@code said} is what the symbol leads to, in words. */
    public QrView(boolean[][] dark, String said) {
        this.dark = Arrays.stream(dark).map(boolean[]::clone).toArray(boolean[][]::new);
        setName("qr");
        setOpaque(false);
        getAccessibleContext().setAccessibleName(said);
    }

    @Override
    public Dimension getPreferredSize() {
        int module = Sizes.px(6);
        int side = (dark.length + 2 * QUIET_ZONE) * module;
        return isPreferredSizeSet() ? super.getPreferredSize() : new Dimension(side, side);
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D brush = (Graphics2D) graphics.create();
        int modules = dark.length + 2 * QUIET_ZONE;
        int module = Math.max(1, Math.min(getWidth(), getHeight()) / modules);
        int side = module * modules;
        int left = (getWidth() - side) / 2;
        int top = (getHeight() - side) / 2;
        brush.setColor(Tone.SYMBOL_GROUND.color());
        brush.fillRect(left, top, side, side);
        brush.setColor(Tone.SYMBOL.color());
        for (int row = 0; row < dark.length; row++) {
            for (int column = 0; column < dark[row].length; column++) {
                if (dark[row][column]) {
                    brush.fillRect(
                            left + (column + QUIET_ZONE) * module, top + (row + QUIET_ZONE) * module, module, module);
                }
            }
        }
        brush.dispose();
    }
}
