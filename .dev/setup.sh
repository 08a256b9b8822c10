# Owns what `.dev/serve` and `.dev/test` need before they can start: the tools, each at its pinned version.
# To be sourced. It installs only what is missing, and inside the project (`.tools/`), so that nothing else
# on the machine changes; the exceptions are the Rust target, which rustup keeps, and Debian's packages.

cd "$(dirname "${BASH_SOURCE[0]}")/.."

trunk_version=0.21.14
wasm_target=wasm32-unknown-unknown
# The command line tool must match the library to the last digit, so the lock file decides.
wasm_bindgen_version=$(sed -n '/^name = "wasm-bindgen"$/{n;s/version = "\(.*\)"/\1/p}' Cargo.lock)

export PATH="$PWD/.tools/bin:$PWD/.tools/node_modules/.bin:$PATH"
# Trunk reads this variable as its own flag and refuses the value 1.
unset NO_COLOR

step_number=0
step_count=0

# Announces the next of `step_count` steps.
step() {
  step_number=$((step_number + 1))
  printf '[%d/%d] %s\n' "$step_number" "$step_count" "$*"
}

fail() {
  printf 'stopped: %s\n' "$*" >&2
  exit 1
}

# Installs Debian packages, given as command:package pairs, where the command is not there yet.
need_debian_packages() {
  local missing=() pair
  for pair in "$@"; do
    command -v "${pair%%:*}" >/dev/null || missing+=("${pair#*:}")
  done
  [ ${#missing[@]} -eq 0 ] && return
  command -v apt-get >/dev/null || fail "please install: ${missing[*]}"
  local as_root=()
  if [ "$(id -u)" -ne 0 ]; then
    command -v sudo >/dev/null || fail "please run as root: apt-get install ${missing[*]}"
    as_root=(sudo)
  fi
  printf '      installing from Debian: %s\n' "${missing[*]}"
  export DEBIAN_FRONTEND=noninteractive
  "${as_root[@]}" apt-get -qq update
  "${as_root[@]}" apt-get -qq install --yes --no-install-recommends "${missing[@]}" >/dev/null
}

# Makes the Rust of rust-toolchain.toml, with the named components and the wasm target, the one in use.
need_rust() {
  command -v rustup >/dev/null || fail "please install Rust with rustup (https://rustup.rs)"
  need_debian_packages cc:gcc cc:libc6-dev
  local wanted name component
  wanted=$(sed -n 's/^channel = "\(.*\)"/\1/p' rust-toolchain.toml)
  if ! rustup run "$wanted" rustc --version >/dev/null 2>&1; then
    # The same version often goes by another name, `stable` above all: then there is nothing to fetch.
    while read -r name _; do
      if rustup run "$name" rustc --version 2>/dev/null | grep -F "rustc $wanted " >/dev/null; then
        export RUSTUP_TOOLCHAIN=$name
        break
      fi
    done < <(rustup toolchain list)
    if [ -z "${RUSTUP_TOOLCHAIN:-}" ]; then
      printf '      installing Rust %s\n' "$wanted"
      rustup toolchain install "$wanted" --profile minimal
    fi
  fi
  local in_use=${RUSTUP_TOOLCHAIN:-$wanted}
  if ! rustup target list --toolchain "$in_use" --installed | grep -x "$wasm_target" >/dev/null; then
    printf '      adding the target %s\n' "$wasm_target"
    rustup target add --toolchain "$in_use" "$wasm_target"
  fi
  for component in "$@"; do
    rustup component list --toolchain "$in_use" --installed | grep "^$component" >/dev/null ||
      rustup component add --toolchain "$in_use" "$component"
  done
}

# Trunk builds the page without the network, so the crates are fetched before it starts: those of this machine for
# the first picture of the page.
need_crates() {
  local this_machine
  this_machine=$(rustc -vV | sed -n 's/^host: //p')
  cargo fetch --quiet --locked --target "$wasm_target" --target "$this_machine"
  smaller cargo fetch --quiet --locked --target "$wasm_target"
}

# Runs a command so that what it compiles for the browser has the standard library compiled with it, for size, and
# stops at a panic without the words and places of one, which nobody sees there: a tenth of the page. The pinned
# compiler does that only if it is told that it may.
smaller() {
  RUSTC_BOOTSTRAP=1 CARGO_UNSTABLE_BUILD_STD=std,panic_abort CARGO_UNSTABLE_BUILD_STD_FEATURES= \
    CARGO_TARGET_WASM32_UNKNOWN_UNKNOWN_RUSTFLAGS="-Zunstable-options -Cpanic=immediate-abort -Zlocation-detail=none -Zfmt-debug=none" \
    "$@"
}

# Builds dist/, the page as it is released.
build_page() {
  smaller trunk build --release
}

# Is this command there, in exactly this version?
is_version() {
  [ "$("$1" --version 2>/dev/null | cut -d ' ' -f 2)" = "$2" ]
}

# Builds a tool into `.tools/bin`: build_tool CRATE VERSION [FLAG...]. Unoptimised and without its network
# features it builds in a third of the time, and the page is built no slower: cargo and wasm-opt do the work.
build_tool() {
  local crate=$1 version=$2
  shift 2
  local flags=("$@")
  [ -t 1 ] || flags+=(--quiet)
  printf '      building %s %s, once; this takes a few minutes\n' "$crate" "$version"
  CARGO_TARGET_DIR="$PWD/.tools/build" CARGO_PROFILE_DEV_DEBUG=0 CARGO_PROFILE_DEV_OPT_LEVEL=0 CARGO_INCREMENTAL=0 \
    CARGO_RESOLVER_INCOMPATIBLE_RUST_VERSIONS=fallback \
    cargo install "$crate" --version "=$version" --root .tools --force --debug --no-default-features "${flags[@]}"
}

need_trunk() {
  is_version trunk "$trunk_version" || build_tool trunk "$trunk_version" --locked
}

# Without `--locked`, so that cargo may choose other versions than those of the lock file it was published with.
need_wasm_bindgen() {
  is_version wasm-bindgen "$wasm_bindgen_version" && is_version wasm-bindgen-test-runner "$wasm_bindgen_version" ||
    build_tool wasm-bindgen-cli "$wasm_bindgen_version"
}

# The shrinker of the wasm file comes from npm, because Debian's cannot read what today's wasm-bindgen writes.
need_wasm_opt() {
  command -v npm >/dev/null || fail "please install Node 18 or newer, with npm"
  cmp -s .tools/package-lock.json .tools/node_modules/.installed-lock.json && return
  npm ci --prefix .tools --no-audit --no-fund --loglevel=error
  cp .tools/package-lock.json .tools/node_modules/.installed-lock.json
}

need_browser() {
  # In one go, because a driver drives only the browser of its own version. Poppler measures what is printed, ZBar
  # reads its codes, and nginx serves the page as a host does.
  need_debian_packages chromium:chromium chromedriver:chromium-driver \
    pdftocairo:poppler-utils zbarimg:zbar-tools nginx:nginx-light
}
