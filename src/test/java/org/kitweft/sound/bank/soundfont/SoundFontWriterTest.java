package org.kitweft.sound.bank.soundfont;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.sun.media.sound.SF2GlobalRegion;
import com.sun.media.sound.SF2Instrument;
import com.sun.media.sound.SF2InstrumentRegion;
import com.sun.media.sound.SF2LayerRegion;
import com.sun.media.sound.SF2Region;
import com.sun.media.sound.SF2Sample;
import com.sun.media.sound.SF2Soundbank;
import java.io.ByteArrayInputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/**
 * Files written here, read back by the JDK's own SoundFont 2 reader and, byte by byte, against the
 * standard.
 */
class SoundFontWriterTest {
    private static final SoundFont SMALL = small();

    private static SoundFont small() {
        short[] ramp = new short[100];
        for (int i = 0; i < ramp.length; i++) {
            ramp[i] = (short) (i * 300);
        }
        Sample once = Sample.ending("once", ramp, 44_100, 38);
        Sample looped = Sample.looping("looped", ramp, 22_050, 60, 10, 90);
        Zone soft =
                new Zone(
                        "once",
                        Span.only(38),
                        new Span(0, 63),
                        Map.of(Generator.PAN, -250),
                        List.of());
        Zone hard =
                new Zone(
                        "looped",
                        new Span(36, 72),
                        new Span(64, 127),
                        Map.of(Generator.SAMPLE_MODES, 1, Generator.EXCLUSIVE_CLASS, 3),
                        List.of(Modulator.ofController(1, Generator.MOD_LFO_TO_VOLUME, 60)));
        return new SoundFont(
                "Small",
                "A comment.",
                "Apache-2.0",
                List.of(once, looped),
                List.of(new Instrument("both", List.of(soft, hard))),
                List.of(
                        Preset.of("Later", 5, "both"),
                        new Preset(
                                "Drums",
                                Preset.PERCUSSION_BANK,
                                0,
                                List.of(new Preset.Part("both", new Span(30, 80), -2)))));
    }

    private static SF2Soundbank read() throws Exception {
        return new SF2Soundbank(new ByteArrayInputStream(SoundFontWriter.bytes(SMALL)));
    }

    @Test
    void theJdkReadsBackTextsAndSamples() throws Exception {
        SF2Soundbank bank = read();
        assertThat(bank.getName()).isEqualTo("Small");
        assertThat(bank.getDescription()).isEqualTo("A comment.");
        assertThat(bank.getSamples())
                .extracting(SF2Sample::getName)
                .containsExactly("once", "looped");
        SF2Sample looped = bank.getSamples()[1];
        assertThat(looped.getSampleRate()).isEqualTo(22_050);
        assertThat(looped.getOriginalPitch()).isEqualTo(60);
        assertThat(looped.getStartLoop()).isEqualTo(10);
        assertThat(looped.getEndLoop()).isEqualTo(90);
        assertThat(looped.getDataBuffer().capacity()).isEqualTo(200);
    }

    @Test
    void theJdkReadsBackZones() throws Exception {
        List<SF2LayerRegion> regions = read().getLayers()[0].getRegions();
        assertThat(regions).hasSize(2);
        assertThat(regions.get(0).getShort(SF2Region.GENERATOR_PAN)).isEqualTo((short) -250);
        assertThat(regions.get(0).getBytes(SF2Region.GENERATOR_KEYRANGE)).containsExactly(38, 38);
        assertThat(regions.get(1).getBytes(SF2Region.GENERATOR_VELRANGE)).containsExactly(64, 127);
        assertThat(regions.get(1).getShort(SF2Region.GENERATOR_EXCLUSIVECLASS))
                .isEqualTo((short) 3);
        assertThat(regions.get(1).getSample().getName()).isEqualTo("looped");
    }

    @Test
    void presetsComeSortedByBankAndProgram() throws Exception {
        SF2Instrument[] instruments = read().getInstruments();
        assertThat(instruments)
                .extracting(SF2Instrument::getName)
                .containsExactly("Later", "Drums");
        SF2InstrumentRegion region = instruments[1].getRegions().get(0);
        assertThat(region.getShort(SF2Region.GENERATOR_COARSETUNE)).isEqualTo((short) -2);
        SF2GlobalRegion none = instruments[1].getGlobalRegion();
        assertThat(none).isNull();
    }

    /**
     * SoundFont 2.04: sizes of records by section 7.2 to 7.10; 46 zeros after each sample by 6.1;
     * version by 5.1.
     */
    @Test
    void tablesHaveTheStandardsSizes() {
        ByteBuffer file =
                ByteBuffer.wrap(SoundFontWriter.bytes(SMALL)).order(ByteOrder.LITTLE_ENDIAN);
        assertThat(file.getInt(4)).isEqualTo(file.capacity() - 8);
        assertThat(length(file, "smpl")).isEqualTo(2 * 2 * (100 + 46));
        assertThat(length(file, "phdr")).isEqualTo(38 * 3);
        assertThat(length(file, "pbag")).isEqualTo(4 * 3);
        assertThat(length(file, "pmod")).isEqualTo(10);
        assertThat(length(file, "pgen")).isEqualTo(4 * (2 + 3 + 1));
        assertThat(length(file, "inst")).isEqualTo(22 * 2);
        assertThat(length(file, "ibag")).isEqualTo(4 * 3);
        assertThat(length(file, "imod")).isEqualTo(10 * 2);
        assertThat(length(file, "igen")).isEqualTo(4 * (4 + 5 + 1));
        assertThat(length(file, "shdr")).isEqualTo(46 * 3);
        int version = find(file, "ifil") + 8;
        assertThat(file.getShort(version)).isEqualTo((short) 2);
    }

    @Test
    void refusesWhatPointsNowhere() {
        Zone lost = new Zone("gone", Span.ALL, Span.ALL, Map.of(), List.of());
        assertThatThrownBy(
                        () ->
                                new SoundFont(
                                        "x",
                                        "",
                                        "",
                                        List.of(),
                                        List.of(new Instrument("i", List.of(lost))),
                                        List.of()))
                .hasMessage("i uses sample gone, which is not in the bank");
        assertThatThrownBy(() -> Sample.ending("a name of more than 20", new short[50], 44_100, 60))
                .hasMessageContaining("1 to 20");
        assertThatThrownBy(() -> Sample.ending("short", new short[10], 44_100, 60))
                .hasMessageContaining("at least 48");
        assertThatThrownBy(() -> new Span(5, 4)).hasMessageContaining("5 to 4");
    }

    private static int length(ByteBuffer file, String chunk) {
        return file.getInt(find(file, chunk) + 4);
    }

    private static int find(ByteBuffer file, String chunk) {
        int at =
                StandardCharsets.ISO_8859_1
                        .decode(file.duplicate().rewind())
                        .toString()
                        .indexOf(chunk);
        assertThat(at).as(chunk).isPositive();
        return at;
    }
}
