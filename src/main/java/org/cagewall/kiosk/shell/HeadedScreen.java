package org.cagewall.kiosk.shell;

import java.awt.LayoutManager;
import javax.swing.JComponent;
import org.cagewall.kiosk.kit.Heading;
import org.cagewall.kiosk.kit.Pane;

/** A screen as nearly all are made: a heading, a view, and a watch that keeps them true while they are shown. Event thread. */
public abstract class HeadedScreen implements Screen {

    protected final Heading heading = new Heading("", "");
    protected final Pane view;

    protected HeadedScreen(LayoutManager layout) {
        view = new Pane(layout);
    }

    /** What keeps the presenter up to date. */
    protected abstract Refresher watch();

    @Override
    public final Heading heading() {
        return heading;
    }

    @Override
    public final JComponent view() {
        return view;
    }

    @Override
    public void shown() {
        watch().start();
    }

    @Override
    public void hidden() {
        watch().stop();
    }

    /** To be called once the view has other parts. */
    protected final void rebuilt() {
        view.revalidate();
        view.repaint();
    }
}
