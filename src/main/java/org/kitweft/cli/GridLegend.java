package org.kitweft.cli;

import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.geom.Ellipse2D;
import org.kitweft.groove.Groove;
import org.kitweft.kit.Limb;
import org.kitweft.kit.LimbColours;

/** The line below a grid's picture: which colour and letter is which limb, and what cannot be. */
final class GridLegend {
    private static final Color INK = new Color(0x22, 0x22, 0x22);

    private GridLegend() {}

    static void paint(Graphics2D g, Groove groove, int left, int top) {
        g.setFont(GridImage.font(Font.PLAIN, 12));
        int x = left;
        for (Limb limb : Limb.values()) {
            if (groove.hits().stream().anyMatch(hit -> hit.limb() == limb)) {
                g.setColor(new Color(LimbColours.rgb(limb)));
                g.fill(new Ellipse2D.Double(x, top + 2, 11, 11));
                String words = LimbLetters.of(limb, groove.kit()) + " " + limb.words();
                g.setColor(INK);
                g.drawString(words, x + 16, top + 12);
                x += 16 + g.getFontMetrics().stringWidth(words) + 18;
            }
        }
        String dynamics = ">R accent   (R) ghost";
        g.drawString(dynamics, x, top + 12);
        if (!groove.conflicts().isEmpty()) {
            int many = groove.conflicts().size();
            String words = many == 1 ? "1 conflict" : many + " conflicts";
            g.setFont(GridImage.font(Font.BOLD, 12));
            g.drawString(words + " named by the text", left, top + 30);
        }
    }
}
