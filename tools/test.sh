#!/usr/bin/env bash
# Runs every test of Laywright on a Debian 12 machine, bare or not, and installs what it needs.
#
#   bash tools/test.sh             everything
#   bash tools/test.sh PART...     only these parts:
#       style       ruff, mypy and the import contract
#       core        the core on this machine's Python, with no FreeCAD to be imported
#       core10      the same on Debian 13's newer Python, numpy and scipy
#       freecad     the workbench in FreeCAD 0.20 without a window (Debian 12)
#       freecad10   the same in FreeCAD 1.0 (Debian 13, see tools/trixie.sh)
#       gui         the workbench in FreeCAD 0.20 with its window, on a virtual screen
#       gui10       the same in FreeCAD 1.0
#
# Options for pytest can be given in PYTEST_ADDOPTS.  Results: results/tests/PART.xml.
# The last line is the sum of all parts; the exit code is 0 only if nothing failed.
set -euo pipefail
cd "$(dirname "$0")/.."
here=$(pwd -P)
export LC_ALL=C.UTF-8 LAYWRIGHT_RESULTS=$here/results/tests
all=(style core core10 freecad freecad10 gui gui10)
parts=("$@")
[ $# -gt 0 ] || parts=("${all[@]}")

mode=core
for part in "${parts[@]}"; do
    [[ " ${all[*]} " == *" $part "* ]] || {
        echo "tools/test.sh: found part '$part', needed one of ${all[*]}." >&2
        exit 1
    }
    [[ $part == style || $part == core ]] || mode='test'
done
bash tools/setup.sh "$mode" </dev/null
mkdir -p "$LAYWRIGHT_RESULTS"

outcomes=()
run() { # PART COMMAND...: runs it and notes its exit code and seconds
    local part=$1 code=0 start=$SECONDS
    shift
    rm -f "$LAYWRIGHT_RESULTS/$part.xml"
    printf '\n==== %s\n' "$part"
    "$@" </dev/null || code=$?
    [ $code -eq 0 ] || echo "---- $part ended with exit code $code"
    outcomes+=("$part:$code:$((SECONDS - start))")
}

screen() {
    xvfb-run -a -s "-screen 0 1400x900x24 -ac" "$@"
}

for part in "${parts[@]}"; do
    case $part in
        style)
            run style-ruff .venv/bin/ruff check .
            run style-format .venv/bin/ruff format --check .
            run style-mypy .venv/bin/mypy
            run style-imports env PYTHONPATH=core .venv/bin/lint-imports
            ;;
        core | freecad) run "$part" bash tools/part.sh "$part" ;;
        core10 | freecad10) run "$part" bash tools/trixie.sh run bash tools/part.sh "$part" ;;
        gui) run gui screen bash tools/part.sh gui ;;
        gui10) run gui10 screen bash tools/trixie.sh run bash tools/part.sh gui10 ;;
    esac
done

.venv/bin/python tools/summary.py "$LAYWRIGHT_RESULTS" "${outcomes[@]}"
