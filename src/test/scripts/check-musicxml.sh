#!/bin/sh
# Typesets every MusicXML file of a folder with LilyPond and fails on the first warning or error.
# Usage: check-musicxml.sh FOLDER   (needs musicxml2ly and lilypond, Debian package lilypond)
set -eu
folder=${1:?"usage: check-musicxml.sh FOLDER with .musicxml or .mxl files"}
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
count=0
for file in "$folder"/*.musicxml "$folder"/*.mxl; do
    [ -e "$file" ] || continue
    name=$(basename "$file")
    case "$name" in
        *.mxl) flag=--compressed ;;
        *) flag= ;;
    esac
    # shellcheck disable=SC2086 # no flag is no argument
    musicxml2ly $flag -o "$work/$name.ly" "$file" >"$work/$name.log" 2>&1 || echo "error: musicxml2ly failed" >>"$work/$name.log"
    (cd "$work" && lilypond -o "$name" "$name.ly" >>"$name.log" 2>&1) || echo "error: lilypond failed" >>"$work/$name.log"
    if grep -i -E 'warning|error' "$work/$name.log" >&2; then
        echo "$file: not clean" >&2
        exit 1
    fi
    count=$((count + 1))
done
[ "$count" -gt 0 ] || { echo "no MusicXML file in $folder" >&2; exit 1; }
echo "$count files typeset without a warning"
