package org.kitweft.ui.window;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.ResourceBundle;
import javax.swing.KeyStroke;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class CommandTest {
    private final CommandTexts texts = new CommandTexts();

    @ParameterizedTest
    @EnumSource(Command.class)
    void everyCommandHasATextATipAndAMnemonicOfItsOwn(Command command) {
        assertThat(texts.text(command)).isNotBlank();
        assertThat(texts.tip(command)).isNotBlank();
        assertThat(texts.mnemonic(command)).isNotZero();
        for (Command other : Command.values()) {
            if (other != command && other.group() == command.group()) {
                assertThat(texts.mnemonic(other))
                        .as(other + "")
                        .isNotEqualTo(texts.mnemonic(command));
            }
        }
    }

    @Test
    void noTwoCommandsShareAKey() {
        List<KeyStroke> keys = new ArrayList<>();
        for (Command command : Command.values()) {
            texts.key(command).ifPresent(keys::add);
        }
        assertThat(keys).doesNotHaveDuplicates();
    }

    @Test
    void noTextBelongsToNoCommand() {
        List<String> commands = Arrays.stream(Command.values()).map(Enum::name).toList();
        ResourceBundle bundle = ResourceBundle.getBundle("org.kitweft.ui.window.commands");
        assertThat(bundle.keySet())
                .allMatch(
                        key ->
                                key.startsWith("menu.")
                                        || commands.contains(key.replace(".tip", "")));
    }
}
