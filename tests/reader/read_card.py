"""The setting-out card: tapes, squares, boards, rod readings, the line, each from the plan and the job alone."""
import re
from fractions import Fraction

import phrases
from lengths import FOOT, INCH, MM, agrees
from places import hook_in, shift_of
from read_top import form_rows
from sheets import read_table, take_paragraphs
from world import nm

# ---- setting-out card ------------------------------------------------------------------------------------------------

def card(sheet):
    part, side = None, None
    for page in sheet.pages:
        for row in read_table(sheet, page, phrases.HEADS['card'], has_boxes=True):
            if row.heading:
                part, side = card_heading(sheet, row.cells[0], part, side)
                continue
            if part in CARD_ROWS:
                CARD_ROWS[part](sheet, row, side)
        form_rows(sheet, page)
        take_paragraphs(sheet, page)
    for passage in sheet.passages:
        found = phrases.part(phrases.CARD_OFF_LINE, passage.text)
        if found:  # common practice, both units: 1/16 in and 2 mm
            sheet.length(passage, found, 'inches', INCH // 16, 'off the line')
            sheet.length(passage, found, 'mm', 2 * MM, 'off the line')


def card_heading(sheet, passage, part, side):
    world, asked = sheet.world, sheet.world.job.get('setting_out', {})
    text = passage.text
    if text == phrases.CARD_TAPES:
        return 'tapes', None
    if text == phrases.CARD_SQUARES:
        return 'squares', None
    found = phrases.whole(phrases.CARD_BOARDS, text)
    if found:
        sides = [world.sides[name] for name in found['sides'].split(', ')]
        beyond = world.length(asked['boards_off']) if 'boards_off' in asked else (4 * FOOT if world.inches
                                                                                  else 1200 * MM)
        sheet.length(passage, found, 'beyond', beyond, 'boards')
        return 'boards', sides
    found = phrases.whole(phrases.CARD_ROD, text)
    if found:
        sheet.length(passage, found, 'backsight', world.length(asked['backsight']), 'backsight')
        return 'rod', None
    found = phrases.whole(phrases.CARD_LINE, text)
    if found:
        sheet.length(passage, found, 'most', most_sag(world), 'greatest sag', INCH // 64 if world.inches else MM)
        return 'lines', None
    sheet.wrong('heading of the card', text, 'a known one', passage)
    return None, None


def tape_row(sheet, row, _):
    found = phrases.whole(phrases.CARD_PAIR, row.text(0))
    world = sheet.world
    if found is None or found['a'] not in world.corners or found['b'] not in world.corners:
        return sheet.wrong('tape', row.text(0), 'two corners', row.cells[0])
    a, b = world.corners[found['a']]['point'], world.corners[found['b']]['point']
    square = (a[0] - b[0]) ** 2 + (a[1] - b[1]) ** 2
    match = phrases.part('{at=}', row.text(1))
    check_root(sheet, row.cells[1], match, square, f'tape {row.text(0)}')


def check_root(sheet, passage, match, square, what):
    """A printed length against the root of a square: squares are compared, no root is taken."""
    step = sheet.world.step
    for one in passage.lengths:
        passage.claimed.add(one.start)
        low, high = one.value - Fraction(step, 2), one.value + Fraction(step, 2)
        if not low * low <= square <= (high + 1) * (high + 1):
            sheet.wrong(what, one.text, f'root of {float(square / 1e12):.3f} mm2', passage)


def square_row(sheet, row, _):
    """Legs along both sides in 3, 4 and 5 times whole feet (100 mm), within the sides; what a slip across costs."""
    world = sheet.world
    match = phrases.part(phrases.CARD_LEGS, row.text(1))
    corner = world.corners.get(row.text(0))
    if match is None or corner is None:
        return sheet.wrong('square check', f'{row.text(0)} {row.text(1)}', phrases.CARD_LEGS, row.cells[0])
    passage = row.cells[1]
    legs = [sheet.value(passage, match, field) for field in ('a', 'b', 'c')]
    sheet.claim_all(passage)
    unit = FOOT if world.inches else 100 * MM
    times = legs[2] / (5 * unit)
    sheet.same((times.denominator, sorted(legs[:2])), (1, [3 * times * unit, 4 * times * unit]),
               f'square at {row.text(0)}', passage)
    along, across = world.sides[corner['leaving']].actual, world.sides[corner['arriving']].actual
    if legs[0] > along or legs[1] > across:
        sheet.wrong(f'square at {row.text(0)}', passage.text, 'legs within the sides', passage)
    room = sheet.world.job['setting_out'].get('room')
    most = world.length(room) if room else max(along, across)
    more = (times + 1) * unit
    reach = sorted((min(along, most), min(across, most)))
    if reach[0] >= 3 * more and reach[1] >= 4 * more:
        sheet.wrong(f'square at {row.text(0)}', passage.text, 'the largest that fits', passage)
    slip = phrases.part(phrases.CARD_SLIP, passage.text)
    if slip:
        # The corner turns by c dc / (a b); the far end of the longer side goes out by its length times that.
        sheet.claim_all(passage)
        sheet.length(passage, slip, 'slip', world.step, 'slip')
        sheet.length(passage, slip, 'out', max(along, across) * legs[2] * world.step / (legs[0] * legs[1]),
                     'what a slip costs')
    else:
        sheet.wrong('what a slip costs', row.text(1), phrases.CARD_SLIP, passage)


def board_row(sheet, row, sides):
    for side in sides:
        one_board_row(sheet, row, side)


def one_board_row(sheet, row, side):
    world, asked = sheet.world, sheet.world.job['setting_out']
    start = world.length(asked['first_kerf']) if 'first_kerf' in asked else (2 * FOOT if world.inches else 600 * MM)
    what = phrases.CARD_KERFS.get(row.text(0))
    exact = {'footing_outside': start - world.length(asked.get('footing_outside', '0"')), 'outer': start,
             'middle': start + side.thick // 2, 'inner': start + side.thick,
             'footing_inside': start + side.thick + world.length(asked.get('footing_inside', '0"'))}.get(what)
    match = phrases.whole('{at=}', row.text(1))
    if match is None or exact is None:
        return sheet.wrong('kerf', f'{row.text(0)} {row.text(1)}', list(phrases.CARD_KERFS), row.cells[0])
    sheet.length(row.cells[1], match, 'at', exact, f'{side.name}: kerf of the {row.text(0)}')


def rod_height(world, text):
    bearing = nm(world.courses[1]['top']) - nm(world.courses[1]['unit_height']) - world.joint
    for template, what in phrases.CARD_ROD_PLACES.items():
        found = phrases.whole(template, text)
        if found is None:
            continue
        if 'opening' in found.re.groupindex:
            names = found['opening'].split(', ')
            heights = {nm(world.openings[name][what]) for name in names if name in world.openings}
            return heights.pop() if len(heights) == 1 and all(name in world.openings for name in names) else None
        return {'bearing': bearing, 'datum': 0, 'top': nm(world.answer['courses'][-1]['top']),
                'boards': bearing + world.length(world.job['setting_out'].get('boards_over', '0"'))}[what]
    return None


def rod_row(sheet, row, _):
    world, asked = sheet.world, sheet.world.job['setting_out']
    height = rod_height(world, row.text(0))
    if height is None:
        return sheet.wrong('rod reading', row.text(0), list(phrases.CARD_ROD_PLACES), row.cells[0])
    reading = world.length(asked['backsight']) + world.length(asked.get('datum_over', '0"')) - height
    passage = row.cells[1]
    template = phrases.CARD_ROD_DOWN if reading < 0 else '{reading=}'
    match = phrases.part(template, passage.text)
    over = phrases.part(phrases.CARD_ROD_UNDER if height < 0 else phrases.CARD_ROD_OVER, passage.text)
    if match is None or over is None:
        return sheet.wrong(f'rod reading of {row.text(0)}', passage.text, sheet.book.text(reading), passage)
    sheet.length(passage, match, 'reading', abs(reading), f'rod reading of {row.text(0)}')
    sheet.length(passage, over, 'height', abs(height), f'height of {row.text(0)}')


FORCES = {'lb': Fraction('4.4482216152605'), 'N': Fraction(1), 'kg': Fraction('9.80665')}
WEIGHTS = {'lb/ft': Fraction('4.4482216152605') / Fraction('0.3048'), 'g/m': Fraction('0.00980665'), 'N/m': Fraction(1)}


def force(text, units):
    number, unit = text.rsplit(' ', 1)
    return Fraction(number) * units[unit]


def most_sag(world):
    asked = world.job['setting_out'].get('line_sag')
    return world.length(asked) if asked else (INCH // 32 if world.inches else MM)


def line_row(sheet, row, _):
    """The sag of a light line is w L^2 / 8 T: unsupported, and between trigs."""
    world, asked = sheet.world, sheet.world.job['setting_out']
    side = world.sides.get(row.text(0))
    if side is None:
        return sheet.wrong('line', row.text(0), list(world.sides), row.cells[0])
    weight, pull = force(asked.get('line_weight', '0.001 lb/ft'), WEIGHTS), force(asked.get('line_pull', '20 lb'),
                                                                                  FORCES)
    metre, passage = 1000 * MM, row.cells[1]
    span = Fraction(side.actual, metre)
    sag = weight * span * span / (8 * pull) * metre
    found = phrases.part(phrases.CARD_SAG, passage.text)
    if found and 'sag' in found.re.groupindex:
        sheet.length(passage, found, 'sag', sag, f'sag of {side.name}')
    elif found and sag < Fraction(world.step, 2):
        sheet.length(passage, found, 'under', world.step, f'sag of {side.name}')
    else:
        sheet.wrong(f'sag of {side.name}', passage.text, sheet.book.text(sag), passage)
    # The longest part that hangs no lower: L^2 = most / sag of the whole, times its own L^2.
    check_trigs(sheet, passage, side, lambda part: sag * part * part <= most_sag(world) * side.actual * side.actual)


def ground_of(world, side):
    """Where the middle of a trig may stand: half a unit of masonry, in no opening."""
    holes = sorted((nm(row['from']), nm(row['to'])) for row in world.openings.values() if row['side'] == side.name)
    half, start, found = nm(side.series['half']) // 2, 0, []
    for low, high in holes + [(side.actual, side.actual)]:
        if start + half <= low - half:
            found.append((start + half, low - half))
        start = max(start, high)
    return found


def fewest(ground, whole, hangs_well):
    """The fewest supports, each as far on as the line allows; None where an opening is too wide for it."""
    count, last = 0, 0
    while not hangs_well(whole - last):
        places = [high if hangs_well(high - last) else None for low, high in ground if high > last]
        best = None
        for low, high in ground:
            if high <= last or (low > last and not hangs_well(low - last)):
                continue
            inside, outside = max(low, last), high
            if hangs_well(high - last):
                best = high
                continue
            while outside - inside > 1:  # the line's own limit lies in this stretch
                middle = (inside + outside) // 2
                inside, outside = (middle, outside) if hangs_well(middle - last) else (inside, middle)
            best = inside if inside > last else best
        if best is None or not places:
            return None
        count, last = count + 1, best
    return count


def check_trigs(sheet, passage, side, hangs_well):
    """Supports stand on masonry, are the fewest, and leave no part that hangs lower than is allowed."""
    world, what = sheet.world, f'trigs of {side.name}'
    found = re.search(phrases.CARD_TRIGS, passage.text)
    wanted = fewest(ground_of(world, side), side.actual, hangs_well)
    if wanted is None:
        return sheet.same(phrases.CARD_TOO_WIDE in passage.text, True, what, passage)
    if wanted == 0 or found is None:
        return sheet.same((0 if found is None else None), wanted, what, passage)
    low = found.start('places')
    places = [one for one in passage.lengths if low <= one.start < found.end('places')]
    shift = shift_of(sheet, side, hook_in(found['hook']), passage)
    sheet.same(len(places), wanted, what, passage)
    last = 0
    for one in places:
        passage.claimed.add(one.start)
        at = one.value - shift
        if not any(start - world.step <= at <= end + world.step for start, end in ground_of(world, side)):
            sheet.wrong(f'{what}: place', one.text, 'on masonry', passage)
        if not hangs_well(at - last - world.step):
            sheet.wrong(f'{what}: part', one.text, 'nearer', passage)
        last = at
    if not hangs_well(side.actual - last - world.step):
        sheet.wrong(f'{what}: part', 'the last', 'shorter', passage)
    if len(places) == 1:
        check_one_trig(sheet, passage, side, places[0], shift)


def check_one_trig(sheet, passage, side, one, shift):
    """A single support makes the two parts as even as the openings allow."""
    middle = Fraction(side.actual, 2)
    places = [min(max(middle, start), end) for start, end in ground_of(sheet.world, side)]
    nearest = min(abs(place - middle) for place in places)
    best = [place for place in places if abs(place - middle) <= nearest + sheet.world.step]
    if not any(agrees(one.value, place + shift, sheet.world.step) for place in best):
        sheet.wrong(f'trig of {side.name}', one.text, [sheet.book.text(place + shift) for place in best], passage)


CARD_ROWS = {'tapes': tape_row, 'squares': square_row, 'boards': board_row, 'rod': rod_row, 'lines': line_row}
