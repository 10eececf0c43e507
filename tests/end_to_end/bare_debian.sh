#!/bin/bash
# Tries the README's commands, as written, on a bare Debian: a minimal root made by debootstrap, with the last commit cloned into it.
#   bare_debian.sh RELEASE [root|user] [open|test|both]     RELEASE: bookworm or trixie
#   bare_debian.sh can RELEASE                              whether this machine can; else one sentence says why not
# Needs root, debootstrap, and the package mirror that apt uses here. The untouched root is kept as a tar in the cache folder.
# Exit status: 0 all held, 1 something did not, 2 could not be tried.
set -euo pipefail
checkout=$(realpath "$(dirname "$(realpath "$0")")/../..")
cache=${XDG_CACHE_HOME:-${HOME:-/root}/.cache}/pairstand

give_up() {
    echo "bare_debian: $*" >&2
    exit 2
}

# The address of the archive (`-security` for the fixes) that apt uses here.
archive() {
    apt-get indextargets --format '$(REPO_URI) $(CODENAME)' 'Created-By: Packages' 2>/dev/null |
        awk -v suffix="${1:-}" 'suffix == "" ? $2 !~ /-/ : $2 ~ suffix "$" { sub("/$", "", $1); print $1; exit }'
}

answers() { # answers RELEASE: whether the mirror has it
    local folder status=0
    folder=$(mktemp -d)
    /usr/lib/apt/apt-helper download-file "$(archive)/dists/$1/InRelease" "$folder/InRelease" >/dev/null 2>&1 || status=1
    rm -r "$folder"
    return $status
}

check_machine() {
    [ "$(id -u)" = 0 ] || give_up "only root can make a root folder of its own"
    command -v debootstrap >/dev/null || give_up "debootstrap is not installed (config/setup check installs it)"
    [ -e "/usr/share/debootstrap/scripts/$1" ] || give_up "debootstrap here does not know $1"
    unshare --mount --pid --fork true 2>/dev/null || give_up "this machine lets nobody mount"
    [ -n "$(archive)" ] || give_up "apt here has no archive configured"
    command -v git >/dev/null || give_up "git is not installed"
    [ -f "$cache/$1.tar" ] || answers "$1" || give_up "the mirror that apt uses here does not answer for $1"
}

