"""The order list: each article with what it is made up of, worked out from the answer's counts and not its list."""
import re

import phrases
from read_bars import bought_read, buy_rows
from sheets import read_table, take_paragraphs
from world import nm

UNIT_NAMES = {
    'full': 'Whole block', 'half': 'Half block', 'corner': 'Corner block, both ends plain',
    'open-end': 'Open-end block, one end open', 'open-both': 'Open-end block, both ends open',
    'bond-beam': 'Bond-beam block', 'bond-beam-half': 'Bond-beam half block', 'lintel': 'Lintel (U) block',
    'lintel-half': 'Lintel (U) half block', 'sash': 'Sash block', 'sash-half': 'Sash half block',
    'cleanout': 'Cleanout block', 'cleanout-half': 'Cleanout half block', 'half-high': 'Half-high block',
    'half-high-half': 'Half-high half block', 'solid': 'Solid block',
}


def counted(answer):
    """What the list must say of each article that is counted: name to (needed, to order)."""
    titles = {series['id']: series['title'] for series in answer['series']}
    lists = {}
    for row in answer['counts']['to_buy']:
        if row['kind'] in UNIT_NAMES:
            lists[f"{UNIT_NAMES[row['kind']]}: {titles[row['series']]}"] = (row['whole'] + row['for_saw'], row['total'])
    for plan in answer['bars_from_stock']:
        stock = answer['bar_pieces']['stock']['text']
        lists[f"Bar {plan['size']}, {stock}"] = (plan['bars'], plan['bars'])
    bolts = sum(len(plate['bolts']) for plate in answer['plates'])
    if bolts:
        lists['Anchor bolt'] = (bolts, None)
    wires = answer['joint_reinforcement']
    if wires['to_buy']:
        lists['Joint reinforcement, pieces'] = (wires['to_buy'], None)
    if wires['to_buy'] and wires['corner_count'] and wires['corners_are'] == 'pieces':
        lists['Joint reinforcement, corners'] = (wires['corner_count'], wires['corner_count'])
    if wires['to_buy'] and wires['tee_count']:
        lists['Joint reinforcement, tees'] = (wires['tee_count'], wires['tee_count'])
    if answer['ties']['ties']:
        lists['Ties for inner walls'] = (len(answer['ties']['ties']), len(answer['ties']['ties']))
    if answer['dowels']:
        lists['Cap for a dowel'] = (len(answer['dowels']), len(answer['dowels']))
    return lists


def sizes_of(answer):
    """Lengths that articles are called by: of the blocks, bars and joint reinforcement as they are sold."""
    sizes = {nm(series[name]) for series in answer['series'] for name in ('full', 'thickness', 'height')}
    return sizes | {nm(answer['bar_pieces']['stock']), nm(answer['joint_reinforcement']['stock'])}


def sizes_in(sheet, cell, sizes):
    """Those are compared as quantities; others stand in the answer's words."""
    for one in cell.lengths:
        if round(one.value) in sizes:
            cell.claimed.add(one.start)
        else:
            sheet.tell(cell, one.start, one.start + 1)


def under_headings(sheet, rows, sizes):
    """Rows, each with the heading that it stands under."""
    listed, heading = [], ''
    for row in rows:
        if row.heading:
            heading = row.text(0)
            sizes_in(sheet, row.cells[0], sizes)
        else:
            listed.append((row, heading))
    return listed


