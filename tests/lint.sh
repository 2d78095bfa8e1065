#!/usr/bin/env bash
# Layout of every C++ file by clang-format, and clang-tidy over the sources that were changed last.
#   tests/lint.sh BUILD [--all]     BUILD: a configured folder with compile_commands.json
# --all looks through every source: half an hour of one core, so CI looks at the newest 12 only.
set -euo pipefail
cd "$(dirname "$0")/.."
build=$1

git ls-files '*.h' '*.cpp' | xargs clang-format --dry-run --Werror

if [ "${2:-}" = --all ]; then
  sources=$(git ls-files 'src/*.cpp')
else
  sources=$(git log --format= --name-only --diff-filter=AMR -n 200 -- 'src/*.cpp' | awk '!seen[$0]++' |
    while read -r file; do if [ -f "$file" ]; then echo "$file"; fi; done | awk 'NR <= 12')
fi
[ -n "$sources" ] || { echo "no source was found to look at" >&2; exit 1; }
printf '%s\n' "$sources" | xargs -P "$(nproc)" -n 1 clang-tidy -p "$build" --quiet --warnings-as-errors='*'
