#!/bin/sh
# The long comparisons, written to docs/oracle-results.md:
# - the bond solver with its oracles: 300 walls by CBC, 150 by GLPK, 1,000 tiny ones by brute force (5 minutes on an idle
#   core), and whole small buildings: 300 by GLPK, 60 by CBC (a quarter of an hour);
# - 100,000 buildings that somebody would build, a third of each grain, with a small search, and one in ten of them as
#   while dragged: every answer certified (four hours of one core; as many at a time as there are cores).
# STRINGCOURSE_SENSIBLE: another number of buildings; STRINGCOURSE_FIRST_SEED: other ones.
# Usage: scripts/long_oracles.sh [build directory]
set -eu
cd "$(dirname "$0")/.."
build=${1:-build/release}
buildings=${STRINGCOURSE_SENSIBLE:-100000} first=${STRINGCOURSE_FIRST_SEED:-1}
unset STRINGCOURSE_SENSIBLE STRINGCOURSE_FIRST_SEED
ninja -C "$build" test_oracle_agree test_oracle_small_buildings test_sensible >/dev/null
commit=$(git rev-parse --short HEAD)
git diff --quiet HEAD -- engine/bond tests || commit="$commit with changes in engine/bond or tests"
logs=$(mktemp -d)
status=0

# judged NAME PROGRAM...: runs it; its log is NAME's.
judged() {
  name=$1
  shift
  "$@" >"$logs/$name" 2>&1 || { status=1; echo "$name" >>"$logs/failed"; }
}
# sensible FIRST COUNT TESTS: those buildings of every grain.
sensible() {
  STRINGCOURSE_FIRST_SEED=$1 STRINGCOURSE_SENSIBLE=$2 "$build/test_sensible" --gtest_filter="Sensible.*$3" \
    >"$logs/sensible-$3-$1" 2>&1 || echo "sensible-$3-$1" >>"$logs/failed"
}

judged walls "$build/test_oracle_agree" --long
judged small-buildings "$build/test_oracle_small_buildings" --long
cores=$(nproc)
each=$(((buildings / 3 + cores - 1) / cores)) share=0
while [ "$share" -lt "$cores" ]; do
  from=$((first + share * each))
  { sensible "$from" "$each" Laid; sensible "$from" "$((each / 10 + 1))" Dragged; } &
  share=$((share + 1))
done
wait
[ ! -s "$logs/failed" ] || status=1

{
  echo "# Walls and buildings against oracles and the certificate: the long run"
  echo
  echo "Written by scripts/long_oracles.sh on $(date -u +%Y-%m-%d); commit $commit."
  echo
  if [ "$status" -eq 0 ]; then echo "Result: all agree."; else echo "Result: THE RUN FAILED; see below."; fi
  echo
  echo "## Walls"
  echo
  echo "Every wall's least cost is compared term by term, and whether it can be laid at all; the solver's layout is"
  echo "judged from its pieces. What the walls are: tests/oracle/random_panels.hpp. The seed of each wall is in the log"
  echo "of a failure; a wall is passed over when its model is too large, which depends on the wall alone."
  echo "The largest model counts those too that were seen to have no layout while they were built, whatever their size."
  echo
  sed -n 's/^FIGURES /- /p' "$logs/walls"
  echo
  echo "## Whole small buildings off the grid"
  echo
  echo "Four sides, one opening (tests/oracle/small_buildings.hpp). Short laps, cuts and short pieces are equal where ours"
  echo "is proven; nothing that keeps every rule costs less than the model's least, and no bound of ours is above it; where"
  echo "the model finds no layout by every rule, ours says which it gives up."
  echo
  sed -n 's/^FIGURES whole buildings, /- /p' "$logs/small-buildings"
  echo
  echo "## Buildings that somebody would build"
  echo
  echo "Every answer is certified (tests/sensible). One line for each share of the seeds."
  echo
  cat "$logs"/sensible-* 2>/dev/null | sed -n 's/^FIGURES /- /p' | sort
  if [ "$status" -ne 0 ]; then
    echo
    for name in $(sort -u "$logs/failed"); do
      echo "    $name"
      grep -E '^(\[  FAILED|seed |grain |solver:|oracle:|the oracle|the solver|bound:|laid:|model:)' "$logs/$name" | sed 's/^/    /'
    done
  fi
} >docs/oracle-results.md
rm -r "$logs"
exit "$status"
