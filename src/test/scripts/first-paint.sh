#!/usr/bin/env bash
# Time to first paint: our window against an empty FlatLaf window with one table, in turn, in one run.
# Usage: src/test/scripts/first-paint.sh [RUNS] [JAVA_OPTION ...]   after `mvn package`; needs a display
# (without one it takes a virtual one). Prints both medians in milliseconds and their ratio; exit 1
# above 1.6.
set -euo pipefail
cd "$(dirname "$0")/../../.."
runs=${1:-9}
[ $# -gt 0 ] && shift
if [ -z "${DISPLAY:-}" ]; then
  exec xvfb-run -a -s "-screen 0 1280x800x24" "$0" "$runs" "$@"
fi
classes=target/kitweft.jar:target/test-classes
if [ ! -f target/kitweft.jar ] && [ -n "${CLASSES:-}" ]; then classes=$CLASSES; fi
settings=$(mktemp -d)
trap 'rm -rf "$settings"' EXIT
one() {
  java "${@:2}" -cp "$classes" org.kitweft.ui.window.FirstPaint "$1" "$settings/none"
}
median() { sort -n "$1" | awk '{ v[NR] = $1 } END { print v[int((NR + 1) / 2)] }'; }
one window "$@" >/dev/null # the files come into the cache
one table "$@" >/dev/null
for _ in $(seq "$runs"); do
  one window "$@" >>"$settings/window"
  one table "$@" >>"$settings/table"
done
w=$(median "$settings/window")
t=$(median "$settings/table")
awk -v w="$w" -v t="$t" 'BEGIN {
  printf "window %d ms, table %d ms, ratio %.2f (at most 1.60)\n", w, t, w / t
  exit w / t > 1.6 }'
