package org.kitweft.sound;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.reflect.Proxy;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.kitweft.groove.OpeningGroove;
import org.kitweft.groove.Phrase;

class PlayOutTest {
    private static final Phrase PHRASE = Phrase.of(OpeningGroove.recipe().weave());
    private static final PlaySettings ONCE = PlaySettings.DEFAULT.withLoops(1);

    /** A player that notes what is asked of it, and whose playing is over at once. */
    private static Player player(List<String> asked, List<String> faults) {
        List<PlayerListener> listeners = new ArrayList<>();
        return (Player)
                Proxy.newProxyInstance(
                        PlayOutTest.class.getClassLoader(),
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
    void playsToTheEndAndLeavesNobodyListening() throws InterruptedException {
        List<String> asked = new ArrayList<>();
        assertThat(PlayOut.play(player(asked, List.of()), PHRASE, ONCE)).isEmpty();
        assertThat(asked)
                .containsExactly("addListener", "settings", "show", "play", "removeListener");
    }

    @Test
    void tellsTheFirstFault() throws InterruptedException {
        Player player = player(new ArrayList<>(), List.of("the audio line was taken away", "more"));
        assertThat(PlayOut.play(player, PHRASE, ONCE)).contains("the audio line was taken away");
    }
}