def order(sheet):
    answer = sheet.world.answer
    wanted, seen = counted(answer), set()
    rows, ways = [], []
    priced = 'prices' in answer['order']
    for page in sheet.pages:
        rows += read_table(sheet, page, phrases.HEADS['order-priced' if priced else 'order'], has_boxes=True)
        ways += reckoned_rows(sheet, page)
        take_paragraphs(sheet, page)
    if ways:
        check_reckoned(sheet, ways)
    if priced:
        check_money(sheet, [row for row in rows if not row.heading], answer['order'])
    articles = answer['order']['articles']
    sizes = sizes_of(answer)
    listed = under_headings(sheet, rows, sizes)
    sheet.same(len(listed), len(articles), 'articles on the list')
    for (row, heading), article in zip(listed, articles):
        sheet.same(row.text(0), article['called'], 'article', row.cells[0])
        sheet.same(heading, article['group'], 'heading over the article', row.cells[0])
        sheet.same(row.text(1), article['amount'], 'amount', row.cells[1])
        for cell in row.cells:
            if cell:
                sizes_in(sheet, cell, sizes)
        called = (f'{row.text(0)}: {heading}', row.text(0))
        name = next((one for one in wanted if any(text.startswith(one) for text in called)), None)
        if name is None:
            continue
        seen.add(name)
        needed, to_order = wanted[name]
        made = re.match(phrases.ORDER_MADE, row.text(2))
        if not made:
            sheet.wrong('made up of', row.text(2), 'so many needed', row.cells[0])
            continue
        parts = [int(part) for part in made.groups(default='0')]
        sheet.same(parts[0], needed, f'{name}: needed', row.cells[2])
        amount = row.text(1).replace(' pieces', '').replace(' piece', '')
        printed = int((re.search(r'\d+$', amount) or re.search(r'^\d+', amount)).group())
        sheet.same(sum(parts), printed, f'{name}: needed, spare and to whole pallets', row.cells[2])
        if to_order is not None and not parts[2]:
            sheet.same(printed, to_order, f'{name}: to order', row.cells[1])
    sheet.same(sorted(set(wanted) - seen), [], 'articles that are not listed')


def check_money(sheet, rows, order):
    """Price and cost of each article that the job prices: price times amount, in hundredths of the currency."""
    stated = {one['article']: one['price'] for one in sheet.world.job['order']['prices']}
    for row, article in zip(rows, order['articles']):
        price = stated.get(article['id'])
        sheet.same(row.text(3), '' if price is None else price.split(' ')[0], f'{article["name"]}: price', row.cells[0])
        if price is None or article['sold_in'] not in ('each', 'bags', 'lengths'):
            continue
        cents = round(float(price.split(' ')[0]) * 100)
        printed = [round(float(one) * 100) for one in re.findall(r'\d+\.\d\d', row.text(4))]
        wanted = [cents * amount for amount in sorted({article['least'], article['most']})]
        sheet.same(printed, wanted, f'{article["name"]}: cost', row.cells[0])


def reckoned_rows(sheet, page):
    """Of the list where it stands on this page, alone or under the order list."""
    if not all(any(text.text == head for text in sheet.texts(page)) for head in phrases.HEADS['reckoned']):
        return []
    return [row for row in read_table(sheet, page, phrases.HEADS['reckoned']) if not row.heading]


def reckoned(sheet):
    rows, bought = [], {}
    for page in sheet.pages:
        rows += reckoned_rows(sheet, page)
        buy_rows(sheet, page, bought)  # which may stand under it
        take_paragraphs(sheet, page)
    check_reckoned(sheet, rows)
    if bought:
        bought_read(sheet, bought)


def check_reckoned(sheet, rows):
    """Each way in which an amount is reckoned, with what it comes to; the other rows are the answer's own words."""
    articles = [one for one in sheet.world.answer['order']['articles'] if one['figures']]
    wanted = [(article['name'] if at == 0 else '', figure) for article in articles
              for at, figure in enumerate(article['figures'])]
    first = next((at for at, row in enumerate(rows) if wanted and row.text(0) == wanted[0][0] and row.text(2)), None)
    if first is None:
        return sheet.wrong('ways of reckoning', [row.text(0) for row in rows], wanted[0][0] if wanted else 'none')
    for row, (name, figure) in zip(rows[first:], wanted):
        sheet.same(row.text(0), name, 'article that is reckoned', row.cells[0])
        sheet.same(row.text(2), figure['says'], 'way of reckoning', row.cells[2])
        printed = [int(number) for number in re.findall(r'\d+', row.text(1))]
        figures = sorted({figure['least'], figure['most']})
        if '/' not in row.text(1) and '.' not in row.text(1):
            sheet.same(printed, figures, 'amount by one way', row.cells[1])
        for cell in row.cells:
            if cell:
                sheet.claim_all(cell)
