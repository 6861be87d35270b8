package org.kitweft.ui.window;

import java.util.Optional;

/**
 * Everything the window can do by command: its menu and its key. Texts stand in {@code
 * commands.properties} and are looked up at use. {@code menu} in a key stands for the platform's
 * menu key: Ctrl, or Command on macOS.
 */
enum Command {
    NEW_LESSON(Group.FILE, "menu N"),
    OPEN_LESSON(Group.FILE, "menu O"),
    SAVE_LESSON(Group.FILE, "menu S"),
    SAVE_LESSON_AS(Group.FILE, "menu shift S"),
    ADD_GROOVE(Group.FILE, "menu D", true),
    HANDOUT_PAGE(Group.FILE, "", true),
    HANDOUT_PDF(Group.FILE, "menu shift P"),
    PRINT_HANDOUT(Group.FILE, "menu P"),
    EXPORT_MIDI(Group.FILE, "menu E", true),
    EXPORT_WAVE(Group.FILE, "menu shift E"),
    EXPORT_PICTURE(Group.FILE, ""),
    EXPORT_STAFF(Group.FILE, ""),
    QUIT(Group.FILE, "menu Q", true),

    UNDO(Group.EDIT, "menu Z"),
    REDO(Group.EDIT, "menu shift Z"),
    CHOOSE_STICKING(Group.EDIT, "menu T", true),
    SWAP_HANDS(Group.EDIT, "menu shift H"),
    START_LATER(Group.EDIT, "menu RIGHT"),
    START_EARLIER(Group.EDIT, "menu LEFT"),
    STROKES_BACK(Group.EDIT, "", true),
    PLAIN_VOICING(Group.EDIT, ""),

    LEFT_HANDED(Group.KIT, "", true),
    MIRROR_KIT(Group.KIT, ""),
    OPEN_KIT(Group.KIT, ""),

    PLAY(Group.PLAY, "SPACE"),
    PLAY_ALWAYS(Group.PLAY, "F5"),
    TAP(Group.PLAY, "F8"),
    FASTER(Group.PLAY, "menu UP"),
    SLOWER(Group.PLAY, "menu DOWN"),
    CLICK(Group.PLAY, "menu K", true),
    LOOP(Group.PLAY, "menu shift L"),
    PLAY_PHRASE(Group.PLAY, "menu R", true),
    BAND(Group.PLAY, "menu B"),

    GO_STICKING(Group.VIEW, "F2"),
    GO_KIT(Group.VIEW, "F3"),
    GO_GROOVE(Group.VIEW, "F4"),
    GO_POSSIBILITIES(Group.VIEW, "F7"),
    GO_PHRASE(Group.VIEW, "F9"),
    GO_BAND(Group.VIEW, "shift F9"),
    GO_SEARCH(Group.VIEW, "F12"),
    GO_LADDER(Group.VIEW, "shift F12"),
    GO_MIXER(Group.VIEW, "F6"),
    GO_PRACTICE(Group.VIEW, "shift F6"),
    LESSON_DRAWER(Group.VIEW, "menu L", true),
    LARGE_VIEW(Group.VIEW, "F11"),
    ZOOM_IN(Group.VIEW, "menu EQUALS", true),
    ZOOM_OUT(Group.VIEW, "menu MINUS"),
    ZOOM_RESET(Group.VIEW, "menu 0"),
    THEME_DESKTOP(Group.VIEW, "", true),
    THEME_LIGHT(Group.VIEW, ""),
    THEME_DARK(Group.VIEW, ""),

    KEYS(Group.HELP, "F1"),
    CARE(Group.HELP, ""),
    ABOUT(Group.HELP, "");

    /** A menu of the menu bar. */
    enum Group {
        FILE,
        EDIT,
        KIT,
        PLAY,
        VIEW,
        HELP
    }

    private final Group group;
    private final String key;
    private final boolean afterLine;

    Command(Group group, String key) {
        this(group, key, false);
    }

    Command(Group group, String key, boolean afterLine) {
        this.group = group;
        this.key = key;
        this.afterLine = afterLine;
    }

    /** The menu it stands in. */
    Group group() {
        return group;
    }

    /** Its key, if it has one. */
    Optional<String> key() {
        return Optional.of(key).filter(k -> !k.isEmpty());
    }

    /** Whether a line separates it from the command before. */
    boolean afterLine() {
        return afterLine;
    }
}
