package org.kitweft.sound.bank.soundfont;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/**
 * All that a SoundFont 2 file holds.
 *
 * @param name of the bank
 * @param comment what it is and where from
 * @param copyright the licence's line
 * @param samples in file order, names unique
 * @param instruments in file order, names unique
 * @param presets any order; the writer sorts them
 */
public record SoundFont(
        String name,
        String comment,
        String copyright,
        List<Sample> samples,
        List<Instrument> instruments,
        List<Preset> presets) {
    public SoundFont {
        samples = List.copyOf(samples);
        instruments = List.copyOf(instruments);
        presets = List.copyOf(presets);
        Set<String> sampleNames = unique("sample", samples.stream().map(Sample::name));
        for (Instrument instrument : instruments) {
            for (Zone zone : instrument.zones()) {
                known(sampleNames, "sample", zone.sample(), instrument.name());
            }
        }
        Set<String> names = unique("instrument", instruments.stream().map(Instrument::name));
        for (Preset preset : presets) {
            for (Preset.Part part : preset.parts()) {
                known(names, "instrument", part.instrument(), preset.name());
            }
        }
    }

    private static Set<String> unique(String what, Stream<String> names) {
        Set<String> seen = new HashSet<>();
        names.forEach(
                name -> {
                    if (!seen.add(name)) {
                        throw new IllegalArgumentException("two " + what + "s are named " + name);
                    }
                });
        return seen;
    }

    private static void known(Set<String> names, String what, String name, String user) {
        if (!names.contains(name)) {
            throw new IllegalArgumentException(
                    "%s uses %s %s, which is not in the bank".formatted(user, what, name));
        }
    }
}
