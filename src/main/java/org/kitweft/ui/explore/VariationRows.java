package org.kitweft.ui.explore;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Dimension;
import javax.swing.JList;
import javax.swing.KeyStroke;
import javax.swing.ListSelectionModel;
import javax.swing.text.Position;
import org.kitweft.explore.trellis.Variation;
import org.kitweft.ui.theme.Paints;

/** Rows of equal height that fill the width, however many they are. */
final class VariationRows extends JList<Variation> {
    private static final long serialVersionUID = 1;

    VariationRows(VariationList model, VariationRow row) {
        super(model);
        setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        setCellRenderer(row);
        setFixedCellWidth(200);
        getAccessibleContext().setAccessibleName("Variations");
        setToolTipText(ListKeys.LIST_TIP);
        // Lists take the space bar for themselves; here it plays, as everywhere.
        getInputMap().put(KeyStroke.getKeyStroke("SPACE"), "none");
    }

    @Override
    public void updateUI() {
        super.updateUI();
        setFixedCellHeight(getFontMetrics(Paints.font(1, false)).getHeight() + UIScale.scale(6));
    }

    @Override
    public boolean getScrollableTracksViewportWidth() {
        return true;
    }

    /** Typing a letter would look through millions of rows for one that begins with it. */
    @Override
    public int getNextMatch(String prefix, int start, Position.Bias direction) {
        return -1;
    }

    @Override
    public Dimension getPreferredScrollableViewportSize() {
        return new Dimension(UIScale.scale(300), 4 * getFixedCellHeight());
    }
}
