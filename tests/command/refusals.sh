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
