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
[ "$(find work -type f | grep -cvE '^work/[0-9]+/(answer.json|job.json|set-letter.pdf|stringcourse-set.json|drawings/[^/]+\.svg)$')" = 0 ] ||
  fails "a file stands where none should"

fact "a name with a control character is refused, and the refusal does not pass it on"
with_name "$(printf 'red\033[31m')" >job.json
runs 3 look job.json
! grep -q "$(printf '\033')" out err || fails "an escape character came through"

fact "a name that turns the direction of writing is not passed on raw"
with_name "$(printf 'abc\342\200\256def')" >job.json
"$program" look job.json --no-offers >out 2>err
! grep -q "$(printf '\342\200\256')" out err || fails "U+202E came through"

done_with_facts
