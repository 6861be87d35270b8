package org.kitweft.score.model;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import org.apache.commons.numbers.fraction.Fraction;
import org.junit.jupiter.api.Test;
import org.kitweft.groove.Groove;
import org.kitweft.groove.Hit;
import org.kitweft.groove.Meter;
import org.kitweft.groove.Ticks;
import org.kitweft.score.RandomGrooves;

/** What holds for every groove, over 600 random ones. */
class NotationPropertyTest {
    private static final int CASES = 600;

    private interface Check {
        void on(Groove groove, Measure measure, Voice voice);
    }

    private static void forAll(boolean oneVoice, Check check) {
        for (int seed = 0; seed < CASES; seed++) {
            Groove groove = RandomGrooves.of(seed);
            Score score = Notation.of(groove, NotationOptions.DEFAULT.withOneVoice(oneVoice));
            for (Measure measure : score.measures()) {
                for (Voice voice : measure.voices()) {
                    try {
                        check.on(groove, measure, voice);
                    } catch (AssertionError e) {
                        throw new AssertionError(
                                "seed %d, %s, bar %d, voice %d"
                                        .formatted(
                                                seed,
                                                groove.grid(),
                                                measure.number(),
                                                voice.number()),
                                e);
                    }
                }
            }
        }
    }

    /** Adds up what is written, by the rules of notation and not by the model's ticks. */
    @Test
    void writtenValuesFillEachBarExactlyInEachVoice() {
        forAll(
                false,
                (groove, measure, voice) -> {
                    Fraction sum = Fraction.ZERO;
                    for (int i = 0; i < voice.events().size(); i++) {
                        sum = sum.add(written(voice, i, measure.meter()));
                    }
                    assertThat(sum).isEqualTo(Ticks.quarters(measure.meter().barTicks()));
                });
    }

    @Test
    void writtenValueOfEachEventIsItsLength() {
        forAll(
                true,
                (groove, measure, voice) -> {
                    for (int i = 0; i < voice.events().size(); i++) {
                        assertThat(written(voice, i, measure.meter()))
                                .isEqualTo(Ticks.quarters(voice.events().get(i).ticks()));
                    }
                });
    }

    private static Fraction written(Voice voice, int index, Meter meter) {
        Event event = voice.events().get(index);
        if (event instanceof Rest rest && rest.wholeBar()) {
            return Ticks.quarters(meter.barTicks());
        }
        Fraction plain = event.value().quarters(event.dots());
        return voice.tupletOf(index)
                .map(t -> plain.multiply(Fraction.of(t.normal(), t.actual())))
                .orElse(plain);
    }

    @Test
    void tupletsHoldWhatTheirNumberSaysAndNeverNest() {
        forAll(
                false,
                (groove, measure, voice) -> {
                    int free = 0;
                    for (Tuplet tuplet : voice.tuplets()) {
                        assertThat(tuplet.first()).isGreaterThanOrEqualTo(free);
                        free = tuplet.last() + 1;
                        Fraction sum = Fraction.ZERO;
                        for (Event e : voice.events().subList(tuplet.first(), tuplet.last() + 1)) {
                            sum = sum.add(e.value().quarters(e.dots()));
                        }
                        assertThat(sum)
                                .isEqualTo(tuplet.unit().quarters(0).multiply(tuplet.actual()));
                    }
                });
    }

    @Test
    void eachHitIsStruckOnceWhereItIsWritten() {
        for (int seed = 0; seed < CASES; seed++) {
            Groove groove = RandomGrooves.of(seed);
            Score score = Notation.of(groove, NotationOptions.DEFAULT);
            Map<Long, List<String>> expected = new TreeMap<>();
            for (Hit hit : groove.hits()) {
                List<String> there =
                        expected.computeIfAbsent(hit.written(), any -> new ArrayList<>());
                if (!there.contains(hit.sound().text())) {
                    there.add(hit.sound().text());
                }
            }
            Map<Long, List<String>> found = new TreeMap<>();
            for (Measure measure : score.measures()) {
                for (Voice voice : measure.voices()) {
                    for (Event event : voice.events()) {
                        if (event instanceof Chord chord && !chord.tiedBack()) {
                            chord.heads()
                                    .forEach(
                                            head ->
                                                    found.computeIfAbsent(
                                                                    measure.start() + chord.tick(),
                                                                    any -> new ArrayList<>())
                                                            .add(head.hit().sound().text()));
                        }
                    }
                }
            }
            expected.replaceAll((tick, sounds) -> new ArrayList<>(new TreeSet<>(sounds)));
            found.replaceAll((tick, sounds) -> new ArrayList<>(new TreeSet<>(sounds)));
            assertThat(found).as("seed %d", seed).isEqualTo(expected);
        }
    }

    /** The rule checked here: a rest never hides where a beat of the meter begins. */
    @Test
    void noRestHasAShapeThatTheMeterForbids() {
        forAll(
                false,
                (groove, measure, voice) -> {
                    Meter meter = measure.meter();
                    for (int i = 0; i < voice.events().size(); i++) {
                        if (!(voice.events().get(i) instanceof Rest rest) || rest.wholeBar()) {
                            continue;
                        }
                        long half = meter.barTicks() / 2;
                        boolean evenHalves =
                                (meter.unit() == 4 && (meter.count() == 4 || meter.count() == 2))
                                        || meter.equals(new Meter(12, 8));
                        if (evenHalves) {
                            assertThat(rest.tick() < half && rest.end() > half)
                                    .as("%s crosses the middle", rest)
                                    .isFalse();
                        } else if (meter.unit() == 4 || meter.isCompound()) {
                            assertThat(rest.tick() / meter.beatTicks())
                                    .as("%s crosses a beat", rest)
                                    .isEqualTo((rest.end() - 1) / meter.beatTicks());
                        }
                        if (!meter.isCompound()) {
                            assertThat(rest.dots()).as("%s in %s", rest, meter).isZero();
                        }
                        if (voice.tupletOf(i).isEmpty()) {
                            long unit = Math.min(smallestUnit(rest), meter.beatTicks());
                            assertThat(rest.tick() % meter.beatTicks() % unit).isZero();
                        }
                    }
                });
    }

    private static long smallestUnit(Rest rest) {
        return rest.dots() == 0 ? rest.ticks() : rest.ticks() / 3;
    }

    @Test
    void everyBeamThatBeginsEnds() {
        forAll(
                false,
                (groove, measure, voice) -> {
                    Map<Integer, Boolean> open = new HashMap<>();
                    for (Event event : voice.events()) {
                        List<Beam> beams = event instanceof Chord chord ? chord.beams() : List.of();
                        for (int level = 0; level < 8; level++) {
                            boolean isOpen = open.getOrDefault(level, false);
                            if (level >= beams.size()) {
                                assertThat(isOpen).isFalse();
                                continue;
                            }
                            switch (beams.get(level)) {
                                case BEGIN -> {
                                    assertThat(isOpen).isFalse();
                                    open.put(level, true);
                                }
                                case CONTINUE -> assertThat(isOpen).isTrue();
                                case END -> {
                                    assertThat(isOpen).isTrue();
                                    open.put(level, false);
                                }
                                default -> assertThat(isOpen).isFalse();
                            }
                        }
                    }
                    assertThat(open.values()).doesNotContain(true);
                });
    }
}
