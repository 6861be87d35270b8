package org.kitweft.cli;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import javax.imageio.ImageIO;
import org.kitweft.cli.GridTable.Column;
import org.kitweft.cli.GridTable.Row;
import org.kitweft.file.SafeFile;
import org.kitweft.file.SafeFile.Existing;
import org.kitweft.groove.Groove;
import org.kitweft.groove.Hit;
import org.kitweft.groove.Place;
import org.kitweft.groove.Tempo;
import org.kitweft.kit.Kit;
import org.kitweft.kit.LimbColours;
import org.kitweft.kit.Notehead;
import org.kitweft.score.model.PlayedWith;

/**
 * The grid of a groove as a picture, for screens and for print: light ground, a block of rows for
 * each bar, noteheads in the colour of their limb with the limb's letter below. Measures are in
 * pixels at scale 1; the picture is painted at scale {@value #SCALE}, or 1 where that would be very
 * large. Needs no display.
 */
final class GridImage {
    private static final int SCALE = 2;
    private static final int MARGIN = 24;
    private static final int COLUMN = 30;
    private static final int ROW = 38;
    private static final int COUNT_ROW = 22;
    private static final int BAR_GAP = 20;
    private static final int HEADING = 56;
    private static final int LEGEND = 34;

    /** Pixels of the whole picture; more bars than fit are left to the text, and it says so. */
    private static final int MOST_PIXELS = 40_000_000;

    private static final Color GROUND = Color.WHITE;
    private static final Color INK = new Color(0x22, 0x22, 0x22);
    private static final Color FAINT = new Color(0xD8, 0xD8, 0xD8);
    private static final Color BEAT = new Color(0xF2, 0xF4, 0xF7);

    private final GridTable table;
    private final Groove groove;
    private final Tempo tempo;
    private final int labels;
    private final int bars;
    private final int width;
    private final int height;
    private final int scale;

    private GridImage(Groove groove, Tempo tempo) {
        this.groove = groove;
        this.tempo = tempo;
        this.table = GridTable.of(groove);
        int longest = table.rows().stream().mapToInt(row -> row.label().length()).max().orElse(0);
        this.labels = 8 * Math.max(8, longest) + 16;
        this.width = 2 * MARGIN + labels + Math.max(table.columns().size() * COLUMN, 420);
        int around = 2 * MARGIN + HEADING + COUNT_ROW + LEGEND;
        int fit = (MOST_PIXELS / width - around) / (barHeight() + BAR_GAP);
        this.bars = Math.max(1, Math.min(groove.bars(), fit));
        this.height = around + bars * (barHeight() + BAR_GAP);
        this.scale = (long) width * height * SCALE * SCALE <= MOST_PIXELS ? SCALE : 1;
    }

    /** Writes the picture as a PNG file. */
    static void write(Groove groove, Tempo tempo, Path target, boolean replace) throws IOException {
        BufferedImage image = of(groove, tempo);
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        ImageIO.setUseCache(false);
        ImageIO.write(image, "png", bytes);
        SafeFile.write(target, replace ? Existing.REPLACE : Existing.KEEP, bytes::writeTo);
    }

    /** Paints the grid and, where its bars fit a line, the staff below. */
    static BufferedImage of(Groove groove, Tempo tempo) {
        GridImage grid = new GridImage(groove, tempo);
        BufferedImage above = grid.paint();
        return new StaffFiles(groove, PlayedWith.NOTHING, new PageOptions())
                .image(above.getWidth(), grid.scale)
                .map(staff -> below(above, staff))
                .orElse(above);
    }

    private static BufferedImage below(BufferedImage above, BufferedImage staff) {
        BufferedImage both =
                new BufferedImage(
                        Math.max(above.getWidth(), staff.getWidth()),
                        above.getHeight() + staff.getHeight(),
                        BufferedImage.TYPE_INT_RGB);
        Graphics2D g = both.createGraphics();
        try {
            g.setColor(GROUND);
            g.fillRect(0, 0, both.getWidth(), both.getHeight());
            g.drawImage(above, 0, 0, null);
            g.drawImage(staff, 0, above.getHeight(), null);
        } finally {
            g.dispose();
        }
        return both;
    }

    private int barHeight() {
        return 2 * COUNT_ROW + Math.max(1, table.rows().size()) * ROW;
    }

