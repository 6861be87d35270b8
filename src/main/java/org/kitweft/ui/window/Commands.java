package org.kitweft.ui.window;

import java.awt.event.ActionEvent;
import java.util.EnumMap;
import java.util.Map;
import java.util.function.BooleanSupplier;
import javax.swing.AbstractAction;
import javax.swing.Action;
import javax.swing.JCheckBoxMenuItem;
import javax.swing.JMenu;
import javax.swing.JMenuBar;
import javax.swing.JMenuItem;

/**
 * The actions of all commands and the menu bar made of them. Whether a command can be used and
 * whether it is ticked is asked of the state, never set by hand.
 */
final class Commands {
    private final CommandTexts texts = new CommandTexts();
    private final Runnable before;
    private final Map<Command, Action> actions = new EnumMap<>(Command.class);
    private final Map<Command, BooleanSupplier> enabled = new EnumMap<>(Command.class);
    private final Map<Command, BooleanSupplier> ticked = new EnumMap<>(Command.class);

    /**
     * No commands as yet.
     *
     * @param before is run before each command, whoever gives it
     */
    Commands(Runnable before) {
        this.before = before;
    }

    /** Says what a command does. */
    void on(Command command, Runnable body) {
        AbstractAction action =
                new AbstractAction(texts.text(command)) {
                    private static final long serialVersionUID = 1;

                    @Override
                    public void actionPerformed(ActionEvent event) {
                        before.run();
                        body.run();
                        refresh();
                    }
                };
        action.putValue(Action.SHORT_DESCRIPTION, texts.tip(command));
        action.putValue(Action.MNEMONIC_KEY, texts.mnemonic(command));
        texts.key(command).ifPresent(key -> action.putValue(Action.ACCELERATOR_KEY, key));
        actions.put(command, action);
    }

    /** Says when it can be used. */
    void enabledWhen(Command command, BooleanSupplier condition) {
        enabled.put(command, condition);
    }

    /** Says when it is ticked; it has a tick box from now on. */
    void tickedWhen(Command command, BooleanSupplier condition) {
        ticked.put(command, condition);
    }

    /** The text of a command from now on: Undo names what it would undo. */
    void text(Command command, String more) {
        action(command)
                .putValue(
                        Action.NAME,
                        more.isEmpty() ? texts.text(command) : texts.text(command) + ": " + more);
    }

    /** The action of a command. */
    Action action(Command command) {
        Action action = actions.get(command);
        if (action == null) {
            throw new IllegalStateException("nothing is done on the command " + command);
        }
        return action;
    }

    /** Asks the state again. */
    void refresh() {
        enabled.forEach(
                (command, condition) -> action(command).setEnabled(condition.getAsBoolean()));
        ticked.forEach(
                (command, condition) ->
                        action(command).putValue(Action.SELECTED_KEY, condition.getAsBoolean()));
    }

    /** A menu bar with the menus' names; {@link #fill} puts the commands into them. */
    JMenuBar menuBar() {
        JMenuBar bar = new JMenuBar();
        for (Command.Group group : Command.Group.values()) {
            JMenu menu = new JMenu(texts.text(group));
            menu.setMnemonic(texts.mnemonic(group));
            bar.add(menu);
        }
        return bar;
    }

    /** Puts all commands into their menus, in the order of the table. */
    void fill(JMenuBar bar) {
        for (Command command : Command.values()) {
            JMenu menu = bar.getMenu(command.group().ordinal());
            if (command.afterLine()) {
                menu.addSeparator();
            }
            menu.add(item(command));
        }
        refresh();
    }

    private JMenuItem item(Command command) {
        Action action = action(command);
        return ticked.containsKey(command) ? new JCheckBoxMenuItem(action) : new JMenuItem(action);
    }
}
