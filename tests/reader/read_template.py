"""Dowel templates and corners: full size, or one to ten, every web and dot where the units' own geometry puts it."""
import re

import phrases
from places import hook_in, shift_of
from read_pour import SLACK, board_start, check_label, footing, heavy_line, points, scale_of
from sheets import take_paragraphs
from world import nm

FULL = 1  # scale


# ---- dowel templates -------------------------------------------------------------------------------------------------

def template(sheet):
    seen = []
    for page in sheet.pages:
        seen += template_page(sheet, page)
    sheet.same(sorted(seen), sorted(sheet.world.dowels()), 'dowels that have a template')


def template_page(sheet, page):
    expected = sheet.world.dowels()
    names = template_places(sheet, page)
    take_paragraphs(sheet, page)
    for passage in sheet.passages:
        if passage.page is page:
            found = phrases.whole(phrases.TEMPLATE_LIST, passage.text)
            if found:
                names += listed_names(found['list'])
    unknown = [name for name in names if name not in expected]
    if unknown or not names:
        sheet.wrong('dowels of a template', unknown, 'dowels of the list')
        return names
    template_drawing(sheet, page, names)
    template_words(sheet, page, names)
    return names


def template_places(sheet, page):
    """"AB, from outer corner A:" and under it "AB 1: 43 13/16""."""
    world, expected, names, shift = sheet.world, sheet.world.dowels(), [], 0
    heading, parts = None, []
    for text in sheet.texts(page):
        if text.turned:
            continue
        if any(text.text.startswith(f'{side}, from ') for side in world.sides):
            heading = [text]
        elif heading is not None:
            heading.append(text)
        place = phrases.whole(phrases.TEMPLATE_PLACE, text.text)
        if heading is not None and heading[-1].text.endswith(':'):
            passage = sheet.take(heading)
            heading = None
            found = phrases.whole(phrases.TEMPLATE_FROM, passage.text)
            side = world.sides.get(found['side']) if found else None
            if side is None:
                sheet.wrong('template: measured from', passage.text, phrases.TEMPLATE_FROM, passage)
            else:
                shift = shift_of(sheet, side, hook_in(found['hook']), passage)
        elif place and place['dowel'] in expected:
            passage = sheet.take([text])
            names.append(place['dowel'])
            sheet.length(passage, place, 'at', expected[place['dowel']].centre + shift,
                         f'{place["dowel"]}: its template')
    return names


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
    world, face = sheet.world, heavy_line(sheet, page)
    dots = sheet.shapes(page).dots
    if face is None or len(dots) != 1:
        return sheet.wrong('template', f'{len(dots)} dots', 'one, and an edge')
    x, y, _ = dots[0]
    edge, edge_in = face.points[0][1], template_edge(sheet, page)
    boxes = [box for box in sheet.shapes(page).boxes if box.stroked and box.left < x < box.right
             and box.top < y < box.bottom]
    for name in names:
        dowel = world.dowels()[name]
        if abs((edge - y) - points(dowel.depth - edge_in)) > SLACK:
            sheet.wrong(f'{name}: depth drawn', f'{edge - y:.2f} pt', f'{points(dowel.depth - edge_in):.2f} pt')
        for course in (1, 2) if world.poured_row(name) is None else ():
            cell = world.over(dowel.side, course, dowel.centre, dowel.depth) if course in world.courses else None
            drawn = [box for box in boxes if box.dashed == (course == 2)]
            if cell is None:
                sheet.same(len(drawn), 0, f'{name}: cells of course {course} drawn')
                continue
            low, high, shallow, deep = cell[3]
            left, right = x - points(high - dowel.centre), x + points(dowel.centre - low)
            bottom = edge - points(max(0, shallow - edge_in))
            top = edge - points(deep - edge_in)
            ends = [place[0] for place in face.points]
            if left < min(ends) - SLACK or right > max(ends) + SLACK:
                webs_within(sheet, page, (left, right), ends, f'{name}: webs of course {course}', course)
                continue
            if not any(abs(box.left - left) < SLACK and abs(box.right - right) < SLACK
                       and abs(box.bottom - bottom) < SLACK
                       and (abs(box.top - top) < SLACK or top < box.top) for box in drawn):
                sheet.wrong(f'{name}: webs of course {course}',
                            [f'{box.left - x:.2f}..{box.right - x:.2f} pt'
                             for box in drawn], f'{left - x:.2f}..{right - x:.2f} pt')


def webs_within(sheet, page, webs, ends, what, course):
    """A cell that reaches beyond the template: the web within it is a line of its own, and none stands at the end."""
    upright = [line.points[0][0] for line in sheet.shapes(page).lines if line.dashed == (course == 2)
               and len(line.points) == 2 and abs(line.points[0][0] - line.points[1][0]) < SLACK]
    for web in webs:
        if min(ends) < web < max(ends) and not any(abs(x - web) < SLACK for x in upright):
            sheet.wrong(what, [f'{x:.2f} pt' for x in upright], f'{web:.2f} pt')


