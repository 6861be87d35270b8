package org.kitweft.ui.search;

import com.formdev.flatlaf.util.UIScale;
import java.awt.BorderLayout;
import java.awt.Font;
import java.awt.Rectangle;
import java.awt.event.MouseEvent;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTable;
import javax.swing.JTextArea;
import javax.swing.KeyStroke;
import javax.swing.ListSelectionModel;
import javax.swing.ScrollPaneConstants;
import javax.swing.SwingConstants;
import javax.swing.table.DefaultTableCellRenderer;
import javax.swing.table.JTableHeader;
import javax.swing.table.TableColumn;
import org.kitweft.explore.difficulty.Burden;
import org.kitweft.ui.explore.ListKeys;
import org.kitweft.ui.theme.Inks;
import org.kitweft.ui.theme.Keys;
import org.kitweft.ui.theme.Paints;

/**
 * A table of findings with {@link ListKeys}: heard as one goes through it, taken, kept. Below it
 * stands what there is to say of the chosen one, in full.
 */
public final class FindingTable extends JPanel {
    private static final long serialVersionUID = 1;
    private static final int MOST_BURDENS = 3;

    /** So many lines of detail, so that the table hardly moves as one goes through it. */
    private static final int LEAST_LINES = 2;

    private static final int MOST_LINES = 3;
    private static final int HEADING_INSETS = 10;

    private final FindingRows rows;
    private final JTable table;
    private final JTextArea detail = new JTextArea(2, 20);
    private final transient WrappedLines detailLines =
            new WrappedLines(detail, LEAST_LINES, MOST_LINES);

    /**
     * A table.
     *
     * @param name for people who do not see it
     */
    public FindingTable(String name, FindingRows rows) {
        super(new BorderLayout(0, UIScale.scale(3)));
        this.rows = rows;
        table = new Table(rows);
        table.getAccessibleContext().setAccessibleName(name);
        table.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        table.setDefaultRenderer(Long.class, new DifficultyCell(rows));
        table.setShowGrid(false);
        // There is nothing to edit: Tab leaves the table rather than going from cell to cell.
        Keys.bind(table, "TAB", table::transferFocus);
        Keys.bind(table, "shift TAB", table::transferFocusBackward);
        // Keys that are commands of the window: a table would take them for itself.
        for (String key : List.of("SPACE", "F2", "F8")) {
            table.getInputMap(WHEN_ANCESTOR_OF_FOCUSED_COMPONENT)
                    .put(KeyStroke.getKeyStroke(key), "none");
        }
        table.setFillsViewportHeight(true);
        table.getTableHeader().setReorderingAllowed(false);
        for (int i = 0; i < rows.headings().size(); i++) {
            int width = UIScale.scale(rows.headings().get(i).width());
            TableColumn column = table.getColumnModel().getColumn(i);
            column.setPreferredWidth(width);
            column.setMinWidth(headingWidth(column));
        }
        JScrollPane scroll = new JScrollPane(table);
        scroll.setColumnHeaderView(table.getTableHeader());
        scroll.getVerticalScrollBar()
                .addAdjustmentListener(
                        e -> rows.seen(lastVisible(scroll.getViewport().getViewRect())));
        ((DefaultTableCellRenderer) table.getTableHeader().getDefaultRenderer())
                .setHorizontalAlignment(SwingConstants.LEADING);
        detail.setEditable(false);
        detail.setFocusable(false);
        detail.setLineWrap(true);
        detail.setWrapStyleWord(true);
        detail.setOpaque(false);
        detail.setBorder(BorderFactory.createEmptyBorder(0, 4, 0, 4));
        detail.getAccessibleContext().setAccessibleName("About the chosen one");
        add(scroll, BorderLayout.CENTER);
        JScrollPane below = new JScrollPane(detail);
        below.setBorder(BorderFactory.createEmptyBorder());
        below.setHorizontalScrollBarPolicy(ScrollPaneConstants.HORIZONTAL_SCROLLBAR_NEVER);
        add(below, BorderLayout.SOUTH);
        table.getSelectionModel().addListSelectionListener(e -> tell());
        tell();
    }

    private int headingWidth(TableColumn column) {
        String heading = String.valueOf(column.getHeaderValue());
        Font font = table.getTableHeader().getFont();
        return table.getFontMetrics(font).stringWidth(heading) + UIScale.scale(HEADING_INSETS);
    }

    private int lastVisible(Rectangle view) {
        return (view.y + view.height) / Math.max(1, table.getRowHeight());
    }

    /** What is done with the one that has been chosen, by keys or mouse. */
    public void onChosen(Consumer<Finding> body) {
        table.getSelectionModel()
                .addListSelectionListener(
                        e -> {
                            if (!e.getValueIsAdjusting()) {
                                chosen().ifPresent(body);
                            }
                        });
    }

    /** What is done when one is taken, and when one is kept in the lesson. */
    public void onKeys(Runnable take, Runnable keep) {
        ListKeys.bind(table, take, keep);
    }

    /** The chosen one. */
    public Optional<Finding> chosen() {
        int row = table.getSelectedRow();
        return row >= 0 && row < rows.getRowCount() ? Optional.of(rows.at(row)) : Optional.empty();
    }

    /** Chooses a row, if it is there. */
    public void choose(int row) {
        if (row < rows.getRowCount()) {
            table.getSelectionModel().setSelectionInterval(row, row);
            table.scrollRectToVisible(table.getCellRect(row, 0, true));
        }
    }

    /** What takes the keys. */
    public JComponent focusTarget() {
        return table;
    }

    private void tell() {
        detail.setText(chosen().map(FindingTable::detail).orElse(unit()));
        detail.setForeground(Inks.QUIET.color());
        detailLines.fit();
        detail.setCaretPosition(0);
    }

    private String unit() {
        return rows.headings().stream()
                .filter(heading -> heading.column() == FindingRows.Column.DIFFICULTY)
                .map(FindingRows.Heading::tip)
                .findFirst()
                .orElse("");
    }

    /** Everything of a finding that the columns may cut off. */
    static String detail(Finding finding) {
        String burdens =
                finding.difficulty().reasons().stream()
                        .limit(MOST_BURDENS)
                        .map(Burden::words)
                        .collect(Collectors.joining(", "));
        return "%s%s%s  ·  %s"
                .formatted(
                        finding.words(),
                        finding.words().isEmpty() ? "" : "  ·  ",
                        burdens.isEmpty() ? "nothing is hard" : "hard: " + burdens,
                        RecipeWords.voicing(finding.recipe()));
    }

    /** A table that cannot be edited, tells the rest of what is cut off, and follows the zoom. */
    private final class Table extends JTable {
        private static final long serialVersionUID = 1;

        Table(FindingRows model) {
            super(model);
        }

        @Override
        public void updateUI() {
            super.updateUI();
            setRowHeight(getFontMetrics(Paints.font(1, false)).getHeight() + UIScale.scale(7));
        }

        @Override
        public String getToolTipText(MouseEvent event) {
            int row = rowAtPoint(event.getPoint());
            return row < 0 ? ListKeys.LIST_TIP : detail(rows.at(row));
        }

        @Override
        protected JTableHeader createDefaultTableHeader() {
            return new JTableHeader(columnModel) {
                private static final long serialVersionUID = 1;

                @Override
                public String getToolTipText(MouseEvent event) {
                    int column = columnAtPoint(event.getPoint());
                    return column < 0 ? null : rows.headings().get(column).tip();
                }
            };
        }
    }
}
