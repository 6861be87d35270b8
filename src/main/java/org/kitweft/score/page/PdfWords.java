package org.kitweft.score.page;

import de.rototor.pdfbox.graphics2d.PdfBoxGraphics2DFontTextDrawer;
import java.awt.Font;
import java.awt.FontFormatException;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.text.AttributedCharacterIterator;
import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.Locale;
import java.util.Set;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.kitweft.score.engrave.Ink;
import org.kitweft.score.engrave.PlacedSign;
import org.kitweft.score.font.SystemFont;
import org.kitweft.score.font.TextFont;
import org.kitweft.score.font.TextStyle;

/**
 * The words of a PDF document, in fonts that are embedded as far as they are used.
 *
 * <p>A font of the computer is embedded where its own licence bits allow it (OpenType 1.9, OS/2
 * table, fsType) and the PDF library can: TrueType outlines. Otherwise, and where a script joins or
 * turns its letters, which the library does not, the outlines are drawn: they look right, but
 * cannot be selected.
 */
final class PdfWords extends PdfBoxGraphics2DFontTextDrawer {
    private PdfWords() {}

    /** The fonts that occur on sheets, for one document; close it after the document was saved. */
    static PdfWords of(PDDocument document, Sheets sheets) throws IOException {
        Set<TextStyle> styles = EnumSet.noneOf(TextStyle.class);
        Set<SystemFont> others = new LinkedHashSet<>();
        for (Sheet sheet : sheets.sheets()) {
            for (PlacedSign sign : sheet.signs()) {
                if (sign.ink() instanceof Ink.OfText text) {
                    text.font().ifPresentOrElse(others::add, () -> styles.add(text.style()));
                }
            }
        }
        PdfWords words = new PdfWords();
        for (TextStyle style : styles) {
            try (InputStream in = TextFont.file(style)) {
                words.registerFont(style.fullName(), font(document, in.readAllBytes()));
            }
        }
        for (SystemFont other : others) {
            words.register(document, other);
        }
        return words;
    }

    private static PDType0Font font(PDDocument document, byte[] file) throws IOException {
        return PDType0Font.load(
                document, new ByteArrayInputStream(SfntTables.withoutLayout(file)), true);
    }

    private void register(PDDocument document, SystemFont font) {
        boolean trueType =
                String.valueOf(font.file().getFileName()).toLowerCase(Locale.ROOT).endsWith(".ttf");
        if (!trueType) {
            return;
        }
        try {
            registerFont(font.name(), font(document, Files.readAllBytes(font.file())));
        } catch (IOException e) {
            // It does not permit embedding, or not in parts: its outlines are drawn instead.
            return;
        }
    }

    @Override
    public boolean canDrawText(AttributedCharacterIterator text, IFontTextDrawerEnv env)
            throws IOException, FontFormatException {
        StringBuilder characters = new StringBuilder();
        for (char c = text.first(); c != AttributedCharacterIterator.DONE; c = text.next()) {
            characters.append(c);
        }
        text.first();
        char[] all = characters.toString().toCharArray();
        return !Font.textRequiresLayout(all, 0, all.length) && super.canDrawText(text, env);
    }
}
