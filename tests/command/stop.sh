# A job that can be read and that no mason could lay: a one-piece lintel 8 in from an outside corner. Its bearing of 8 in
# would lie in the corner's own unit, 7 5/8 in of it, which by turns is the other side's: no masonry of this side is there.
. "$(dirname "$0")/tools.sh"
cat >stub.json <<'END'
{"stringcourse": 1, "name": "Stub", "tape": "inches", "units": {"series": "us-8"},
 "outline": {"closed": true, "sides": [
   {"from": "A", "to": "B", "length": "12'", "turn": "right"}, {"from": "B", "to": "C", "length": "12'", "turn": "right"},
   {"from": "C", "to": "D", "length": "12'", "turn": "right"}, {"from": "D", "to": "A", "length": "12'", "turn": "right"}]},
 "heights": {"courses": 12},
 "openings": [{"name": "D1", "on": "AB", "place": {"from": "A", "at": "8\""},
   "masonry": {"width": "3'-4\"", "height": "6'-8\""}, "lintel": {"make": "one-piece"}}]}
END

fact "plan says what stops it and what mends it, writes nothing and ends with 3"
runs 3 plan stub.json --out set
is_not_there set
only . stub.json out err
holds err "stopped: AB"
holds err "Nothing was written"

fact "look ends with 3 too, and its answer says stopped"
runs 3 look stub.json --json
"$python" - out <<'END' || fails "the answer does not say where it stopped"
import json, sys
answer = json.load(open(sys.argv[1]))
assert answer["state"] == "stopped"
assert answer["stopped"][0]["side"] == "AB" and answer["stopped"][0]["rule"] and answer["stopped"][0]["remedy"]
END

fact "an older set stays as it was"
runs 0 plan "$(example wash-stand)" --out set --quiet --no-offers
cp -r set kept
runs 3 plan stub.json --out set
diff -r kept set >out || fails "the older set was changed"
only . stub.json kept set out err

done_with_facts
