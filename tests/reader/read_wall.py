"""At the wall: marks to read and the next joints, the laid log, what changed since the set was printed."""
from fractions import Fraction

import phrases
from lengths import INCH, MM, agrees, rounded
from places import hook_in, shift_of
from sheets import read_table, take_paragraphs
from world import nm


def entries_of(world):
    return world.job.get('laid', [])


def exact_past(world, entry):
    """How far a reading's block end is past its mark."""
    mark = entry['mark']
    return world.length(mark['past']) if 'past' in mark else world.length(mark['read']) - world.length(mark['at'])


def check_past(sheet, passage, text, past, what):
    """"3/16" past", "1/8" short", "on it"; words may follow."""
    if abs(rounded(past, sheet.world.step)) == 0:
        return sheet.same(text.startswith(phrases.MARK_ON), True, what, passage)
    found = phrases.part(phrases.MARK_SHORT if past < 0 else phrases.MARK_PAST, text)
    if found is None:
        return sheet.wrong(what, text, sheet.book.text(past), passage)
    sheet.length(passage, phrases.part(phrases.MARK_SHORT if past < 0 else phrases.MARK_PAST, passage.text), 'past',
                 abs(past), what)


# ---- marks -----------------------------------------------------------------------------------------------------------

def marks(sheet):
    world = sheet.world
    courses = {(row['side'], row['course']): row for row in world.answer['laying']['at_hand']}
    seen, now, left, shift = [], None, [], 0
    for page in sheet.pages:
        for row in read_table(sheet, page, phrases.HEADS['marks'], has_boxes=True):
            if row.heading:
                before = now
                now, shift = mark_heading(sheet, row.cells[0], courses)
                if before is now is not None:  # said again where a page goes on
                    continue
                if left:
                    sheet.wrong('marks', 'missing', [sheet.book.text(nm(one['at'])) for one in left])
                left = [one for one in now['marks'] if shown(one)] if now else []
                seen.append((now['side'], now['course']) if now else None)
            elif now is not None:
                mark_row(sheet, row, now, left, shift)
        take_paragraphs(sheet, page)
    if left:
        sheet.wrong('marks', 'missing', [sheet.book.text(nm(one['at'])) for one in left])
    sheet.same(seen, list(courses), 'courses whose marks are listed')


def shown(mark):
    """Bars stand on the strips; of block ends only those to read, those that close, and those that were read."""
    return mark['kind'] != 'bar-centre' and (mark['kind'] != 'block-end' or mark['to_read'] or mark['closes']
                                             or 'past' in mark)


def mark_heading(sheet, passage, courses):
    told, _, joints = passage.text.partition(phrases.MARK_JOINTS.split('{')[0])
    found = phrases.whole(phrases.MARK_HEADING, told)
    row = courses.get((found['side'], int(found['course']))) if found else None
    if row is None:
        sheet.wrong('heading of marks', passage.text, list(courses), passage)
        return None, 0
    if joints:
        one = phrases.part(phrases.MARK_JOINTS, passage.text)
        sheet.length(passage, one, 'joint', nm(row['runs'][0]['one_joint']['joint']), f'{row["name"]}: one joint')
    side, hook = sheet.world.sides[row['side']], found['hook']
    return row, shift_of(sheet, side, hook_in(hook), passage)


def mark_row(sheet, row, course, left, shift):
    world, name = sheet.world, course['name']
    match = phrases.whole('{at=}', row.text(0))
    if match is None:
        return sheet.wrong(f'{name}: mark', row.text(0), 'a length', row.cells[0])
    value = sheet.value(row.cells[0], match, 'at')
    near = next((one for one in left if agrees(value, nm(one['at']) + shift, world.step)
                 and what_of(row.text(1), one)), None)
    if near is None:
        sheet.length(row.cells[0], match, 'at', None, '')
        return sheet.wrong(f'{name}: mark', f'{row.text(0)}: {row.text(1)}',
                           [f'{sheet.book.text(nm(one["at"]))} {one["kind"]}' for one in left], row.cells[0])
    left.remove(near)
    sheet.length(row.cells[0], match, 'at', exact_mark(sheet, course, near) + shift, f'{name}: mark')
    if row.cells[2]:
        if 'past' in near:
            check_past(sheet, row.cells[2], row.text(2), nm(near['past']), f'{name}: past or short')
        else:
            sheet.wrong(f'{name}: past or short', row.text(2), 'nothing was read', row.cells[2])
    elif 'past' in near:
        sheet.wrong(f'{name}: past or short', 'nothing', sheet.book.text(nm(near['past'])), row.cells[0])
    if row.cells[3]:
        run = course['runs'][near['run']]
        lost = ''.join('; loses ' + one for one in run['next'].get('loses', []))
        options = [run['next']['text'] + lost]
        if 'instead' in run['next'] or 'instead' in run:
            options.append(run['next']['text'] + '; or ' + (run['next'].get('instead')
                                                            or run['instead'])['text'] + lost)
        if row.text(3) not in options:
            sheet.wrong(f'{name}: next joints', row.text(3), options, row.cells[3])
        else:
            sheet.tell(row.cells[3])
            check_next(sheet, row.cells[3], run, course)


