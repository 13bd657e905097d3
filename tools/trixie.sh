#!/usr/bin/env bash
# FreeCAD 1.0 on a machine whose own FreeCAD is older: a Debian 13 (trixie) root of its own.
#
#   bash tools/trixie.sh make           makes it, or does nothing when it is there
#   bash tools/trixie.sh run CMD...     runs a command inside it
#
# The root lies in ${XDG_CACHE_HOME:-~/.cache}/laywright/trixie, or where LAYWRIGHT_TRIXIE says.
# It takes about 3 GB and some minutes, once.  Needs root, or a user who may use sudo.
#
# Inside, the checkout is mounted read-only at /srv/laywright (not copied: the tests then see
# the very files that are here, at once, and can be proved to write none), and
# LAYWRIGHT_RESULTS is mounted for writing at /srv/results.  All mounts live in a mount
# namespace of that one command and are gone with it, also after a crash.
set -euo pipefail
here=$(cd "$(dirname "$0")/.." && pwd -P)
export LAYWRIGHT_TRIXIE=${LAYWRIGHT_TRIXIE:-${XDG_CACHE_HOME:-$HOME/.cache}/laywright/trixie}
root=$LAYWRIGHT_TRIXIE
debian=(freecad python3-venv python3-numpy python3-scipy python3-lxml)
inside=(env -i HOME=/root LC_ALL=C.UTF-8 PATH=/usr/local/sbin:/usr/local/bin:/usr/sbin:/usr/bin:/sbin:/bin)

die() {
    echo "tools/trixie.sh: FreeCAD 1.0 cannot be tested here: $*" >&2
    exit 1
}

