#!/usr/bin/env bash
# All set-up and every test: installs what is missing, builds with warnings as errors, runs CTest.
set -euo pipefail
cd "$(dirname "$0")/.."

.ci/packages.sh g++ cmake ninja-build libcgal-dev libassimp-dev libboost-dev libcli11-dev nlohmann-json3-dev \
  zlib1g-dev catch2 librapidcheck-dev python3-jsonschema
cmake --workflow --preset ci
