package org.kitweft.sound.bank;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.kitweft.sound.bank.percussion.Percussion;
import org.kitweft.sound.bank.percussion.PercussionSound;
import org.kitweft.sound.bank.pitched.Families;
import org.kitweft.sound.bank.pitched.Program;
import org.kitweft.sound.bank.pitched.Programs;
import org.kitweft.sound.bank.soundfont.Generator;
import org.kitweft.sound.bank.soundfont.Instrument;
import org.kitweft.sound.bank.soundfont.Preset;
import org.kitweft.sound.bank.soundfont.Span;
import org.kitweft.sound.bank.soundfont.Zone;

/**
 * What goes into the bank: the blueprints of all samples, and the instruments and presets that play
 * them.
 *
 * @param blueprints in file order
 * @param instruments that refer to the blueprints' names
 * @param presets that refer to the instruments' names
 */
record BankPlan(List<Blueprint> blueprints, List<Instrument> instruments, List<Preset> presets) {
    private static final String KIT = "Kitweft Kit";

    /** The whole built-in bank. */
    static BankPlan whole() {
        List<Blueprint> blueprints = new ArrayList<>();
        List<Instrument> instruments = new ArrayList<>();
        instruments.add(kit(blueprints));
        for (Program program : Programs.all()) {
            instruments.add(pitched(program, blueprints));
        }
        instruments.add(motor(instruments));
        List<Preset> presets = new ArrayList<>(Families.presets());
        presets.add(
                new Preset(
                        Programs.MOTOR,
                        Programs.MOTOR_BANK,
                        Programs.VIBRAPHONE_PROGRAM,
                        List.of(new Preset.Part(Programs.MOTOR, Span.ALL, 0))));
        presets.add(
                new Preset(
                        KIT,
                        Preset.PERCUSSION_BANK,
                        0,
                        List.of(new Preset.Part(KIT, Span.ALL, 0))));
        return new BankPlan(blueprints, instruments, presets);
    }

    private static Instrument kit(List<Blueprint> blueprints) {
        List<Zone> zones = new ArrayList<>();
        for (PercussionSound sound : Percussion.all()) {
            for (Layer layer : Layer.values()) {
                Blueprint blueprint = new Blueprint.Struck(sound, layer);
                blueprints.add(blueprint);
                zones.add(
                        new Zone(
                                blueprint.name(),
                                Span.only(sound.key()),
                                layer.velocities(),
                                generators(sound),
                                List.of()));
            }
        }
        return new Instrument(KIT, zones);
    }

    /** The vibraphone once more with its motor running, from the same samples. */
    private static Instrument motor(List<Instrument> instruments) {
        Instrument still =
                instruments.stream()
                        .filter(i -> i.name().equals(Programs.VIBRAPHONE))
                        .findFirst()
                        .orElseThrow();
        List<Zone> zones = new ArrayList<>();
        for (Zone zone : still.zones()) {
            Map<Generator, Integer> generators = new EnumMap<>(Generator.class);
            generators.putAll(zone.generators());
            generators.put(Generator.MOD_LFO_TO_VOLUME, Programs.MOTOR_DEPTH);
            zones.add(
                    new Zone(zone.sample(), zone.keys(), zone.velocities(), generators, List.of()));
        }
        return new Instrument(Programs.MOTOR, zones);
    }

    private static Map<Generator, Integer> generators(PercussionSound sound) {
        Map<Generator, Integer> all = new EnumMap<>(Generator.class);
        all.put(Generator.PAN, sound.pan());
        // A struck thing rings on, however short the note is written.
        all.put(Generator.RELEASE, Programs.RINGS_ON);
        if (sound.exclusiveClass() != 0) {
            all.put(Generator.EXCLUSIVE_CLASS, sound.exclusiveClass());
        }
        return all;
    }

    private static Instrument pitched(Program program, List<Blueprint> blueprints) {
        List<Zone> zones = new ArrayList<>();
        for (int i = 0; i < program.roots().size(); i++) {
            int root = program.roots().get(i);
            for (Layer layer : Layer.values()) {
                Blueprint blueprint = new Blueprint.Keyed(program, root, layer);
                blueprints.add(blueprint);
                Map<Generator, Integer> generators = new EnumMap<>(Generator.class);
                generators.putAll(program.generators().apply(root));
                if (program.loops()) {
                    generators.put(Generator.SAMPLE_MODES, 1);
                }
                zones.add(
                        new Zone(
                                blueprint.name(),
                                new Span(program.lowest(i), program.highest(i)),
                                layer.velocities(),
                                generators,
                                program.modulators()));
            }
        }
        return new Instrument(program.name(), zones);
    }
}
