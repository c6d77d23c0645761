# A new job from a few measures.
. "$(dirname "$0")/tools.sh"

fact "the job that begin writes can be looked at at once"
runs 0 begin --length "24'" --width "16'" --height "8'" --series us-8 --name "Tool shed"
is_json out
is_empty err
cp out shed.json
runs 0 look shed.json
holds out "Tool shed"

fact "24 ft nominal between two convex corners is 23'-11 5/8\" actual"
holds out "24'-0\""
holds out "23'-11 5/8\""

fact "8 ft is twelve courses of 8 in"
runs 0 look shed.json --json
"$python" - out <<'END' || fails "not twelve courses"
import json, sys
assert len(json.load(open(sys.argv[1]))["courses"]) == 12
END

fact "begin never writes over a file"
echo mine >kept.json
runs 4 begin --length "24'" --width "16'" --height "8'" --out kept.json
[ "$(cat kept.json)" = mine ] || fails "kept.json was changed"
runs 0 begin --length "24'" --width "16'" --height "8'" --out new.json
runs 4 begin --length "24'" --width "16'" --height "8'" --out new.json

fact "a dangling link is not written through"
ln -s elsewhere.json link.json
runs 4 begin --length "24'" --width "16'" --height "8'" --out link.json
is_not_there elsewhere.json

fact "a metric series is measured in millimetres"
runs 0 begin --length "7.2 m" --width 4800 --height "2.6 m" --series au-190
holds out '"tape": "millimetres"'
cp out metric.json
runs_with metric.json 0 look -
holds out "7200 mm"
holds out "7190 mm"

fact "a measure that is missing or none, or a series that is none, ends with 2 and says which"
runs 2 begin --length "24'" --width "16'"
holds err "--height"
runs 2 begin --length "24 cubits" --width "16'" --height "8'"
holds err "--length"
runs 2 begin --length "24'" --width "16'" --height "8'" --series us-9
holds err "us-8"
is_empty out

fact "a number alone that may be feet is asked about, each option in a line of its own"
runs 2 begin --length 24 --width 20 --height 8 --out hut.json
is_not_there hut.json
holds err "--length 24: feet or inches? Write 24' or 24\"."
holds err "--width 20: feet or inches? Write 20' or 20\"."
holds err "--height 8: feet or inches? Write 8' or 8\"."
runs 2 begin --length 7.2 --width 4.8m --height 2.6m --series au-190
holds err "--length 7.2: metres or millimetres? Write 7.2 m or 7.2 mm."
runs 2 begin --length 720 --width 4.8m --height 2.6m --series au-190
holds err "--length 720: centimetres or millimetres? Write 720 cm or 720 mm."

fact "a number alone that only the tape's own unit can make a building of is that"
runs 0 begin --length 288 --width 192 --height 96 --out inches.json
runs 0 begin --length 24ft --width 16ft --height 8ft --out feet.json
cmp -s inches.json feet.json || fails "288 in and 24 ft differ"
runs 0 begin --length 7200 --width 4800 --height 2600 --series au-190

fact "a building of the size of a box is said to be one"
runs 0 begin --length 32in --width 24in --height 8in --out box.json
runs 0 look box.json
holds out "Are feet and inches mixed up?"
holds out "its walls leave"
runs 0 look "$(example kiln-house)"
holds_not out "mixed up"

done_with_facts
