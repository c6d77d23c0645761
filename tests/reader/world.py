"""The building of an answer, rebuilt from its placed pieces: plan places, cells, marks. Nanometres or fractions."""
from collections import defaultdict
from fractions import Fraction

from lengths import INCH, MM, lengths_in, plain

# Along and to the right of each heading: x to the east, y to the north.
HEADINGS = {'west': (-1, 0), 'north': (0, 1), 'east': (1, 0), 'south': (0, -1)}

# Least webs and face shells by series: ASTM C90-06 as drawn in NCMA TEK 14-1B fig. 1 (U9, U10); metric: 30 mm assumed.
SIXTEENTH = INCH // 16
WEBS = {'us-6': 16 * SIXTEENTH, 'us-8': 16 * SIXTEENTH, 'us-10': 18 * SIXTEENTH, 'us-12': 18 * SIXTEENTH,
        'au-140': 30 * MM, 'au-190': 30 * MM, 'au-290': 30 * MM, 'uk-140': 30 * MM, 'uk-215': 30 * MM}
SHELLS = {'us-4': 12 * SIXTEENTH, 'us-6': 16 * SIXTEENTH, 'us-8': 20 * SIXTEENTH, 'us-10': 20 * SIXTEENTH,
          'us-12': 20 * SIXTEENTH, 'au-90': 30 * MM, 'au-140': 30 * MM, 'au-190': 30 * MM, 'au-290': 30 * MM,
          'uk-100': 30 * MM, 'uk-140': 30 * MM, 'uk-215': 30 * MM}
# Series whose corners are made by sets: their short leg is half a unit.
CORNER_SETS = {'us-4', 'us-6', 'us-10', 'us-12', 'au-90', 'au-140', 'au-290', 'uk-100', 'uk-140'}
HALVES = {'half', 'bond-beam-half', 'lintel-half', 'sash-half', 'cleanout-half', 'half-high-half'}
CELL_LESS = {'corner-set', 'solid'}


def nm(found):
    return found['nm']


class Piece:
    __slots__ = ('name', 'side', 'course', 'number', 'kind', 'length', 'start', 'end', 'cut', 'run')

    def __init__(self, side, course, run, row):
        self.name, self.kind, self.length = row[0], row[1], row[2]
        self.start = row[3] + Fraction(row[4], row[5]) if row[4] else row[3]
        self.end = self.start + self.length
        self.cut = row[6]
        self.side, self.course, self.run = side, course, run
        self.number = int(self.name.rsplit('-', 1)[1])


class Side:
    def __init__(self, world, row):
        self.name, self.start, self.end = row['name'], row['start'], row['end']
        self.interior = row['interior']
        self.series = world.series[row['series']]
        self.nominal, self.actual = nm(row['nominal']), nm(row['actual'])
        self.start_point = tuple(row['start_point'])
        self.along = HEADINGS[row['heading']]
        self.inward = (self.along[1], -self.along[0])

    @property
    def thick(self):
        return nm(self.series['thickness'])

    def point(self, along, depth=0):
        x, y = self.start_point
        return (x + self.along[0] * along + self.inward[0] * depth, y + self.along[1] * along + self.inward[1] * depth)


