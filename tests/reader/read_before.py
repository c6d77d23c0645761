"""The dowel list, form boards and templates in their words before the faces were named."""
import phrases
from lengths import INCH, agrees
from places import reference_in, shift_of
from read_pour import SLACK, check_label, heavy_line, label_pairs, points, scale_of
from sheets import read_table, take_paragraphs
from world import nm

# ---- dowel list ------------------------------------------------------------------------------------------------------

def dowels(sheet):
    world, expected = sheet.world, sheet.world.dowels()
    seen, shift = [], 0
    for page in sheet.pages:
        for row in read_table(sheet, page, phrases.OLD_DOWELS, has_boxes=True):
            if row.heading:
                name = row.text(0).split(':')[0]
                side = world.sides.get(name)
                if side is None:
                    sheet.wrong('heading', row.text(0), list(world.sides), row.cells[0])
                    continue
                shift = shift_of(sheet, side, reference_in(row.text(0)), row.cells[0])
                continue
            if row.text(0) not in expected:
                sheet.wrong('dowel', row.text(0), 'a bar that starts at the footing', row.cells[0])
                continue
            seen.append(row.text(0))
            dowel_row(sheet, row, expected[row.text(0)].side, expected[row.text(0)].centre, shift)
        take_paragraphs(sheet, page)
    sheet.same(seen, list(expected), 'dowels listed')


