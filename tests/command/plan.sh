# What plan writes.
. "$(dirname "$0")/tools.sh"
job=$(example kiln-house)

fact "a set holds the answer, the job, one PDF, drawings and its marker, and nothing is left beside it"
mkdir work
runs 0 plan "$job" --out work/set
only work set
only work/set answer.json drawings job.json order.csv set-letter.pdf stringcourse-set.json
[ "$(ls work/set/drawings/*.svg | wc -l)" -ge 6 ] || fails "fewer drawings than four sides and two courses"
is_json work/set/answer.json
holds out "Kiln house"
holds err "written to work/set"

fact "the sheets are a sound PDF on Letter paper"
qpdf --check work/set/set-letter.pdf >out 2>err || fails "qpdf finds fault"
pdfinfo work/set/set-letter.pdf >out 2>err
holds out "792 x 612 pts"

fact "the drawings are XML"
"$python" - work/set/drawings/*.svg >out 2>err <<'END' || fails "a drawing is no XML"
import sys, xml.dom.minidom
for path in sys.argv[1:]: xml.dom.minidom.parse(path)
END

fact "the same job gives the same bytes"
runs 0 plan "$job" --out work/again
diff -r work/set work/again >out || fails "two sets of one job differ"

fact "the job that is kept in a set gives the same answer"
runs 0 plan work/set/job.json --out work/kept
same work/set/answer.json work/kept/answer.json

fact "--json prints the answer that is written"
runs 0 plan "$job" --out work/json --json
same out work/json/answer.json

fact "--quiet prints nothing"
runs 0 plan "$job" --out work/quiet --quiet
is_empty out
is_empty err

fact "a metric job comes on A4, and both papers when asked"
runs 0 plan "$(example clay-store)" --out work/metric --quiet
is_there work/metric/set-a4.pdf
is_not_there work/metric/set-letter.pdf
runs 0 plan "$(example clay-store)" --out work/both --paper both --quiet
is_there work/both/set-a4.pdf
is_there work/both/set-letter.pdf

fact "a set can be had by hold point: the parts together are the whole, page by page"
runs 0 plan "$job" --out work/whole --quiet
whole=$(pdfinfo work/whole/set-letter.pdf | sed -n 's/^Pages: *//p')
mkdir work/pages
for point in order pour first-course lintels grout top; do
  runs 0 plan "$job" --out "work/$point" --for "$point" --quiet
  only "work/$point" answer.json drawings job.json order.csv "set-$point-letter.pdf" stringcourse-set.json
  pages=$(pdfinfo "work/$point/set-$point-letter.pdf" | sed -n 's/^Pages: *//p')
  [ "$pages" -le 9 ] || fails "$point takes $pages sheets"
  # A sheet with the lists of two points comes with both, and is the same page.
  for page in $(seq "$pages"); do
    pdftotext -f "$page" -l "$page" "work/$point/set-$point-letter.pdf" work/page.txt
    number=$(sed -n "s/^\\([0-9]*\\) of $whole\$/\\1/p" work/page.txt | tail -1)
    [ -n "$number" ] || fails "page $page of $point has no number"
    kept=work/pages/$(printf %02d "$number").txt
    if [ -e "$kept" ]; then same work/page.txt "$kept"; else cp work/page.txt "$kept"; fi
  done
done
parts=$(ls work/pages | wc -l)
[ "$parts" = "$whole" ] && [ "$whole" -le 34 ] || fails "parts $parts, whole $whole"
pdftotext work/top/set-top-letter.pdf top.txt
holds top.txt "Top of the walls"
pdftotext work/grout/set-grout-letter.pdf grout.txt
holds grout.txt "Before the pour"
cat work/pages/*.txt >work/parts.txt
pdftotext work/whole/set-letter.pdf work/whole.txt
same work/parts.txt work/whole.txt
runs 0 plan "$job" --out work/all --for all --quiet
same work/all/set-letter.pdf work/whole/set-letter.pdf

fact "the set of one hold point can be written over by another"
runs 0 plan "$job" --out work/pour --for lintels --quiet
only work/pour answer.json drawings job.json order.csv set-lintels-letter.pdf stringcourse-set.json
is_there work/pour.previous/set-pour-letter.pdf

fact "what is printed on request alone is named, and comes when it is asked for"
runs 0 plan "$job" --out work/named
holds err "--templates adds"
holds err "--standards adds"
holds err " sheets: order "
runs 0 plan "$job" --out work/asked --templates --standards --quiet
pdftotext work/asked/set-letter.pdf asked.txt
holds asked.txt "Dowel template"
holds asked.txt "Standards used"
holds_not work/whole.txt "Dowel template"

fact "stdin is a job like any other"
runs_with "$job" 0 plan - --out work/stdin --quiet
same work/set/answer.json work/stdin/answer.json

fact "--strict still writes the set, and ends with 1 when there are findings"
runs 1 plan "$(example hillside-shed)" --out work/strict --strict --quiet
is_there work/strict/answer.json

fact "every example can be planned"
for each in "$repository"/examples/*.json; do
  runs 0 plan "$each" --out "work/$(basename "$each" .json)" --quiet
  qpdf --check "work/$(basename "$each" .json)"/set-*.pdf >out 2>err || fails "qpdf finds fault in $each"
done

done_with_facts
