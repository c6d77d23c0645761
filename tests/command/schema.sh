# The schemas and what they describe, held together by a validator that is not ours.
. "$(dirname "$0")/tools.sh"

validates() {
  "$python" - "$1" "$2" >out 2>err <<'END'
import json, sys
import jsonschema
schema, document = (json.load(open(path)) for path in sys.argv[1:])
jsonschema.Draft202012Validator.check_schema(schema)
jsonschema.Draft202012Validator(schema).validate(document)
END
}

fact "the schema verb prints the files under docs/schema"
for name in job answer refusals; do
  runs 0 schema $name
  is_json out
  cp out $name.schema.json
  same $name.schema.json "$repository/docs/schema/$name.schema.json"
done
runs 0 schema
same out job.schema.json

fact "a schema that is none ends with 2"
runs 2 schema awnser

fact "every example is a job, and its answer is an answer"
for job in "$repository"/examples/*.json; do
  validates job.schema.json "$job" || fails "job: $job"
  runs 0 look "$job" --json
  cp out answer.json
  validates answer.schema.json answer.json || fails "answer: $job"
done

fact "the answer's schema is strict: a field more, a field less, a wrong word or a half nanometre is refused"
"$python" - answer.json <<'END'
import copy, json, sys
answer = json.load(open(sys.argv[1]))
def write(name, change):
    changed = copy.deepcopy(answer)
    change(changed)
    json.dump(changed, open(name, "w"))
write("more.json", lambda a: a["proof"].update(extra=1))
write("less.json", lambda a: a["cost"].pop("cuts"))
write("word.json", lambda a: a["runs"][0].update(at_start="nowhere"))
write("half.json", lambda a: a["sides"][0]["actual"].update(nm=0.5))
write("kind.json", lambda a: a["runs"][0]["pieces"][0].__setitem__(1, "brick"))
write("tail.json", lambda a: a["runs"][0]["pieces"][0].append("more"))
END
for change in more less word half kind tail; do
  validates answer.schema.json $change.json && fails "$change.json passes"
done

fact "refusals are refusals"
echo '{}' >nothing.json
runs 3 look nothing.json --json
cp out refusals.json
validates refusals.schema.json refusals.json || fails "refusals"

fact "the pieces and their joints fill every run exactly"
"$python" - answer.json >out 2>err <<'END' || fails "a run does not close"
import json, sys
from fractions import Fraction
runs = json.load(open(sys.argv[1]))["runs"]
assert runs
for run in runs:
    pieces = run["pieces"]
    assert run["to"] - run["from"] == run["slack"] + sum(piece[2] for piece in pieces)
    joint = Fraction(run["slack"], run["joints"]) if run["joints"] else Fraction(0)
    for left, right in zip(pieces, pieces[1:]):
        assert right[3] + Fraction(right[4], right[5]) - left[3] - Fraction(left[4], left[5]) - left[2] == joint
END

done_with_facts
