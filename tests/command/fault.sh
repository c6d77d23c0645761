# Our own fault, and being told to stop.
. "$(dirname "$0")/tools.sh"

# started WORDS...: the program, waiting for a job on stdin; its number in $process.
started() {
  rm -f pipe && mkfifo pipe
  "$program" "$@" <pipe >out 2>err &
  process=$!
  exec 9>pipe
  sleep 0.2
}

fact "a failed check ends with 70, says that it is our fault and leaves no set"
for signal in ABRT ILL TRAP SEGV; do
  started plan - --out set
  kill -s $signal $process
  got=0
  wait $process || got=$?
  exec 9>&-
  [ "$got" = 70 ] || fails "$signal ended with $got"
  holds err "our fault"
  is_not_there set
  only . pipe out err
done

fact "a reader of stdout that has gone ends with 4, not with a signal"
{ "$program" look "$(example kiln-house)" --json --no-offers 2>err; echo $? >code; } | true
[ "$(cat code)" = 4 ] || fails "ended with $(cat code)"

done_with_facts