class World:
    def __init__(self, answer):
        self.answer, self.job = answer, answer['job']
        self.inches = self.job['tape'] == 'inches'
        self.step = SIXTEENTH if self.inches else MM
        self.series = {row['id']: row for row in answer['series']}
        self.sides = {row['name']: Side(self, row) for row in answer['sides']}
        self.corners = {row['name']: row for row in answer['corners']}
        self.courses = {row['number']: row for row in answer['courses']}
        self.openings = {row['name']: row for row in answer['openings']}
        self.runs = defaultdict(list)
        self.pieces = defaultdict(list)
        for run in answer['runs']:
            self.runs[run['side'], run['course']].append(run)
            for row in run['pieces']:
                self.pieces[run['side'], run['course']].append(Piece(run['side'], run['course'], run, row))
        self.by_name = {piece.name: piece for pieces in self.pieces.values() for piece in pieces}
        self.joint = nm(answer['series'][0]['joint'])
        self.sets_stocked = 'corner-set' in self.job['units'].get('stocked', ['corner-set'])

    # ---- bars and dowels -------------------------------------------------------------------------------------------

    def corner_other(self, side, corner):
        """The other side of a corner, or None."""
        row = self.corners.get(corner)
        if row is None or 'arriving' not in row or 'leaving' not in row:
            return None
        return row['leaving'] if row['arriving'] == side else row['arriving']

    def bars_on(self, side):
        """Bars along a side as (centre, first course, last course, own row or None): own ones, and corners' that the
        other side lists: half of that side's thickness from the corner, inward."""
        found = [(nm(bar['centre']), bar['first_course'], bar['last_course'], bar)
                 for bar in self.answer['bars'] if bar['side'] == side]
        here = self.sides[side]
        listed = {bar.get('corner') for bar in self.answer['bars'] if bar['side'] == side and bar['reason'] == 'corner'}
        for corner in (here.start, here.end):
            other = self.corner_other(side, corner)
            if other is None or here.interior or corner in listed:
                continue
            for bar in self.answer['bars']:
                if bar['side'] == other and bar['reason'] == 'corner' and bar.get('corner') == corner:
                    half = self.sides[other].thick // 2
                    inward = half if self.corners[corner]['convex'] else -half
                    place = here.actual - inward if corner == here.end else inward
                    found.append((place, bar['first_course'], bar['last_course'], None))
        return sorted(found, key=lambda bar: bar[0])

    def dowels(self):
        """Dowels by name as (side, centre): every bar that starts at the footing, numbered along its side."""
        found = {}
        for side in self.sides:
            number = 0
            for centre, first, _, own in self.bars_on(side):
                if own is not None and first == 1:
                    number += 1
                    found[f'{side} {number}'] = (side, centre)
        return found

    def cells_of(self, piece):
        """A piece's cells along its side, as (from, to) on the side's line."""
        series = self.sides[piece.side].series
        full, half = nm(series['full']), nm(series['half'])
        if piece.kind in CELL_LESS:
            return []
        own = self.own_cells(series['id'])
        if own is not None:
            cells = own[1 if piece.kind in HALVES else 0]
        elif series['id'] not in WEBS:
            return []
        elif piece.kind in HALVES:
            web = WEBS[series['id']]
            cells = [(web, half - web)]
        else:
            web = WEBS[series['id']]
            cell = (full - 3 * web) // 2
            cells = [(web, web + cell), (full - web - cell, full - web)]
        if piece.cut != 'none':
            cells = [cell for cell in cells if cell[1] < piece.length]
            if piece.cut != 'end':
                cells = [(piece.length - to, piece.length - start) for start, to in cells]
        start = round(piece.start)
        return [(start + low, start + high) for low, high in cells]

    def own_cells(self, series):
        for row in self.job['units'].get('own_series', []):
            if row['id'] == series:
                return [[(self.length(cell['from']), self.length(cell['to'])) for cell in row.get(key, [])]
                        for key in ('full_cells', 'half_cells')]
        return None

    def cell_at(self, side, course, along):
        """(unit, cell, cell's span) over a place; None in webs, joints and openings."""
        for piece in self.pieces[side, course]:
            if round(piece.start) <= along <= round(piece.end):
                for number, (low, high) in enumerate(self.cells_of(piece), 1):
                    if low <= along <= high:
                        return piece.number, number, (low, high)
                return None
        return None

    @staticmethod
    def jamb(opening, edge, course):
        """Where a jamb stands in a course: courses laid before it was found elsewhere keep it where it was."""
        planned = opening.get('planned')
        return nm((planned if planned and course <= planned['laid_courses'] else opening)[edge])

    # ---- marks -----------------------------------------------------------------------------------------------------

    def block_ends(self, side, course):
        return [(piece.end, piece) for piece in self.pieces[side, course]]

    def low_marks(self, side, course):
        """Marks under a strip: (place, what, name)."""
        marks = []
        for opening in self.answer['openings']:
            if opening['side'] == side and opening['first_course'] <= course <= opening['last_course']:
                marks += [(self.jamb(opening, edge, course), 'jamb', opening['name']) for edge in ('from', 'to')]
        for joint in self.answer['control_joints']:
            if joint['side'] == side:
                marks += [(nm(joint[edge]), 'joint', '') for edge in ('from', 'to')]
        for centre, first, last, _ in self.bars_on(side):
            if first <= course <= last:
                marks.append((centre, 'bar', ''))
        for junction in self.answer['junctions']:
            if junction['main'] == side:
                marks += [(nm(junction[edge]), 'face', junction['abutting']) for edge in ('from', 'to')]
        return sorted(marks)

    # ---- job -------------------------------------------------------------------------------------------------------

    def length(self, text):
        """A length of the job: with its unit, or bare in the job's tape."""
        if isinstance(text, (int, float)):
            return Fraction(str(text)) * (INCH if self.inches else MM)
        found = lengths_in(plain(text.replace('actual', '').strip()))
        if found:
            return found[0].value
        whole = plain(text).strip()
        return sum(Fraction(part) for part in whole.split(' ')) * (INCH if self.inches else MM)
