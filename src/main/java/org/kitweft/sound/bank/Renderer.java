package org.kitweft.sound.bank;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.kitweft.sound.bank.soundfont.Sample;

/** Renders blueprints on threads of its own, which end with the call. */
final class Renderer {
    /** More threads than this gain nothing on some 300 short tasks. */
    private static final int MOST_THREADS = 8;

    private Renderer() {}

    /** All samples, in the blueprints' order. */
    static List<Sample> render(List<Blueprint> blueprints, BankProgress progress) {
        int threads = Math.min(MOST_THREADS, Runtime.getRuntime().availableProcessors());
        ExecutorService pool = Executors.newFixedThreadPool(threads, Renderer::thread);
        try {
            List<Future<Sample>> futures = new ArrayList<>();
            for (Blueprint blueprint : blueprints) {
                futures.add(pool.submit(() -> make(blueprint, progress)));
            }
            return collect(futures, progress);
        } finally {
            pool.shutdownNow();
        }
    }

    private static Thread thread(Runnable work) {
        Thread thread = new Thread(work, "sound-bank");
        thread.setDaemon(true);
        return thread;
    }

    private static Sample make(Blueprint blueprint, BankProgress progress) {
        if (progress.cancelled()) {
            throw new CancellationException("building the sound bank was stopped");
        }
        return blueprint.make();
    }

    private static List<Sample> collect(List<Future<Sample>> futures, BankProgress progress) {
        List<Sample> samples = new ArrayList<>();
        for (Future<Sample> future : futures) {
            samples.add(result(future));
            progress.rendered(samples.size(), futures.size());
        }
        return samples;
    }

    private static Sample result(Future<Sample> future) {
        try {
            return future.get();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            CancellationException stopped =
                    new CancellationException("building the sound bank was interrupted");
            stopped.initCause(e);
            throw stopped;
        } catch (ExecutionException e) {
            if (e.getCause() instanceof CancellationException stopped) {
                throw stopped;
            }
            throw new IllegalStateException("rendering a sample failed: " + e.getCause(), e);
        }
    }
}
