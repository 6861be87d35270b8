package org.kitweft.ui.count;

import java.awt.BorderLayout;
import java.awt.Component;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.SwingConstants;
import net.miginfocom.swing.MigLayout;
import org.kitweft.ui.session.SessionModel;
import org.kitweft.ui.theme.Inks;
import org.kitweft.ui.theme.Paints;
import org.kitweft.ui.theme.WideEnough;

/** How many ways there are to play, live: the sounds to choose from and what comes of them. */
public final class CountPanel extends JPanel {
    private static final long serialVersionUID = 1;

    private final transient SessionModel session;
    private final JPanel lines =
            new JPanel(new MigLayout("insets 6 6 6 6, gapx 8, gapy 3, wrap 2", "[right][grow]"));

    /**
     * A panel for what the session holds.
     *
     * @param rules controls that narrow the choices down, shown below them
     * @param list what the counts come to, shown beside them
     */
    public CountPanel(SessionModel session, JComponent rules, JComponent list) {
        super(new BorderLayout());
        this.session = session;
        ChoiceChips chips = new ChoiceChips(session);
        JScrollPane left = scrolling(chips);
        JScrollPane middle = scrolling(lines);
        JPanel narrowed = new JPanel(new BorderLayout());
        narrowed.add(left, BorderLayout.CENTER);
        narrowed.add(rules, BorderLayout.SOUTH);
        JPanel all =
                new WideEnough(
                        new MigLayout(
                                "insets 0, gap 0",
                                "[grow 45,fill][fill][grow 55,fill]",
                                "[grow,fill]"));
        all.add(narrowed, "w min:420:");
        all.add(middle, "wmin 350");
        all.add(list, "w 300:420:");
        JScrollPane scroll = new JScrollPane(all);
        scroll.setBorder(BorderFactory.createEmptyBorder());
        add(scroll, BorderLayout.CENTER);
        session.addListener(this::follow);
        follow();
    }

    private static JScrollPane scrolling(JComponent content) {
        JScrollPane scroll = new JScrollPane(content);
        scroll.setBorder(BorderFactory.createEmptyBorder());
        scroll.setHorizontalScrollBarPolicy(JScrollPane.HORIZONTAL_SCROLLBAR_NEVER);
        scroll.getVerticalScrollBar().setUnitIncrement(16);
        return scroll;
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
        Paints.type(label, 108, true);
        label.setToolTipText(exact.length() > 120 ? exact.substring(0, 120) + "…" : exact);
        label.getAccessibleContext().setAccessibleName(exact + " " + line.words());
        return label;
    }
}
