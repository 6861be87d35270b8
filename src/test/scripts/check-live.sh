#!/usr/bin/env bash
# Live proof: records a looped figure from a loopback and measures the spacing between its onsets.
# Usage: src/test/scripts/check-live.sh [FOLDER]    keeps the recordings in FOLDER (default target/live)
# Needs: mvn -q package -DskipTests before; pulseaudio, pulseaudio-utils, libasound2-plugins, sox; about five minutes; a machine
# that is not busy. Fails if our spacing deviates by 0.2 ms or more over a minute with its loop seams and a tempo change.
set -eu
cd "$(dirname "$0")/../../.."
folder=${1:-target/live}
mkdir -p "$folder"
check() { java --add-exports=java.desktop/com.sun.media.sound=ALL-UNNAMED -cp target/kitweft.jar:target/test-classes org.kitweft.sound.live.LiveCheck "$@"; }
export -f check
record() { src/test/scripts/record-live "$@"; }
echo "load before: $(cut -d' ' -f1-3 /proc/loadavg)"
failed=0

# The control: where a bare line of the same buffer has gaps, the machine is too busy for this check.
record "$folder/bare.wav" 66 bash -c 'check bare'
echo "a bare line, 120 beats a minute, as a control of the machine:"
check measure "$folder/bare.wav" 120 || echo "this machine is too busy now: try again when its load is low"

record "$folder/player.wav" 66 bash -c 'check player'
echo "player, 120 then 90 beats a minute:"
check measure "$folder/player.wav" 120 90 || failed=1

check bank "$folder/impulse.sf2"
record "$folder/command.wav" 66 java -jar target/kitweft.jar groove "RLRR LRLL" --tempo 120 --play --loops 31 --bank "$folder/impulse.sf2" >/dev/null
echo "groove --play --loops 31, 120 beats a minute:"
check measure "$folder/command.wav" 120 || failed=1

record "$folder/sequencer.wav" 66 bash -c 'check sequencer'
echo "the JDK's real-time sequencer, 120 beats a minute, for comparison:"
check measure "$folder/sequencer.wav" 120 || true
echo "load after: $(cut -d' ' -f1-3 /proc/loadavg)"
exit $failed
