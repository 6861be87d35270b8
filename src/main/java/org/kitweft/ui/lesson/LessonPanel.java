package org.kitweft.ui.lesson;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.Insets;
import java.awt.KeyboardFocusManager;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.List;
import java.util.OptionalInt;
import java.util.function.Consumer;
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
import org.kitweft.ui.session.Session;
import org.kitweft.ui.session.SessionModel;
import org.kitweft.ui.theme.Keys;
import org.kitweft.ui.theme.Paints;

/**
 * The lesson drawer: title and remarks, the items and phrases in order, and what can be done with
 * them. Enter opens one.
 */
public final class LessonPanel extends JPanel {
    private static final long serialVersionUID = 1;
    private static final int SHARE = 5;
    private static final int WIDEST = 340;

    private final transient SessionModel session;
    private final JTextField title = new JTextField();
    private final JTextArea remarks = new JTextArea(3, 20);
    private final DefaultListModel<Entry> model = new DefaultListModel<>();
    private final JList<Entry> items = new JList<>(model);
    private final JTextField itemTitle = new JTextField();
    private final JTextArea itemRemarks = new JTextArea(4, 20);
    private final JButton add = new JButton("Add groove");
    private final JButton addPhrase = new JButton("Keep phrase");
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

    /** A fifth of what it stands in: what is beside it, lists and figures, needs the width more. */
    @Override
    public Dimension getPreferredSize() {
        Dimension least = getMinimumSize();
        int share = getParent() == null ? 0 : getParent().getWidth() / SHARE;
        return new Dimension(
                Math.max(least.width, Math.min(share, UIScale.scale(WIDEST))), least.height);
    }

    private void fill() {
        add(heading("Lesson", title));
        title.putClientProperty("JTextField.placeholderText", "Title");
        add(title);
        add(heading("Remarks", remarks));
        add(scrolling(remarks), "hmin 50");
        add(heading("Items and phrases", items));
        items.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        items.setCellRenderer(new ItemRenderer());
        add(new JScrollPane(items), "hmin 90");
        JPanel first = new JPanel(new MigLayout("insets 0, gap 5", "[grow,fill,sg][grow,fill,sg]"));
        first.add(add);
        first.add(addPhrase, "wrap");
        first.add(keep, "span 2");
        add.setToolTipText("Add the groove of now to the lesson");
        addPhrase.setToolTipText(
                "Keep phrase and band of now in the lesson, or the changes of the open one");
        keep.setToolTipText("Put groove and phrase of now in place of those that are open");
        add(first);
        JPanel second = new JPanel(new MigLayout("insets 0, gap 5", "[grow,fill]"));
        for (JButton button : List.of(open, up, down, delete)) {
            button.setMargin(UIScale.scale(new Insets(2, 4, 2, 4)));
            second.add(button);
        }
        add(second);
        add(heading("Its title", itemTitle));
        add(itemTitle);
        add(heading("Its remarks", itemRemarks));
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
                text ->
                        selected(
                                at ->
                                        keep(
                                                at.phrase() ? "Phrase title" : "Item title",
                                                s -> EntryEdits.title(s, at, text))));
        typing(
                itemRemarks,
                text ->
                        selected(
                                at ->
                                        keep(
                                                at.phrase() ? "Phrase remarks" : "Item remarks",
                                                s -> EntryEdits.remarks(s, at, text))));
        add.addActionListener(e -> addGroove());
        addPhrase.addActionListener(e -> keepPhrase());
        keep.addActionListener(
                e ->
                        session.edit(
                                "Keep changes",
                                LessonEdits.keepChanges(session.session().taken())));
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

    private void selected(Consumer<Entry> body) {
        Entry at = items.getSelectedValue();
        if (at != null) {
            body.accept(at);
        }
    }

    /** Adds the groove of now to the lesson. */
    public void addGroove() {
        session.edit("Add groove", LessonEdits.addGroove(session.session()));
        select(false, session.session().lesson().items().size() - 1);
    }

    /** Keeps the phrase of now in the lesson. */
    public void keepPhrase() {
        session.edit("Keep phrase", LessonEdits.keepPhrase(session.session().taken()));
        session.session().draft().kept().ifPresent(index -> select(true, index));
    }

    private void select(boolean phrase, int index) {
        items.setSelectedIndex(index + (phrase ? session.session().lesson().items().size() : 0));
    }

    private void openSelected() {
        selected(
                at ->
                        session.edit(
                                at.phrase() ? "Open phrase" : "Open item",
                                EntryEdits.open(session.session(), at)));
    }

    private void moveSelected(int direction) {
        selected(
                at -> {
                    Session before = session.session();
                    Session moved = EntryEdits.move(before, at, direction);
                    if (!moved.equals(before)) {
                        session.edit(at.phrase() ? "Move phrase" : "Move item", moved);
                        select(at.phrase(), at.index() + direction);
                    }
                });
    }

    private void deleteSelected() {
        selected(
                at ->
                        session.edit(
                                at.phrase() ? "Delete phrase" : "Delete item",
                                EntryEdits.remove(session.session(), at)));
    }

    private void follow() {
        Session now = session.session();
        following = true;
        try {
            set(title, now.lesson().title());
            set(remarks, now.lesson().remarks());
            int selected = items.getSelectedIndex();
            List<Entry> list = Entry.of(now.lesson());
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
        Entry at = items.getSelectedValue();
        boolean any = at != null;
        boolean was = following;
        following = true;
        try {
            set(itemTitle, any ? EntryEdits.title(session.session(), at) : "");
            set(itemRemarks, any ? EntryEdits.remarks(session.session(), at) : "");
        } finally {
            following = was;
        }
        Session now = session.session();
        itemTitle.setEnabled(any);
        itemRemarks.setEnabled(any);
        open.setEnabled(any);
        delete.setEnabled(any);
        up.setEnabled(any && !EntryEdits.move(now, at, -1).equals(now));
        down.setEnabled(any && !EntryEdits.move(now, at, 1).equals(now));
        keep.setEnabled(LessonEdits.hasChanges(now.taken()));
        addPhrase.setEnabled(!LessonEdits.keepPhrase(now.taken()).equals(now.taken()));
    }

    private static void set(JTextComponent field, String text) {
        if (!field.getText().equals(text)) {
            field.setText(text);
        }
    }

    /** Title and tempo; what is open in bold, phrases with a sign before them. */
    private final class ItemRenderer extends DefaultListCellRenderer {
        private static final long serialVersionUID = 1;

        @Override
        public Component getListCellRendererComponent(
                JList<?> list, Object value, int index, boolean selected, boolean focus) {
            Entry at = (Entry) value;
            String number = at.phrase() ? "Phrase" : Integer.toString(at.index() + 1);
            super.getListCellRendererComponent(
                    list,
                    "%s  %s  ·  %d".formatted(number, at.title(), at.tempo()),
                    index,
                    selected,
                    focus);
            Session now = session.session();
            OptionalInt open = at.phrase() ? now.draft().kept() : now.item();
            setFont(Paints.font(1, open.equals(OptionalInt.of(at.index()))));
            setToolTipText(at.detail());
            setBorder(BorderFactory.createEmptyBorder(4, 6, 4, 6));
            return this;
        }
    }
}
