#!/usr/bin/env bash
# Time to first paint: our window against an empty FlatLaf window with one table, in turn, in one run.
# Usage: src/test/scripts/first-paint.sh [RUNS] [JAVA_OPTION ...]   after `mvn package`.
# The options, e.g. -XX:SharedArchiveFile=target/kitweft.jsa, are those our window is shipped with. The
# table is measured plain, as any program starts, and with the same options: two ratios are printed,
# medians in milliseconds. Exit 1 if the first is above 1.6. Takes a virtual display where there is none.
# CLASSES overrides the class path (jars only, where an archive is used).
set -euo pipefail
cd "$(dirname "$0")/../../.."
runs=${1:-9}
[ $# -gt 0 ] && shift
if [ -z "${DISPLAY:-}" ]; then
  exec xvfb-run -a -s "-screen 0 1280x800x24" "$0" "$runs" "$@"
fi
classes=${CLASSES:-target/kitweft.jar:target/test-classes}
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
one() { java "${@:2}" -cp "$classes" org.kitweft.ui.window.FirstPaint "$1" "$work/none" 2>/dev/null; }
median() { sort -n "$1" | awk '{ v[NR] = $1 } END { print v[int((NR + 1) / 2)] }'; }
for _ in $(seq 0 "$runs"); do # the first round only brings the files into the cache
  one window "$@" >>"$work/window"
  one table >>"$work/plain"
  one table "$@" >>"$work/table"
done
for f in window plain table; do sed -i 1d "$work/$f"; done
awk -v w="$(median "$work/window")" -v p="$(median "$work/plain")" -v t="$(median "$work/table")" 'BEGIN {
  printf "window %d ms; table %d ms, ratio %.2f (at most 1.60); table with the same options %d ms, ratio %.2f\n",
    w, p, w / p, t, w / t
  exit w / p > 1.6 }'
