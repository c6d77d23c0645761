"""The answer beside the job and beside itself: corners from the job's own sides, and what the page shows (marks, rod,
counts) from the placed pieces."""
from collections import Counter
from fractions import Fraction

import phrases
from lengths import agrees, lengths_in, rounded
from read_lists import rod_events
from read_over import check_there
from sheets import Sheet
from world import HEADINGS, nm

TURNS = {'right': {'west': 'north', 'north': 'east', 'east': 'south', 'south': 'west'},
         'left': {'west': 'south', 'south': 'east', 'east': 'north', 'north': 'west'}}


def read_answer(book):
    sheet = Sheet('answer', 'the answer itself', {}, [book.pages[0]], book)
    check_corners(sheet)
    check_inside_walls(sheet)
    check_page_marks(sheet)
    check_rod(sheet)
    check_counts(sheet)
    check_cleanouts(sheet)
    check_there(sheet)
    return sheet


def side_name(row):
    return row.get('name', row['from'] + row['to'])


def check_corners(sheet):
    """The nominal outline walked by the job's lengths and turns; the faces lie half a joint inside of it."""
    world, outline = sheet.world, sheet.world.job['outline']
    rows = outline['sides']
    moved = any(entry.get('found', {}).get('what') == 'wall-end' for entry in world.job.get('laid', []))
    if any('actual' in str(row['length']) for row in rows) or moved or outline.get('building_on') == 'left':
        return
    heading, x, y, corners = 'west', Fraction(0), Fraction(0), {}
    headings = []
    for row in rows:
        corners[row['from']] = (x, y)
        headings.append(heading)
        way, length = HEADINGS[heading], world.length(row['length'])
        x, y = x + way[0] * length, y + way[1] * length
        if 'turn' in row:
            heading = TURNS[row['turn']][heading]
    ends = list(corners.values()) + [(x, y)]
    if outline['closed'] and (x, y) != (0, 0):
        return sheet.wrong('outline', (x, y), 'closed')
    half = Fraction(world.joint, 2)
    for at, row in enumerate(rows):
        # Each end is in by half a joint from the line of the side that it meets, or from its own nominal end.
        side = world.sides.get(side_name(row))
        if side is None:
            sheet.wrong('side', 'none', side_name(row))
            continue
        along, inward = side.along, side.inward
        before = headings[at - 1] if at > 0 or outline['closed'] else None
        after = headings[(at + 1) % len(rows)] if at + 1 < len(rows) or outline['closed'] else None
        start = shifted(ends[at], inward, half, before, along, -1)
        end = shifted(ends[at + 1], inward, half, after, along, 1)
        base = world.sides[side_name(rows[0])].start_point
        if at == 0:
            origin = (start[0] - base[0], start[1] - base[1])
        sheet.same(side.start_point, (start[0] - origin[0], start[1] - origin[1]), f'start of {side.name}')
        length = (end[0] - start[0]) * along[0] + (end[1] - start[1]) * along[1]
        sheet.same(side.actual, length, f'length of {side.name}')


def shifted(point, inward, half, other, along, way):
    """A nominal corner moved to where the faces meet: inward from this side, and from the one that it meets."""
    x, y = point[0] + inward[0] * half, point[1] + inward[1] * half
    if other is None:
        return (x - way * along[0] * half, y - way * along[1] * half)
    step = HEADINGS[other]
    right = (step[1], -step[0])
    return (x + right[0] * half, y + right[1] * half)


def check_inside_walls(sheet):
    """A wall inside starts on the inner face of the wall that it is off, square to it, at its junction's near face."""
    world = sheet.world
    for side in world.sides.values():
        if not side.interior or side.start not in world.sides:
            continue
        main = world.sides[side.start]
        away = [side.start_point[axis] - main.start_point[axis] for axis in (0, 1)]
        depth = away[0] * main.inward[0] + away[1] * main.inward[1]
        along = away[0] * main.along[0] + away[1] * main.along[1]
        sheet.same(depth in (0, main.thick), True, f'{side.name} starts on a face of {main.name}')
        junction = next((row for row in world.answer['junctions']
                         if row['main'] == main.name and row['abutting'] == side.name and row['at'] == 'start'), None)
        if junction:
            sheet.same(along in (nm(junction['from']), nm(junction['to'])), True, f'{side.name} stands at its junction')


