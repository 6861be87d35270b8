package org.kitweft.lesson;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.kitweft.band.Backing;
import org.kitweft.band.ClaveDirection;
import org.kitweft.groove.PhrasePlan;
import org.kitweft.groove.PlannedSection;
import org.kitweft.groove.Tempo;

/** Reads the phrases of a lesson file; {@link LessonFile} describes the form. */
final class PhraseReader {
    private final RecipeReader recipes;

    PhraseReader(RecipeReader recipes) {
        this.recipes = recipes;
    }

    LessonPhrase phrase(Field phrase) {
        phrase.object();
        Field band = phrase.at("band");
        Optional<Backing> backing = band.isPresent() ? Optional.of(band(band)) : Optional.empty();
        List<PlannedSection> sections =
                phrase.at("sections").list("section").stream().map(this::section).toList();
        List<Integer> tempoSteps = RecipeReader.tempoSteps(phrase.at("tempoSteps"));
        Field tempo = phrase.at("tempo");
        LessonPhrase known =
                phrase.checked(
                        () ->
                                new LessonPhrase(
                                        phrase.at("title").text(""),
                                        new PhrasePlan(sections),
                                        backing,
                                        new Tempo(tempo.whole(Tempo.DEFAULT.beatsPerMinute())),
                                        tempoSteps,
                                        phrase.at("remarks").text("")));
        return new LessonPhrase(
                known.title(),
                known.plan(),
                backing,
                known.tempo(),
                tempoSteps,
                known.remarks(),
                Json.beyond(phrase.node(), LessonWriter.bareTree(known)));
    }

    private PlannedSection section(Field section) {
        section.object();
        return section.checked(
                () ->
                        new PlannedSection(
                                RecipeReader.role(section.at("role")),
                                recipes.recipe(section).withBars(OptionalInt.empty()),
                                section.at("bars").whole()));
    }

    private static Backing band(Field band) {
        Backing usual = Backing.DEFAULT;
        Field chords = band.object().at("chords");
        Field style = band.at("style");
        Field clave = band.at("clave");
        return new Backing(
                !band.at("on").isPresent() || band.at("on").bool(),
                chords.checked(() -> usual.withChords(chords.text()).chords()),
                style.checked(() -> usual.withStyle(style.text(usual.style())).style()),
                ClaveDirection.of(clave.text(usual.clave().id()))
                        .orElseThrow(() -> clave.expected("3-2 or 2-3")),
                band.at("seed").wholeLong(usual.seed()));
    }
}
