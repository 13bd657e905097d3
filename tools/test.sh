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

screen() {
    xvfb-run -a -s "-screen 0 1400x900x24 -ac" "$@"
}

tested() { # PART: runs its tests
    case $1 in
        core | freecad) bash tools/part.sh "$1" ;;
        core10 | freecad10) bash tools/trixie.sh run bash tools/part.sh "$1" ;;
        gui) screen bash tools/part.sh gui ;;
        gui10) screen bash tools/trixie.sh run bash tools/part.sh gui10 ;;
    esac
}

notes=$(mktemp -d)
trap 'rm -rf "$notes"' EXIT
run() { # PART COMMAND...: runs it and notes its exit code and seconds
    local part=$1 code=0 start=$SECONDS
    shift
    rm -f "$LAYWRIGHT_RESULTS/$part.xml"
    printf '\n==== %s\n' "$part"
    "$@" </dev/null || code=$?
    [ $code -eq 0 ] || echo "---- $part ended with exit code $code"
    echo "$part:$code:$((SECONDS - start))" >"$notes/$part"
}

order=()
slow=()
for part in "${parts[@]}"; do
    if [ "$part" = style ]; then
        run style-ruff .venv/bin/ruff check .
        run style-format .venv/bin/ruff format --check .
        run style-mypy .venv/bin/mypy
        run style-imports env PYTHONPATH=core .venv/bin/lint-imports
        order+=(style-ruff style-format style-mypy style-imports)
    else
        slow+=("$part")
        order+=("$part")
    fi
done

# Two parts at a time, as one is bound to one core; what they print is shown when they end.
if [ ${#slow[@]} -eq 1 ]; then
    run "${slow[0]}" tested "${slow[0]}"
else
    for part in "${slow[@]}"; do
        while [ "$(jobs -rp | wc -l)" -ge 2 ]; do wait -n; done
        echo "$part has begun"
        (
            run "$part" tested "$part" >"$notes/$part.log" 2>&1
            cat "$notes/$part.log"
        ) &
    done
    wait
fi

outcomes=()
for part in "${order[@]}"; do outcomes+=("$(cat "$notes/$part")"); done
.venv/bin/python tools/summary.py "$LAYWRIGHT_RESULTS" "${outcomes[@]}"
