# Things put into a job file: openings and inner walls, readings and log entries.
. "$(dirname "$0")/tools.sh"
"$program" begin --length 24ft --width 20ft --height 8ft --out shed.json 2>err || fails "no job to change"
cp shed.json kept.json

fact "add puts openings and walls in, prints the job, and changes no file"
runs 0 add shed.json --door BC:4-0:3-0x6-8 --wall AB:12-0
is_json out
holds out '"name": "D1"'
holds out '"name": "N1"'
same shed.json kept.json

fact "what was in the job stays as it is"
"$program" add shed.json --door BC:4-0:3-0x6-8 >one.json 2>err
"$program" add one.json --door DA:4-0:3-0x6-8 --out two.json 2>err
"$python" - one.json two.json >out 2>err <<'END' || fails "see err"
import json, sys
one, two = (json.load(open(path)) for path in sys.argv[1:])
assert two["openings"][0] == one["openings"][0] and two["openings"][1]["name"] == "D2"
del one["openings"], two["openings"]
assert one == two
END

fact "no file is written over unless that is asked for, and then the old one is kept"
runs 4 add shed.json --door BC:4-0:3-0x6-8 --out kept.json
runs 0 add shed.json --door BC:4-0:3-0x6-8 --replace
holds err "shed.json.previous"
same shed.json.previous kept.json
holds shed.json '"name": "D1"'
runs 0 add shed.json --window CD:8-0:4-0x3-4 --replace
holds shed.json.previous '"name": "D1"'
holds_not shed.json.previous '"name": "W1"'
echo mine >shed.json.previous
cp shed.json before.json
runs 4 add shed.json --door DA:4-0:3-0x6-8 --replace
same shed.json before.json
[ "$(cat shed.json.previous)" = mine ] || fails "another's file was lost"
rm shed.json.previous

fact "what would not stand is refused by its name, and nothing is written"
runs 3 add shed.json --door BC:5-0:3-0x6-8 --out no.json
is_not_there no.json
holds err "D1 and D2 overlap"
holds err "door D"

fact "all that cannot be read comes at once, and nothing to put in is said"
runs 2 add shed.json --door BX:4-0:3-0x6-8 --window CD:8-0 --wall AB
holds err "--door BX:4-0:3-0x6-8"
holds err "--window CD:8-0"
holds err "--wall AB"
runs 2 add shed.json
holds err "Nothing is given"
runs 2 add shed.json --door BC:4-0:3-0x6-8 --out a.json --replace
holds err "exclude each other"

fact "enter writes readings that the job's own reader takes, each with an id of its own"
runs 0 enter kept.json --tape "A:B:23-11" --tape "A:C:31'-2 3/4\"" --rod "1:A:50 1/4" --dowel "AB:4-1:3 3/4\"" \
  --edge "AB:4-0:4 1/4\"" --by JO --when "2 May" --out read.json
"$python" - read.json >out 2>err <<'END' || fails "see err"
import json, sys
readings = json.load(open(sys.argv[1]))["readings"]
assert [one["id"] for one in readings] == ["1", "2", "3", "4", "5"]
assert all(one["by"] == "JO" and one["when"] == "2 May" for one in readings)
assert readings[0]["tape"] == {"from": "A", "to": "B", "length": "23'-11\""}
assert readings[2]["rod"] == {"setup": "1", "station": "A", "rod": "4'-2 1/4\""}
assert readings[3]["dowel"] == {"on": "AB", "at": "4'-1\"", "off_face": "3 3/4\""}
assert readings[4]["edge"] == {"on": "AB", "at": "4'-0\"", "beyond": "4 1/4\""}
END

fact "enter writes the laid log; short is less than the mark, and a strike erases nothing"
runs 0 enter kept.json --mark "AB:1:47 5/8:3/16 short" --course BC:1 --gauge "AB:1:1/8 high" --out laid.json
runs 0 enter laid.json --strike 1 --replace
"$python" - laid.json >out 2>err <<'END' || fails "see err"
import json, sys
laid = json.load(open(sys.argv[1]))["laid"]
assert laid[0]["mark"] == {"on": "AB", "course": 1, "at": "3'-11 5/8\"", "past": "-3/16\""}
assert laid[1]["laid"] == {"on": "BC", "course": 1} and laid[2]["gauge"]["high"] == "1/8\""
assert laid[3]["strike"] == "1" and len(laid) == 4
END
runs 0 marks laid.json --side AB

fact "an entry of another form, or of what is not there, is refused with the form"
runs 2 enter kept.json --tape A:X:23-11 --mark AB:1:47 --course "AB:first" --strike 9 --jamb D9:far:4-0
holds err "There is no corner"
holds err "AB:1:47 5/8\":3/16 past"
holds err "There is no course"
holds err "There is no entry"
holds err "There is no opening"

fact "a finding names the thing, not its place in the file alone"
runs 0 look "$(example hillside-shed)" --no-offers
holds out "[door D1 on AB:"

done_with_facts
