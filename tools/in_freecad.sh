#!/usr/bin/env bash
# Runs a Python script inside FreeCAD, with this checkout installed as its workbench.
#
#   bash tools/in_freecad.sh console SCRIPT    in freecadcmd
#   bash tools/in_freecad.sh window SCRIPT     in freecad; needs an X server (DISPLAY)
#
# FreeCAD gets a home of its own that is removed afterwards.  In it stand, exactly as on a
# user's machine, the checkout (a link in Mod) and the Python packages (AdditionalPythonPackages,
# which FreeCAD puts behind the host's own packages).  The script must end with os._exit(code),
# for FreeCAD reports an exception in a script as success.
set -euo pipefail
here=$(cd "$(dirname "$0")/.." && pwd -P)
venv=${LAYWRIGHT_VENV:-$here/.venv}
case ${1:-} in
    console) program=freecadcmd ;;
    window) program=freecad ;;
    *)
        echo "tools/in_freecad.sh: found '${1:-}', needed console or window." >&2
        exit 1
        ;;
esac

home=$(mktemp -d)
trap 'rm -rf "$home"' EXIT
mkdir "$home/Mod"
ln -s "$here" "$home/Mod/Laywright"
ln -s "$("$venv/bin/python" -c 'import sysconfig; print(sysconfig.get_path("purelib"))')" \
    "$home/AdditionalPythonPackages"

# A dialog that nobody answers would wait for ever: twenty minutes are far more than any run needs.
env -u QT_QPA_PLATFORM -u PYTHONPATH LC_ALL=C.UTF-8 FREECAD_USER_HOME="$home" \
    QTWEBENGINE_DISABLE_SANDBOX=1 LIBGL_ALWAYS_SOFTWARE=1 \
    timeout --kill-after=10 1200 "$program" "$2" </dev/null
