package org.kitweft.ui.transport;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Color;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.function.LongSupplier;
import javax.swing.BorderFactory;
import javax.swing.Icon;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JSlider;
import javax.swing.JSpinner;
import javax.swing.JToggleButton;
import javax.swing.SpinnerNumberModel;
import net.miginfocom.swing.MigLayout;
import org.kitweft.groove.Grid;
import org.kitweft.groove.Tempo;
import org.kitweft.sound.Course;
import org.kitweft.sound.PlaySettings;
import org.kitweft.ui.play.HeardLoop;
import org.kitweft.ui.play.PlayModel;
import org.kitweft.ui.session.SessionModel;
import org.kitweft.ui.theme.FlowWrap;
import org.kitweft.ui.theme.Inks;
import org.kitweft.ui.theme.Paints;

/** Play and stop, tempo, loop, click, count-in, swing, the limbs that are heard, and the level. */
public final class TransportBar extends JPanel {
    private static final long serialVersionUID = 1;
    private static final double LOUD = 0.75;

    private final transient SessionModel session;
    private final transient PlayModel play;
    private final transient LongSupplier clock;
    private final transient TapTempo taps = new TapTempo();
    private final JButton playButton = new JButton();
    private final JSpinner tempo =
            new JSpinner(
                    new SpinnerNumberModel(
                            Tempo.DEFAULT.beatsPerMinute(), Tempo.SLOWEST, Tempo.FASTEST, 1));
    private final JLabel heard = new JLabel();
    private final JToggleButton loop = toggle("Loop", "Play over and over");
    private final JToggleButton click = toggle("Click", "Click on every beat");
    private final JSpinner countIn =
            new JSpinner(new SpinnerNumberModel(0, 0, PlaySettings.MOST_COUNT_IN, 1));
    private final JSpinner swing =
            new JSpinner(new SpinnerNumberModel(Grid.STRAIGHT, Grid.STRAIGHT, Grid.MOST_SWING, 1));
    private final LimbSwitches limbs;
    private final JSlider level = new JSlider(0, 100, (int) (PlaySettings.LOW_LEVEL * 100));
    private final JLabel levelHint = new JLabel("start low");
    private boolean following;

    /**
     * A bar for a session and its player.
     *
     * @param clock nanoseconds, for tapping the tempo
     */
    public TransportBar(SessionModel session, PlayModel play, LongSupplier clock) {
        this.session = session;
        this.play = play;
        this.clock = clock;
        this.limbs = new LimbSwitches(play);
        setLayout(new FlowWrap(UIScale.scale(9)));
        edge();
        fill();
        listen();
        session.addListener(this::follow);
        play.addListener(this::follow);
        follow();
    }

    private static JToggleButton toggle(String text, String tip) {
        JToggleButton button = new JToggleButton(text);
        button.setToolTipText(tip);
        return button;
    }

    private void fill() {
        playButton.setIcon(new PlayIcon());
        playButton.putClientProperty(
                "FlatLaf.style",
                "background: $Kitweft.accent; foreground: $Kitweft.onAccent;"
                        + " focusedBackground: $Kitweft.accent; borderWidth: 0;"
                        + " font: bold 110%");
        JButton tap = new JButton("Tap");
        tap.setToolTipText("Tap along to set the tempo");
        tap.addActionListener(e -> tap());
        countIn.setToolTipText("Bars of click before the groove");
        swing.setToolTipText("50 straight, 67 about a triplet; steps in pairs swing");
        level.setToolTipText("Start low and raise it until it is comfortable");
        levelHint.setForeground(Inks.QUIET.color());
        add(playButton);
        heard.setForeground(Inks.QUIET.color());
        group(label("Tempo", tempo), tempo, tap, heard);
        group(loop, click, label("Count-in", countIn), countIn);
        group(label("Swing", swing), swing);
        add(limbs);
        group(label("Level", level), level, levelHint);
        fixSizes();
    }

    /** Groups stay together where the bar is too narrow for one row. */
    private void group(JComponent... parts) {
        JPanel group = new JPanel(new MigLayout("insets 0, gap 5"));
        group.setOpaque(false);
        for (JComponent part : parts) {
            group.add(part);
        }
        add(group);
    }

