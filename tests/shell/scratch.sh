# Where the tests write what is thrown away again. Sourced by tests/run.

# runs_programs FOLDER: whether a script there may be run.
runs_programs() {
  local probe code=0
  probe=$(mktemp "$1/meltshop-probe.XXXXXX" 2>/dev/null) || return 1
  printf '#!/bin/sh\nexit 0\n' >"$probe"
  chmod 700 "$probe"
  "$probe" 2>/dev/null || code=1
  rm -f "$probe"
  return "$code"
}

# The folder to make the scratch folder in. A disk is waited for at each commit and at each of the four hundred files of a
# PostgreSQL database, so it is in memory where there is plenty. MELTSHOP_TEST_SCRATCH wins.
scratch_parent() {
  local memory=/dev/shm room free
  if [ -n "${MELTSHOP_TEST_SCRATCH:-}" ]; then echo "$MELTSHOP_TEST_SCRATCH"; return; fi
  room=$(df --output=avail -k "$memory" 2>/dev/null | tail -n 1 || true)
  free=$(awk '/^MemAvailable:/ { print $2 }' /proc/meminfo 2>/dev/null || true)
  if [ "$(stat -f -c %T "$memory" 2>/dev/null || true)" = tmpfs ] && [ "${room:-0}" -ge 3000000 ] && [ "${free:-0}" -ge 8000000 ] && runs_programs "$memory"; then
    echo "$memory"
  else
    echo "${TMPDIR:-/tmp}"
  fi
}
