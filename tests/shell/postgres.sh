# A PostgreSQL server of the tests' own: new data, a free port on loopback, gone afterwards. Sourced by tests/run.
postgres_data=''
postgres_connection=''

# The server refuses to run as root: root runs it as the package's user.
postgres_as() {
  if [ "$(id -u)" -eq 0 ]; then runuser -u postgres -- "$@"; else "$@"; fi
}

port_is_free() { ! (exec 3<>"/dev/tcp/127.0.0.1/$1") 2>/dev/null; }

# postgres_start FOLDER: starts the server with its data below FOLDER and sets postgres_connection.
postgres_start() {
  local home="$1/postgres" programs attempt port
  programs=$(postgres_programs)
  chmod 711 "$1"
  mkdir "$home"
  [ "$(id -u)" -ne 0 ] || chown postgres "$home"
  if ! postgres_as test -x "$home"; then
    echo "The user postgres cannot enter $home: set MELTSHOP_TEST_SCRATCH to a folder that everyone may enter, such as /tmp." >&2
    return 1
  fi
  postgres_as "$programs/initdb" --pgdata "$home/data" --auth trust --username postgres --no-sync \
    --encoding UTF8 --locale C.UTF-8 >"$1/initdb.log" 2>&1 || { cat "$1/initdb.log" >&2; return 1; }
  for attempt in 1 2 3 4 5 6 7 8 9 10; do
    port=$((20000 + RANDOM % 12000))
    port_is_free "$port" || continue
    # Nothing here has to survive a power cut, so the disk is not waited for. Nothing is vacuumed or analyzed behind the tests' back either: how a
    # statement is answered would depend on how long the tests before it took.
    if postgres_as "$programs/pg_ctl" --pgdata "$home/data" --wait --timeout 600 --silent --log "$home/log" start --options \
      "-p $port -c listen_addresses=127.0.0.1 -c unix_socket_directories=$home -c max_connections=300 -c fsync=off -c synchronous_commit=off -c full_page_writes=off -c autovacuum=off" \
      >/dev/null 2>&1; then
      postgres_data="$home/data"
      postgres_connection="Host=127.0.0.1;Port=$port;Username=postgres;Database=postgres"
      return 0
    fi
  done
  echo "PostgreSQL did not start:" >&2
  postgres_as cat "$home/log" >&2 || true
  return 1
}

# Stops the server that postgres_start started, by the process id it wrote down, and no other.
postgres_stop() {
  local process
  [ -n "$postgres_data" ] || return 0
  process=$(head -n 1 "$postgres_data/postmaster.pid" 2>/dev/null || true)
  postgres_data=''
  [ -n "$process" ] || return 0
  kill -INT "$process" 2>/dev/null || return 0
  local waited
  for waited in $(seq 100); do
    kill -0 "$process" 2>/dev/null || return 0
    sleep 0.1
  done
  kill -QUIT "$process" 2>/dev/null || true
}
