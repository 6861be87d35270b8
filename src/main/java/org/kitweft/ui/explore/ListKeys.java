package org.kitweft.ui.explore;

import java.util.List;
import javax.swing.JComponent;
import org.kitweft.ui.theme.Keys;

/**
 * The keys of every list whose rows are heard: variations, what a search found, the rungs of a
 * ladder. The same in each, and told in the same words.
 */
public final class ListKeys {
    /** Key and meaning, for the page of all keys. */
    public static final List<Told> TOLD =
            List.of(
                    new Told("Up, Down", "hear the next one; while it plays, from the next bar on"),
                    new Told("Enter", "take it: it stands in the grid as an edit of yours"),
                    new Told("S, *", "keep it in the lesson (on the ladder: all rungs)"));

    /** A key and what it does, in words. */
    public record Told(String key, String text) {}

    /** For a list's tool tip. */
    public static final String LIST_TIP = "Arrow keys hear, Enter takes, S or * keeps";

    /** For a button's tool tip: the keys that keep. */
    public static final String KEEPS = "(S or * in the list)";

    private ListKeys() {}

    /** Binds what Enter does, and what S and {@code *} do. */
    public static void bind(JComponent list, Runnable take, Runnable keep) {
        Keys.bind(list, "ENTER", take);
        Keys.bind(list, "S", keep);
        Keys.bind(list, "typed *", keep);
    }
}
