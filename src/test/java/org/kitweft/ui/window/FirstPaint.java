package org.kitweft.ui.window;

import com.formdev.flatlaf.FlatLightLaf;
import java.awt.EventQueue;
import java.awt.Graphics;
import java.awt.Toolkit;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Path;
import java.util.Optional;
import javax.swing.JComponent;
import javax.swing.JFrame;
import javax.swing.JScrollPane;
import javax.swing.JTable;
import org.kitweft.ui.play.FakePlayer;

/**
 * Prints the milliseconds from the start of the process to the first painted window, then ends:
 * {@code window} for ours, {@code table} for an empty one with a table. {@code first-paint.sh} runs
 * both in turn.
 */
final class FirstPaint {
    private FirstPaint() {}

    public static void main(String[] args) {
        if (args[0].equals("window")) {
            MainWindow.start(
                    Path.of(args[1]),
                    FakePlayer::new,
                    () -> {
                        throw new IOException("not needed here");
                    },
                    Optional.empty(),
                    window -> watch(window.frame()));
        } else {
            EventQueue.invokeLater(FirstPaint::table);
        }
    }

    private static void table() {
        FlatLightLaf.setup();
        JFrame frame = new JFrame("Table");
        frame.add(new JScrollPane(new JTable(20, 5)));
        frame.setSize(1280, 800);
        frame.setVisible(true);
        watch(frame);
    }

    /** The glass pane is painted last, in the same go as everything under it. */
    private static void watch(JFrame frame) {
        frame.setGlassPane(
                new JComponent() {
                    private static final long serialVersionUID = 1;

                    @Override
                    protected void paintComponent(Graphics graphics) {
                        tell();
                    }
                });
        frame.getGlassPane().setVisible(true);
    }

    private static void tell() {
        Toolkit.getDefaultToolkit().sync();
        long started = ManagementFactory.getRuntimeMXBean().getStartTime();
        System.out.println(System.currentTimeMillis() - started);
        Runtime.getRuntime().halt(0);
    }
}
