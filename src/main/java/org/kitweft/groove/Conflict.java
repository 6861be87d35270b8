package org.kitweft.groove;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.kitweft.kit.Limb;
import org.kitweft.kit.SoundName;
import org.kitweft.pattern.Letter;

/** Why a groove cannot be played as written: shown at its steps, never dropped. */
public sealed interface Conflict {

    /** The steps where it occurs, in order, at least one. */
    List<Place> places();

    /** The kind, as commands write it. */
    String kind();

    /** The limb concerned, if it is one. */
    Optional<Limb> limb();

    /** The sounds concerned, in the order of their names. */
    List<SoundName> sounds();

    /** One sentence for people, without the steps. */
    String reason();

    /** The reason and the first few steps in one line. */
    default String line() {
        int most = 6;
        return reason()
                + ": "
                + places().stream()
                        .limit(most)
                        .map(Place::toString)
                        .collect(Collectors.joining(", "))
                + (places().size() > most ? " and %d more".formatted(places().size() - most) : "");
    }

    /** One limb should strike several sounds at one instant. */
    record TwoAtOnce(Limb oneLimb, List<SoundName> sounds, List<Place> places) implements Conflict {
        public TwoAtOnce {
            sounds = List.copyOf(sounds);
            places = List.copyOf(places);
        }

        @Override
        public String kind() {
            return "two-at-once";
        }

        @Override
        public Optional<Limb> limb() {
            return Optional.of(oneLimb);
        }

        @Override
        public String reason() {
            return "the %s cannot strike %s at one instant"
                    .formatted(oneLimb.words(), joined(sounds));
        }
    }

    /** A limb should strike a sound that it cannot reach, or that the kit does not have. */
    record OutOfReach(Limb oneLimb, SoundName sound, List<Place> places) implements Conflict {
        public OutOfReach {
            places = List.copyOf(places);
        }

        @Override
        public String kind() {
            return "out-of-reach";
        }

        @Override
        public Optional<Limb> limb() {
            return Optional.of(oneLimb);
        }

        @Override
        public List<SoundName> sounds() {
            return List.of(sound);
        }

        @Override
        public String reason() {
            return "the %s cannot strike %s on this kit".formatted(oneLimb.words(), sound);
        }
    }

    /** Two sounds at one instant of which one silences the other: open and closed hi-hat. */
    record SilencedAtOnce(List<SoundName> sounds, List<Place> places) implements Conflict {
        public SilencedAtOnce {
            sounds = List.copyOf(sounds);
            places = List.copyOf(places);
        }

        @Override
        public String kind() {
            return "silenced-at-once";
        }

        @Override
        public Optional<Limb> limb() {
            return Optional.empty();
        }

        @Override
        public String reason() {
            return joined(sounds) + " cannot sound together";
        }
    }

    /** A letter of the sticking that nothing on the kit answers to. */
    record NothingToStrike(Letter letter, List<Place> places) implements Conflict {
        public NothingToStrike {
            places = List.copyOf(places);
        }

        @Override
        public String kind() {
            return "nothing-to-strike";
        }

        @Override
        public Optional<Limb> limb() {
            return Optional.empty();
        }

        @Override
        public List<SoundName> sounds() {
            return List.of();
        }

        @Override
        public String reason() {
            return "letter %s has nothing to strike on this kit; hand it over to another limb or make it tacet"
                    .formatted(letter);
        }
    }

    private static String joined(List<SoundName> sounds) {
        return sounds.stream().map(SoundName::text).collect(Collectors.joining(" and "));
    }
}
