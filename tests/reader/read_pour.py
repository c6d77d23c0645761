"""What is set before the pour: the dowel list and the form boards."""
import phrases
from lengths import INCH, agrees
from places import hook_in, reference_in, says_reference, shift_of
from sheets import read_table, take_paragraphs
from world import CLEARANCE, nm

POINT = INCH / 72  # of paper, nanometres
SLACK = 0.06                 # points: paper places are whole micrometres, printed to 0.001 pt


def points(length, scale=1):
    return float(length) / (POINT * scale)


# ---- dowel list ------------------------------------------------------------------------------------------------------

def dowels(sheet):
    world, expected = sheet.world, sheet.world.dowels()
    seen, shift, since = [], 0, False
    for page in sheet.pages:
        for row in read_table(sheet, page, phrases.HEADS['dowels'], has_boxes=True):
            if row.heading and row.text(0) in (phrases.DOWELS_POURED, phrases.DOWELS_SINCE):
                sheet.same('poured' in world.answer, True, 'told as poured', row.cells[0])
                since = row.text(0) == phrases.DOWELS_SINCE
                continue
            if since and not row.heading:
                dowel_since(sheet, row)
                continue
            if row.heading:
                shift = dowel_heading(sheet, row.cells[0])
                continue
            if row.text(0) not in expected:
                sheet.wrong('dowel', row.text(0), 'a bar that starts at the footing', row.cells[0])
                continue
            seen.append(row.text(0))
            dowel_row(sheet, row, expected[row.text(0)], shift)
        take_paragraphs(sheet, page)
    sheet.same(seen, list(expected), 'dowels listed')
    for passage in sheet.passages:
        dowel_notes(sheet, passage)


def dowel_since(sheet, row):
    """A dowel found elsewhere, a bar beside its dowel, either without the other: as the answer says."""
    world, poured, told, passage = sheet.world, sheet.world.answer['poured'], row.text(1), row.cells[1]
    lone = phrases.whole(phrases.BAR_NO_DOWEL, told)
    if lone:
        bars = [nm(one['at']) for one in poured['bars_without_dowel'] if one['side'] == row.text(0)]
        at = min(bars, key=lambda one: abs(one - sheet.value(passage, lone, 'at'))) if bars else 0
        sheet.length(passage, lone, 'at', at, f'{row.text(0)}: bar without a dowel')
        return
    one = next((one for one in poured['dowels'] if f'{one["side"]} {one["number"]}' == row.text(0)), None)
    if one is None:
        sheet.wrong('dowel since the pour', row.text(0), 'a dowel of the list', row.cells[0])
        return
    listed = next(dowel for dowel in world.answer['dowels']
                  if (dowel['side'], dowel['number']) == (one['side'], one['number']))
    stands = nm(one['found_at']) if 'found_at' in one else nm(listed['at'])
    found = phrases.part(phrases.DOWEL_FOUND, told)
    if found:
        sheet.length(passage, found, 'at', stands, f'{row.text(0)}: found')
    if 'bar_at' not in one:
        sheet.same(told.endswith(phrases.DOWEL_NO_BAR), True, f'{row.text(0)}: its bar', passage)
        return
    bar = phrases.part(phrases.DOWEL_BAR, told)
    if bar:
        sheet.length(passage, bar, 'at', nm(one['bar_at']), f'{row.text(0)}: its bar')
        sheet.length(passage, bar, 'off', abs(nm(one['bar_at']) - stands), f'{row.text(0)}: off its dowel')


def dowel_heading(sheet, passage):
    """Where a side's numbers start, and which face "in from" means: an inside wall's dowels stand in its middle."""
    for face, template in phrases.DOWEL_HEADING.items():
        found = phrases.whole(template, passage.text)
        side = sheet.world.sides.get(found['side']) if found else None
        if side is not None:
            if face == 'either' and any(one.depth * 2 != side.thick for one in sheet.world.dowels().values()
                                        if one.side == side.name):
                sheet.wrong(f'{side.name}: in from either face', passage.text, 'dowels in the middle', passage)
            return shift_of(sheet, side, hook_in(found['hook']), passage)
    sheet.wrong('heading', passage.text, list(sheet.world.sides), passage)
    return 0


