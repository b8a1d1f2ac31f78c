package org.cagewall.desk;

import java.util.concurrent.Executor;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;

/**
 * The threads of the desk: one for recording and what a touch needs, one for long readings, one for the decoding of
 * pictures, and where answers arrive. There are no others.
 */
public final class Lanes implements AutoCloseable {

    private static final long PATIENCE_SECONDS = 30;

    private final ExecutorService record;
    private final ExecutorService study;
    private final ExecutorService frames;
    private final Executor answers;

    private Lanes(ExecutorService record, ExecutorService study, ExecutorService frames, Executor answers) {
        this.record = record;
        this.study = study;
        this.frames = frames;
        this.answers = answers;
    }

    /** A thread for each lane; answers arrive on the given executor. */
    public static Lanes answeringOn(Executor answers) {
        return new Lanes(lane("record"), lane("study"), lane("frames"), answers);
    }

    /** Everything on the caller's thread, at once: for the command line and for tests. */
    public static Lanes inline() {
        return new Lanes(new Inline(), new Inline(), new Inline(), Runnable::run);
    }

    Executor record() {
        return record;
    }

    Executor study() {
        return study;
    }

    Executor frames() {
        return frames;
    }

    Executor answers() {
        return answers;
    }

    /** Lets what has been begun come to its end. */
    @Override
    public void close() {
        finish(frames);
        finish(study);
        finish(record);
    }

    private static void finish(ExecutorService lane) {
        lane.shutdown();
        try {
            lane.awaitTermination(PATIENCE_SECONDS, TimeUnit.SECONDS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    private static ExecutorService lane(String name) {
        return Executors.newSingleThreadExecutor(work -> new Thread(work, "lane-" + name));
    }

    /** Runs each piece of work on the thread that hands it in. */
    private static final class Inline extends java.util.concurrent.AbstractExecutorService {

        private boolean shut;

        @Override
        public void execute(Runnable work) {
            work.run();
        }

        @Override
        public void shutdown() {
            shut = true;
        }

        @Override
        public java.util.List<Runnable> shutdownNow() {
            shut = true;
            return java.util.List.of();
        }

        @Override
        public boolean isShutdown() {
            return shut;
        }

        @Override
        public boolean isTerminated() {
            return shut;
        }

        @Override
        public boolean awaitTermination(long time, TimeUnit unit) {
            return shut;
        }
    }
}
