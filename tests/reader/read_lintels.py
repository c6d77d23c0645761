"""Lintels: what they bear, walked over the placed pieces, and the bars that have to pass them."""
from lengths import INCH
import phrases
from places import reference_in, shift_of
from sheets import read_table
from world import nm

WITHIN = INCH // 8            # a unit's size tolerance (ASTM C90): so much less counts as the bearing asked
FLOORED = {'lintel', 'lintel-half'}


def placed(world, name):
    return next((row for row in world.answer['lintels'] if row['opening'] == name), None)


def over(world, opening, course):
    """Pieces of the run that goes over an opening in a course, in order."""
    start, end = nm(opening['from']), nm(opening['to'])
    return [piece for piece in world.pieces[opening['side'], course]
            if piece.run['from'] < end and piece.run['to'] > start]


def walked(world, opening):
    """(towards the start, towards the end) as laid: outward from the jambs, piece by piece, until what is asked is
    reached or the run ends; of one piece, from the jambs to the runs that end at it."""
    start, end = nm(opening['from']), nm(opening['to'])
    asked, course = nm(opening['lintel']['least_bearing']) - WITHIN, opening['lintel']['first_course']
    if opening['lintel']['make'] == 'one-piece':
        runs = world.runs[opening['side'], course]
        low = [run['to'] for run in runs if run['at_end'] == 'lintel-end' and run['to'] <= start]
        high = [run['from'] for run in runs if run['at_start'] == 'lintel-end' and run['from'] >= end]
        return (start - max(low) if low else None, min(high) - end if high else None)
    pieces = over(world, opening, course)
    if not pieces:
        return None, None
    first = max(k for k, piece in enumerate(pieces) if k == 0 or piece.start < start)
    while first > 0 and start - pieces[first].start < asked:
        first -= 1
    last = min(k for k, piece in enumerate(pieces) if k == len(pieces) - 1 or piece.end > end)
    while last < len(pieces) - 1 and pieces[last].end - end < asked:
        last += 1
    return max(0, round(start - pieces[first].start)), max(0, round(pieces[last].end - end))


def check_bearing(sheet, passage, found, opening):
    """Both ends, toward the corners named, and what is asked."""
    name, row, side = opening['name'], placed(sheet.world, opening['name']), sheet.world.sides[opening['side']]
    sheet.length(passage, found, 'start', nm(row['start_bearing']), f'{name}: bearing toward {side.start}')
    sheet.length(passage, found, 'end', nm(row['end_bearing']), f'{name}: bearing toward {side.end}')
    sheet.length(passage, found, 'asked', nm(opening['lintel']['least_bearing']), f'{name}: bearing asked')
    sheet.same((found['start_name'], found['end_name']), (side.start, side.end), f'{name}: bearings toward', passage)
    for got, end in zip((nm(row['start_bearing']), nm(row['end_bearing'])), walked(sheet.world, opening)):
        if end is not None:
            sheet.same(got, end, f'{name}: bearing as laid', passage)


# ---- bars that pass a lintel -----------------------------------------------------------------------------------------

def floors(world):
    """(unit, cell or '', centre) of each bar that comes up under a lintel unit, which has a floor."""
    found = []
    for side in world.sides:
        for centre, first, last, _, depth in world.bars_on(side):
            for course in range(first, last + 1):
                for piece in world.pieces[side, course]:
                    if piece.kind in FLOORED and piece.start <= centre <= piece.end:
                        cell = world.over(side, course, centre, depth)
                        found.append((piece.name, str(cell[2]) if cell else '', centre))
    return found


def cored(world):
    """(course, '', centre) of each bar that comes up under a lintel in one piece."""
    found = []
    for name, row in world.openings.items():
        lintel, laid = row.get('lintel'), placed(world, name)
        if laid is None or lintel['make'] != 'one-piece':
            continue
        low, high = nm(row['from']) - nm(laid['start_bearing']), nm(row['to']) + nm(laid['end_bearing'])
        for centre, _, last, _, _ in world.bars_on(row['side']):
            if low <= centre <= high and last >= lintel['first_course']:
                found.append((f'{row["side"]}-{lintel["first_course"]}', '', centre))
    return found


def read_bars(sheet, page):
    """Rows of the table on one page: (unit, cell, centre printed)."""
    world, rows, shift = sheet.world, [], 0
    for row in read_table(sheet, page, phrases.HEADS['lintel-bars'], has_boxes=True):
        if row.heading:
            side = world.sides.get(row.text(0).split(':')[0])
            if side is None:
                sheet.wrong('heading', row.text(0), list(world.sides), row.cells[0])
                continue
            shift = shift_of(sheet, side, reference_in(row.text(0)), row.cells[0])
            continue
        rows.append((row, shift))
    return rows


def check_bars(sheet, rows):
    left = [(*one, phrases.LINTEL_BREAK_OUT) for one in floors(sheet.world)]
    left += [(*one, phrases.LINTEL_CORED) for one in cored(sheet.world)]
    for row, shift in rows:
        key = (row.text(1), row.text(2))
        match = phrases.whole('{at=}', row.text(3))
        fits = [one for one in left if one[:2] == key]
        if not fits or match is None:
            sheet.wrong('bar that passes a lintel', (*key, row.text(3)), sorted({one[0] for one in left}), row.cells[1])
            continue
        printed = sheet.value(row.cells[3], match, 'at')
        best = min(fits, key=lambda one: abs(one[2] + shift - printed))
        sheet.length(row.cells[3], match, 'at', best[2] + shift, f'bar through {key[0]}')
        sheet.same(row.text(4), best[3], f'{key[0]}: what to do', row.cells[4])
        left.remove(best)
    sheet.same([one[:2] for one in left], [], 'bars that pass a lintel, not listed')
