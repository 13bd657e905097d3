#!/usr/bin/env bash
# Makes a Debian machine ready: Debian's own packages first, then .venv with pinned packages.
#
#   bash tools/setup.sh core    what the core and its tests need
#   bash tools/setup.sh demo    what the demonstration needs: FreeCAD and the running packages
#   bash tools/setup.sh test    all that tools/test.sh needs
#
# It can be run as often as you like; once everything is there it takes about a second.
# Needs root, or a user who may use sudo, only when a Debian package is missing.
set -euo pipefail
here=$(cd "$(dirname "$0")/.." && pwd -P)
venv=$here/.venv
python=/usr/bin/python3 # named in full: another python3 may come first on PATH

die() {
    echo "tools/setup.sh: $*" >&2
    exit 1
}

as_root() {
    if [ "$(id -u)" -eq 0 ]; then
        "$@"
    else
        command -v sudo >/dev/null || die "packages are missing and there is neither root nor sudo; run this once as root."
        sudo "$@"
    fi
}

mode=${1:-}
debian=(ca-certificates python3 python3-venv python3-numpy python3-scipy python3-lxml)
requirements=requirements-test.txt
case $mode in
    core) debian+=(calculix-ccx) ;;
    demo)
        debian+=(freecad)
        requirements=requirements.txt
        ;;
    test) debian+=(calculix-ccx freecad xvfb xauth imagemagick poppler-utils debootstrap debian-archive-keyring) ;;
    *) die "found '$mode', needed one of core, demo, test." ;;
esac

# ---- Debian's packages
missing=()
for package in "${debian[@]}"; do
    state=$(dpkg-query -W -f '${db:Status-Status}' "$package" 2>/dev/null || true)
    [ "$state" = installed ] || missing+=("$package")
done
if [ ${#missing[@]} -gt 0 ]; then
    command -v apt-get >/dev/null || die "these Debian packages are missing and there is no apt-get: ${missing[*]}."
    echo "Installing Debian packages: ${missing[*]}"
    install=(env DEBIAN_FRONTEND=noninteractive apt-get install -y -q --no-install-recommends "${missing[@]}")
    # The package lists may be absent or old: they are fetched only when it does not work without.
    as_root "${install[@]}" >/dev/null 2>&1 || {
        as_root apt-get update -q
        as_root "${install[@]}"
    } || die "apt-get could not install ${missing[*]}; its message stands above."
fi

# ---- Python packages
# The venv sees the host's packages, and pip is held to the host's numpy and scipy: a newer
# numpy would come in with the first package that needs one, and the host's compiled modules
# (scipy, FreeCAD's own) would then fail to import.
held=$("$python" -c 'import numpy, scipy; print(f"numpy=={numpy.__version__}\nscipy=={scipy.__version__}")')
made_for=$({
    "$python" --version
    echo "$held"
} | sha256sum)
sum_of() { # one code for a requirements file; each holds those of requirements.txt
    cat "$here/tools/requirements.txt" "$here/tools/$1" | sha256sum
}
if [ "$(cat "$venv/made-for" 2>/dev/null)" != "$made_for" ]; then
    echo "Making $venv"
    "$python" -m venv --clear --system-site-packages "$venv"
    echo "$made_for" >"$venv/made-for"
fi
if ! grep -qsxF "$(sum_of $requirements)" "$venv/installed"; then
    echo "Installing Python packages from tools/$requirements"
    echo "$held" >"$venv/held.txt"
    "$venv/bin/python" -m pip install -qq --disable-pip-version-check \
        -c "$venv/held.txt" -r "$here/tools/$requirements" ||
        die "pip could not install tools/$requirements; its message stands above."
    found=$("$venv/bin/python" -c 'import numpy, scipy; print(f"numpy=={numpy.__version__}\nscipy=={scipy.__version__}")')
    [ "$found" = "$held" ] || die "the venv has ${found/$'\n'/ and }, the host ${held/$'\n'/ and }; remove .venv and run this again."
    { sum_of requirements.txt && sum_of $requirements; } >"$venv/installed"
fi
