#!/usr/bin/env bash
# How long the command count takes as a process, beside an empty Java program in the same run.
# Usage: src/test/scripts/time-count.sh [JAR] [RUNS]     Needs only a JDK. Build the jar first: mvn package
# Prints the median of each in milliseconds and their ratio. Goal: count under 600 ms on a quiet machine.
set -euo pipefail
shopt -s inherit_errexit
jar=${1:-target/kitweft.jar} runs=${2:-11}
dir=$(mktemp -d)
trap 'rm -rf "$dir"' EXIT
printf 'public class Bare { public static void main(String[] a) { System.out.println("hello"); } }' >"$dir/Bare.java"
javac -d "$dir" "$dir/Bare.java"
sounds=snare,high-tom,mid-tom,floor-tom

median() { # milliseconds of "$@", the median of all runs
    for _ in $(seq "$runs"); do
        from=$(date +%s%N)
        "$@" >/dev/null
        echo $((($(date +%s%N) - from) / 1000000))
    done | sort -n | sed -n "$(((runs + 1) / 2))p"
}

bare=$(median java -cp "$dir" Bare)
count=$(median java -jar "$jar" count "RLRR LRLL" --choose "R=$sounds" --choose "L=$sounds" --json)
echo "empty program: $bare ms, count: $count ms, ratio: $(awk "BEGIN { printf \"%.1f\", $count / $bare }")"
