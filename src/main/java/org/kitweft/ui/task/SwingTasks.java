package org.kitweft.ui.task;

import java.awt.EventQueue;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.Consumer;

/** Work on a few threads of its own, outcomes on the event thread. */
public final class SwingTasks implements Tasks {
    private static final int THREADS = 3;

    /** Shows work that takes time; all methods are called on the event thread. */
    public interface Display {
        /** Work has begun that can be stopped. */
        void begun(String name, Running running);

        /** It has come so far, from 0 to 1. */
        void at(double part);

        /** It has ended, one way or another. */
        void ended();
    }

    private final ExecutorService threads =
            Executors.newFixedThreadPool(
                    THREADS,
                    work -> {
                        Thread thread = new Thread(work, "Kitweft work");
                        thread.setDaemon(true);
                        return thread;
                    });
    private final Display display;

    /**
     * @param display shows work that has a name
     */
    public SwingTasks(Display display) {
        this.display = display;
    }

    @Override
    public <T> Running run(
            String name, Work<T> work, Consumer<T> done, Consumer<Exception> failed) {
        One<T> one = new One<>(name, work, done, failed);
        if (!name.isEmpty()) {
            display.begun(name, one);
        }
        threads.execute(one);
        return one;
    }

    private final class One<T> implements Running, Progress, Runnable {
        private static final double VISIBLE = 0.01;

        private final AtomicBoolean stopped = new AtomicBoolean();
        private final String name;
        private final Work<T> work;
        private final Consumer<T> done;
        private final Consumer<Exception> failed;

        /** Touched by the thread that works only. */
        private double told;

        One(String name, Work<T> work, Consumer<T> done, Consumer<Exception> failed) {
            this.name = name;
            this.work = work;
            this.done = done;
            this.failed = failed;
        }

        @Override
        public void run() {
            try {
                T outcome = work.run(this);
                later(() -> done.accept(outcome));
            } catch (Exception e) {
                later(() -> failed.accept(e));
            }
        }

        private void later(Runnable body) {
            EventQueue.invokeLater(
                    () -> {
                        if (!name.isEmpty()) {
                            display.ended();
                        }
                        if (!stopped.get()) {
                            body.run();
                        }
                    });
        }

        @Override
        public void stop() {
            stopped.set(true);
        }

        @Override
        public void at(double part) {
            if (part - told >= VISIBLE && !name.isEmpty()) {
                told = part;
                EventQueue.invokeLater(() -> display.at(part));
            }
        }

        @Override
        public boolean stopped() {
            return stopped.get();
        }
    }
}