def check_next(sheet, passage, run, course):
    """Joints of a correction: within the tolerance of a head joint, and together they bring the course back to the next
    mark: narrower than planned by what it is past."""
    laying, joints = sheet.world.answer['laying'], [sheet.world.length(text) for text in run['next']['joints']]
    least, most = nm(laying['joints']['least']) - sheet.world.step, nm(laying['joints']['most']) + sheet.world.step
    if not all(least <= joint <= most for joint in joints):
        sheet.wrong(f'{course["name"]}: next joints', passage.text, 'within the tolerance of a head joint', passage)
    taken = nm(run['each_unit_adds']['taken_off_ahead'])
    if run['next']['what'] != 'joints' or run['laid'] == 0 or run['next']['bays'] != 1 or taken:
        return
    # Nothing is taken off ahead: what the units run long is within its doubt, and is not made up for.
    off = sum(joints) - len(joints) * nm(laying['joints']['planned']) + nm(run['past'])
    # The sum is rounded to the tape's steps, once for each bay.
    if abs(off) > sheet.world.step:
        sheet.wrong(f'{course["name"]}: next joints', passage.text,
                    f'back at the next mark, not {off / 1e6:.2f} mm off', passage)


def what_of(text, mark):
    """Does a row's wording name this mark?"""
    for template, kind in phrases.MARK_WHAT.items():
        found = phrases.whole(template, text)
        if found:
            return kind == mark['kind'] and found.groupdict().get('opening') in (None, mark.get('opening'))
    found = phrases.whole(phrases.MARK_UNIT, text)
    if not found or mark['kind'] != 'block-end':
        return False
    return int(found['unit']) == mark['unit'] and text.endswith(phrases.MARK_CLOSES) == mark['closes']


def exact_mark(sheet, course, mark):
    """The mark's place from the placed pieces, the openings or the joints."""
    world, place = sheet.world, nm(mark['at'])
    found = None
    if mark['kind'] == 'block-end':
        piece = world.by_name.get(f'{course["side"]}-{course["course"]}-{mark["unit"]}')
        found = piece.end if piece else None
    elif mark['kind'] in ('near-jamb', 'far-jamb'):
        edge = 'from' if mark['kind'] == 'near-jamb' else 'to'
        found = world.jamb(world.openings[mark['opening']], edge, course['course'])
    elif mark['kind'].startswith('joint'):
        edge = 'from' if mark['kind'] == 'joint-near-edge' else 'to'
        places = [nm(row[edge]) for row in world.answer['control_joints'] if row['side'] == course['side']]
        found = min(places, key=lambda one: abs(one - place), default=None)
    return place if found is None else found


# ---- changes ---------------------------------------------------------------------------------------------------------

def changes(sheet):
    wanted = {' '.join(row['text'].split()): row for row in sheet.world.answer['laying'].get('changes', [])}
    seen = []
    for page in sheet.pages:
        for row in read_table(sheet, page, phrases.HEADS['changes'], has_boxes=True):
            text = row.text(0)
            seen.append(text)
            change = wanted.get(text)
            if change is None:
                sheet.wrong('change', text, list(wanted), row.cells[0])
                continue
            for one in row.cells[0].lengths:
                row.cells[0].claimed.add(one.start)
                if not agrees(one.value, abs(nm(change['farthest'])), sheet.world.step):
                    sheet.wrong('farthest mark that moves', one.text, sheet.book.text(nm(change['farthest'])),
                                row.cells[0])
            if change['units'] and row.cells[1]:
                sheet.same(row.text(1), '; '.join(change['units']), 'units that change', row.cells[1])
                sheet.tell(row.cells[1])
        take_paragraphs(sheet, page)
    sheet.same(sorted(seen), sorted(wanted), 'changes listed')


# ---- log -------------------------------------------------------------------------------------------------------------