[ $# -gt 0 ] || die "found no word after the script, needed 'make' or 'run CMD...'."

# ---- as root, in a mount namespace of our own
if [ "$(id -u)" -ne 0 ]; then
    command -v sudo >/dev/null || die "making a Debian root needs root or sudo, and there is neither."
    exec sudo --preserve-env=LAYWRIGHT_TRIXIE,LAYWRIGHT_RESULTS,LAYWRIGHT_OWN_MOUNTS,DISPLAY,PYTEST_ADDOPTS,CI,http_proxy,https_proxy \
        bash "$0" "$@"
fi
if [ -z "${LAYWRIGHT_OWN_MOUNTS:-}" ]; then
    unshare --mount --propagation private true 2>/dev/null ||
        die "this machine does not let root make a mount namespace (in a container, allow CAP_SYS_ADMIN)."
    LAYWRIGHT_OWN_MOUNTS=1 exec unshare --mount --propagation private bash "$0" "$@"
fi

mount_system() {
    mountpoint -q "$1/proc" || mount -t proc proc "$1/proc"
    mountpoint -q "$1/dev" || mount --rbind /dev "$1/dev"
    mount -t tmpfs tmpfs "$1/tmp"
}

# ---- the root
own_mirror() { # this Debian's own mirror, as apt prints it, whatever format its sources are in
    . /etc/os-release
    [ "$ID" = debian ] || return 0
    apt-get update --print-uris 2>/dev/null |
        sed -n "s#^'\(https\?://.*\)/dists/$VERSION_CODENAME/InRelease'.*#\1#p" | head -n 1
}

make_root() {
    local stamp="${debian[*]}"
    [ "$(cat "$root/.laywright" 2>/dev/null)" = "$stamp" ] && return
    command -v debootstrap >/dev/null || die "debootstrap is missing; run tools/setup.sh test."
    local new=$root.new mirror
    if [ -d "$root" ] && [ -n "$(ls -A "$root")" ] && [ ! -f "$root/.laywright" ]; then
        die "$root holds files that this script did not put there; set LAYWRIGHT_TRIXIE to another place."
    fi
    mirror=$(own_mirror)
    echo "Making a Debian 13 root in $root (a few minutes, about 3 GB)"
    rm -rf --one-file-system "$new" "$root"
    mkdir -p "$new"
    debootstrap --variant=minbase --include=ca-certificates trixie "$new" ${mirror:+"$mirror"} >"$new.log" 2>&1 || {
        tail -n 20 "$new.log" >&2
        die "debootstrap could not make a Debian 13 root from ${mirror:-its default mirror}; the end of $new.log stands above."
    }
    mount_system "$new"
    printf '#!/bin/sh\nexit 101\n' >"$new/usr/sbin/policy-rc.d" # no service is started in there
    chmod 755 "$new/usr/sbin/policy-rc.d"
    chroot "$new" "${inside[@]}" DEBIAN_FRONTEND=noninteractive \
        ${http_proxy:+http_proxy="$http_proxy"} ${https_proxy:+https_proxy="$https_proxy"} \
        sh -c 'apt-get update -q && apt-get install -y -q --no-install-recommends -o Dpkg::Options::=--force-unsafe-io "$@" && apt-get clean' \
        sh "${debian[@]}" >>"$new.log" 2>&1 </dev/null || {
        tail -n 20 "$new.log" >&2
        die "apt-get could not install ${debian[*]} in the Debian 13 root; the end of $new.log stands above."
    }
    echo "$stamp" >"$new/.laywright"
    umount "$new/tmp"
    umount -l "$new/dev"
    umount "$new/proc"
    mv "$new" "$root"
    mv "$new.log" "$root/.laywright.log"
}

# ---- Python packages in it
# pip has no network in there: the wheels are fetched out here for its Python and installed
# without an index, with numpy and scipy held to the root's own.
make_venv() {
    local held wanted python wheels
    held=$(chroot "$root" "${inside[@]}" python3 -c \
        'import numpy, scipy; print(f"numpy=={numpy.__version__}\nscipy=={scipy.__version__}")')
    wanted=$({
        echo "$held"
        cat "$here/tools/requirements.txt" "$here/tools/requirements-test.txt"
    } | sha256sum)
    [ "$(cat "$root/opt/laywright/installed" 2>/dev/null)" = "$wanted" ] && return
    [ -x "$here/.venv/bin/python" ] || die "there is no .venv to fetch packages with; run tools/setup.sh test."
    echo "Installing Python packages in $root"
    python=$(chroot "$root" "${inside[@]}" python3 -c 'import sys; print("%d.%d" % sys.version_info[:2])')
    wheels=$root/opt/laywright/wheels
    rm -rf --one-file-system "$root/opt/laywright"
    mkdir -p "$wheels"
    echo "$held" >"$root/opt/laywright/held.txt"
    cp "$here/tools/requirements.txt" "$here/tools/requirements-test.txt" "$root/opt/laywright/"
    "$here/.venv/bin/python" -m pip download -qq --disable-pip-version-check \
        --python-version "$python" --only-binary=:all: -d "$wheels" \
        -c "$root/opt/laywright/held.txt" -r "$here/tools/requirements-test.txt" ||
        die "pip could not fetch the packages for Python $python; its message stands above."
    chroot "$root" "${inside[@]}" python3 -m venv --system-site-packages /opt/laywright/venv
    chroot "$root" "${inside[@]}" /opt/laywright/venv/bin/python -m pip install -qq --no-index \
        --find-links /opt/laywright/wheels -c /opt/laywright/held.txt \
        -r /opt/laywright/requirements-test.txt ||
        die "pip could not install the fetched packages in the Debian 13 root; its message stands above."
    rm -rf --one-file-system "$wheels"
    echo "$wanted" >"$root/opt/laywright/installed"
}

make_all() {
    mkdir -p "$(dirname "$root")"
    exec 9>"$root.lock"
    flock 9
    make_root
    make_venv
    exec 9>&-
}

run_inside() {
    make_all
    mount_system "$root"
    mkdir -p "$root/srv/laywright" "$root/srv/results"
    mount --bind "$here" "$root/srv/laywright"
    mount -o remount,bind,ro "$root/srv/laywright"
    [ -z "${LAYWRIGHT_RESULTS:-}" ] || mount --bind "$LAYWRIGHT_RESULTS" "$root/srv/results"
    if [ -d /tmp/.X11-unix ]; then # the X server runs outside
        mkdir "$root/tmp/.X11-unix"
        mount --bind /tmp/.X11-unix "$root/tmp/.X11-unix"
    fi
    exec chroot "$root" "${inside[@]}" \
        ${DISPLAY:+DISPLAY="$DISPLAY"} ${PYTEST_ADDOPTS:+PYTEST_ADDOPTS="$PYTEST_ADDOPTS"} \
        ${CI:+CI="$CI"} PYTHONDONTWRITEBYTECODE=1 LAYWRIGHT_VENV=/opt/laywright/venv LAYWRIGHT_RESULTS=/srv/results \
        sh -c 'cd /srv/laywright && exec "$@"' sh "$@"
}

case $1 in
    make) make_all ;;
    run)
        shift
        run_inside "$@"
        ;;
    *) die "found '$1', needed 'make' or 'run CMD...'." ;;
esac