    private BufferedImage paint() {
        BufferedImage image =
                new BufferedImage(width * scale, height * scale, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        try {
            g.scale(scale, scale);
            g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
            g.setRenderingHint(
                    RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
            g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
            g.setColor(GROUND);
            g.fillRect(0, 0, width, height);
            heading(g);
            int y = MARGIN + HEADING;
            for (int bar = 1; bar <= bars; bar++) {
                bar(g, bar, y);
                y += barHeight() + BAR_GAP;
            }
            if (bars < groove.bars()) {
                g.setColor(INK);
                g.setFont(font(Font.ITALIC, 12));
                g.drawString("bars 1 to %d of %d".formatted(bars, groove.bars()), MARGIN, y);
            }
            GridLegend.paint(g, groove, MARGIN, y + COUNT_ROW);
        } finally {
            g.dispose();
        }
        return image;
    }

    static Font font(int style, int size) {
        return new Font(Font.SANS_SERIF, style, size);
    }

    private void heading(Graphics2D g) {
        g.setColor(INK);
        g.setFont(font(Font.BOLD, 18));
        String sticking = groove.sticking().text();
        int most = 60;
        g.drawString(
                sticking.length() <= most ? sticking : sticking.substring(0, most) + "…",
                MARGIN,
                MARGIN + 16);
        g.setFont(font(Font.PLAIN, 13));
        g.drawString(GrooveHeading.of(groove, tempo, Symbols.UNICODE), MARGIN, MARGIN + 38);
    }

    private void bar(Graphics2D g, int bar, int top) {
        int left = MARGIN + labels;
        int bottom = top + barHeight();
        List<Column> columns = table.columns();
        for (int i = 0; i < columns.size(); i++) {
            ground(g, columns.get(i), left + i * COLUMN, top, bottom);
        }
        g.setColor(INK);
        g.setFont(font(Font.BOLD, 12));
        g.drawString("Bar " + bar, MARGIN, top + 15);
        g.setFont(font(Font.PLAIN, 12));
        g.drawString("Sticking", MARGIN, top + COUNT_ROW + 15);
        for (int i = 0; i < columns.size(); i++) {
            Column column = columns.get(i);
            int centre = left + i * COLUMN + COLUMN / 2;
            g.setColor(INK);
            g.setFont(font(column.isBeat() ? Font.BOLD : Font.PLAIN, 12));
            centred(g, column.label(), centre, top + 15);
            if (column.isStep()) {
                int index = groove.strokeAt(new Place(bar, column.step()));
                g.setFont(font(Font.PLAIN, 11));
                String stroke = groove.sticking().strokes().get(index).text();
                centred(g, stroke, centre, top + COUNT_ROW + 15);
            }
        }
        int y = top + 2 * COUNT_ROW;
        for (Row row : table.rows()) {
            row(g, row, bar, y);
            y += ROW;
        }
        g.setColor(INK);
        g.setStroke(new BasicStroke(1.5f));
        for (int x : new int[] {left, left + columns.size() * COLUMN}) {
            g.draw(new Line2D.Double(x, top + 2.0 * COUNT_ROW, x, bottom));
        }
    }

    private static void ground(Graphics2D g, Column column, int x, int top, int bottom) {
        if (column.isBeat()) {
            g.setColor(BEAT);
            g.fill(new Rectangle2D.Double(x, top, COLUMN, bottom - top));
        }
        g.setColor(FAINT);
        g.setStroke(new BasicStroke(1));
        g.draw(new Line2D.Double(x, top + 2.0 * COUNT_ROW, x, bottom));
    }

    private void row(Graphics2D g, Row row, int bar, int y) {
        int left = MARGIN + labels;
        List<Column> columns = table.columns();
        g.setColor(FAINT);
        g.setStroke(new BasicStroke(1));
        double line = y + 14;
        g.draw(new Line2D.Double(left, line, left + columns.size() * COLUMN, line));
        g.setColor(INK);
        g.setFont(font(Font.PLAIN, 13));
        g.drawString(row.label(), MARGIN, y + 19);
        for (int i = 0; i < columns.size(); i++) {
            List<Hit> hits = table.hits(row, bar, columns.get(i));
            if (!hits.isEmpty()) {
                hits(g, hits, left + i * COLUMN + COLUMN / 2, y + 14);
            }
        }
    }

    private void hits(Graphics2D g, List<Hit> hits, int x, int y) {
        Kit kit = groove.kit();
        Hit first = hits.get(0);
        Notehead head =
                kit.has(first.sound()) ? kit.sound(first.sound()).notehead() : Notehead.NORMAL;
        double size =
                switch (first.dynamic()) {
                    case GHOST -> 9;
                    case PLAIN -> 13;
                    case ACCENT -> 17;
                };
        g.setColor(new Color(LimbColours.rgb(first.limb())));
        Shape shape = NoteheadShapes.of(head, x, y, size);
        g.fill(shape);
        g.setColor(INK);
        g.setFont(font(Font.BOLD, 12));
        centred(g, GridCell.hits(hits, kit).text(), x, y + 21);
    }

    static void centred(Graphics2D g, String text, int x, int baseline) {
        FontMetrics metrics = g.getFontMetrics();
        g.drawString(text, x - metrics.stringWidth(text) / 2f, baseline);
    }
}
