package org.kitweft.sound;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.kitweft.file.FullDisk;
import org.kitweft.sound.bank.BuiltInBank;
import org.kitweft.sound.midi.MidiFile;
import org.kitweft.sound.synth.ImpulseBank;
import org.kitweft.sound.wave.Progress;
import org.kitweft.sound.wave.WaveFile;

/** A disk that becomes full while something is exported. */
class DiskFullTest {
    private static final Timeline TIMELINE =
            Timeline.of(Phrases.of("RLRR LRLL"), PlaySettings.DEFAULT.withLoops(4));

    @TempDir Path folder;

    enum Export {
        WAV {
            @Override
            void to(Path target) throws IOException {
                WaveFile.write(TIMELINE, ImpulseBank.bank(), target, true, Progress.NONE);
            }
        },
        MIDI {
            @Override
            void to(Path target) throws IOException {
                MidiFile.write(TIMELINE, target, true);
            }
        },
        BANK {
            @Override
            void to(Path target) throws IOException {
                BuiltInBank.export(new byte[1_000_000], target, true);
            }
        };

        abstract void to(Path target) throws IOException;
    }

    @ParameterizedTest
    @CsvSource({
        "WAV, 0",
        "WAV, 43",
        "WAV, 100000",
        "MIDI, 0",
        "MIDI, 100",
        "BANK, 0",
        "BANK, 999999"
    })
    void oneLineTellsItAndNothingIsLeft(Export export, long room) {
        Path target = FullDisk.with(room, folder).resolve("out.file");
        assertThatThrownBy(() -> export.to(target))
                .isInstanceOf(IOException.class)
                .hasMessage("cannot write %s: No space left on device".formatted(target));
        assertThat(folder).isEmptyDirectory();
    }

    @ParameterizedTest
    @EnumSource
    void theFormerFileStaysAsItWas(Export export) throws IOException {
        Path former = Files.writeString(folder.resolve("out.file"), "mine");
        Path target = FullDisk.with(50, folder).resolve("out.file");
        assertThatThrownBy(() -> export.to(target)).isInstanceOf(IOException.class);
        assertThat(former).hasContent("mine");
        assertThat(folder).isDirectoryNotContaining(path -> !path.equals(former));
    }

    @ParameterizedTest
    @EnumSource
    void withRoomEnoughItIsWritten(Export export) throws IOException {
        export.to(FullDisk.with(10_000_000, folder).resolve("out.file"));
        assertThat(folder.resolve("out.file")).isNotEmptyFile();
    }
}
