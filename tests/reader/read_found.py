"""What readings come to: pegs, heights, the first bed, dowels as found, the fit on the slab."""
import re
from fractions import Fraction

import phrases
from lengths import agrees, rounded
from read_summary import read_side_dimensions
from read_card import check_root
from read_pour import check_label
from sheets import read_table, take_paragraphs
from world import nm


def ground(sheet):
    return sheet.world.answer['ground']


def readings_of(world, sort):
    return [(index, row[sort]) for index, row in enumerate(world.job.get('readings', [])) if sort in row]


# ---- pegs ------------------------------------------------------------------------------------------------------------

def pegs(sheet):
    world, page = sheet.world, sheet.pages[0]
    lines = [(row['from'] + row['to'], nm(row['read'])) for row in ground(sheet)['tape']['lines']]
    texts, taped_pairs = sheet.texts(page), {name for name, _ in lines}
    for first, second in zip(texts, texts[1:]):
        pair = first.text
        taped = pair in taped_pairs and pair not in world.sides
        if taped and second.lengths() and id(first) not in sheet.taken and abs(first.top - second.top) < 1:
            passage = sheet.take([first, second])
            left = [one for one in lines if one[0] == pair] or [(pair, None)]
            best = min(left, key=lambda one: abs((one[1] or 0) - second.lengths()[0].value))
            check_label(sheet, passage, best[1] or 0, f'taping {pair}')
            if best in lines:
                lines.remove(best)
    read_side_dimensions(sheet, page)
    moves = {row['text']: row for row in ground(sheet)['tape'].get('moves', [])}
    take_paragraphs(sheet, page)
    for passage in sheet.passages:
        told = re.search(r' (toward|away from) ', passage.text)
        if told and passage.text not in moves:
            sheet.wrong('move of a peg', passage.text, sorted(moves), passage)
        elif passage.text in moves:
            check_move(sheet, passage, passage.text, moves[passage.text])


def check_move(sheet, passage, text, move):
    """"6 mm away from D, 4 mm toward B": each part along the line to that corner, together the move."""
    world = sheet.world
    here = world.corners[move['corner']]['point']
    for found in re.finditer(rf'({phrases.LENGTH}) (toward|away from) ([^,;:]+)', text):
        one = next((one for one in passage.lengths if one.text == found[1] and one.start not in passage.claimed), None)
        other = world.corners.get(found[3].strip())
        if one is None or other is None:
            sheet.wrong(f'move of {move["corner"]}', found[0], 'a corner', passage)
            continue
        passage.claimed.add(one.start)
        x, y = other['point'][0] - here[0], other['point'][1] - here[1]
        way = (nm(move['east']), 0) if y == 0 else (0, nm(move['north'])) if x == 0 else None
        if way is None:
            sheet.wrong(f'move of {move["corner"]}', found[0], 'along a side', passage)
            continue
        toward = (way[0] * x + way[1] * y) / Fraction(max(abs(x), abs(y)))
        wanted = toward if found[2] == 'toward' else -toward
        if not agrees(one.value, wanted, world.step):
            sheet.wrong(f'move of {move["corner"]}', found[0], sheet.book.text(wanted), passage)


# ---- readings --------------------------------------------------------------------------------------------------------

def readings(sheet):
    part, state = None, {'taping': 0, 'station': 0, 'loop': 0, 'dowel': 0, 'choice': 0, 'setup': 0}
    for page in sheet.pages:
        for row in read_table(sheet, page, phrases.HEADS['readings']):
            heading = reading_heading(sheet, row)
            if heading:
                part = heading
                continue
            reader = ROWS.get(part)
            if reader:
                reader(sheet, row, state)
        take_paragraphs(sheet, page)
    found = ground(sheet)
    sheet.same(state['taping'], len(found['tape']['lines']), 'tapings listed')
    sheet.same(state['dowel'], len(found['dowels']), 'found dowels listed')
    if 'levels' in found:
        sheet.same(state['station'], len(found['levels']['stations']), 'heights listed')


