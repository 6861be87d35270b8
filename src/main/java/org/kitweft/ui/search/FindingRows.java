package org.kitweft.ui.search;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Iterator;
import java.util.List;
import javax.swing.table.AbstractTableModel;
import org.kitweft.ui.session.Notices;
import org.kitweft.ui.task.Tasks;

/**
 * Findings as rows of a table, made in portions off the event thread as one comes near the end: a
 * list may have more rows than anyone will see. For one thread.
 */
public final class FindingRows extends AbstractTableModel {
    private static final long serialVersionUID = 1;
    static final int PORTION = 50;

    /** More rows than any hand scrolls through. */
    private static final int MOST_ROWS = 100_000;

    private final List<Heading> headings;
    private final transient Tasks tasks;
    private final transient Notices notices;
    private final transient List<Finding> rows = new ArrayList<>();
    private transient Tasks.Running running = () -> {};
    private transient Source source = watch -> Collections.emptyIterator();
    private transient Iterator<Finding> rest = Collections.emptyIterator();
    private transient Outlook outlook = new Outlook();
    private boolean fetching;
    private boolean ended = true;
    private long hardest;

    /** What a column shows. */
    public enum Column {
        /** A score, a number. */
        LEAD,
        /** How hard it is, as a bar and a number. */
        DIFFICULTY,
        /** The sticking. */
        STICKING,
        /** What its letters strike. */
        VOICING,
        /** What there is to say. */
        WORDS
    }

    /**
     * A column.
     *
     * @param column what it shows
     * @param name its heading
     * @param tip what it means, with units
     * @param width of the whole, in parts
     */
    public record Heading(Column column, String name, String tip, int width) {}

    /** Where findings come from. */
    @FunctionalInterface
    public interface Source {
        /** The findings, each made when it is asked for; the iteration ends when it is stopped. */
        Iterator<Finding> findings(Outlook watch);
    }

    /**
     * No rows yet.
     *
     * @param headings the columns, from the left
     * @param notices are told if rows cannot be made
     */
    public FindingRows(List<Heading> headings, Tasks tasks, Notices notices) {
        this.headings = List.copyOf(headings);
        this.tasks = tasks;
        this.notices = notices;
    }

    /** Shows these. */
    public void show(List<Finding> all) {
        show(watch -> all.iterator());
    }

    /** Shows what a source has, the first portion soon, more when it is needed. */
    public void show(Source other) {
        running.stop();
        outlook.stop();
        outlook = new Outlook();
        source = other;
        rest = source.findings(outlook);
        fetching = false;
        ended = false;
        hardest = 0;
        rows.clear();
        fireTableDataChanged();
        fetch();
    }

    private void fetch() {
        if (fetching || ended || rows.size() >= MOST_ROWS) {
            return;
        }
        fetching = true;
        Iterator<Finding> from = rest;
        Outlook watch = outlook;
        running =
                tasks.run(
                        "",
                        progress -> {
                            List<Finding> portion = new ArrayList<>();
                            watch.within(progress);
                            while (portion.size() < PORTION && from.hasNext()) {
                                portion.add(from.next());
                            }
                            return portion;
                        },
                        this::add,
                        failure -> {
                            fetching = false;
                            ended = true;
                            notices.fault(
                                    failure.getMessage() == null
                                            ? "the list cannot go on"
                                            : failure.getMessage());
                        });
    }

    private void add(List<Finding> portion) {
        fetching = false;
        ended = portion.size() < PORTION;
        int before = rows.size();
        rows.addAll(portion);
        for (Finding finding : portion) {
            hardest = Math.max(hardest, finding.thousandths());
        }
        if (!portion.isEmpty()) {
            fireTableRowsInserted(before, rows.size() - 1);
        }
    }

    /** A row is in sight: more may be needed soon. */
    public void seen(int row) {
        if (row > rows.size() - PORTION / 2) {
            fetch();
        }
    }

    /** The finding of a row. */
    public Finding at(int row) {
        return rows.get(row);
    }

    /**
     * The largest difficulty that is shown, in thousandths of a point a bar; 0 if there is none.
     */
    public long hardest() {
        return hardest;
    }

    @Override
    public int getRowCount() {
        return rows.size();
    }

    /** The columns, from the left. */
    public List<Heading> headings() {
        return headings;
    }

    @Override
    public int getColumnCount() {
        return headings.size();
    }

    @Override
    public String getColumnName(int column) {
        return headings.get(column).name();
    }

    @Override
    public Class<?> getColumnClass(int column) {
        return headings.get(column).column() == Column.DIFFICULTY ? Long.class : String.class;
    }

    @Override
    public Object getValueAt(int row, int column) {
        Finding finding = rows.get(row);
        return switch (headings.get(column).column()) {
            case LEAD -> finding.lead();
            case DIFFICULTY -> finding.thousandths();
            case STICKING -> finding.recipe().sticking().text();
            case VOICING -> RecipeWords.voicing(finding.recipe());
            case WORDS -> finding.words();
        };
    }
}
