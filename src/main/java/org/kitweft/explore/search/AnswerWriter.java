package org.kitweft.explore.search;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.SortedMap;
import java.util.TreeMap;
import org.kitweft.groove.Doubling;
import org.kitweft.groove.Layer;
import org.kitweft.groove.LetterVoicing;
import org.kitweft.groove.Recipe;
import org.kitweft.groove.Voicing;
import org.kitweft.kit.Kit;
import org.kitweft.kit.Limb;
import org.kitweft.kit.SoundName;
import org.kitweft.pattern.Letter;
import org.kitweft.pattern.Sticking;

/** Writes a path through a trellis as a recipe. */
final class AnswerWriter {
    private final Plan plan;
    private final Heard heard;
    private final List<Choice> choices;
    private final Map<Letter, List<Paths.Turn>> turns = new EnumMap<>(Letter.class);

    private AnswerWriter(Plan plan, Heard heard, List<Choice> choices) {
        this.plan = plan;
        this.heard = heard;
        this.choices = choices;
    }

    static Answer write(Plan plan, Heard heard, Trellis.Path path) {
        return new AnswerWriter(plan, heard, path.choices()).write(path.points());
    }

    private Answer write(int points) {
        collectTurns();
        Target target = heard.target();
        Voicing voicing = Voicing.plain(target.kit());
        SortedMap<Integer, SoundName> strokes = new TreeMap<>();
        for (Letter letter : Letter.values()) {
            Optional<LetterVoicing> voiced = voiced(letter, strokes);
            if (voiced.isPresent()) {
                voicing = voicing.with(letter, voiced.get());
            }
        }
        List<Layer> layers = new ArrayList<>();
        for (Addition addition : plan.layering().layers()) {
            if (addition instanceof Addition.Layered layer) {
                layers.add(LayerFigure.of(target, layer.limb(), layer.sound()));
            }
        }
        Sticking sticking = new Sticking(choices.stream().map(Choice::stroke).toList());
        return new Answer(
                new Recipe(
                        sticking,
                        target.kit(),
                        voicing.withStrokes(strokes).withLayers(layers),
                        target.grid(),
                        OptionalInt.of(target.bars())),
                plan.additions(),
                points);
    }

    /** What each letter strikes, in time through a whole period. */
    private void collectTurns() {
        for (int position = 0; position < heard.period(); position++) {
            int stroke = position % heard.strokes();
            Choice choice = choices.get(stroke);
            if (choice.letter().isPresent()) {
                Fit fit = choice.passes().get(position / heard.strokes());
                List<Letter> letters = voicedLetters(choice.letter().get());
                for (int part = 0; part < fit.paths().size(); part++) {
                    SoundName sound = heard.sounds().get(fit.paths().get(part));
                    turns.computeIfAbsent(letters.get(part), none -> new ArrayList<>())
                            .add(
                                    new Paths.Turn(
                                            stroke,
                                            choice.dynamic(),
                                            sound,
                                            letters.size() == 1 && onOneSound(choice)));
                }
            }
        }
    }

    /** The letters whose voicings a stroke takes: B is R and L at once unless it has its own. */
    private List<Letter> voicedLetters(Letter letter) {
        return letter != Letter.B || plan.both() == Plan.Both.OWN_SOUNDS
                ? List.of(letter)
                : List.of(Letter.R, Letter.L).stream().filter(l -> !plan.of(l).tacet()).toList();
    }

    private static boolean onOneSound(Choice choice) {
        return choice.letter().orElseThrow() != Letter.B
                && choice.passes().stream().map(Fit::paths).distinct().count() == 1;
    }

    private Optional<LetterVoicing> voiced(Letter letter, SortedMap<Integer, SoundName> strokes) {
        if (letter != Letter.B && plan.of(letter).tacet()) {
            return Optional.of(silent(plan.of(letter).limb()));
        }
        List<Paths.Turn> own = turns.get(letter);
        if (own == null) {
            return Optional.empty();
        }
        Paths paths = Paths.of(own);
        strokes.putAll(paths.strokes());
        Limb limb = letter == Letter.B ? Limb.RIGHT_HAND : plan.of(letter).limb();
        List<Doubling> doublings =
                letter == Letter.B
                        ? List.of()
                        : plan.of(letter).doubling().stream()
                                .map(d -> new Doubling(d.limb(), d.sound(), d.accentsOnly()))
                                .toList();
        return Optional.of(
                new LetterVoicing(
                        limb, paths.path(), paths.accents(), paths.ghosts(), doublings, false));
    }

    private LetterVoicing silent(Limb limb) {
        Kit kit = heard.target().kit();
        SoundName any = kit.soundsFor(limb).stream().findFirst().orElse(kit.soundNames().get(0));
        return LetterVoicing.on(limb, List.of(any)).withTacet(true);
    }
}
