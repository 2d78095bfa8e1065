#!/usr/bin/env bash
# All set-up and every test: installs what is missing, builds with warnings as errors, runs CTest.
set -euo pipefail
cd "$(dirname "$0")/.."

.ci/packages.sh g++ cmake ninja-build libcgal-dev libassimp-dev libboost-dev libcli11-dev nlohmann-json3-dev \
  zlib1g-dev libseccomp-dev libpango1.0-dev libglpk-dev libsqlite3-dev libsqlitecpp-dev libmd-dev libdeflate-dev pkg-config poppler-utils catch2 librapidcheck-dev python3-jsonschema \
  lp-solve libical3 python3-icalendar clang-format clang-tidy
CTEST_PARALLEL_LEVEL=${CTEST_PARALLEL_LEVEL:-$(nproc)} cmake --workflow --preset ci
tests/lint.sh .build/ci

# The page: the committed bundle against its sources, and its work in a real browser.
command -v npm >/dev/null || .ci/packages.sh nodejs npm
command -v chromium >/dev/null || .ci/packages.sh chromium
tests/page/run.sh . .build/ci/src/cli/brimwright
