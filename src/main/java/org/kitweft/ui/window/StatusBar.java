package org.kitweft.ui.window;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Dimension;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JProgressBar;
import net.miginfocom.swing.MigLayout;
import org.kitweft.ui.session.Notices;
import org.kitweft.ui.task.SwingTasks;
import org.kitweft.ui.task.Tasks;
import org.kitweft.ui.theme.Inks;

/**
 * The last line of the window: what happened, what went wrong, how far long work is.
 *
 * <p>The newest message stands. A fault goes with the next edit or command, for then its cause is
 * gone or somebody has seen it; a hint never covers a message that nobody has acted on since.
 */
final class StatusBar extends JPanel implements Notices, SwingTasks.Display {
    private static final long serialVersionUID = 1;
    private static final int STEPS = 1000;

    /** How the names of work begin that writes a file, which is there whole or not at all. */
    static final String WRITING = "Writing ";

    private final JLabel line = new JLabel(" ");
    private final JLabel work = new JLabel();
    private final JProgressBar progress = new JProgressBar(0, STEPS);
    private final JButton stop = new JButton("Stop");
    private transient Tasks.Running running = () -> {};
    private boolean atFault;
    private boolean settled = true;

    StatusBar() {
        super(new MigLayout("insets 2 12 4 12, gap 8, hidemode 3", "[grow,fill][][][]", "[22!]"));
        add(line, "wmin 0");
        add(work);
        progress.setPreferredSize(UIScale.scale(new Dimension(160, 8)));
        add(progress);
        stop.setToolTipText("Stop this work");
        stop.addActionListener(e -> stopWork());
        add(stop, "h 20!");
        line.getAccessibleContext().setAccessibleName("Status");
        ended();
    }

    @Override
    public void note(String text) {
        show(text);
        line.setForeground(Inks.QUIET.color());
        atFault = false;
        settled = text.isEmpty();
    }

    @Override
    public void fault(String text) {
        show("⚠ " + text);
        line.setForeground(Inks.FAULT.color());
        atFault = true;
        settled = false;
    }

    /** Says something of use that nobody asked for, where nothing newer stands. */
    void hint(String text) {
        if (settled) {
            note(text);
            settled = true;
        }
    }

    /** Somebody has done something: a fault is a thing of the past, other messages may be. */
    void settle() {
        if (atFault) {
            note("");
        }
        settled = true;
    }

    private void show(String text) {
        line.setText(text.isEmpty() ? " " : text.lines().findFirst().orElse(" "));
        line.setToolTipText(text.isEmpty() ? null : text);
        line.getAccessibleContext().setAccessibleDescription(text);
    }

    /** What it says now. */
    String text() {
        return line.getText();
    }

    private void stopWork() {
        running.stop();
        ended();
        note(work.getText().startsWith(WRITING) ? "Stopped; nothing was written" : "Stopped");
    }

    @Override
    public void begun(String name, Tasks.Running begun) {
        running = begun;
        work.setText(name);
        progress.setValue(0);
        visible(true);
    }

    @Override
    public void at(double part) {
        progress.setValue((int) (part * STEPS));
    }

    @Override
    public void ended() {
        visible(false);
    }

    private void visible(boolean any) {
        work.setVisible(any);
        progress.setVisible(any);
        stop.setVisible(any);
    }
}
