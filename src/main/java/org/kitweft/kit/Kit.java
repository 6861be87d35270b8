package org.kitweft.kit;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * Surfaces with their places, seen from the player's seat. Immutable.
 *
 * <p>Start from {@link BuiltInKits} or {@link KitFile}.
 */
public final class Kit {
    private final String name;
    private final boolean leftHanded;
    private final List<Surface> surfaces;
    private final Map<String, Surface> byId;

    /**
     * @param name of the kit
     * @param leftHanded whether it is set up for a left-handed player
     * @param surfaces at least one, no two of one id; their order is that of lists and defaults
     * @throws IllegalArgumentException if two surfaces have one id or there is none
     */
    public Kit(String name, boolean leftHanded, List<Surface> surfaces) {
        this.name = Objects.requireNonNull(name, "name");
        this.leftHanded = leftHanded;
        this.surfaces = List.copyOf(surfaces);
        if (name.isBlank()) {
            throw new IllegalArgumentException("the kit's name is empty");
        }
        if (surfaces.isEmpty()) {
            throw new IllegalArgumentException("kit \"%s\" has no surface".formatted(name));
        }
        Set<String> ids = new HashSet<>();
        for (Surface surface : surfaces) {
            if (!ids.add(surface.id())) {
                throw new IllegalArgumentException(
                        "kit \"%s\": two surfaces have the id \"%s\""
                                .formatted(name, surface.id()));
            }
        }
        this.byId =
                this.surfaces.stream()
                        .collect(Collectors.toUnmodifiableMap(Surface::id, Function.identity()));
    }

    /** The kit's name. */
    public String name() {
        return name;
    }

    /** Whether it is set up for a left-handed player. */
    public boolean leftHanded() {
        return leftHanded;
    }

    /** All surfaces, in the kit's order. */
    public List<Surface> surfaces() {
        return surfaces;
    }

    /** The surface of an id. */
    public Optional<Surface> surface(String id) {
        return Optional.ofNullable(byId.get(id));
    }

    /** The names of all sounds, in the kit's order. */
    public List<SoundName> soundNames() {
        return surfaces.stream()
                .flatMap(surface -> surface.sounds().stream().map(surface::nameOf))
                .toList();
    }

    /**
     * The sound meant by {@code surface} or {@code surface.sound}; a bare surface means its first
     * sound.
     *
     * @throws UnknownNameException with the nearest name, if the kit has none such
     */
    public SoundName find(String text) {
        int dot = text.indexOf('.');
        String surfaceId = dot < 0 ? text : text.substring(0, dot);
        Surface surface =
                surface(surfaceId)
                        .orElseThrow(
                                () ->
                                        new UnknownNameException(
                                                "surface",
                                                surfaceId,
                                                "kit \"" + name + "\"",
                                                surfaces.stream().map(Surface::id).toList()));
        if (dot < 0) {
            return surface.nameOf(surface.sounds().get(0));
        }
        String soundId = text.substring(dot + 1);
        return surface.sound(soundId)
                .map(surface::nameOf)
                .orElseThrow(
                        () ->
                                new UnknownNameException(
                                        "sound",
                                        text,
                                        "kit \"" + name + "\"",
                                        surface.sounds().stream()
                                                .map(s -> surface.nameOf(s).text())
                                                .toList()));
    }

    /** Whether the kit has this sound. */
    public boolean has(SoundName sound) {
        return surface(sound.surface()).flatMap(s -> s.sound(sound.sound())).isPresent();
    }

    /**
     * What a name stands for.
     *
     * @throws UnknownNameException if the kit has no such sound
     */
    public Sound sound(SoundName sound) {
        return surfaceOf(sound).sound(find(sound.text()).sound()).orElseThrow();
    }

    /**
     * The surface that a sound belongs to.
     *
     * @throws UnknownNameException if the kit has no such sound
     */
    public Surface surfaceOf(SoundName sound) {
        return surface(find(sound.text()).surface()).orElseThrow();
    }

    /** Whether the kit has the sound and the limb can strike it. */
    public boolean canStrike(Limb limb, SoundName sound) {
        return surface(sound.surface())
                .flatMap(s -> s.sound(sound.sound()))
                .map(s -> s.limbs().contains(limb))
                .orElse(false);
    }

    /** The sounds a limb can strike, in the kit's order. */
    public List<SoundName> soundsFor(Limb limb) {
        return soundNames().stream().filter(sound -> canStrike(limb, sound)).toList();
    }

    /**
     * Whether right and left change places, feet too, where it is set up for a player of the other
     * hand. Bars lie from low at the left to high at the right for every player, as a keyboard's
     * keys do; drums stand the other way round. Common practice, no source.
     */
    public boolean canBeMirrored() {
        return surfaces.stream().noneMatch(Surface::isBar);
    }

    /** Whether it is set up the other way round: then the left foot is the one at the kick. */
    public boolean isMirrored() {
        return leftHanded && canBeMirrored();
    }

    /**
     * The same kit for a player of the other hand: mirrored with its limbs, or as it stands where
     * it cannot be mirrored. Done twice it is the same again.
     */
    public Kit forOtherHand() {
        return new Kit(
                name,
                !leftHanded,
                canBeMirrored() ? surfaces.stream().map(Kit::mirrored).toList() : surfaces);
    }

    private static Surface mirrored(Surface surface) {
        List<Sound> sounds =
                surface.sounds().stream()
                        .map(
                                s ->
                                        new Sound(
                                                s.id(),
                                                s.channel(),
                                                s.program(),
                                                s.key(),
                                                s.place(),
                                                s.notehead(),
                                                mirrored(s.limbs()),
                                                s.stops()))
                        .toList();
        // 0 - x rather than -x: a centre at 0 stays 0 and not -0, which equals would tell apart.
        return new Surface(
                surface.id(),
                surface.name(),
                0 - surface.x(),
                surface.y(),
                surface.z(),
                surface.diameter(),
                mirrored(surface.limbs()),
                sounds);
    }

    private static Set<Limb> mirrored(Set<Limb> limbs) {
        return limbs.stream().map(Limb::opposite).collect(Collectors.toUnmodifiableSet());
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Kit kit
                && name.equals(kit.name)
                && leftHanded == kit.leftHanded
                && surfaces.equals(kit.surfaces);
    }

    @Override
    public int hashCode() {
        return Objects.hash(name, leftHanded, surfaces);
    }

    @Override
    public String toString() {
        return name + (leftHanded ? " (left-handed)" : "");
    }
}
