package org.kitweft.kit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.kitweft.reference.ReferenceTable;

class BuiltInKitsTest {

    static Stream<Kit> kits() {
        return BuiltInKits.names().stream().map(BuiltInKits::load);
    }

    /** Design section 5. */
    @Test
    void areTheSixOfTheDesign() {
        assertThat(BuiltInKits.names())
                .containsExactly(
                        "five-piece", "extended", "hand-drums", "marimba", "vibraphone", "timpani");
    }

    @ParameterizedTest
    @MethodSource("kits")
    void readBackFromTheirText(Kit kit) {
        assertThat(KitFile.parse(KitFile.write(kit), "text")).isEqualTo(kit);
        assertThat(KitFile.parse(KitFile.write(kit.forOtherHand()), "text"))
                .isEqualTo(kit.forOtherHand());
    }

    @ParameterizedTest
    @MethodSource("kits")
    void forTheOtherHandTwiceAreTheSameAgain(Kit kit) {
        assertThat(kit.forOtherHand()).isNotEqualTo(kit);
        assertThat(kit.forOtherHand().forOtherHand()).isEqualTo(kit).hasSameHashCodeAs(kit);
    }

    /** Bars lie as a keyboard's keys do, drums the other way round. Common practice, no source. */
    @ParameterizedTest
    @MethodSource("kits")
    void onlyDrumsStandTheOtherWayRoundForALeftHandedPlayer(Kit kit) {
        boolean bars = List.of("marimba", "vibraphone").contains(kit.name());
        Kit left = kit.forOtherHand();
        assertThat(left.leftHanded()).isTrue();
        assertThat(left.isMirrored()).isEqualTo(!bars);
        assertThat(left.surfaces())
                .extracting(Surface::x)
                .containsExactlyElementsOf(
                        kit.surfaces().stream().map(s -> bars ? s.x() : 0 - s.x()).toList());
    }

    /** General MIDI System Level 1, shared/reference/gm1-percussion.csv. */
    @ParameterizedTest(name = "{0} is {1}")
    @CsvSource(
            textBlock =
                    """
                    snare,             Acoustic Snare
                    snare.cross-stick, Side Stick
                    snare.rim,         Electric Snare
                    bass-drum,         Bass Drum 1
                    ride,              Ride Cymbal 1
                    ride.bell,         Ride Bell
                    second-ride,       Ride Cymbal 2
                    crash,             Crash Cymbal 1
                    splash,            Splash Cymbal
                    hi-hat.closed,     Closed Hi-Hat
                    hi-hat.open,       Open Hi-Hat
                    hi-hat.foot,       Pedal Hi-Hat
                    """)
    void soundsOwnTheKeyOfGeneralMidi(String sound, String published) {
        Map<String, Integer> keys =
                ReferenceTable.rows("gm1-percussion.csv").stream()
                        .collect(
                                Collectors.toMap(
                                        row -> row.get("name"),
                                        row -> Integer.parseInt(row.get("key"))));
        Kit kit = BuiltInKits.load("extended");
        assertThat(kit.sound(kit.find(sound)).key()).isEqualTo(keys.get(published));
        assertThat(kit.sound(kit.find(sound)).channel()).isEqualTo(10);
    }

    @ParameterizedTest
    @MethodSource("kits")
    void percussionKeysAreThoseOfGeneralMidi(Kit kit) {
        Set<Integer> published =
                ReferenceTable.rows("gm1-percussion.csv").stream()
                        .map(row -> Integer.parseInt(row.get("key")))
                        .collect(Collectors.toSet());
        assertThat(sounds(kit).filter(s -> s.channel() == Sound.PERCUSSION_CHANNEL))
                .allMatch(s -> published.contains(s.key()) && s.program().isEmpty());
    }

    /** Places and noteheads of column five_piece, shared/reference/percussion-notation.csv. */
    @Test
    void theFivePieceIsWrittenAsTheReferenceSays() {
        Kit kit = BuiltInKits.load("five-piece");
        List<String> ids = kit.surfaces().stream().map(Surface::id).toList();
        int checked = 0;
        for (CSVRecord row : ReferenceTable.rows("percussion-notation.csv")) {
            String sound = row.get("sound");
            String written = row.get("five_piece");
            if (!written.isEmpty() && ids.contains(sound.replaceAll("\\..*", ""))) {
                Sound found = kit.sound(kit.find(sound));
                assertThat(found.place() + " " + found.notehead().id())
                        .as(sound)
                        .isEqualTo(written);
                checked++;
            }
        }
        assertThat(checked).isEqualTo(13);
    }

    /** General MIDI System Level 1 sound set, shared/reference/gm1-programs.csv. */
    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource({"marimba, marimba", "vibraphone, vibraphone", "timpani, timpani"})
    void pitchedKitsHaveTheProgramOfGeneralMidi(String name, String published) {
        int program =
                ReferenceTable.rows("gm1-programs.csv").stream()
                        .filter(row -> row.get("name").equals(published))
                        .mapToInt(row -> Integer.parseInt(row.get("program")))
                        .findFirst()
                        .orElseThrow();
        assertThat(sounds(BuiltInKits.load(name)))
                .allMatch(Sound::isPitched)
                .allMatch(s -> s.program().orElseThrow() == program);
    }

    /** C3 is key 48 and C7 key 96 where C4 is 60. */
    @Test
    void theMarimbaRunsFromCThreeToCSevenWithoutAGap() {
        assertThat(sounds(BuiltInKits.load("marimba")).map(Sound::key).sorted().toList())
                .hasSize(49)
                .startsWith(48)
                .endsWith(96)
                .doesNotHaveDuplicates();
    }

    @ParameterizedTest
    @MethodSource("kits")
    void keysOfPitchedSoundsAreTheirStaffPlaces(Kit kit) {
        int[] semitones = {0, 2, 4, 5, 7, 9, 11};
        assertThat(sounds(kit).filter(Sound::isPitched))
                .filteredOn(s -> Set.of("bar").contains(s.id()))
                .allMatch(
                        s ->
                                s.key()
                                        == 12 * (s.place().octave() + 1)
                                                + semitones[s.place().step()]
                                                + (s.place().sharp() ? 1 : 0));
    }

    @Test
    void anUnknownKitIsAnsweredWithTheNearest() {
        assertThatThrownBy(() -> BuiltInKits.load("timpany"))
                .isInstanceOf(UnknownNameException.class)
                .hasMessageContaining("did you mean \"timpani\"?");
    }

    private static Stream<Sound> sounds(Kit kit) {
        return kit.surfaces().stream().flatMap(surface -> surface.sounds().stream());
    }
}
