"""One printed set beside its answer: its sheets, read one by one, and what was found."""
import json
from collections import Counter
from pathlib import Path

import phrases
from lengths import INCH, MM, lengths_in
from pdf import Page, read_pages
from shapes import File
from sheets import Sheet, read_furniture
from world import World

# Figures of published rules, by the words that a rule opens with: typed from the rule's document, not from the sheets.
# "a | b": the one or the other, as the tape is.
PUBLISHED = {
    'Head joints of two courses stand half a unit apart': '1/2 in | 12 mm',
    'No piece is shorter than a quarter unit as laid': '3 5/8 in, 16 in, 90 mm, 390 mm, 102 mm, 440 mm',
    'Head joints of a run are all alike': '1/8 in | 3 mm',
    'A head joint may be': '1/4 in, 3/8 in',
    'A bed joint may be': '1/8 in',
    'The first bed joint is': '1/4 in, 3/4 in, 1 1/4 in',
    'Bed joints, and the top of a bearing wall': '1/4 in, 10 ft, 1/2 in',
    'The top of a footing that carries masonry': '1/2 in',
    'Control joints stand no further apart than the lesser of': '25 ft',
    'In walls of': '4 in, 20 ft',
    'That spacing goes with horizontal steel': '',
    'Movement joints in concrete block': '6 m, 10 mm',
    'Grout pours higher than': '5\'-4", 3 in, 32 in, 4 ft, 5 ft',
    'Grout in lifts over': '12 in',
    'Pieces of joint reinforcement lap at least': '6 in | 150 mm',
    'Grout goes in by lifts of at most': '5\'-4", 12\'-8", 10 in, 11 in',
    'Mortar that stands out': '1/2 in',
    'Fresh grout pushes like a liquid': '5\'-4"',
    '140 lb/cu ft x': '5.33 ft',
    "(K sqrt f'm) in inches and psi, at least": '12 in',
    'A lap is 0.002 db fs': '12 in',
    'Bars are sold up to': '20 ft | 6 m',
    'A bar ends': '1 1/2 in | 40 mm',
    'Between a bar and the unit there is at least': '1/4 in, 1/2 in',
    'Along the wall a vertical bar stands within': '2 in',
    'A lintel bears at least': '4 in',
    'Before a wall is begun, keep people out': '4 ft',
    'A wall rises by at most': '1500 mm',
    'A wall over': '8 ft',
    'brace over': '8 ft',
    'Masonry stands a day before it is filled': '5 ft | 1500 mm',
    "One code's sill plates": '1/2 in, 7 in, 6 ft, 12 in',
    "The same code's anchors of a roof": '1/2 in, 6 ft, 16 in, 6 in',
    'New masonry is fogged three times a day': '2 ft',
}


def stands_behind(text, before, one):
    """A figure in brackets right behind another: the same by the other tape."""
    return text[before.end:one.start] == ' (' and text[one.end:one.end + 1] == ')'


def by_other_tape(before, one):
    """The figure in front, where the one in brackets is it, to a tenth of a mm or a sixteenth; else what it would be."""
    step = MM / 10 if one.form in ('mm', 'm') else INCH / 16
    return one.value if abs(one.value - before.value) <= step / 2 else before.value


class Published:
    """Claims the lengths of rules that are worded as above and whose figures are those."""

    def __init__(self):
        self.figures = {
            words: [[one.value for one in lengths_in(choice)] for choice in figures.split('|')]
            for words, figures in PUBLISHED.items()
        }

    def check(self, sheet, passage):
        for words, choices in self.figures.items():
            at = passage.text.find(words)
            if at < 0:
                continue
            lengths, claimed = [], []
            for one in [one for one in passage.lengths if one.start >= at]:
                if lengths and stands_behind(passage.text, lengths[-1], one):
                    sheet.same(one.value, by_other_tape(lengths[-1], one), f'published rule "{words}"', passage)
                    claimed.append(one)
                elif len(lengths) == len(choices[0]):
                    break
                else:
                    lengths.append(one)
            printed = [one.value for one in lengths]
            figures = printed if printed in choices else choices[0]
            sheet.same(printed, figures, f'published rule "{words}"', passage)
            passage.claimed.update(one.start for one in lengths + claimed)


BANDS_FROM, BANDS_TO = 52, 0.92   # points from a page's top, under its title; share of its width that a border spans


def is_of_bands(page):
    title = page.texts[0].text
    part = phrases.whole(phrases.PART, title)
    if phrases.whole(phrases.TITLES['elevations'], title) or phrases.whole(phrases.TITLES['plates'], title):
        return True
    title = part['title'] if part else title
    return any(phrases.whole(phrases.TITLES[sort], title) for sort in ('strips', 'forms', 'form', 'plate'))


def bands_of(page, shapes):
    """A page's drawings, one under another between level lines across it: each begins with its own title."""
    caution = next(text for text in page.texts if text.text == 'CAUTION')
    scale = next(int(text.text[2:]) for text in page.texts
                 if text.top < 45 and text.text.startswith('1:') and text.text[2:].isdigit())
    borders = [line.points[0][1] for line in shapes.lines
               if len(line.points) == 2 and abs(line.points[0][1] - line.points[1][1]) < 0.01
               and abs(line.points[0][0] - line.points[1][0]) > (page.width - 72) * BANDS_TO
               and BANDS_FROM < line.points[0][1] < caution.top - 60]
    edges = [BANDS_FROM] + sorted(borders) + [min(caution.top, page.height) - 14]
    bands = []
    for top, bottom in zip(edges, edges[1:]):
        texts = [text for text in page.texts if top <= text.y < bottom and text is not page.texts[0]]
        title = next((text for text in texts if any(phrases.whole(phrases.TITLES[sort], text.text)
                                                    for sort in ('strip', 'form', 'elevation', 'plate'))), None)
        if texts:
            texts.sort(key=lambda text: text is not title)  # else in the order drawn
            bands.append(Page(page.number, page.width, page.height, texts, scale, top, bottom))
    return bands


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
        for page in self.parts_of_pages():
            title = page.texts[0].text
            part = phrases.whole(phrases.PART, title)
            base = part['title'] if part else title
            # The frame of a sheet with one board has that board's title.
            found.setdefault((base, id(page) in self.frames), []).append(page)
        sheets = []
        for (base, is_frame), pages in found.items():
            if is_frame:
                sheets.append(('forms', base + ', frame', {}, pages))
                continue
            for sort, templates in phrases.TITLES.items():
                match = phrases.whole(templates, base)
                if match:
                    sheets.append((sort, base, match.groupdict(), pages))
                    break
            else:
                sheets.append(('unknown', base, {}, pages))
        return sheets

    def parts_of_pages(self):
        """The pages; one that holds several drawings as its frame and a part for each of them."""
        parts, self.frames = [], set()
        for page in self.pages:
            bands = bands_of(page, self.file.shapes(page.number)) if is_of_bands(page) else []
            inside = {id(text) for band in bands for text in band.texts}
            frame = [text for text in page.texts if id(text) not in inside]
            frame = Page(page.number, page.width, page.height, frame, page.scale)
            self.frames |= {id(frame)} if bands else set()
            parts += [frame if bands else page] + bands
        return parts

    def read(self):
        """Reads every sheet: the sheets with their ledgers."""
        return [self.read_one(entry) for entry in self.sheets]

    def read_one(self, entry):
        from readers import READERS
        sort, title, fields, pages = entry
        sheet = Sheet(sort, title, fields, pages, self)
        for page in pages:
            if page.top is None:
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