def reading_heading(sheet, row):
    if not row.heading:
        return None
    passage, text = row.cells[0], row.text(0)
    for template, part in ((phrases.FOUND_TAPINGS, 'tapings'), (phrases.FOUND_MOVES, 'moves'),
                           (phrases.FOUND_HEIGHTS, 'heights'), (phrases.FOUND_CORNERS, 'corners'),
                           (phrases.FOUND_DOWELS, 'dowels'), (phrases.FOUND_FIT, 'fit')):
        named = phrases.whole(template, text)
        if named and part == 'tapings':
            sheet.same(named['verdict'], phrases.FOUND_VERDICTS[ground(sheet)['tape']['verdict']], 'verdict', passage)
        if named:
            return part
    found = phrases.whole(phrases.FOUND_BED, text)
    if found:
        bed = ground(sheet)['levels']['bed']
        sheet.length(passage, found, 'least', nm(bed['least']), 'least bed')
        sheet.length(passage, found, 'most', nm(bed['most']), 'greatest bed')
        sheet.same(found['verdict'], phrases.FOUND_VERDICTS[bed['verdict']], 'verdict of the bed', passage)
        return 'bed'
    return None


def cell(sheet, row, column, template, exact, what):
    """One template over a whole cell, its fields against exact lengths."""
    passage = row.cells[column]
    found = phrases.whole(template, passage.text) if passage else None
    if found is None:
        return sheet.wrong(what, row.text(column), template, passage or row.cells[0])
    for field, value in exact.items():
        if field in found.re.groupindex:
            sheet.length(passage, found, field, value, f'{what}: {field}')
    return found


def tenth(thousandths):
    sign = '-' if thousandths < 0 and (abs(thousandths) + 50) // 100 > 0 else ''
    whole = (abs(thousandths) + 50) // 100
    return f'{sign}{whole // 10}.{whole % 10}'


def diagonals_row(sheet, row, names):
    """The difference of two diagonals that were taped: of the job's own readings, once each."""
    world, tape = sheet.world, ground(sheet)['tape']
    pairs = [(''.join(pair['longer']), ''.join(pair['shorter'])) for pair in tape['diagonals']]
    told = (names['one'], names['other'])
    if told not in pairs:
        return sheet.wrong('diagonals', row.text(0), pairs, row.cells[0])
    pair = tape['diagonals'][pairs.index(told)]
    means = []
    for ends in (pair['longer'], pair['shorter']):
        read = [world.length(one['length']) for index, one in readings_of(world, 'tape')
                if {one['from'], one['to']} == set(ends) and any(line['reading'] == index for line in tape['lines'])]
        means.append(Fraction(sum(read), len(read)))
    plain = not any('strike' in one for one in world.job['readings']) and not any('meant' in line for line in tape['lines'])
    exact = means[0] - means[1] if plain else nm(pair['difference'])
    cell(sheet, row, 1, phrases.FOUND_LONGER, {'longer': exact}, 'diagonals')
    cell(sheet, row, 2, phrases.FOUND_ALLOWED, {'allowed': 12_700_000 if world.step == 1_587_500 else 12_000_000,
                                                'doubt': nm(pair['doubt'])}, 'diagonals')
    sheet.same(row.text(3), phrases.FOUND_VERDICTS[pair['verdict']], 'diagonals', row.cells[3])


