"""The order of filling, joint reinforcement, and what is in each side: against the answer's own lists."""
import re

import phrases
from read_top import numbers_in, same_amount
from sheets import read_table, take_paragraphs
from world import nm


def order(sheet):
    """Lift by lift each place in its turn, with its amount and what is in by then."""
    cards, left, number = sheet.world.answer['pour_cards'], [], 0
    for page in sheet.pages:
        for row in read_table(sheet, page, phrases.HEADS['filling']):
            if row.heading and left and lift_heading(sheet, row.cells[0], cards[number - 1]):
                continue  # said again where a sheet begins in the middle of a lift
            if row.heading:
                sheet.same(left, [], 'places left out of a lift', row.cells[0])
                card = cards[number] if number < len(cards) else None
                if card is None:
                    return sheet.wrong('lift', row.text(0), 'one of the answer', row.cells[0])
                if left == [] and lift_heading(sheet, row.cells[0], card):
                    number, left = number + 1, list(card['steps'])
                continue
            for first in (0, 4, 8):
                if row.text(first) and left:
                    place(sheet, row, first, left.pop(0))
        take_paragraphs(sheet, page)
    for passage in sheet.passages:
        sheet.book.published.check(sheet, passage)
    sheet.same(left, [], 'places left out of a lift')
    sheet.same(number, len(cards), 'lifts')


def lift_heading(sheet, passage, card):
    found = phrases.part(phrases.LIFT, passage.text)
    if not found:
        return sheet.wrong('heading of a lift', passage.text, phrases.LIFT, passage)
    for field in ('pour', 'lift', 'first_course', 'last_course'):
        sheet.same(int(found[field.removesuffix('_course')]), card[field], f'lift: {field}', passage)
    sheet.same(found['corner'], next(iter(sheet.world.sides.values())).start, 'corner that the walk begins at', passage)
    sheet.length(passage, found, 'high', nm(card['height']), 'height of a lift')
    foot = 304_800_000 if sheet.world.inches else 100_000_000
    sheet.length(passage, found, 'walk', (nm(card['walk']) + foot // 2) // foot * foot, 'walk of a lift')
    return True


def place(sheet, row, first, step):
    name = {'cell': f'{step["side"]} {step["name"]}', 'beam': f'{step["side"]}, beam {step["name"]}',
            'lintel': f'{step["side"]}, lintel {step["name"]}'}[step['into']]
    found = re.fullmatch(r'(.*) from (.*)', row.text(first)) if step['into'] == 'beam' else None
    sheet.same(found[1] if found else row.text(first), name, 'place to fill', row.cells[first])
    if found:
        sheet.claim_all(row.cells[first])
    for column, amount in ((1, step['volume']), (2, step['total'])):
        same_amount(sheet, row.cells[first + column], row.text(first + column), amount['cubic_centimetres'], 1, name)


def wire(sheet):
    """Each stretch with its beds, places, pieces; sums."""
    world, seen = sheet.world, []
    asked = world.answer['joint_reinforcement']
    for page in sheet.pages:
        for row in read_table(sheet, page, phrases.HEADS['wire']):
            if not row.heading and row.text(0):
                seen += stretch(sheet, row, asked)
            elif row.text(2) in phrases.WIRE_SUMS:
                said = row.text(2)
                sheet.same(int(re.match(r'\d+', row.text(3)).group()), asked[phrases.WIRE_SUMS[said]], said, row.cells[3])
                corners = phrases.whole(phrases.WIRE_CORNERS, row.text(3))
                if corners:
                    sheet.length(row.cells[3], corners, 'leg', nm(asked['leg']), 'leg of a corner')
        take_paragraphs(sheet, page)
    wanted = [(one['side'], one['course'], nm(one['from'])) for one in asked['stretches'] if one['pieces']]
    sheet.same(sorted(seen), sorted(wanted), 'stretches of joint reinforcement')
    told = 0
    for passage in sheet.passages:
        sheet.book.published.check(sheet, passage)
        found = phrases.part(phrases.WIRE, passage.text)
        if found:
            told += 1
            for field in ('stock', 'lap', 'leg'):
                sheet.length(passage, found, field, nm(asked[field]), f'{field} of joint reinforcement')
    sheet.same(told > 0, True, 'note of what joint reinforcement is cut from')


def stretch(sheet, row, asked):
    found = phrases.whole('{from=} – {to=}', row.text(2))
    courses = numbers_in(row.text(1))
    if not found:
        return []
    alike = [one for one in asked['stretches'] if one['side'] == row.text(0) and one['course'] in courses
             and one['pieces'] and abs(nm(one['from']) - found_length(row.cells[2], 0)) * 2 <= sheet.world.step]
    sheet.same(sorted(one['course'] for one in alike), sorted(courses), 'beds of a stretch', row.cells[1])
    for one in alike[:1]:
        sheet.length(row.cells[2], found, 'from', nm(one['from']), 'start of a stretch')
        sheet.length(row.cells[2], found, 'to', nm(one['to']), 'end of a stretch')
        sheet.same(row.text(3), str(one['pieces']), 'pieces in each bed', row.cells[3])
        last = phrases.whole('{last=}', row.text(4))
        if last:
            sheet.length(row.cells[4], last, 'last', nm(one['last']), 'last piece')
    return [(one['side'], one['course'], nm(one['from'])) for one in alike]


def found_length(passage, which):
    return passage.lengths[which].value


def hidden(sheet):
    """The middles of each side's bars, as its note has them: those of its own dowels and others."""
    world = sheet.world
    for page in sheet.pages:
        take_paragraphs(sheet, page)
    named = [one.split(':')[0].strip() for page in sheet.pages for one in page.texts[0].text.split(';')]
    sides, told = [world.sides.get(name) for name in named], 0
    for passage in sheet.passages:
        found = re.search(phrases.MIDDLES, passage.text)
        if not found:
            continue
        side = sides[told] if told < len(sides) else None
        told += 1
        if side:
            sheet.same(found['corner'], side.start, 'corner that bars are measured from', passage)
        wanted = sorted({bar[0] for bar in world.bars_on(side.name)}) if side else []
        sheet.claim_all(passage)
        printed = sorted(one.value for one in passage.lengths)
        alike = len(printed) == len(wanted) and all(
            abs(one - bar) * 2 <= world.step for one, bar in zip(printed, wanted))
        sheet.same(alike, True, f'middles of bars from {found["corner"]}: {len(wanted)}', passage)
    sheet.same(told, len(sides), 'notes of bars, one for each side')
