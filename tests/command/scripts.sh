# The scripts at the root: sound shell, what they refuse, how results are counted.
. "$(dirname "$0")/tools.sh"

fact "every script is sound shell"
for script in run check bench .ci/run scripts/setup.sh scripts/build.sh scripts/page.sh scripts/layers.sh; do
  bash -n "$repository/$script" 2>err || fails "$script"
done

fact "an unknown word is refused with 2"
for script in run check; do
  got=0
  "$repository/$script" --sideways >out 2>err </dev/null || got=$?
  [ "$got" = 2 ] || fails "$script ended with $got"
done

fact "a machine that has everything is left alone, silently"
PATH=$PATH "$repository/scripts/setup.sh" core >out 2>err </dev/null || fails "setup did not end well"
is_empty out
is_empty err

fact "cases, programs and crashes are counted, and a failure ends with 1"
mkdir good bad none
echo '<testsuites tests="5" failures="0" errors="0"/>' >good/test_bond.xml
echo '<testsuite><testcase name="bond" status="run"/><testcase name="command_plan" status="run"/></testsuite>' >good/ctest.junit
"$python" "$repository/scripts/count_results.py" good >out || fails "good results end with an error"
[ "$(tail -n 1 out)" = "6 passed, 0 failed" ] || fails "good results are counted wrong"
echo '<testsuites tests="5" failures="2" errors="0"/>' >bad/test_bond.xml
echo '<testsuite><testcase name="bond" status="fail"/><testcase name="steel" status="fail"/></testsuite>' >bad/ctest.junit
"$python" "$repository/scripts/count_results.py" bad >out && fails "bad results end well"
[ "$(tail -n 1 out)" = "3 passed, 3 failed" ] || fails "bad results are counted wrong"
echo '<testsuite/>' >none/ctest.junit
"$python" "$repository/scripts/count_results.py" none >out && fails "no results end well"

done_with_facts
