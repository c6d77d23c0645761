# Marks at the wall, and two logs of one job.
. "$(dirname "$0")/tools.sh"

log() {
  "$python" - "$(example kiln-house)" "$1" "$2" <<'END'
import json, sys
job = json.load(open(sys.argv[1]))
job["laid"] = json.loads(sys.argv[2])
json.dump(job, open(sys.argv[3], "w"))
END
}

fact "marks prints every wall's next course with both forms, and what to do"
runs 0 marks "$(example kiln-house)"
holds out "AB, course 1: marks from outer corner A"
holds out "4'-7 5/8\" = 55 5/8\""
holds out "near jamb of D1"
holds out "now: next"

fact "what was read is there, with the next joints; chances only when asked"
log '[{"id":"1","mark":{"on":"AB","course":1,"at":"55 5/8\"","past":"3/16\""}}]' mine.json
runs 0 marks mine.json --side AB
holds out "3/16\" past"
holds out "next 3 joints of 5/16\""
holds_not out "fits"
holds_not out "BC-1"
runs 0 marks mine.json --side AB --course 1 --chances
holds out "with marks"

fact "a wall or a course that is not there ends with 2"
runs 2 marks mine.json --side XY
holds err "XY"
runs 2 marks mine.json --course 99
runs 2 marks mine.json --course one

fact "two logs of one job become the same document whichever comes first"
log '[{"id":"1","mark":{"on":"AB","course":1,"at":"55 5/8\"","past":"1/8\""}},{"id":"2","laid":{"on":"AB","course":1}}]' hers.json
runs 0 merge mine.json hers.json
cp out one.json
runs 0 merge hers.json mine.json
same out one.json
holds err "says two different things"
runs 0 look one.json
runs 0 merge one.json one.json --out again.json
same again.json one.json
runs 4 merge one.json mine.json --out again.json

fact "logs of two jobs are refused with what differs, and nothing is written"
runs 3 merge mine.json "$(example clay-store)" --out none.json
holds err "/name"
is_not_there none.json

fact "a jamb found off is solved anew and its sheets say what changed"
log '[{"id":"1","laid":{"on":"AB","course":1}},{"id":"2","found":{"on":"AB","what":"near-jamb","opening":"D1","at":"111 1/4\""}}]' found.json
runs 0 plan found.json --out set --no-offers --quiet
"$python" - set/answer.json <<'END' || fails "no changes in the answer"
import json, sys
changes = json.load(open(sys.argv[1]))["laying"]["changes"]
sys.exit(not (changes and all(not c["units"] for c in changes if max(c["courses"]) <= 11)))
END

fact "the log's mistakes are refused all at once, each with its place"
log '[{"id":"1","units":{"together":3}},{"id":"1","found":{"on":"AB","what":"near-jamb","at":"1\""}},{"id":"3"},{"id":"4","remark":{"on":"AB","course":1}}]' bad.json
runs 3 look bad.json
holds err "/laid/0/units/row"
holds err "/laid/1/found/opening"
holds err "/laid/2"
holds err "/laid/1/id"
holds err "/laid/3/remark"

done_with_facts