def template_edge(sheet, page):
    """How far in from the outer face line the template's edge is."""
    for passage in [one for one in sheet.passages if one.page is page]:
        found = phrases.whole(phrases.TEMPLATE_PARALLEL, passage.text)
        if found:
            passage.claimed.update(one.start for one in passage.lengths)
            return sheet.value(passage, found, 'in')
    return 0


def template_words(sheet, page, names):
    """The edge's own name, the dowel's depth from it and from the form, and where the board begins."""
    world = sheet.world
    dowels = [world.dowels()[name] for name in names]
    inside, form = world.sides[dowels[0].side].interior, footing(world)
    text = ' '.join(passage.text for passage in sheet.passages if passage.page is page)
    for passage in [one for one in sheet.passages if one.page is page]:
        depth = phrases.part(phrases.TEMPLATE_DEPTH, passage.text)
        from_form = phrases.part(phrases.TEMPLATE_FORM_DEPTH, passage.text)
        out = phrases.part(phrases.TEMPLATE_FORM_AT, passage.text)
        if depth:
            sheet.length(passage, depth, 'at', dowels[0].depth, 'depth from the face line')
        drawn = phrases.part(phrases.TEMPLATE_DRAWN_DEPTH, passage.text)
        if drawn:
            edge = template_edge(sheet, page)
            sheet.length(passage, drawn, 'at', dowels[0].depth - edge if edge else None, 'depth from the line drawn')
        if from_form:
            sheet.length(passage, from_form, 'at', None if inside or not form else dowels[0].depth + form,
                         'depth from the form')
        if out:
            sheet.length(passage, out, 'form', None if inside else form, 'form from the face line')
        for board in phrases.parts(phrases.TEMPLATE_BOARD, passage.text):
            side = world.sides.get(board['side'])
            before = board_start(world, side) if side else None
            for field in ('before', 'again'):
                sheet.length(passage, board, field, before if before and before > 0 else None, 'where the board begins')
    if template_edge(sheet, page):
        return
    line = phrases.TEMPLATE_LINE_INSIDE if inside else phrases.TEMPLATE_LINE
    sheet.same(line in text, True, f'{names[0]}: the name of its edge')
    if not inside:
        told = {None: phrases.TEMPLATE_FORM_UNKNOWN, 0: phrases.TEMPLATE_IS_FORM}.get(form)
        sheet.same(told in text if told else phrases.part(phrases.TEMPLATE_FORM_AT, text) is not None, True,
                   f'{names[0]}: where the form stands')


# ---- corners ---------------------------------------------------------------------------------------------------------

def corners(sheet):
    world, seen = sheet.world, []
    for page in sheet.pages:
        titles = []
        for text in page.texts:
            found = phrases.whole(phrases.CORNER_TITLE, text.text)
            if found and found['corner'] in world.corners:
                titles.append((text, found['corner'], int(found['course'])))
        for text, corner, course in titles:
            seen.append((corner, course))
            foot = min((other.top - 12 for other, _, _ in titles if other.top > text.top + 20), default=text.top + 200)
            corner_drawing(sheet, page, corner, course, text, foot)
        take_paragraphs(sheet, page)
        for text, corner, course in titles:
            under = [passage for passage in sheet.passages if passage.page is page and abs(passage.left - text.left) < 1
                     and passage.top >= text.top and not any(text.top < other.top <= passage.top
                                                             and other.left == text.left
                                                             for other, _, _ in titles)]
            corner_words(sheet, page, corner, course, under)
    both = min(2, len(world.courses))
    sheet.same(sorted(seen), sorted((corner, course) for corner in {one for one, _ in seen}
                                    for course in range(1, both + 1)), 'each corner in each course')


def corner_bar(world, corner):
    return next((bar for bar in world.answer['bars'] if bar.get('corner') == corner and bar['reason'] == 'corner'),
                None)


def corner_words(sheet, page, corner, course, words):
    world, row = sheet.world, sheet.world.corners[corner]
    bar, through, told_bar = corner_bar(world, corner), through_side(world, corner, course), False
    for passage in words:
        runs = phrases.part(phrases.CORNER_RUNS, passage.text)
        told = phrases.part(phrases.CORNER_BAR, passage.text)
        cell = phrases.part(phrases.CORNER_CELL, passage.text)
        unit = re.search(phrases.CORNER_UNIT, passage.text)
        if runs:
            sheet.same(runs['side'], through, f'{corner}, course {course}: runs through', passage)
        if told:
            told_bar = True
            corner_distances(sheet, passage, told, corner, row, bar)
        if cell:
            over = bar and world.over(bar['side'], course, nm(bar['centre']), world.depth_of(bar))
            sheet.same((cell['side'], int(cell['unit']), int(cell['cell'])), over and over[:3],
                       f'{corner}, course {course}: cell', passage)
        if unit and unit['piece'] in world.by_name:
            corner_unit(sheet, passage, unit, corner, course, through)
    if bar and bar['first_course'] <= course <= bar['last_course']:
        sheet.same(told_bar, True, f'{corner}: its bar is told')


