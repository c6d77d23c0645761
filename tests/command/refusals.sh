# Jobs that cannot be planned: all said, nothing written.
. "$(dirname "$0")/tools.sh"

refused() {
  runs 3 plan "$1" --out set
  is_not_there set
  is_empty out
}

fact "broken JSON is refused with its line and column"
printf '{\n  "stringcourse": 1,\n  "name": oops\n}\n' >broken.json
refused broken.json
grep -qiE 'line 3\b' err || fails "the line is not told"
grep -qiE 'column 11\b' err || fails "the column is not told"

fact "all refusals come at once, each with its place"
"$python" - "$(example kiln-house)" >two.json <<'END'
import json, sys
job = json.load(open(sys.argv[1]))
job["openings"][1]["place"]["at"] = "soon"
job["outline"]["sides"][0]["lenght"] = "28'"
json.dump(job, sys.stdout)
END
refused two.json
holds err "/openings/1/place/at"
holds err "/outline/sides/0/lenght"

fact "an outline that does not close is refused"
sed "s/20'-0/20'-8/;" "$(example kiln-house)" | sed "0,/20'-8/! s/20'-8/20'-0/" >open.json
refused open.json
holds err "/outline"

# changed_kiln PYTHON: the kiln house with some of its fields changed, as job.json.
changed_kiln() {
  "$python" - "$(example kiln-house)" "$1" >job.json <<'END'
import json, sys
job = json.load(open(sys.argv[1]))
sides, openings, steel = job["outline"]["sides"], job["openings"], job["steel"]
exec(sys.argv[2])
json.dump(job, sys.stdout)
END
}

fact "unknown and missing fields and wrong types are told by name"
changed_kiln 'job["foo"] = 1; del job["units"]; job["heights"]["courses"] = "many"'
refused job.json
holds err "There is no field “foo” here."
holds err "The field “units” is missing."
holds err "Here stands the text “many”; what belongs here is a whole number."

fact "an outline that does not close says by how much, where to, and which side mends it"
changed_kiln 'sides[0]["length"] = "28'"'"'-8\""'
refused job.json
holds err "8\" to the west of corner A"
holds err "Make AB 8\" shorter or CD 8\" longer."

fact "an outline whose turns do not close is refused"
changed_kiln 'sides[1]["turn"] = "left"'
refused job.json
holds err "/outline"

fact "an outline that crosses itself is refused"
# A notch 10 ft wide goes 30 ft in from CD, through side AB, which stands 20 ft off.
changed_kiln '
job["openings"] = []
steps = [("A", "B", 40, "right"), ("B", "C", 20, "right"), ("C", "D", 15, "right"), ("D", "E", 30, "left"),
         ("E", "F", 10, "left"), ("F", "G", 30, "right"), ("G", "H", 15, "right"), ("H", "A", 20, "right")]
job["outline"]["sides"] = [{"from": a, "to": b, "length": f"{n} ft", "turn": t} for a, b, n, t in steps]'
refused job.json
holds err "DE crosses AB"

fact "openings that overlap, leave the wall, eat a corner or leave too short a pier are refused, with what mends it"
changed_kiln 'openings[3]["place"]["at"] = "8 ft"'
refused job.json
holds err "W1 and W2 overlap by 2'-0 3/8\"."
changed_kiln 'openings[0]["place"]["at"] = "27 ft"'
refused job.json
holds err "D1 reaches 9'-0\" too far toward B"
holds err "Move D1 at least 9'-0\" toward A."
changed_kiln 'openings[0]["place"]["at"] = "2 in"'
refused job.json
holds err "D1 reaches 6\" too far toward A"
changed_kiln 'openings[0]["place"]["at"] = "10 in"'
refused job.json
holds err "only 2\" is left, less than the least piece 3 5/8\"."

fact "a head off the course line is a finding with the two heights that fit, not a refusal"
runs 0 look "$(example kiln-house)" --no-offers
holds out "6'-8 3/8\" and 7'-4 3/8\""

fact "spacings nearer than the cells and series without cells are refused"
changed_kiln 'steel["bars"]["spacing"] = "7 in"'
refused job.json
holds err "State 8\" or more."
changed_kiln 'job["units"]["series"] = "us-4"'
refused job.json
holds err "us-4 has no known cell that takes grout"
changed_kiln 'job["units"]["stocked"] = ["half"]'
refused job.json
holds err 'The yard stocks no whole unit ("full").'

fact "lengths of 0 and of 100 km are refused"
changed_kiln 'sides[0]["length"] = "0"; sides[2]["length"] = "100000 m"'
refused job.json
holds err "The length “0” is not above zero."
holds err "“100000 m” is longer than 10 km"

fact "the first hundred refusals are shown and the rest is counted"
changed_kiln 'job["openings"] = [{"name": f"D{n}", "on": "AB", "place": {"from": "A", "at": "0"}, "masonry": {"width": "x", "height": "3 ft"}} for n in range(150)]'
refused job.json
[ "$(grep -c '^refused: ' err)" = 100 ] || fails "$(grep -c '^refused: ' err) are shown"
[ "$(tail -n 1 err)" = "and 50 more" ] || fails "the rest is not counted"

fact "with --json the refusals are a document on stdout"
runs 3 look two.json --json
is_json out
holds out '"place":"/openings/1/place/at"'

fact "a file that is not there, or a folder, ends with 4"
runs 4 look no-such.json
holds err "no-such.json"
mkdir folder
runs 4 look folder

fact "an empty file is refused"
: >empty.json
refused empty.json

fact "a file of 100 MB is refused in 256 MB of address space, from a file, a pipe and stdin"
truncate -s 100M zeros.json
"$python" -c 'import sys; sys.stdout.write("[" + "1," * 50_000_000 + "1]")' >ones.json
for file in zeros.json ones.json; do
  ( ulimit -v 262144; "$program" look $file >out 2>err; echo $? >code )
  [ "$(cat code)" = 3 ] || fails "$file ended with $(cat code)"
  holds err "more than 8000000 bytes"
  ( ulimit -v 262144; cat $file | "$program" look - >out 2>err; echo $? >code )
  [ "$(cat code)" = 3 ] || fails "$file through a pipe ended with $(cat code)"
done

fact "an endless job is refused too"
( ulimit -v 262144; "$program" look - </dev/zero >out 2>err; echo $? >code )
[ "$(cat code)" = 3 ] || fails "ended with $(cat code)"

fact "a million openings are refused, in bounded memory and time"
"$python" - "$(example kiln-house)" >million.json <<'END'
import json, sys
job = json.load(open(sys.argv[1]))
job["openings"] = [{}] * 1_000_000
json.dump(job, sys.stdout, separators=(",", ":"))
END
( ulimit -v 1048576 -t 20; "$program" look million.json >out 2>err; echo $? >code )
[ "$(cat code)" = 3 ] || fails "ended with $(cat code)"
holds err "1000000 values"

fact "a hundred thousand brackets are refused"
"$python" -c 'print("[" * 100_000)' >deep.json
refused deep.json

done_with_facts
