# A job that can be read but has a run that no lawful layout fills.
# An open wall of one side, 12 in nominal, 11 5/8 in actual: both its ends show, so a single uncut piece must fill it (a
# cut end meets a joint), and a half is 7 5/8 in, a full 15 5/8 in; two halves and a joint are longer too.
. "$(dirname "$0")/tools.sh"
cat >stub.json <<'END'
{"stringcourse": 1, "name": "Stub", "tape": "inches", "units": {"series": "us-8"},
 "outline": {"closed": false, "sides": [{"from": "A", "to": "B", "length": "1'-0\""}]},
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