def through_side(world, corner, course):
    """The side that runs through a corner in a course, by its own run's end."""
    row = world.corners[corner]
    for side, end, at in ((row['arriving'], 'at_end', -1), (row['leaving'], 'at_start', 0)):
        runs = world.runs[side, course]
        if runs and runs[at][end] == 'through-corner':
            return side
    return None


def corner_distances(sheet, passage, told, corner, row, bar):
    """The bar from the outer face of each of the corner's two sides, in plan."""
    world = sheet.world
    if bar is None:
        return sheet.wrong(f'{corner}: bar', passage.text, 'no bar there', passage)
    point = world.sides[bar['side']].point(nm(bar['centre']), world.depth_of(bar))
    for field, name in (('a', told['first']), ('b', told['second'])):
        side = world.sides.get(name)
        if side is None or name not in (row['arriving'], row['leaving']):
            sheet.wrong(f'{corner}: face', name, (row['arriving'], row['leaving']), passage)
            continue
        sheet.length(passage, told, field, side.seen(point)[1], f'{corner}: bar from the outer face of {name}')


def corner_unit(sheet, passage, unit, corner, course, through):
    """The unit that turns the corner: the last or first of the side that runs through, and what it is made of."""
    world, piece = sheet.world, sheet.world.by_name[unit['piece']]
    pieces = world.pieces[piece.side, course]
    at_end = world.corners[corner]['arriving'] == piece.side
    sheet.same((piece.side, piece.course, piece.number),
               (through, course, (pieces[-1] if at_end else pieces[0]).number),
               f'{corner}, course {course}: unit that turns it', passage)
    if piece.kind == 'corner-set':
        parts = [one['part'] for one in world.answer['counts']['corner_set_parts']
                 if one['series'] == world.sides[piece.side].series['id']]
        sheet.same(set(unit['made'].split(' + ')) <= set(parts), True, f'{unit["piece"]}: made of', passage)
        sheet.tell(passage, unit.start('made'), unit.end('made'))
    else:
        sheet.same(phrases.KINDS.get(unit['made']), piece.kind, f'{unit["piece"]}: kind', passage)


def corner_drawing(sheet, page, corner, course, title, foot):
    """The dot stands in its cell as drawn: the cell's four edges are as far from it as the geometry says."""
    world, bar = sheet.world, corner_bar(sheet.world, corner)
    if bar is None or not bar['first_course'] <= course <= bar['last_course']:
        return
    side, centre, depth = world.sides[bar['side']], nm(bar['centre']), world.depth_of(bar)
    cell = world.over(side.name, course, centre, depth)
    dots = [dot for dot in sheet.shapes(page).dots
            if 0 < title.left - dot[0] < 230 and title.top - 4 < dot[1] < foot]
    if len(dots) != 1:
        return sheet.wrong(f'{corner}, course {course}: dot', len(dots), 1, title)
    x, y, _ = dots[0]
    if cell is None:
        return
    ends = [side.point(along, deep) for along, deep in ((cell[3][0], cell[3][2]), (cell[3][1], cell[3][3]))]
    here, scale = side.point(centre, depth), scale_of(page)
    xs = sorted(x + points(end[0] - here[0], scale) for end in ends)
    ys = sorted(y - points(end[1] - here[1], scale) for end in ends)
    if not any(abs(box.left - xs[0]) < SLACK and abs(box.right - xs[1]) < SLACK and abs(box.top - ys[0]) < SLACK
               and abs(box.bottom - ys[1]) < SLACK for box in sheet.shapes(page).boxes):
        sheet.wrong(f'{corner}, course {course}: cell of the bar', 'not drawn', cell[:3], title)
    check_dimensions(sheet, page, corner, here, title, foot)


def check_dimensions(sheet, page, corner, here, title, foot):
    """The two distances beside the figure."""
    world, row = sheet.world, sheet.world.corners[corner]
    exact = [world.sides[side].seen(here)[1] for side in (row['arriving'], row['leaving'])]
    parts = {one['part'] for one in world.answer['counts']['corner_set_parts']}
    for text in sheet.texts(page):
        if not 0 < title.left - text.x < 230 or not title.top - 4 < text.y < foot:
            continue
        if any(text.text in part for part in parts):
            sheet.tell(sheet.take([text]))
        elif phrases.whole('{at}', text.text):
            passage = sheet.take([text])
            value = passage.lengths[0].value
            check_label(sheet, passage, min(exact, key=lambda one: abs(one - value)), f'{corner}: distance')
