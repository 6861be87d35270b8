package org.kitweft.ui.lesson;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Component;
import java.awt.Insets;
import java.awt.KeyboardFocusManager;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.List;
import java.util.OptionalInt;
import java.util.function.Consumer;
import java.util.function.IntConsumer;
import java.util.function.UnaryOperator;
import javax.swing.BorderFactory;
import javax.swing.DefaultListCellRenderer;
import javax.swing.DefaultListModel;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import javax.swing.JTextField;
import javax.swing.ListSelectionModel;
import javax.swing.event.DocumentEvent;
import javax.swing.event.DocumentListener;
import javax.swing.text.JTextComponent;
import net.miginfocom.swing.MigLayout;
import org.kitweft.lesson.LessonItem;
import org.kitweft.ui.session.Session;
import org.kitweft.ui.session.SessionModel;
import org.kitweft.ui.theme.Keys;
import org.kitweft.ui.theme.Paints;

/**
 * The lesson drawer: title and remarks, the items in order, and what can be done with them. Enter
 * on an item opens its groove.
 */
public final class LessonPanel extends JPanel {
    private static final long serialVersionUID = 1;

    private final transient SessionModel session;
    private final JTextField title = new JTextField();
    private final JTextArea remarks = new JTextArea(3, 20);
    private final DefaultListModel<LessonItem> model = new DefaultListModel<>();
    private final JList<LessonItem> items = new JList<>(model);
    private final JTextField itemTitle = new JTextField();
    private final JTextArea itemRemarks = new JTextArea(4, 20);
    private final JButton add = new JButton("Add groove");
    private final JButton keep = new JButton("Keep changes");
    private final JButton open = new JButton("Open");
    private final JButton up = new JButton("Up");
    private final JButton down = new JButton("Down");
    private final JButton delete = new JButton("Delete");
    private boolean following;

    /** A drawer for the session's lesson. */
    public LessonPanel(SessionModel session) {
        super(
                new MigLayout(
                        "insets 10 12 10 12, gapy 5, wrap 1, hidemode 3",
                        "[grow,fill]",
                        "[][][][]14[][grow,fill][][]14[][][][]"));
        this.session = session;
        fill();
        listen();
        session.addListener(this::follow);
        follow();
    }

    private void fill() {
        add(heading("Lesson", title));
        title.putClientProperty("JTextField.placeholderText", "Title");
        add(title);
        add(heading("Remarks", remarks));
        add(scrolling(remarks), "hmin 50");
        add(heading("Items", items));
        items.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        items.setCellRenderer(new ItemRenderer());
        add(new JScrollPane(items), "hmin 90");
        JPanel first = new JPanel(new MigLayout("insets 0, gap 5", "[grow,fill][grow,fill]"));
        first.add(add);
        first.add(keep);
        add.setToolTipText("Add the groove of now to the lesson");
        keep.setToolTipText("Put the groove of now in place of the open item's");
        add(first);
        JPanel second = new JPanel(new MigLayout("insets 0, gap 5", "[grow,fill]"));
        for (JButton button : List.of(open, up, down, delete)) {
            button.setMargin(UIScale.scale(new Insets(2, 4, 2, 4)));
            second.add(button);
        }
        add(second);
        add(heading("Item title", itemTitle));
        add(itemTitle);
        add(heading("Item remarks", itemRemarks));
        add(scrolling(itemRemarks), "hmin 60");
    }

    private static JLabel heading(String text, JTextComponent target) {
        return heading(text, (JComponent) target);
    }

    private static JLabel heading(String text, JComponent target) {
        JLabel label = new JLabel(text);
        Paints.type(label, 100, true);
        label.setLabelFor(target);
        target.getAccessibleContext().setAccessibleName(text);
        return label;
    }

    private static JScrollPane scrolling(JTextArea area) {
        area.setLineWrap(true);
        area.setWrapStyleWord(true);
        area.setBorder(BorderFactory.createEmptyBorder(3, 5, 3, 5));
        // Tab moves on rather than writing a tab stop: the keyboard must get out of the field.
        area.setFocusTraversalKeys(KeyboardFocusManager.FORWARD_TRAVERSAL_KEYS, null);
        area.setFocusTraversalKeys(KeyboardFocusManager.BACKWARD_TRAVERSAL_KEYS, null);
        return new JScrollPane(area);
    }

