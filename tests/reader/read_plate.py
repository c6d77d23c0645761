"""The top of each side from above: bolts, pieces of plate and trusses at their places; and the top as read."""
import re

import phrases
from lengths import agrees
from places import reference_in, says_reference, shift_of
from read_pour import check_label, label_pairs, points, scale_of
from sheets import read_table, take_paragraphs
from world import nm

BOLT = 1300 / 352.7778  # points: half of a bolt's circle on paper


def plate(sheet):
    """Each bolt of a side has one label and one circle, at its place; each piece its length; trusses as the job has
    them."""
    world, side = sheet.world, sheet.world.sides.get(sheet.fields['side'])
    if side is None:
        return sheet.wrong('side', sheet.fields['side'], list(world.sides))
    pieces = [one for one in world.answer['plates'] if one['side'] == side.name]
    labels, lengths, circles = [], [], 0
    for page in sheet.pages:
        labels += label_pairs(sheet, page, [text for text in sheet.texts(page) if text.turned])
        lengths += [sheet.take([text]) for text in sheet.texts(page)
                    if not text.turned and phrases.whole('{at}', text.text)]
        circles += check_circles(sheet, page, pieces)
        take_paragraphs(sheet, page)
    notes = [passage for passage in sheet.passages if says_reference(passage.text)]
    sheet.same(len(notes), len(sheet.pages), 'every part says what its marks are measured from')
    shift = shift_of(sheet, side, reference_in(notes[0].text), notes[0]) if notes else 0
    bolts = sorted(nm(bolt['at']) for piece in pieces for bolt in piece['bolts'])
    ends = sorted({nm(piece[end]) for piece in pieces for end in ('from', 'to') if nm(piece[end]) > 0} - set(bolts))
    for what, wanted, found in (('bolt', bolts, [one for one in labels if one.texts[-1].lengths()]),
                                ('end of a plate', ends, [one for one in labels if not one.texts[-1].lengths()])):
        sheet.same(len(found), len(wanted), f'{what}: labels')
        for passage, at in zip(sorted(found, key=lambda one: one.lengths[0].value), wanted):
            check_label(sheet, passage, at + shift, what)
            if what != 'bolt':
                sheet.same(passage.texts[-1].text, phrases.PLATE_ENDS, what, passage)
    sheet.same(circles, len(bolts), 'circles of bolts')
    check_lengths(sheet, lengths, pieces)
    check_trusses(sheet, side, shift)


def check_circles(sheet, page, pieces):
    """Circles of bolts stand as far from each other as the bolts; the first of a part is taken as it stands."""
    scale = scale_of(page)
    drawn = sorted((x for x, _, radius in sheet.shapes(page).dots if abs(radius - BOLT) < 0.1), reverse=True)
    bolts = sorted(nm(bolt['at']) for piece in pieces for bolt in piece['bolts'])
    alike = [at for at in range(len(bolts) - len(drawn) + 1) if drawn and all(
        abs((drawn[0] - x) - points(bolt - bolts[at], scale)) < 0.1
        for x, bolt in zip(drawn, bolts[at:at + len(drawn)]))]
    if drawn:
        sheet.same(len(alike) > 0, True, 'circles stand where the bolts do')
    return len(drawn)


def check_lengths(sheet, lengths, pieces):
    wanted = sorted(nm(piece['to']) - nm(piece['from']) for piece in pieces)
    found = sorted(lengths, key=lambda one: one.lengths[0].value)
    sheet.same(len(found), len(wanted), 'lengths of pieces of plate')
    for passage, length in zip(found, wanted):
        check_label(sheet, passage, length, 'length of a piece of plate')


