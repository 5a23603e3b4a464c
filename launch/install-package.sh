# Installs a Debian package without asking. Sourced: `install_package NAME PURPOSE` returns not 0 where that cannot be done.

install_package() {
    command -v apt-get >/dev/null 2>&1 || return 1
    as_root=
    if [ "$(id -u)" != 0 ]; then
        command -v sudo >/dev/null 2>&1 || return 1
        as_root="sudo DEBIAN_FRONTEND=noninteractive"
    fi
    echo "Installing Debian's $1 package for $2."
    $as_root apt-get update -q </dev/null &&
        DEBIAN_FRONTEND=noninteractive $as_root apt-get install -q -y --no-install-recommends "$1" </dev/null
}
