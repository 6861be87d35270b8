package org.kitweft.sound.bank;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.CancellationException;
import javax.sound.midi.Instrument;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class BuiltInBankTest {
    /**
     * Computed by this code, no outside source: it shows when a sound has changed, and then {@link
     * BuiltInBank#VERSION} must be raised, or users keep their old copy. The same on every machine,
     * since only exactly rounded arithmetic and StrictMath go into the bank.
     */
    private static final String CHECKSUM_OF_VERSION_2 = "CRC-32 ec415dc8";

    @Test
    void theVersionStandsForTheseBytes() {
        assertThat(BuiltInBank.VERSION).isEqualTo(2);
        assertThat(new String(TestBank.bytes(), 0, 1024, StandardCharsets.ISO_8859_1))
                .contains(CHECKSUM_OF_VERSION_2);
    }

    @Test
    void theSameVersionGivesTheSameBytes() {
        byte[] again = BuiltInBank.build();
        assertThat(Arrays.equals(again, TestBank.bytes())).isTrue();
        assertThat(BuiltInBank.fault(again)).isEmpty();
    }

    @Test
    void staysUnderTwelveMegabytes() {
        assertThat(TestBank.bytes().length).isLessThan(12_000_000);
    }

    @Test
    void theJdkFindsThePercussionAndAllPrograms() {
        List<String> patches = new ArrayList<>();
        for (Instrument instrument : TestBank.loaded().getInstruments()) {
            patches.add(instrument.getPatch().getBank() + ":" + instrument.getPatch().getProgram());
        }
        assertThat(patches).hasSize(130).contains("0:0", "0:127", "128:11");
        assertThat(TestBank.loaded().getName()).isEqualTo(BuiltInBank.NAME);
    }

    @Test
    void isBuiltOnceAndFoundAgain(@TempDir Path home) throws IOException {
        Path folder = home.resolve("not/yet/there");
        Files.createDirectories(folder);
        Path made =
                BuiltInBank.export(TestBank.bytes(), folder.resolve(BuiltInBank.fileName()), false);
        List<Integer> rendered = new ArrayList<>();
        Path found =
                BuiltInBank.cachedIn(
                        folder,
                        new BankProgress() {
                            @Override
                            public void rendered(int done, int total) {
                                rendered.add(done);
                            }
                        });
        assertThat(found).isEqualTo(made);
        assertThat(rendered).as("nothing was built").isEmpty();
    }

    @Test
    void aDamagedCopyIsNamedAndBuiltAnew(@TempDir Path folder) throws IOException {
        byte[] damaged = TestBank.bytes();
        damaged[5_000_000] ^= 0x10;
        assertThat(BuiltInBank.fault(damaged))
                .hasValueSatisfying(f -> assertThat(f).contains("CRC-32 is"));
        Path file = Files.write(folder.resolve(BuiltInBank.fileName()), damaged);
        List<Integer> rendered = new ArrayList<>();
        BuiltInBank.cachedIn(
                folder,
                new BankProgress() {
                    @Override
                    public void rendered(int done, int total) {
                        assertThat(total).isGreaterThanOrEqualTo(done);
                        rendered.add(done);
                    }
                });
        assertThat(Arrays.equals(Files.readAllBytes(file), TestBank.bytes())).isTrue();
        assertThat(rendered).startsWith(1, 2, 3).endsWith(TestBank.values().samples().size());
        assertThat(folder).isDirectoryNotContaining("glob:**.part");
    }

    @Test
    void everyKindOfDamageIsNamed() {
        byte[] whole = TestBank.bytes();
        assertThat(BuiltInBank.fault(new byte[0]))
                .hasValueSatisfying(f -> assertThat(f).contains("RIFF"));
        assertThat(BuiltInBank.fault(Arrays.copyOf(whole, whole.length - 1000)))
                .hasValueSatisfying(f -> assertThat(f).contains("its header says"));
        byte[] other = whole.clone();
        other[100] ^= 1;
        assertThat(BuiltInBank.fault(other)).isPresent();
        byte[] end = whole.clone();
        end[whole.length - 1] ^= 1;
        assertThat(BuiltInBank.fault(end)).isPresent();
    }

    @Test
    void givesUpWhenAskedToAndLeavesNothing(@TempDir Path folder) {
        BankProgress stop =
                new BankProgress() {
                    @Override
                    public boolean cancelled() {
                        return true;
                    }
                };
        assertThatThrownBy(() -> BuiltInBank.cachedIn(folder, stop))
                .isInstanceOf(CancellationException.class)
                .hasMessageContaining("stopped");
        assertThat(folder).isEmptyDirectory();
    }

    @Test
    void itsThreadsEndWithTheCall() throws InterruptedException {
        BankProgress stop =
                new BankProgress() {
                    @Override
                    public boolean cancelled() {
                        return true;
                    }
                };
        assertThatThrownBy(() -> BuiltInBank.build(stop)).isInstanceOf(CancellationException.class);
        for (Thread thread : Thread.getAllStackTraces().keySet()) {
            if (thread.getName().equals("sound-bank")) {
                thread.join(5_000);
                assertThat(thread.isAlive()).isFalse();
            }
        }
    }

    @Test
    void neverOverwritesWhatTheUserHas(@TempDir Path folder) throws IOException {
        Path mine = Files.writeString(folder.resolve("mine.sf2"), "precious");
        assertThatThrownBy(() -> BuiltInBank.export(new byte[10], mine, false))
                .isInstanceOf(FileAlreadyExistsException.class);
        assertThat(mine).hasContent("precious");
    }

    @Test
    void aFolderThatCannotBeMadeIsAnIoException(@TempDir Path home) throws IOException {
        Path file = Files.writeString(home.resolve("file"), "in the way");
        assertThatThrownBy(
                        () -> BuiltInBank.export(TestBank.bytes(), file.resolve("bank.sf2"), false))
                .isInstanceOf(IOException.class);
        assertThat(file).hasContent("in the way");
    }
}
