# Read by every script here. Usage of a script: TOPIC.sh PROGRAM REPOSITORY
# fact TEXT starts a fact; the checks after it print what they saw when it does not hold. The script ends with 1 then.
set -u
program=$1
repository=$2
room=$(mktemp -d)
trap 'rm -rf "$room"' EXIT
cd "$room" || exit 1
broken=0
facts=0
python=/usr/bin/python3

fact() { this_fact=$1; facts=$((facts + 1)); }

fails() {
  echo "NOT SO: $this_fact"
  echo "  $1"
  sed 's/^/  stdout: /' out 2>/dev/null | head -n 12
  sed 's/^/  stderr: /' err 2>/dev/null | head -n 12
  broken=$((broken + 1))
}

# runs CODE WORDS...: the program with these words ends with CODE; leaves out and err.
runs() {
  local wanted=$1 got=0
  shift
  "$program" "$@" >out 2>err || got=$?
  [ "$got" = "$wanted" ] || fails "ended with $got, not $wanted: $*"
}
# The same with stdin from a file.
runs_with() {
  local input=$1 wanted=$2 got=0
  shift 2
  "$program" "$@" <"$input" >out 2>err || got=$?
  [ "$got" = "$wanted" ] || fails "ended with $got, not $wanted: $* < $input"
}

holds() { grep -qF -- "$2" "$1" || fails "$1 does not hold: $2"; }
holds_not() { ! grep -qF -- "$2" "$1" || fails "$1 holds: $2"; }
is_empty() { [ ! -s "$1" ] || fails "$1 is not empty"; }
is_there() { [ -e "$1" ] || fails "$1 is not there"; }
is_not_there() { [ ! -e "$1" ] && [ ! -L "$1" ] || fails "$1 is there"; }
same() { cmp -s "$1" "$2" || fails "$1 and $2 differ"; }
# Nothing but these names stands in the folder.
only() {
  local folder=$1 seen
  shift
  seen=$(ls -A "$folder" | LC_ALL=C sort | tr '\n' ' ')
  [ "$seen" = "$(printf '%s\n' "$@" | LC_ALL=C sort | tr '\n' ' ')" ] || fails "$folder holds: $seen"
}
is_json() { "$python" -m json.tool "$1" >/dev/null 2>&1 || fails "$1 is no JSON"; }
example() { printf '%s/examples/%s.json' "$repository" "$1"; }

done_with_facts() {
  echo "$facts facts, $broken of their checks broken"
  [ "$broken" = 0 ] && [ "$facts" -gt 0 ]
  exit
}
