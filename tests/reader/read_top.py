"""Forms to write in, the pour card and the top of the walls."""
import math
import re

import phrases
from read_over import under
from read_weather import pour_weather
from sheets import read_table, take_paragraphs
from world import nm

GALLON = 3785.411784


def frame(sheet):
    """A sheet of several drawings, which are read each for itself."""


def reading_form(sheet):
    for page in sheet.pages:
        form_rows(sheet, page)
        take_paragraphs(sheet, page)


def form_rows(sheet, page):
    """What the rod must read at each point, where the job says how high the instrument stands."""
    world, asked = sheet.world, sheet.world.job.get('setting_out', {})
    bearing = nm(world.courses[1]['top']) - nm(world.courses[1]['unit_height']) - world.joint
    wanted = world.length(asked['backsight']) + world.length(asked.get('datum_over', '0"')) - bearing \
        if 'backsight' in asked else None
    points = []
    for row in read_table(sheet, page, phrases.HEADS['reading-form'], has_boxes=True):
        if not row.heading and row.text(0):
            points.append(row.text(0))
        passage = row.cells[1]
        found = phrases.whole('{at=}', passage.text) if passage is not None and not row.heading else None
        if found:
            sheet.length(passage, found, 'at', wanted, 'rod on the concrete')
    if points:
        sheet.same(points, [phrases.FORM_BENCHMARK] + [phrases.FORM_CORNER + name for name in world.corners]
                   + [phrases.FORM_MIDDLE + name for name in world.sides], 'points to read with the rod')


def bars_of(world, side, first, last):
    return [bar for bar in world.answer['bars']
            if bar['side'] == side and bar['first_course'] <= last and bar['last_course'] >= first]


def numbers_in(text):
    found = []
    for part in text.split(', '):
        low, _, high = part.partition('-')
        found += range(int(low), int(high or low) + 1)
    return found


def pour(sheet):
    world, at = sheet.world, None
    for page in sheet.pages:
        for row in read_table(sheet, page, phrases.HEADS['pour'], has_boxes=True):
            if row.heading:
                at = pour_heading(sheet, row.cells[0])
            elif at and row.text(0):
                pour_row(sheet, row, *at)
            elif at:
                pour_sum(sheet, row, *at)
    under(sheet)
    pour_weather(sheet)
    sheet.same(at is not None and at[1], len(world.courses), 'the last pour ends at the top')


def pour_heading(sheet, passage):
    found = phrases.part(phrases.POUR_HEADING, passage.text)
    if not found:
        return sheet.wrong('heading of a pour', passage.text, phrases.POUR_HEADING, passage)
    first, last = sheet.world.courses[int(found['first'])], sheet.world.courses[int(found['last'])]
    low = nm(first['top']) - nm(first['unit_height']) - sheet.world.joint
    sheet.length(passage, found, 'high', nm(last['top']) - low, 'height of a pour')
    sheet.length(passage, found, 'top', nm(last['top']), 'top of a pour')
    return int(found['first']), int(found['last'])


def grout_of(sheet, first, last):
    return next(one for one in sheet.world.answer['counts']['grout']
                if one['first_course'] == first and one['last_course'] == last)


def same_amount(sheet, passage, text, centimetres, parts, of):
    """Printed to a tenth of a gallon or litre; each part of the sum was rounded to a cubic centimetre."""
    found = re.fullmatch(r'([0-9]+\.[0-9]) (gal|litres)( \(([0-9]+) bags? of 80 lb\))?( \*)?', text)
    one = GALLON if found and found[2] == 'gal' else 1000
    told = found and abs(float(found[1]) - centimetres / one) <= 0.05 + 0.5 * parts / one + 1e-9
    sheet.same(bool(told), True, f'{of}: {text} for {centimetres} cubic centimetres', passage)
    sheet.same(found and found[2], 'gal' if sheet.world.answer['job']['tape'] == 'inches' else 'litres',
               f'{of}: read as the job is taped', passage)
    sheet.claim_all(passage)
    if found and found[4]:  # bags of 0.6 cu ft
        sheet.same(int(found[4]), math.ceil(centimetres / (0.6 * 28316.846592) - 1e-9), f'{of}: bags', passage)


def pour_sum(sheet, row, first, last):
    """Beams, lintels, all of it, and what is ordered: a tenth more."""
    grout, what = grout_of(sheet, first, last), row.text(2)
    amounts = {'Bond beams': (grout['beams'], 1), 'Lintels of units': (grout['lintels'], 1),
               'Goes into this pour': (grout['all'], 1), 'To order: 10 in 100 more': (grout['all'], 1.1)}
    sheet.same(what in amounts, True, f'a sum of a pour: {what}', row.cells[2])
    if what in amounts:
        volume, share = amounts[what]
        same_amount(sheet, row.cells[3], row.text(3), volume['cubic_centimetres'] * share, 1, what)


def pour_row(sheet, row, first, last):
    world, side = sheet.world, row.text(0)
    round_bars = [one['volume']['cubic_centimetres'] for one in grout_of(sheet, first, last)['columns']
                  if one['side'] == side]
    same_amount(sheet, row.cells[3], row.text(3), sum(round_bars), len(round_bars), f'{side}: grout')
    bars = bars_of(world, side, first, last)
    sheet.same(row.text(1), str(len(bars)), f'{side}: cells', row.cells[0])
    if row.cells[2] is not None:
        check_bars(sheet, row, row.cells[2], bars)


def top_rows(sheet, page):
    """A row for each wall; the list is never longer than its sheet here."""
    last, seen = sheet.world.courses[max(sheet.world.courses)], []
    for row in read_table(sheet, page, phrases.HEADS['top'], has_boxes=True):
        seen.append(row.text(0))
        found = phrases.whole('{at=}', row.text(1))
        if found:
            sheet.length(row.cells[1], found, 'at', nm(last['top']), 'top of the wall')
        top_bars(sheet, row, last['number'])
    sheet.same(seen, list(sheet.world.sides), 'walls listed')


def top_bars(sheet, row, course):
    """Dowels whose bars reach the top; places of bars without a dowel."""
    world, passage = sheet.world, row.cells[5]
    if row.text(0) not in world.sides or passage is None:
        return
    bars = [bar for bar in bars_of(world, row.text(0), 1, course) if bar['last_course'] == course]
    check_bars(sheet, row, passage, bars)


def check_bars(sheet, row, passage, bars):
    world, side = sheet.world, row.text(0)
    listed = {nm(dowel['at']): dowel['number'] for dowel in world.answer['dowels'] if dowel['side'] == side}
    wanted = sorted(listed[nm(bar['centre'])] for bar in bars
                    if bar['first_course'] == 1 and nm(bar['centre']) in listed)
    told = passage.text.split(';')[0].removeprefix('dowels ') if passage.text.startswith('dowels ') else ''
    sheet.same(numbers_in(told) if told else [], wanted, f'{side}: dowels', row.cells[0])
    others = [nm(bar['centre']) for bar in bars if bar['first_course'] != 1 or nm(bar['centre']) not in listed]
    sheet.claim_all(passage)
    values = sorted({round(one.value / world.step) for one in passage.lengths})
    sheet.same(values, sorted({round(other / world.step) for other in others}), f'{side}: bars without dowel', passage)
