#!/usr/bin/env bash
# All set-up and the main job: installs what is missing, builds, plans an example run.
set -euo pipefail
cd "$(dirname "$0")/.."

.ci/packages.sh g++ cmake ninja-build libcgal-dev libassimp-dev libboost-dev \
  libcli11-dev nlohmann-json3-dev zlib1g-dev libseccomp-dev libpango1.0-dev libglpk-dev libsqlite3-dev libsqlitecpp-dev libmd-dev libdeflate-dev pkg-config
cmake --preset release >&2
cmake --build --preset release --target brimwright >&2

program=.build/release/src/cli/brimwright
echo
"$program" plan examples/spring_cups.run.json
echo
echo "The program is $program; try: $program --help"
