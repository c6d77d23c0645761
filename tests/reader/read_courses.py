"""Plans and strips: every mark, unit, opening and letter at its place."""
import re

import phrases
from lengths import INCH, MM, agrees
from places import reference_in, says_reference, shift_of
from read_lists import cut_marks
from read_summary import read_side_dimensions
from read_pour import SLACK, check_label, label_pairs, points, scale_of
from sheets import take_paragraphs
from world import nm

WIDE = 1.2  # points: what is centred by the width of its letters


def prepare(world):
    """Marks of cuts by what they mark."""
    if not hasattr(world, 'marks'):
        world.marks = cut_marks(world)
    return world.marks


def near(place):
    """Tenths of a point that a place within 0.02 of this one rounds to."""
    return {round(place * 10 - 0.3), round(place * 10 + 0.3)}


def letter(world, piece):
    if piece.cut == 'none':
        return phrases.LETTERS[piece.kind]
    key = (world.sides[piece.side].series['id'], piece.kind, piece.length)
    return next((mark for mark, one in prepare(world).items() if one == key), phrases.CUT_LETTER)


def check_legend(sheet):
    """"CU2 = 12 5/8"" in the notes."""
    marks = prepare(sheet.world)
    for passage in sheet.passages:
        for found in re.finditer(rf'({phrases.CUT_LETTER}\d+) = ({phrases.LENGTH})', passage.text):
            one = sheet.printed(passage, found.start(2))
            if found[1] not in marks or one is None:
                sheet.wrong('legend of cuts', found[0], sorted(marks), passage)
                continue
            passage.claimed.add(one.start)
            if not agrees(one.value, marks[found[1]][2], sheet.world.step):
                sheet.wrong(f'legend of cuts, {found[1]}', one.text, sheet.book.text(marks[found[1]][2]), passage)


# ---- plan ------------------------------------------------------------------------------------------------------------

def plan(sheet):
    world, page = sheet.world, sheet.pages[0]
    read_side_dimensions(sheet, page)
    take_paragraphs(sheet, page)
    check_legend(sheet)
    for passage in sheet.passages:
        hole = phrases.part(phrases.CLEANOUT_HOLE, passage.text)
        if hole:  # TMS 602, cleanouts: at least 3 in; told in both units
            sheet.length(passage, hole, 'inches', 3 * INCH, 'cleanout hole')
            sheet.length(passage, hole, 'mm', 75 * MM, 'cleanout hole')
        order = phrases.whole(phrases.PLAN_ORDER, passage.text)
        if order:
            first = next(iter(world.sides.values())).start
            sheet.same(order['corner'], first, 'start corner', passage)


# ---- strips ----------------------------------------------------------------------------------------------------------

class Strip:
    """One page of a strip: its band of units, and where the side's zero comes on paper."""

    def __init__(self, sheet, page, side):
        self.page, self.scale = page, scale_of(page)
        self.high = points(side.thick, self.scale)
        # A corner set's unit may be thinner than the wall: its box is as deep as its short leg.
        deep = [self.high, points(min(side.thick, nm(side.series['half'])), self.scale)]
        self.boxes = [box for box in sheet.shapes(page).boxes if box.fill is not None and not box.dashed
                      and any(abs(box.bottom - box.top - high) < SLACK for high in deep)]
        face = max((box.bottom for box in self.boxes), default=None)
        self.top, self.bottom = (face - self.high, face) if self.boxes else (None, None)
        self.zero, self.labels = None, []

    def place(self, along):
        return self.zero - points(along, self.scale)


