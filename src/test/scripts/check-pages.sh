#!/bin/sh
# Reads every PDF and SVG file of a folder with programs that are not ours: in a PDF all fonts must be
# embedded and words must be text; an SVG must look the same with no font installed, and hold its words.
# Usage: check-pages.sh FOLDER   (needs pdffonts and pdftotext, rsvg-convert: Debian packages poppler-utils, librsvg2-bin)
set -eu
folder=${1:?"usage: check-pages.sh FOLDER with .pdf and .svg files"}
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
count=0

for file in "$folder"/*.pdf; do
    [ -e "$file" ] || continue
    # After two lines of heading, the third column from the right end but two says whether it is embedded.
    pdffonts "$file" | tail -n +3 >"$work/fonts"
    [ -s "$work/fonts" ] || { echo "$file: no fonts at all" >&2; exit 1; }
    if awk '{ if ($(NF - 4) != "yes") print }' "$work/fonts" | grep . >&2; then
        echo "$file: fonts are not embedded" >&2
        exit 1
    fi
    pdftotext "$file" - | grep -q '[A-Za-z]\{3\}' || { echo "$file: no text" >&2; exit 1; }
    count=$((count + 1))
done

cat >"$work/fonts.conf" <<CONF
<?xml version="1.0"?><!DOCTYPE fontconfig SYSTEM "urn:fontconfig:fonts.dtd">
<fontconfig><dir>$work/none</dir><cachedir>$work/cache</cachedir></fontconfig>
CONF
for file in "$folder"/*.svg; do
    [ -e "$file" ] || continue
    rsvg-convert -o "$work/with.png" "$file"
    FONTCONFIG_FILE="$work/fonts.conf" rsvg-convert -o "$work/without.png" "$file" 2>"$work/log"
    cmp "$work/with.png" "$work/without.png" || { echo "$file: looks different without fonts" >&2; exit 1; }
    grep -q '<text[^>]*>R</text>' "$file" || { echo "$file: its words are no text" >&2; exit 1; }
    count=$((count + 1))
done
[ "$count" -gt 0 ] || { echo "no PDF or SVG file in $folder" >&2; exit 1; }
echo "$count files: fonts embedded or not needed, words are text"
