package org.kitweft.ui.count;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Component;
import javax.swing.BorderFactory;
import javax.swing.JLabel;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import org.kitweft.ui.session.SessionModel;
import org.kitweft.ui.theme.FlowWrap;
import org.kitweft.ui.theme.Inks;
import org.kitweft.ui.theme.Paints;

/** How many ways there are to play, live: each number over what it counts, side by side. */
public final class CountStrip extends JPanel {
    private static final long serialVersionUID = 1;

    /** All eight side by side on a small screen; every digit stands in the tool tip. */
    private static final int MOST_DIGITS = 15;

    private final transient SessionModel session;

    /** The counts of what the session holds. */
    public CountStrip(SessionModel session) {
        super(new FlowWrap(0));
        this.session = session;
        setBorder(BorderFactory.createEmptyBorder(5, UIScale.scale(12), 3, UIScale.scale(6)));
        session.addListener(this::follow);
        follow();
    }

    private void follow() {
        CountLines counts = CountLines.of(session.session());
        removeAll();
        if (!counts.missing().isEmpty()) {
            JLabel missing = new JLabel(counts.missing());
            missing.setForeground(Inks.FAULT.color());
            add(missing);
        }
        counts.lines().forEach(line -> add(cell(line)));
        revalidate();
        repaint();
    }

    private static Component cell(CountLines.Line line) {
        JPanel cell = new JPanel(new MigLayout("insets 0 0 2 12, gap 0, wrap 1"));
        String exact = Numbers.exact(line.number());
        JLabel number = new JLabel(Numbers.brief(line.number(), MOST_DIGITS));
        Paints.type(number, 105, true);
        JLabel words = new JLabel(line.words());
        Paints.type(words, 86, false);
        words.setForeground(Inks.QUIET.color());
        String tip =
                "<html>%s<br>%s"
                        .formatted(
                                exact.length() > 120 ? exact.substring(0, 120) + "…" : exact,
                                line.name().words());
        number.setToolTipText(tip);
        words.setToolTipText(tip);
        number.getAccessibleContext().setAccessibleName(exact + " " + line.words());
        cell.add(number);
        cell.add(words);
        return cell;
    }
}
