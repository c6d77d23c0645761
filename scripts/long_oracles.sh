#!/bin/sh
# The long comparison of the bond solver with its oracles: 300 walls by CBC, 150 by GLPK, 1,000 tiny ones by brute force.
# Writes docs/oracle-results.md. Took 5 minutes on an idle core, 35 on a busy one. Usage: scripts/long_oracles.sh [build directory]
set -eu
cd "$(dirname "$0")/.."
build=${1:-build/release}
ninja -C "$build" test_oracle_agree >/dev/null
commit=$(git rev-parse --short HEAD)
git diff --quiet HEAD -- engine/bond tests/oracle || commit="$commit with changes in engine/bond or tests/oracle"
log=$(mktemp)
status=0
"$build/test_oracle_agree" --long >"$log" 2>&1 || status=$?
{
  echo "# The bond solver against its oracles: the long run"
  echo
  echo "Written by scripts/long_oracles.sh on $(date -u +%Y-%m-%d); commit $commit."
  echo
  echo "Every wall's least cost is compared term by term, and whether it can be laid at all; the solver's layout is"
  echo "judged from its pieces. What the walls are: tests/oracle/random_panels.hpp. The seed of each wall is in the log"
  echo "of a failure; a wall is passed over when its model is too large, which depends on the wall alone."
  echo "The largest model counts those too that were seen to have no layout while they were built, whatever their size."
  echo
  if [ "$status" -eq 0 ]; then echo "Result: all agree."; else echo "Result: THE RUN FAILED; see below."; fi
  echo
  sed -n 's/^FIGURES /- /p' "$log"
  if [ "$status" -ne 0 ]; then
    echo
    grep -E '^(\[  FAILED|seed |solver:|oracle:|the oracle|the solver)' "$log" | sed 's/^/    /'
  fi
} >docs/oracle-results.md
rm -f "$log"
exit "$status"
