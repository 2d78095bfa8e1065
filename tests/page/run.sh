#!/usr/bin/env bash
# run.sh SOURCE_FOLDER PROGRAM: the committed bundle is what its sources give, byte for byte, and the
# page does its work in a real browser. Needs Node with npm, and Debian's chromium.
set -euo pipefail
root=$(cd "$1" && pwd)
program=$(realpath "$2")

cd "$root/src/web/page"
npm ci --ignore-scripts --no-audit --no-fund --silent
npm run check --silent
fresh=$(mktemp -d)
trap 'rm -rf "$fresh"' EXIT
node answers.mjs "$fresh/answers.ts"
diff "$fresh/answers.ts" source/program/answers.ts ||
  { echo "source/program/answers.ts is not what src/schemas give: run npm run answers, and commit it" >&2; exit 1; }
rm "$fresh/answers.ts"
node build.mjs "$fresh"
diff -r "$fresh" bundle || { echo "bundle/ is not what the sources give: run npm run build, and commit it" >&2; exit 1; }
# All that comes before the solid view, which is loaded by itself.
size=$(cat bundle/page.js bundle/main-*.js bundle/chunk-*.js bundle/page.css bundle/index.html | gzip -9 | wc -c)
[ "$size" -lt 256000 ] || { echo "the page has $size bytes gzipped; 250 KB is the most" >&2; exit 1; }

cd "$root/tests/page"
npm ci --ignore-scripts --no-audit --no-fund --silent
# One more at a time than processors, as each waits now and then; the longest files first, so that
# none is left alone at the end.
ls -S *_test.mjs | xargs -P "$(($(nproc) + 1))" -I TEST node TEST "$root" "$program"
