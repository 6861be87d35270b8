package org.kitweft.explore;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.Collections;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.kitweft.explore.rule.Rule;
import org.kitweft.groove.LetterVoicing;
import org.kitweft.groove.Voicing;
import org.kitweft.kit.Kit;
import org.kitweft.kit.Limb;
import org.kitweft.kit.SoundName;
import org.kitweft.pattern.Letter;
import org.kitweft.pattern.Sticking;

/**
 * The sounds that the strokes of each letter may choose from: the sets C(v) of the counts.
 *
 * <p>Immutable. The order of a letter's sounds is kept: it is the order in which variations follow
 * each other. {@link Letter#B} has choices of its own or none; it does not take those of R and L.
 *
 * @param sounds for each letter that has choices at least one sound, none twice
 */
public record Choices(Map<Letter, List<SoundName>> sounds) {
    /** No letter has choices yet. */
    public static final Choices NONE = new Choices(Map.of());

    public Choices {
        Map<Letter, List<SoundName>> copy = new EnumMap<>(Letter.class);
        sounds.forEach((letter, list) -> copy.put(letter, checked(letter, list)));
        sounds = Collections.unmodifiableMap(copy);
    }

    private static List<SoundName> checked(Letter letter, List<SoundName> list) {
        if (list.isEmpty()) {
            throw new IllegalArgumentException(
                    "letter %s: expected at least one sound to choose from".formatted(letter));
        }
        Set<SoundName> seen = new HashSet<>();
        for (SoundName sound : list) {
            if (!seen.add(sound)) {
                throw new IllegalArgumentException(
                        "letter %s: sound \"%s\" is named twice, expected once"
                                .formatted(letter, sound.text()));
            }
        }
        return List.copyOf(list);
    }

    /**
     * Reads one letter's choices such as {@code R=snare,high-tom,hi-hat.open} and adds them; what
     * the letter had before gives way.
     *
     * @throws IllegalArgumentException naming what is wrong: no letter, no sound, a sound that is
     *     not in the kit (with the nearest name), a sound named twice
     */
    public Choices with(String text, Kit kit) {
        int equals = text.indexOf('=');
        String head = (equals < 0 ? text : text.substring(0, equals)).strip();
        Optional<Letter> letter = head.length() == 1 ? Letter.of(head.charAt(0)) : Optional.empty();
        if (equals < 0 || letter.isEmpty()) {
            throw new IllegalArgumentException(
                    "choices \"%s\": expected a letter and its sounds, as in R=snare,high-tom"
                            .formatted(text));
        }
        List<SoundName> named = new ArrayList<>();
        for (String name : Arrays.asList(text.substring(equals + 1).split(",", -1))) {
            if (name.isBlank()) {
                throw new IllegalArgumentException(
                        "choices \"%s\": a sound is missing, expected names between commas"
                                .formatted(text));
            }
            named.add(kit.find(name.strip()));
        }
        return with(letter.get(), named);
    }

    /** The same with other choices for a letter. */
    public Choices with(Letter letter, List<SoundName> other) {
        Map<Letter, List<SoundName>> changed = new EnumMap<>(Letter.class);
        changed.putAll(sounds);
        changed.put(letter, other);
        return new Choices(changed);
    }

    /** The same without choices for a letter. */
    public Choices without(Letter letter) {
        Map<Letter, List<SoundName>> changed = new EnumMap<>(Letter.class);
        changed.putAll(sounds);
        changed.remove(letter);
        return new Choices(changed);
    }

    /**
     * What is meant where nobody has chosen: for each letter of the sticking one sound of every
     * surface that its limb can strike, the first it can, and the sounds that its strokes are
     * pinned to; in the kit's order. A letter whose limb finds nothing has no choices.
     */
    public static Choices usual(Sticking sticking, Kit kit, Voicing voicing, List<Rule> rules) {
        Map<Letter, List<SoundName>> usual = new EnumMap<>(Letter.class);
        everything(sticking, kit, voicing)
                .sounds()
                .forEach(
                        (letter, all) -> {
                            Set<SoundName> pinned = pinned(letter, sticking, rules);
                            Set<String> surfaces = new HashSet<>();
                            usual.put(
                                    letter,
                                    all.stream()
                                            .filter(
                                                    sound ->
                                                            surfaces.add(sound.surface())
                                                                    || pinned.contains(sound))
                                            .toList());
                        });
        return new Choices(usual);
    }

    private static Set<SoundName> pinned(Letter letter, Sticking sticking, List<Rule> rules) {
        Set<SoundName> pinned = new HashSet<>();
        for (Rule rule : rules) {
            if (rule instanceof Rule.Pin pin
                    && pin.index() < sticking.size()
                    && sticking.strokes()
                            .get(pin.index())
                            .struck()
                            .filter(struck -> struck.letter() == letter)
                            .isPresent()) {
                pinned.add(pin.sound());
            }
        }
        return pinned;
    }

    /**
     * Everything: for each letter of the sticking the sounds that its limb in the voicing can
     * strike, in the kit's order; for B those that both hands can strike. A letter whose limb finds
     * nothing has no choices.
     */
    public static Choices everything(Sticking sticking, Kit kit, Voicing voicing) {
        Map<Letter, List<SoundName>> all = new EnumMap<>(Letter.class);
        for (Letter letter : sticking.letters()) {
            List<SoundName> sounds = everything(letter, kit, voicing);
            if (!sounds.isEmpty()) {
                all.put(letter, sounds);
            }
        }
        return new Choices(all);
    }

    /** The sounds that a letter's limb in the voicing can strike; for B, that both hands can. */
    public static List<SoundName> everything(Letter letter, Kit kit, Voicing voicing) {
        Limb limb =
                voicing.letter(letter).map(LetterVoicing::limb).orElse(Voicing.limbOf(letter, kit));
        return letter == Letter.B
                ? kit.soundsFor(Limb.RIGHT_HAND).stream()
                        .filter(sound -> kit.canStrike(Limb.LEFT_HAND, sound))
                        .toList()
                : kit.soundsFor(limb);
    }

    /** The letters that have choices. */
    public Set<Letter> letters() {
        return sounds.keySet();
    }

    /** A letter's sounds, in their order; empty if it has no choices. */
    public List<SoundName> of(Letter letter) {
        return sounds.getOrDefault(letter, List.of());
    }

    /** All sounds of all letters, each once. */
    public Set<SoundName> union() {
        Set<SoundName> union = new LinkedHashSet<>();
        sounds.values().forEach(union::addAll);
        return Collections.unmodifiableSet(union);
    }

    /**
     * Checks that each of these letters has choices.
     *
     * @throws IllegalArgumentException naming those that have none
     */
    public void require(Collection<Letter> letters) {
        List<String> missing =
                letters.stream()
                        .filter(letter -> !sounds.containsKey(letter))
                        .map(Letter::name)
                        .toList();
        if (!missing.isEmpty()) {
            throw new IllegalArgumentException(
                    missing.size() == 1
                            ? "letter %1$s of the sticking has no choices: expected sounds for it, as in %1$s=snare"
                                    .formatted(missing.get(0))
                            : "letters %s of the sticking have no choices: expected sounds for each, as in %s=snare"
                                    .formatted(String.join(" and ", missing), missing.get(0)));
        }
    }
}
