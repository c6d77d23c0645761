# Where plan writes, and what it leaves alone.
. "$(dirname "$0")/tools.sh"
job=$(example wash-stand)
other=$(example clay-store)
quiet="--quiet --no-offers"

fact "the set before is kept as .previous, whole, and the one before that goes"
mkdir work
runs 0 plan "$job" --out work/set $quiet
cp -r work/set first
runs 0 plan "$other" --out work/set $quiet
cp -r work/set second
diff -r first work/set.previous >out || fails "the first set was not kept"
runs 0 plan "$job" --out work/set/ $quiet
diff -r second work/set.previous >out || fails "the second set was not kept"
only work set set.previous

fact "a .previous that holds someone's file is not thrown away, and the set stays as it was"
echo mine >work/set.previous/notes.txt
runs 4 plan "$other" --out work/set $quiet
holds err "notes.txt"
diff -r first work/set >out || fails "the set was changed"
[ "$(cat work/set.previous/notes.txt)" = mine ] || fails "notes.txt was changed"
only work set set.previous

fact "someone's file in a set goes with it to .previous"
rm work/set.previous/notes.txt
echo mine >work/set/notes.txt
runs 0 plan "$other" --out work/set $quiet
[ "$(cat work/set.previous/notes.txt)" = mine ] || fails "notes.txt was lost"

fact "a folder that plan did not make is refused, even an empty one"
mkdir foreign empty
echo mine >foreign/notes.txt
runs 4 plan "$job" --out foreign $quiet
runs 4 plan "$job" --out empty $quiet
only foreign notes.txt
[ -z "$(ls -A empty)" ] || fails "empty was written to"

fact "a marker that is not ours does not make a folder ours"
mkdir false_marker
echo '{}' >false_marker/stringcourse-set.json
runs 4 plan "$job" --out false_marker $quiet
only false_marker stringcourse-set.json

fact "a file, a link to a folder and a dangling link are refused"
echo mine >file
ln -s foreign link
ln -s nowhere dangling
for place in file link dangling; do runs 4 plan "$job" --out $place $quiet; done
[ "$(cat file)" = mine ] || fails "file was changed"
only foreign notes.txt
is_not_there nowhere

fact "a link to a set is refused too"
ln -s work/set set_link
runs 4 plan "$job" --out set_link $quiet

fact "a place without a parent folder, below a file, or without a name is refused"
runs 4 plan "$job" --out nowhere/set $quiet
runs 4 plan "$job" --out file/set $quiet
runs 4 plan "$job" --out . $quiet
runs 4 plan "$job" --out / $quiet
runs 4 plan "$job" --out work/.. $quiet

fact "a place with spaces, a line break, a leading dash or letters beyond ASCII is a place like any other"
for place in "two words" "$(printf 'two\nlines')" "-dash" "Ofen-Häuschen"; do
  runs 0 plan "$job" "--out=$place" $quiet
  is_there "./$place/answer.json"
done

fact "a set that cannot be written to its end is taken away"
mkdir full
( ulimit -f 8; "$program" plan "$job" --out full/set $quiet >out 2>err; echo $? >code )
[ "$(cat code)" = 4 ] || fails "ended with $(cat code)"
[ -z "$(ls -A full)" ] || fails "full holds $(ls -A full)"

fact "and an older set there stays as it was"
runs 0 plan "$other" --out full/set $quiet
cp -r full/set kept
( ulimit -f 8; "$program" plan "$job" --out full/set $quiet >out 2>err; echo $? >code )
[ "$(cat code)" = 4 ] || fails "ended with $(cat code)"
only full set
diff -r kept full/set >out || fails "the older set was changed"

done_with_facts
