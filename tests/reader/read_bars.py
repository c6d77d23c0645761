"""The bar schedule: marks with their lengths out of the pieces, where each goes, sums, and laps worked out again."""
from collections import defaultdict
from fractions import Fraction
from math import ceil
import re

import phrases
from lengths import INCH, MM
from sheets import read_table, take_paragraphs
from world import diameter, nm

# Kilograms for each metre: ASTM A615's table; metric bars from 7850 kg/m3.
MASSES = {'#3': '0.560', '#4': '0.994', '#5': '1.552', '#6': '2.235', '#7': '3.042', '#8': '3.973', '#9': '5.060',
          '#10': '6.404', '#11': '7.907', 'N12': '0.888', 'N16': '1.578', 'N20': '2.466', 'H10': '0.617', 'H12': '0.888',
          'H16': '1.578', 'H20': '2.466'}
PSI = Fraction('4.4482216152605') / Fraction('645.16') * 1  # one psi in MPa
GAMMA = {'tms': (Fraction('1'), Fraction('1.3'), Fraction('1.5')),
         'florida': (Fraction('1'), Fraction('1.04'), Fraction('1.2'))}


def psi(text, otherwise):
    """A stress as the job has it, in psi."""
    if text is None:
        return Fraction(otherwise)
    number, unit = text.split(' ')
    scale = {'psi': 1, 'ksi': 1000, 'MPa': 1 / PSI, 'N/mm2': 1 / PSI}[unit]
    return Fraction(number) * scale


def gamma(size, code):
    number = int(size[1:])
    eighths = number if size[0] == '#' else (5 if number <= 16 else 6)
    return GAMMA[code][0 if eighths <= 5 else 1 if eighths <= 7 else 2]


def on_step(lap, step):
    """Squares of laps are compared: the least step whose square is no less than `lap` (a square, in inches)."""
    low, high = 0, 1
    while (high * step) ** 2 < lap:
        high *= 2
    while high - low > 1:
        middle = (low + high) // 2
        low, high = (low, middle) if (middle * step) ** 2 >= lap else (middle, high)
    return high * step


def lap_of(world, table, choice):
    """What a rule gives, in nanometres: TMS 402 (5 or 9 db), Florida 2017, IBC, 40 and 48 db, as drawn."""
    stated = world.job.get('steel', {}).get('lap', {})
    own = stated.get('rule') != 'ibc'
    masonry, strength = psi(stated.get('masonry'), 1500), psi(stated.get('steel') if own else None, 60000)
    db, clear, step = (Fraction(one, INCH) for one in (diameter(table['size']), nm(table['clear']), world.step))
    rule = choice['rule']
    up = lambda length: ceil(length / step) * step
    if rule in ('40-bars', '48-bars'):
        return up(db * int(rule[:2])) * INCH
    if rule == 'as-drawn':
        return up(Fraction(world.length(stated['length']), INCH)) * INCH
    if rule == 'ibc':
        stress = psi(stated['steel'], 0) if not own and 'steel' in stated else Fraction(choice['steel_psi'])
        return max(up(db * stress * 2 / 1000), up(max(Fraction(12), db * 40))) * INCH
    k = min(clear, db * (9 if rule.endswith('2011') else 5))
    share = Fraction('0.13') * gamma(table['size'], 'florida' if rule.startswith('florida') else 'tms')
    lap = on_step((share * db * db * strength / k) ** 2 / masonry, step)
    if rule.startswith('florida'):
        return min(max(lap, up(db * 40)), up(db * 72)) * INCH
    return max(lap, up(Fraction(12))) * INCH


def names_a_rule(world):
    """Whether the job's lap rule has all that it needs."""
    lap = world.job.get('steel', {}).get('lap')
    needs = {'as-drawn': ['length'], 'ibc': ['steel'], '40-bars': [], '48-bars': []}
    return lap is not None and all(one in lap for one in needs.get(lap['rule'], ['masonry', 'steel']))