def log(sheet):
    entries, rows = entries_of(sheet.world), []
    for page in sheet.pages:
        rows += [row for row in read_log(sheet, page)]
        take_paragraphs(sheet, page)
    sheet.same(len(rows), len(entries), 'entries of the log')
    for index, (row, entry) in enumerate(zip(rows, entries)):
        struck = any(one.get('strike') == entry['id'] for one in entries)
        log_row(sheet, row, index, entry, struck)
    progress = sheet.world.answer['laying']['progress']
    head = next((one.text for one in sheet.passages if one.text.startswith('Laid: ')), '')
    numbers = [int(word.strip('.;,')) for word in head.split() if word.strip('.;,').isdigit()]
    wanted = [progress['laid'], progress['units']]
    if progress['each_day']:
        wanted += [progress['days'], progress['each_day'], progress['days_left']]
    sheet.same(numbers, wanted, 'progress')


def read_log(sheet, page):
    for row in read_table(sheet, page, phrases.HEADS['log']):
        if row.text(0).startswith('Laid: '):
            continue
        yield row


def log_row(sheet, row, index, entry, struck):
    laying = sheet.world.answer['laying']
    sort = next((key for key in ('mark', 'units', 'laid', 'gauge', 'set', 'gap', 'check', 'found', 'remark', 'strike')
                 if key in entry), None)
    if sort in LOG:
        LOG[sort](sheet, row, index, entry, laying, struck)
    note = entry.get('note')
    if note and row.cells[3]:
        at = row.text(3).find(' '.join(note.split()))
        if at < 0:
            sheet.wrong('note of an entry', row.text(3), note, row.cells[3])
        sheet.tell(row.cells[3], max(at, 0))
    if struck:
        sheet.same(row.text(3).startswith('struck'), True, f'{entry["id"]} is struck', row.cells[0])


def cell_length(sheet, row, column, template, field, exact, what, step=None):
    passage = row.cells[column]
    found = phrases.part(template, passage.text) if passage else None
    if found is None:
        return sheet.wrong(what, row.text(column), template, passage)
    sheet.length(passage, found, field, exact, what, step)
    return found


def log_mark(sheet, row, index, entry, laying, struck):
    world, mark = sheet.world, entry['mark']
    found = cell_length(sheet, row, 1, phrases.LOG_MARK, 'at', world.length(mark['at']), 'mark read')
    sheet.same(found and found['course'], f'{mark["on"]}-{mark["course"]}', 'course of a mark', row.cells[1])
    if row.cells[2]:
        check_past(sheet, row.cells[2], row.text(2), exact_past(world, entry), 'past or short')
    if row.cells[3] and not struck:
        texts = set()
        for course in laying['begun'] + laying['at_hand']:
            for one in course['marks']:
                if index in one.get('entries', []) and 'run' in one:
                    run = course['runs'][one['run']]
                    texts.add(run['next']['text'])
                    texts.add(run['next']['text'] + '; or ' + (run['next'].get('instead') or run.get('instead')
                                                               or {'text': ''})['text'])
        told = max((text for text in texts if text and row.text(3).startswith(text)), key=len, default='')
        sheet.tell(row.cells[3], 0, len(told))


def log_units(sheet, row, index, entry, laying, struck):
    world, units = sheet.world, entry['units']
    if 'row' in units:
        found = cell_length(sheet, row, 2, phrases.LOG_ROW, 'row', world.length(units['row']), 'row of units')
        sheet.same(found and int(found['units']), units['together'], 'units in a row', row.cells[2])
    if 'batch' in laying and row.cells[3] and not struck:
        # Told to a 64th of an inch, or a tenth of a millimetre.
        step = INCH // 64 if world.inches else MM // 10
        cell_length(sheet, row, 3, phrases.LOG_MEAN, 'mean', nm(laying['batch']['mean']), 'mean of the batch', step)
        counted = [one['units'] for one in entries_of(world) if 'units' in one
                   and not any(e.get('strike') == one['id'] for e in entries_of(world))]
        rows = [Fraction(world.length(one['row'])) for one in counted if 'row' in one]
        if len(counted) == 1 and rows and 'singles' not in counted[0]:
            mean = rows[0] / counted[0]['together']
            if abs(mean - nm(laying['batch']['mean'])) > 1:
                sheet.wrong('mean of the batch', sheet.book.text(nm(laying['batch']['mean'])), sheet.book.text(mean),
                            row.cells[3])


