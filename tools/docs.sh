#!/usr/bin/env bash
# Writes the parts of docs/ that come from the program itself.
#
#   bash tools/docs.sh tables      property tables in docs/stages, from the objects' declarations
#   bash tools/docs.sh pictures    docs/pictures, drawn by the real window under Xvfb
#   bash tools/docs.sh             both
#
# Needs FreeCAD and .venv as tools/setup.sh makes them; the pictures need Xvfb as well.
set -euo pipefail
cd "$(dirname "$0")/.."

tables() {
    LAYWRIGHT_EXAMPLE=$PWD/tools/doc_tables.py bash tools/in_freecad.sh console tools/run_example.py
}

pictures() {
    xvfb-run --auto-servernum --server-args="-screen 0 1400x900x24 -ac" \
        bash tools/in_freecad.sh window tools/doc_pictures.py
}

case ${1:-both} in
    tables) tables ;;
    pictures) pictures ;;
    both) tables && pictures ;;
    *)
        echo "tools/docs.sh: found '$1', needed tables or pictures." >&2
        exit 1
        ;;
esac
