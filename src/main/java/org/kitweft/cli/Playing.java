package org.kitweft.cli;

import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.atomic.AtomicReference;
import org.kitweft.sound.PlaySettings;
import org.kitweft.sound.Playable;
import org.kitweft.sound.Player;
import org.kitweft.sound.PlayerListener;

/** Plays a phrase and waits for its end. */
final class Playing {
    private Playing() {}

    /**
     * Plays until the last strokes have rung out.
     *
     * @throws InputException what the player found wrong, in words for people
     * @throws InterruptedException if the wait is interrupted; then playing has stopped
     */
    static void play(Player player, Playable playable, PlaySettings settings)
            throws InterruptedException {
        CountDownLatch ended = new CountDownLatch(1);
        AtomicReference<Optional<String>> fault = new AtomicReference<>(Optional.empty());
        player.addListener(
                new PlayerListener() {
                    @Override
                    public void silent() {
                        ended.countDown();
                    }

                    @Override
                    public void fault(String message) {
                        fault.set(Optional.of(message));
                    }
                });
        player.settings(settings);
        player.show(playable);
        player.play();
        ended.await();
        if (fault.get().isPresent()) {
            throw new InputException(fault.get().get());
        }
    }
}
