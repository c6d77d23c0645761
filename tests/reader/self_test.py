"""Does the reader notice? Answers and sheets are made wrong on purpose, one number or word at a time: every one is to
be found, on every sort of sheet that shows it."""
import copy
import re
import tempfile
from fractions import Fraction
from pathlib import Path

import phrases
from book import Book
from lengths import INCH, MM, lengths_in
from pdf import read_pages
from shapes import File
from world import nm


class Case:
    """One paper of a planned example, read once; wrong answers and words are read against it."""

    def __init__(self, program, path, work, paper):
        from run import plan
        from book import load
        code, talk = plan(program, path, work, paper)
        if code != 0:
            raise RuntimeError(talk)
        self.answer, papers = load(work)
        self.name, self.pdf = path.stem, papers[0]
        self.pages, self.file = read_pages(self.pdf), File(self.pdf)
        self.right = Book(self.pdf, self.answer, self.pages, self.file)
        self.sheets = {entry[1]: entry for entry in self.right.sheets}
        self.whole = {title: self.marks_of(self.right.read_one(entry)) for title, entry in self.sheets.items()}

    @staticmethod
    def marks_of(sheet):
        return set(sheet.errors), sum(len(passage.claimed) for passage in sheet.passages)

    def noticed(self, book, title):
        """An error that the right sheet does not have, or a length that nothing is compared with any more."""
        errors, claimed = self.marks_of(book.read_one(self.sheets[title]))
        return bool(errors - self.whole[title][0]) or claimed < self.whole[title][1]

    def missed(self, change, keys, where):
        """Sorts of sheets on which a wrong answer is not noticed. `where`: by sort the side and course, or None."""
        wrong = dict(self.answer)
        wrong.update((key, copy.deepcopy(self.answer[key])) for key in keys)
        change(wrong)
        book, missed = Book(self.pdf, wrong, self.pages, self.file, self.right.sheets), []
        for sort, fields in where.items():
            titles = [base for base, entry in self.sheets.items()
                      if sort in ('any', entry[0]) and (fields is None or fields.items() <= entry[2].items())]
            if not any(self.noticed(book, base) for base in titles):
                missed.append(sort)
        return missed


def of(side, course=None):
    """The sheets of one side, and course."""
    return {'side': side} if course is None else {'side': side, 'course': str(course)}


# ---- wrong answers ---------------------------------------------------------------------------------------------------

def step_of(answer):
    return INCH // 16 if answer['job']['tape'] == 'inches' else MM


def wrong_marks(answer):
    """Each block end of courses 1 and 2, one step further."""
    for at, run in enumerate(answer['runs']):
        if run['course'] > 2:
            continue
        where = {'strip': of(run['side'], run['course'])}
        if run['course'] == 1 and 'bed' in answer.get('ground', {}).get('levels', {}):
            where['bed'] = of(run['side'])
        for place in range(len(run['pieces'])):
            def change(wrong, at=at, place=place):
                wrong['runs'][at]['pieces'][place][3] += step_of(wrong)
            yield f'mark of {run["pieces"][place][0]}', change, ['runs'], where


def listed(answer):
    """As long as nothing is laid, the strips' boxes stand for the list of marks."""
    return bool(answer['job'].get('laid'))


def wrong_wall_marks(answer):
    """Each mark listed at the wall, one step further."""
    from read_wall import shown
    if not listed(answer):
        return
    for at, course in enumerate(answer.get('laying', {}).get('at_hand', [])):
        for place, mark in enumerate(course['marks']):
            if shown(mark):
                def change(wrong, at=at, place=place):
                    wrong['laying']['at_hand'][at]['marks'][place]['at']['nm'] += step_of(wrong)
                yield f'mark {place} of {course["name"]}', change, ['laying'], {'marks': None}