def strip(sheet):
    world, course = sheet.world, int(sheet.fields['course'])
    side = world.sides.get(sheet.fields['side'])
    if side is None:
        return sheet.wrong('side', sheet.fields['side'], list(world.sides))
    pages = [Strip(sheet, page, side) for page in sheet.pages]
    for one in pages:
        split_labels(sheet, one)
        take_units(sheet, one, side, course)
        take_paragraphs(sheet, one.page)
    check_legend(sheet)
    notes = [passage for passage in sheet.passages if says_reference(passage.text)]
    sheet.same(len(notes), len(pages), 'every part says what its marks are measured from')
    shifts = [shift_of(sheet, side, reference_in(one.text), one) for one in notes] or [0]
    sheet.same(len(set(shifts)), 1, 'every part measures from one place')
    shift = shifts[0]
    ends, low = world.block_ends(side.name, course), world.strip_marks(side.name, course)
    check_marks(sheet, [passage for one in pages for passage in one.labels], ends, low, shift)
    for one in pages:
        check_feet(sheet, one, [end for end, _ in ends] + [mark[0] for mark in low])
        check_drawn(sheet, one, side, course)
    check_numbers(sheet, pages, side, course)


def split_labels(sheet, one):
    turned = [text for text in sheet.texts(one.page) if text.turned]
    beside = [at for at, text in enumerate(turned)
              if one.top is not None and text.lengths() and text.bottom < one.top]
    if not beside:
        return
    first = beside[0]  # what stands in the units themselves comes before
    one.labels = label_pairs(sheet, one.page, turned[first:])


def check_marks(sheet, labels, ends, low, shift):
    """Numbers over the strip: ends of blocks, and jambs, joints, bars and faces of walls that meet, each with its word;
    a block that ends where one of these stands has one number, which says both."""
    step, left, marks = sheet.world.step, list(ends), list(low)
    for passage in labels:
        words = passage.texts[-1].text if not passage.texts[-1].lengths() else ''
        behind = phrases.whole(phrases.STRIP_BEHIND, words)
        what, sign = low_word(behind['what'] if behind else words), -1 if behind else 1
        value = passage.lengths[0].value * sign if passage.lengths else None
        near = [one for one in left if value is not None and agrees(value, one[0] + shift, step)]
        if not words and near:
            check_label(sheet, passage, near[0][0] + shift, f'end of {near[0][1].name}')
            left.remove(near[0])
            continue
        mark = next((one for one in marks if words and value is not None and (one[1], one[2]) == what
                     and agrees(value, one[0] + shift, step)), None)
        if mark is None:
            sheet.claim_all(passage)
            sheet.wrong('mark', passage.text, [f'{one[1]} {one[2]} {sheet.book.text(one[0])}' for one in marks], passage)
            continue
        check_label(sheet, passage, sign * (mark[0] + shift), words)
        marks.remove(mark)
        if near and abs(near[0][0] - mark[0]) < step:
            left.remove(near[0])
    for end, piece in left:
        sheet.wrong('mark', 'missing', f'end of {piece.name} {sheet.book.text(end)}')
    for mark in marks:
        sheet.wrong('mark', 'missing', f'{mark[1]} {mark[2]} {sheet.book.text(mark[0])}')


def low_word(words):
    if words == phrases.STRIP_BAR:
        return 'bar', ''
    if words == phrases.STRIP_JOINT:
        return 'joint', ''
    jamb = phrases.whole(phrases.STRIP_JAMB, words)
    if jamb:
        return 'jamb', jamb['opening']
    face = phrases.whole(phrases.STRIP_FACE, words)
    return ('face', face['wall']) if face else ('', words)


def leaders(sheet, one, level, down):
    """Feet of the leaders that start at the strip's edge, in the order drawn."""
    feet = []
    for line in sheet.shapes(one.page).lines:
        first = line.points[0]
        if len(line.points) == 4 and abs(first[1] - level) < SLACK and (line.points[1][1] > level) == down \
                and abs(line.points[1][0] - first[0]) < 0.01:
            feet.append(first[0])
    return feet