def dowel_row(sheet, row, dowel, shift):
    world, name = sheet.world, row.text(0)
    for column, template, exact, what in ((1, phrases.DOWEL_AT, dowel.centre + shift, 'centre'),
                                          (2, phrases.DOWEL_OFF, dowel.depth, 'in from its face')):
        passage = row.cells[column]
        match = phrases.whole(template, passage.text) if passage else None
        if match is None:
            sheet.wrong(f'{name}: {what}', row.text(column), sheet.book.text(exact), row.cells[0])
            continue
        sheet.length(passage, match, list(match.groupdict())[0], exact, f'{name}: {what}')
    for course, column in ((1, 3), (2, 4)):
        if course in world.courses:
            dowel_cell(sheet, row.cells[column], name, dowel, course)
    dowel_room(sheet, row, name, world.room(dowel))


def dowel_cell(sheet, passage, name, dowel, course):
    """The unit and cell over the dowel: its own side's, or another's by name."""
    cell, poured = sheet.world.over(dowel.side, course, dowel.centre, dowel.depth), sheet.world.poured_row(name)
    if poured is not None:
        told = poured.get('first_course' if course == 1 else 'second_course')
        cell = (told['side'], told['unit'], told['cell']) if told else None
    found = phrases.whole(phrases.DOWEL_CELL, passage.text) if passage else None
    got = None
    if found:
        got = (found.groupdict().get('side') or dowel.side, int(found['unit']), int(found['cell']))
    elif passage is not None and passage.text != phrases.DOWEL_NO_CELL:
        got = passage.text
    sheet.same(got, cell[:3] if cell else None, f'{name}: cell in course {course}', passage)