def own_cell(world, side, course, centre):
    cell = world.over(side, course, centre, world.sides[side].thick // 2)
    return (cell[1], cell[2], cell[3]) if cell and cell[0] == side else None


def dowel_row(sheet, row, side, centre, shift):
    world, name = sheet.world, row.text(0)
    match = phrases.whole(phrases.DOWEL_AT, row.text(1))
    if match is None:
        return sheet.wrong(f'{name}: centre', row.text(1), sheet.book.text(centre), row.cells[0])
    sheet.length(row.cells[1], match, 'at', centre + shift, f'{name}: centre')
    off = phrases.whole(phrases.DOWEL_OFF, row.text(2))
    if off:
        sheet.length(row.cells[2], off, 'off', world.sides[side].thick // 2, f'{name}: in from its face')
    else:
        sheet.wrong(f'{name}: in from its face', row.text(2), 'a length', row.cells[2])
    for course, column in ((1, 3), (2, 4)):
        if course not in world.courses:
            continue
        cell = own_cell(world, side, course, centre)
        found = phrases.whole(phrases.OLD_CELL, row.text(column))
        got = (int(found['unit']), int(found['cell'])) if found else row.text(column)
        sheet.same(got, cell[:2] if cell else phrases.OLD_OTHER, f'{name}: cell in course {course}',
                   row.cells[column])


# ---- form board ------------------------------------------------------------------------------------------------------

def form(sheet):
    world, side = sheet.world, sheet.world.sides.get(sheet.fields['side'])
    page = sheet.pages[0]
    if side is None:
        return sheet.wrong('side', sheet.fields['side'], list(world.sides))
    mine = {name: dowel.centre for name, dowel in world.dowels().items() if dowel.side == side.name}
    turned = [text for text in sheet.texts(page) if text.turned]
    labels = label_pairs(sheet, page, turned)
    form_openings(sheet, page, side)
    numbers = [text for text in sheet.texts(page) if text.text.isdigit()]
    for text in numbers:
        sheet.take([text])
    take_paragraphs(sheet, page)
    notes = next((one for one in sheet.passages if reference_in(one.text)), None)
    shift = shift_of(sheet, side, reference_in(notes.text) if notes else None, notes)
    centres = sorted(mine.values(), reverse=True)
    sheet.same(len(labels), len(centres), f'{side.name}: dowels on the board')
    for passage, centre in zip(labels, centres):
        check_label(sheet, passage, centre + shift, f'{side.name}: dowel on the board')
    form_dots(sheet, page, side, mine, numbers)


def form_openings(sheet, page, side):
    world = sheet.world
    mine = {row['name']: row for row in world.answer['openings'] if row['side'] == side.name}
    texts, seen = sheet.texts(page), set()
    for at, text in enumerate(texts):
        row = mine.get(text.text)
        if row is None or [len(one.lengths()) for one in texts[at + 1:at + 3]] != [1, 1]:
            continue
        seen.add(text.text)
        for edge, one in (('from', texts[at + 1]), ('to', texts[at + 2])):
            check_label(sheet, sheet.take([one]), nm(row[edge]), f'{text.text}: jamb under the board')
    sheet.same(sorted(seen), sorted(mine), f'{side.name}: openings under the board')


def form_dots(sheet, page, side, mine, numbers):
    """Dots and their numbers stand where the scale puts the dowels: along from the right end, in from the face."""
    scale, face = scale_of(page), heavy_line(sheet, page)
    if scale is None or face is None:
        return sheet.wrong('form board', 'no scale or no outer face', 'both')
    right, level = max(point[0] for point in face.points), face.points[0][1]
    found = sorted(sheet.shapes(page).dots, reverse=True)
    expected = sorted(((right - points(centre, scale), level - points(side.thick // 2, scale), name.rsplit(' ', 1)[1])
                       for name, centre in mine.items()), reverse=True)
    if len(found) != len(expected):
        return sheet.wrong('dots on the board', len(found), len(expected))
    for (x, y, _), (want_x, want_y, number) in zip(found, expected):
        if abs(x - want_x) > SLACK or abs(y - want_y) > SLACK:
            sheet.wrong(f'dot of dowel {number}', f'{x:.2f}, {y:.2f} pt', f'{want_x:.2f}, {want_y:.2f} pt')
        under = [text.text for text in numbers if abs(text.x - x) < 1.5 and text.top > level]
        sheet.same(under, [number], f'number under the dot of dowel {number}')


# ---- dowel templates -------------------------------------------------------------------------------------------------

def template(sheet):
    seen = []
    for page in sheet.pages:
        seen += template_page(sheet, page)
    sheet.same(sorted(seen), sorted(sheet.world.dowels()), 'dowels that have a template')


def template_page(sheet, page):
    world, expected = sheet.world, sheet.world.dowels()
    names, entries, entry = [], [], None
    for text in sheet.texts(page):
        name = text.text.split(':')[0]
        if text.turned:
            continue
        if name in expected and ':' in text.text:
            entry = [text]
            entries.append((name, entry))
        elif entry is not None and abs(text.left - entry[0].left) < 1 and 0 < text.top - entry[-1].top < 16:
            entry.append(text)
        elif entry is not None:
            entry = None
    for name, texts in entries:
        passage = sheet.take(texts)
        names.append(name)
        template_place(sheet, passage, name)
    listed = next((text for text in sheet.texts(page) if phrases.part(r'{list~}:', text.text) and not text.turned
                   and text.text.split(' ')[0] in world.sides), None)
    take_paragraphs(sheet, page)
    for passage in sheet.passages:
        if passage.page is page:
            found = phrases.whole(phrases.TEMPLATE_LIST, passage.text)
            if found and found['list'].split(' ')[0] in {name.split(' ')[0] for name in expected}:
                names += listed_names(found['list'])
    unknown = [name for name in names if name not in expected]
    if unknown or not names:
        sheet.wrong('dowels of a template', unknown, 'dowels of the list')
        return names
    template_drawing(sheet, page, names)
    return names


def template_place(sheet, passage, name):
    world = sheet.world
    side, centre = world.sides[world.dowels()[name].side], world.dowels()[name].centre
    match = phrases.whole(phrases.OLD_PLACE, passage.text)
    if match is None:
        return sheet.wrong(f'{name}: place of its template', passage.text, phrases.OLD_PLACE, passage)
    named = match['corner']
    reference = ('face', None, named) if named in world.sides else ('corner', named, None)
    sheet.length(passage, match, 'at', centre + shift_of(sheet, side, reference, passage),
                 f'{name}: place of its template')


def listed_names(text):
    """"AB 1-3, 5; CD 2" as names of dowels."""
    names = []
    for part in text.split('; '):
        side, numbers = part.rsplit(' ', 1) if ',' not in part else part.split(' ', 1)
        while ', ' in side:  # a side's name has no comma
            side, more = side.split(' ', 1)
            numbers = f'{more} {numbers}'
        for one in numbers.split(', '):
            low, _, high = one.partition('-')
            names += [f'{side} {number}' for number in range(int(low), int(high or low) + 1)]
    return names


def template_drawing(sheet, page, names):
    """Full size: the dot is as deep behind the edge, and as far from the webs, as every dowel named."""
    world = sheet.world
    face = heavy_line(sheet, page)
    dots = sheet.shapes(page).dots
    if face is None or len(dots) != 1:
        return sheet.wrong('template', f'{len(dots)} dots', 'one, and an edge')
    x, y, _ = dots[0]
    edge_in = template_edge(sheet, page)
    side = world.dowels()[names[0]].side
    depth = world.sides[side].thick // 2
    if abs((face.points[0][1] - y) - points(depth - edge_in)) > SLACK:
        sheet.wrong(f'{names[0]}: depth drawn', f'{face.points[0][1] - y:.2f} pt', f'{points(depth - edge_in):.2f} pt')
    for passage in [one for one in sheet.passages if one.page is page and not one.claimed and phrases.whole('{at}',
                                                                                                            one.text)]:
        check_label(sheet, passage, depth - edge_in, f'{names[0]}: depth')
    boxes = [box for box in sheet.shapes(page).boxes if box.stroked and box.left < x < box.right
             and box.top < y < box.bottom]
    for name in names:
        side, centre = world.dowels()[name].side, world.dowels()[name].centre
        for course in (1, 2):
            cell = own_cell(world, side, course, centre) if course in world.courses else None
            drawn = [box for box in boxes if box.dashed == (course == 2)]
            if cell is None:
                sheet.same(len(drawn), 0, f'{name}: cells of course {course} drawn')
                continue
            left, right = x - points(cell[2][1] - centre), x + points(centre - cell[2][0])
            if not any(abs(box.left - left) < SLACK and abs(box.right - right) < SLACK for box in drawn):
                sheet.wrong(f'{name}: webs of course {course}', [f'{box.left - x:.2f}..{box.right - x:.2f} pt'
                                                                 for box in drawn],
                            f'{left - x:.2f}..{right - x:.2f} pt')


def template_edge(sheet, page):
    """How far in from the outer face the template's edge line is."""
    for passage in [one for one in sheet.passages if one.page is page]:
        found = phrases.whole(phrases.OLD_LINE, passage.text)
        if found:
            passage.claimed.update(one.start for one in passage.lengths)
            return sheet.value(passage, found, 'in')
    return 0


