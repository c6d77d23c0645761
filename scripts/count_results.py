"""Counts what ./check ran and prints `N passed, N failed`; ends with 1 when anything failed or nothing ran.

Usage: count_results.py FOLDER [none|absent|passed|failed]. FOLDER holds ctest's report (ctest.junit), one of
each step of the page (page-NAME.junit) and one for each GoogleTest program (test_NAME.xml). A GoogleTest program counts
by its cases; any other test counts as one; a program that ctest calls failed, without a failed case of its own (a
crash), counts as one failure.
The second argument is how the long comparisons ended."""
import pathlib
import sys
import xml.etree.ElementTree as ElementTree


def cases(report):
    """(passed, failed) of one GoogleTest report."""
    root = ElementTree.parse(report).getroot()
    failed = int(root.get("failures", "0")) + int(root.get("errors", "0"))
    return int(root.get("tests", "0")) - failed, failed


def count(folder):
    passed = failed = 0
    reports = [folder / "ctest.junit", *sorted(folder.glob("page-*.junit"))]
    for test in (test for report in reports for test in ElementTree.parse(report).getroot().iter("testcase")):
        went_well = test.get("status") == "run"
        report = folder / f"test_{test.get('name')}.xml"
        good, bad = cases(report) if report.exists() else (int(went_well), int(not went_well))
        if not went_well and bad == 0:
            bad = 1
        passed, failed = passed + good, failed + bad
    return passed, failed


def main():
    passed, failed = count(pathlib.Path(sys.argv[1]))
    long_result = sys.argv[2] if len(sys.argv) > 2 else "none"
    passed += long_result == "passed"
    failed += long_result in ("failed", "absent")
    print(f"{passed} passed, {failed} failed")
    return 0 if failed == 0 and passed > 0 else 1


sys.exit(main())
