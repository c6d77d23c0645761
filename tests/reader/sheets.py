"""Sheets of a set as passages of text, tables and what was found wrong: what every reader of one sort of sheet uses."""
import re

import phrases
from lengths import INCH, MM, agrees, lengths_in

SIXTEENTH = INCH // 16


class Passage:
    """Words that belong together, from one text or several in order."""
    __slots__ = ('text', 'texts', 'lengths', 'claimed', 'told', 'page')

    def __init__(self, texts):
        self.texts = texts
        self.text = ' '.join(text.text for text in texts)
        self.page = texts[0].page if texts else None
        self.lengths = lengths_in(self.text)
        self.claimed, self.told = set(), set()

    @property
    def left(self):
        return min(text.left for text in self.texts)

    @property
    def top(self):
        return min(text.top for text in self.texts)

    def __repr__(self):
        return repr(self.text)


class Sheet:
    """One sheet of the set, over all its pages, and the ledger of what was compared on it."""

    def __init__(self, sort, title, fields, pages, book):
        self.sort, self.title, self.fields, self.pages, self.book = sort, title, fields, pages, book
        self.passages, self.taken, self.errors = [], set(), []
        self.headings = {}  # by the heads of a table: the heading under which its rows stand so far

    @property
    def world(self):
        return self.book.world

    def shapes(self, page):
        shapes = self.book.file.shapes(page.number)
        return shapes if page.top is None else shapes.between(page.top, page.bottom)

    def texts(self, page):
        """Texts of a page that no passage has yet."""
        return [text for text in page.texts if id(text) not in self.taken]

    def take(self, texts):
        passage = Passage(texts)
        self.taken.update(id(text) for text in texts)
        self.passages.append(passage)
        return passage

    def finish(self):
        """What nobody read becomes passages too: its lengths are not covered."""
        for page in self.pages:
            for text in self.texts(page):
                self.take([text])
            for text in page.texts:
                if text.text.endswith('…'):
                    self.errors.append((self.title, page.number, 'words cut short', text.text, 'whole words'))

    # ---- comparing -------------------------------------------------------------------------------------------------

    def wrong(self, what, printed, expected, passage=None):
        page = passage.page.number if passage is not None and passage.page is not None else self.pages[0].number
        self.errors.append((self.title, page, what, str(printed), str(expected)))

    def same(self, got, expected, what, passage=None):
        if got != expected:
            self.wrong(what, got, expected, passage)
            return False
        return True

    def printed(self, passage, start):
        return next((one for one in passage.lengths if one.start == start), None)

    def length(self, passage, match, field, exact, what, step=None):
        """The length of a template's field, both forms if there are two, against an exact one."""
        for name in (field, field + '__2'):
            if name not in match.re.groupindex or match[name] is None:
                continue
            one = self.printed(passage, match.start(name))
            if one is None:
                self.wrong(f'{what}: no length', match[name], exact, passage)
                continue
            passage.claimed.add(one.start)
            if exact is None or not agrees(one.value, exact, step or self.step_of(one)):
                self.wrong(what, one.text, self.book.text(exact), passage)

    def step_of(self, one):
        """What a length is rounded to: a millimetre, or a sixteenth of an inch."""
        return MM if one.form in ('mm', 'm') else SIXTEENTH

    def value(self, passage, match, field):
        """The value printed; both forms must say the same. Claims nothing."""
        one = self.printed(passage, match.start(field))
        return None if one is None else one.value

    def claim_all(self, passage):
        passage.claimed.update(one.start for one in passage.lengths)

    def tell(self, passage, low=0, high=10 ** 9):
        """Lengths of words that are the answer's or the job's own: compared as words, derived from nothing."""
        told = {one.start for one in passage.lengths if low <= one.start < high}
        passage.claimed |= told
        passage.told |= told

    # ---- reading ---------------------------------------------------------------------------------------------------

    def find(self, templates):
        """The first passage already taken, or paragraph, that holds a template: (passage, match)."""
        for passage in self.passages:
            found = phrases.part(templates, passage.text)
            if found:
                return passage, found
        return None, None


