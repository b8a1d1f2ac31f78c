package org.cagewall.kiosk.shell;

import java.awt.GraphicsEnvironment;
import java.lang.reflect.InvocationTargetException;
import java.util.concurrent.Executor;
import javax.swing.SwingUtilities;

/**
 * Owns every hop to the event thread, so that no other class names it: answers of the desk arrive through it. Work that
 * is there already, or that has no display to be shown on, runs at once. Thread-safe.
 */
public final class EventThread implements Executor {

    @Override
    public void execute(Runnable work) {
        if (SwingUtilities.isEventDispatchThread() || GraphicsEnvironment.isHeadless()) {
            work.run();
        } else {
            SwingUtilities.invokeLater(work);
        }
    }

    /** Runs this on the event thread and returns when it is done; what it throws is thrown here. */
    public void finish(Runnable work) {
        if (SwingUtilities.isEventDispatchThread()) {
            work.run();
            return;
        }
        try {
            SwingUtilities.invokeAndWait(work);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("interrupted while the screen worked", e);
        } catch (InvocationTargetException e) {
            if (e.getCause() instanceof RuntimeException failure) {
                throw failure;
            }
            if (e.getCause() instanceof Error error) {
                throw error;
            }
            throw new IllegalStateException(e.getCause());
        }
    }
}
