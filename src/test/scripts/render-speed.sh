#!/usr/bin/env bash
# Renders three minutes of a groove with click and band to WAV with the built-in bank, beside FluidSynth (Debian package
# fluidsynth) as a process with the same bank and the same MIDI file, in turns. Fails if we are slower than 100 times real
# time or than 1.5 times FluidSynth, or need 200 MB of memory with a heap of 64 MB. Times are those of the processor, best
# of all runs, for others may use the machine too; the wall's are told as well. Needs compiled classes: mvn -q test-compile.
#
#   src/test/scripts/render-speed.sh [STYLE ...]     the band's styles (default: rock samba)
set -eu
cd "$(dirname "$0")/../../.."
[ $# -gt 0 ] || set -- rock samba
folder=$(mktemp -d); trap 'rm -rf "$folder"' EXIT
jars=$(find "$HOME/.m2/repository" -name 'commons-*.jar' -o -name 'jackson-*.jar' -o -name 'jspecify-*.jar' | tr '\n' ':')
classpath=${CLASSES:-target/classes:target/test-classes:$jars}
check() { java "${@:2}" --add-exports=java.desktop/com.sun.media.sound=ALL-UNNAMED -cp "$classpath" org.kitweft.sound.wave.RenderCheck $1; }
TIMEFORMAT='%R %U %S'

failed=0
for style; do
    check "write $folder $style"
    : > "$folder/ours"; : > "$folder/theirs"; : > "$folder/first"
    for round in 1 2 3; do
        check "render $folder $style 6" >> "$folder/ours"
        for run in 1 2 3; do
            { time fluidsynth -ni -q -r 44100 -F "$folder/theirs.wav" "$folder/bank.sf2" "$folder/$style.mid"; } 2>> "$folder/theirs"
        done
        { time check "render $folder $style 1" > "$folder/once"; } 2>> "$folder/first"
    done
    check "render $folder $style 2" -Xmx64m -XX:+UseSerialGC > "$folder/small"
    awk -v style="$style" '
        function least(a, b) { return a == "" || b < a ? b : a }
        FILENAME ~ /ours$/ && /^seconds/ {ours = least(ours, $2)}
        FILENAME ~ /ours$/ && /^processor/ {oursCpu = least(oursCpu, $2)}
        FILENAME ~ /theirs$/ && NF == 3 {theirs = least(theirs, $1); theirsCpu = least(theirsCpu, $2 + $3)}
        FILENAME ~ /first$/ && NF == 3 {first = least(first, $1); firstCpu = least(firstCpu, $2 + $3)}
        FILENAME ~ /small$/ && /^heap/ {heap = $2}
        FILENAME ~ /small$/ && /^rss/ {rss = $2}
        END {
            printf "%s: ours, warm: %.2f s on the wall, %.2f s of processor time: %.0f times real time; as a whole process %.2f s, %.2f s\n",
                style, ours, oursCpu, 180 / oursCpu, first, firstCpu
            printf "%s: FluidSynth: %.2f s, %.2f s: %.0f times; ours takes %.2f of its time\n",
                style, theirs, theirsCpu, 180 / theirsCpu, oursCpu / theirsCpu
            printf "%s: with a heap of 64 MB: %s MB of it used at most, %s MB resident\n", style, heap, rss
            exit !(oursCpu <= 1.8 && oursCpu <= 1.5 * theirsCpu && rss < 200)
        }' "$folder/ours" "$folder/theirs" "$folder/first" "$folder/small" || { echo "$style: over a bound" >&2; failed=1; }
done
exit $failed