    /** What has a size of its own rather than that of its text. */
    private void fixSizes() {
        playButton.setPreferredSize(UIScale.scale(new Dimension(92, 36)));
        level.setPreferredSize(UIScale.scale(new Dimension(64, 24)));
    }

    private void edge() {
        setBorder(
                BorderFactory.createCompoundBorder(
                        BorderFactory.createMatteBorder(1, 0, 0, 0, Inks.THREAD.color()),
                        BorderFactory.createEmptyBorder(
                                UIScale.scale(6),
                                UIScale.scale(10),
                                UIScale.scale(6),
                                UIScale.scale(10))));
    }

    private static JLabel label(String text, JComponent target) {
        JLabel label = new JLabel(text);
        label.setLabelFor(target);
        target.getAccessibleContext().setAccessibleName(text);
        return label;
    }

    private void listen() {
        playButton.addActionListener(e -> play.toggle());
        tempo.addChangeListener(e -> tempo((Integer) tempo.getValue()));
        loop.addActionListener(
                e -> play.change(s -> s.withLoops(loop.isSelected() ? PlaySettings.ENDLESS : 1)));
        click.addActionListener(e -> play.change(s -> s.withClick(click.isSelected())));
        countIn.addChangeListener(
                e -> play.change(s -> s.withCountInBars((Integer) countIn.getValue())));
        swing.addChangeListener(e -> swing((Integer) swing.getValue()));
        level.addChangeListener(e -> play.change(s -> s.withLevel(level.getValue() / 100.0)));
    }

    private void tempo(int beatsPerMinute) {
        if (!following) {
            session.keepEditing("Tempo", session.session().with(new Tempo(beatsPerMinute)));
        }
    }

    private void swing(int percent) {
        if (!following) {
            session.keepEditing("Swing", session.session().withSwing(percent));
        }
    }

    /** One tap of the tempo. */
    public void tap() {
        taps.tap(clock.getAsLong()).ifPresent(this::tempo);
    }

    /** The button that plays. */
    public JComponent focusTarget() {
        return playButton;
    }

    private void follow() {
        following = true;
        try {
            boolean playing = play.isPlaying();
            playButton.setText(playing ? "Stop" : "Play");
            playButton.getAccessibleContext().setAccessibleName(playing ? "Stop" : "Play");
            playButton.setToolTipText((playing ? "Stop" : "Play") + " (space bar)");
            tempo.setValue(session.session().tempo().beatsPerMinute());
            PlaySettings settings = play.settings();
            heard.setText(heardText(settings));
            loop.setSelected(settings.loops() == PlaySettings.ENDLESS);
            click.setSelected(settings.click());
            countIn.setValue(settings.countInBars());
            swing.setValue(session.recipe().grid().swing());
            level.setValue((int) Math.round(settings.level() * 100));
            boolean loud = settings.level() > LOUD;
            levelHint.setText(loud ? "loud" : "start low");
            levelHint.setForeground(loud ? Inks.FAULT.color() : Inks.QUIET.color());
            limbs.follow();
        } finally {
            following = false;
        }
    }

    /** Where loops differ: which one is heard, at what tempo. */
    private String heardText(PlaySettings settings) {
        return settings.course().equals(Course.STEADY)
                ? ""
                : play.heardLoop().map(HeardLoop::text).orElse("");
    }

    @Override
    public void updateUI() {
        super.updateUI();
        if (levelHint != null) {
            edge();
            fixSizes();
        }
    }

    /** A triangle, or a square while playing. */
    private final class PlayIcon implements Icon {
        @Override
        public void paintIcon(Component component, Graphics graphics, int x, int y) {
            Graphics2D g = Paints.smooth(graphics);
            try {
                Color color = component.getForeground();
                g.setColor(color);
                double size = getIconWidth();
                if (play.isPlaying()) {
                    g.fill(new Rectangle2D.Double(x + 1, y + 1, size - 2, size - 2));
                } else {
                    Path2D path = new Path2D.Double();
                    path.moveTo(x + 1, y);
                    path.lineTo(x + size, y + size / 2);
                    path.lineTo(x + 1, y + size);
                    path.closePath();
                    g.fill(path);
                }
            } finally {
                g.dispose();
            }
        }

        @Override
        public int getIconWidth() {
            return UIScale.scale(13);
        }

        @Override
        public int getIconHeight() {
            return UIScale.scale(13);
        }
    }
}
