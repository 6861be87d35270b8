package org.kitweft.sound;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.kitweft.groove.Phrase;
import org.kitweft.kit.Kit;
import org.kitweft.kit.SoundName;

/**
 * Plays a phrase, live. No method blocks: sound is made on a thread of its own, and what goes wrong
 * there is told to the listeners. All methods may be called from any thread.
 *
 * <p>A player exists without an audio device too; then {@link #notice()} says so, and external MIDI
 * output still works.
 */
public interface Player extends AutoCloseable {

    /** Starts at the beginning, with the count-in; does nothing while playing or without phrase. */
    void play();

    /** Stops; does nothing if not playing. */
    void stop();

    /** Whether it plays, or is about to. */
    boolean isPlaying();

    /** What is to be played. While playing it is heard from the next step on, without a gap. */
    void show(Phrase phrase);

    /**
     * What is to be played, with a band; heard as {@link #show(Phrase)} is. A player that has no
     * band plays the phrase alone.
     */
    default void show(Playable playable) {
        show(playable.phrase());
    }

    /** How it is to be played. While playing it is heard from the next step on, without a gap. */
    void settings(PlaySettings settings);

    /** How it is played. */
    PlaySettings settings();

    /**
     * Strikes one sound at once, playing or not.
     *
     * @param velocity 1 to 127
     */
    void strike(Kit kit, SoundName sound, int velocity);

    /** Adds someone to be told. */
    void addListener(PlayerListener listener);

    /** No longer tells someone. */
    void removeListener(PlayerListener listener);

    /** The audio lines there are now; the first is the system's own choice. Asks the system. */
    List<AudioLine> lines();

    /** Plays on another line from now on. */
    void useLine(AudioLine line);

    /** The external MIDI outputs there are now. Asks the system. */
    List<MidiOutput> midiOutputs();

    /** Sends to an external MIDI output too from now on; empty: to none. */
    void useMidiOutput(Optional<MidiOutput> output);

    /**
     * Sounds with another sound bank, an SF2 or DLS file, as soon as it is loaded. A file that is
     * none is told to the listeners in one line and kept as the {@link #notice()}, and the former
     * bank stays.
     */
    void useBank(Path file);

    /**
     * Why nothing is heard, or with other sounds than wanted, in words for people: no audio device,
     * the sound bank is still being made ready, or the one that was asked for last could not be
     * had; empty if all is well.
     */
    Optional<String> notice();

    /** Stops and gives line and devices back. */
    @Override
    void close();
}
