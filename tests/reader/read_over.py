"""What goes over openings, what is looked at before a pour, the plate's bolts, weather."""
import math
import re

import phrases
from places import reference_in, shift_of
from sheets import read_table, take_paragraphs
from world import nm

BOX = '☐ '


def under(sheet):
    """Lists that stand on a sheet, under others or alone: each is read where it is."""
    from read_bars import bar_rows, bars_read, bought_read, buy_rows, has_bars
    from read_lintels import check_bars, read_bars
    from read_heads import check_heads, head_rows
    from read_plate import check_top_read, top_read_rows
    from read_top import top_rows
    schedule, bought = {}, {}
    over, bars, looks, bolts_there, tops, heads = [], [], [], [], [], []
    for page in sheet.pages:
        buy_rows(sheet, page, bought)
        if has_bars(sheet, page):
            bar_rows(sheet, page, schedule)
        over += shore_rows(sheet, page)
        bars += read_bars(sheet, page)
        looks += inspection_rows(sheet, page)
        if any(text.text.startswith('Top from') for text in sheet.texts(page)):
            top_rows(sheet, page)
        bolts_there += bolt_rows(sheet, page)
        tops += top_read_rows(sheet, page)
        heads += head_rows(sheet, page)
        take_paragraphs(sheet, page)
    for rows, check in ((over, check_shores), (bars, check_bars), (looks, check_inspection), (bolts_there, check_bolts),
                        (tops, check_top_read), (heads, check_heads)):
        if rows:
            check(sheet, rows)
    if schedule:
        bars_read(sheet, schedule)
    if bought:
        bought_read(sheet, bought)
    check_bolt_notes(sheet)
    for passage in sheet.passages:
        sheet.book.published.check(sheet, passage)


def check_there(sheet):
    """Each list that the answer asks for stands somewhere in the set."""
    from read_bars import names_a_rule
    from read_lintels import cored, floors
    world, answer = sheet.world, sheet.world.answer
    bars = answer['bar_pieces']
    wanted = {'order': True, 'shores': world.openings, 'lintel-bars': floors(world) + cored(world), 'inspection': answer['inspection'],
              'bolts': answer['plates'], 'top': True, 'heads': answer['heads'],
              'top-read': ((answer.get('ground') or {}).get('levels') or {}).get('top'),
              'bars-to-buy': answer['bars_from_stock'],
              'bars': bars['marks'] or (bars['laps'] and not names_a_rule(world))}
    titles = {text.text.split(' (')[0] for page in sheet.book.pages for text in page.texts}
    for sort, asked in wanted.items():
        sheet.same(phrases.TITLES[sort] in titles, bool(asked), f'a list of the set: {phrases.TITLES[sort]}')


# ---- shores ----------------------------------------------------------------------------------------------------------

def shore_rows(sheet, page):
    return read_table(sheet, page, phrases.HEADS['shores'], has_boxes=True)


def check_shores(sheet, rows):
    world = sheet.world
    sheet.same([row.text(0) for row in rows], list(world.openings), 'openings with what goes over them')
    for row in rows:
        opening = world.openings.get(row.text(0))
        if opening is None:
            continue
        name, first = opening['name'], world.courses[1]
        bearing = nm(first['top']) - nm(first['unit_height']) - world.joint
        found = phrases.whole(phrases.SHORE_HEADS, row.text(1))
        if found is None:
            sheet.wrong(f'{name}: its head', row.text(1), phrases.SHORE_HEADS, row.cells[1])
            continue
        sheet.length(row.cells[1], found, 'foot', nm(opening['soffit']) - nm(opening['underside']), f'{name}: its head')
        sheet.length(row.cells[1], found, 'bearing', nm(opening['soffit']) - bearing, f'{name}: its head')
        check_seats(sheet, row, opening)
        check_held(sheet, row, opening)
        check_beams(sheet, row, opening)


def check_seats(sheet, row, opening):
    """Units of the course under the lintel that lie under its bearings."""
    world, lintel = sheet.world, opening.get('lintel')
    laid = next((one for one in world.answer['lintels'] if one['opening'] == opening['name']), None)
    if laid is None:
        return sheet.same(row.text(2), phrases.SHORE_NO_LINTEL, f'{opening["name"]}: bears on', row.cells[0])
    course, side = lintel['first_course'] - 1, world.sides[opening['side']]
    start, end = nm(opening['from']), nm(opening['to'])
    wanted = []
    for low, high, toward in ((start - nm(laid['start_bearing']), start, side.start),
                              (end, end + nm(laid['end_bearing']), side.end)):
        units = [one.number for one in world.pieces[side.name, course] if one.start < high and one.end > low]
        wanted.append((f'{side.name}-{course}', units, toward))
    told = [(found['course'], units_in(found['units']), found['toward'])
            for found in re.finditer(phrases.SHORE_SEAT, row.text(2))]
    sheet.same(told, [one for one in wanted if one[1]], f'{opening["name"]}: bears on', row.cells[2])