make_base() { # make_base RELEASE: the untouched root, once
    local release=$1 folder
    [ ! -f "$cache/$release.tar" ] || return 0
    mkdir -p "$cache"
    folder=$(mktemp -d "$cache/base-XXXXXX")
    echo "making a minimal $release ..."
    # debootstrap asks the environment for a proxy, apt its own settings
    eval "$(apt-config shell http_proxy Acquire::http::Proxy https_proxy Acquire::https::Proxy)"
    [ -z "${http_proxy:-}" ] || export http_proxy
    [ -z "${https_proxy:-}" ] || export https_proxy
    debootstrap --variant=minbase --include=ca-certificates "$release" "$folder/root" "$(archive)" >"$cache/$release.log" 2>&1 || {
        tail -5 "$cache/$release.log" >&2
        rm -rf --one-file-system "$folder"
        give_up "debootstrap of $release failed; the whole story is in $cache/$release.log"
    }
    rm -f "$folder"/root/var/cache/apt/archives/*.deb
    tar -C "$folder/root" --one-file-system -cf "$folder/root.tar" .
    mv "$folder/root.tar" "$cache/$release.tar"
    rm -rf --one-file-system "$folder"
}

fill() { # fill ROOT RELEASE: unpacks the root, lets its apt see what apt sees here, clones the last commit into /src
    local root=$1 release=$2 security
    tar -C "$root" -xpf "$cache/$release.tar"
    security=$(archive -security)
    {
        echo "deb $(archive) $release main"
        echo "deb $(archive) $release-updates main"
        [ -z "$security" ] || echo "deb $security $release-security main"
    } >"$root/etc/apt/sources.list"
    apt-config dump | grep -E '^Acquire::(http|https|ftp)(::|[[:space:]])' >"$root/etc/apt/apt.conf.d/95outside" || true
    printf '#!/bin/sh\nexit 101\n' >"$root/usr/sbin/policy-rc.d" # no service is started in here
    chmod 755 "$root/usr/sbin/policy-rc.d"
    echo force-unsafe-io >"$root/etc/dpkg/dpkg.cfg.d/quick" # the root is thrown away: nothing needs to survive a power cut
    cp -L /etc/resolv.conf "$root/etc/resolv.conf"
    echo "127.0.0.1 localhost $(uname -n)" >"$root/etc/hosts"
    git -c safe.directory='*' clone -q --no-hardlinks "$checkout" "$root/src"
    chroot "$root" useradd -m -s /bin/bash pat
}

mount_all() { # in a mount namespace of its own: nothing has to be unmounted
    local root=$1 device
    mount -t proc proc "$root/proc"
    mount -t tmpfs -o mode=1777,size=2g tmpfs "$root/tmp"
    mount -t tmpfs -o mode=755,size=16m tmpfs "$root/dev"
    mkdir -m 1777 "$root/dev/shm"
    mkdir "$root/dev/pts"
    mount -t tmpfs -o mode=1777 tmpfs "$root/dev/shm"
    mount -t devpts -o newinstance,ptmxmode=0666,mode=620 devpts "$root/dev/pts"
    for device in null zero full random urandom tty; do
        : >"$root/dev/$device"
        mount --bind "/dev/$device" "$root/dev/$device"
    done
    ln -s /proc/self/fd "$root/dev/fd"
    ln -s pts/ptmx "$root/dev/ptmx"
    ln -s fd/0 "$root/dev/stdin"
    ln -s fd/1 "$root/dev/stdout"
    ln -s fd/2 "$root/dev/stderr"
}

# inside ROOT USER COMMAND: as on a machine where somebody has just logged in; no display, no input.
inside() {
    local home=/home/$2
    [ "$2" != root ] || home=/root
    env -i TERM=dumb LANG=C.UTF-8 PATH=/usr/local/sbin:/usr/local/bin:/usr/sbin:/usr/bin:/sbin:/bin HOME="$home" USER="$2" \
        chroot --userspec="$2:$2" "$1" bash -c "cd /src && $3" </dev/null
}

readme_command() { # readme_command N: the N-th fenced sh block of the README, as written
    awk -v wanted="$1" '/^```sh$/ { inside = 1; block++; next } /^```$/ { inside = 0 } inside && block == wanted' "$checkout/README.md"
}

wrong=0
held() { echo "ok: $*"; }
broken() {
    echo "FAILED: $*"
    wrong=1
}

# A user who may not install anything is told what to ask for, in one line.
try_without_sudo() {
    local told status=0
    told=$(inside "$1" pat "$(readme_command 1)" 2>&1) || status=$?
    if [ "$status" = 2 ] && [ "$(wc -l <<<"$told")" = 1 ] && [[ $told == *"apt-get install"*libsdl2-dev* ]]; then
        held "without sudo one sentence names the packages and the command"
    else
        broken "without sudo: status $status, $told"
    fi
    inside "$1" root "{ apt-get update -qq && apt-get install -y -qq --no-install-recommends sudo; } >/tmp/sudo.log 2>&1 || cat /tmp/sudo.log"
    echo "pat ALL=(ALL) NOPASSWD: ALL" >"$1/etc/sudoers.d/pat"
}

# There is no display: all is installed and built, and then the program says so and names what works all the same.
try_open() {
    local start=$SECONDS status=0
    inside "$1" "$2" "$(readme_command 1)" >"$1/open.out" 2>"$1/open.err" || status=$?
    if [ "$status" = 2 ] && tail -1 "$1/open.err" | grep -q 'pairstand render' && tail -1 "$1/open.err" | grep -q -- --help; then
        held "the first command installed, built and started the program in $((SECONDS - start)) s: $(tail -1 "$1/open.err")"
    else
        tail -20 "$1/open.err"
        broken "the first command, after $((SECONDS - start)) s, with status $status"
        return
    fi
    start=$SECONDS
    if inside "$1" "$2" "$(readme_command 1) render pair --out /tmp/pair.png && test -s /tmp/pair.png"; then
        held "the first command again, with arguments, drew a picture in $((SECONDS - start)) s"
    else
        broken "drawing a picture without a display"
    fi
}

try_test() {
    local start=$SECONDS
    if inside "$1" "$2" "$(readme_command 2)" >"$1/test.out" 2>&1; then
        held "the second command in $((SECONDS - start)) s: $(grep -E 'tests passed' "$1/test.out")"
    else
        tail -60 "$1/test.out"
        broken "the second command, after $((SECONDS - start)) s"
        return
    fi
    # Now there is Xvfb: the first command opens the station and keeps it open until it is ended.
    local status=0
    inside "$1" "$2" "timeout 20 xvfb-run -a -s '-screen 0 1280x800x24' $(readme_command 1)" >"$1/open.out" 2>&1 || status=$?
    if [ "$status" = 124 ]; then
        held "with a display the first command opens the station"
    else
        tail -20 "$1/open.out"
        broken "with a display the first command ended by itself, with status $status"
    fi
}

if [ "${1:-}" = can ]; then
    check_machine "${2:?release}"
    exit 0
fi
release=${1:?bookworm or trixie}
user=${2:-root}
what=${3:-both}
[ "$user" = root ] || user=pat

# From here on in namespaces of its own: whatever happens, mounts and processes end with this script.
if [ -z "${PAIRSTAND_OWN_NAMESPACE:-}" ]; then
    check_machine "$release"
    make_base "$release"
    PAIRSTAND_OWN_NAMESPACE=1 exec unshare --mount --pid --fork --kill-child "$0" "$@"
fi
root=$(mktemp -d "$cache/try-$release-XXXXXX")
trap 'umount -l "$root"/{proc,tmp,dev} 2>/dev/null; rm -rf --one-file-system "$root"' EXIT
fill "$root" "$release"
mount_all "$root"
chroot "$root" chown -R "$user:" /src
echo "$release as $user, commit $(git -c safe.directory='*' -C "$checkout" log -1 --format='%h %s')"
[ "$user" = root ] || try_without_sudo "$root"
[ "$what" = test ] || try_open "$root" "$user"
[ "$what" = open ] || try_test "$root" "$user"
exit $wrong
