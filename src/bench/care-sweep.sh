#!/usr/bin/env bash
# Times the sweep beside one SQL statement; needs `mvn test-compile` first. Prints rows for docs/care-benchmark.md.
# Usage: src/bench/care-sweep.sh [engines] [sizes] [rentals per unit]
set -euo pipefail
engines=${1:-"h2 postgres"}
sizes=${2:-"10000 100000 1000000"}
rentals=${3:-0}
folder=$(mktemp -d)
trap 'rm -rf "$folder"' EXIT
mvn -q -B -o dependency:build-classpath -Dmdep.outputFile="$folder/classpath" -Dmdep.includeScope=test >/dev/null
classpath="target/test-classes:target/classes:$(cat "$folder/classpath")"
for engine in $engines; do
  for units in $sizes; do
    java -Xmx512m -cp "$classpath" dev.lapwing.care.application.SweepBenchmark "$engine" "$units" "$rentals" "$folder" |
      grep '^|'
  done
done