def wrong_dowels(answer):
    """Each dowel half a cell away: in the list, on the board, on its template and on the strip."""
    series = {row['id']: row for row in answer['series']}
    for at, bar in enumerate(answer['bars']):
        if bar['first_course'] != 1:
            continue
        side = next(side for side in answer['sides'] if side['name'] == bar['side'])
        quarter = (nm(series[side['series']]['half']) + nm(series[side['series']]['joint'])) // 4

        def change(wrong, at=at, quarter=quarter):
            wrong['bars'][at]['centre']['nm'] += quarter
        where = {'dowels': None, 'form': of(bar['side']), 'template': None,
                 'strip': of(bar['side'], 1)}
        yield f'dowel at {bar["centre"]["text"]} of {bar["side"]}', change, ['bars'], where


def wrong_jambs(answer):
    for at, opening in enumerate(answer['openings']):
        side = opening['side']
        where = {'openings': None, 'elevation': of(side)}
        if opening['first_course'] == 1:
            where['strip'] = of(side, 1)
        if any(dowel['side'] == side for dowel in answer['dowels']):
            where['form'] = of(side)
        if listed(answer) and any(mark.get('opening') == opening['name']
                                  for course in answer.get('laying', {}).get('at_hand', [])
                                  for mark in course['marks']):
            where['marks'] = None
        for edge in ('from', 'to'):
            def change(wrong, at=at, edge=edge):
                wrong['openings'][at][edge]['nm'] += step_of(wrong)
                if 'planned' in wrong['openings'][at]:  # what is poured and laid stands where it was planned
                    wrong['openings'][at]['planned'][edge]['nm'] += step_of(wrong)
            yield f'{edge} of {opening["name"]}', change, ['openings'], where


def wrong_cuts(answer):
    """Each cut length of the building, one step longer."""
    lengths = {}
    for at, run in enumerate(answer['runs']):
        for place, piece in enumerate(run['pieces']):
            if piece[6] != 'none':
                lengths.setdefault((piece[1], piece[2]), []).append((at, place))
    for (kind, length), places in lengths.items():
        def change(wrong, places=places):
            for at, place in places:
                wrong['runs'][at]['pieces'][place][2] += step_of(wrong)
        yield f'{kind} cut to {length}', change, ['runs'], {'saw': None, 'elevation': None, 'summary': None}


def wrong_beds(answer):
    levels = answer.get('ground', {}).get('levels', {})
    if 'bed' not in levels:
        return

    def top(wrong):
        wrong['ground']['levels']['bed']['top']['nm'] += step_of(wrong)
        wrong['ground']['levels']['bed']['choices'][0]['top']['nm'] += step_of(wrong)
    yield 'top of the bed', top, ['ground'], {'bed': None, 'readings': None}
    for at, station in enumerate(levels['stations']):
        def height(wrong, at=at):
            wrong['ground']['levels']['stations'][at]['height']['nm'] += step_of(wrong)
        if station['surface'] == 'bearing' and at > 0:
            yield f'height of {station["name"]}', height, ['ground'], {'bed': None, 'readings': None}
    for at, unit in enumerate(levels['bed']['units']):
        def bed(wrong, at=at):
            wrong['ground']['levels']['bed']['units'][at]['thinnest']['nm'] -= step_of(wrong)
        yield f'bed under {unit["side"]}-1-{unit["number"]}', bed, ['ground'], {'bed': of(unit['side'])}


def wrong_counts(answer):
    def cost(wrong):
        wrong['cost']['units'] += 1
    yield 'units laid', cost, ['cost'], {'summary': None}
    for at, row in enumerate(answer['counts']['to_buy']):
        def buy(wrong, at=at):
            wrong['counts']['to_buy'][at]['total'] += 1
        yield f'{row["kind"]} to buy', buy, ['counts'], {'summary': None}
    for at, side in enumerate(answer['sides']):
        def lost(wrong, name=side['name']):
            run = next(run for run in reversed(wrong['runs']) if run['side'] == name and run['pieces'])
            run['pieces'].pop()
        yield f'a unit of {side["name"]} lost', lost, ['runs'], {'summary': None}
    for kind in sorted({piece[1] for run in answer['runs'] for piece in run['pieces']}):
        def other(wrong, kind=kind):
            piece = next(piece for run in wrong['runs'] for piece in run['pieces'] if piece[1] == kind)
            piece[1] = 'solid' if kind != 'solid' else 'full'
        yield f'a {kind} unit is another', other, ['runs'], {'summary': None}


