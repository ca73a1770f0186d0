#!/usr/bin/env bash
# Sends reports one after another to a running demo and counts the answers by status.
# Usage: src/bench/thousand-reports.sh [count] [address]
set -euo pipefail
count=${1:-1000}
address=${2:-http://localhost:8080}
call() { curl -s -u desk:halden -H 'Content-Type: application/json' "$@"; }

units=$(call "$address/api/units?limit=60" | grep -o '"number":"[^"]*"' | cut -d'"' -f4)
set -- $units
notes=(
  "scraped the top along an oak limb at the site"
  "all fine, lovely trip, the tank is empty"
  "there was a bang somewhere on the way, not sure if we touched anything"
  "no branches touched the roof, but the step is bent"
)
began=$(date +%s%N)
for ((i = 0; i < count; i++)); do
  unit=${@:$((i % $# + 1)):1}
  call -o /dev/null -w '%{http_code}\n' -H "Idempotency-Key: thousand-$began-$i" "$address/api/return-reports" \
    -d "{\"unit\":\"$unit\",\"returnedAt\":\"2026-01-10T09:00:00Z\",\"note\":\"${notes[$((i % 4))]} ($i)\"}"
done | sort | uniq -c
echo "$count reports in $((($(date +%s%N) - began) / 1000000)) ms"
