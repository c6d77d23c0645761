# Killed at every change of the file system, on a full disk, and several runs on one folder at once.
# The third argument is what is preloaded to be killed: kill_at.c.
. "$(dirname "$0")/tools.sh"
kill_at=$3
job=$(example wash-stand)
quiet="--quiet --no-offers"
new=$(example glaze-store)

# killed AT WORDS...: the program, killed before its change number AT; how it ended in $code.
killed() {
  at=$1 code=0
  shift
  { KILL_AT=$at LD_PRELOAD=$kill_at ASAN_OPTIONS=verify_asan_link_order=0 "$program" "$@" >out 2>err; } 2>killed || code=$?
  [ "$code" = 0 ] || [ "$code" = 137 ] || fails "killed before change $at it ended with $code: $*"
}

# is_one_of FOLDER SETS...: it holds the same as one of these sets; "none": it may be absent.
is_one_of() {
  local seen=$1 each
  shift
  for each in "$@"; do
    [ "$each" = none ] && [ ! -e "$seen" ] && return
    diff -r "$each" "$seen" >/dev/null 2>&1 && return
  done
  fails "killed before change $at, $seen is none of: $*"
}

# A plan after the kill works and leaves nothing but the set and the one before it.
works_again() {
  runs 0 plan "$new" --out work/set $quiet
  is_one_of work/set new
  [ "$(ls -A work | grep -vxE 'set|set\.previous')" = "" ] || fails "killed before change $at, this stays: $(ls -A work)"
}

# killed_everywhere PREPARE CHECK: before each change in turn, from the first to the last.
killed_everywhere() {
  local step=0
  code=137
  while [ "$code" = 137 ] && [ "$step" -lt 500 ]; do
    step=$((step + 1))
    rm -rf work && mkdir work && $1
    killed "$step" plan "$new" --out work/set $quiet
    $2
    works_again
  done
  [ "$code" = 0 ] && [ "$step" -gt 20 ] || fails "$step steps, then ended with $code"
}

for each in old:wash-stand older:clay-store new:glaze-store; do
  runs 0 plan "$(example "${each#*:}")" --out "${each%:*}" $quiet
done

fact "plan killed at any change leaves whole sets, and the next plan works and takes away what was left"
two_sets() { cp -r old work/set && cp -r older work/set.previous; }
whole_sets() { is_one_of work/set old new && is_one_of work/set.previous older old new; }
killed_everywhere two_sets whole_sets

fact "the same where no set was before"
no_set() { :; }
new_or_none() { is_one_of work/set none new; is_not_there work/set.previous; }
killed_everywhere no_set new_or_none

fact "a file system that knows plain renames only may lose sight of a set for a moment, but no set is lost"
export PLAIN_RENAMES=1
whole_or_previous() {
  is_one_of work/set old new none
  is_one_of work/set.previous older old none
  [ -e work/set ] || is_one_of work/set.previous old
}
killed_everywhere two_sets whole_or_previous
unset PLAIN_RENAMES

fact "a torso of an older set that was being removed blocks no plan"
for torso in marker answer.json nothing; do
  rm -rf work && mkdir work && two_sets
  case $torso in
    marker) rm work/set.previous/answer.json ;;
    answer.json) rm work/set.previous/stringcourse-set.json work/set.previous/job.json ;;
    nothing) rm -r work/set.previous/* ;;
  esac
  works_again
  is_one_of work/set.previous old
done

fact "what someone else wrote into a hidden folder of ours stays"
rm -rf work && mkdir -p work/.stringcourse-writing-abcdef/drawings
echo mine >work/.stringcourse-writing-abcdef/drawings/notes.txt
echo ours >work/.stringcourse-writing-abcdef/answer.json
runs 0 plan "$new" --out work/set $quiet
only work/.stringcourse-writing-abcdef drawings
[ "$(cat work/.stringcourse-writing-abcdef/drawings/notes.txt)" = mine ] || fails "notes.txt is lost"

fact "runs at once on one folder all end well, and the set and the one before it stand"
for first in no_set two_sets; do
  rm -rf work && mkdir work && $first
  runners=()
  for run in 1 2 3 4 5 6 7 8; do
    "$program" plan "$new" --out work/set $quiet >out 2>"err$run" &
    runners+=($!)
  done
  cat /dev/null >err
  for run in "${runners[@]}"; do
    got=0
    wait "$run" || got=$?
    [ "$got" = 0 ] || { cat err? >err; fails "a run ended with $got"; }
  done
  only work set set.previous
  is_one_of work/set new
  is_one_of work/set.previous new
done

fact "a run at once on the same folder is not taken for one that was killed"
rm -rf work && mkdir work && mkfifo pipe
"$program" plan "$job" --out work/set $quiet >out 2>err &
slow=$!
runs 0 plan "$new" --out work/set $quiet
wait $slow || fails "the other run ended with $?"
only work set set.previous

fact "begin and merge killed at any change leave the whole file or none"
"$program" begin --length "24'" --width "16'" --height "8'" >wanted.json 2>err
"$program" merge "$job" "$job" >merged.json 2>err
for verb in begin merge; do
  case $verb in
    begin) words=(begin --length "24'" --width "16'" --height "8'") whole=wanted.json ;;
    merge) words=(merge "$job" "$job") whole=merged.json ;;
  esac
  code=137 step=0
  while [ "$code" = 137 ] && [ "$step" -lt 50 ]; do
    step=$((step + 1))
    rm -rf work && mkdir work
    killed "$step" "${words[@]}" --out work/out.json
    [ ! -e work/out.json ] || same work/out.json $whole
  done
  [ "$code" = 0 ] && [ "$step" -gt 2 ] || fails "$verb: $step steps, then ended with $code"
  rm -rf work && mkdir work
  killed 3 "${words[@]}" --out work/out.json
  runs 0 "${words[@]}" --out work/again.json
  [ "$(ls -A work | grep -c stringcourse)" = 0 ] || fails "$verb left $(ls -A work)"
done

fact "begin and merge leave nothing on a full disk"
rm -rf work && mkdir work
full() { ( ulimit -f 0 && exec "$program" "$@" >/dev/null 2>&1 ); [ "$?" = 4 ] || fails "did not end with 4: $*"; }
full begin --length "24'" --width "16'" --height "8'" --out work/out.json
full merge "$job" "$job" --out work/out.json
[ -z "$(ls -A work)" ] || fails "work holds $(ls -A work)"

done_with_facts
