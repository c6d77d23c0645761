"""Small jobs by seed: rectangles, L's and open walls, both tapes, openings, bars, joints, readings and laid entries."""
import datetime
from random import Random

# Series, the half unit with its joint, one course, the joint, and the tape: (id, pitch, course, joint) in inches or mm.
INCHES = [('us-8', 8, 8, '3/8"'), ('us-8', 8, 8, '3/8"'), ('us-6', 8, 8, '3/8"'), ('us-12', 8, 8, '3/8"'),
          ('us-10', 8, 8, '3/8"')]
METRIC = [('au-190', 200, 200, '10 mm'), ('au-190', 200, 200, '10 mm'), ('uk-215', 225, 225, '10 mm'),
          ('au-140', 200, 200, '10 mm')]
BARS = {True: ['#4', '#5'], False: ['N12', 'H12']}


class Maker:
    def __init__(self, seed):
        self.dice = Random(seed)
        self.inches = self.dice.random() < 0.6
        self.series, self.pitch, self.course, self.joint = self.dice.choice(INCHES if self.inches else METRIC)
        self.job = {'stringcourse': 1, 'name': f'Shed {seed}', 'tape': 'inches' if self.inches else 'millimetres',
                    'units': {'series': self.series}}

    def length(self, halves, off=0):
        """So many half units, and `off` steps of the tape more."""
        if not self.inches:
            return f'{halves * self.pitch + off} mm'
        sixteenths = halves * self.pitch * 16 + off
        inches, over = divmod(sixteenths, 16)
        return f'{inches} {over}/16"' if over else f'{inches}"'

    def small(self, least, most):
        """A small length of the tape's steps."""
        steps = self.dice.randint(least, most)
        sign, steps = ('-' if steps < 0 else ''), abs(steps)
        if not self.inches:
            return f'{sign}{steps} mm'
        return f'{sign}{steps}/16"' if steps % 16 else f'{sign}{steps // 16}"'

    def one_in(self, n):
        return self.dice.randrange(n) == 0

    def make(self):
        self.outline()
        self.heights()
        self.interior()
        self.openings()
        self.control_joints()
        self.steel()
        if self.one_in(3):
            self.setting_out()
        if self.one_in(2):
            self.readings()
        if self.one_in(2):
            self.laid()
        self.top()
        self.days()
        return self.job

    def days(self):
        """Days and a forecast on some. Thrown last: all else stays."""
        if not self.one_in(3):
            return
        days = {'crew': self.dice.choice(['beginners', 'mason'])}
        if self.one_in(2):
            days['start'] = self.dice.choice(['2026-03-30', '2026-04-02', '2026-04-20'])
        if self.one_in(3):
            days['log_until'] = '2026-04-1%d' % self.dice.randint(0, 9)
        if self.one_in(2):
            degrees, winds = ((15, 99), (0, 30)) if self.inches else ((-10, 38), (0, 50))
            days['forecast'] = []
            for date in self.dice.sample(range(1, 29), 4):
                low, high = sorted(self.dice.randint(*degrees) for _ in range(2))
                days['forecast'].append({'date': f'2026-04-{date:02}', 'coldest': low, 'warmest': high,
                                         'wind': self.dice.randint(*winds), 'gusts': self.dice.randint(*winds)})
        self.job['days'] = days

    def top(self):
        """Plate, bolts and trusses on some; shores' spacing on some lintels of units. Thrown last: all else stays."""
        inches = self.inches
        for opening in self.job.get('openings', []):
            if opening.get('lintel', {}).get('make') == 'built-up' and self.one_in(2):
                opening['lintel']['shore_spacing'] = '30"' if inches else '750 mm'
        if not self.one_in(2):
            return
        bolts = {'spacing': self.dice.choice(['32"', '48"', '72"'] if inches else ['800 mm', '1200 mm', '1800 mm']),
                 'end_most': '12"' if inches else '300 mm'}
        if self.one_in(2):
            bolts.update({'size': '1/2 in, 7 in deep' if inches else 'M12', 'end_least': '4"' if inches else '90 mm'})
        if self.one_in(2):
            bolts['clear_of_bars'] = '2"' if inches else '50 mm'
        top = {'bolts': bolts}
        if self.one_in(2):
            top.update({'plate': '2x8, treated', 'plate_piece': '12\'-0"' if inches else '3600 mm'})
        if self.one_in(2):
            side = self.names[0]
            top['trusses'] = [{'on': side, 'place': {'from': side[0], 'at': '20" actual' if inches else '500 mm actual'},
                               'spacing': '24"' if inches else '600 mm', 'clear': '3"' if inches else '80 mm'}]
        self.job['top'] = top

    def outline(self):
        a, b = self.dice.randint(9, 20), self.dice.randint(8, 16)
        off = self.dice.choice([0, 0, 0, 0, 5, 24]) if self.inches else self.dice.choice([0, 0, 0, 0, 30, 60])
        shape = self.dice.choice(['rectangle', 'rectangle', 'L', 'open'])
        if shape == 'rectangle':
            legs = [(a, 'right'), (b, 'right'), (a, 'right'), (b, 'right')]
        elif shape == 'L':
            c, d = self.dice.randint(4, a - 4), self.dice.randint(4, b - 4) if b > 8 else 4
            legs = [(a, 'right'), (b, 'right'), (c, 'right'), (d, 'left'), (a - c, 'right'), (b - d, 'right')]
            off = 0
        else:
            legs = [(self.dice.randint(4, 9), 'right'), (a + 6, 'right'), (self.dice.randint(4, 9), None)]
            off = 0
        names = 'ABCDEFG'
        sides = []
        for at, (halves, turn) in enumerate(legs):
            end = names[(at + 1) % len(legs)] if shape != 'open' else names[at + 1]
            side = {'from': names[at], 'to': end, 'length': self.length(halves, off if at % 2 == 0 else 0)}
            if turn:
                side['turn'] = turn
            sides.append(side)
        self.legs, self.shape = [halves for halves, _ in legs], shape
        self.names = [side['from'] + side['to'] for side in sides]
        self.job['outline'] = {'closed': shape != 'open', 'sides': sides}
        if shape == 'open':
            self.job['outline']['building_on'] = 'right'

    def heights(self):
        self.courses = self.dice.randint(6, 13)
        self.job['heights'] = {'courses': self.courses}

    def interior(self):
        self.job['interior_walls'] = []
        if self.shape == 'rectangle' and self.legs[0] >= 13 and self.one_in(2):
            wall = {'name': 'inner', 'off': 'AB',
                    'place': {'from': 'A', 'at': self.length(self.dice.randint(5, self.legs[0] - 6))},
                    'start_junction': self.dice.choice(['tied', 'tied', 'control-joint']), 'end_junction': 'tied'}
            self.job['interior_walls'].append(wall)

    def openings(self):
        self.job['openings'] = []
        number = 0
        for name, leg in zip(self.names, self.legs):
            if leg < 9 or self.one_in(3) or (self.job['interior_walls'] and name in ('AB', 'CD')):
                continue
            number += 1
            wide = self.dice.choice([3, 4, 4, 5])
            at = self.dice.randint(3, max(3, leg - wide - 3))
            opening = {'name': f'{"D" if number % 2 else "W"}{number}', 'on': name, 'place': {'from': name[0],
                                                                                              'at': self.length(at)}}
            if number % 2:
                self.door(opening, wide)
            else:
                high = self.dice.randint(2, max(2, self.courses - 4))
                opening['masonry'] = {'width': self.length(wide), 'height': self.high(min(high, 4))}
                opening['sill_course'] = max(1, self.courses - 2 - min(high, 4))
            if self.one_in(4):
                opening['lintel'] = {'make': self.dice.choice(['one-piece', 'built-up']), 'courses': 1}
            self.job['openings'].append(opening)

    def high(self, courses):
        return f'{courses * self.course}"' if self.inches else f'{courses * self.course} mm'

    def door(self, opening, wide):
        if self.courses >= 12 and self.one_in(2):
            leaf = (f'{wide * 8 - 4}"', '84"') if self.inches else (f'{wide * self.pitch - 90} mm', '2040 mm')
            frame = ('2"', '4"', '3/16"') if self.inches else ('35 mm', '35 mm', '10 mm')
            opening['door'] = {'leaf_width': leaf[0], 'leaf_height': leaf[1], 'frame_jamb': frame[0],
                               'frame_head': frame[1], 'shim': frame[2]}
        else:
            opening['masonry'] = {'width': self.length(wide), 'height': self.high(self.courses - 2)}

    def control_joints(self):
        if self.shape == 'open' and self.one_in(2):
            self.job['control_joints'] = {'placed': [{'on': 'BC',
                                                      'place': {'from': 'B',
                                                                'at': self.length(self.dice.randrange(6, 10, 2))}}]}
        elif self.one_in(5):
            self.job['control_joints'] = {'rule': 'us' if self.inches else 'uk'}

    def steel(self):
        steel = {}
        if self.one_in(4):
            steel['wire_every'] = 2
        if self.one_in(2):
            steel['bond_beams'] = [self.courses]
        if self.dice.random() < 0.75:
            steel['bars'] = {'size': self.dice.choice(BARS[self.inches]), 'corners': True, 'jambs': not self.one_in(4),
                             'spacing': self.length(self.dice.choice([4, 6, 8]))}
            if self.one_in(3):
                steel['pour_tops'] = [self.courses // 2, self.courses]
        if steel:
            self.laps(steel)
            self.job['steel'] = steel

    def laps(self, steel):
        """A lap rule with what it needs, and bars in beams and lintels; from dice of its own, so that the rest stays."""
        dice = Random(str(steel) + str(self.courses))
        rule = dice.choice(['', 'tms-402-to-2008', 'tms-402-from-2011', 'ibc', 'florida-2017', '40-bars', '48-bars',
                            'as-drawn'])
        if rule:
            steel['lap'] = {'rule': rule, 'masonry': dice.choice(['1500 psi', '10.3 MPa']),
                            'steel': dice.choice(['60 ksi', '500 MPa']), 'length': '24"' if self.inches else '600 mm'}
        if dice.random() < 0.6:
            steel['beam_bars'] = {'size': dice.choice(BARS[self.inches]), 'count': dice.randint(1, 3)}
            steel['lintel_bars'] = {'size': dice.choice(BARS[self.inches]), 'count': dice.randint(1, 2)}
        if dice.random() < 0.3:
            steel['bar_stock'] = '10\'-0"' if self.inches else '3000 mm'
        if dice.random() < 0.3:
            steel['dowel_lap'] = '28"' if self.inches else '700 mm'

    def setting_out(self):
        inches = self.inches
        card = {'backsight': '51 3/8"' if inches else '1310 mm', 'boards_over': '20"' if inches else '500 mm',
                'line_weight': '0.001 lb/ft' if inches else '1.5 g/m', 'line_pull': '20 lb' if inches else '90 N'}
        if self.one_in(2):
            card.update({'footing_outside': '4"' if inches else '100 mm', 'footing_inside': '5 1/2"' if inches
                         else '120 mm'})
        if self.one_in(2):
            card['datum_over'] = '12"' if inches else '-150 mm'
        self.job['setting_out'] = card

    def readings(self):
        """Tapings of every side and both diagonals of a rectangle, heights of the corners, edges and dowels."""
        readings = []

        def add(sort, row):
            readings.append({'id': f'r{len(readings) + 1}', 'by': 'QA', sort: row})

        unit = 6 if self.inches else 10  # a side is shorter than its nominal length by one joint
        if self.shape == 'rectangle':
            sides = self.job['outline']['sides']
            spans = [(side['from'], side['to'], self.steps(side['length']) - unit) for side in sides]
            across = (spans[0][2] ** 2 + spans[1][2] ** 2) ** 0.5
            for a, b, steps in spans + [('A', 'C', round(across)), ('B', 'D', round(across))]:
                add('tape', {'from': a, 'to': b, 'length': self.text(steps + self.dice.randint(-3, 3))})
            if self.one_in(2):
                base = 1600 if self.inches else 1300
                add('rod', {'setup': '1', 'station': 'datum', 'rod': self.text(base)})
                drop = 130 if self.inches else 200
                for corner in 'ABCD':
                    add('rod', {'setup': '1', 'station': corner,
                                'rod': self.text(base + drop + self.dice.randint(-3, 3))})
        if self.job.get('steel', {}).get('bars') and self.one_in(2):
            for side in self.names[:2]:
                add('dowel', {'on': side, 'at': self.length(self.dice.randint(3, 6), self.dice.randint(-12, 12)),
                              'off_face': '3 7/8"' if self.inches else '97 mm'})
        if self.one_in(3) and self.shape != 'open':
            for side, leg in zip(self.names, self.legs):
                for at in (1, leg - 1):
                    add('edge', {'on': side, 'at': self.length(at), 'beyond': self.small(20, 60)})
        if readings:
            self.job['readings'] = readings

    def steps(self, text):
        if not self.inches:
            return int(text.split(' ')[0])
        whole, _, over = text.strip('"').partition(' ')
        return int(whole) * 16 + (int(over.split('/')[0]) if over else 0)

    def text(self, steps):
        if not self.inches:
            return f'{steps} mm'
        return f'{steps // 16} {steps % 16}/16"' if steps % 16 else f'{steps // 16}"'

    def laid(self):
        """Entries of the log at the first side's first course."""
        side, entries = self.names[0], []

        def add(sort, row):
            entries.append({'id': f'e{len(entries) + 1}', 'when': f'2026-04-0{len(entries) + 1} 09:00', 'by': 'QA',
                            sort: row})

        if self.one_in(2):
            row = {'together': 10, 'row': '156 7/16"' if self.inches else ('3908 mm' if self.pitch == 200
                                                                           else '4406 mm')}
            add('units', row)
        add('gap', {'on': side, 'course': 1, 'at': self.length(3, -6 if self.inches else -10),
                    'measured': self.length(2, 4)})
        add('set', {'on': side, 'course': 1, 'near_outer': self.small(0, 2), 'near_inner': '0"' if self.inches
                    else '0 mm',
                    'far_outer': self.small(1, 3), 'far_inner': self.small(0, 2), 'bed': self.small(7, 9)})
        add('laid', {'on': side, 'course': 1})
        add('gauge', {'on': side, 'course': 1, 'high': self.small(-3, 3)})
        add('check', {'on': side, 'course': 1, 'what': 'plumb', 'over': '4 ft' if self.inches else '1200 mm',
                      'off': self.small(0, 3),
                      'may_be_wrong': '1/32"' if self.inches else '1 mm'})
        self.job['laid'] = entries


def job(seed):
    return Maker(seed).make()


def with_marks(job, answer, seed):
    """The job and readings at marks that its answer has: ends past or short, and on some a jamb found off its place."""
    dice, tape = Random(seed * 7 + 1), job['tape']
    step, unit = (25_400_000 // 16, '/16"') if tape == 'inches' else (1_000_000, ' mm')
    courses = [course for course in answer['laying']['at_hand'] if course['side'] == answer['sides'][0]['name']]
    if not courses:
        return None
    # One in five measures units that no joints make up for.
    full = answer['series'][0]['full']['nm'] // step - (12 if dice.randrange(5) == 0 else 0)
    singles = [written(full + dice.randint(-1, 1)) if tape == 'inches' else f'{full + dice.randint(-1, 1)} mm'
               for _ in range(4)]
    entries = [{'id': 'm0', 'by': 'QA', 'units': {'singles': singles}}]
    course = courses[0]
    marks = [mark for mark in course['marks'] if mark['kind'] == 'block-end' and mark['to_read']]
    for mark in marks[:dice.randint(1, 3)]:
        entry = {'on': course['side'], 'course': course['course'], 'at': mark['at']['text']}
        off = dice.randint(-3, 4)
        if dice.randrange(2):
            entry['past'] = f'{off}{unit}' if off % 16 or tape != 'inches' else '0"'
        else:
            steps = mark['at']['nm'] // step + off
            entry['read'] = f'{steps}{unit}' if tape != 'inches' else written(steps)
        entries.append({'id': f'm{len(entries)}', 'by': 'QA', 'when': f'2026-04-1{len(entries)} 10:00', 'mark': entry})
    jambs = [mark for mark in course['marks'] if mark['kind'] == 'near-jamb']
    if jambs and dice.randrange(3) == 0:
        steps = jambs[0]['at']['nm'] // step - dice.randint(1, 4)
        found = {'on': course['side'], 'what': 'near-jamb', 'opening': jambs[0]['opening'],
                 'at': f'{steps} mm' if tape != 'inches' else written(steps)}
        entries.append({'id': 'f1', 'by': 'QA', 'found': found})
    return {**job, 'laid': entries}


def with_top_read(job):
    """An example in inches with its bearing and some points of its top read: over, under, to plane, right."""
    rods = [('datum', '10\'-0"'), ('A', '10\'-0"'), ('B', '10\'-0 1/8"'), ('C', '10\'-0 1/16"'), ('D', '10\'-0"')]
    tops = [('AB', '2\'-0"', '8"'), ('AB', '14\'-0"', '7 7/8"'), ('AB', '26\'-0"', '8 1/4"'), ('CD', '1\'-0"', '7"'),
            ('CD', '20\'-0"', '8 5/16"')]
    rows = [{'station': name, 'rod': rod} for name, rod in rods]
    rows += [{'station': f'top {number}', 'rod': rod, 'on': on, 'at': at, 'surface': 'top'}
             for number, (on, at, rod) in enumerate(tops, 1)]
    readings = [{'id': f'r{number}', 'by': 'M. L.', 'rod': {'setup': '1', **row}} for number, row in enumerate(rows, 1)]
    return {**job, 'readings': readings}


def with_slab_read(job):
    """An example whose slab is read on a Thursday, with days from the Monday on: boards and slab are behind."""
    readings = [{**entry, 'when': '2027-05-06 10:00'} for entry in job['readings']]
    return {**job, 'readings': readings, 'days': {'start': '2027-05-03'}}


def with_ties(job):
    """An example whose inner wall is tied on every third course, with days."""
    return {**job, 'steel': {**job.get('steel', {}), 'tie_every': 3}, 'days': {'start': '2027-05-03'}}


def with_forecast(job):
    """An example planned from a Monday on, with frost, heat or a gale forecast for each day of two months."""
    sorts = [{'coldest': 28, 'warmest': 45}, {'coldest': 70, 'warmest': 104}, {'wind': 12, 'gusts': 34},
             {'coldest': 55, 'warmest': 71}]
    days = [datetime.date(2027, 5, 3) + datetime.timedelta(days=at) for at in range(60)]
    return {**job, 'days': {'start': '2027-05-03',
                            'forecast': [{'date': day.isoformat(), **sorts[at % 4]} for at, day in enumerate(days)]}}


def written(sixteenths):
    whole, over = divmod(sixteenths, 16)
    return f'{whole} {over}/16"' if over else f'{whole}"'