def log_gauge(sheet, row, index, entry, laying, struck):
    world, high = sheet.world, sheet.world.length(entry['gauge']['high'])
    cell_length(sheet, row, 2, phrases.LOG_LOW if high < 0 else phrases.LOG_HIGH, 'high', abs(high), 'top of a course')
    gauge = next((one for one in laying['gauges'] if one['entry'] == index), None)
    if gauge is None or not gauge['beds'] or row.cells[3] is None:
        return
    passage = row.cells[3]
    beds = [one for one in passage.lengths]
    sheet.same(len(beds) >= len(gauge['beds']), True, 'beds listed', passage)
    for one, bed in zip(beds, gauge['beds']):
        passage.claimed.add(one.start)
        if not agrees(one.value, nm(bed['bed']), world.step):
            sheet.wrong(f'bed of course {bed["course"]}', one.text, sheet.book.text(nm(bed['bed'])), passage)
    # The beds take up the height: together they differ from as many design beds by what the course is high.
    whole = sum(nm(bed['bed']) for bed in gauge['beds'])
    if abs(whole + high - len(gauge['beds']) * world.joint) > len(gauge['beds']) * world.step:
        sheet.wrong('beds together', sheet.book.text(whole), sheet.book.text(len(gauge['beds']) * world.joint - high),
                    passage)


def log_set(sheet, row, index, entry, laying, struck):
    world, reading = sheet.world, entry['set']
    cell_length(sheet, row, 2, phrases.LOG_BED, 'bed', world.length(reading['bed']), 'bed under a unit')
    one = next((one for one in laying['sets'] if one['entry'] == index), None)
    if one is None or row.cells[3] is None:
        return
    taps = phrases.parts(phrases.LOG_TAP, row.text(3))
    sheet.same(len(taps), len(one['taps']), 'taps', row.cells[3])
    for found, tap in zip(taps, one['taps']):
        sheet.same(found['corner'], tap['corner'].replace('-', ' ') + ' corner', 'corner to tap', row.cells[3])
        sheet.length(row.cells[3], found, 'down', nm(tap['down']), 'tap down')
        if not one['lift']:
            sheet.same(nm(tap['down']), world.length(reading[tap['corner'].replace('-', '_')]), 'tap down to the line',
                       row.cells[3])
    line = phrases.part(phrases.LOG_LINE, row.text(3))
    if line and 'from_line' in one:
        sheet.length(row.cells[3], line, 'gap', abs(nm(one['from_line'])), 'gap to the line')


def log_gap(sheet, row, index, entry, laying, struck):
    world, gap = sheet.world, entry['gap']
    cell_length(sheet, row, 1, phrases.LOG_GAP, 'at', world.length(gap['at']), 'gap at')
    cell_length(sheet, row, 2, '{gap=}', 'gap', world.length(gap['measured']), 'gap')
    one = next((one for one in laying['gaps'] if one['entry'] == index), None)
    if one is None or 'closure' not in one or row.cells[3] is None:
        return
    closure, passage = one['closure'], row.cells[3]
    joint = phrases.part(phrases.LOG_JOINTS, passage.text)
    if joint:
        sheet.length(passage, joint, 'joint', nm(closure['joint']), 'joints of a closure')
    pieces = [nm(piece['length']) for piece in closure['pieces']]
    for length in passage.lengths:
        if length.start not in passage.claimed and any(agrees(length.value, exact, world.step) for exact in pieces):
            passage.claimed.add(length.start)
    # Between pieces one joint, and one at each end that is no jamb.
    left = nm(one['measured']) - sum(pieces)
    if not any(abs(left - count * nm(closure['joint'])) <= 2 for count in range(len(pieces) - 1, len(pieces) + 2)):
        sheet.wrong('closure', sheet.book.text(pieces[0]), 'pieces and joints fill the gap', passage)


def log_check(sheet, row, index, entry, laying, struck):
    world = sheet.world
    cell_length(sheet, row, 2, '{off}', 'off', world.length(entry['check']['off']), 'deviation')
    one = next((one for one in laying['checks'] if one['entry'] == index), None)
    if one is None or row.cells[3] is None:
        return
    found = phrases.part(phrases.LOG_LIMITS, row.text(3))
    if found is None:
        return sheet.wrong('limits', row.text(3), phrases.LOG_LIMITS, row.cells[3])
    for field, exact in (('least', nm(one['least'])), ('most', nm(one['most'])), ('doubt', one['doubt_nm'])):
        sheet.length(row.cells[3], found, field, exact, f'limits: {field}')
    rule = row.text(3).find(' '.join(one['rule'].split()))
    if rule < 0:
        return sheet.wrong('rule of a check', row.text(3), one['rule'], row.cells[3])
    sheet.tell(row.cells[3], rule, rule + len(one['rule']))


def log_found(sheet, row, index, entry, laying, struck):
    cell_length(sheet, row, 2, '{at=}', 'at', sheet.world.length(entry['found']['at']), 'as found')


LOG = {'mark': log_mark, 'units': log_units, 'gauge': log_gauge, 'set': log_set, 'gap': log_gap, 'check': log_check,
       'found': log_found}
