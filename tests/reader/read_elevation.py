"""Elevations: every unit and letter in its place, heights of courses, words in the openings, running dimensions."""
import re
from collections import Counter

import phrases
from read_courses import WIDE, check_legend, letter, near, prepare
from read_lintels import check_bearing
from read_pour import SLACK, check_label, points, scale_of
from read_summary import one_piece_length
from sheets import take_paragraphs
from world import nm

EIGHT_FEET = 96 * 25_400_000

# ---- elevations ------------------------------------------------------------------------------------------------------

def elevation(sheet):
    world, side = sheet.world, sheet.world.sides.get(sheet.fields['side'])
    if side is None:
        return sheet.wrong('side', sheet.fields['side'], list(world.sides))
    edges = []
    for page in sheet.pages:
        view = Elevation(sheet, page, side)
        check_heights(sheet, page, view)
        check_elevation_openings(sheet, page, side, view)
        check_letters(sheet, page, side, view)
        edges += reversed(running(sheet, page, view.ground))
        take_paragraphs(sheet, page)
    check_legend(sheet)
    check_brace_note(sheet)
    expected = sorted({nm(row[edge]) for row in world.answer['openings'] if row['side'] == side.name
                       for edge in ('from', 'to')} | {side.actual})
    sheet.same(len(edges), len(expected), 'running dimensions')
    for passage, exact in zip(edges, expected):
        check_label(sheet, passage, exact, 'running dimension')
    start = next((found for passage in sheet.passages
                  for found in [phrases.part([phrases.ELEVATION_FROM, phrases.ELEVATION_FROM_INSIDE],
                                             passage.text)] if found), None)
    sheet.same(start and (start.groupdict().get('corner') or start.groupdict().get('wall')), side.start,
               'start at the right')


class Elevation:
    """Where an elevation's units stand on paper: found from the boxes drawn, by the most that fit one zero."""

    def __init__(self, sheet, page, side):
        world, self.scale = sheet.world, scale_of(page)
        self.side, self.zero, self.ground = side, None, None
        heights = {round(points(nm(row['unit_height']), self.scale), 1) for row in world.courses.values()}
        self.boxes = [box for box in sheet.shapes(page).boxes if box.fill is not None and box.stroked
                      and any(abs(box.bottom - box.top - high) < SLACK * 2 for high in heights)]
        keys = {(left, right, bottom) for box in self.boxes for left in near(box.left) for right in near(box.right)
                for bottom in near(box.bottom)}
        first = world.courses[1]
        self.foot = nm(first['top']) - nm(first['unit_height'])
        pieces = [piece for (name, _), row in world.pieces.items() if name == side.name for piece in row]
        if not self.boxes or not pieces:
            return
        low = max(box.bottom for box in self.boxes)
        votes = Counter()
        for box in self.boxes:
            if box.bottom > low - 0.1:
                for piece in world.pieces[side.name, 1]:
                    if abs(points(piece.length, self.scale) - (box.right - box.left)) < SLACK:
                        votes[round(box.right + points(piece.start, self.scale), 2)] += 1
        if not votes:
            return sheet.wrong('elevation', 'no units drawn', side.name)
        self.ground = low
        self.zero = max((zero for zero, _ in votes.most_common(8)),
                        key=lambda zero: sum(self.has(keys, zero, self.y(self.under(world, one)), one)
                                             for one in pieces))
        left, right = min(box.left for box in self.boxes), max(box.right for box in self.boxes)
        for piece in pieces:
            x0, x1 = self.x(piece.end), self.x(piece.start)
            shown = x0 > left - SLACK and x1 < right + SLACK
            if shown and not self.has(keys, self.zero, self.y(self.under(world, piece)), piece):
                sheet.wrong(f'box of {piece.name}', 'not drawn', f'{x0:.2f}..{x1:.2f} pt')

    def under(self, world, piece):
        row = world.courses[piece.course]
        return nm(row['top']) - nm(row['unit_height'])

    def x(self, along):
        return self.zero - points(along, self.scale)

    def y(self, height):
        return self.ground - points(height - self.foot, self.scale)

    def has(self, keys, zero, bottom, piece):
        left, right = zero - points(piece.end, self.scale), zero - points(piece.start, self.scale)
        return (round(left * 10), round(right * 10), round(bottom * 10)) in keys


