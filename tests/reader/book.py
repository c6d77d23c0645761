"""One printed set beside its answer: its sheets, read one by one, and what was found."""
import json
from collections import Counter
from pathlib import Path

import phrases
from lengths import INCH, MM, lengths_in
from pdf import read_pages
from shapes import File
from sheets import Sheet, read_furniture
from world import World

# Figures of published rules, by the words that a rule opens with: typed from the rule's document, not from the sheets.
PUBLISHED = {
    'Head joints of two courses stand half a unit apart': '1/2 in, 12 mm',
    'No piece is shorter than a quarter unit as laid': '3 5/8 in, 16 in, 90 mm, 390 mm, 102 mm, 440 mm',
    'Head joints of a run are all alike': '1/8 in, 3 mm',
    'A head joint may be': '1/4 in, 3/8 in',
    'A bed joint may be': '1/8 in',
    'The first bed joint is': '3/4 in, 1 1/4 in',
    'Bed joints, and the top of a bearing wall': '1/4 in, 10 ft, 1/2 in',
    'The top of a footing that carries masonry': '1/2 in',
    'Control joints stand no further apart than the lesser of': '25 ft',
    'In walls of': '4 in, 20 ft',
    'That spacing goes with horizontal steel': '',
    'Movement joints in concrete block': '6 m, 10 mm',
    'Grout pours higher than': '5\'-4", 3 in, 32 in, 5 ft',
    'Grout goes in by lifts of at most': '5\'-4", 12\'-8", 11 in',
    'Mortar that stands out': '1/2 in',
    'Fresh grout pushes like a liquid': '5\'-4"',
    '140 lb/cu ft x': '5.33 ft',
    'Between a bar and the unit there is at least': '1/4 in, 1/2 in',
    'Along the wall a vertical bar stands within': '2 in',
    'A lintel bears at least': '4 in',
    'Before a wall is begun, keep people out': '4 ft',
    'A wall over': '8 ft',
    'brace over': '8 ft',
}


class Published:
    """Claims the lengths of rules that are worded as above and whose figures are those."""

    def __init__(self):
        self.figures = {words: [one.value for one in lengths_in(figures)] for words, figures in PUBLISHED.items()}

    def check(self, sheet, passage):
        for words, figures in self.figures.items():
            at = passage.text.find(words)
            if at < 0:
                continue
            lengths = [one for one in passage.lengths if one.start >= at][:len(figures)]
            sheet.same([one.value for one in lengths], figures, f'published rule "{words}"', passage)
            passage.claimed.update(one.start for one in lengths)


class Book:
    published = Published()

    def __init__(self, pdf, answer, pages=None, file=None, sheets=None):
        self.answer = answer
        self.world = World(answer)
        self.file = file or File(pdf)
        self.pages = pages or read_pages(pdf)
        self.sheets = sheets or self.sorted_sheets()

    def text(self, value):
        """A length for people: in the job's tape."""
        if value is None:
            return 'none'
        unit, name = (INCH, '"') if self.world.inches else (MM, ' mm')
        return f'{float(value / unit):.4f}'.rstrip('0').rstrip('.') + name

    def sorted_sheets(self):
        """Pages gathered to sheets by their titles without the part's number."""
        found = {}
        for page in self.pages:
            title = page.texts[0].text
            part = phrases.whole(phrases.PART, title)
            base = part['title'] if part else title
            found.setdefault(base, []).append(page)
        sheets = []
        for base, pages in found.items():
            for sort, templates in phrases.TITLES.items():
                match = phrases.whole(templates, base)
                if match:
                    sheets.append((sort, base, match.groupdict(), pages))
                    break
            else:
                sheets.append(('unknown', base, {}, pages))
        return sheets

    def read(self):
        """Reads every sheet: the sheets with their ledgers."""
        return [self.read_one(entry) for entry in self.sheets]

    def read_one(self, entry):
        from readers import READERS
        sort, title, fields, pages = entry
        sheet = Sheet(sort, title, fields, pages, self)
        for page in pages:
            attempt(read_furniture, sheet, page)
        if sort == 'unknown':
            sheet.wrong('title', title, 'a sheet that the reader knows')
        else:
            attempt(READERS[sort], sheet)
        sheet.finish()
        return sheet


def attempt(reader, sheet, *more):
    """A sheet that throws the reader off its way is an error of that sheet."""
    try:
        reader(sheet, *more)
    except Exception as trouble:  # noqa: BLE001: whatever it is, the sheet is not as it should be
        where = trouble.__traceback__
        while where.tb_next is not None:
            where = where.tb_next
        sheet.wrong('cannot be read', f'{type(trouble).__name__}: {trouble}',
                    f'{where.tb_frame.f_code.co_name}:{where.tb_lineno}')


def load(folder):
    """The sets of a folder that `plan` wrote: answer and the papers found."""
    folder = Path(folder)
    answer = json.loads((folder / 'answer.json').read_text())
    return answer, sorted(folder.glob('set-*.pdf'))


def tally(sheets):
    """By sort of sheet: lengths compared, those of them compared as words only, all printed ones."""
    covered, told, whole = Counter(), Counter(), Counter()
    for sheet in sheets:
        for passage in sheet.passages:
            whole[sheet.sort] += len(passage.lengths)
            covered[sheet.sort] += len(passage.claimed)
            told[sheet.sort] += len(passage.told)
    return covered, told, whole


def uncovered(sheets):
    """(sort, words) of every length that nothing was compared with."""
    left = []
    for sheet in sheets:
        for passage in sheet.passages:
            for one in passage.lengths:
                if one.start not in passage.claimed:
                    left.append((sheet.sort, sheet.title, passage.page.number, one.text, passage.text))
    return left
