# Names that would like to be something else.
. "$(dirname "$0")/tools.sh"

with_name() {
  "$python" - "$(example wash-stand)" "$1" <<'END'
import json, sys
job = json.load(open(sys.argv[1]))
job["name"] = sys.argv[2]
job["outline"]["sides"][1]["name"] = sys.argv[2]
json.dump(job, sys.stdout)
END
}

fact "no name leads a file out of its set, and every drawing stays XML"
mkdir work
number=0
for name in '../../escape' '/etc/passwd' '..' '.hidden' 'a/b\c' '<script>alert(1)</script>' '"><g onload="x' "it's & <so>" \
            'CON' '$(touch stolen)' '%s%n%n' "$(printf 'x%.0s' $(seq 200))" 'Ofenhäuschen 窯小屋' '{0}{1}' '(\)'; do
  number=$((number + 1))
  with_name "$name" >job.json
  runs 0 plan job.json --out "work/$number" --quiet --no-offers
  "$python" - work/$number/drawings/*.svg >out 2>err <<'END' || fails "a drawing is no XML, or has a script: $name"
import re, sys, xml.dom.minidom
for path in sys.argv[1:]:
    assert re.fullmatch(r"[A-Za-z0-9_-][A-Za-z0-9._-]*", path.rsplit("/", 1)[1]), path
    document = xml.dom.minidom.parse(path)
    assert not document.getElementsByTagName("script")
    for element in document.getElementsByTagName("*"):
        assert not any(key.lower().startswith("on") for key in element.attributes.keys())
END
  qpdf --check work/$number/set-letter.pdf >out 2>err || fails "qpdf finds fault: $name"
  "$python" - work/$number/answer.json "$name" >out 2>err <<'END' || fails "the name is not kept: $name"
import json, sys
assert json.load(open(sys.argv[1]))["job"]["name"] == sys.argv[2]
END
done
only . work job.json out err
[ "$(find work -type f | grep -cvE '^work/[0-9]+/(answer.json|job.json|days.ics|order.csv|set-letter.pdf|stringcourse-set.json|drawings/[^/]+\.svg)$')" = 0 ] ||
  fails "a file stands where none should"

fact "a name with a control character is refused, and the refusal does not pass it on"
with_name "$(printf 'red\033[31m')" >job.json
runs 3 look job.json
! grep -q "$(printf '\033')" out err || fails "an escape character came through"

fact "characters that hide or turn what stands round them are spelled, on the terminal and in documents, and are kept"
for bytes in '\342\200\256' '\342\201\246' '\342\200\213' '\357\273\277' '\363\240\201\201' '\330\234'; do
  raw=$(printf "$bytes")
  with_name "abc${raw}def" >job.json
  rm -rf work
  runs 0 plan job.json --out work --no-offers
  cat out err >told
  runs 0 look job.json --json --no-offers
  cp out answer.json
  runs 0 marks job.json
  cat out err >>told
  "$program" merge job.json job.json >merged.json 2>>told || fails "merge does not end well"
  "$python" - job.json >unknown.json <<'END'
import json, sys
job = json.load(open(sys.argv[1]))
job[job["name"]] = job["name"]
json.dump(job, sys.stdout, ensure_ascii=False)
END
  runs 3 look unknown.json --json
  cat out err >>told
  for file in told answer.json work/answer.json work/job.json merged.json; do
    ! grep -qF "$raw" $file || fails "$bytes came through in $file"
  done
  grep -qF 'abc\u' told || fails "$bytes is not spelled"
  "$python" - "abc${raw}def" answer.json work/job.json merged.json >out 2>err <<'END' || fails "$bytes is not kept"
import json, sys
answer, job, merged = (json.load(open(path)) for path in sys.argv[2:])
assert answer["job"]["name"] == job["name"] == merged["name"] == sys.argv[1]
END
done

done_with_facts