def wrong_heights(answer):
    for at, course in enumerate(answer['courses']):
        def change(wrong, at=at):
            wrong['courses'][at]['top']['nm'] += step_of(wrong)
        yield f'top of course {course["number"]}', change, ['courses'], \
            {'rod': None, 'elevation': of(answer['sides'][0]['name'])}
    for at, opening in enumerate(answer['openings']):
        for key in ('soffit', 'underside'):
            def change(wrong, at=at, key=key):
                wrong['openings'][at][key]['nm'] += step_of(wrong)
            yield f'{key} of {opening["name"]}', change, ['openings'], \
                {'rod': None, 'openings': None, 'elevation': of(opening['side'])}
    for at, lintel in enumerate(answer['lintels']):
        for key in ('start_bearing', 'end_bearing'):
            def change(wrong, at=at, key=key):
                wrong['lintels'][at][key]['nm'] += step_of(wrong)
            yield f'{key} over {lintel["opening"]}', change, ['lintels'], {'openings': None}


def wrong_places(answer):
    """A side that starts a thickness further, as from its wall's other face: what the words name is another point."""
    for at, side in enumerate(answer['sides']):
        def change(wrong, at=at):
            series = next(row for row in wrong['series'] if row['id'] == wrong['sides'][at]['series'])
            way = {'west': (-1, 0), 'north': (0, 1), 'east': (1, 0), 'south': (0, -1)}[wrong['sides'][at]['heading']]
            for axis in (0, 1):
                wrong['sides'][at]['start_point'][axis] += way[axis] * nm(series['thickness'])
        if side['interior']:
            continue
        where = {'strip': of(side['name'], 1)}
        if listed(answer):
            where['marks'] = None
        if any(dowel['side'] == side['name'] for dowel in answer['dowels']):
            where.update({'dowels': None, 'template': None, 'form': of(side['name'])})
        yield f'{side["name"]} starts a thickness further', change, ['sides'], where


def wrong_tops(answer):
    """A bolt, the end of a piece of plate, a bearing's course, a bar to look at: wherever their lists stand."""
    for at, piece in enumerate(answer['plates']):
        def bolt(wrong, at=at):
            wrong['plates'][at]['bolts'][0]['at']['nm'] += step_of(wrong)

        def end(wrong, at=at):
            wrong['plates'][at]['to']['nm'] -= step_of(wrong)
        yield f'first bolt of piece {at}', bolt, ['plates'], {'any': None}
        yield f'end of piece {at}', end, ['plates'], {'any': None}
    for at, opening in enumerate(answer['openings']):
        if 'lintel' in opening and any(course['bond_beam'] for course in answer['courses']):
            def deep(wrong, at=at):
                wrong['openings'][at]['lintel']['first_course'] += 1
            yield f'first course of the lintel of {opening["name"]}', deep, ['openings'], {'any': None}
    for at, pour in enumerate(answer['inspection']):
        def photo(wrong, at=at):
            wrong['inspection'][at]['bars'][0]['photo'] = 'other-1'
        if pour['bars']:
            yield f'photo before pour {at + 1}', photo, ['inspection'], {'any': None}


WRONG = [wrong_tops, wrong_marks, wrong_wall_marks, wrong_dowels, wrong_jambs, wrong_cuts, wrong_beds, wrong_counts, wrong_heights,
         wrong_places]


# ---- wrong words and numbers on paper --------------------------------------------------------------------------------

