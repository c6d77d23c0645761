"""Days and their chart, what comes when, where pallets stand: worked out from the job and the placed pieces."""
import datetime
import re
from fractions import Fraction

import phrases
from lengths import INCH, MM, agrees
from read_order import UNIT_NAMES
from sheets import Passage, read_table, take_paragraphs
from world import nm

ACCESS = 48 * INCH      # 29 CFR 1926.706(a): the wall's height and 4 ft
EIGHT_FEET = 96 * INCH  # 29 CFR 1926.706(b): a wall over this is braced


def squeezed(text):
    return ' '.join(text.split())


def tell_all(sheet, rows):
    """Lengths of these tables that no quantity is compared with stand in words of the answer."""
    for row in rows:
        for cell in row.cells:
            if cell:
                open_ones = {one.start for one in cell.lengths} - cell.claimed
                cell.claimed |= open_ones
                cell.told |= open_ones


# ---- days ------------------------------------------------------------------------------------------------------------

def is_worked(job, date):
    days = job.get('days', {})
    names = ['monday', 'tuesday', 'wednesday', 'thursday', 'friday', 'saturday', 'sunday']
    worked = days.get('weekdays') or names[:5]
    return names[date.weekday()] in worked and date.isoformat() not in days.get('days_off', [])


def counted_entries(job, log='laid'):
    """Entries of a log that no standing strike names, strikes themselves left out."""
    entries = job.get(log, [])

    def struck(entry):
        return any(other.get('strike') == entry['id'] and not struck(other) for other in entries)
    return [entry for entry in entries if 'strike' not in entry and not struck(entry)]


def evening_of(job):
    """Up to which log and readings tell: the day of the newest entry, or the job's if that is later."""
    texts = [entry.get('when', '')[:10] for log in ('laid', 'readings') for entry in counted_entries(job, log)]
    dated = [text for text in texts if re.fullmatch(r'\d{4}-\d\d-\d\d', text)]
    return max(dated + [one for one in [job.get('days', {}).get('log_until')] if one], default=None)


def laid_courses(world):
    """(side, course) said to be laid."""
    there = set(world.sides)
    return {(entry['laid']['on'], entry['laid']['course']) for entry in counted_entries(world.job)
            if 'laid' in entry and entry['laid']['on'] in there and entry['laid']['course'] in world.courses}


def is_poured(world):
    """Whether something was entered on the footing or slab, or it was read itself."""
    corners = {name for side in world.sides.values() for name in (side.start, side.end)}
    rods = [entry['rod'] for entry in counted_entries(world.job, 'readings') if 'rod' in entry]
    on_it = any(rod.get('surface', 'bearing') == 'bearing' and ('on' in rod or rod['station'] in corners)
                for rod in rods)
    read = any('dowel' in entry or 'edge' in entry or entry.get('tape', {}).get('of') == 'poured'
               for entry in counted_entries(world.job, 'readings'))
    return on_it or read or any('units' not in entry for entry in counted_entries(world.job))


def goes_on(world):
    """Whether log and readings tell of work, or the job of a day up to which they do."""
    return is_poured(world) or 'log_until' in world.job.get('days', {})


def dates(world, count):
    """(number, date) of working days, counted on one by one from the first that is not behind."""
    job = world.job
    start = job.get('days', {}).get('start')
    evening = evening_of(job) if goes_on(world) else None
    one, first, number = datetime.timedelta(days=1), start and datetime.date.fromisoformat(start), 1
    if goes_on(world):
        if evening is None:
            return [(number + at, None) for at in range(count)]
        last = datetime.date.fromisoformat(evening)
        while first and first <= last:
            number += is_worked(job, first)
            first += one
        first = first or last + one
    if first is None:
        return [(number + at, None) for at in range(count)]
    found = []
    while len(found) < count:
        if is_worked(job, first):
            found.append((number + len(found), first.isoformat()))
        first += one
    return found


