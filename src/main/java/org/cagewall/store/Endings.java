package org.cagewall.store;

/**
 * Ends several things, each whatever became of the ones before, so that what broke first is what is heard of. Stateless;
 * any thread.
 */
public final class Endings {

    private Endings() {}

    /** Takes every step; then throws what the first one threw that did, the others with it as suppressed. */
    public static void all(Runnable... steps) {
        from(0, steps);
    }

    private static void from(int index, Runnable... steps) {
        if (index == steps.length) {
            return;
        }
        try {
            steps[index].run();
        } catch (RuntimeException | Error e) {
            after(e, () -> from(index + 1, steps));
            throw e;
        }
        from(index + 1, steps);
    }

    /** Takes a step after something broke, and adds to it what the step throws. */
    public static void after(Throwable broken, Runnable step) {
        try {
            step.run();
        } catch (RuntimeException | Error e) {
            broken.addSuppressed(e);
        }
    }
}
