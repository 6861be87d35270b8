package org.kitweft.ui.window;

import java.awt.GraphicsEnvironment;
import java.awt.Toolkit;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.util.Optional;
import java.util.ResourceBundle;
import javax.swing.KeyStroke;

/** The words and keys of commands, read from the bundle and fitted to the platform. */
final class CommandTexts {
    private final ResourceBundle bundle =
            ResourceBundle.getBundle("org.kitweft.ui.window.commands");

    /** The text without its mnemonic's sign. */
    String text(Command command) {
        return bundle.getString(command.name()).replace("&", "");
    }

    /** What it does, in a sentence. */
    String tip(Command command) {
        return bundle.getString(command.name() + ".tip");
    }

    /** The key code of its mnemonic. */
    int mnemonic(Command command) {
        return mnemonic(bundle.getString(command.name()));
    }

    /** The name of a menu. */
    String text(Command.Group group) {
        return bundle.getString("menu." + group).replace("&", "");
    }

    /** The key code of a menu's mnemonic. */
    int mnemonic(Command.Group group) {
        return mnemonic(bundle.getString("menu." + group));
    }

    private static int mnemonic(String text) {
        int at = text.indexOf('&');
        return at < 0
                ? KeyEvent.VK_UNDEFINED
                : KeyEvent.getExtendedKeyCodeForChar(Character.toUpperCase(text.charAt(at + 1)));
    }

    /** The key of a command on this platform. */
    Optional<KeyStroke> key(Command command) {
        return command.key().map(CommandTexts::stroke);
    }

    private static KeyStroke stroke(String key) {
        boolean menu = key.startsWith("menu ");
        KeyStroke plain = KeyStroke.getKeyStroke(menu ? key.substring(5) : key);
        return menu
                ? KeyStroke.getKeyStroke(plain.getKeyCode(), plain.getModifiers() | menuMask())
                : plain;
    }

    /** Ctrl, or Command on macOS; without a display there is nobody to ask. */
    private static int menuMask() {
        return GraphicsEnvironment.isHeadless()
                ? InputEvent.CTRL_DOWN_MASK
                : Toolkit.getDefaultToolkit().getMenuShortcutKeyMaskEx();
    }

    /** A key in words: {@code Ctrl+Shift+S}. */
    static String words(KeyStroke key) {
        String modifiers = InputEvent.getModifiersExText(key.getModifiers());
        String name =
                switch (key.getKeyCode()) {
                    // As they stand on the keys, not as the JDK calls them.
                    case KeyEvent.VK_EQUALS -> "=";
                    case KeyEvent.VK_MINUS -> "-";
                    default -> KeyEvent.getKeyText(key.getKeyCode());
                };
        return modifiers.isEmpty() ? name : modifiers + "+" + name;
    }
}
