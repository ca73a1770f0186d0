#!/usr/bin/env bash
# Imports many units and rentals into a demo service of its own with a bounded heap; prints rows per second and memory.
# Needs `mvn package -Dmaven.test.skip` first. Usage: src/bench/import-rows.sh [units] [rentals per unit] [heap] [JDBC URL]
set -euo pipefail
units=${1:-100000}
rentals=${2:-3}
heap=${3:-512m}
folder=$(mktemp -d)
url=${4:-jdbc:h2:file:$folder/lapwing}
address=http://localhost:8097
java "-Xmx$heap" -Dquarkus.http.port=8097 -Dlapwing.demo=true "-Dquarkus.datasource.jdbc.url=$url" \
  "-Dlapwing.mail.folder=$folder/mail" -jar target/quarkus-app/quarkus-run.jar >"$folder/log" 2>&1 &
service=$!
trap 'kill $service; wait $service 2>/dev/null || true; rm -rf "$folder"' EXIT
call() { curl -s -u coordinator:halden "$@"; }
until call -o /dev/null -f "$address/api/depots"; do
  kill -0 $service || { cat "$folder/log"; exit 1; }
  sleep 1
done
depot=$(call "$address/api/depots" | grep -o '"code":"[^"]*"' | head -1 | cut -d'"' -f4)

awk -v n="$units" -v depot="$depot" 'BEGIN {
  print "number,kind,depot,lengthMetres,heightMetres,surface,footing,inServiceFrom"
  for (i = 1; i <= n; i++) printf "BI-%07d,van,%s,6.4,2.8,TPO,no-walk,2024-01-01\n", i, depot
}' >"$folder/units.csv"
awk -v n="$units" -v times="$rentals" 'BEGIN {
  print "unit,out,back,reference"
  for (t = 1; t <= times; t++) for (i = 1; i <= n; i++)
    printf "BI-%07d,2025-%02d-02T10:00:00Z,2025-%02d-16T10:00:00Z,R%d-%d\n", i, t, t, t, i
}' >"$folder/rentals.csv"

import() {
  local began=$(date +%s%N) answer
  local id=$(call -H 'Content-Type: text/csv' --data-binary "@$folder/$1.csv" "$address/api/imports/$1" | cut -d'"' -f4)
  until answer=$(call "$address/api/imports/$id") && ! grep -q '"state":"running"' <<<"$answer"; do sleep 1; done
  local millis=$((($(date +%s%N) - began) / 1000000))
  local rows=$(grep -o '"rows":[0-9]*' <<<"$answer" | cut -d: -f2)
  local accepted=$(grep -o '"accepted":[0-9]*' <<<"$answer" | cut -d: -f2)
  local memory=$(awk '/VmHWM/ {print int($2 / 1024)}' "/proc/$service/status")
  echo "| $2 | $rows | $accepted | $((millis / 1000)) s | $((rows * 1000 / millis)) | $memory MB |"
}
echo "| what | rows | went in | time | rows a second | most memory of the process so far |"
import units "units, new"
import rentals "rentals, new"
import units "units again"
import rentals "rentals again"