def check_done(sheet, passages):
    """What is behind: blocks of the courses that the log says are laid."""
    world, answer = sheet.world, sheet.world.answer
    told = [phrases.part(template, passage.text) for passage in passages
            for template in (phrases.DAYS_DONE, phrases.DAYS_UNDATED, phrases.DAYS_POURED, phrases.DAYS_POURED_UNDATED)]
    told = [one for one in told if one]
    sheet.same(bool(told), goes_on(world), 'what is behind')
    if not told:
        return 0
    behind = laid_courses(world)
    blocks = sum(len(run['pieces']) for run in answer['runs'] if (run['side'], run['course']) in behind)
    sheet.same([int(told[0].groupdict().get('laid', 0)), int(told[0]['all'])],
               [blocks, sum(len(run['pieces']) for run in answer['runs'])], 'blocks laid by the log')
    sheet.same(told[0].groupdict().get('evening'), evening_of(world.job), 'the evening up to which the log tells')
    return blocks


def height_of(world, course):
    """Of a course's top over what course 1 stands on."""
    first = world.courses[1]
    return nm(world.courses[course]['top']) - (nm(first['top']) - nm(first['unit_height']) - world.joint)


def with_rests(rows):
    """A row that goes on over the page is one: what has no day of its own belongs to the day before."""
    whole = []
    for row in rows:
        if whole and not row.text(0):
            whole[-1].cells = [Passage(one.texts + other.texts) if one and other else one or other
                               for one, other in zip(whole[-1].cells, row.cells)]
        else:
            whole.append(row)
    return whole


