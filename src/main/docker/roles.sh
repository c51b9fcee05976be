#!/bin/sh
# Runs once, on an empty database folder: one role owns the tables, another one is the application.
set -eu
psql --username postgres --set ON_ERROR_STOP=1 --set owner_password="$OWNER_PASSWORD" --set app_password="$APP_PASSWORD" <<'SQL'
create role loomwright_owner login password :'owner_password';
create role loomwright_app login password :'app_password';
create database loomwright owner loomwright_owner;
revoke all on database loomwright from public;
grant connect on database loomwright to loomwright_app;
SQL