    private void listen() {
        typing(
                title,
                text -> keep("Lesson title", s -> s.with(s.lesson().withTitle(text), s.item())));
        typing(
                remarks,
                text ->
                        keep(
                                "Lesson remarks",
                                s -> s.with(s.lesson().withRemarks(text), s.item())));
        typing(
                itemTitle,
                text -> selected(i -> keep("Item title", s -> LessonEdits.title(s, i, text))));
        typing(
                itemRemarks,
                text -> selected(i -> keep("Item remarks", s -> LessonEdits.remarks(s, i, text))));
        add.addActionListener(e -> addGroove());
        keep.addActionListener(
                e -> session.edit("Keep changes", LessonEdits.keepChanges(session.session())));
        open.addActionListener(e -> openSelected());
        up.addActionListener(e -> moveSelected(-1));
        down.addActionListener(e -> moveSelected(1));
        delete.addActionListener(e -> deleteSelected());
        Keys.bind(items, "ENTER", this::openSelected);
        Keys.bind(items, "DELETE", this::deleteSelected);
        Keys.bind(items, "alt UP", () -> moveSelected(-1));
        Keys.bind(items, "alt DOWN", () -> moveSelected(1));
        items.addListSelectionListener(e -> showItem());
        items.addMouseListener(
                new MouseAdapter() {
                    @Override
                    public void mouseClicked(MouseEvent event) {
                        if (event.getClickCount() == 2) {
                            openSelected();
                        }
                    }
                });
    }

    private void typing(JTextComponent field, Consumer<String> body) {
        field.getDocument()
                .addDocumentListener(
                        new DocumentListener() {
                            @Override
                            public void insertUpdate(DocumentEvent event) {
                                changedUpdate(event);
                            }

                            @Override
                            public void removeUpdate(DocumentEvent event) {
                                changedUpdate(event);
                            }

                            @Override
                            public void changedUpdate(DocumentEvent event) {
                                if (!following) {
                                    body.accept(field.getText());
                                }
                            }
                        });
        field.addFocusListener(
                new FocusAdapter() {
                    @Override
                    public void focusLost(FocusEvent event) {
                        session.seal();
                    }
                });
    }

    private void keep(String name, UnaryOperator<Session> change) {
        session.keepEditing(name, change.apply(session.session()));
    }

    private void selected(IntConsumer body) {
        if (items.getSelectedIndex() >= 0) {
            body.accept(items.getSelectedIndex());
        }
    }

    /** Adds the groove of now to the lesson. */
    public void addGroove() {
        session.edit("Add groove", LessonEdits.addGroove(session.session()));
        items.setSelectedIndex(model.size() - 1);
    }

    private void openSelected() {
        selected(i -> session.edit("Open item", session.session().opened(i)));
    }

    private void moveSelected(int direction) {
        selected(
                i -> {
                    session.edit("Move item", LessonEdits.move(session.session(), i, direction));
                    items.setSelectedIndex(Math.max(0, Math.min(model.size() - 1, i + direction)));
                });
    }

    private void deleteSelected() {
        selected(i -> session.edit("Delete item", LessonEdits.remove(session.session(), i)));
    }

    private void follow() {
        Session now = session.session();
        following = true;
        try {
            set(title, now.lesson().title());
            set(remarks, now.lesson().remarks());
            int selected = items.getSelectedIndex();
            List<LessonItem> list = now.lesson().items();
            for (int i = 0; i < list.size(); i++) {
                if (i >= model.size()) {
                    model.addElement(list.get(i));
                } else if (!model.get(i).equals(list.get(i))) {
                    model.set(i, list.get(i));
                }
            }
            while (model.size() > list.size()) {
                model.remove(model.size() - 1);
            }
            if (selected < 0 || selected >= model.size()) {
                items.setSelectedIndex(now.item().orElse(model.size() - 1));
            }
        } finally {
            following = false;
        }
        showItem();
        items.repaint();
    }

    private void showItem() {
        int index = items.getSelectedIndex();
        boolean any = index >= 0;
        boolean was = following;
        following = true;
        try {
            set(itemTitle, any ? model.get(index).title() : "");
            set(itemRemarks, any ? model.get(index).remarks() : "");
        } finally {
            following = was;
        }
        itemTitle.setEnabled(any);
        itemRemarks.setEnabled(any);
        open.setEnabled(any);
        delete.setEnabled(any);
        up.setEnabled(index > 0);
        down.setEnabled(any && index < model.size() - 1);
        keep.setEnabled(LessonEdits.hasChanges(session.session()));
    }

    private static void set(JTextComponent field, String text) {
        if (!field.getText().equals(text)) {
            field.setText(text);
        }
    }

    /** Title, sticking and tempo; the open item in bold. */
    private final class ItemRenderer extends DefaultListCellRenderer {
        private static final long serialVersionUID = 1;

        @Override
        public Component getListCellRendererComponent(
                JList<?> list, Object value, int index, boolean selected, boolean focus) {
            LessonItem item = (LessonItem) value;
            String name = item.title().isBlank() ? item.recipe().sticking().text() : item.title();
            super.getListCellRendererComponent(
                    list,
                    "%d  %s  ·  %d".formatted(index + 1, name, item.tempo().beatsPerMinute()),
                    index,
                    selected,
                    focus);
            boolean open = session.session().item().equals(OptionalInt.of(index));
            setFont(Paints.font(1, open));
            setToolTipText(item.recipe().sticking().text());
            setBorder(BorderFactory.createEmptyBorder(4, 6, 4, 6));
            return this;
        }
    }
}
