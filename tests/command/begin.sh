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

fact "a building that can hardly be meant is refused, and says so"
runs 3 begin --length 24in --width 20in --height 8ft --out box.json
is_not_there box.json
holds err "mixed up"
runs 0 look "$(example kiln-house)"
holds_not out "mixed up"

fact "openings in short stand where and as large as they were typed, and what comes next is said"
runs 0 begin --length 24ft --width 20ft --height 9ft4in --overhead AB:7-4:9-0x7-0 --door BC:4-0:3-0x6-8 \
  --window CD:8-0:4-0x3-4 --window "CD:16-0:2'-8\"x32in:3-4" --out store.json
holds err "next: stringcourse look store.json"
"$python" - store.json >out 2>err <<'END' || fails "see err"
import json, sys
job = json.load(open(sys.argv[1]))
over, door, wide, small = job["openings"]
assert [one["name"] for one in job["openings"]] == ["D1", "D2", "W1", "W2"]
assert over["on"] == "AB" and over["place"] == {"from": "A", "at": "7'-4\""}
assert over["overhead"]["leaf_width"] == "9'-0\"" and over["overhead"]["leaf_height"] == "7'-0\""
assert door["place"] == {"from": "B", "at": "4'-0\""} and door["door"]["leaf_width"] == "3'-0\""
assert wide["masonry"] == {"width": "4'-0\"", "height": "3'-4\""} and wide["sill_course"] == 5
assert small["masonry"] == {"width": "2'-8\"", "height": "2'-8\""} and small["sill"] == "3'-4\""
END
runs 0 look store.json --no-offers
holds out "D2"

fact "all that is wrong with openings comes at once, each with what would mend it"
runs 2 begin --length 24ft --width 20ft --height 9ft4in --door BX:4-0:3-0x6-8 --door BC:4-0 --window CD:8-0:3x4 --out no.json
is_not_there no.json
holds err "--door BX:4-0:3-0x6-8 There is no side or wall"
holds err "AB, BC, CD or DA"
holds err "--door BC:4-0 "
holds err "BC:4'-0\":3-0x6-8"
holds err "feet or inches? Write 3' or 3\"."
holds err "feet or inches? Write 4' or 4\"."
runs 3 begin --length 24ft --width 20ft --height 8ft --door BC:4-0:3-0x9-0 --window CD:4-0:4-0x3-4 --window CD:6-0:4-0x3-4
holds err "door D1 on BC"
holds err "overlap"
is_empty out

fact "every measure that is missing is asked for at once"
runs 2 begin --length 24ft
holds err "--width"
holds err "--height"

done_with_facts
