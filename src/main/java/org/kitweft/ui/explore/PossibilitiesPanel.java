package org.kitweft.ui.explore;

import java.awt.BorderLayout;
import javax.swing.BorderFactory;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import net.miginfocom.swing.MigLayout;
import org.kitweft.ui.count.ChoiceChips;
import org.kitweft.ui.count.CountStrip;
import org.kitweft.ui.session.SessionModel;
import org.kitweft.ui.theme.WideEnough;

/**
 * The possibilities of a session: counts above, what strokes may choose from and the rules at the
 * left, then the list of variations and why the selected one serves. Where the window is too small
 * for that it scrolls.
 */
public final class PossibilitiesPanel extends JPanel {
    private static final long serialVersionUID = 1;

    /** Puts the parts together. */
    public PossibilitiesPanel(SessionModel session, VariationPanel variations) {
        super(new BorderLayout());
        RuleControls rules = new RuleControls(session);
        JPanel narrowing = new JPanel(new BorderLayout());
        narrowing.add(scrolling(new ChoiceChips(session)), BorderLayout.CENTER);
        narrowing.add(rules, BorderLayout.SOUTH);
        JPanel all =
                new WideEnough(
                        new MigLayout(
                                "insets 0, gap 0", "[grow 5,fill][grow 95,fill]", "[][grow,fill]"));
        all.add(new CountStrip(session), "span 2, wmin 0, wrap");
        all.add(narrowing, "w min:min:");
        all.add(variations);
        JScrollPane scroll = new JScrollPane(all);
        scroll.setBorder(BorderFactory.createEmptyBorder());
        scroll.getVerticalScrollBar().setUnitIncrement(16);
        add(scroll, BorderLayout.CENTER);
    }

    private static JScrollPane scrolling(ChoiceChips content) {
        JScrollPane scroll = new JScrollPane(content);
        scroll.setBorder(BorderFactory.createEmptyBorder());
        scroll.setHorizontalScrollBarPolicy(JScrollPane.HORIZONTAL_SCROLLBAR_NEVER);
        scroll.getVerticalScrollBar().setUnitIncrement(16);
        return scroll;
    }
}