def ranges(numbers):
    """1, 3, 5-8."""
    parts, numbers = [], sorted(numbers)
    while numbers:
        end = 0
        while end + 1 < len(numbers) and numbers[end + 1] == numbers[end] + 1:
            end += 1
        if end >= 2:
            parts.append(f'{numbers[0]}-{numbers[end]}')
            numbers = numbers[end + 1:]
        else:
            parts.append(str(numbers.pop(0)))
    return ', '.join(parts)


def courses(first, last):
    return f'course {first}: ' if first == last else f'courses {first} to {last}: '


def where_words(world, pieces):
    """The words of a mark's places without the lengths among them, and those lengths."""
    upright = pieces[0]['use'] in ('dowel', 'upright')
    groups, places = defaultdict(list), []
    for piece in pieces:
        groups[piece['first_course'], piece['last_course']].append(piece)
    parts = []
    for (first, last), there in sorted(groups.items()):
        if not upright:
            key = {'lintel': 'opening', 'corner': 'corner'}.get(there[0]['use'], 'side')
            before = {'lintel': 'over ', 'corner': 'at '}.get(there[0]['use'], '')
            parts.append(courses(first, last) + before + ', '.join(dict.fromkeys(one[key] for one in there)))
            continue
        sides = []
        for side in world.sides:
            own = [one for one in there if one['side'] == side]
            numbers = [one['number'] for one in own if one['number']]
            if numbers:
                sides.append(f'{side} {ranges(numbers)}')
            places += [nm(one['at']) for one in own if not one['number']]
            if len(numbers) < len(own):
                sides.append(f'{side} at ...')
        parts.append(courses(first, last) + ', '.join(sides))
    return '; '.join(parts), places


def same_words(printed, wanted):
    """Alike where `wanted` has dots for lengths."""
    at = 0
    for part in wanted.split('...'):
        found = printed.find(part, at)
        if found < 0:
            return False
        at = found + len(part)
    return True


