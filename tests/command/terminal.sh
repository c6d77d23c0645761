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

done_with_facts
