#!/usr/bin/env bash
# Shows Laywright at work: the crowned hatch cover, from the CAD part to the files for the bench.
#
#   bash tools/demo.sh
#
# Installs what it needs on a Debian machine (FreeCAD and a few Python packages, see
# tools/setup.sh) and puts everything into results/hatch_cover, or where LAYWRIGHT_OUT says.
set -euo pipefail
cd "$(dirname "$0")/.."
bash tools/setup.sh demo </dev/null
export LAYWRIGHT_OUT=${LAYWRIGHT_OUT:-$PWD/results/hatch_cover}
mkdir -p "$LAYWRIGHT_OUT"
LAYWRIGHT_EXAMPLE=$PWD/examples/run_hatch_cover.py bash tools/in_freecad.sh console tools/run_example.py || {
    echo "tools/demo.sh: the example did not run to its end; its message stands above." >&2
    exit 1
}
printf '\nThe results are in %s:\n' "$LAYWRIGHT_OUT"
(cd "$LAYWRIGHT_OUT" && find . -type f -printf '%9s bytes  %P\n' | sort -k 3)
