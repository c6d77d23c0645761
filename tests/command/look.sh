# Looking at a job without writing.
. "$(dirname "$0")/tools.sh"

fact "look writes no file"
mkdir here && cd here || exit 1
runs 0 look "$(example kiln-house)"
cd .. && only here out err
cp here/out out

fact "the summary names every side with both lengths, the courses, the units, the proof"
holds out "Kiln house"
for side in AB BC CD DA; do holds out "  $side "; done
holds out "28'-0\""
holds out "27'-11 5/8\""
holds out "Courses"
holds out "full"
holds out "Is it the best?"
holds out "Findings"

fact "every example can be looked at, in both forms"
for job in "$repository"/examples/*.json; do
  runs 0 look "$job" --no-offers
  [ -s out ] || fails "no summary of $job"
  runs 0 look "$job" --no-offers --json
  is_json out
done

fact "stdin is a job like any other"
runs 0 look "$(example clay-store)" --json
cp out from_file
runs_with "$(example clay-store)" 0 look - --json
same from_file out

fact "findings end with 1 only when --strict asks"
runs 0 look "$(example hillside-shed)"
holds_not out "Findings: 0"
runs 1 look "$(example hillside-shed)" --strict

fact "on a pipe there is neither colour nor movement"
! grep -q "$(printf '[\033\r]')" out err || fails "a control character came through"

fact "--no-offers leaves offers out"
runs 0 look "$(example hillside-shed)" --json --no-offers
holds out '"offers":[]'

fact "a slab of which little was read neither fits nor not"
"$python" - "$(example kiln-house)" <<'END' > little.json
import json, sys
job = json.load(open(sys.argv[1]))
job["laid"] = []
job["readings"] = [{"id": "d", "rod": {"setup": "1", "station": "datum", "rod": "48\""}},
                   {"id": "a", "rod": {"setup": "1", "station": "A", "rod": "52\""}}]
job["readings"] += [{"id": a + b, "tape": {"from": a, "to": b, "length": length}}
                    for a, b, length in (("A", "B", "27'-11 5/8\""), ("B", "C", "19'-11 5/8\""), ("C", "D", "27'-11 5/8\""))]
json.dump(job, sys.stdout)
END
runs 0 look little.json --no-offers
holds out "The first bed is not read yet"
holds out "Sides and diagonals are not read yet"
runs 0 look little.json --no-offers --json
holds out '"verdict":"not-read"'
holds_not out '"verdict":"fits"'

done_with_facts