class Row:
    __slots__ = ('cells', 'heading', 'page')

    def __init__(self, cells, heading, page):
        self.cells, self.heading, self.page = cells, heading, page

    def text(self, column):
        cell = self.cells[column]
        return '' if cell is None else cell.text


def rules_of(shapes, left, right):
    """Level lines that go across a table, from the top: (height, width of the pen)."""
    found = {}
    for line in shapes.lines:
        if len(line.points) == 2 and abs(line.points[0][1] - line.points[1][1]) < 0.01:
            low, high = sorted((line.points[0][0], line.points[1][0]))
            if low < left + 2 and high > right - 2:
                found[round(line.points[0][1], 2)] = line.width
    return sorted(found.items())


def table_rules(rules, first):
    """From the line under a table's head to its last: the next heavier line is under the head of another table."""
    found = []
    for y, width in rules:
        if y < first - 0.01:
            continue
        if found and width > 0.9:
            break
        found.append(y)
    return found


def head_of(sheet, page, names):
    """The texts of a table's head on a page, in the order of its columns; None where the page has no such table."""
    texts = sheet.texts(page)
    for first in texts:
        if first.text not in (names[0], phrases.american(names[0])):
            continue
        level = sorted((text for text in texts if abs(text.bottom - first.bottom) < 1 and not text.turned),
                       key=lambda text: text.left)
        heads, rest = [], [text for text in level if text.left >= first.left]
        for name in names:
            at = next((at for at, text in enumerate(rest) if text.text.startswith((name, phrases.american(name)))),
                      None)
            if at is None:
                break
            heads.append(rest[at])
            rest = rest[at + 1:]
        if len(heads) == len(names):
            return heads
    return None


def read_table(sheet, page, names, has_boxes=False):
    """Rows of the table with that head on one page: cells by column, or one heading over the whole width."""
    heads = head_of(sheet, page, names)
    if heads is None:
        return []
    under = [line for line in sheet.shapes(page).lines if len(line.points) == 2
             and abs(line.points[0][1] - line.points[1][1]) < 0.01 and line.points[0][1] > heads[0].bottom - 6]
    widest = [line for line in under if heads[0].left - 45 < min(point[0] for point in line.points) < heads[0].left
              and max(point[0] for point in line.points) > heads[-1].left]
    if not widest:
        return []
    over = min(widest, key=lambda line: (line.points[0][1], -abs(line.points[0][0] - line.points[1][0])))
    ends = sorted(point[0] for point in over.points)
    rules = table_rules(rules_of(sheet.shapes(page), ends[0], ends[1]), over.points[0][1])
    inside = [text for text in sheet.texts(page) if not text.turned and ends[0] - 1 <= text.left <= ends[1]]
    head_texts = [text for text in inside if heads[0].bottom - 8 <= text.bottom <= rules[0] + 4]
    sheet.take(sorted(head_texts, key=lambda text: (text.top, text.left)))
    rows = []
    for top, bottom in zip(rules, rules[1:]):
        texts = [text for text in inside if top - 2 < text.y < bottom + 1 and id(text) not in sheet.taken]
        if texts:
            rows.append(row_of(sheet, page, texts, [head.left for head in heads], ends[0], has_boxes))
    check_headings(sheet, tuple(map(str, names)), rows)
    return rows


def check_headings(sheet, names, rows):
    """Where a page goes on in the middle of a heading's rows it says that heading again."""
    if rows and names in sheet.headings and not rows[0].heading:
        passage = next(cell for cell in rows[0].cells if cell)
        sheet.wrong('heading above rows that go on', passage.text, sheet.headings[names], passage)
    headings = [row.cells[0].text for row in rows if row.heading]
    if headings:
        sheet.headings[names] = headings[-1]


def row_of(sheet, page, texts, lefts, edge, has_boxes):
    alone = all(text.left < edge + 6 for text in texts)
    if alone and (has_boxes or texts[0].right > lefts[1] or is_heading(sheet.sort, texts[0].text)):
        return Row([sheet.take(texts)] + [None] * (len(lefts) - 1), True, page)
    columns = [[] for _ in lefts]
    for text in texts:
        # Columns of numbers end under their head's end: they may start left of nothing, never left of the head before.
        place = max((k for k, left in enumerate(lefts) if text.left >= left - 3), default=0)
        columns[place].append(text)
    cells = [sheet.take(sorted(column, key=lambda text: (text.top, text.left))) if column else None
             for column in columns]
    return Row(cells, False, page)


