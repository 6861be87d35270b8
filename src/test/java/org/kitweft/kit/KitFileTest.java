package org.kitweft.kit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class KitFileTest {
    private static final String PAD =
            """
            {"name":"Pad","surfaces":[{"id":"pad","name":"Pad","x":0,"y":40,"z":70,"diameter":30,\
            "limbs":["right-hand","left-hand"],"sounds":[{"id":"head","channel":10,"key":38,\
            "place":"C5","notehead":"normal"}]}]}""";

    @TempDir Path folder;

    @Test
    void readsAKitFile() throws IOException {
        Kit kit = KitFile.read(Files.writeString(folder.resolve("pad.json"), PAD));
        assertThat(kit.soundNames()).containsExactly(new SoundName("pad", "head"));
        assertThat(kit.soundsFor(Limb.RIGHT_FOOT)).isEmpty();
    }

    /** One fault each: a part of the file, what stands there instead, and the whole message. */
    @ParameterizedTest(name = "{1}")
    @CsvSource(
            delimiter = ';',
            quoteCharacter = '`',
            textBlock =
                    """
                    "right-hand"; "third-hand"; surface 1 ("pad"): unknown limb "third-hand", expected right-hand, left-hand, right-foot or left-foot
                    "key":38; "key":128; surface 1 ("pad"), sound 1 ("head"): key 128 is outside 0 to 127
                    "key":38; "key":-1; surface 1 ("pad"), sound 1 ("head"): key -1 is outside 0 to 127
                    "key":38; "key":38.5; surface 1 ("pad"), sound 1 ("head"): expected a whole number "key"
                    "key":38; "key":"38"; surface 1 ("pad"), sound 1 ("head"): expected a whole number "key"
                    "key":38; "key":38,"program":200; surface 1 ("pad"), sound 1 ("head"): program 200 is outside 0 to 127
                    "channel":10; "channel":0; surface 1 ("pad"), sound 1 ("head"): channel 0 is outside 1 to 16
                    "channel":10; "channel":17; surface 1 ("pad"), sound 1 ("head"): channel 17 is outside 1 to 16
                    "C5"; "H5"; surface 1 ("pad"), sound 1 ("head"): 'H5' is not a staff place such as C5 or F#4
                    "normal"; "round"; surface 1 ("pad"), sound 1 ("head"): unknown notehead "round"
                    "id":"head"; "id":"The Head"; surface 1 ("pad"), sound 1 ("The Head"): sound id "The Head": expected small letters and digits with hyphens, as in floor-tom
                    "id":"pad"; "id":"Pad"; surface 1 ("Pad"): surface id "Pad": expected small letters and digits with hyphens, as in floor-tom
                    "id":"pad",; ; surface 1: expected a text "id"
                    "x":0; "x":"0"; surface 1 ("pad"): expected a number of centimetres "x"
                    "limbs":["right-hand","left-hand"],; ; surface 1 ("pad"): expected a list "limbs"
                    "notehead":"normal"; "notehead":"normal","stops":["open"]; surface 1 ("pad"): sound "head" stops "open", which the surface does not have
                    "notehead":"normal"; "notehead":"normal","limbs":["left-foot"]; surface 1 ("pad"): sound "head" has limbs that cannot reach the surface
                    "notehead":"normal"; "notehead":"normal","limbs":[]; surface 1 ("pad"), sound 1 ("head"): sound "head" can be struck by no limb
                    "name":"Pad","surfaces"; "surfaces"; expected a text "name"
                    {"name":"Pad",; {"name":" ",; surfaces: the kit's name is empty
                    {"name":"Pad",; {"name":"Pad","leftHanded":"yes",; expected true or false "leftHanded"
                    """)
    void namesEachFaultAndItsPlace(String part, String instead, String fault) {
        String broken = PAD.replace(part, instead == null ? "" : instead);
        assertThat(broken).isNotEqualTo(PAD);
        assertThatThrownBy(() -> KitFile.parse(broken, "pad.json"))
                .isInstanceOf(KitFormatException.class)
                .hasMessage("kit file pad.json: " + fault);
    }

    @Test
    void twoSurfacesOfOneIdAreRefused() {
        String surface = PAD.substring(PAD.indexOf('[') + 1, PAD.lastIndexOf(']'));
        assertThatThrownBy(
                        () -> KitFile.parse(PAD.replace(surface, surface + "," + surface), "two"))
                .hasMessage(
                        "kit file two: surfaces: kit \"Pad\": two surfaces have the id \"pad\"");
    }

    @Test
    void twoSoundsOfOneIdAreRefused() {
        String sound =
                PAD.substring(PAD.lastIndexOf('[') + 1, PAD.indexOf(']', PAD.lastIndexOf('[')));
        assertThatThrownBy(() -> KitFile.parse(PAD.replace(sound, sound + "," + sound), "two"))
                .hasMessage("kit file two: surface 1 (\"pad\"): two sounds have the id \"head\"");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            quoteCharacter = '`',
            textBlock =
                    """
                    {"name":"Bare","surfaces":[]}; surfaces: the kit has no surface
                    []; expected an object {"name", "surfaces"}
                    ``; expected an object {"name", "surfaces"}
                    {"name":"Bare"}; expected a list "surfaces"
                    """)
    void whatIsNoKitIsRefused(String json, String fault) {
        assertThatThrownBy(() -> KitFile.parse(json, "x")).hasMessage("kit file x: " + fault);
    }

    @Test
    void aFileCutShortNamesTheLine() {
        for (int length = 1; length < PAD.length(); length++) {
            String cut = PAD.substring(0, length);
            assertThatThrownBy(() -> KitFile.parse(cut, "cut.json"))
                    .isInstanceOf(KitFormatException.class)
                    .hasMessageStartingWith("kit file cut.json: line 1, column ")
                    .hasMessageContaining("it is not whole JSON text")
                    .message()
                    .hasLineCount(1);
        }
    }

    @Test
    void aFileThatIsNoTextAndAMissingFileAreNamed() throws IOException {
        Path noText = Files.write(folder.resolve("no-text.json"), new byte[] {(byte) 0xff, 0, 1});
        assertThatThrownBy(() -> KitFile.read(noText))
                .isInstanceOf(KitFormatException.class)
                .hasMessageContaining("it is not text in UTF-8");
        assertThatThrownBy(() -> KitFile.read(folder.resolve("none.json")))
                .isInstanceOf(NoSuchFileException.class);
    }
}