def taping_row(sheet, row, state):
    world, lines = sheet.world, ground(sheet)['tape']['lines']
    diagonals = phrases.whole(phrases.FOUND_DIAGONALS, row.text(0))
    if diagonals:
        return diagonals_row(sheet, row, diagonals)
    for what, key in ((phrases.FOUND_TAPE_TOO, 'missing'), (phrases.FOUND_TAPE_AGAIN, 'tape_again')):
        if row.text(0) == what:
            texts = {join.join(pair) for pair in ground(sheet)['tape'].get(key, []) for join in (' - ', '')}
            sheet.same(set(row.text(3).split(', ')) <= texts, True, what, row.cells[3])
            return None
    pair = phrases.whole(phrases.CARD_PAIR, row.text(0))
    if pair is None or state['taping'] >= len(lines):
        return
    line = lines[state['taping']]
    state['taping'] += 1
    sheet.same((pair['a'], pair['b']), (line['from'], line['to']), 'taping', row.cells[0])
    read = world.length(world.job['readings'][line['reading']]['tape']['length'])
    cell(sheet, row, 1, '{read=}', {'read': read}, f'taping {row.text(0)}')
    a, b = world.corners[line['from']]['point'], world.corners[line['to']]['point']
    if row.cells[2]:
        check_root(sheet, row.cells[2], None, (a[0] - b[0]) ** 2 + (a[1] - b[1]) ** 2, f'planned {row.text(0)}')
    if row.cells[3] is None:
        return
    slip = phrases.part(phrases.FOUND_SLIP, row.text(3))
    if slip:
        return sheet.length(row.cells[3], slip, 'meant', nm(line['meant']), f'{row.text(0)}: meant')
    found = phrases.part(phrases.FOUND_CORRECTED, row.text(3))
    if found and 'correction' in line:
        if 'by' in found.re.groupindex:
            sheet.length(row.cells[3], found, 'by', nm(line['correction']), f'{row.text(0)}: correction')
        else:
            sheet.same(rounded(nm(line['correction']), world.step), 0, f'{row.text(0)}: correction', row.cells[3])
            sheet.length(row.cells[3], found, 'under', world.step, f'{row.text(0)}: correction')
        times = abs(line['times_its_doubt_thousandths'])
        fits = phrases.FOUND_FITS[0 if times <= 1000 else 1 if times <= 2000 else 2]
        told = re.match('[a-z ]*[a-z]', row.text(3)[found.end():])
        sheet.same(told and told[0], fits, f'{row.text(0)}: how well it fits', row.cells[3])


def move_row(sheet, row, state):
    move = next((one for one in ground(sheet)['tape']['moves'] if one['corner'] == row.text(0)), None)
    if move is None:
        return sheet.wrong('peg', row.text(0), 'a corner that was taped', row.cells[0])
    if row.cells[1]:
        cell(sheet, row, 1, phrases.FOUND_DOUBT, {'doubt': nm(move['doubt'])}, f'peg {row.text(0)}')
    if row.cells[2]:
        cell(sheet, row, 2, phrases.FOUND_ELLIPSE, {'longer': nm(move['ellipse']['longer']),
                                                    'shorter': nm(move['ellipse']['shorter'])}, f'peg {row.text(0)}')
    if row.cells[3]:
        sheet.same(row.text(3).startswith(move['text']), True, f'move of {row.text(0)}', row.cells[3])
        check_move(sheet, row.cells[3], row.text(3), move)


def exact_height(world, name):
    """A station's height where one set-up read it and the datum once: the difference of the two rods."""
    rods = [row for _, row in readings_of(world, 'rod')]
    setups = {row['setup'] for row in rods}
    mine = [row for row in rods if row['station'] == name]
    datum = [row for row in rods if row['station'] == world.answer['ground']['levels']['datum']]
    struck = any('strike' in row for row in world.job['readings'])
    if len(setups) != 1 or len(mine) != 1 or len(datum) != 1 or struck or readings_of(world, 'two_peg'):
        return None
    return world.length(datum[0]['rod']) - world.length(mine[0]['rod'])


def height_row(sheet, row, state):
    world, levels = sheet.world, ground(sheet)['levels']
    name = 'datum' if row.text(0) == phrases.FOUND_BENCHMARK else row.text(0)
    if name == phrases.FOUND_LOOP:
        loop = levels['loops'][state['loop']]
        state['loop'] += 1
        cell(sheet, row, 1, '{at}', {'at': nm(loop['misclosure'])}, 'loop')
        return cell(sheet, row, 2, phrases.FOUND_DOUBT, {'doubt': nm(loop['allowed'])}, 'loop')
    door = phrases.whole(phrases.FOUND_DOOR, name)
    if door:
        return door_row(sheet, row, door['opening'])
    over = phrases.whole(phrases.FOUND_INSTRUMENT, row.text(1))
    if over:
        return instrument_row(sheet, row, over)
    if state['station'] >= len(levels['stations']):
        return sheet.wrong('height', name, 'a station', row.cells[0])
    station = levels['stations'][state['station']]
    state['station'] += 1
    sheet.same(name, station['name'], 'station', row.cells[0])
    exact = exact_height(world, name)
    height = nm(station['height']) if exact is None else exact
    cell(sheet, row, 1, '{at}', {'at': height}, f'height of {name}')
    cell(sheet, row, 2, phrases.FOUND_DOUBT, {'doubt': nm(station['doubt'])}, f'doubt of {name}')
    if row.cells[3]:
        found = cell(sheet, row, 3, phrases.FOUND_PLACE, {'at': nm(station['at']) if 'at' in station else None},
                     f'place of {name}')
        sheet.same(found and found['side'], station.get('side'), f'place of {name}', row.cells[3])


