package org.kitweft.sound.bank.soundfont;

import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * The list {@code pdta}: headers, bags, modulators and generators of presets and instruments, and
 * the sample headers. Each table ends with a record that only marks the end (SoundFont 2.04,
 * section 7).
 */
final class PresetData {
    private static final int MONO = 1;

    private final Chunk presetHeaders = new Chunk("phdr", 8000);
    private final Chunk instrumentHeaders = new Chunk("inst", 2000);
    private final Chunk sampleHeaders = new Chunk("shdr", 40_000);
    private final Layer presets = new Layer("p");
    private final Layer instruments = new Layer("i");

    private PresetData() {}

    static Chunk of(SoundFont bank) {
        PresetData data = new PresetData();
        data.writePresets(bank);
        data.writeInstruments(bank);
        data.writeSamples(bank.samples());
        Chunk list = new Chunk("LIST", 200_000).letters("pdta", 4);
        list.chunk(data.presetHeaders);
        data.presets.appendTo(list);
        list.chunk(data.instrumentHeaders);
        data.instruments.appendTo(list);
        return list.chunk(data.sampleHeaders);
    }

    private void writePresets(SoundFont bank) {
        Map<String, Integer> index = new HashMap<>();
        bank.instruments().forEach(i -> index.put(i.name(), index.size()));
        // Some synthesizers search by halving: sorted by bank and program.
        List<Preset> sorted =
                bank.presets().stream()
                        .sorted(
                                Comparator.comparingInt(Preset::bank)
                                        .thenComparingInt(Preset::program))
                        .toList();
        for (Preset preset : sorted) {
            header(preset.name(), preset.program(), preset.bank());
            for (Preset.Part part : preset.parts()) {
                presets.bag();
                presets.range(Generator.KEY_RANGE, part.keys());
                if (part.transposition() != 0) {
                    presets.generator(Generator.COARSE_TUNE, part.transposition());
                }
                presets.generator(Generator.INSTRUMENT, index.get(part.instrument()));
            }
        }
        header("EOP", 0, 0);
        presets.end();
    }

    private void header(String name, int program, int bank) {
        presetHeaders.letters(name, 20).int16(program).int16(bank).int16(presets.bags());
        presetHeaders.int32(0).int32(0).int32(0);
    }

    private void writeInstruments(SoundFont bank) {
        Map<String, Integer> index = new HashMap<>();
        bank.samples().forEach(s -> index.put(s.name(), index.size()));
        for (Instrument instrument : bank.instruments()) {
            instrumentHeaders.letters(instrument.name(), 20).int16(instruments.bags());
            for (Zone zone : instrument.zones()) {
                instruments.bag();
                // Key range first, velocity range second, sample last: required order (section
                // 8.1.2).
                instruments.range(Generator.KEY_RANGE, zone.keys());
                instruments.range(Generator.VELOCITY_RANGE, zone.velocities());
                zone.generators().forEach(instruments::generator);
                instruments.generator(Generator.SAMPLE, index.get(zone.sample()));
                zone.modulators().forEach(instruments::modulator);
            }
        }
        instrumentHeaders.letters("EOI", 20).int16(instruments.bags());
        instruments.end();
    }

    private void writeSamples(List<Sample> samples) {
        int start = 0;
        for (Sample sample : samples) {
            int end = start + sample.length();
            sampleHeaders.letters(sample.name(), 20).int32(start).int32(end);
            sampleHeaders.int32(start + sample.loopStart()).int32(start + sample.loopEnd());
            sampleHeaders.int32(sample.rate()).int8(sample.rootKey()).int8(0);
            sampleHeaders.int16(0).int16(MONO);
            start = end + SoundFontWriter.GAP;
        }
        sampleHeaders.letters("EOS", 20).int32(0).int32(0).int32(0).int32(0).int32(0);
        sampleHeaders.int8(0).int8(0).int16(0).int16(0);
    }

    /** Bags, modulators and generators, which presets and instruments have alike. */
    private static final class Layer {
        private final Chunk bags;
        private final Chunk modulators;
        private final Chunk generators;
        private int bagCount;
        private int modulatorCount;
        private int generatorCount;

        Layer(String letter) {
            bags = new Chunk(letter + "bag", 8000);
            modulators = new Chunk(letter + "mod", 1000);
            generators = new Chunk(letter + "gen", 40_000);
        }

        int bags() {
            return bagCount;
        }

        void bag() {
            bags.int16(generatorCount).int16(modulatorCount);
            bagCount++;
        }

        void range(Generator generator, Span span) {
            generators.int16(generator.number()).int8(span.low()).int8(span.high());
            generatorCount++;
        }

        void generator(Generator generator, int amount) {
            generators.int16(generator.number()).int16(amount);
            generatorCount++;
        }

        void modulator(Modulator modulator) {
            modulators.int16(modulator.source()).int16(modulator.destination().number());
            modulators.int16(modulator.amount()).int16(0).int16(0);
            modulatorCount++;
        }

        void end() {
            bag();
            modulators.int32(0).int32(0).int16(0);
            generators.int32(0);
        }

        void appendTo(Chunk list) {
            list.chunk(bags).chunk(modulators).chunk(generators);
        }
    }
}
