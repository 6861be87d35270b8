package org.kitweft.sound;

import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.atomic.AtomicReference;
import org.kitweft.groove.Phrase;

/** Plays a phrase to its end and waits: for programs that have nothing else to do. */
public final class PlayOut implements PlayerListener {
    private final CountDownLatch done = new CountDownLatch(1);
    private final AtomicReference<Optional<String>> fault = new AtomicReference<>(Optional.empty());

    private PlayOut() {}

    /**
     * Plays, and returns when the last stroke has rung out.
     *
     * @param settings with a number of loops; endless ones return when the player is stopped
     * @return what kept it from playing, in one line; empty if it was played
     */
    public static Optional<String> play(Player player, Phrase phrase, PlaySettings settings)
            throws InterruptedException {
        return play(player, Playable.of(phrase), settings);
    }

    /** The same for a phrase with a band. */
    public static Optional<String> play(Player player, Playable playable, PlaySettings settings)
            throws InterruptedException {
        PlayOut out = new PlayOut();
        player.addListener(out);
        try {
            player.settings(settings);
            player.show(playable);
            player.play();
            out.done.await();
        } finally {
            player.removeListener(out);
        }
        return out.fault.get();
    }

    @Override
    public void fault(String message) {
        fault.compareAndSet(Optional.empty(), Optional.of(message));
    }

    @Override
    public void silent() {
        done.countDown();
    }
}
