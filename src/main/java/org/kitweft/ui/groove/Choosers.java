package org.kitweft.ui.groove;

import java.awt.Component;
import java.util.List;
import java.util.function.Function;
import javax.swing.DefaultListCellRenderer;
import javax.swing.JComboBox;
import javax.swing.JList;
import org.kitweft.groove.Grid;
import org.kitweft.kit.Limb;
import org.kitweft.kit.SoundName;

/** Combo boxes that show values by their names for people. */
final class Choosers {
    private Choosers() {}

    static JComboBox<Limb> limbs() {
        JComboBox<Limb> box = new JComboBox<>(Limb.values());
        box.setRenderer(new ByName<>(Limb.class, Limb::words));
        return box;
    }

    static JComboBox<SoundName> sounds(List<SoundName> sounds) {
        JComboBox<SoundName> box = new JComboBox<>(sounds.toArray(new SoundName[0]));
        box.setRenderer(new ByName<>(SoundName.class, SoundName::text));
        return box;
    }

    static JComboBox<Integer> stepsPerBeat() {
        JComboBox<Integer> box =
                new JComboBox<>(Grid.stepsPerBeatChoices().toArray(new Integer[0]));
        box.setRenderer(new ByName<>(Integer.class, count -> count + " to the beat"));
        return box;
    }

    private static final class ByName<T> extends DefaultListCellRenderer {
        private static final long serialVersionUID = 1;
        private final Class<T> type;
        private final transient Function<T, String> name;

        ByName(Class<T> type, Function<T, String> name) {
            this.type = type;
            this.name = name;
        }

        @Override
        public Component getListCellRendererComponent(
                JList<?> list, Object value, int index, boolean selected, boolean focus) {
            Object shown = type.isInstance(value) ? name.apply(type.cast(value)) : value;
            return super.getListCellRendererComponent(list, shown, index, selected, focus);
        }
    }
}
