package org.kitweft.ui.session;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.kitweft.groove.Figure;
import org.kitweft.groove.Layer;
import org.kitweft.groove.Recipe;
import org.kitweft.kit.SoundName;
import org.kitweft.pattern.Dynamic;
import org.kitweft.pattern.Stroke;

/** What can be done to single strokes and to layers: from one recipe to the next. */
public final class StrokeEdits {
    private StrokeEdits() {}

    /** Plain, accent, ghost, plain: the next dynamic of a stroke. A rest stays. */
    public static Recipe nextDynamic(Recipe recipe, int stroke) {
        return recipe.sticking()
                .strokes()
                .get(stroke)
                .struck()
                .map(struck -> withDynamic(recipe, stroke, next(struck.dynamic())))
                .orElse(recipe);
    }

    /** A stroke with another dynamic. A rest stays. */
    public static Recipe withDynamic(Recipe recipe, int stroke, Dynamic dynamic) {
        Optional<Stroke.Struck> struck = recipe.sticking().strokes().get(stroke).struck();
        return struck.map(s -> recipe.with(recipe.sticking().with(stroke, s.withDynamic(dynamic))))
                .orElse(recipe);
    }

    private static Dynamic next(Dynamic dynamic) {
        return switch (dynamic) {
            case PLAIN -> Dynamic.ACCENT;
            case ACCENT -> Dynamic.GHOST;
            case GHOST -> Dynamic.PLAIN;
        };
    }

    /** One stroke on a sound of its own. */
    public static Recipe moveStroke(Recipe recipe, int stroke, SoundName sound) {
        return recipe.with(recipe.voicing().withStroke(stroke, sound));
    }

    /** One stroke back to where its letter plays. */
    public static Recipe returnStroke(Recipe recipe, int stroke) {
        SortedMap<Integer, SoundName> strokes = new TreeMap<>(recipe.voicing().strokes());
        strokes.remove(stroke);
        return recipe.with(recipe.voicing().withStrokes(strokes));
    }

    /** Whether a stroke has a sound of its own. */
    public static boolean isMoved(Recipe recipe, int stroke) {
        return recipe.voicing().strokes().containsKey(stroke);
    }

    /** One more layer. */
    public static Recipe addLayer(Recipe recipe, Layer layer) {
        List<Layer> layers = new ArrayList<>(recipe.voicing().layers());
        layers.add(layer);
        return recipe.with(recipe.voicing().withLayers(layers));
    }

    /** A layer exchanged for another; {@code index} counts from 0. */
    public static Recipe replaceLayer(Recipe recipe, int index, Layer layer) {
        List<Layer> layers = new ArrayList<>(recipe.voicing().layers());
        layers.set(index, layer);
        return recipe.with(recipe.voicing().withLayers(layers));
    }

    /** One layer less. */
    public static Recipe removeLayer(Recipe recipe, int index) {
        List<Layer> layers = new ArrayList<>(recipe.voicing().layers());
        layers.remove(index);
        return recipe.with(recipe.voicing().withLayers(layers));
    }

    /**
     * The next dynamic of a layer's step: nothing, plain, accent, ghost, nothing. The last stroke
     * of a figure does not go away, for a layer without strokes is none.
     *
     * @param step from 0, in the layer's own steps from the start of the groove
     */
    public static Recipe nextLayerStep(Recipe recipe, int index, long step) {
        Layer layer = recipe.voicing().layers().get(index);
        List<Optional<Dynamic>> steps = new ArrayList<>(layer.figure().steps());
        int at = Math.toIntExact(step % steps.size());
        steps.set(at, nextOrNothing(steps.get(at)));
        if (steps.stream().allMatch(Optional::isEmpty)) {
            steps.set(at, Optional.of(Dynamic.PLAIN));
        }
        return replaceLayer(
                recipe,
                index,
                new Layer(layer.limb(), layer.sound(), layer.stepsPerBeat(), new Figure(steps)));
    }

    private static Optional<Dynamic> nextOrNothing(Optional<Dynamic> dynamic) {
        return dynamic.isEmpty()
                ? Optional.of(Dynamic.PLAIN)
                : switch (dynamic.get()) {
                    case PLAIN -> Optional.of(Dynamic.ACCENT);
                    case ACCENT -> Optional.of(Dynamic.GHOST);
                    case GHOST -> Optional.empty();
                };
    }
}