def instrument_row(sheet, row, over):
    """Two pegs: what the close rods differ by, less what the midway rods do, over the difference of the sights."""
    world, found = sheet.world, ground(sheet)['levels']['instrument']
    pegs_read = [peg for _, peg in readings_of(world, 'two_peg')]
    rise, sight = nm(found['over']), nm(found['sight'])
    if len(pegs_read) == 1 and 'sight_a' in pegs_read[0]:
        peg = {key: world.length(value) for key, value in pegs_read[0].items()}
        sight = abs(peg['sight_b'] - peg['sight_a'])
        rise = (peg['close_b'] - peg['close_a']) - (peg['midway_b'] - peg['midway_a'])
        if peg['sight_b'] < peg['sight_a']:
            rise = -rise
    sheet.length(row.cells[1], over, 'over', abs(rise), 'the instrument')
    way = ' down ' if rise < 0 else ' up '
    if way not in row.text(1):
        sheet.wrong('the instrument looks', row.text(1), way, row.cells[1])
    sheet.length(row.cells[1], over, 'sight', sight, 'the instrument')
    cell(sheet, row, 2, phrases.FOUND_DOUBT, {'doubt': nm(found['doubt'])}, 'the instrument')


def door_row(sheet, row, name):
    world = sheet.world
    door = next((one for one in ground(sheet)['levels']['doors'] if one['opening'] == name), None)
    opening = world.openings.get(name)
    if door is None or opening is None:
        return sheet.wrong('door', name, 'one whose floor was read', row.cells[0])
    cell(sheet, row, 1, phrases.FOUND_DOOR_TALL, {'least': nm(door['tall_least']), 'most': nm(door['tall_most'])},
         f'{name}: floor to soffit')
    cell(sheet, row, 2, phrases.FOUND_DOOR_PLANNED, {'planned': nm(opening['soffit']) - nm(opening['underside']),
                                                     'doubt': nm(door['doubt'])}, f'{name}: planned')


def bed_row(sheet, row, state):
    world, levels = sheet.world, ground(sheet)['levels']
    bed = levels['bed']
    rod = phrases.whole(phrases.FOUND_ROD, row.text(0))
    if rod:
        setup = next((one for one in levels['setups'] if one['name'] == rod['setup']), None)
        if setup is None:
            return sheet.wrong('set-up', rod['setup'], [one['name'] for one in levels['setups']], row.cells[0])
        height = nm(world.courses[1]['unit_height'])
        return cell(sheet, row, 1, '{at}', {'at': nm(setup['height']) - nm(bed['top']) - height}, 'the rod on course 1')
    if row.text(0) == phrases.FOUND_READ_TOO:
        return sheet.same(row.text(3), ', '.join(bed['lacks']), 'where to read the rod', row.cells[3])
    if row.text(0) == '':
        return None
    if row.text(0) == phrases.FOUND_CHOSEN:
        return chosen_row(sheet, row, 'bed_chosen')
    best = next((one for one in bed['choices'] if one['recommended'] and len(bed['choices']) > 1), None)
    told = {f'{phrases.FOUND_BEST}: {one["text"]}' if one is best else one['text']: one for one in bed['choices']}
    choice = told.get(row.text(0))
    if choice is None:
        return sheet.wrong('choice of a bed', row.text(0), list(told), row.cells[0])
    sheet.tell(row.cells[0])
    cell(sheet, row, 1, phrases.FOUND_TOP, {'top': nm(choice['top'])}, 'top of the bed')
    cell(sheet, row, 2, phrases.FOUND_MARGIN, {'margin': nm(choice['margin'])}, 'margin of the bed')


def chosen_row(sheet, row, which):
    """What the job has chosen; what was read since follows where it says otherwise."""
    chosen = ground(sheet).get(which)
    sheet.same(row.text(3).startswith(chosen['text'] if chosen else '-'), True, f'{which}: {row.text(3)}', row.cells[3])
    sheet.tell(row.cells[3])


