# On a terminal: bold headings, unless NO_COLOR or a dumb terminal says otherwise.
. "$(dirname "$0")/tools.sh"

# on_terminal: runs the program with a pseudo-terminal as stdout; leaves what it printed in out.
on_terminal() {
  "$python" - "$program" "$@" >out 2>err <<'END'
import os, pty, sys
seen = b""
def read(descriptor):
    global seen
    data = os.read(descriptor, 65536)
    seen += data
    return b""
status = pty.spawn(sys.argv[1:], read, lambda descriptor: b"")
os.write(1, seen)
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
