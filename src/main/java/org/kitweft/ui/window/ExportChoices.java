package org.kitweft.ui.window;

import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import org.kitweft.groove.Phrase;
import org.kitweft.groove.Practice;
import org.kitweft.groove.Section;
import org.kitweft.sound.Course;
import org.kitweft.sound.Mix;
import org.kitweft.sound.Part;
import org.kitweft.sound.PlaySettings;
import org.kitweft.sound.Stretch;

/**
 * What an exported file is to hold. Mix, course, bars and feel are those that are heard; only how
 * long it goes and who is in it is chosen here. Immutable.
 *
 * @param choruses how often the bars are played; with tempo steps, at each of them
 * @param countInBars bars of click before
 * @param parts who is in the file
 */
record ExportChoices(int choruses, int countInBars, Set<Part> parts) {
    /** The most choruses that can be asked for: an hour and more. */
    static final int MOST_CHORUSES = 999;

    /** A file that is played over and over would never end: it is proposed so many times. */
    private static final int CHORUSES_OF_ENDLESS = 4;

    /** The trainer is proposed up to its ceiling, and so often there. */
    private static final int CHORUSES_AT_CEILING = 2;

    ExportChoices {
        parts = Set.copyOf(parts);
        if (choruses < 1 || choruses > MOST_CHORUSES) {
            throw new IllegalArgumentException(
                    "%d choruses: expected 1 to %d".formatted(choruses, MOST_CHORUSES));
        }
        if (countInBars < 0 || countInBars > PlaySettings.MOST_COUNT_IN) {
            throw new IllegalArgumentException(
                    "%d bars of count-in: expected 0 to %d"
                            .formatted(countInBars, PlaySettings.MOST_COUNT_IN));
        }
    }

    /** What is heard now, as long as it makes sense. */
    static ExportChoices proposed(PlaySettings settings) {
        Set<Part> heard = EnumSet.noneOf(Part.class);
        for (Part part : Part.values()) {
            if (settings.mix().hears(part) && (part != Part.CLICK || settings.click())) {
                heard.add(part);
            }
        }
        return new ExportChoices(choruses(settings), settings.countInBars(), heard);
    }

    private static int choruses(PlaySettings settings) {
        if (settings.course() instanceof Course.Stepped stepped) {
            return Math.min(MOST_CHORUSES, stepped.loopsEach());
        }
        int loops =
                settings.loops() == PlaySettings.ENDLESS ? CHORUSES_OF_ENDLESS : settings.loops();
        int settled = settings.course().settled();
        int wanted = settled == 0 ? loops : Math.max(loops, settled + CHORUSES_AT_CEILING);
        return Math.min(MOST_CHORUSES, wanted);
    }

    /** How it is played then: who is in is heard, muted and solo or not; who is not in is muted. */
    PlaySettings of(PlaySettings heard) {
        Mix mix = heard.mix();
        for (Part part : Part.values()) {
            mix = mix.with(part, mix.strip(part).withSolo(false).withMuted(!parts.contains(part)));
        }
        Course course =
                heard.course() instanceof Course.Stepped stepped
                        ? new Course.Stepped(stepped.steps(), choruses, stepped.dropOut())
                        : heard.course();
        return heard.withMix(mix)
                .withCourse(course)
                .withLoops(choruses)
                .withCountInBars(countInBars)
                .withClick(parts.contains(Part.CLICK));
    }

    /** How long the file is, without its ringing out: {@code 3 min 4 s}. */
    String lengthText(Phrase phrase, PlaySettings heard) {
        PlaySettings settings = of(heard);
        Stretch stretch = settings.stretch();
        int bars = phrase.bars();
        Phrase cut = phrase.bars(stretch.firstOf(bars), stretch.lastOf(bars));
        double seconds = 0;
        for (int loop = 0; loop < settings.loopsInAll(); loop++) {
            seconds += stretch.feel().rounds() * seconds(cut, settings.loop(loop));
        }
        var meter = cut.sections().get(0).groove().grid().meter();
        seconds += settings.loop(0).tempo().seconds(countInBars * meter.barTicks(), meter);
        long whole = Math.round(seconds);
        return whole < 60 ? whole + " s" : "%d min %d s".formatted(whole / 60, whole % 60);
    }

    private static double seconds(Phrase phrase, Practice.Loop loop) {
        double seconds = 0;
        for (Section section : phrase.sections()) {
            seconds +=
                    loop.tempo().seconds(section.groove().ticks(), section.groove().grid().meter());
        }
        return seconds;
    }

    /**
     * What of practice goes into the file, by name; empty if nothing does.
     *
     * @param bars of all that plays: those chosen are cut to them, as they are in the file
     */
    static Map<String, String> practice(PlaySettings settings, int bars) {
        Map<String, String> lines = new LinkedHashMap<>();
        if (settings.course() instanceof Course.Stepped stepped) {
            lines.put("Tempo", stepped.steps().text());
        } else if (settings.course() instanceof Course.Practised practised) {
            Practice practice = practised.practice();
            if (practice.rise() > 0) {
                lines.put(
                        "Tempo",
                        "%d to %d, %d faster every %d choruses"
                                .formatted(
                                        practice.start().beatsPerMinute(),
                                        practice.ceiling().beatsPerMinute(),
                                        practice.rise(),
                                        practice.loopsPerTempo()));
            }
        }
        boolean dropsOut =
                !settings.course().loop(1, PlaySettings.ENDLESS, settings.tempo()).sounds();
        if (dropsOut) {
            lines.put("Drop out", "every other chorus is silent");
        }
        if (settings.stretch().isCut()) {
            int from = settings.stretch().firstOf(bars);
            int to = settings.stretch().lastOf(bars);
            lines.put(
                    "Bars",
                    from == to
                            ? "%d of %d".formatted(from, bars)
                            : "%d to %d of %d".formatted(from, to, bars));
        }
        if (settings.stretch().feel().rounds() != settings.stretch().feel().turns()) {
            lines.put("Drums", settings.stretch().feel().words());
        }
        return lines;
    }
}
