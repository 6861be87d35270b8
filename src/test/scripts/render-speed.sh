#!/usr/bin/env bash
# Renders three minutes of a groove with click and band to WAV with the built-in bank, beside FluidSynth (Debian package
# fluidsynth) as a process with the same bank and the same MIDI file, in turns. Fails if we are slower than 100 times real
# time or than 1.5 times FluidSynth's time, or need 200 MB of memory with a heap of 64 MB. Best of all runs: others may use
# the machine too. Needs compiled classes: mvn -q test-compile.
#
#   src/test/scripts/render-speed.sh [STYLE ...]     the band's styles (default: rock samba)
set -eu
cd "$(dirname "$0")/../../.."
[ $# -gt 0 ] || set -- rock samba
folder=$(mktemp -d); trap 'rm -rf "$folder"' EXIT
classpath=${CLASSES:-target/classes:target/test-classes:$(find "$HOME/.m2/repository" -name 'commons-*.jar' -o -name 'jackson-*.jar' -o -name 'jspecify-*.jar' | tr '\n' ':')}
check() { java "${@:2}" --add-exports=java.desktop/com.sun.media.sound=ALL-UNNAMED -cp "$classpath" org.kitweft.sound.wave.RenderCheck $1; }
least() { printf '%s\n%s\n' "$1" "$2" | sort -g | head -n 1; }

failed=0
for style; do
    check "write $folder $style"
    ours=999 theirs=999 firsts=999
    for round in 1 2 3; do
        check "render $folder $style 6" > "$folder/ours"
        ours=$(least "$ours" "$(awk '/^seconds/ {print $2}' "$folder/ours")")
        for run in 1 2 3; do
            begun=$(date +%s.%N)
            fluidsynth -ni -q -r 44100 -F "$folder/theirs.wav" "$folder/bank.sf2" "$folder/$style.mid"
            theirs=$(least "$theirs" "$(echo "$(date +%s.%N) $begun" | awk '{print $1 - $2}')")
        done
        begun=$(date +%s.%N)
        check "render $folder $style 1" > /dev/null
        firsts=$(least "$firsts" "$(echo "$(date +%s.%N) $begun" | awk '{print $1 - $2}')")
    done
    check "render $folder $style 2" -Xmx64m -XX:+UseSerialGC > "$folder/small"
    awk -v style="$style" -v ours="$ours" -v theirs="$theirs" -v firsts="$firsts" '
        /^heap/ {heap = $2} /^rss/ {rss = $2}
        END {
            printf "%s: ours warm %.2f s, %.0f times real time; as a whole process %.2f s; FluidSynth %.2f s, %.0f times; ratio %.2f\n",
                style, ours, 180 / ours, firsts, theirs, 180 / theirs, ours / theirs
            printf "%s: with a heap of 64 MB: %s MB of it used at most, %s MB resident\n", style, heap, rss
            exit !(ours <= 1.8 && ours <= 1.5 * theirs && rss < 200)
        }' "$folder/small" || { echo "$style: over a bound" >&2; failed=1; }
done
exit $failed
