#!/bin/sh
# Exports the built-in sound bank and lets FluidSynth (Debian package fluidsynth) load it and render every preset and every
# percussion key. Fails on any warning of FluidSynth's, any silent preset, and a bank of over 12 MB or one that takes longer
# than 5 s to build or 300 ms to load. Needs compiled classes: mvn -q test-compile.
#
#   src/test/scripts/check-bank.sh [FOLDER]     FOLDER: where the bank and the WAV files go (default: a temporary one)
set -eu
cd "$(dirname "$0")/../../.."
folder=${1:-$(mktemp -d)}
mkdir -p "$folder"
classpath=target/classes:target/test-classes:$(find "${HOME}/.m2/repository" -name commons-math3-3.6.1.jar | head -n 1)

java --add-exports=java.desktop/com.sun.media.sound=ALL-UNNAMED -cp "$classpath" \
    org.kitweft.sound.bank.BankCheck "$folder"

fluidsynth --version | head -n 1
: > "$folder/fluidsynth.log"
for song in "$folder"/*.mid; do
    fluidsynth -n -i -q -R 0 -C 0 -g 1 -T raw -O float -r 44100 -F "${song%.mid}.raw" "$folder/bank.sf2" "$song" \
        >> "$folder/fluidsynth.log" 2>&1
done
if grep -i -E 'warning|error|panic|failed' "$folder/fluidsynth.log"; then
    echo "FluidSynth complained, see $folder/fluidsynth.log" >&2
    exit 1
fi
echo "FluidSynth: no warning in $(ls "$folder"/*.mid | wc -l) runs"
java -cp "$classpath" org.kitweft.sound.bank.BankCheck listen "$folder"
