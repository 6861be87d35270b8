package org.kitweft.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.lang.reflect.Proxy;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.kitweft.groove.OpeningGroove;
import org.kitweft.groove.Phrase;
import org.kitweft.sound.PlaySettings;
import org.kitweft.sound.Playable;
import org.kitweft.sound.Player;
import org.kitweft.sound.PlayerListener;

class PlayingTest {
    private static final Phrase PHRASE = Phrase.of(OpeningGroove.recipe().weave());

    /** A player that notes what is asked of it, and whose playing is over at once. */
    private static Player player(List<String> asked, List<String> faults) {
        List<PlayerListener> listeners = new ArrayList<>();
        return (Player)
                Proxy.newProxyInstance(
                        PlayingTest.class.getClassLoader(),
                        new Class<?>[] {Player.class},
                        (self, method, args) -> {
                            asked.add(method.getName());
                            if (method.getName().equals("addListener")) {
                                listeners.add((PlayerListener) args[0]);
                            } else if (method.getName().equals("play")) {
                                for (PlayerListener listener : listeners) {
                                    faults.forEach(listener::fault);
                                    listener.silent();
                                }
                            }
                            return null;
                        });
    }

    @Test
    void itIsPlayedToItsEnd() throws InterruptedException {
        List<String> asked = new ArrayList<>();
        Playing.play(
                player(asked, List.of()), Playable.of(PHRASE), PlaySettings.DEFAULT.withLoops(1));
        assertThat(asked).containsExactly("addListener", "settings", "show", "play");
    }

    @Test
    void aFaultIsTold() {
        Player player = player(new ArrayList<>(), List.of("the audio line was taken away"));
        assertThatThrownBy(
                        () ->
                                Playing.play(
                                        player,
                                        Playable.of(PHRASE),
                                        PlaySettings.DEFAULT.withLoops(1)))
                .isInstanceOf(InputException.class)
                .hasMessage("the audio line was taken away");
    }
}
