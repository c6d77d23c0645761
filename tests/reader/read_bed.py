"""The first course as found: the bed under each unit, from the heights read, and what is painted and chalked."""
import re
from fractions import Fraction

import phrases
from lengths import INCH, MM, rounded
from places import hook_in, reference_in, says_reference, shift_of
from read_courses import Strip, check_feet, split_labels
from read_found import ground, readings_of
from read_pour import check_label, points
from sheets import take_paragraphs
from world import nm

# ---- the bed under each unit -----------------------------------------------------------------------------------------

def bearing_heights(world, side):
    """(place along, height) of every station on the bearing of a side, its corners too."""
    found = {}
    for station in world.answer['ground']['levels']['stations']:
        if station['surface'] != 'bearing':
            continue
        if station.get('side') == side.name:
            found[nm(station['at'])] = nm(station['height'])
        elif 'side' not in station and station['name'] == side.start:
            found[0] = nm(station['height'])
        elif 'side' not in station and station['name'] == side.end:
            found[side.actual] = nm(station['height'])
    # An inner wall's end stands on what the wall that it meets stands on there.
    for row in world.answer['junctions']:
        along = 0 if row['at'] == 'start' else side.actual
        if row['abutting'] != side.name or along in found:
            continue
        main = bearing_heights(world, world.sides[row['main']])
        middle = Fraction(nm(row['from']) + nm(row['to']), 2)
        if main and main[0][0] <= middle <= main[-1][0]:
            found[along] = height_at(main, middle)
    return sorted(found.items())


def height_at(heights, along):
    if along <= heights[0][0]:
        return Fraction(heights[0][1])
    for (low, a), (high, b) in zip(heights, heights[1:]):
        if along <= high:
            return a + Fraction((b - a) * (along - low), high - low)
    return Fraction(heights[-1][1])


def exact_bed(world, side, piece, top):
    """Thinnest and thickest bed under a unit: the ground is straight between readings."""
    heights = bearing_heights(world, side)
    start, end = round(piece.start), round(piece.end)
    places = [start, end] + [along for along, _ in heights if start < along < end]
    beds = [top - height_at(heights, along) for along in places]
    return min(beds), max(beds)


def bed(sheet):
    world, side = sheet.world, sheet.world.sides.get(sheet.fields['side'])
    if side is None:
        return sheet.wrong('side', sheet.fields['side'], list(world.sides))
    level = ground(sheet)['levels']['bed']
    top = nm(level['top'])
    above, zeros = [], []
    for page in sheet.pages:
        one = BedStrip(sheet, page, side)
        split_labels(sheet, one)
        above += reversed(one.labels)
        check_feet(sheet, one, [end for end, _ in world.block_ends(side.name, 1)])
        bed_numbers(sheet, one, side, top)
        bed_openings(sheet, page, side)
        bed_stations(sheet, one, side, top)
        take_paragraphs(sheet, page)
        zeros.append(one.zero)
    ends = world.block_ends(side.name, 1)
    sheet.same(len(above), len(ends), 'marks of block ends')
    notes = [passage for passage in sheet.passages if says_reference(passage.text)]
    sheet.same(len(notes), len(sheet.pages), 'every part says what its marks are measured from')
    shifts = [shift_of(sheet, side, reference_in(one.text), one) for one in notes] or [0]
    sheet.same(len(set(shifts)), 1, 'every part measures from one place')
    shift = shifts[0]
    for passage, (end, piece) in zip(above, ends):
        check_label(sheet, passage, end + shift, f'end of {piece.name}')
    bed_notes(sheet, side, level)


class BedStrip(Strip):
    """The profile's units are 14 mm high on paper, whatever their size."""

    def __init__(self, sheet, page, side):
        super().__init__(sheet, page, side)
        self.high = points(14 * MM)
        self.boxes = [box for box in sheet.shapes(page).boxes if box.fill is not None and not box.dashed
                      and abs(box.bottom - box.top - self.high) < 0.06]
        self.top, self.bottom = (self.boxes[0].top, self.boxes[0].bottom) if self.boxes else (None, None)