def check_page_marks(sheet):
    """Every mark that the page can show: its place from pieces, openings, joints and bars, told in both forms."""
    world = sheet.world
    for course in world.answer.get('laying', {}).get('at_hand', []):
        side, number = course['side'], course['course']
        low = Counter()
        for place, what, name in world.low_marks(side, number):
            if what != 'face':
                low[rounded(place, world.step), what, name] += 1
        for mark in course['marks']:
            place = nm(mark['at'])
            told = [one.value for one in lengths_in(mark['at']['both'])] + [one.value
                                                                            for one in lengths_in(mark['at']['text'])]
            sheet.same(set(told), {place}, f'{course["name"]}: words of a mark')
            if mark['kind'] == 'block-end':
                piece = world.by_name.get(f'{side}-{number}-{mark["unit"]}')
                if piece is None or not agrees(place, piece.end, world.step):
                    sheet.wrong(f'{course["name"]}: end of unit {mark["unit"]}', mark['at']['text'],
                                sheet.book.text(piece.end) if piece else 'no such unit')
                continue
            what = {'near-jamb': 'jamb', 'far-jamb': 'jamb', 'bar-centre': 'bar'}.get(mark['kind'], 'joint')
            key = (place, what, mark.get('opening', '') if what == 'jamb' else '')
            if low[key] == 0:
                sheet.wrong(f'{course["name"]}: {mark["kind"]}', mark['at']['text'],
                            [sheet.book.text(one[0]) for one in low if one[1] == what])
            low[key] -= 1
        left = [f'{what} {name} {sheet.book.text(place)}' for (place, what, name), count in low.items()
                if count > 0 and place >= 0]
        sheet.same(left, [], f'{course["name"]}: places without a mark')
        ends = sum(mark['kind'] == 'block-end' for mark in course['marks'])
        sheet.same(ends, len(world.pieces[side, number]), f'{course["name"]}: marks of block ends')


def check_rod(sheet):
    expected = rod_events(sheet.world)
    found = {}
    for row in sheet.world.answer['gauge_rod']:
        found.setdefault(nm(row['at']), set()).add((row['event'], row.get('opening', '')))
    sheet.same({at: sorted(events) for at, events in found.items()},
               {at: sorted(events) for at, (events, _) in expected.items()}, 'the rod')


def check_counts(sheet):
    world, whole, cut = sheet.world, Counter(), Counter()
    for pieces in world.pieces.values():
        for piece in pieces:
            key = (world.sides[piece.side].series['id'], piece.kind)
            (whole if piece.cut == 'none' else cut)[key] += 1
    for row in world.answer['counts']['units']:
        key = (row['series'], row['kind'])
        sheet.same((row['whole'], row['cut_pieces']), (whole.pop(key, 0), cut.pop(key, 0)), f'count of {row["kind"]}')
    sheet.same((dict(whole), dict(cut)), ({}, {}), 'kinds without a count')
    sheet.same(world.answer['counts']['pieces'], len(world.by_name), 'pieces')


def check_cleanouts(sheet):
    """Where a finding says that each bar's cell has a cleanout, the unit round each bar in that course has one for it, and
    is a cleanout unit where that is what it says."""
    world = sheet.world
    listed = Counter((row['side'], row['course'], row['unit']) for row in world.answer['cleanouts'])
    wanted = Counter()
    for row in world.answer['findings']:
        found = phrases.part(phrases.CLEANOUT_EACH, row['text'])
        for bar in world.answer['bars'] if found else []:
            if bar['first_course'] <= int(found['course']) <= bar['last_course']:
                over = world.over(bar['side'], int(found['course']), nm(bar['centre']), world.depth_of(bar))
                wanted[over and (over[0], int(found['course']), over[1])] += 1
    sheet.same(listed, wanted, 'cleanouts, one at each bar')
    for row in world.answer['cleanouts']:
        piece = world.by_name[f'{row["side"]}-{row["course"]}-{row["unit"]}']
        if row['bought']:
            sheet.same(piece.kind.startswith('cleanout'), True, f'cleanout unit {piece.name}')
