# A job that can be read but has a run that no lawful layout fills.
# An open wall of one side, 6 in nominal, 5 5/8 in actual. Both its ends show, so one piece alone must be uncut, and a half
# is 7 5/8 in already. Of two pieces one may be a make-up piece and the other a cut of the list, the shortest 3 5/8 in:
# with a joint of 1/4 to 1/2 in, 1 1/2 to 1 3/4 in are left, less than the 2 in that may be allowed at most.
. "$(dirname "$0")/tools.sh"
cat >stub.json <<'END'
{"stringcourse": 1, "name": "Stub", "tape": "inches", "units": {"series": "us-8"},
 "outline": {"closed": false, "sides": [{"from": "A", "to": "B", "length": "6\""}]},
 "heights": {"courses": 3}}
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
