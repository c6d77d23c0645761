# On a terminal: bold headings, unless NO_COLOR or a dumb terminal says otherwise.
. "$(dirname "$0")/tools.sh"

# on_terminal: runs the program with a pseudo-terminal as stdout; leaves what it printed in out.
on_terminal() {
  "$python" - "$program" "$@" >out 2>err <<'END'
import os, pty, sys
# An empty answer of the reader would hang up on the program while it still prints.
status = pty.spawn(sys.argv[1:], lambda descriptor: os.read(descriptor, 65536), lambda descriptor: b"")
sys.exit(os.waitstatus_to_exitcode(status))
END
}
# told_on_terminal: runs the program with a pseudo-terminal as stderr alone; stdout in out, what was told in told.
told_on_terminal() {
  "$python" - "$program" "$@" >told 2>err <<'END'
import os, pty, shlex, sys
line = " ".join(shlex.quote(word) for word in sys.argv[1:]) + " >out"
status = pty.spawn(["/bin/sh", "-c", line], lambda descriptor: os.read(descriptor, 65536), lambda descriptor: b"")
sys.exit(os.waitstatus_to_exitcode(status))
END
}
job=$(example clay-store)
bold=$(printf '\033[1m')

fact "headings are bold on a terminal"
TERM=xterm on_terminal look "$job" --no-offers </dev/null || fails "it did not end well"
holds out "$bold"

fact "NO_COLOR and a dumb terminal leave them plain"
TERM=xterm NO_COLOR=1 on_terminal look "$job" --no-offers </dev/null
holds_not out "$bold"
holds out "Clay store"
TERM=dumb on_terminal look "$job" --no-offers </dev/null
holds_not out "$bold"
holds out "Clay store"

fact "who watches is told the first layout, then what the search made of it; the line is wiped, and stdout is the same"
shed=$(example hillside-shed)
runs 0 look "$shed"
cp out piped
TERM=xterm told_on_terminal look "$shed" </dev/null || fails "it did not end well"
same out piped
holds told "laying: first layout"
holds told "looking for a better one"
holds told "proven"
tail -c 4 told | od -An -c | grep -q '033 *\[ *K' || fails "the line is not wiped: $(tail -c 40 told | od -An -c)"

fact "the verdict that is told is the answer's"
runs 0 look "$shed" --json --no-offers
verdict=$("$python" -c 'import json; a = json.load(open("out")); print(a["cost"]["cuts"], "saw cuts,", "proven" if a["proof"]["proven"] else "not proven")')
holds told "$verdict"

fact "nothing is told in a pipe, on a dumb terminal, or where --quiet asks for silence"
runs 0 look "$shed"
is_empty err
TERM=dumb told_on_terminal look "$shed" --no-offers </dev/null
is_empty told
TERM=xterm told_on_terminal plan "$shed" --out quiet-set --quiet --no-offers </dev/null
is_empty told

done_with_facts