def dowel_room(sheet, row, name, room):
    """How far it may be out each way, rounded down to the tape's steps, nothing less than none."""
    poured = sheet.world.poured_row(name)
    if poured is not None:
        told = poured.get('room')
        room = [nm(told[way]) for way in ('to_start', 'to_end', 'to_outer', 'to_inner')] if told else None
    exacts = (None, None, None) if room is None else (room[0], room[1], min(room[2], room[3]))
    for column, exact in zip((5, 6, 7), exacts):
        passage = row.cells[column]
        if exact is None:
            sheet.same(row.text(column), phrases.DOWEL_NO_CELL, f'{name}: room', row.cells[0])
            continue
        one = passage.lengths[0] if passage and len(passage.lengths) == 1 else None
        wanted = max(0, exact // sheet.world.step * sheet.world.step)
        if one is not None:
            passage.claimed.add(one.start)
        if one is None or one.value != wanted:
            sheet.wrong(f'{name}: room', row.text(column), sheet.book.text(wanted), row.cells[0])


def footing(world, key='footing_outside'):
    """How far the job's footing reaches beyond a face; None where it does not say."""
    asked = world.job.get('setting_out', {})
    return world.length(asked[key]) if key in asked else None


def dowel_notes(sheet, passage):
    """The grout asked for, the lap, and where the form stands from the face line."""
    world, form = sheet.world, footing(sheet.world)
    grout = phrases.part(phrases.DOWEL_GROUT, passage.text)
    if grout:
        bars = world.job['steel']['bars']
        sheet.length(passage, grout, 'grout', CLEARANCE[bars.get('grout', 'coarse')], 'grout round a bar')
        told = phrases.part(phrases.FORM_AT, passage.text)
        if told and form:
            sheet.length(passage, told, 'form', form, 'form from the face')
            sheet.length(passage, told, 'again', form, 'form from the face')
        wanted = phrases.FORM_UNKNOWN if form is None else phrases.FORM_HERE if form == 0 else None
        if (wanted is not None and wanted not in passage.text) or (wanted is None and not told):
            sheet.wrong('where the form stands', passage.text[-120:], wanted or phrases.FORM_AT, passage)
    by_rule = phrases.part(phrases.DOWELS_BY_RULE, passage.text)
    if by_rule:
        up = [nm(one['to']) - nm(one['from']) for one in world.answer['bar_pieces']['pieces'] if one['use'] == 'dowel']
        sheet.length(passage, by_rule, 'least', min(up), 'dowels by the lap rule')
        sheet.length(passage, by_rule, 'most', max(up), 'dowels by the lap rule')
    lap = phrases.part(phrases.DOWEL_LAP, passage.text)
    if lap:
        sheet.length(passage, lap, 'lap', world.length(world.job['steel']['dowel_lap']), 'lap of the dowels')


# ---- form board ------------------------------------------------------------------------------------------------------

def label_pairs(sheet, page, texts):
    """Turned labels in the order drawn, one passage each: a length, its other form where there is one, and words."""
    labels, at = [], 0
    while at < len(texts):
        first = texts[at]
        group, at = [first], at + 1
        while at < len(texts) and len(group) < 3:
            text = texts[at]
            other_form = len(group) == 1 and text.lengths() and abs(text.left - first.left) < 30 \
                and text.lengths()[0].form != first.lengths()[0].form and phrases.whole('{at}', text.text)
            words = not text.lengths()
            if not (other_form or words):
                break
            group.append(text)
            at += 1
            if words:
                break
        labels.append(sheet.take(group))
    return labels


def check_label(sheet, passage, exact, what):
    """All forms of a label's length against one place."""
    for one in passage.lengths:
        passage.claimed.add(one.start)
        if not agrees(one.value, exact, sheet.world.step):
            sheet.wrong(what, one.text, sheet.book.text(exact), passage)


def scale_of(page):
    if page.scale is not None:
        return page.scale
    for text in page.texts:
        if text.top < 45 and text.text.startswith('1:') and text.text[2:].isdigit():
            return int(text.text[2:])
    return None


def heavy_line(sheet, page):
    """The widest level line of the heaviest pen between the page's edges: a face or a form's edge."""
    level = [line for line in sheet.shapes(page).lines if len(line.points) == 2 and line.width > 2.5
             and abs(line.points[0][1] - line.points[1][1]) < 0.01]
    return max(level, key=lambda line: abs(line.points[0][0] - line.points[1][0]), default=None)


class Board:
    """One page of a form board: the face line, the wall's other face, and where zero comes on paper."""

    def __init__(self, sheet, page, side):
        self.page, self.scale, self.zero = page, scale_of(page), None
        face = heavy_line(sheet, page)
        self.bottom = face.points[0][1] if face else None
        self.top = self.bottom - points(side.thick, self.scale) if face else None
        self.left, self.right = sorted(point[0] for point in face.points) if face else (None, None)
        self.labels, self.dowels, self.jambs = [], [], []

    def place(self, along):
        return self.zero - points(along, self.scale)


def form(sheet):
    world, side = sheet.world, sheet.world.sides.get(sheet.fields['side'])
    if side is None:
        return sheet.wrong('side', sheet.fields['side'], list(world.sides))
    mine = {name: dowel for name, dowel in world.dowels().items() if dowel.side == side.name}
    jambs = sorted((nm(row.get('planned', row)[edge]), row['name']) for row in world.answer['openings']
                   if row['side'] == side.name for edge in ('from', 'to'))
    boards = [Board(sheet, page, side) for page in sheet.pages]
    for board in boards:
        if board.bottom is None:
            sheet.wrong('form board', 'no face line', 'a heavy line')
            continue
        turned = [text for text in sheet.texts(board.page) if text.turned]
        first = next((at for at, text in enumerate(turned) if text.lengths()), len(turned))
        for passage in label_pairs(sheet, board.page, turned[first:]):
            board.labels.append(passage)
            jamb = phrases.whole(phrases.STRIP_JAMB, passage.texts[-1].text)
            (board.jambs if jamb else board.dowels).append(passage)
        take_paragraphs(sheet, board.page)
    shift = board_words(sheet, side)
    board_labels(sheet, [passage for board in boards for passage in reversed(board.dowels)],
                 [(dowel.centre + shift, phrases.BOARD_NUMBER.replace('{number#}', name.rsplit(' ', 1)[1]))
                  for name, dowel in mine.items()], 'dowels on the board')
    board_labels(sheet, [passage for board in boards for passage in reversed(board.jambs)],
                 [(place + shift, phrases.STRIP_JAMB.replace('{opening~}', name)) for place, name in jambs], 'jambs')
    for board in boards:
        if board.bottom is not None:
            board_zero(sheet, board, [dowel.centre for dowel in mine.values()], [place for place, _ in jambs], shift)
            board_drawn(sheet, board, side, mine)


def board_labels(sheet, labels, expected, what):
    """Labels from the start on: each the next place, with its own word."""
    sheet.same(len(labels), len(expected), what)
    for passage, (place, word) in zip(labels, expected):
        check_label(sheet, passage, place, word)
        words = passage.texts[-1].text if not passage.texts[-1].lengths() else ''
        sheet.same(words, word, what, passage)


def board_zero(sheet, board, dowels_on, jambs, shift):
    """Every leader starts where its own number stands on the side's line: all give one zero on paper."""
    zeros, places = [], dowels_on + jambs
    feet = board_feet(sheet, board)
    if sheet.same(len(feet), len(board.labels), 'leaders'):
        for foot, passage in zip(feet, board.labels):
            value = passage.lengths[0].value - shift if passage.lengths else None
            near = min(places, key=lambda place: abs(place - value), default=None) if value is not None else None
            if near is not None:
                zeros.append((foot + points(near, board.scale), passage))
    zeros.sort(key=lambda zero: zero[0])
    if zeros:
        board.zero = zeros[len(zeros) // 2][0]
    for zero, passage in zeros:
        if abs(zero - board.zero) > 2 * SLACK:
            sheet.wrong('foot of a leader', passage.text, f'{zero - board.zero:.2f} pt away', passage)


def board_feet(sheet, board):
    feet = []
    for line in sheet.shapes(board.page).lines:
        first = line.points[0]
        plumb = len(line.points) == 4 and abs(line.points[1][0] - first[0]) < 0.01 and line.points[1][1] < first[1]
        if plumb and abs(first[1] - board.top) < SLACK:
            feet.append(first[0])
    return feet


def board_drawn(sheet, board, side, mine):
    """Dots stand where the scale puts the dowels, in from the face line."""
    if board.zero is None:
        return
    found = sheet.shapes(board.page).dots
    shown = [dowel for dowel in mine.values() if board.left - SLACK < board.place(dowel.centre) < board.right + SLACK]
    sheet.same(len(found), len(shown), 'dots on the board')
    for dowel in shown:
        x, y = board.place(dowel.centre), board.bottom - points(dowel.depth, board.scale)
        if not any(abs(dot[0] - x) < SLACK and abs(dot[1] - y) < SLACK for dot in found):
            sheet.wrong('dot of a dowel', 'not drawn', f'{sheet.book.text(dowel.centre)} along {side.name}')


def board_start(world, side):
    """How far before zero a side's form board begins: as far as the footing reaches beyond an outside corner; at a
    re-entrant one it meets the other form so far short of it; an inside wall's lies inside the footing that it starts
    from."""
    corner = world.corners.get(side.start)
    if not side.interior and corner and 'arriving' in corner and 'leaving' in corner:
        out = footing(world)
        return out if out is None or corner['convex'] else -out
    if side.interior and side.start in world.sides and not world.sides[side.start].interior:
        inside = footing(world, 'footing_inside')
        return None if inside is None else -inside
    return None


def board_words(sheet, side):
    """What the numbers are measured from, and how far from the board's end and the form that is."""
    world, shift = sheet.world, 0
    notes = [passage for passage in sheet.passages if says_reference(passage.text)]
    sheet.same(len(notes), len(sheet.pages), 'every part says what its numbers are measured from')
    for passage in notes:
        shift = shift_of(sheet, side, reference_in(passage.text), passage)
    before, form_out = board_start(world, side), None if side.interior else footing(world)
    for passage in sheet.passages:
        out = phrases.part(phrases.BOARD_FORM, passage.text)
        if out:
            sheet.length(passage, out, 'form', form_out, f'{side.name}: form from the face')
        for template, field, exact in ((phrases.BOARD_BEFORE, 'before', before), (phrases.BOARD_AFTER, 'after',
                                                                                  before)):
            found = phrases.part(template, passage.text)
            if found:
                right = exact is not None and (exact > 0) == (field == 'before')
                for name in (field, 'again'):
                    sheet.length(passage, found, name, abs(exact) if right else None,
                                 f'{side.name}: where the board begins')
    text = ' '.join(passage.text for passage in sheet.passages)
    if form_out:
        sheet.same(phrases.part(phrases.BOARD_FORM, text) is not None, True, f'{side.name}: the form is told')
    if before is None:
        sheet.same(phrases.BOARD_UNKNOWN in text, True, f'{side.name}: the board is not known')
    elif before != 0:
        told = phrases.part(phrases.BOARD_BEFORE if before > 0 else phrases.BOARD_AFTER, text)
        sheet.same(told is not None, True, f'{side.name}: where the board begins is told')
    return shift