def bed_numbers(sheet, one, side, top):
    """Unit numbers in the units, their beds over them: in sixteenths or millimetres, thinnest and thickest."""
    world = sheet.world
    if one.zero is None:
        return
    answer = {row['number']: row for row in ground(sheet)['levels']['bed']['units'] if row['side'] == side.name}
    texts = sheet.texts(one.page)
    for piece in world.pieces[side.name, 1]:
        left, right = one.place(piece.end), one.place(piece.start)
        box = next((box for box in one.boxes if abs(box.left - left) < 0.1 and abs(box.right - right) < 0.1), None)
        if box is None:
            continue
        inside = [text for text in texts if left < text.x < right and not text.turned]
        number = [text for text in inside if one.top < text.y < one.bottom]
        over = [text for text in inside if one.top - 26 < text.y < one.top and re.fullmatch(r'-?\d+(--?\d+)?',
                                                                                            text.text)]
        for text in number + over:
            sheet.take([text])
        sheet.same([text.text for text in number], [str(piece.number)], f'number in {piece.name}')
        thin, thick = exact_bed(world, side, piece, top)
        row = answer.get(piece.number)
        if row is None or abs(nm(row['thinnest']) - thin) > 2 or abs(nm(row['thickest']) - thick) > 2:
            sheet.wrong(f'bed under {piece.name}', row and (nm(row['thinnest']), nm(row['thickest'])),
                        (float(thin), float(thick)))
        counts = [str(rounded(bed_, world.step) // world.step) for bed_ in (thin, thick)]
        wanted = counts[0] if counts[0] == counts[1] else '-'.join(counts)
        sheet.same([text.text for text in over], [wanted], f'bed under {piece.name}')


def bed_openings(sheet, page, side):
    """At each opening its name, its hole, its jambs and the course that its head is on, one under the other."""
    texts = sheet.texts(page)
    for at, text in enumerate(texts):
        row = sheet.world.openings.get(text.text)
        if row is None or row['side'] != side.name or text.turned:
            continue
        group = [text]
        middle = text.x
        if at + 1 < len(texts) and abs(texts[at + 1].top - text.top) < 1 and texts[at + 1].lengths():
            group, middle = [text, texts[at + 1]], (text.left + texts[at + 1].right) / 2
        for more in texts[at + len(group):]:
            if more.turned or abs(more.x - middle) > 1.5 or not 0 < more.top - group[-1].top < 40:
                break
            group.append(more)
        passage, name = sheet.take(group), row['name']
        size, jambs = phrases.part(phrases.BED_SIZE, passage.text), phrases.part(phrases.BED_JAMBS, passage.text)
        head = phrases.part(phrases.BED_HEAD, passage.text)
        if not (size and jambs and head):
            sheet.wrong(f'{name}: to paint', passage.text, phrases.BED_JAMBS, passage)
            continue
        near, far = (sheet.world.jamb(row, edge, 1) for edge in ('from', 'to'))
        sheet.length(passage, size, 'wide', far - near, f'{name}: width')
        sheet.length(passage, size, 'high', nm(row['soffit']) - nm(row['underside']), f'{name}: height')
        sheet.length(passage, jambs, 'from', near, f'{name}: near jamb')
        sheet.length(passage, jambs, 'to', far, f'{name}: far jamb')
        sheet.same(int(head['course']), row['last_course'], f'{name}: head on course', passage)


def bed_stations(sheet, one, side, top):
    """The bed at each reading, under its dot."""
    if one.zero is None:
        return
    heights = bearing_heights(sheet.world, side)
    for text in sheet.texts(one.page):
        if text.turned or not phrases.whole('{at}', text.text) or text.top < one.bottom:
            continue
        along, height = min(heights, key=lambda pair: abs(one.place(pair[0]) - text.x))
        if abs(one.place(along) - text.x) > 1.5:
            continue
        check_label(sheet, sheet.take([text]), top - height, f'bed at {sheet.book.text(along)}')


def bed_notes(sheet, side, level):
    world = sheet.world
    for passage in sheet.passages:
        limits = phrases.part(phrases.BED_LIMITS, passage.text)
        if limits:
            sheet.length(passage, limits, 'least', nm(level['least']), 'least bed')
            sheet.length(passage, limits, 'most', nm(level['most']), 'greatest bed')
        chalk = phrases.part(phrases.BED_CHALK, passage.text)
        if chalk:
            # In from the outer face by the thickness and 4 in (100 mm), up to a whole inch (10 mm).
            room, unit = (4 * INCH, INCH) if world.inches else (100 * MM, 10 * MM)
            offset = -(-(side.thick + room) // unit) * unit
            sheet.length(passage, chalk, 'offset', offset, 'second chalk line')
        edges = phrases.part(phrases.BED_EDGES, passage.text)
        if edges:
            check_edges(sheet, passage, side, edges)


def check_edges(sheet, passage, side, edges):
    """The outer face line on the slab: what each edge reading was, moved by the fit."""
    world, fit = sheet.world, ground(sheet)['fit']
    rows = [row for _, row in readings_of(world, 'edge') if row['on'] == side.name]
    found = phrases.parts(phrases.BED_EDGE, passage.text)
    shift = shift_of(sheet, side, hook_in(edges['hook']), passage)
    sheet.same(len(found), len(rows), f'edges of {side.name}', passage)
    for match, row in zip(found, rows):
        at, beyond = world.length(row['at']), world.length(row['beyond'])
        sheet.length(passage, match, 'at', at + shift, f'edge of {side.name}: at')
        middle = [(min(axis) + max(axis)) / Fraction(2)
                  for axis in zip(*(row['point'] for row in world.corners.values()))]
        x, y = (here - there for here, there in zip(side.point(at), middle))
        turn = Fraction(fit['turn_micrometres_in_a_metre'], 1_000_000)
        east, north = nm(fit['east']) - turn * y, nm(fit['north']) + turn * x
        exact = beyond + side.inward[0] * east + side.inward[1] * north
        one = sheet.printed(passage, match.start('in'))
        passage.claimed.add(one.start)
        # The turn is told in whole micrometres a metre: half a step, and half of one at that distance.
        slack = Fraction(world.step, 2) + Fraction(max(abs(x), abs(y)), 2_000_000) + 1
        if abs(one.value - exact) > slack:
            sheet.wrong(f'edge of {side.name}', one.text, sheet.book.text(exact), passage)