def check_trusses(sheet, side, shift):
    world = sheet.world
    asked = [row for row in world.job.get('top', {}).get('trusses', []) if row['on'] == side.name]
    told = [(passage, found) for passage in sheet.passages
            for found in re.finditer(phrases.PLATE_TRUSSES, passage.text)]
    sheet.same(len(told), len(asked) * len(sheet.pages), 'rows of trusses')
    for (passage, found), row in zip(told, asked * len(sheet.pages)):
        sheet.claim_all(passage)
        off = world.length(row['place']['at'].removesuffix(' actual'))
        from_start = row['place']['from'] == side.start
        first = off if from_start else side.actual - off
        sheet.same(found['toward'], side.end if from_start else side.start, 'trusses go on toward', passage)
        for field, exact in (('first', first + shift), ('step', world.length(row['spacing']))):
            values = [one.value for one in passage.lengths if found.start(field) <= one.start < found.end(field)]
            sheet.same(bool(values) and all(agrees(value, exact, world.step) for value in values), True,
                       f'trusses: {field} {found[field]}', passage)


# ---- the top as read -------------------------------------------------------------------------------------------------

def top_read_rows(sheet, page):
    return read_table(sheet, page, phrases.HEADS['top-read'], has_boxes=True)


def rods(world):
    """Heights over the datum of what one set-up read: rod on the datum less rod there."""
    rows = [row['rod'] for row in world.job.get('readings', []) if 'rod' in row]
    datum = next((row for row in rows if row['station'] == 'datum'), None)
    if datum is None or len({row['setup'] for row in rows}) != 1:
        return None
    return {row['station']: world.length(datum['rod']) - world.length(row['rod']) for row in rows}


def check_top_read(sheet, rows):
    """Each point: off by the rods themselves, worked up to the line that bears, judged as the answer has it."""
    world = sheet.world
    levels = world.answer['ground']['levels']
    top, heights, first = levels['top'], rods(world), world.courses[1]
    last = world.courses[max(world.courses)]
    design = nm(levels['bed']['top']) + nm(first['unit_height']) + nm(last['top'])
    left = list(top['points'])
    for row in rows:
        bears = phrases.whole(phrases.TOP_BEARS, row.text(0)) if row.heading else None
        if row.heading:
            sheet.same(bool(bears), True, f'what bears: {row.text(0)}', row.cells[0])
            if bears:
                sheet.length(row.cells[0], bears, 'bearing', abs(nm(top['bearing'])), 'the line that bears')
                sheet.length(row.cells[0], bears, 'doubt', nm(top['doubt']), 'doubt of the readings')
            continue
        if not row.text(0):
            continue
        point = left.pop(0) if left else None
        if point is None:
            return sheet.wrong('point of the top', row.text(1), 'one of the answer', row.cells[1])
        check_point(sheet, row, point, heights, design, nm(top['bearing']))
    sheet.same([one['station'] for one in left], [], 'points of the top left out')


def check_point(sheet, row, point, heights, design, bearing):
    name, world = point['station'], sheet.world
    sheet.same(row.text(0), point['side'], f'{name}: side', row.cells[0])
    found = phrases.whole(phrases.TOP_POINT, row.text(1))
    sheet.same(found and found['name'], name, 'point of the top', row.cells[1])
    if found:
        sheet.length(row.cells[1], found, 'at', nm(point['at']), f'{name}: its place')
    off = heights[name] - design if heights else nm(point['off'])
    said = phrases.whole(phrases.TOP_OFF, row.text(2))
    if said is None:
        return sheet.wrong(f'{name}: off', row.text(2), phrases.TOP_OFF, row.cells[2])
    sheet.length(row.cells[2], said, 'off', abs(off), f'{name}: off its design height')
    if abs(off) > world.step:
        sheet.same(row.text(2).endswith(' over'), off > 0, f'{name}: over or under', row.cells[2])
    for words, work in phrases.TOP_WORKS.items():
        done = phrases.whole(words, row.text(3))
        if done:
            sheet.same(work, point['work'], f'{name}: work', row.cells[3])
            sheet.length(row.cells[3], done, 'by', abs(off - bearing), f'{name}: up or down to what bears')
            break
    else:
        sheet.wrong(f'{name}: work', row.text(3), list(phrases.TOP_WORKS), row.cells[3])
    sheet.same(phrases.TOP_VERDICTS.get(row.text(4)), point['verdict'], f'{name}: by rule', row.cells[4])
