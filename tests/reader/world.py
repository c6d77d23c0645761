"""The building of an answer, rebuilt from its placed pieces: plan places, cells, marks. Nanometres or fractions."""
from collections import defaultdict
from fractions import Fraction

from lengths import INCH, MM, lengths_in, plain, rounded

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
# Grout between a bar and the unit, by grout: TMS 402 as check values have it (second-hand). Bars: ASTM A615, eighths of
# an inch to #8; metric ones are as thick as they say.
CLEARANCE = {'fine': INCH // 4, 'coarse': INCH // 2}
ROUND_BARS = {'#9': '1.128', '#10': '1.27', '#11': '1.41'}


def nm(found):
    return found['nm']


def diameter(size):
    if size in ROUND_BARS:
        return int(Fraction(ROUND_BARS[size]) * INCH)
    number = int(size.strip('#NHDYT'))
    return number * INCH // 8 if size.startswith('#') else number * MM


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

    def seen(self, point):
        """A point of the plan as (along, depth) of this side."""
        x, y = point[0] - self.start_point[0], point[1] - self.start_point[1]
        return x * self.along[0] + y * self.along[1], x * self.inward[0] + y * self.inward[1]


class Dowel:
    """One dowel's place: along its side from zero, in from its outer face; the corner whose bar it is, or None."""
    __slots__ = ('side', 'centre', 'depth', 'corner')

    def __init__(self, side, centre, depth, corner):
        self.side, self.centre, self.depth, self.corner = side, centre, depth, corner


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
        self.dowel_list = None
        self.sets_stocked = 'corner-set' in self.job['units'].get('stocked', ['corner-set'])

    # ---- bars and dowels ---------------------------------------------------------------------------------------------

    def corner_other(self, side, corner):
        """The other side of a corner, or None."""
        row = self.corners.get(corner)
        if row is None or 'arriving' not in row or 'leaving' not in row:
            return None
        return row['leaving'] if row['arriving'] == side else row['arriving']

    def leg(self, side):
        """How deep the unit that turns a corner is: half a unit with a corner set, less where the wall is thinner."""
        if side.series['id'] in CORNER_SETS and self.sets_stocked:
            return min(side.thick, nm(side.series['half']))
        return side.thick

    def depth_of(self, bar):
        """A bar stands in the middle of its units, in from its side's outer face: a corner's in the middle of the unit
        that turns the corner, which lies on the outer faces outside and on the inner ones of a re-entrant corner."""
        side = self.sides[bar['side']]
        if bar['reason'] != 'corner':
            return side.thick // 2
        middle = self.leg(side) // 2
        return middle if self.corners[bar['corner']]['convex'] else side.thick - middle

    def bars_on(self, side):
        """Bars along a side as (centre, first course, last course, own row or None, depth): its own, and corners' that
        the other side lists, where they stand in plan."""
        here = self.sides[side]
        found = [(nm(bar['centre']), bar['first_course'], bar['last_course'], bar, self.depth_of(bar))
                 for bar in self.answer['bars'] if bar['side'] == side]
        listed = {bar.get('corner') for _, _, _, bar, _ in found if bar['reason'] == 'corner'}
        for corner in (here.start, here.end):
            other = self.corner_other(side, corner)
            if other is None or here.interior or corner in listed:
                continue
            for bar in self.answer['bars']:
                if bar['side'] == other and bar['reason'] == 'corner' and bar.get('corner') == corner:
                    along, depth = here.seen(self.sides[other].point(nm(bar['centre']), self.depth_of(bar)))
                    found.append((along, bar['first_course'], bar['last_course'], None, depth))
        return sorted(found, key=lambda bar: bar[0])

    def dowels(self):
        """Dowels by name: every bar that starts at the footing, numbered along its side."""
        if self.dowel_list is None:
            self.dowel_list = {}
            for side in self.sides:
                number = 0
                for centre, first, _, bar, depth in self.bars_on(side):
                    if bar is not None and first == 1:
                        number += 1
                        self.dowel_list[f'{side} {number}'] = Dowel(side, centre, depth, bar.get('corner'))
        return self.dowel_list

    def poured_row(self, name):
        """The answer's own row of a dowel whose units may have been laid otherwise since it was poured: the layout that
        it was poured for is not in the answer, so its cells are those that the answer tells. None: not so."""
        if 'poured' not in self.answer or not any('planned' in row for row in self.answer['openings']):
            return None
        return next(row for row in self.answer['dowels'] if f"{row['side']} {row['number']}" == name)

    # ---- cells -------------------------------------------------------------------------------------------------------

    def extent(self, piece):
        """(from, to, shallow, deep) of a piece on its side. A corner set's unit may be thinner than the wall: it lies
        on the outer faces outside, on the inner ones of a re-entrant corner."""
        side = self.sides[piece.side]
        low, high, deep = round(piece.start), round(piece.end), side.thick
        if piece.kind != 'corner-set':
            return low, high, 0, deep
        leg = min(deep, nm(side.series['half']))
        run = piece.run
        at_start = run['at_start'] == 'through-corner' and piece.start == run['from']
        corner = self.corners.get(side.start if at_start else side.end)
        return (low, high, 0, leg) if corner is None or corner['convex'] else (low, high, deep - leg, deep)

    def cells_of(self, piece):
        """A piece's cells on its side, (from, to, shallow, deep), counted from the end nearer to the side's start."""
        series = self.sides[piece.side].series
        full, half = nm(series['full']), nm(series['half'])
        own = self.own_cells(series['id'])
        if piece.kind == 'solid':
            return []
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
        start, _, shallow, deep = self.extent(piece)
        shell = self.shell(series['id'])
        return [(start + low, start + high, shallow + shell, deep - shell) for low, high in cells]

    def shell(self, series):
        for row in self.job['units'].get('own_series', []):
            if row['id'] == series:
                return self.length(row['face_shell']) if 'face_shell' in row else 0
        return SHELLS[series]

    def own_cells(self, series):
        for row in self.job['units'].get('own_series', []):
            if row['id'] == series:
                return [[(self.length(cell['from']), self.length(cell['to'])) for cell in row.get(key, [])]
                        for key in ('full_cells', 'half_cells')]
        return None

    @staticmethod
    def jamb(opening, edge, course):
        """Where a jamb stands in a course: courses laid before it was found elsewhere keep it where it was."""
        planned = opening.get('planned')
        return nm((planned if planned and course <= planned['laid_courses'] else opening)[edge])

    def over(self, side, course, along, depth):
        """The cell over a place of a side in a course, whichever side's unit it is: (side, unit, cell, (from, to,
        shallow, deep) as this side sees it); None in webs, joints and openings."""
        point = self.sides[side].point(along, depth)
        for name in [side] + [one for one in self.sides if one != side]:
            here = self.sides[name]
            a, d = here.seen(point)
            if not 0 <= d <= here.thick:
                continue
            for piece in self.pieces[name, course]:
                low, high, shallow, deep = self.extent(piece)
                if not (low <= a <= high and shallow <= d <= deep):
                    continue
                for number, cell in enumerate(self.cells_of(piece), 1):
                    if cell[0] <= a <= cell[1] and cell[2] <= d <= cell[3]:
                        return name, piece.number, number, self.seen_by(side, name, cell)
                return None
        return None

    def seen_by(self, side, owner, place):
        if side == owner:
            return place
        ends = [self.sides[side].seen(self.sides[owner].point(along, depth))
                for along, depth in ((place[0], place[2]), (place[1], place[3]))]
        (a, c), (b, d) = ends
        return min(a, b), max(a, b), min(c, d), max(c, d)

    def room(self, dowel):
        """How far a dowel may be out: to the side's start, to its end, to the outer and to the inner face. None without
        a cell in both courses."""
        cells = [self.over(dowel.side, course, dowel.centre, dowel.depth) for course in (1, 2)
                 if course in self.courses]
        if not cells or not all(cells):
            return None
        low, shallow = max(cell[3][0] for cell in cells), max(cell[3][2] for cell in cells)
        high, deep = min(cell[3][1] for cell in cells), min(cell[3][3] for cell in cells)
        bars = self.job['steel']['bars']
        thick = diameter(bars['size'])
        off = thick - thick // 2 + CLEARANCE[bars.get('grout', 'coarse')]
        along = dowel.centre - low - off, high - dowel.centre - off
        return *along, dowel.depth - shallow - off, deep - dowel.depth - off

    # ---- marks -----------------------------------------------------------------------------------------------------

    def block_ends(self, side, course):
        # An end behind zero lies inside the wall that this one enters: it is no mark.
        return [(piece.end, piece) for piece in self.pieces[side, course] if rounded(piece.end, self.step) >= 0]

    def low_marks(self, side, course):
        """Marks under a strip: (place, what, name)."""
        marks = []
        for opening in self.answer['openings']:
            if opening['side'] == side and opening['first_course'] <= course <= opening['last_course']:
                marks += [(self.jamb(opening, edge, course), 'jamb', opening['name']) for edge in ('from', 'to')]
        for joint in self.answer['control_joints']:
            if joint['side'] == side:
                marks += [(nm(joint[edge]), 'joint', '') for edge in ('from', 'to')]
        for centre, first, last, _, _ in self.bars_on(side):
            if first <= course <= last:
                marks.append((centre, 'bar', ''))
        for junction in self.answer['junctions']:
            if junction['main'] == side:
                marks += [(nm(junction[edge]), 'face', junction['abutting']) for edge in ('from', 'to')]
        return sorted(marks)

    def strip_marks(self, side, course):
        """Those that a strip numbers: bars that start at the footing have their numbers in the dowel list."""
        dowels = {centre for centre, first, _, _, _ in self.bars_on(side) if first == 1 and self.answer['dowels']}
        return [mark for mark in self.low_marks(side, course) if mark[1] != 'bar' or mark[0] not in dowels]

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
