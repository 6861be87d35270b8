package org.kitweft.ui.search;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Dimension;
import java.util.Optional;
import java.util.function.Supplier;
import javax.swing.JButton;
import javax.swing.JPanel;
import javax.swing.JProgressBar;
import javax.swing.Timer;
import net.miginfocom.swing.MigLayout;

/** How far a search is, and a button that stops it; not seen while none is under way. */
public final class WatchBar extends JPanel {
    private static final long serialVersionUID = 1;
    private static final int STEPS = 1000;
    private static final int LOOK_EVERY_MILLIS = 100;

    private final transient Supplier<Optional<Double>> part;
    private final JProgressBar progress = new JProgressBar(0, STEPS);
    private final JButton stop = new JButton("Stop");
    private final Timer timer = new Timer(LOOK_EVERY_MILLIS, e -> look());

    /**
     * A bar.
     *
     * @param part how far the search is, from 0 to 1; empty while there is none
     * @param stopped stops it
     */
    public WatchBar(Supplier<Optional<Double>> part, Runnable stopped) {
        super(new MigLayout("insets 0, gap 8", "[grow,fill][]"));
        this.part = part;
        progress.setPreferredSize(UIScale.scale(new Dimension(120, 8)));
        progress.getAccessibleContext().setAccessibleName("How far the search is");
        stop.setToolTipText("Ends the search with what it has");
        stop.setMnemonic('T');
        stop.addActionListener(e -> stopped.run());
        add(progress);
        add(stop);
        setVisible(false);
    }

    /** To be called when a search begins and when it ends. */
    public void follow() {
        boolean under = part.get().isPresent();
        setVisible(under);
        if (under) {
            timer.start();
        } else {
            timer.stop();
        }
        look();
    }

    private void look() {
        progress.setValue((int) (part.get().orElse(0.0) * STEPS));
    }
}
