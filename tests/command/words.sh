# What is typed: verbs, options, help.
. "$(dirname "$0")/tools.sh"

fact "without a verb the program says what it wants, on stderr, and ends with 2"
runs 2
is_empty out
holds err "A verb is wanted"

fact "a mistyped verb is answered with the nearest one"
runs 2 plann job.json
is_empty out
holds err "Did you mean 'plan'?"

fact "a mistyped option is answered with the nearest one"
runs 2 look job.json --strikt
holds err "Did you mean '--strict'?"

fact "a word that is like no verb gets no guess, but the list"
runs 2 wheelbarrow
holds_not err "Did you mean"
holds err "begin"

fact "an option given twice, without its value or with one that it does not take is refused"
runs 2 plan job.json --out a --out b
holds err "given twice"
runs 2 plan job.json --out
holds err "wants a value"
runs 2 look job.json --json=yes
holds err "takes no value"

fact "all that is wrong with a command is said at once"
runs 2 look --strikt --jsn a.json b.json c.json
holds err "Did you mean '--strict'?"
holds err "Did you mean '--json'?"
holds err "b.json"
holds err "c.json"
runs 2 plan job.json --paper a5 --for por
holds err "--out DIR"
holds err "letter, a4 or both"
holds err "Did you mean 'pour'?"
runs 2 help lok
holds err "Did you mean 'look'?"

fact "a missing or surplus operand is refused"
runs 2 look
holds err "wants JOB"
runs 2 look a.json b.json
holds err "b.json"
runs 2 plan job.json
holds err "--out DIR"

fact "a paper that is none is refused before the job is read"
runs 2 plan no-such-job.json --out set --paper a5
holds err "letter, a4 or both"

fact "help names every verb and every exit code"
runs 0 help
for verb in plan begin add enter look schema help version; do holds out "  $verb "; done
for code in 0 1 2 3 4 70; do grep -qE "^  $code +[a-z]" out || fails "code $code is not told"; done
is_empty err

fact "help can be asked for before and after"
runs 0 --help
holds out "usage: stringcourse VERB"
for verb in plan begin look schema help version; do
  "$program" help "$verb" >first 2>err
  runs 0 "$verb" --help
  same first out
  holds out "usage: stringcourse $verb"
  holds out "examples:"
done

fact "every example of the help can be typed into a shell as it stands"
for verb in plan begin add enter look marks merge schema help version; do
  runs 0 help "$verb"
  sed -n '/^examples:/,$p' out | grep '^  stringcourse' >examples.sh
  [ -s examples.sh ] || fails "$verb has no example"
  while read -r line; do bash -n -c "$line" 2>err || fails "$line"; done <examples.sh
done

fact "every option of a verb stands in its help"
runs 0 help plan
for option in --out --paper --for --templates --standards --json --quiet --strict --no-offers; do holds out "$option"; done

fact "help for no verb ends with 2"
runs 2 help wheelbarrow

fact "the version is one line"
runs 0 --version
grep -qE '^stringcourse [0-9]+\.[0-9]+\.[0-9]+$' out || fails "no version"

fact "a typed control sequence does not reach the terminal"
runs 2 "$(printf 'pl\033[2Jan')"
! grep -q "$(printf '\033')" err || fails "an escape character came through"

fact "stdout that cannot be written ends with 4"
got=0
"$program" help >/dev/full 2>err || got=$?
[ "$got" = 4 ] || fails "ended with $got"

fact "the glossary defines each word once, and tells every mark that a sheet puts on a unit"
"$python" - "$repository" >out 2>err <<'END' || fails "see out"
import collections, pathlib, re, sys
root = pathlib.Path(sys.argv[1])
glossary = (root / "docs/glossary.md").read_text()
entries = [word for line in glossary.splitlines() if line.startswith("- ") for word in re.findall(r"\*\*([^*]+)\*\*", line)]
twice = [word for word, times in collections.Counter(entries).items() if times > 1]
print("defined twice:", twice)
legends = re.findall(r'\.legend_\w+ = "(\w+) ([\w -]+)', (root / "engine/words/english_sheets.cpp").read_text())
marks = re.search(r"- \*\*unit\*\*.*?(?=\n- )", glossary, re.S)[0]
untold = [mark for mark, _ in legends if not re.search(rf"\b{mark}\b", marks)]
print("marks:", legends, "not told:", untold)
assert len(entries) > 100 and len(legends) >= 11 and not twice and not untold
assert all(len(mark) == 2 for mark, _ in legends) and len({mark for mark, _ in legends}) == len(legends)
END

done_with_facts
