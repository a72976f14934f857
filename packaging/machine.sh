# SPDX-FileCopyrightText: The Remate authors
# SPDX-License-Identifier: Apache-2.0
# shellcheck shell=bash disable=SC2034
# What packaging/start and packaging/check share: packages of Debian 12, and a build of one type in one folder.

root=$(cd "$(dirname "${BASH_SOURCE[0]}")/.." && pwd)

# To compile the program, and to run it: platform plugins and SVG icons are loaded, not linked.
program_packages=(
    cmake ninja-build g++ pkg-config
    qt6-base-dev qt6-svg-dev qt6-tools-dev qt6-tools-dev-tools qt6-l10n-tools
    libsodium-dev libssl-dev libsqlite3-dev libzip-dev zlib1g-dev libqpdf-dev libfontconfig-dev libqrencode-dev libsimdjson-dev libspdlog-dev libexpected-dev libcli11-dev libboost-dev
    qt6-qpa-plugins libqt6svg6 fonts-dejavu-core
)

# Only the tests need these.
test_packages=(
    librapidcheck-dev units
    # check a record package without the program, and by one that was written from its description alone
    python3-minimal unzip openssl libcryptx-perl
    # whether every text is translated
    python3
    # read the record back: as text, as a tree, and as an archive's validator does
    qpdf poppler-utils default-jre-headless libpdfbox2-java libjaxb-api-java libactivation-java
    # read labels back as a scanner does
    zbar-tools
    # work the program as an assistive tool does: a display, its windows' keyboard, the bus between them
    xvfb matchbox-window-manager dbus at-spi2-core python3-gi gir1.2-atspi-2.0
    # what a desktop and a manual ask of the files that are installed
    appstream desktop-file-utils shared-mime-info mandoc
)

# Only the checkers and sanitizers of packaging/check need these. All of one LLVM, that of Debian's clang.
checker_packages=(
    clang clang-tidy clazy libclang-rt-14-dev lld llvm-14 shellcheck
)

say() { printf '\n== %s\n' "$*"; }

fail() {
    printf 'remate: %s\n' "$*" >&2
    exit 1
}

# Prints those of the named packages that are not installed.
missing_packages() {
    local package state
    for package in "$@"; do
        # shellcheck disable=SC2016 # the format is dpkg-query's, not the shell's
        state=$(dpkg-query --show --showformat='${db:Status-Abbrev}' "$package" 2>/dev/null || true)
        [[ $state == ii* ]] || printf '%s\n' "$package"
    done
}

# Installs those of the named packages that are missing; says nothing and asks nobody when none is.
install_missing() {
    command -v dpkg-query >/dev/null || fail "this is not a Debian system. Install the equivalents of: $*"
    local missing as_root=()
    mapfile -t missing < <(missing_packages "$@")
    ((${#missing[@]})) || return 0

    if ((EUID != 0)); then
        command -v sudo >/dev/null \
            || fail "these packages are missing, and neither root nor sudo is at hand. Ask an administrator for:
    apt-get install ${missing[*]}"
        as_root=(sudo)
    fi
    say "Installing ${missing[*]}"
    local apt=("${as_root[@]}" env DEBIAN_FRONTEND=noninteractive apt-get -o DPkg::Lock::Timeout=300 -qq)
    "${apt[@]}" update || fail "the package lists could not be fetched. Check the network and /etc/apt, then run this again."
    "${apt[@]}" install --yes --no-install-recommends "${missing[@]}" >/dev/null \
        || fail "not all packages could be installed. The lines above say why; run this again when it is mended."
}

# configure FOLDER TYPE [CMAKE OPTION …]
configure() {
    local folder=$1 type=$2 options=(-DREMATE_PRECOMPILE=ON "${@:3}")
    command -v ccache >/dev/null && options+=(-DCMAKE_CXX_COMPILER_LAUNCHER=ccache)

    mkdir -p "$folder"
    cmake -S "$root" -B "$folder" -G Ninja -DCMAKE_BUILD_TYPE="$type" "${options[@]}" >"$folder/configure.log" 2>&1 \
        || { cat "$folder/configure.log" >&2; fail "the build could not be configured"; }
}

# compile FOLDER TARGET …: says how far it is to a person, and to a log only what went wrong
compile() {
    local quiet=()
    [[ -t 1 ]] || quiet=(-- --quiet)
    cmake --build "$1" --parallel "$(nproc)" --target "${@:2}" "${quiet[@]}"
}

# build FOLDER TYPE [CMAKE OPTION …] -- TARGET …
build() {
    local folder=$1 type=$2 options=()
    shift 2
    while [[ $1 != -- ]]; do
        options+=("$1")
        shift
    done
    say "Building ($type) in ${folder#"$root"/}"
    configure "$folder" "$type" "${options[@]}"
    compile "$folder" "${@:2}"
}
