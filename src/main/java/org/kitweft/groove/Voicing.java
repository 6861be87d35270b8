package org.kitweft.groove;

import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.kitweft.kit.Kit;
import org.kitweft.kit.Limb;
import org.kitweft.kit.SoundName;
import org.kitweft.pattern.Dynamic;
import org.kitweft.pattern.Letter;
import org.kitweft.pattern.Sticking;
import org.kitweft.pattern.Stroke.Struck;

/**
 * Who strikes what: for each letter how it is played, single strokes that go elsewhere, and the
 * layers beside the sticking. Immutable; the {@code with…} methods make changed copies.
 *
 * <p>Names of sounds are not checked against a kit here: a lesson may be opened on another kit.
 * What a kit cannot do shows as a {@link Conflict} when a groove is woven.
 *
 * <p>{@link Letter#B} without an entry of its own is the R and the L at once; with one, both hands
 * strike its sounds.
 *
 * @param letters how each letter is played
 * @param strokes sounds of single strokes by index in the sticking, from 0, rests counted
 * @param layers figures beside the sticking
 */
public record Voicing(
        Map<Letter, LetterVoicing> letters,
        SortedMap<Integer, SoundName> strokes,
        List<Layer> layers) {

    public Voicing {
        letters = Collections.unmodifiableMap(copy(letters));
        strokes = Collections.unmodifiableSortedMap(new TreeMap<>(strokes));
        layers = List.copyOf(layers);
        if (!strokes.isEmpty()
                && (strokes.firstKey() < 0 || strokes.lastKey() >= Sticking.MAX_STROKES)) {
            throw new IllegalArgumentException(
                    "a stroke's index lies between 1 and %d".formatted(Sticking.MAX_STROKES));
        }
    }

    private static Map<Letter, LetterVoicing> copy(Map<Letter, LetterVoicing> letters) {
        Map<Letter, LetterVoicing> copy = new EnumMap<>(Letter.class);
        copy.putAll(letters);
        return copy;
    }

    /**
     * The plainest voicing of a kit: each letter's own limb on the first sound it can strike there;
     * on a drum set both hands on the snare, K on the bass drum, H at the hi-hat pedal. A letter
     * whose limb finds nothing has no entry.
     */
    public static Voicing plain(Kit kit) {
        Map<Letter, LetterVoicing> letters = new EnumMap<>(Letter.class);
        for (Letter letter : Letter.values()) {
            if (letter != Letter.B) {
                Limb limb = limbOf(letter, kit);
                kit.soundsFor(limb).stream()
                        .findFirst()
                        .ifPresent(
                                first ->
                                        letters.put(
                                                letter, LetterVoicing.on(limb, List.of(first))));
            }
        }
        return new Voicing(letters, new TreeMap<>(), List.of());
    }

    /**
     * The limb that a letter names on a kit; B counts as the right hand. On a kit mirrored for a
     * left-handed player the kick is the left foot's.
     */
    public static Limb limbOf(Letter letter, Kit kit) {
        return switch (letter) {
            case R, B -> Limb.RIGHT_HAND;
            case L -> Limb.LEFT_HAND;
            case K -> kit.leftHanded() ? Limb.LEFT_FOOT : Limb.RIGHT_FOOT;
            case H -> kit.leftHanded() ? Limb.RIGHT_FOOT : Limb.LEFT_FOOT;
        };
    }

    /** How a letter is played, if it has an entry. */
    public Optional<LetterVoicing> letter(Letter letter) {
        return Optional.ofNullable(letters.get(letter));
    }

    /** The same with one letter played otherwise. */
    public Voicing with(Letter letter, LetterVoicing other) {
        Map<Letter, LetterVoicing> changed = copy(letters);
        changed.put(letter, other);
        return new Voicing(changed, strokes, layers);
    }

    /** The same without an entry for a letter. */
    public Voicing without(Letter letter) {
        Map<Letter, LetterVoicing> changed = copy(letters);
        changed.remove(letter);
        return new Voicing(changed, strokes, layers);
    }

    /** The same with one stroke on another sound; {@code index} counts from 0. */
    public Voicing withStroke(int index, SoundName sound) {
        SortedMap<Integer, SoundName> changed = new TreeMap<>(strokes);
        changed.put(index, sound);
        return new Voicing(letters, changed, layers);
    }

    /** The same with exactly these single strokes elsewhere. */
    public Voicing withStrokes(SortedMap<Integer, SoundName> other) {
        return new Voicing(letters, other, layers);
    }

    /**
     * What sounds the same written briefly: where single strokes go elsewhere, and with them all
     * strokes of a letter that have one dynamic are on one sound, that sound is the letter's path
     * for that dynamic, and the strokes are no longer named one by one. Where B is R and L at once
     * these two stay as they are, for B would go with them.
     *
     * @param sticking whose strokes they are
     */
    public Voicing briefly(Sticking sticking) {
        Voicing brief = this;
        boolean shared = sticking.letters().contains(Letter.B) && letter(Letter.B).isEmpty();
        for (Letter letter : sticking.letters()) {
            Optional<LetterVoicing> voiced = letter(letter).filter(v -> !v.tacet());
            if (voiced.isPresent() && !(shared && letter.isOneHand())) {
                brief = brief.briefly(sticking, letter, voiced.get());
            }
        }
        return brief;
    }

    private Voicing briefly(Sticking sticking, Letter letter, LetterVoicing voiced) {
        Map<Dynamic, SoundName> sounds = new EnumMap<>(Dynamic.class);
        SortedMap<Integer, SoundName> others = new TreeMap<>(strokes);
        for (int i = 0; i < sticking.size(); i++) {
            Optional<Struck> struck =
                    sticking.strokes().get(i).struck().filter(s -> s.letter() == letter);
            if (struck.isPresent()) {
                SoundName sound = others.remove(i);
                Dynamic dynamic = struck.get().dynamic();
                if (sound == null || !sounds.computeIfAbsent(dynamic, d -> sound).equals(sound)) {
                    return this;
                }
            }
        }
        SoundName path = sounds.getOrDefault(Dynamic.PLAIN, sounds.values().iterator().next());
        sounds.values().removeIf(path::equals);
        return new Voicing(letters, others, layers)
                .with(
                        letter,
                        voiced.withPath(List.of(path))
                                .withAccents(listed(sounds, Dynamic.ACCENT))
                                .withGhosts(listed(sounds, Dynamic.GHOST)));
    }

    private static List<SoundName> listed(Map<Dynamic, SoundName> sounds, Dynamic dynamic) {
        return sounds.containsKey(dynamic) ? List.of(sounds.get(dynamic)) : List.of();
    }

    /** The same with exactly these layers. */
    public Voicing withLayers(List<Layer> other) {
        return new Voicing(letters, strokes, other);
    }

    /**
     * The same with a letter handed over to another limb. Sounds that the limb cannot strike on the
     * kit give way to the first it can.
     *
     * @throws IllegalArgumentException if the kit has nothing for the limb
     */
    public Voicing handedOver(Letter letter, Limb limb, Kit kit) {
        List<SoundName> own = kit.soundsFor(limb);
        if (own.isEmpty()) {
            throw new IllegalArgumentException(
                    "kit \"%s\" has nothing for the %s".formatted(kit.name(), limb.words()));
        }
        LetterVoicing before = letter(letter).orElse(LetterVoicing.on(limb, List.of(own.get(0))));
        List<SoundName> path = before.path().stream().filter(own::contains).toList();
        return with(
                letter,
                new LetterVoicing(
                        limb,
                        path.isEmpty() ? List.of(own.get(0)) : path,
                        before.accents().stream().filter(own::contains).toList(),
                        before.ghosts().stream().filter(own::contains).toList(),
                        before.doublings().stream().filter(d -> d.limb() != limb).toList(),
                        before.tacet()));
    }

    /**
     * A limb that can strike a sound, free ones first: one that plays no letter of the sticking.
     *
     * @throws IllegalArgumentException if none can
     */
    public Limb limbFor(SoundName sound, Sticking sticking, Kit kit) {
        List<Limb> able = kit.sound(sound).limbs().stream().sorted().toList();
        return able.stream()
                .filter(limb -> sticking.letters().stream().noneMatch(l -> plays(l, limb)))
                .findFirst()
                .orElse(able.get(0));
    }

    private boolean plays(Letter letter, Limb limb) {
        if (letter == Letter.B && !letters.containsKey(Letter.B)) {
            return plays(Letter.R, limb) || plays(Letter.L, limb);
        }
        return letter(letter)
                .map(v -> !v.tacet() && (v.limb() == limb || (letter == Letter.B && limb.isHand())))
                .orElse(false);
    }
}