def days(sheet):
    world, answer = sheet.world, sheet.world.answer
    plan, rows = answer['programme'], []
    for page in sheet.pages:
        rows += read_table(sheet, page, phrases.HEADS['days'], has_boxes=True)
        take_paragraphs(sheet, page)
    for passage in sheet.passages:
        sheet.book.published.check(sheet, passage)
    rows = with_rests(rows)
    sheet.same(len(rows), -(-plan['minutes'] // plan['minutes_a_day']), 'days of the programme')
    laid = 0
    for at, (row, day, (number, date)) in enumerate(zip(rows, plan['days'], dates(world, len(rows))), 1):
        wanted = f'day {number}' if date is None else f'day {number} {date}'
        sheet.same(squeezed(row.text(0)), wanted, 'day', row.cells[0])
        works = [part_said(task, at, plan['minutes_a_day']) for task in plan['tasks']
                 if works_in(task, at, plan['minutes_a_day'])]
        sheet.same(day['works'], works, f'day {number}: work in the answer', row.cells[1])
        beside = day['stacked'] + day['steel'] + ([day['weather']] if day['weather'] else [])
        sheet.same(squeezed(row.text(1)), squeezed('. '.join(works + beside)), f'day {number}: work', row.cells[1])
        check_beside(sheet, row, day, date)
        laid += check_blocks(sheet, row, day, number)
        check_tonight(sheet, row, day, number)
    laid += check_done(sheet, sheet.passages)
    sheet.same(laid, sum(len(run['pieces']) for run in answer['runs']), 'blocks laid on all days')
    check_days_note(sheet, plan)
    tell_all(sheet, rows)


def check_beside(sheet, row, day, date):
    """Joint reinforcement stands on courses that have it; pallets are those of the plan; weather is the day's own."""
    answer = sheet.world.answer
    wired = answer['joint_reinforcement']['courses']
    for course in re.findall(r'Joint reinforcement on course (\d+)', ' '.join(day['steel'])):
        sheet.same(int(course) in wired, True, f'day {day["number"]}: wire on course {course}', row.cells[1])
    every = sheet.world.job.get('steel', {}).get('tie_every', 0)
    for course in re.findall(r'Ties? on course (\d+)', ' '.join(day['steel'])):
        sheet.same(every > 0 and int(course) % every, 0, f'day {day["number"]}: ties on course {course}', row.cells[1])
    pallets = ((answer.get('site') or {}).get('pallets') or {}).get('pallets', [])
    for name, numbers, side in re.findall(r'(.+?): pallets? (.+?) outside (\S+)', '\n'.join(day['stacked'])):
        for number in map(int, re.findall(r'\d+', numbers)):
            there = number <= len(pallets) and pallets[number - 1]['beside'] == side
            sheet.same(there, True, f'day {day["number"]}: {name} off pallet {number}', row.cells[1])
    forecast = [one for one in answer['weather'] if one['date'] == date]
    warned = any(one['rules'] for one in forecast)
    sheet.same(bool(day['weather']), warned, f'day {day["number"]}: weather', row.cells[1])


def part_said(task, number, length):
    """What is said of it that day: where its blocks are laid on more days than one, how many on this one. Blocks take
    the task's minutes evenly."""
    count, minutes = task['blocks'], task['finish'] - task['start']
    laid = sum((number - 1) * length < task['start'] - (-minutes * (one + 1) // count) <= number * length
               for one in range(count))
    return task['says'] if laid == count else re.sub(r'(\d+ blocks?)$', rf'{laid} of \1', task['says'])


def works_in(task, number, length):
    """Whether something is done of it that day; what takes no time stands on the day on which it begins."""
    low, high = (number - 1) * length, number * length
    if task['finish'] == task['start']:
        return low <= task['start'] < high
    return task['start'] < high and task['finish'] > low


def check_blocks(sheet, row, day, number):
    found = re.match(r'(\d+): ', row.text(2))
    if not found:
        sheet.same(row.text(2), '', f'day {number}: no blocks', row.cells[2])
        sheet.same(day['laid'], 0, f'day {number}: blocks', row.cells[1])
        return 0
    parts = [int(one) for one in re.findall(r'(\d+) [a-z]', row.text(2)[found.end():])]
    sheet.same(sum(parts), int(found[1]), f'day {number}: blocks by kind', row.cells[2])
    each = sheet.world.answer['programme']['batch']['blocks']
    batches = re.match(r'(\d+) batch', row.text(3))
    sheet.same(batches and int(batches[1]), -(-int(found[1]) // each), f'day {number}: batches', row.cells[3])
    return int(found[1])


NIGHT = re.compile(r"\s*(?P<sides>[^:]+?): (?:course (?P<course>\d+), (?P<high>.*?) high(?:, filled to course \d+)?"
                   r"|no course finished)(?:; blocks up to course (?P<begun>\d+), (?P<begun_high>.*?) high)?(?= |$)")


def nights_in(text):
    """The walls of one evening, as the sheet groups them: what is said of bracing comes after them."""
    at, found = 0, []
    while one := NIGHT.match(text, at):
        found.append(one)
        at = one.end()
    return found


def check_tonight(sheet, row, day, number):
    """Heights by the courses; the zone as wide as the highest wall without grout and 4 ft more; walls over 8 ft."""
    world, text, high, tall = sheet.world, squeezed(row.text(4)), 0, set()
    reached, told = {one['side']: one for one in day['reached']}, set()
    for night in nights_in(text):
        course, begun = int(night['course'] or 0), int(night['begun'] or night['course'] or 0)
        for side in night['sides'].split(', '):
            one = reached.get(side)
            told.add(side)
            sheet.same(one and (one['course'], one['begun']), (course, begun), f'day {number}: {side}', row.cells[4])
            if one and one['begun'] > one['grouted']:
                high = max(high, height_of(world, begun))
            if height_of(world, begun) > EIGHT_FEET:
                tall.add(side)
        for said, printed in ((course, night['high']), (begun, night['begun_high'])):
            if printed:
                claim_height(sheet, row.cells[4], printed, height_of(world, said), f'day {number}: height of {said}')
    sheet.same(told, {side for side, one in reached.items() if one['begun']}, f'day {number}: walls', row.cells[4])
    over = re.search(r'stands? over [^:]{1,20} tonight: braced', text)
    sheet.same(over is not None, bool(tall), f'day {number}: over 8 ft', row.cells[4])
    sheet.same(set(day['tall']), tall, f'day {number}: walls over 8 ft in the answer', row.cells[4])
    keep = re.search(r'keep (.*) clear on both sides', text)
    sheet.same(bool(keep), high > 0, f'day {number}: braced', row.cells[4])
    if keep:
        zone = row.cells[4].lengths[-1] if row.cells[4].lengths else None
        sheet.same(zone is not None and 0 <= zone.value - high - ACCESS < world.step, True,
                   f'day {number}: kept clear', row.cells[4])
        row.cells[4].claimed.update(one.start for one in row.cells[4].lengths[-1:])


def claim_height(sheet, cell, printed, height, what):
    near = [one for one in cell.lengths if one.text in printed and agrees(one.value, height, sheet.world.step)]
    sheet.same(bool(near), True, what, cell)
    cell.claimed.update(one.start for one in near)


def check_days_note(sheet, plan):
    chance = plan.get('chance')
    passage, found = sheet.find(phrases.DAYS_CHANCE)
    sheet.same(found is not None, chance is not None, 'chance of being done')
    if not found or not chance:
        return
    by = sheet.world.job['days']['finish_by']
    done = max([one['programmes'] for one in chance['days'] if one['date'] <= by], default=0)
    first = [next(one['date'] for one in chance['days'] if one['programmes'] * 10 >= chance['programmes'] * tenths)
             for tenths in (5, 9)]
    sheet.same([found['by'], int(found['done']), int(found['all']), found['half'], found['most']],
               [by, done, chance['programmes']] + first, 'chance of being done', passage)


# ---- the chart -------------------------------------------------------------------------------------------------------

def chart(sheet):
    """Each work is a box from its start to its end, on the days' own scale; waits are hatched."""
    plan, boxes, names = sheet.world.answer['programme'], [], 0
    length = plan['minutes_a_day']
    scale = None
    first = plan['days'][0]['number']
    for page in sheet.pages:
        numbers = {int(text.text): text.left for text in sheet.texts(page)
                   if text.text.isdigit() and text.top < 100}
        if len(numbers) < 2:
            return sheet.wrong('days over the chart', sorted(numbers), 'two at least')
        low, high = min(numbers), max(numbers)
        scale = (numbers[high] - numbers[low]) / ((high - low) * length)
        left = numbers[low] - (low - first) * length * scale - 800 / 1_000 * 72 / 25.4
        boxes += [((box.left - left) / scale, (box.right - left) / scale, box.fill)
                  for box in sheet.shapes(page).boxes if 3 < box.bottom - box.top < 12 and box.left > left - 1
                  and box.top < 560 and (box.right - box.left) < 600]
        take_paragraphs(sheet, page)
    wanted = sorted((task['start'], task['finish']) for task in plan['tasks'] if task['finish'] > task['start'])
    found = sorted(box[:2] for box in boxes)
    off = Fraction(1, 1) / Fraction(scale) if scale else 0  # a point: boxes are drawn to 1/100 of one
    for low, high in wanted:
        near = [one for one in found if abs(one[0] - low) <= off and abs(one[1] - high) <= off]
        if not near:
            sheet.wrong('a work in the chart', 'no box', f'minutes {low} to {high}')


# ---- what comes when -------------------------------------------------------------------------------------------------

def pounds(text):
    found = re.fullmatch(r'(\d+(?:\.\d+)?) ?(lb|kg)', text)
    return Fraction(found[1]) * (Fraction(45_359_237, 100_000_000) if found[2] == 'lb' else 1)


def weights_of(world):
    """Kilograms of one: by the job, as printed on bags, or a bar's."""
    found = {'mortar/premix': pounds('80 lb'), 'grout/bags': pounds('80 lb'), 'mortar/cement': pounds('94 lb'),
             'lime': pounds('50 lb')}
    found.update({one['article']: pounds(one['weight']) for one in world.job.get('order', {}).get('weights', [])})
    return found


def drops(sheet):
    world, answer = sheet.world, sheet.world.answer
    articles = {one['id']: one for one in answer['order']['articles']}
    by_name = {one['name']: one for one in articles.values()}
    rows = []
    for page in sheet.pages:
        rows += [row for row in read_table(sheet, page, phrases.HEADS['drops'], has_boxes=True)]
        pallet_rows = read_table(sheet, page, phrases.HEADS['pallets'], has_boxes=True)
        if pallet_rows:
            check_pallets(sheet, pallet_rows)
        take_paragraphs(sheet, page)
    weights, truck = weights_of(world), world.job.get('order', {}).get('truck')
    heads = [row for row in rows if not row.heading and not re.match(r'load \d', row.text(0)) and row.text(2)]
    listed = [one for one in articles.values() if one['counted'] and one['most'] > 0]
    text = ' '.join(squeezed(row.text(1)) for row in rows)
    for one in listed:
        sheet.same(f'{one["name"]}: {one["amount"]}' in text, True, f'comes: {one["name"]}')
    for row in rows:
        load = re.match(r'load (\d+) of (\d+)', row.text(0))
        if not load:
            continue
        weight = Fraction(0)
        for part in squeezed(row.text(1)).split('; '):
            name, amount = part.rsplit(': ', 1)
            one = by_name.get(name)
            if one is None:
                sheet.wrong('on a load', part, 'an article', row.cells[1])
            elif one['id'] in weights:
                weight += weights[one['id']] * int(amount.split(' ')[0])
        printed = pounds(row.text(2))
        names = [part.rsplit(': ', 1)[0] for part in squeezed(row.text(1)).split('; ')]
        if all(by_name.get(name, {}).get('id') in weights for name in names):
            unit = pounds('1 lb') if row.text(2).endswith('lb') else 1
            sheet.same(0 <= printed - weight < unit, True, f'weight of {row.text(0)}', row.cells[2])
        sheet.same(printed - pounds(truck) < 1, True, f'{row.text(0)}: not more than the truck carries', row.cells[2])
    sheet.same(bool(heads) or bool(rows), bool(listed), 'things that come')
    tell_all(sheet, rows)


# ---- pallets ---------------------------------------------------------------------------------------------------------

def pallets(sheet):
    rows = []
    for page in sheet.pages:
        rows += read_table(sheet, page, phrases.HEADS['pallets'], has_boxes=True)
        take_paragraphs(sheet, page)
    check_pallets(sheet, rows)


def check_pallets(sheet, rows):
    """As many as are ordered; none nearer to its wall than the wall is high and 4 ft more."""
    world, answer = sheet.world, sheet.world.answer
    kinds = {one['kind']: one['pallet'] for one in world.job.get('order', {}).get('kinds', []) if 'pallet' in one}
    wanted = []
    for one in answer['order']['articles']:
        kind = one['id'].rsplit('/', 1)[-1]
        if one['id'].startswith('unit/') and kind in kinds and kind in UNIT_NAMES:
            needed = one['net'] + one['spare']
            wanted += [f'{one["name"]}, {kinds[kind]} on the pallet'] * -(-needed // kinds[kind])
    wanted = [f'{number}. {one}' for number, one in enumerate(wanted, 1)]
    sheet.same([squeezed(row.text(0)) for row in rows], wanted, 'pallets')
    zone = height_of(world, max(world.courses)) + ACCESS
    actual = {one['name']: one['actual'] for one in answer['sides']}
    for row in rows:
        found = phrases.whole(phrases.PALLET_STANDS, squeezed(row.text(1)))
        if not found or found['side'] not in world.sides:
            sheet.wrong('where a pallet stands', row.text(1), phrases.PALLET_STANDS, row.cells[1])
            continue
        lengths = [one.value for one in row.cells[1].lengths]
        sheet.same(len(lengths), 2, 'along the wall, and off it', row.cells[1])
        sheet.same(lengths[-1] - zone >= 24 * INCH - world.step - 2 * MM, True, 'off the wall', row.cells[1])
        sheet.same(0 <= lengths[0] <= nm(actual[found['side']]), True, 'along the wall', row.cells[1])
    tell_all(sheet, rows)


def pallet_plan(sheet):
    """Numbers stand where the pallets do, on one scale, north up; its squares are pallets of 4 ft or 1200 mm."""
    world, answer = sheet.world, sheet.world.answer
    pallets = answer['site']['pallets']['pallets']
    page = sheet.pages[0]
    numbers = {int(text.text): ((text.left + text.right) / 2, (text.top + text.bottom) / 2)
               for text in sheet.texts(page) if text.text.isdigit()}
    sheet.same(sorted(numbers), list(range(1, len(pallets) + 1)), 'numbers of pallets')
    squares = [box for box in sheet.shapes(page).boxes if any(
        box.left < x < box.right and box.top < y < box.bottom for x, y in numbers.values())
        and abs((box.right - box.left) - (box.bottom - box.top)) < 0.1]
    sheet.same(len(squares), len(pallets), 'squares of pallets')
    take_paragraphs(sheet, page)
    if len(squares) != len(pallets) or len(numbers) != len(pallets):
        return
    side = 48 * INCH if world.job['tape'] == 'inches' else 1200 * MM
    scale = (squares[0].right - squares[0].left) / side
    x0, y0 = numbers[1]
    for number, one in enumerate(pallets, 1):
        x = x0 + (one['middle'][0] - pallets[0]['middle'][0]) * scale
        y = y0 - (one['middle'][1] - pallets[0]['middle'][1]) * scale
        # A square is drawn to 1/100 of a point: over the whole sheet that is a hundredth of it; numbers to a point.
        near = abs(numbers[number][0] - x) < 8 and abs(numbers[number][1] - y) < 8
        sheet.same(near, True, f'pallet {number} on the plan')
