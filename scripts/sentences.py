#!/usr/bin/env python3
"""Holds the source to this: English stands in engine/words/ alone, and every sentence there is used.

Usage: scripts/sentences.py
Ends with 1, and names the places, where a folder tells something in words of its own, where a fact names a sentence
that no language has, and where a sentence is told by nothing.
"""
import pathlib
import re
import sys

ROOT = pathlib.Path(__file__).resolve().parent.parent
WORDS = ROOT / "engine" / "words"
# What may hold English, or what looks like it: SVG and PDF; descriptions beside the fields of the file formats (they are the formats' documentation), names
# of sources and of blocks in the catalogue, texts for programmers (faults; what a page that is built wrong is told), and
# the command line's own interface, whose verbs are English words.
FREE_FILES = re.compile(
    r"engine/(words/|ink/|job/tables|job/json_tree|job/schema|document/shown|document/schema|document/page_|catalogue/)|wasm/(fields|request|border|brief)|cli/(?!summary|marks)")
FREE_CALLS = re.compile(r"(?:ensure|fault|give_up|static_assert|description =|field|shown|rounded|nanometres)\b[^;]*$")
LITERAL = re.compile(r'"((?:[^"\\\n]|\\.)*)"')
SENTENCE = re.compile(r"[A-Za-z]{2,}[,:;]? [a-z]{2,}|^[a-z]{2,} [a-z]+$|[a-z]{2,} $|^ [a-z]{2,}")


# Names, units and forms: they are no sentences, or stand in the job file so.
NAMES = {
    " mm", " actual", " lb", "as poured ",  # lengths, forces, a reading's own name
    "corner unit", "plain-end unit", "filler ", " thick, ", " long", "free end",  # parts of a set, an end of a wall
    "measured on one unit by the user",  # a source
    "inner ",  # a name of a new wall
    "There is no side or inner wall ", "There is no course ", "cannot write to stdout",  # of the command itself
}


# The rooms, and files, in which a brief answer is made: they tell what the brief module's language has.
BRIEF = re.compile(
    r"engine/((measure|job|walls|edits|bond|setout|supply)/(?!codes\.hpp|enum_names\.hpp)|solve/(brief|layout_findings|concession_findings)|answer/answer\.)"
)


def brief_groups():
    """The groups of sentences that the brief module has, by their files."""
    text = without_comments((ROOT / "wasm" / "brief_english.cpp").read_text())
    return {f"{group}.cpp" for group in re.findall(r"(english_[a-z_]+)\(\)", text)}


def without_comments(text):
    keep = lambda m: m.group(0) if m.group(0).startswith('"') else re.sub(r"[^\n]", " ", m.group(0))
    return re.sub(r'"(?:[^"\\\n]|\\.)*"|//[^\n]*|/\*.*?\*/', keep, text, flags=re.S)


def sources():
    for folder in ("engine", "cli", "wasm"):
        for path in sorted((ROOT / folder).rglob("*.[ch]pp")):
            yield path, without_comments(path.read_text())


def main():
    wrong = []
    used = set()
    for path, text in sources():
        name = path.relative_to(ROOT).as_posix()
        if path.parent != WORDS:
            used |= set(LITERAL.findall(text))
        elif not path.name.startswith(("english", "american")):
            used |= set(LITERAL.findall(text))
        if FREE_FILES.match(name):
            continue
        for match in LITERAL.finditer(text):
            line_start = text.rfind(";", 0, match.start()) + 1
            if text[text.rfind("\n", 0, match.start()) + 1 : match.start()].lstrip().startswith("#include"):
                continue
            if match.group(1) not in NAMES and SENTENCE.search(match.group(1)) and not FREE_CALLS.search(text[line_start : match.start()]):
                line = text.count("\n", 0, match.start()) + 1
                wrong.append(f'{name}:{line}: "{match.group(1)}" is told outside engine/words/')
    sentences = {}
    groups = brief_groups()
    told_later = set()
    for path in sorted(WORDS.glob("*.cpp")):
        text = without_comments(path.read_text())
        for match in re.finditer(r'\{\s*"([a-z0-9-]+)",\s*((?:"(?:[^"\\\n]|\\.)*"\s*)+)\}', text):
            if match.group(1) in sentences:
                wrong.append(f"{path.relative_to(ROOT)}: the sentence {match.group(1)} stands twice")
            if path.name not in groups:
                told_later.add(match.group(1))
            sentences[match.group(1)] = "".join(LITERAL.findall(match.group(2)))
    rules = set()
    for path, text in sources():
        if path.name.startswith("rules_") and path.parent.name == "catalogue":
            rules |= set(re.findall(r'(?:\{\s*|with_figures\()"([a-z0-9-]+)",', text))
    told_by_words = {"list-and", "list-or"} | {f"rule-{rule}" for rule in rules}
    for name in sentences:
        if name not in used and name not in told_by_words:
            wrong.append(f"engine/words: nothing tells the sentence {name}")
    for path, text in sources():
        for match in re.finditer(r'\bfact\(\s*"([^"]*)"', text):
            if match.group(1) not in sentences:
                wrong.append(f"{path.relative_to(ROOT)}: no language has the sentence {match.group(1)}")
    for path, text in sources():
        if BRIEF.match(path.relative_to(ROOT).as_posix()):
            for name in sorted(told_later & set(LITERAL.findall(text))):
                wrong.append(f"{path.relative_to(ROOT)}: the brief module's language has no sentence {name}")
    for rule in rules:
        if f"rule-{rule}" not in sentences:
            wrong.append(f"engine/words: the rule {rule} has no sentence")
    print("\n".join(wrong) or f"{len(sentences)} sentences, all told, none elsewhere")
    return 1 if wrong else 0


if __name__ == "__main__":
    sys.exit(main())
