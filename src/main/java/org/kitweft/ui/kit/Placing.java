package org.kitweft.ui.kit;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import org.kitweft.groove.Recipe;
import org.kitweft.kit.Kit;
import org.kitweft.kit.Limb;
import org.kitweft.kit.SoundName;
import org.kitweft.kit.Surface;
import org.kitweft.pattern.Letter;
import org.kitweft.ui.session.SessionModel;
import org.kitweft.ui.session.Target;
import org.kitweft.ui.session.VoicingEdits;

/**
 * What is going on while tokens are placed: which letter is chosen, for which of its strokes, and
 * over which surface it hovers. Mouse and keys both work through it. For one thread.
 */
final class Placing {
    /** Lets a sound be heard as it is chosen. */
    @FunctionalInterface
    interface Audition {
        void strike(Kit kit, SoundName sound);
    }

    private final SessionModel session;
    private final Audition audition;
    private final List<Runnable> listeners = new CopyOnWriteArrayList<>();
    private Kit kit;
    private Letter letter = Letter.R;
    private Target target = Target.ALL;
    private Optional<Surface> over = Optional.empty();
    private String said = "";

    Placing(SessionModel session, Audition audition) {
        this.session = session;
        this.audition = audition;
        this.kit = session.recipe().kit();
        session.addListener(this::follow);
    }

    /** What was said of one kit is not true of another. */
    private void follow() {
        Kit now = session.recipe().kit();
        if (!now.equals(kit)) {
            kit = now;
            leave();
        }
    }

    void addListener(Runnable listener) {
        listeners.add(listener);
    }

    Letter letter() {
        return letter;
    }

    Target target() {
        return target;
    }

    /** The surface it hovers over. */
    Optional<Surface> over() {
        return over;
    }

    /** What was done last, or what comes next, in a short line. */
    String said() {
        return said;
    }

    Recipe recipe() {
        Recipe now = session.recipe();
        return now.with(now.voicing().briefly(now.sticking()));
    }

    /** Takes a letter's token up from where it stands. */
    void choose(Letter chosen) {
        letter = chosen;
        over = KitModel.of(recipe()).surfaceOf(chosen, target);
        say(
                over.map(this::offer)
                        .orElse("%s: choose a surface with the arrow keys".formatted(chosen)));
    }

    /** Places for all strokes, accents or ghost strokes from now on. */
    void aim(Target other) {
        target = other;
        say("%s: %s".formatted(letter, other.words()));
    }

    /** Hovers over a surface. */
    void hover(Surface surface) {
        if (!over.equals(Optional.of(surface))) {
            over = Optional.of(surface);
            say(offer(surface));
        }
    }

    /** Hovers over nothing. */
    void leave() {
        over = Optional.empty();
        say("");
    }

    private String offer(Surface surface) {
        Limb limb = VoicingEdits.limbOn(recipe(), letter, surface);
        boolean handedOver = limb != VoicingEdits.limb(recipe(), letter);
        return "%s \u2192 %s%s%s"
                .formatted(
                        letter,
                        surface.name(),
                        handedOver ? ", handed over to the " + limb.words() : "",
                        target == Target.ALL ? "" : ", " + target.words());
    }

    /**
     * Puts the letter on the surface it hovers over.
     *
     * @param add whether it joins the path; else it stands there alone
     */
    void place(boolean add) {
        if (over.isEmpty()) {
            say("%s: choose a surface with the arrow keys first".formatted(letter));
            return;
        }
        Surface surface = over.get();
        Limb limb = VoicingEdits.limbOn(recipe(), letter, surface);
        edit(
                add ? "Add place" : "Place " + letter,
                VoicingEdits.place(recipe(), letter, surface, target, add));
        audition.strike(recipe().kit(), VoicingEdits.firstSound(surface, limb));
        say("%s %s %s".formatted(letter, add ? "takes turns with" : "plays", surface.name()));
    }

    /** Moves one place of a path to the surface it hovers over. */
    void move(Token token) {
        if (over.isEmpty()) {
            return;
        }
        Surface surface = over.get();
        Limb limb = VoicingEdits.limbOn(recipe(), token.letter(), surface);
        if (token.turns() < 2 || limb != token.limb()) {
            place(false);
            return;
        }
        SoundName sound = VoicingEdits.firstSound(surface, limb);
        edit(
                "Place " + token.letter(),
                VoicingEdits.replaceTurn(
                        recipe(), token.letter(), token.target(), token.turn(), sound));
        audition.strike(recipe().kit(), sound);
    }

    /** The next sound of the surface: closed, open; head, cross-stick, rim. */
    void nextSound() {
        edit("Change sound", VoicingEdits.nextSound(recipe(), letter, target));
        recipe().voicing()
                .letter(letter)
                .flatMap(voiced -> target.sounds(voiced).stream().findFirst())
                .ifPresent(
                        sound -> {
                            audition.strike(recipe().kit(), sound);
                            say("%s plays %s".formatted(letter, sound));
                        });
    }

    /** Silences the letter, or lets it sound. */
    void toggleTacet() {
        edit("Tacet " + letter, VoicingEdits.toggleTacet(recipe(), letter));
        boolean tacet = recipe().voicing().letter(letter).map(v -> v.tacet()).orElse(false);
        say("%s %s".formatted(letter, tacet ? "is tacet" : "sounds again"));
    }

    /** Hands the letter over to the next limb. */
    void handOver() {
        Limb limb = VoicingEdits.nextLimb(recipe(), letter);
        edit("Hand over " + letter, VoicingEdits.handOver(recipe(), letter, limb));
        over = KitModel.of(recipe()).surfaceOf(letter, target);
        say("%s handed over to the %s".formatted(letter, limb.words()));
    }

    /** Takes the last place of the path away. */
    void removeLast() {
        recipe().voicing()
                .letter(letter)
                .ifPresent(
                        voiced ->
                                edit(
                                        "Remove place",
                                        VoicingEdits.removeTurn(
                                                recipe(),
                                                letter,
                                                target,
                                                target.sounds(voiced).size() - 1)));
        say("");
    }

    void edit(String name, Recipe next) {
        session.edit(name, next);
    }

    private void say(String text) {
        said = text;
        listeners.forEach(Runnable::run);
    }
}
