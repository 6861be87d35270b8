package org.kitweft.sound.live;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import org.kitweft.groove.Hit;
import org.kitweft.groove.Place;
import org.kitweft.sound.PlayerListener;

/** Keeps what a player told, and waits for it. */
final class Recorder implements PlayerListener {
    /** So long nothing takes; a test that waits longer has failed. */
    private static final int PATIENCE_SECONDS = 60;

    final LinkedBlockingQueue<String> told = new LinkedBlockingQueue<>();
    final List<Place> places = new ArrayList<>();
    final List<Integer> struckTogether = new ArrayList<>();
    final CountDownLatch firstStroke = new CountDownLatch(1);

    @Override
    public synchronized void struck(List<Hit> hits, Place place, long tick) {
        places.add(place);
        struckTogether.add(hits.size());
        firstStroke.countDown();
    }

    @Override
    public void state(boolean playing) {
        told.add(playing ? "playing" : "stopped");
    }

    @Override
    public void silent() {
        told.add("silent");
    }

    @Override
    public void fault(String message) {
        told.add("fault: " + message);
    }

    /** The next thing told. */
    String next() throws InterruptedException {
        String next = told.poll(PATIENCE_SECONDS, TimeUnit.SECONDS);
        if (next == null) {
            throw new AssertionError("nothing was told for " + PATIENCE_SECONDS + " s");
        }
        return next;
    }
}