def is_heading(sort, text):
    if sort == 'reckoned':
        return text in phrases.RECKONED_HEADINGS
    if sort == 'readings':
        return any(phrases.whole(one, text) for one in (phrases.FOUND_TAPINGS, phrases.FOUND_MOVES,
                                                        phrases.FOUND_HEIGHTS,
                                                        phrases.FOUND_BED, phrases.FOUND_DOWELS, phrases.FOUND_FIT))
    return False


def take_paragraphs(sheet, page):
    """Level texts that stand under one another from one left edge become one passage each."""
    texts = [text for text in sheet.texts(page) if not text.turned]
    run = []
    for text in texts:
        if run and abs(text.left - run[-1].left) < 0.6 and 0 < text.top - run[-1].top < text.high * 1.35 \
                and abs(text.high - run[-1].high) < 0.1:
            run.append(text)
            continue
        if len(run) > 0:
            sheet.take(run)
        run = [text]
    if run:
        sheet.take(run)


# ---- what every sheet has --------------------------------------------------------------------------------------------

SCALE = re.compile(r'1:(\d+)')


def read_furniture(sheet, page):
    """Title, scale bar, print ruler, caution and title block: taken, and checked where they measure."""
    texts = page.texts
    sheet.take([texts[0]])
    caution = next((text for text in texts if text.text == 'CAUTION'), None)
    if caution is not None:
        foot = caution.bottom + (8 if caution.turned else 26)  # beside the ruler, or across the sheet
        words = [text for text in texts if text.left > caution.right and text.top > caution.top - 12
                 and text.top < foot and not text.turned]
        sheet.take([caution])
        passage = sheet.take(words)
        sheet.book.published.check(sheet, passage)
    for text in texts:
        if caution is None or id(text) in sheet.taken:
            continue
        ruler = text.top > caution.top - 14 and text.left < caution.left - 4
        if ruler or text.top > caution.bottom + 10:
            sheet.take([text])
    read_scale_bar(sheet, page)


def read_scale_bar(sheet, page):
    """Numbers of the scale bar stand where its scale puts them."""
    texts = sheet.texts(page)
    shown = next((text for text in texts if text.top < 45 and SCALE.fullmatch(text.text)), None)
    if shown is None:
        return
    bar = [text for text in texts if 26 < text.top < 46 and text.left > shown.right - 10 and text is not shown]
    bar.sort(key=lambda text: text.left)
    sheet.take([shown])
    if len(bar) < 2:
        return
    scale = int(SCALE.fullmatch(shown.text)[1])
    last = sheet.take([bar[-1]])
    for text in bar[:-1]:
        sheet.take([text])
    if len(last.lengths) == 1 and last.text.split(' ')[0].isdigit() and len(last.text.split(' ')) == 2:
        one = last.lengths[0]
        unit = one.value / int(one.text.split(' ')[0])
        digits = last.text.split(' ')[0]
        places = [((text.left + text.right) / 2, int(text.text)) for text in bar[:-1] if text.text.isdigit()]
        if len(places) == 1:  # a bar of one length: from its nought to the middle of its number
            points = ((last.left + last.right) / 2 - places[0][0]) / (int(digits) - places[0][1]) / 72 * 25_400_000 * scale
            last.claimed.add(one.start)
            if abs(points - unit) > unit / 20:
                sheet.wrong('scale bar', f'{points:.0f} nm a unit', unit, last)
        if len(places) >= 2 and places[1][1] > 0:
            per = (places[-1][0] - places[0][0]) / (places[-1][1] - places[0][1])
            points = per / 72 * 25_400_000 * scale
            passage_ok = abs(points - unit) < unit / 50
            last.claimed.add(one.start)
            if not passage_ok:
                sheet.wrong('scale bar', f'{points:.0f} nm a unit', unit, last)
            if int(digits) - places[-1][1] != places[1][1] - places[0][1]:
                sheet.wrong('scale bar, last number', last.text, places[-1][1] + places[1][1] - places[0][1], last)