def check_feet(sheet, one, places):
    """Every leader starts where its own number stands on the side's line: all give one zero on paper."""
    zeros = []
    feet = [] if one.top is None else leaders(sheet, one, one.top, False)
    if sheet.same(len(feet), len(one.labels), 'leaders'):
        for foot, passage in zip(feet, one.labels):
            if not passage.lengths:
                continue
            value = passage.lengths[0].value
            if phrases.whole(phrases.STRIP_BEHIND, passage.texts[-1].text):
                value = -value
            near = min(places, key=lambda place: abs(place - value), default=None)
            if near is not None:
                zeros.append((foot + points(near, one.scale), passage))
    if not zeros:
        return
    zeros.sort(key=lambda zero: zero[0])
    one.zero = zeros[len(zeros) // 2][0]
    for zero, passage in zeros:
        if abs(zero - one.zero) > SLACK * 2:
            sheet.wrong('foot of a leader', passage.text, f'{zero - one.zero:.2f} pt away', passage)


def check_drawn(sheet, one, side, course):
    """Each whole unit of the part has its box, each bar its dot and the cell round it."""
    if one.zero is None or not one.boxes:
        return
    world = sheet.world
    left, right = min(box.left for box in one.boxes), max(box.right for box in one.boxes)
    boxes = {(a, b) for box in one.boxes for a in near(box.left) for b in near(box.right)}

    def drawn(low, high):
        return (round(one.place(high) * 10), round(one.place(low) * 10)) in boxes

    for piece in world.pieces[side.name, course]:
        if one.place(piece.end) > left - SLACK and one.place(piece.start) < right + SLACK and not drawn(piece.start,
                                                                                                        piece.end):
            sheet.wrong(f'box of {piece.name}', 'not drawn',
                        f'{one.place(piece.end):.2f}..{one.place(piece.start):.2f} pt')
    dots = [dot for dot in sheet.shapes(one.page).dots if one.top < dot[1] < one.bottom]
    for centre, first, last, _, depth in world.bars_on(side.name):
        x, y = one.place(centre), one.bottom - points(depth, one.scale)
        if not (first <= course <= last and left < x < right):
            continue
        if not any(abs(dot[0] - x) < SLACK and abs(dot[1] - y) < SLACK for dot in dots):
            sheet.wrong('dot of a bar', 'not drawn', f'{sheet.book.text(centre)}, {sheet.book.text(depth)} deep')
        cell = world.over(side.name, course, centre, depth)
        if cell and cell[0] == side.name:
            low, high = one.place(cell[3][1]), one.place(cell[3][0])
            if not any(abs(box.left - low) < 2 * SLACK and abs(box.right - high) < 2 * SLACK
                       for box in sheet.shapes(one.page).boxes):
                sheet.wrong('cell of a bar', 'not drawn', f'unit {cell[1]}, cell {cell[2]}')
    places = [(one.place(centre), one.bottom - points(depth, one.scale))
              for centre, first, last, _, depth in world.bars_on(side.name) if first <= course <= last]
    for dot in dots:
        if not any(abs(dot[0] - x) < SLACK and abs(dot[1] - y) < SLACK for x, y in places):
            sheet.wrong('dot of a bar', f'{dot[0]:.1f}, {dot[1]:.1f} pt', 'no bar of the answer stands there')


def take_units(sheet, one, side, course):
    """Numbers over the units, sizes in openings, lengths in cuts; what the strip's ends are."""
    world = sheet.world
    one.numbers = []
    texts = sheet.texts(one.page)
    last = None
    for text, after in zip(texts, texts[1:] + [None]):
        found = phrases.whole(phrases.STRIP_NUMBER[::-1], text.text)
        if one.top is not None and found and text.bottom < one.top + 8 and text.top > one.top - 40:
            mark = found.groupdict().get('letter') or ''
            sheet.take([text])
            if not mark and after is not None and abs(after.x - text.x) < 0.5 and 0 < text.top - after.top < 14 \
                    and re.fullmatch('[A-Z]{2}[0-9]*', after.text):
                mark = after.text  # a line higher
                sheet.take([after])
            one.numbers.append((text, int(found['number']), mark))
        elif phrases.whole(phrases.STRIP_SIZE, text.text) and last in world.openings:
            passage, row = sheet.take([text]), world.openings[last]
            found = phrases.whole(phrases.STRIP_SIZE, text.text)
            wide = world.jamb(row, 'to', course) - world.jamb(row, 'from', course)
            sheet.length(passage, found, 'wide', wide, f'{last}: width')
            sheet.length(passage, found, 'high', nm(row['soffit']) - nm(row['underside']), f'{last}: height')
        elif one.top is not None and one.top < text.y < one.bottom and phrases.whole('{at}', text.text):
            one.cuts = getattr(one, 'cuts', []) + [sheet.take([text])]
        last = text.text
    check_ends(sheet, one, side, course)


ENDS = {'through-corner': phrases.STRIP_THROUGH, 'butt-corner': phrases.STRIP_BUTTS,
        'tied-junction': phrases.STRIP_MEETS,
        'lapped-butt': phrases.STRIP_MEETS, 'free-end': phrases.STRIP_FREE}


def check_ends(sheet, one, side, course):
    world = sheet.world
    runs = world.runs[side.name, course]
    if not runs:
        return
    words = [text.text for text in one.page.texts]
    first, last = one.page is sheet.pages[0], one.page is sheet.pages[-1]
    wanted = []
    for shown, kind, name in ((first, runs[0]['at_start'], side.start), (last, runs[-1]['at_end'], side.end)):
        if not shown:
            continue
        other = world.corner_other(side.name, name) or name
        template = ENDS.get(kind)
        if template:
            wanted.append(re.sub(r'\{side~\}', other, template))
        wanted.append(name)
    for word in wanted:
        if word not in words and not any(text.startswith(word[:3]) and text.endswith('…') for text in words):
            sheet.wrong('end of the strip', 'missing', word)


def check_numbers(sheet, pages, side, course):
    """Each unit's number once, over its own middle, with the letter of what it is."""
    world = sheet.world
    pieces = {piece.number: piece for piece in world.pieces[side.name, course]}
    seen = []
    for one in pages:
        for text, number, mark in one.numbers:
            piece = pieces.get(number)
            if piece is None:
                sheet.wrong('number of a unit', text.text, sorted(pieces))
                continue
            seen.append(number)
            if one.zero is not None:
                middle = (one.place(piece.start) + one.place(piece.end)) / 2
                whole_shown = any(abs(box.left - one.place(piece.end)) < SLACK
                                  and abs(box.right - one.place(piece.start)) < SLACK for box in one.boxes)
                if whole_shown and abs(text.x - middle) > WIDE:
                    sheet.wrong(f'number {text.text}', f'{text.x:.1f} pt', f'{middle:.1f} pt: middle of {piece.name}')
            wanted = letter(world, piece)
            if mark != wanted and not (mark == '' and piece.length < nm(side.series['full'])):
                sheet.wrong(f'letter of {piece.name}', mark, wanted)
        for passage in getattr(one, 'cuts', []):
            check_cut_length(sheet, one, passage, pieces.values())
    narrow = [number for number, piece in pieces.items() if number not in seen
              and piece.length > nm(side.series['half']) // 2]
    sheet.same(narrow, [], 'units without a number')
    sheet.same(len(seen), len(set(seen)), 'numbers of units, each once')


def check_cut_length(sheet, one, passage, pieces):
    over = [piece for piece in pieces if one.zero is not None
            and one.place(piece.end) < passage.texts[0].x < one.place(piece.start)]
    if len(over) != 1 or over[0].cut == 'none':
        return sheet.wrong('length of a cut', passage.text, 'over a cut unit', passage)
    check_label(sheet, passage, over[0].length, f'cut length of {over[0].name}')


