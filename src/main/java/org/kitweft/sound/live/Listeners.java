package org.kitweft.sound.live;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.function.Consumer;
import org.kitweft.groove.Practice;
import org.kitweft.sound.PlayerListener;

/** Tells all listeners; one that fails does not stop the sound. */
final class Listeners {
    private final List<PlayerListener> all = new CopyOnWriteArrayList<>();

    void add(PlayerListener listener) {
        all.add(listener);
    }

    void remove(PlayerListener listener) {
        all.remove(listener);
    }

    void struck(Cue cue) {
        tell(listener -> listener.struck(cue.hits(), cue.place(), cue.tick()));
    }

    void loop(int number, Practice.Loop loop) {
        tell(listener -> listener.loop(number, loop));
    }

    void state(boolean playing) {
        tell(listener -> listener.state(playing));
    }

    void silent() {
        tell(PlayerListener::silent);
    }

    void fault(String message) {
        tell(listener -> listener.fault(message));
    }

    void notice(Optional<String> why) {
        tell(listener -> listener.notice(why));
    }

    private void tell(Consumer<PlayerListener> what) {
        for (PlayerListener listener : all) {
            try {
                what.accept(listener);
            } catch (RuntimeException e) {
                Thread here = Thread.currentThread();
                here.getUncaughtExceptionHandler().uncaughtException(here, e);
            }
        }
    }
}
