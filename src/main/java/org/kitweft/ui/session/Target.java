package org.kitweft.ui.session;

import java.util.List;
import org.kitweft.groove.LetterVoicing;
import org.kitweft.kit.SoundName;

/** Which strokes of a letter a sound is chosen for. */
public enum Target {
    /** All that have no sounds of their own. */
    ALL("all strokes"),
    /** Its accents. */
    ACCENTS("accents"),
    /** Its ghost strokes. */
    GHOSTS("ghost strokes");

    private final String words;

    Target(String words) {
        this.words = words;
    }

    /** The name in a sentence. */
    public String words() {
        return words;
    }

    /** The sounds a letter has for them; for accents and ghosts none means: as all strokes. */
    public List<SoundName> sounds(LetterVoicing voiced) {
        return switch (this) {
            case ALL -> voiced.path();
            case ACCENTS -> voiced.accents();
            case GHOSTS -> voiced.ghosts();
        };
    }

    /** The letter with other sounds for them. */
    public LetterVoicing with(LetterVoicing voiced, List<SoundName> sounds) {
        return switch (this) {
            case ALL -> voiced.withPath(sounds);
            case ACCENTS -> voiced.withAccents(sounds);
            case GHOSTS -> voiced.withGhosts(sounds);
        };
    }
}