def units_in(text):
    from read_top import numbers_in
    return numbers_in(text)


def check_held(sheet, row, opening):
    name, lintel = opening['name'], opening.get('lintel')
    if lintel is None:
        return
    if lintel['make'] == 'one-piece':
        sheet.same(row.text(3), phrases.SHORE_ONE_PIECE, f'{name}: held up', row.cells[0])
        return
    asked = next(one for one in sheet.world.job['openings'] if one['name'] == name).get('lintel', {})
    found = phrases.whole(phrases.SHORE_HELD, row.text(3))
    sheet.same(found and int(found['course']), lintel['first_course'], f'{name}: before course', row.cells[3])
    if 'shore_spacing' in asked and found and 'shores' in found.groupdict():
        apart = sheet.world.length(asked['shore_spacing'])
        span = nm(opening['to']) - nm(opening['from'])
        sheet.length(row.cells[3], found, 'apart', apart, f'{name}: shores apart')
        sheet.same(int(found['shores']), math.ceil(span / apart) + 1, f'{name}: shores', row.cells[3])
    else:
        sheet.same('shore_spacing' in asked, False, f'{name}: shores as stated', row.cells[3])


def check_beams(sheet, row, opening):
    lintel = opening.get('lintel') or {'courses': 0}
    last = opening['last_course']
    beams = [one['number'] for one in sheet.world.courses.values() if one['bond_beam']
             and one['number'] >= opening['first_course']]
    wanted = [f'{one}: stops at the jambs' for one in beams if one <= last]
    wanted += [f'{one}: in the lintel' for one in beams if last < one <= last + lintel['courses']]
    wanted += [f'{one}: over it' for one in beams if one > last + lintel['courses']][:1]
    sheet.same(row.text(4), ' '.join(wanted) or 'none', f'{opening["name"]}: bond beams', row.cells[4])


# ---- before a pour ---------------------------------------------------------------------------------------------------

def inspection_rows(sheet, page):
    return read_table(sheet, page, phrases.HEADS['inspection'])


def check_inspection(sheet, rows):
    """Each pour: its heading, then every side with its bars, cleanouts and floors once."""
    world, left, pour = sheet.world, [], None
    pours = world.answer['inspection']
    seen = 0
    for row in rows:
        if row.text(0).startswith('Pour '):
            sheet.same(left, [], 'sides left out before a pour', row.cells[0])
            pour, seen = (pours[seen] if seen < len(pours) else None), seen + 1
            if pour is None:
                sheet.wrong('pour', row.text(0), 'one of the answer', row.cells[0])
                return
            left = sides_of(world, pour)
            check_heading(sheet, row, pour, seen)
        elif pour is not None and row.text(0) in left:
            left.remove(row.text(0))
            check_side(sheet, row, pour)
        else:
            sheet.wrong('side before a pour', row.text(0), left, row.cells[0])
    sheet.same(left, [], 'sides left out before a pour')
    sheet.same(seen, len(pours), 'pours to look at')


def sides_of(world, pour):
    return [side for side in world.sides if any(
        bar['side'] == side and bar['first_course'] <= pour['last_course']
        and bar['last_course'] >= pour['first_course'] for bar in world.answer['bars'])]


def check_heading(sheet, row, pour, number):
    world, first, last = sheet.world, pour['first_course'], pour['last_course']
    parts = [f'Pour {number}: courses {first} to {last}']
    parts += [f'bond beam {one["number"]}: steel in, laps tied, corners turned'
              for one in world.courses.values() if one['bond_beam'] and first <= one['number'] <= last]
    laid = {one['opening'] for one in world.answer['lintels']}
    lintels = [name for name, one in world.openings.items() if name in laid and one['lintel']['make'] == 'built-up'
               and first <= one['lintel']['first_course'] <= last]
    parts += [f'lintels, steel in, form and shores standing: {" ".join(lintels)}'] if lintels else []
    told = ' '.join(row.text(0).replace(BOX, '').split())
    sheet.same(told, ' '.join('; '.join(parts).split()), 'beams and lintels to look at', row.cells[0])


def ticked(passage):
    return [] if passage is None or passage.text == 'none' else [
        ' '.join(one.split()) for one in passage.text.split('☐') if one.strip()]