def mark_row(sheet, row, pieces):
    bars = sheet.world.answer['bar_pieces']
    if not row.text(0).isdigit() or not 0 < int(row.text(0)) <= len(bars['marks']):
        return sheet.wrong('mark', row.text(0), f"1 to {len(bars['marks'])}", row.cells[0])
    number = int(row.text(0))
    mark, own = bars['marks'][number - 1], [one for one in pieces if one['mark'] == number]
    sheet.same((row.text(1), row.text(2)), (mark['size'], str(len(own))), f'mark {number}', row.cells[0])
    legs = 2 if mark['use'] == 'corner' else 1
    lengths = {(nm(one['to']) - nm(one['from'])) * legs for one in own}
    sheet.same(lengths, {nm(mark['length'])}, f'mark {number}: pieces alike', row.cells[0])
    found = phrases.whole('{at=}', row.text(4))
    if found:
        sheet.length(row.cells[4], found, 'at', min(lengths), f'mark {number}: length')
    if legs == 2:
        found = phrases.whole(phrases.BAR_LEGS, row.text(3))
        if found:
            sheet.length(row.cells[3], found, 'leg', min(lengths) // 2, f'mark {number}: leg')
    else:
        sheet.same(row.text(3), phrases.BAR_STRAIGHT, f'mark {number}: shape', row.cells[3])
    words, places = where_words(sheet.world, own)
    sheet.same(same_words(row.text(5), words), True, f'mark {number}: where, {row.text(5)} for {words}', row.cells[5])
    step = sheet.world.step
    sheet.claim_all(row.cells[5])
    sheet.same({round(one.value / step) for one in row.cells[5].lengths}, {round(Fraction(one, step)) for one in places},
               f'mark {number}: places', row.cells[5])
    return number


def total_row(sheet, row, pieces):
    bars, size = sheet.world.answer['bar_pieces'], row.text(1)
    kinds = {mark['use'] for mark in bars['marks'] if mark['size'] == size}
    own = [one for one in pieces if one['use'] in kinds and one['use'] != 'dowel'
           and bars['marks'][one['mark'] - 1]['size'] == size]
    length = sum((nm(one['to']) - nm(one['from'])) * (2 if one['use'] == 'corner' else 1) for one in own)
    sheet.same(row.text(2), str(len(own)), f'{size}: bars in all', row.cells[1])
    found = phrases.whole('{at=}', row.text(4))
    if found:
        sheet.length(row.cells[4], found, 'at', length, f'{size}: length in all')
    kilograms = Fraction(length, 10 ** 9) * Fraction(MASSES[size])
    mass = kilograms / Fraction('0.45359237') if sheet.world.inches else kilograms
    printed = row.text(5).split(' ')
    # Rounded to a whole one of a mass that was rounded to a gram.
    told = printed[0].isdigit() and abs(int(printed[0]) - mass) <= Fraction(1, 2) + Fraction(2, 1000)
    sheet.same((told, printed[-1]), (True, 'lb' if sheet.world.inches else 'kg'), f'{size}: mass', row.cells[5])


def buy_heading(sheet, passage, plan):
    found = phrases.whole(phrases.BAR_BUY, passage.text)
    bars = sheet.world.answer['bar_pieces']
    sheet.length(passage, found, 'stock', nm(bars['stock']), 'stock of bars')
    fewest = phrases.BAR_FEWEST if plan['least'] == plan['bars'] else phrases.BAR_AT_LEAST.format(least=plan['least'])
    sheet.same((found['size'], int(found['bars']), found['fewest']), (plan['size'], plan['bars'], fewest),
               'bars to buy', passage)


def cut_row(sheet, row, plan, pattern):
    """One way to cut a bar: so many of each mark, and what is over."""
    bars = sheet.world.answer['bar_pieces']
    cuts = [(count, mark) for count, mark in zip(pattern['cuts'], plan['marks']) if count]
    sheet.same(row.text(0), str(pattern['times']), 'bars cut alike', row.cells[0])
    told = [(int(found['count']), int(found['mark'])) for found in re.finditer(phrases.BAR_CUT, row.text(1))]
    sheet.same(told, cuts, 'cuts of a bar', row.cells[1])
    sheet.claim_all(row.cells[1])
    sheet.same([round(one.value) for one in row.cells[1].lengths],
               [nm(bars['marks'][mark - 1]['length']) for _, mark in cuts], 'lengths cut of a bar', row.cells[1])
    used = sum(count * (nm(bars['marks'][mark - 1]['length']) + nm(bars['kerf'])) for count, mark in cuts)
    found = phrases.whole('{left=}', row.text(2))
    if found is None:
        return sheet.wrong('what is left of a bar', row.text(2), 'a length', row.cells[2])
    return sheet.length(row.cells[2], found, 'left', max(0, nm(bars['stock']) - used), 'what is left of a bar')


def buy_rows(sheet, page, seen):
    """Bars to buy on one page; `seen`: what was read of it before."""
    for row in read_table(sheet, page, phrases.HEADS['bars-to-buy'], has_boxes=True):
        found = phrases.whole(phrases.BAR_BUY, row.text(0)) if row.heading else None
        plan = next((one for one in sheet.world.answer['bars_from_stock'] if found and one['size'] == found['size']), None)
        if plan:
            if seen.get('plan') is not plan:
                seen['bought'] = seen.get('bought', []) + [plan['size']]
                seen['cuts'] = list(plan['patterns'])
            seen['plan'] = plan
            buy_heading(sheet, row.cells[0], plan)
        elif row.heading or not seen.get('cuts'):
            sheet.wrong('row of bars to buy', row.text(0), 'a size, or a way to cut', row.cells[0])
        else:
            cut_row(sheet, row, seen['plan'], seen['cuts'].pop(0))


def bought_read(sheet, seen):
    plans, marks = sheet.world.answer['bars_from_stock'], sheet.world.answer['bar_pieces']['marks']
    sheet.same(seen.get('bought', []), [one['size'] for one in plans], 'sizes to buy')
    sheet.same(seen.get('cuts', []), [], 'ways to cut that are not listed')
    for plan in plans:
        for at, mark in enumerate(plan['marks']):
            cut = sum(one['times'] * one['cuts'][at] for one in plan['patterns'])
            sheet.same(cut, marks[mark - 1]['count'], f'mark {mark}: pieces cut')
    bars = sheet.world.answer['bar_pieces']
    passage, found = sheet.find(phrases.BAR_KERF)
    if found:
        sheet.length(passage, found, 'length', nm(bars['kerf']), 'what a cut takes')
        sheet.same(found['how'], 'as the job says' if bars['kerf_stated'] else 'assumed', 'what a cut takes', passage)


def lap_row(sheet, row, table, choice):
    lap = lap_of(sheet.world, table, choice)
    found = phrases.whole('{at=}', row.text(4))
    if found:
        sheet.length(row.cells[4], found, 'at', lap, f"lap by {choice['rule']}")
    sheet.same(Fraction(nm(choice['length'])), lap, f"lap by {choice['rule']} in the answer", row.cells[4])
    named = row.text(5).startswith(phrases.BAR_RULES[choice['rule']])
    sheet.same(named, True, f"rule of a lap: {row.text(5)}", row.cells[5])


def lap_heading(sheet, passage, table):
    found = phrases.whole(phrases.BAR_LAPS, passage.text)
    if not found:
        return sheet.wrong('heading of laps', passage.text, phrases.BAR_LAPS, passage)
    return sheet.length(passage, found, 'clear', nm(table['clear']), 'masonry round a bar')


def bar_rows(sheet, page, seen):
    """Rows of the schedule on one page; `seen`: what was read of it before."""
    bars = sheet.world.answer['bar_pieces']
    pieces = bars['pieces']
    for row in read_table(sheet, page, phrases.HEADS['bars'], has_boxes=True):
        text = row.text(0)
        if row.heading and text in phrases.BAR_USES:
            seen['part'] = 'marks'
        elif row.heading and text == phrases.BAR_TOTAL:
            seen['part'] = 'totals'
        elif row.heading:
            table = next((one for one in bars['laps'] if (one['use'] == 'beam') == ('in bond beams' in text)), None)
            if table is None:
                sheet.wrong('heading of bars', text, 'a use, a sum or laps', row.cells[0])
                continue
            if seen.get('part') is not table:
                seen['left'] = list(table['choices'])
            seen['part'] = table
            lap_heading(sheet, row.cells[0], table)
        elif seen.get('part') == 'marks':
            seen['marks'] = seen.get('marks', []) + [mark_row(sheet, row, pieces)]
        elif seen.get('part') == 'totals':
            seen['totals'] = seen.get('totals', []) + [row.text(1)]
            total_row(sheet, row, pieces)
        elif seen.get('left'):
            lap_row(sheet, row, seen['part'], seen['left'].pop(0))
            seen['laps'] = seen.get('laps', 0) + 1


def has_bars(sheet, page):
    return any(text.text == 'Shape' for text in sheet.texts(page))


def bars_read(sheet, seen):
    """Everything is listed once; the note's lengths."""
    bars = sheet.world.answer['bar_pieces']
    sheet.same(seen.get('marks', []), list(range(1, len(bars['marks']) + 1)), 'marks listed')
    sheet.same(seen.get('totals', []), [one['size'] for one in bars['totals']], 'sums listed')
    wanted = 0 if names_a_rule(sheet.world) else sum(len(one['choices']) for one in bars['laps'])
    sheet.same(seen.get('laps', 0), wanted, 'laps listed')
    for template, field in ((phrases.BAR_STOCK, 'stock'), (phrases.BAR_COVER, 'end_cover')):
        passage, found = sheet.find(template)
        if found:
            sheet.length(passage, found, 'length', nm(bars[field]), field)
            sheet.same(found['how'], 'as the job says' if bars[field + '_stated'] else 'assumed', field, passage)
    for passage in sheet.passages:
        sheet.book.published.check(sheet, passage)


def bar_schedule(sheet):
    seen = {}
    for page in sheet.pages:
        bar_rows(sheet, page, seen)
        take_paragraphs(sheet, page)
    bars_read(sheet, seen)
