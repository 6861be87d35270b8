package org.kitweft.ui.window;

import java.awt.Component;
import java.awt.Container;
import java.awt.Dimension;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.util.Optional;
import org.kitweft.score.model.NotationOptions;
import org.kitweft.ui.play.PlayModel;
import org.kitweft.ui.play.Playhead;
import org.kitweft.ui.session.Session;
import org.kitweft.ui.session.SessionModel;
import org.kitweft.ui.task.Tasks;
import org.kitweft.ui.theme.Theme;

/**
 * The window's panels painted once into memory, without a display: for the build, which records
 * what classes that takes so that they load faster afterwards.
 */
public final class OffScreen {
    private OffScreen() {}

    /** Paints the opening session in light colours; to be called on the event thread. */
    public static BufferedImage paint(Dimension size) {
        Theme.LIGHT.install(100);
        SessionModel session = new SessionModel(Session.opening());
        Playhead playhead = new Playhead();
        StatusBar status = new StatusBar();
        PlayModel play = new PlayModel(session, playhead, Runnable::run, status);
        Panels panels =
                new Panels(
                        session,
                        playhead,
                        play,
                        status,
                        () -> {},
                        Optional::empty,
                        NotationOptions.DEFAULT,
                        Tasks.DIRECT);
        panels.begin();
        panels.setSize(size);
        layOut(panels);
        BufferedImage image =
                new BufferedImage(size.width, size.height, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        try {
            panels.paint(g);
        } finally {
            g.dispose();
        }
        return image;
    }

    private static void layOut(Container container) {
        container.doLayout();
        for (Component child : container.getComponents()) {
            if (child instanceof Container inner) {
                layOut(inner);
            }
        }
    }
}
