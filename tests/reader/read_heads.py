"""Heads off a course line: each choice with what it takes, worked out again from the pieces."""
import math

import phrases
from sheets import read_table
from world import nm


def head_rows(sheet, page):
    return read_table(sheet, page, phrases.HEADS['heads'], has_boxes=True)


def off_course(world):
    """Openings whose packing over the frame is more than a joint; of a bare hole any."""
    return [one for one in world.openings.values()
            if nm(one['packing_head']) > (0 if one['use'] == 'plain' else world.joint)]


def check_heads(sheet, rows):
    world, opening, ways = sheet.world, None, []
    seen = []
    for row in rows:
        found = phrases.whole(phrases.HEAD_ASKED, row.text(0)) if row.heading else None
        if found:
            opening, ways = world.openings.get(found['opening']), []
            seen.append((found['opening'], ways))
            if opening is None:
                return sheet.wrong('opening', found['opening'], list(world.openings), row.cells[0])
            sheet.length(row.cells[0], found, 'under', nm(opening['packing_head']), 'head under its line')
            sheet.length(row.cells[0], found, 'asked', nm(opening['soffit']) - nm(opening['underside'])
                         - nm(opening['packing_head']), 'height asked')
            sheet.same(int(found['course']), opening['last_course'], 'course of the line', row.cells[0])
        elif opening is not None and row.cells[0] is not None:
            check_choice(sheet, row, opening, ways)
    sheet.same([name for name, _ in seen], [one['name'] for one in off_course(world)], 'openings off a course line')
    for name, told in seen:
        one = world.openings[name]
        on_floor = one['first_course'] <= 1 and one['use'] != 'window'
        wanted = ['pack', 'raise'] + ([] if on_floor else ['sill'])
        wanted += ['lower'] if one['last_course'] > one['first_course'] else []
        wanted += ['cut'] if any(lintel['opening'] == name for lintel in world.answer['lintels']) else []
        sheet.same(told, wanted, f'{name}: choices')


def check_choice(sheet, row, opening, ways):
    world = sheet.world
    for words, way in phrases.HEAD_WAYS.items():
        found = phrases.whole(words, row.text(0))
        if found:
            break
    else:
        return sheet.wrong('a choice of a head', row.text(0), list(phrases.HEAD_WAYS), row.cells[0])
    ways.append(way)
    packing = nm(opening['packing_head'])
    by, units, cuts = packing, 0, 0
    side = world.sides[opening['side']]
    if way == 'lower':
        below = nm(world.courses[opening['last_course'] - 1]['top']) + world.joint
        by = nm(opening['soffit']) - packing - below
        half = nm(side.series['half']) + world.joint
        wide = nm(opening['to']) - nm(opening['from']) - world.joint
        units, cuts = math.ceil(math.ceil(wide / half) / 2), 0 if wide % half == 0 else 1
    if way == 'cut':
        laid = next(one for one in world.answer['lintels'] if one['opening'] == opening['name'])
        low, high = nm(opening['from']), nm(opening['to'])
        ends = [(low - nm(laid['start_bearing']), low), (high, high + nm(laid['end_bearing']))]
        lintel = opening['lintel']
        under = sum(one.start < to and one.end > start for start, to in ends
                    for one in world.pieces.get((side.name, lintel['first_course'] - 1), []))
        units = sum(one.start < ends[1][1] and one.end > ends[0][0]
                    for one in world.pieces.get((side.name, lintel['first_course'] + lintel['courses']), []))
        cuts = units + under
    for field in ('by', 'high'):
        if field in found.groupdict():
            sheet.length(row.cells[0], found, field, by, f'{opening["name"]}: {way}')
    sheet.same(row.text(1), str(units), f'{opening["name"]}, {way}: blocks more', row.cells[1])
    sheet.same(row.text(2), str(cuts), f'{opening["name"]}, {way}: cuts more', row.cells[2])