def written(value, form):
    """A length in the form that another was written in."""
    if form in UNITS:
        number = value / UNITS[form]
        return f'{mixed(number)} {form}'
    inches = value / INCH
    sign, inches = ('-' if inches < 0 else ''), abs(inches)
    if form == 'feet':
        feet, inches = divmod(inches, 12)
        return f"{sign}{feet}'-{mixed(inches)}\""
    return f'{sign}{mixed(inches)}"'


def mixed(number):
    whole, over = divmod(Fraction(number), 1)
    if over == 0:
        return str(whole)
    return f'{whole} {over}' if whole else f'{over}'


UNITS = {'mm': MM, 'in': INCH, 'ft': 12 * INCH, 'm': 1000 * MM}


def wrong_texts(right):
    """(length, the text with it a step longer), for each length of a text."""
    found = []
    for one in lengths_in(right):
        step = MM if one.form in ('mm', 'm') else INCH // 16
        found.append((one.text, right[:one.start] + written(one.value + step, one.form) + right[one.end:]))
    return found


def on_paper(case, every, changes):
    """Texts of all sheets changed one at a time: how many, and those that nothing was noticed of."""
    tried, missed, count = 0, [], 0
    for title, (_, _, _, pages) in case.sheets.items():
        for page in pages:
            for text in page.texts:
                right = text.text
                for what, wrong in changes(right):
                    count += 1
                    if count % every:
                        continue
                    tried += 1
                    text.text, text.printed = wrong, None
                    if not case.noticed(case.right, title):
                        missed.append((case.name, title, page.number, what, right))
                text.text, text.printed = right, None
    return tried, missed


def other_words(text, names):
    """(words, the text with another corner or face)."""
    for name in names:
        for words in (f'corner {name}', f'from {name}', f'hooked on {name}'):
            at = re.search(rf'\b{re.escape(words)}(?![\w])', text)
            if at:
                other = names[(names.index(name) + 1) % len(names)]
                yield words, text[:at.start()] + words[:-len(name)] + other + text[at.end():]
    for right, wrong in (('inner face of', 'outer face of'), ('outer face of', 'inner face of')):
        if right in text:
            yield right, text.replace(right, wrong, 1)


# ---- running it ------------------------------------------------------------------------------------------------------

# An example, its paper, and which share of all printed lengths is changed on paper: one in so many.
CASES = [('glaze-store', 'letter', 3), ('clay-store', 'a4', 2), ('hillside-shed', 'letter', 2),
         ('kiln-house', 'letter', 4),
         ('drying-shed', 'letter', 2)]


def run_part(arguments):
    """One part of one case: wrong answers, or wrong words and lengths on paper."""
    program, root, name, paper, every, part = arguments
    lines, tried, missed = [], 0, []
    with tempfile.TemporaryDirectory() as work:
        case = Case(program, Path(root) / 'examples' / f'{name}.json', Path(work) / 'set', paper)
        for maker in WRONG if part == 'answers' else []:
            count = 0
            for what, change, keys, where in maker(case.answer):
                count += len(where)
                missed += [(name, maker.__name__, what, sort) for sort in case.missed(change, keys, where)]
            tried += count
            lines.append(f'  {name}, {maker.__name__}: {count}')
        if part == 'paper':
            names = [row['name'] for row in case.answer['corners']]
            for what, share, changes in (('words', 1, lambda text: other_words(text, names)),
                                         ('lengths', every, wrong_texts)):
                count, more = on_paper(case, share, changes)
                tried, missed = tried + count, missed + more
                lines.append(f'  {name}, wrong {what} on paper: {count}')
    return tried, missed, lines


def run_self_test(program, root):
    from run import pool
    tried, missed = 0, []
    arguments = [(program, str(root), *case, part) for case in CASES for part in ('paper', 'answers')]
    with pool() as workers:
        for one, more, lines in workers.map(run_part, arguments):
            tried, missed = tried + one, missed + more
            print('\n'.join(lines))
    for one in missed[:80]:
        print('NOT NOTICED', *one, sep=' | ')
    print(f'{tried - len(missed)} of {tried} wrong things noticed')
    return not missed and tried > 2000
