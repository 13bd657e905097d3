#!/usr/bin/env bash
# Gathers the workbench's texts into its translation files and builds what FreeCAD loads.
#
#   bash tools/translations.sh
#
# Needs FreeCAD (tools/setup.sh demo) and lrelease (Debian package qttools5-dev-tools).  The .qm
# files are kept in the repository: the workbench is installed by copying it, nothing is built.
set -euo pipefail
cd "$(dirname "$0")/.."
command -v lrelease >/dev/null || {
    echo "tools/translations.sh: lrelease is missing; install the package qttools5-dev-tools." >&2
    exit 1
}
LAYWRIGHT_TRANSLATE=1 bash tools/in_freecad.sh console tools/translations.py
for file in freecad_mod/freecad/laywright/translations/*.ts; do
    lrelease -silent "$file" -qm "${file%.ts}.qm"
done
