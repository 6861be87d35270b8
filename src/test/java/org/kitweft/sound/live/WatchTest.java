package org.kitweft.sound.live;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.api.Test;

class WatchTest {
    @Test
    void aWriteThatHangsIsFoundOnceAndOthersAreLeftAlone() throws LineLostException {
        OutputLine line = new FakeLines().open(Optional.empty(), 882);
        Watch watch = new Watch();
        assertThat(watch.hanging()).isNull();
        watch.begin(line);
        for (int i = 1; i < Watch.PATIENCE; i++) {
            assertThat(watch.hanging()).isNull();
        }
        assertThat(watch.hanging()).isSameAs(line);
        assertThat(watch.hanging()).isNull();
        watch.begin(line);
        watch.end();
        for (int i = 0; i < 10; i++) {
            assertThat(watch.hanging()).isNull();
        }
    }
}
