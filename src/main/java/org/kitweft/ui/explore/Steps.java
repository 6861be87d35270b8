package org.kitweft.ui.explore;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.kitweft.explore.trellis.Possibilities;
import org.kitweft.groove.Recipe;
import org.kitweft.kit.Kit;
import org.kitweft.kit.Limb;
import org.kitweft.kit.SoundName;
import org.kitweft.pattern.Stroke;
import org.kitweft.ui.session.VoicingEdits;

/**
 * What the rows of the list have in common: the steps of the sticking, who plays them, and short
 * names for what is struck. Immutable; knows nothing of pixels.
 */
final class Steps {
    private final Possibilities possibilities;
    private final ShortNames names;
    private final int lowest;
    private final int highest;

    /** What a variation has at a step. */
    record Cell(int step, Limb limb, SoundName sound, boolean moved) {}

    Steps(Possibilities possibilities) {
        this.possibilities = possibilities;
        Kit kit = possibilities.recipe().kit();
        names = new ShortNames(kit);
        List<Integer> places =
                possibilities.options().stream()
                        .flatMap(List::stream)
                        .map(sound -> kit.sound(sound).place().diatonic())
                        .sorted()
                        .toList();
        lowest = places.isEmpty() ? 0 : places.get(0);
        highest = places.isEmpty() ? 0 : places.get(places.size() - 1);
    }

    Possibilities possibilities() {
        return possibilities;
    }

    /** Steps of the sticking, rests counted. */
    int size() {
        return possibilities.recipe().sticking().size();
    }

    /** Steps of a beat. */
    int perBeat() {
        return possibilities.recipe().grid().stepsPerBeat();
    }

    /** The stroke of a step that is struck. */
    Optional<Stroke.Struck> struck(int step) {
        return possibilities.recipe().sticking().strokes().get(step).struck();
    }

    /** Who plays a stroke. */
    Limb limb(Stroke.Struck struck) {
        return VoicingEdits.limb(possibilities.recipe(), struck.letter());
    }

    String name(SoundName sound) {
        return names.of(sound);
    }

    /** How high a sound stands among all that can be chosen: 0 the lowest, 1 the highest. */
    double height(SoundName sound) {
        int place = possibilities.recipe().kit().sound(sound).place().diatonic();
        return highest == lowest ? 0.5 : (double) (place - lowest) / (highest - lowest);
    }

    /** A variation's cells, in time. A limb that strikes another surface than before has moved. */
    List<Cell> cells(List<SoundName> sounds) {
        Map<Limb, String> stands = new EnumMap<>(Limb.class);
        Recipe recipe = possibilities.recipe();
        List<Integer> strokes = possibilities.strokes();
        return java.util.stream.IntStream.range(0, strokes.size())
                .mapToObj(
                        i -> {
                            int step = strokes.get(i);
                            Limb limb =
                                    VoicingEdits.limb(recipe, struck(step).orElseThrow().letter());
                            SoundName sound = sounds.get(i);
                            String before = stands.put(limb, sound.surface());
                            return new Cell(
                                    step,
                                    limb,
                                    sound,
                                    before != null && !before.equals(sound.surface()));
                        })
                .toList();
    }

    /** A variation in one line, for those who cannot see it. */
    String spoken(List<SoundName> sounds) {
        Kit kit = possibilities.recipe().kit();
        StringBuilder text = new StringBuilder();
        for (SoundName sound : sounds) {
            text.append(text.isEmpty() ? "" : ", ").append(kit.surfaceOf(sound).name());
            if (!kit.find(sound.surface()).equals(sound)) {
                text.append(' ').append(sound.sound().replace('-', ' '));
            }
        }
        return text.toString();
    }
}