def over_8_feet(world):
    """Of the bearing, where the walls rise over it (29 CFR 1926.706(b)): else None."""
    foot = nm(world.courses[1]['top']) - nm(world.courses[1]['unit_height']) - world.joint
    line = foot + EIGHT_FEET
    return line if nm(world.courses[max(world.courses)]['top']) > line else None


def check_brace_note(sheet):
    told = [(passage, found) for passage in sheet.passages
            for found in [phrases.part(phrases.BRACE_NOTE, passage.text)] if found]
    sheet.same(bool(told), over_8_feet(sheet.world) is not None, 'note of the brace line')
    for passage, found in told:
        sheet.length(passage, found, 'over', EIGHT_FEET, 'height over which walls are braced')


def check_heights(sheet, page, view):
    """"7 w", "7", 4'-0": number right, number left, height of the top, at the course's own level."""
    texts, seen = sheet.texts(page), []
    for right, left, height in zip(texts, texts[1:], texts[2:]):
        found = re.fullmatch(r'(\d+)( w)?', right.text)
        if not found or left.text != found[1] or not phrases.whole('{at}', height.text):
            continue
        row = sheet.world.courses.get(int(found[1]))
        if row is None:
            sheet.wrong('course', right.text, list(sheet.world.courses))
            continue
        seen.append(row['number'])
        sheet.same(bool(found[2]), row['wire'], f'wire on course {found[1]}')
        sheet.take([right]), sheet.take([left])
        check_label(sheet, sheet.take([height]), nm(row['top']), f'top of course {found[1]}')
        if view.zero is not None:
            middle = view.y(nm(row['top']) - nm(row['unit_height']) // 2)
            if abs(right.y - middle) > 3 or abs(left.y - middle) > 3:
                sheet.wrong(f'number of course {found[1]}', f'{right.y:.1f} pt', f'{middle:.1f} pt')
            if abs(height.y - view.y(nm(row['top']))) > 3:
                sheet.wrong(f'height of course {found[1]}', f'{height.y:.1f} pt', f'{view.y(nm(row["top"])):.1f} pt')
    if len(sheet.world.courses) not in seen:
        sheet.wrong('heights of courses', seen, 'the last course too')


def check_elevation_openings(sheet, page, side, view):
    world = sheet.world
    texts = sheet.texts(page)
    for at, text in enumerate(texts):
        row = world.openings.get(text.text)
        if row is None or row['side'] != side.name or text.turned or id(text) in sheet.taken:
            continue
        group = [text]
        for more in texts[at + 1:]:
            apart = abs(more.x - text.x) > 1.5 or not 0 < more.top - group[-1].top < 40
            if more.turned or apart or re.fullmatch(r'\d+( w)?', more.text):
                break
            group.append(more)
        passage = sheet.take(group)
        opening_words(sheet, passage, row)
        if view.zero is not None:
            middle = (view.x(nm(row['from'])) + view.x(nm(row['to']))) / 2
            parts = len(sheet.pages) > 1
            if abs(text.x - middle) > WIDE and not parts:
                sheet.wrong(f'{row["name"]}: name', f'{text.x:.1f} pt', f'{middle:.1f} pt')
    for text in sheet.texts(page):
        one = phrases.whole(phrases.ELEVATION_ONE, text.text)
        if one:
            passage = sheet.take([text])
            one_piece(sheet, passage, one, side, view)


def opening_words(sheet, passage, row):
    name = row['name']
    rest = passage.text[len(name):]
    for template, exact in ((phrases.ELEVATION_SIZE, {'wide': nm(row['to']) - nm(row['from']),
                                                      'high': nm(row['soffit']) - nm(row['underside'])}),
                            (phrases.ELEVATION_HEAD, {'at': nm(row['soffit'])}), (phrases.ELEVATION_SILL,
                                                                                  {'at': nm(row['underside'])})):
        found = phrases.part(template, passage.text)
        if found:
            for field, value in exact.items():
                sheet.length(passage, found, field, value,
                             f'{name}: {template if isinstance(template, str) else field}')
    bearing = phrases.part(phrases.ELEVATION_BEARING, passage.text)
    placed = next((one for one in sheet.world.answer['lintels'] if one['opening'] == name), None)
    if len([one for one in passage.lengths if one.start not in passage.claimed]) > (3 if bearing else 0):
        sheet.wrong(f'{name}: words cut off', rest, 'whole words', passage)
    if bearing and placed:
        check_bearing(sheet, passage, bearing, row)
    elif bearing:
        sheet.wrong(f'{name}: bearing', rest, 'no lintel', passage)


def one_piece(sheet, passage, found, side, view):
    value = sheet.value(passage, found, 'length')
    for name, row in sheet.world.openings.items():
        length = one_piece_length(sheet.world, name)
        if row['side'] != side.name or length is None:
            continue
        if view.zero is None or view.x(nm(row['to'])) < passage.texts[0].x < view.x(nm(row['from'])):
            sheet.length(passage, found, 'length', length, f'{name}: lintel')
            return
    sheet.wrong('one-piece lintel', value, 'over an opening', passage)


def check_letters(sheet, page, side, view):
    """Letters and cut lengths stand in a unit that is what they say."""
    if view.zero is None:
        return
    world, marks = sheet.world, prepare(sheet.world)
    known = set(phrases.LETTERS.values()) - {''} | {phrases.CUT_LETTER} | set(marks)
    rows = [(view.y(nm(row['top'])), view.y(nm(row['top']) - nm(row['unit_height'])), row['number'])
            for row in world.courses.values()]
    for text in sheet.texts(page):
        words = text.text.split(' ', 1)
        is_length = phrases.whole('{at}', text.text)
        if not (text.text in known or words[0] in known and len(words) > 1 and phrases.whole('{at}', words[1])
                or is_length):
            continue
        course = next((number for top, bottom, number in rows if top - 1 < text.y < bottom + 1), None)
        over = [piece for piece in world.pieces[side.name, course]
                if view.x(piece.end) - 1 < text.x < view.x(piece.start) + 1] if course else []
        if not over:
            if not is_length and text.text not in (side.start, side.end):
                sheet.wrong('letter of a unit', text.text, 'in a unit')
            continue
        passage = sheet.take([text])
        wanted = [letter(world, piece) for piece in over]
        if passage.lengths:
            near = [piece for piece in over if piece.cut != 'none']
            if not near:
                sheet.wrong('length of a cut', passage.text, 'in a cut', passage)
                continue
            check_label(sheet, passage, near[0].length, f'cut length of {near[0].name}')
        mark = words[0] if not is_length else None
        if mark and mark not in wanted and not (mark == phrases.CUT_LETTER and any(one.startswith(phrases.CUT_LETTER)
                                                                                   for one in wanted)):
            sheet.wrong(f'letter of {over[0].name}', text.text, wanted, passage)


def running(sheet, page, ground):
    """Lengths under the ground, each with its other form below: one passage each, from left to right."""
    texts = [text for text in sheet.texts(page) if not text.turned and phrases.whole('{at}', text.text)
             and (ground is None or text.y > ground)]
    found, used = [], set()
    for at, text in enumerate(texts):
        if id(text) in used:
            continue
        group = [text]
        below = texts[at + 1] if at + 1 < len(texts) else None
        if below and abs(below.x - text.x) < 1.5 and below.lengths()[0].form != text.lengths()[0].form:
            group.append(below)
        used.update(id(one) for one in group)
        found.append(sheet.take(group))
    return found
