#!/bin/bash
# Run once by the database container, on an empty data folder: the app's own role, which may use rows and owns nothing.
set -euo pipefail
psql --set=ON_ERROR_STOP=1 --set=password="$MELTSHOP_APP_PASSWORD" --set=database="$POSTGRES_DB" --set=owner="$POSTGRES_USER" \
  --username "$POSTGRES_USER" --dbname "$POSTGRES_DB" <<'SQL'
create role meltshop_app login password :'password' nosuperuser nocreatedb nocreaterole;
revoke create on schema public from public;
grant connect on database :"database" to meltshop_app;
grant usage on schema public to meltshop_app;
alter default privileges for role :"owner" in schema public grant select, insert, update, delete on tables to meltshop_app;
alter default privileges for role :"owner" in schema public grant usage, select on sequences to meltshop_app;
SQL
