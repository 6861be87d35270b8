package org.kitweft.ui.explore;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.kitweft.kit.BuiltInKits;
import org.kitweft.kit.Kit;
import org.kitweft.kit.SoundName;

class ShortNamesTest {
    @ParameterizedTest
    @ValueSource(
            strings = {"five-piece", "extended", "hand-drums", "marimba", "vibraphone", "timpani"})
    void everySoundOfAKitHasAShortNameOfItsOwn(String kit) {
        Kit read = BuiltInKits.load(kit);
        ShortNames names = new ShortNames(read);
        List<String> all = read.soundNames().stream().map(names::of).toList();
        Set<String> different = new HashSet<>(all);
        assertThat(different).hasSameSizeAs(all);
        assertThat(all).allMatch(name -> !name.isBlank() && name.length() <= 4);
    }

    @ParameterizedTest
    @CsvSource({
        "five-piece, snare, Sn",
        "five-piece, snare.rim, Snr",
        "five-piece, high-tom, HT",
        "five-piece, hi-hat.open, HHo",
        "extended, second-crash, SC",
        "hand-drums, djembe.slap, Djs",
        "timpani, timpano-1, T81"
    })
    void namesAreWhatADrummerWouldScribble(String kit, String sound, String name) {
        Kit read = BuiltInKits.load(kit);
        SoundName found = sound.equals("timpano-1") ? read.soundNames().get(0) : read.find(sound);
        assertThat(new ShortNames(read).of(found)).isEqualTo(name);
    }

    @Test
    void pitchesKeepTheirNames() {
        Kit marimba = BuiltInKits.load("marimba");
        ShortNames names = new ShortNames(marimba);
        assertThat(marimba.soundNames().stream().limit(3).map(names::of))
                .containsExactly("C3", "C♯3", "D3");
    }
}
