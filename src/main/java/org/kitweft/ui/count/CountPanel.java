package org.kitweft.ui.count;

import java.awt.BorderLayout;
import java.awt.Component;
import javax.swing.BorderFactory;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.SwingConstants;
import net.miginfocom.swing.MigLayout;
import org.kitweft.ui.session.SessionModel;
import org.kitweft.ui.theme.Inks;
import org.kitweft.ui.theme.Paints;

/** How many ways there are to play, live: the sounds to choose from and what comes of them. */
public final class CountPanel extends JPanel {
    private static final long serialVersionUID = 1;

    private final transient SessionModel session;
    private final JPanel lines =
            new JPanel(new MigLayout("insets 6 12 6 12, gapx 10, gapy 3, wrap 2", "[right][grow]"));

    /** A panel for what the session holds. */
    public CountPanel(SessionModel session) {
        super(new BorderLayout());
        this.session = session;
        ChoiceChips chips = new ChoiceChips(session);
        JScrollPane left = new JScrollPane(chips);
        left.setBorder(BorderFactory.createEmptyBorder());
        left.getVerticalScrollBar().setUnitIncrement(16);
        left.setHorizontalScrollBarPolicy(JScrollPane.HORIZONTAL_SCROLLBAR_NEVER);
        JScrollPane right = new JScrollPane(lines);
        right.setBorder(BorderFactory.createEmptyBorder());
        right.setHorizontalScrollBarPolicy(JScrollPane.HORIZONTAL_SCROLLBAR_NEVER);
        right.getVerticalScrollBar().setUnitIncrement(16);
        JPanel both =
                new JPanel(
                        new MigLayout("insets 0, gap 0", "[grow 100,fill][fill]", "[grow,fill]"));
        both.add(left, "wmin 200");
        both.add(right, "wmin 380");
        add(both, BorderLayout.CENTER);
        session.addListener(this::follow);
        follow();
    }

    private void follow() {
        CountLines counts = CountLines.of(session.session());
        lines.removeAll();
        if (!counts.missing().isEmpty()) {
            JLabel missing = new JLabel(counts.missing());
            missing.setForeground(Inks.FAULT.color());
            lines.add(missing, "span 2, wmin 0");
        }
        for (CountLines.Line line : counts.lines()) {
            lines.add(number(line));
            JLabel words = new JLabel(line.words());
            words.setToolTipText(line.name().words());
            lines.add(words, "wmin 0");
        }
        lines.revalidate();
        lines.repaint();
    }

    private static Component number(CountLines.Line line) {
        String brief = Numbers.brief(line.number());
        String exact = Numbers.exact(line.number());
        JLabel label = new JLabel(brief, SwingConstants.TRAILING);
        label.setFont(Paints.font(1.08, true));
        label.setToolTipText(exact.length() > 120 ? exact.substring(0, 120) + "…" : exact);
        label.getAccessibleContext().setAccessibleName(exact + " " + line.words());
        return label;
    }
}