def check_side(sheet, row, pour):
    """By the placed bars: those with a dowel by its number, the others as x1, x2 ... with their place."""
    world, side = sheet.world, row.text(0)
    first, last = pour['first_course'], pour['last_course']
    bars = sorted((bar for bar in world.answer['bars'] if bar['side'] == side and bar['first_course'] <= last
                   and bar['last_course'] >= first), key=lambda bar: nm(bar['centre']))
    numbers = {nm(one['at']): one['number'] for one in world.answer['dowels'] if one['side'] == side}
    called, places, others = [], [], 0
    for bar in bars:
        number = numbers.get(nm(bar['centre'])) if bar['first_course'] == 1 else None
        others += number is None
        called.append(str(number) if number else f'x{others}')
        if number is None:
            places.append(nm(bar['centre']))
    told = ticked(row.cells[1])
    sheet.same([one.split(':')[0] for one in told], called, f'{side}: bars to look at', row.cells[1])
    sheet.claim_all(row.cells[1])
    sheet.same(sorted({round(one.value / world.step) for one in row.cells[1].lengths}),
               sorted({round(one / world.step) for one in places}), f'{side}: bars without a dowel', row.cells[1])
    holes = sum(one['course'] == first and over_bar(world, one, bars) for one in world.answer['cleanouts'])
    sheet.same(len(ticked(row.cells[2])), holes, f'{side}: cleanouts', row.cells[2])
    sheet.same(set(ticked(row.cells[2])) <= set(called), True, f'{side}: cleanouts of its bars', row.cells[2])
    check_floors(sheet, row, pour)
    photo = next((one['photo'] for one in pour['bars'] if one['side'] == side), '')
    sheet.same(row.text(4).replace(' ', ''), photo.rsplit('-', 1)[0] + '-...', f'{side}: photos', row.cells[4])


def over_bar(world, cleanout, bars):
    """Whether a cleanout lies at one of these bars, seen from the side whose unit it is in."""
    here = world.sides[cleanout['side']]
    return any(here.seen(world.sides[bar['side']].point(nm(bar['centre']), world.depth_of(bar)))[0]
               == nm(cleanout['at']) and
               0 <= here.seen(world.sides[bar['side']].point(nm(bar['centre']), world.depth_of(bar)))[1] <= here.thick
               for bar in bars)


def check_floors(sheet, row, pour):
    """Units with floors over the side's bars, by the answer's own list of this pour."""
    world, side = sheet.world, row.text(0)
    wanted = []
    for bar in pour['bars']:
        if bar['side'] != side:
            continue
        for one in bar['through']:
            wanted.append(f'-{one["course"]}' + (f'-{one["unit"]}' if 'unit' in one else ''))
    told = ticked(row.cells[3])
    sheet.same(sorted(re.sub(r'^.*?(?=(-\d+){1,2}$)', '', one) for one in told), sorted(wanted), f'{side}: floors',
               row.cells[3])


# ---- the zone beside walls --------------------------------------------------------------------------------------------

def zone(sheet):
    """The dimension of the zone is the walls' height and 4 ft (29 CFR 1926.706(a)); so is what is told."""
    world, last = sheet.world, sheet.world.courses[max(sheet.world.courses)]
    high = nm(last['top']) - nm(world.courses[1]['top']) + nm(world.courses[1]['unit_height']) + world.joint
    wide, told, over_8, drawn = high + 1_219_200_000, 0, 0, []
    for page in sheet.pages:
        for text in sheet.texts(page):
            if phrases.whole(phrases.ZONE_BESIDE, text.text):
                passage = sheet.take([text])
                beside = phrases.whole(phrases.ZONE_BESIDE, passage.text)
                sheet.length(passage, beside, 'wide', wide, 'width of the zone')
                drawn.append(beside['side'])
        take_paragraphs(sheet, page)
    for passage in sheet.passages:
        sheet.book.published.check(sheet, passage)
        section = phrases.part(phrases.ZONE_SECTION, passage.text)
        if section:
            over_8 += 1
            sheet.length(passage, section, 'over', 96 * 25_400_000, 'height over which walls are braced')
        found = phrases.part(phrases.ZONE, passage.text)
        if found:
            told += 1
            sheet.length(passage, found, 'high', high, 'height of the walls')
            sheet.length(passage, found, 'wide', wide, 'width of the zone')
    sheet.same(told, 1, 'the zone is told')
    sheet.same(over_8, high > 96 * 25_400_000, 'a section with the brace line (29 CFR 1926.706(b))')
    longest = max(side.actual for side in world.sides.values() if not side.interior)
    sheet.same([world.sides[name].actual for name in drawn if name in world.sides], [longest],
               'one width, beside a longest side')


# ---- bolts -----------------------------------------------------------------------------------------------------------

