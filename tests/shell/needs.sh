# What the tests need besides the .NET SDK, found or installed. Sourced by tests/run.

# The newest PostgreSQL server's program folder, or nothing.
postgres_programs() {
  local found
  found=$(ls -d /usr/lib/postgresql/*/bin/initdb 2>/dev/null | sort -V | tail -n 1 || true)
  [ -n "$found" ] || found=$(command -v initdb || true)
  [ -z "$found" ] || dirname "$(readlink -f "$found")"
}

# The browser's path, or nothing. MELTSHOP_TEST_CHROMIUM wins.
chromium_program() {
  local name
  if [ -n "${MELTSHOP_TEST_CHROMIUM:-}" ]; then echo "$MELTSHOP_TEST_CHROMIUM"; return; fi
  for name in chromium chromium-browser google-chrome; do
    command -v "$name" && return
  done
  true
}

has_fonts() { ls /usr/share/fonts/truetype/liberation*/LiberationSans-Regular.ttf >/dev/null 2>&1; }

# Prints the Debian packages that are missing, one a line.
missing_packages() {
  [ -n "$(postgres_programs)" ] || { apt-cache show postgresql-15 >/dev/null 2>&1 && echo postgresql-15 || echo postgresql; }
  [ -n "$(chromium_program)" ] || echo chromium
  has_fonts || echo fonts-liberation
  command -v glpsol >/dev/null || echo glpk-utils
  # A test reads the list of committed files.
  command -v git >/dev/null || echo git
}

apt_get_once() {
  $as_root env DEBIAN_FRONTEND=noninteractive apt-get -qq -o DPkg::Lock::Timeout=120 "$@" >>"$apt_log" 2>&1
}

# Another program may hold the package database for a while: wait and try again.
apt_get() {
  local attempt
  for attempt in 1 2 3 4 5 6; do
    if apt_get_once "$@"; then return 0; fi
    tail -n 3 "$apt_log" | grep -qi lock || break
    sleep 10
  done
  tail -n 20 "$apt_log" >&2
  return 1
}

install_missing() {
  local as_root='' apt_log="$scratch/apt.log" packages
  command -v apt-get >/dev/null || return 1
  if [ "$(id -u)" -ne 0 ]; then
    sudo -n true 2>/dev/null || return 1
    as_root='sudo -n'
  fi
  ls /var/lib/apt/lists/*Packages* >/dev/null 2>&1 || apt_get update || return 1
  packages=$(missing_packages | tr '\n' ' ')
  echo "Installing $packages"
  # Lists that are old name versions that are gone: fetch them anew before giving up.
  apt_get_once install -y --no-install-recommends $packages || { apt_get update && apt_get install -y --no-install-recommends $packages; }
}

need_packages() {
  local missing
  missing=$(missing_packages | tr '\n' ' ')
  [ -n "$missing" ] || return 0
  install_missing || true
  missing=$(missing_packages | tr '\n' ' ')
  [ -z "$missing" ] && return 0
  echo "Missing, and this script may not or could not install it. Install it, then run the tests again:" >&2
  echo "  sudo apt-get update && sudo apt-get install $missing" >&2
  echo "On another system: PostgreSQL 15 or newer (server programs), Chromium, the Liberation fonts, GLPK (glpsol), git." >&2
  return 1
}

need_sdk() {
  if ! command -v dotnet >/dev/null; then
    echo "Missing: the .NET 10 SDK (the command dotnet). Install it as its maker describes for this system." >&2
    return 1
  fi
  if ! dotnet --version >/dev/null 2>&1; then
    echo "The installed .NET SDK does not serve this project:" >&2
    dotnet --version >&2 || true
    return 1
  fi
}

need_everything() {
  need_packages || exit 1
  need_sdk || exit 1
  chromium=$(chromium_program)
  if [ ! -x "$chromium" ]; then
    echo "MELTSHOP_TEST_CHROMIUM names $chromium, which is no program." >&2
    exit 1
  fi
}
