"""What the forecast brings up, worked out from the job and the published limits, in degrees Celsius and kilometres."""
import re
from fractions import Fraction

import phrases
from sheets import read_table, take_paragraphs

MILE = Fraction(1_609_344, 1_000_000)  # km


def celsius(fahrenheit):
    return Fraction((fahrenheit - 32) * 5, 9)


def brought_up(day, inches):
    """Ids of the rules: TMS 602's stages of cold (each below its limit, 20 F and below the last), hot over 100 F, or over
    90 F with wind over 8 mph; wind over 20 mph."""
    degrees = {name: celsius(day[name]) if inches else Fraction(day[name]) for name in ('coldest', 'warmest') if name in day}
    wind = {name: day[name] * MILE if inches else Fraction(day[name]) for name in ('wind', 'gusts') if name in day}
    low, high = degrees.get('coldest'), degrees.get('warmest')
    found = set()
    if low is not None:
        found |= {name for name, limit in (('cold-below-40', 40), ('cold-40-to-32', 40), ('cold-32-to-25', 32),
                                           ('cold-25-to-20', 25), ('cold-ice', 32)) if low < celsius(limit)}
        if low <= celsius(20):
            found.add('cold-20')
    ends = [one for one in (low, high) if one is not None]
    if ends and sum(ends) / len(ends) < celsius(40):
        found.add('cold-cover')
    if high is not None and (high > celsius(100) or (high > celsius(90) and wind.get('wind', 0) > 8 * MILE)):
        found |= {'hot-above', 'hot-mortar', 'hot-cure'}
    if max(wind.values(), default=0) > 20 * MILE:
        found |= {'wind-leave', 'wind-first-day'}
    return found


SORTS = {'cold': 'cold-', 'heat': 'hot-', 'wind': 'wind-'}


def sorts_of(rules):
    return {name for name, start in SORTS.items() if any(one.startswith(start) for one in rules)}


def pour_weather(sheet):
    """The pour card's note: each pour on each day on which it is planned and the forecast brings something up."""
    world, plan = sheet.world, sheet.world.answer['programme']
    days = {day['date']: day for day in world.job.get('days', {}).get('forecast', [])}
    brought = {date: sorts_of(brought_up(day, world.job['tape'] == 'inches')) for date, day in days.items()}
    wanted = set()
    for number, day in enumerate(plan['days']):
        low, high = number * plan['minutes_a_day'], (number + 1) * plan['minutes_a_day']
        for task in plan['tasks']:
            touches = task['start'] < high and (task['finish'] > low or task['start'] == task['finish'] >= low)
            if task['work'] == 'grout-lift' and touches and brought.get(day.get('date')):
                pour = re.match(r'Pour (\d+): ', task['says'])[1]
                wanted.add((pour, day['date'], frozenset(brought[day['date']])))
    text = ' '.join(' '.join(passage.text.split()) for passage in sheet.passages)
    told = re.findall(r'Pour (\d+), (\S+): Forecast ([^:]*): do what the weather card says of ([a-z, ]+)\.', text)
    sheet.same(sorted((pour, date, sorted(re.findall('[a-z]+', sorts.replace(' and ', ' '))))
                      for pour, date, _, sorts in told),
               sorted((pour, date, sorted(sorts)) for pour, date, sorts in wanted), 'weather on days of pours')
    for _, date, figures, _ in told:
        asked = [str(days[date][name]) for name in ('coldest', 'warmest', 'wind', 'gusts') if name in days.get(date, {})]
        sheet.same(re.findall(r'-?\d+', figures), asked, f'{date}: as forecast')


def forecast(sheet):
    world, answer = sheet.world, sheet.world.answer
    rows = []
    for page in sheet.pages:
        rows += [row for row in read_table(sheet, page, phrases.HEADS['forecast']) if row.text(1)]
        take_paragraphs(sheet, page)
    days = sorted(world.job['days']['forecast'], key=lambda day: day['date'])
    inches = world.job['tape'] == 'inches'
    wanted = {day['date']: brought_up(day, inches) for day in days}
    sheet.same({day['date']: set(day['rules']) for day in answer['weather']}, wanted, 'what the forecast brings up')
    cards = {card['id']: card for card in answer['cards']}
    first = set().union(*wanted.values())
    sheet.same(len(rows), len(days) + len(first), 'rows: days, and rules that they bring up')
    for row, day in zip(rows, days):
        sheet.same(row.text(0).split(':')[0], day['date'], 'day of the forecast', row.cells[0])
        figures = [str(day[name]) for name in ('coldest', 'warmest', 'wind', 'gusts') if name in day]
        said = row.text(0).split(': ', 1)[1]
        sheet.same(all(figure in said for figure in figures), True, f'{day["date"]}: as forecast', row.cells[0])
        told = {name for name in SORTS if name in row.text(1).split(';')[0].replace(',', ' ').split()}
        sheet.same(told, sorts_of(wanted[day['date']]), f'{day["date"]}: what it brings up', row.cells[1])
    for row in rows[len(days):]:
        rule = next((one for one in first if ' '.join(cards[one]['says'].split()) == ' '.join(row.text(0).split())), None)
        sheet.same(rule is not None, True, 'a rule that is brought up', row.cells[0])
        if rule:
            sheet.same(' '.join(row.text(2).split()), ', '.join(date for date in wanted if rule in wanted[date]),
                       f'days of {rule}', row.cells[2])
        for cell in row.cells:
            if cell:
                sheet.tell(cell)