def corner_row(sheet, row, state):
    """Each way to mend the corners, as the answer ranks them."""
    if row.text(0) == phrases.FOUND_CHOSEN:
        return chosen_row(sheet, row, 'shape_chosen')
    choices = ground(sheet)['tape']['choices']
    choice = next((one for one in choices if row.text(3).startswith(one['text'])), None)
    if choice is None:
        return sheet.wrong('way to mend the corners', row.text(3), [one['text'] for one in choices], row.cells[3])
    wanted = phrases.FOUND_BEST if choice['recommended'] else phrases.FOUND_ELSE
    sheet.same(row.text(0), wanted, f'rank of: {row.text(3)}', row.cells[0])
    sheet.tell(row.cells[3])


def dowel_row(sheet, row, state):
    world, all_found = sheet.world, ground(sheet)['dowels']
    if not phrases.part(phrases.FOUND_OFF_FACE, row.text(2)):
        return
    if state['dowel'] >= len(all_found):
        return sheet.wrong('found dowel', row.text(0), 'one that was read', row.cells[0])
    one = all_found[state['dowel']]
    state['dowel'] += 1
    name = one['side'] + (f' {one["number"]}' if one['number'] else '')
    sheet.same(row.text(0), name, 'found dowel', row.cells[0])
    reading = world.job['readings'][one['reading']]['dowel']
    at, inward = world.length(reading['at']), world.length(reading['off_face'])
    cell(sheet, row, 1, '{at=}', {'at': at}, f'found dowel {name}')
    listed = world.dowels().get(name)
    off = at - listed.centre if listed else nm(one['off_place']) if 'off_place' in one else None
    template = (phrases.FOUND_OFF_FACE if off is None else phrases.FOUND_OFF if rounded(abs(off), world.step)
                else phrases.FOUND_AT_PLACE)
    found = cell(sheet, row, 2, template, {'off': abs(off or 0), 'in': nm(one['off_face'])}, f'found dowel {name}')
    if found and template == phrases.FOUND_OFF:
        side = world.sides[one['side']]
        sheet.same(found['way'], side.start if off < 0 else side.end, f'way of found dowel {name}', row.cells[2])
    if row.cells[3]:
        sheet.same(row.text(3), one['text'], f'found dowel {name}', row.cells[3])
        sheet.tell(row.cells[3])


def fit_row(sheet, row, state):
    world, fit = sheet.world, ground(sheet).get('fit')
    if fit is None:
        return
    turn = phrases.whole(phrases.FOUND_TURN, row.text(0))
    if row.text(0) == phrases.FOUND_SHIFT_ROW:
        for column, templates, way in ((1, phrases.FOUND_SHIFT, nm(fit['east'])), (3, phrases.FOUND_SHIFT_NORTH,
                                                                                   nm(fit['north']))):
            template = templates[1] if way < 0 else templates[0]
            cell(sheet, row, column, template, {'east': abs(way), 'north': abs(way)}, 'shift')
    elif turn:
        # Micrometres a metre are told whole: the length over a side is within half of one of what they make of it.
        side = world.sides[turn['side']]
        # To the left about its start: a side that runs west goes south at its far end.
        exact = Fraction(fit['turn_micrometres_in_a_metre'] * side.actual * side.along[0], 1_000_000)
        match = phrases.whole(phrases.FOUND_TURNED, row.text(1))
        if match:
            sheet.same(match['corner'], side.end, 'turned at', row.cells[1])
            exact = -exact if ' south ' in row.text(1) else exact
        one = row.cells[1].lengths[0] if match else None
        if one is None or abs(one.value - exact) > Fraction(world.step, 2) + Fraction(side.actual, 2_000_000) + 1:
            sheet.wrong('turn', row.text(1), sheet.book.text(exact), row.cells[0])
        if one is not None:
            row.cells[1].claimed.add(one.start)
    elif row.text(0) == phrases.FOUND_ROOM:
        cell(sheet, row, 1, '{at}', {'at': nm(fit['room'])}, 'room')
        cell(sheet, row, 2, '{at}', {'at': nm(fit['room_before'])}, 'room before')


ROWS = {'tapings': taping_row, 'moves': move_row, 'corners': corner_row, 'heights': height_row, 'bed': bed_row,
        'dowels': dowel_row,
        'fit': fit_row}


