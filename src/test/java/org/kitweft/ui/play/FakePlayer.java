package org.kitweft.ui.play;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.kitweft.groove.Phrase;
import org.kitweft.kit.Kit;
import org.kitweft.kit.SoundName;
import org.kitweft.sound.AudioLine;
import org.kitweft.sound.MidiOutput;
import org.kitweft.sound.PlaySettings;
import org.kitweft.sound.Playable;
import org.kitweft.sound.Player;
import org.kitweft.sound.PlayerListener;

/** Remembers what it is asked to do. */
public final class FakePlayer implements Player {
    public final List<String> asked = new ArrayList<>();
    public final List<PlayerListener> listeners = new ArrayList<>();

    /** What it was shown, in time. */
    public final List<Playable> shown = new ArrayList<>();

    private PlaySettings settings = PlaySettings.DEFAULT;
    private boolean playing;

    @Override
    public void play() {
        playing = true;
        asked.add("play");
        listeners.forEach(l -> l.state(true));
    }

    @Override
    public void stop() {
        playing = false;
        asked.add("stop");
        listeners.forEach(l -> l.state(false));
    }

    @Override
    public boolean isPlaying() {
        return playing;
    }

    @Override
    public void show(Phrase phrase) {
        asked.add("show " + phrase.sections().get(0).groove().sticking().text());
    }

    @Override
    public void show(Playable playable) {
        shown.add(playable);
        show(playable.phrase());
    }

    @Override
    public void settings(PlaySettings other) {
        settings = other;
        asked.add("tempo " + other.tempo().beatsPerMinute());
    }

    @Override
    public PlaySettings settings() {
        return settings;
    }

    @Override
    public void strike(Kit kit, SoundName sound, int velocity) {
        asked.add("strike " + sound);
    }

    @Override
    public void addListener(PlayerListener listener) {
        listeners.add(listener);
    }

    @Override
    public void removeListener(PlayerListener listener) {
        listeners.remove(listener);
    }

    @Override
    public List<AudioLine> lines() {
        return List.of();
    }

    @Override
    public void useLine(AudioLine line) {
        asked.add("line " + line.name());
    }

    @Override
    public List<MidiOutput> midiOutputs() {
        return List.of();
    }

    @Override
    public void useMidiOutput(Optional<MidiOutput> output) {
        asked.add("output");
    }

    @Override
    public void useBank(Path file) {
        asked.add("bank " + file);
    }

    @Override
    public Optional<String> notice() {
        return Optional.empty();
    }

    @Override
    public void close() {
        asked.add("close");
    }
}
