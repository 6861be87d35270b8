package org.kitweft.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import java.math.BigInteger;
import org.junit.jupiter.api.Test;

class CountCommandTest {
    private static final String FOUR = "snare,high-tom,mid-tom,floor-tom";

    /**
     * The necklace counts: OEIS A001868 (four colours, 8 beads: 8230) and Burnside's sum for eight
     * colours, (8^8 + 8^4 + 2*8^2 + 4*8) / 8.
     */
    @Test
    void theParadiddleOnFourSoundsAHand() {
        Run run =
                Run.of(
                        "count",
                        "RLRR LRLL",
                        "--choose",
                        "R=" + FOUR,
                        "--choose",
                        "L=" + FOUR,
                        "--json");
        assertThat(run.code()).isZero();
        assertThat(run.out())
                .isEqualTo(
                        """
                        {
                          "sticking" : "RLRR LRLL",
                          "strokes" : 8,
                          "stickings" : "256",
                          "onePlacePerLetter" : "16",
                          "placePerStroke" : "65536",
                          "anySticking" : "16777216",
                          "anyStickingDifferentSound" : "65536",
                          "anyStickingUpToStart" : "2097684",
                          "differentSoundUpToStart" : "8230",
                          "underRules" : "65536"
                        }
                        """);
    }

    @Test
    void countsBeyondEveryMachineNumberAreExact() throws JsonProcessingException {
        JsonNode json = Run.of("count", "[R]*512", "--choose", "R=snare,ride", "--json").json();
        assertThat(json.get("strokes").intValue()).isEqualTo(512);
        assertThat(new BigInteger(json.get("placePerStroke").textValue()))
                .isEqualTo(BigInteger.ONE.shiftLeft(512));
    }

    @Test
    void withoutChoicesEveryLetterHasOneSoundOfEverySurfaceInReach() {
        Run run = Run.of("count", "RK", "--kit", "five-piece");
        assertThat(run.lines())
                .startsWith(
                        "RK: 2 strokes",
                        "R chooses from 7: snare.head, high-tom.head, mid-tom.head, floor-tom.head,"
                                + " ride.bow, crash.edge, hi-hat.closed",
                        "K chooses from 1: bass-drum.head",
                        "These are one sound a surface; --choose names others, or all.",
                        "",
                        "4",
                        "  Stickings of this length: every stroke picks one of the letters.");
    }

    @Test
    void allTakesEverySoundThatTheLimbCanStrike() {
        Run run = Run.of("count", "RK", "--choose", "R=all", "--choose", "K=bass-drum");
        assertThat(run.lines())
                .startsWith(
                        "RK: 2 strokes",
                        "R chooses from 11: snare.head, snare.cross-stick, snare.rim, high-tom.head,"
                                + " mid-tom.head, floor-tom.head, ride.bow, ride.bell, crash.edge,"
                                + " hi-hat.closed, hi-hat.open",
                        "K chooses from 1: bass-drum.head",
                        "");
        assertThat(Run.of("count", "R", "--choose", "R=all", "--kit", "marimba").out())
                .doesNotContain("one sound a surface");
    }

    @Test
    void aPinnedSoundIsAmongTheUsualOnes() throws JsonProcessingException {
        Run run = Run.of("count", "RR", "--pin", "2=hi-hat.open");
        assertThat(run.lines().get(1)).startsWith("R chooses from 8:").endsWith("hi-hat.open");
        assertThat(
                        Run.of("count", "RL", "--pin", "2=hi-hat.open", "--json")
                                .json()
                                .get("underRules")
                                .textValue())
                .isEqualTo("7");
    }

    @Test
    void rulesNarrowTheLastCountOnly() throws JsonProcessingException {
        JsonNode json =
                Run.of(
                                "count",
                                "RL",
                                "--choose",
                                "R=snare,ride",
                                "--choose",
                                "L=snare,ride",
                                "--pin",
                                "1=ride",
                                "--json")
                        .json();
        assertThat(json.get("placePerStroke").textValue()).isEqualTo("4");
        assertThat(json.get("underRules").textValue()).isEqualTo("2");
    }

    @Test
    void contradictingRulesLeaveNothingAndAreNamed() throws JsonProcessingException {
        Run run =
                Run.of(
                        "count", "RR", "--pin", "1=snare", "--pin", "1=ride", "--reach", "200",
                        "--json");
        assertThat(run.code()).isZero();
        assertThat(run.json().get("underRules").textValue()).isEqualTo("0");
        assertThat(run.err())
                .contains("pin 1=snare")
                .contains("pin 1=ride")
                .doesNotContain("reach");
    }

    @Test
    void strokesOfATacetLetterAreRests() throws JsonProcessingException {
        JsonNode json = Run.of("count", "RLRR", "--tacet", "L", "--json").json();
        assertThat(json.get("strokes").intValue()).isEqualTo(3);
    }

    @Test
    void oneStrokeIsNotCalledStrokes() {
        assertThat(Run.of("count", "R").lines().get(0)).isEqualTo("R: 1 stroke");
    }

    @Test
    void restsAreNoStrokes() throws JsonProcessingException {
        assertThat(Run.of("count", "R-L-", "--json").json().get("strokes").intValue()).isEqualTo(2);
    }
}