def bolt_rows(sheet, page):
    return read_table(sheet, page, phrases.HEADS['bolts'])


def check_bolts(sheet, rows):
    world, side, shift = sheet.world, None, 0
    left = list(world.answer['plates'])
    for row in rows:
        if row.cells[1] is None and ': ' in row.text(0) and reference_in(row.text(0)):
            side = world.sides.get(row.text(0).split(':')[0])
            shift = 0 if side is None else shift_of(sheet, side, reference_in(row.text(0)), row.cells[0])
            continue
        found = phrases.whole(phrases.PLATE, row.text(0))
        if found is None or not left:
            sheet.wrong('piece of plate', row.text(0), 'one of the answer', row.cells[0])
            continue
        piece = left.pop(0)
        sheet.same(found['side'], piece['side'], 'piece of plate', row.cells[0])
        sheet.length(row.cells[0], found, 'from', nm(piece['from']) + shift, 'start of a piece of plate')
        sheet.length(row.cells[0], found, 'to', nm(piece['to']) + shift, 'end of a piece of plate')
        check_places(sheet, row, piece, shift)
    sheet.same([one['side'] for one in left], [], 'pieces of plate left out')


def check_places(sheet, row, piece, shift):
    passage, told = row.cells[2], row.text(2)
    sheet.same(row.text(1), str(len(piece['bolts'])), 'bolts of a piece', row.cells[1])
    places = list(phrases.parts(phrases.BOLT, told))
    sheet.same(len(places), len(piece['bolts']), 'bolts listed', passage)
    for found, bolt in zip(places, piece['bolts']):
        sheet.length(passage, found, 'at', nm(bolt['at']) + shift, 'bolt')
        check_cell(sheet, piece['side'], nm(bolt['at']))
    gaps = list(phrases.parts(phrases.NO_BOLT, told))
    sheet.same(len(gaps), len(piece['without']), 'stretches without a bolt', passage)
    for found, gap in zip(gaps, piece['without']):
        sheet.length(passage, found, 'after', nm(gap['after']) + shift, 'none from')
        sheet.length(passage, found, 'by', nm(gap['by']) + shift, 'none to')
    nexts = list(phrases.parts(phrases.BOLT_NEXT, told))
    wanted = [one for one in piece['without'] if 'next' in one]
    sheet.same(len(nexts), len(wanted), 'nearest behind', passage)
    for found, gap in zip(nexts, wanted):
        sheet.length(passage, found, 'next', nm(gap['next']) + shift, 'nearest behind')


def check_cell(sheet, side, at):
    """A bolt stands in a cell of the top course, of a bond beam or with a bar."""
    world, top = sheet.world, max(sheet.world.courses)
    thick = world.sides[side].thick
    cell = world.over(side, top, at, thick // 2)
    sheet.same(cell is not None and cell[0] == side, True, f'{side}: a bolt at {at} stands in a cell')
    if not world.courses[top]['bond_beam']:
        sheet.same(any(world.over(side, top, bar[0], bar[4]) == cell for bar in world.bars_on(side)
                       if bar[2] == top), True, f'{side}: a bolt at {at} stands in a cell with a bar')


def check_bolt_notes(sheet):
    """What was asked, as the job says it."""
    asked = sheet.world.job.get('top', {})
    bolts_asked = asked.get('bolts', {})
    length = sheet.world.length
    for passage in sheet.passages:
        found = phrases.part(phrases.BOLTS_ASKED, passage.text)
        if found:
            for text in (asked.get('plate', ''), bolts_asked.get('size', '')):
                at = passage.text.find(text)
                if text and at >= 0:
                    sheet.tell(passage, at, at + len(text))
            for field, value in (('spacing', bolts_asked['spacing']), ('least', bolts_asked.get('end_least')),
                                 ('most', bolts_asked['end_most'])):
                sheet.length(passage, found, field, length(value) if value else 0, f'bolts asked: {field}')
        bars = phrases.part(phrases.BOLTS_BARS, passage.text)
        if bars:
            sheet.length(passage, bars, 'clear', length(bolts_asked['clear_of_bars']), 'bolts clear of bars')
        rows = list(phrases.parts(phrases.BOLTS_TRUSSES, passage.text))
        for told, row in zip(rows, asked.get('trusses', [])):
            sheet.same(told['side'], row['on'], 'trusses on', passage)
            sheet.length(passage, told, 'clear', length(row['clear']), 'bolts clear of trusses')
        assumed = phrases.part(phrases.BOLTS_GROUT, passage.text)
        if assumed:
            wanted = 51_000_000 if not sheet.world.inches else 50_800_000
            sheet.length(passage, assumed, 'round', wanted, 'grout round a bolt')
