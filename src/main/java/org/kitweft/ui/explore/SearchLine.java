package org.kitweft.ui.explore;

import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JProgressBar;
import net.miginfocom.swing.MigLayout;
import org.kitweft.ui.theme.Paints;

/** How far the search for the best is, with a button that stops it and lets it go on. */
final class SearchLine extends JPanel {
    private static final long serialVersionUID = 1;
    private static final int STEPS = 1000;

    private final transient RankedSearch search;
    private final JLabel looked = new JLabel(" ");
    private final JProgressBar bar = new JProgressBar(0, STEPS);
    private final JButton stop = new JButton("Stop");

    SearchLine(RankedSearch search) {
        super(new MigLayout("insets 0 0 3 0, gapx 8", "[][grow,fill][]"));
        this.search = search;
        Paints.type(looked, 92, false);
        looked.getAccessibleContext().setAccessibleName("How far the search is");
        add(looked);
        add(bar, "h 6!");
        Paints.type(stop, 92, false);
        stop.putClientProperty("FlatLaf.style", "margin: 1,6,1,6");
        stop.addActionListener(e -> stopOrGoOn());
        add(stop);
    }

    /** Shows how the search stands; hidden where nothing is searched for. */
    void follow(boolean ranked) {
        setVisible(ranked);
        boolean running = search.isRunning();
        looked.setText(search.words());
        looked.getAccessibleContext().setAccessibleDescription(search.words());
        looked.setToolTipText(
                search.standing().isComplete()
                        ? "No other variation serves better"
                        : "There may be better ones among those not looked at");
        bar.setVisible(running);
        bar.setValue((int) (search.part() * STEPS));
        stop.setVisible(running || search.canGoOn());
        stop.setText(running ? "Stop" : "Look on");
        stop.setToolTipText(
                running ? "Stop looking; what was found stays" : "Look at more of them");
    }

    private void stopOrGoOn() {
        if (search.isRunning()) {
            search.stop();
        } else {
            search.goOn();
        }
        follow(true);
    }
}
