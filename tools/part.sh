#!/usr/bin/env bash
# Runs one part of the tests where it stands: tools/test.sh calls it on the machine itself or,
# for the parts that end in 10, inside the Debian 13 root.
#
#   bash tools/part.sh core|core10|freecad|freecad10|gui|gui10
#
# LAYWRIGHT_VENV is the venv to use, LAYWRIGHT_RESULTS the folder for PART.xml.
set -euo pipefail
cd "$(dirname "$0")/.."
part=$1
python=${LAYWRIGHT_VENV:-$PWD/.venv}/bin/python
junit=$LAYWRIGHT_RESULTS/$part.xml
# Plugins for pytest that happen to be on the machine stay out.
export PYTEST_DISABLE_PLUGIN_AUTOLOAD=1 PYTEST_PLUGINS=_hypothesis_pytestplugin
export LC_ALL=C.UTF-8 HYPOTHESIS_STORAGE_DIRECTORY=${TMPDIR:-/tmp}/laywright-hypothesis

if [[ $part == core* ]]; then
    if "$python" -c 'import FreeCAD' 2>/dev/null; then
        echo "The core must be tested where FreeCAD cannot be imported, but $python imports it; take it off that Python's path." >&2
        exit 1
    fi
    chosen=()
    if [ "$part" = core10 ]; then
        # Debian 13 has no calculix-ccx; the solver runs in part core, on Debian 12.
        echo "Tests marked 'solver' run in part core alone: Debian 13 has no package calculix-ccx."
        chosen=(-m "not solver")
    fi
    exec "$python" -m pytest -p no:cacheprovider --junitxml="$junit" "${chosen[@]}" \
        --ignore=tests/freecad --ignore=tests/gui
fi

version=0.20
[[ $part != *10 ]] || version=1.0
program=console
[[ $part != gui* ]] || program=window
LAYWRIGHT_FREECAD=$version LAYWRIGHT_TESTS=tests/${part%10} LAYWRIGHT_JUNIT=$junit \
    exec bash tools/in_freecad.sh "$program" tools/run_pytest.py
