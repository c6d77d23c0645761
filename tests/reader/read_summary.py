"""The summary: sizes, tallies, counts of units by kind, what is bought; and the sides on a plan."""
from collections import Counter

import phrases
from lengths import agrees
from read_lintels import floors
from sheets import read_table, take_paragraphs
from world import nm

# ---- summary ---------------------------------------------------------------------------------------------------------

def rows_by_level(sheet, page, left):
    """Texts right of `left`, by level, each row from left to right."""
    rows = {}
    for text in sheet.texts(page):
        if not text.turned and text.left >= left:
            rows.setdefault(round(text.top), []).append(text)
    return [sorted(row, key=lambda text: text.left) for _, row in sorted(rows.items())]


def summary_left(page):
    return next(text.left for text in page.texts if text.text == phrases.SUMMARY_HEIGHT) - 1


def summary(sheet):
    page = sheet.pages[0]
    for row in rows_by_level(sheet, page, summary_left(page)):
        summary_row(sheet, page, row)
    check_units(sheet)
    check_sides(sheet)
    read_side_dimensions(sheet, page, summary_left(page))
    take_paragraphs(sheet, page)
    breakage, found = sheet.find(phrases.SUMMARY_BREAKAGE)
    percent = sheet.world.job['units'].get('breakage')
    template = 1 if percent else 0 if percent is None else 2
    sheet.same(found and found.re.pattern, phrases.patterns(phrases.SUMMARY_BREAKAGE)[template].pattern, 'breakage')
    if found and template < 2:
        sheet.same(int(found['percent']), 5 if percent is None else percent, 'breakage', breakage)


def summary_row(sheet, page, row):
    answer, label = sheet.world.answer, row[0].text
    if label in phrases.SUMMARY_COUNTS and len(row) == 2:
        group, name = phrases.SUMMARY_COUNTS[label]
        passage = sheet.take(row)
        sheet.same(row[1].text, str(answer[group][name]), label, passage)
        if label == 'Units laid':
            sheet.same(row[1].text, str(sum(len(p) for p in sheet.world.pieces.values())), 'units placed', passage)
    elif label == phrases.SUMMARY_CUTS_LABEL and len(row) == 2:
        passage = sheet.take(row)
        match = phrases.whole(phrases.SUMMARY_CUTS, row[1].text)
        cuts = [piece.length for pieces in sheet.world.pieces.values() for piece in pieces if piece.cut != 'none']
        sheet.same(match and int(match['cuts']), len(cuts), 'cuts placed', passage)
        sheet.same(answer['cost']['cuts'], len(cuts), 'cuts of the answer', passage)
        if match and cuts:
            sheet.same(int(match.groupdict().get('lengths') or 0), len(set(cuts)), 'lengths of cuts', passage)
    elif label == phrases.SUMMARY_HEIGHT and len(row) == 2:
        passage = sheet.take([row[1]])
        match = phrases.whole('{at=}', passage.text)
        sheet.length(passage, match, 'at', nm(answer['courses'][-1]['top']), 'datum to top')
    elif label == phrases.SUMMARY_COURSES_LABEL and len(row) == 2:
        passage = sheet.take(row[1:])
        match = phrases.whole(phrases.SUMMARY_COURSES[::-1], passage.text)
        sheet.same(match and match['courses'], str(len(answer['courses'])), 'courses', passage)
    elif label == phrases.SUMMARY_BARS_LABEL and len(row) == 2 and answer['bars']:
        labels = [text.top for text in page.texts if abs(text.left - row[0].left) < 1 and text.top > row[0].top + 1]
        below = [text for text in sheet.texts(page) if abs(text.left - row[1].left) < 1
                 and row[1].top < text.top < min(labels, default=0) - 1]
        passage = sheet.take([row[1]] + below)
        match = phrases.whole(phrases.SUMMARY_BARS, passage.text)
        if match is None:
            return sheet.wrong('bars', passage.text, phrases.SUMMARY_BARS, passage)
        bars = answer['bars']
        sheet.same(int(match['count']), len(bars), 'count of bars', passage)
        tops = {row['number']: nm(row['top']) for row in answer['courses']}
        feet = {row['number']: nm(row['top']) - nm(row['unit_height']) - sheet.world.joint for row in answer['courses']}
        sheet.length(passage, match, 'total', sum(tops[b['last_course']] - feet[b['first_course']] for b in bars),
                     'length of bars')
    elif label == phrases.SUMMARY_LINTELS_LABEL and len(row) == 2:
        passage = sheet.take(row)
        units = phrases.whole(phrases.SUMMARY_LINTELS_OF_UNITS, row[1].text)
        if units:
            built = [row for row in answer['openings'] if row.get('lintel', {}).get('make') == 'built-up']
            broken = len(floors(sheet.world))
            sheet.same(int(units['count']), len(built), 'lintels of units', passage)
            return sheet.same(int(units.groupdict().get('floors') or 0), broken, 'floors to break out', passage)
        match = phrases.part(phrases.SUMMARY_LINTEL, passage.text)
        lintels = Counter(one_piece_length(sheet.world, name) for name in sheet.world.openings
                          if one_piece_length(sheet.world, name) is not None)
        fits = [length for length in lintels if match and agrees(sheet.value(passage, match, 'length'), length,
                                                                 sheet.world.step)]
        if not fits:
            return sheet.wrong('one-piece lintels', passage.text, dict(lintels), passage)
        sheet.length(passage, match, 'length', fits[0], 'one-piece lintel')
        sheet.same(int(match['count']), lintels[fits[0]], 'one-piece lintels of a length', passage)


def one_piece_length(world, name):
    opening = world.openings[name]
    if opening.get('lintel', {}).get('make') != 'one-piece':
        return None
    placed = next((row for row in world.answer['lintels'] if row['opening'] == name), None)
    if placed is None:
        return None
    return nm(opening['to']) - nm(opening['from']) + nm(placed['start_bearing']) + nm(placed['end_bearing'])


def check_units(sheet):
    """Counts by kind, from the placed pieces; what is bought, from the answer's own pairing of cuts."""
    page, world = sheet.pages[0], sheet.world
    several = len(world.answer['series']) > 1
    whole, cuts = Counter(), Counter()
    for pieces in world.pieces.values():
        for piece in pieces:
            series = world.sides[piece.side].series['id'] if several else ''
            if piece.cut == 'none':
                whole[series, piece.kind] += 1
            else:
                cuts[series, piece.kind, piece.length] += 1
    buy = {(row['series'] if several else '', row['kind']): row['total'] for row in world.answer['counts']['to_buy']}
    percent = world.job['units'].get('breakage', 5)
    for row in world.answer['counts']['to_buy']:
        laid = whole[row['series'] if several else '', row['kind']] + row['for_saw']
        sheet.same(row['total'], laid - -laid * percent // 100, f'{row["kind"]} to buy, with {percent} % for breakage')
    parts, bought, whole_parts, whole_bought = Counter(), Counter(), Counter(), Counter()
    for row in world.answer['counts']['corner_set_parts']:
        named = row['part'] if row['work'] == 'none' else phrases.PART_WORKED.replace('{part~}', row['part'])
        parts[named] += row['count']
        bought[named] += row['total']
        whole_parts[row['part']] += row['count']
        whole_bought[row['part']] += row['total']
    for part, count in whole_parts.items():  # a part is bought once, whatever is then cut of it
        sheet.same(whole_bought[part], count - -count * percent // 100, f'{part} to buy, with {percent} % for breakage')
    check_sets(sheet, whole_parts)
    head = next((text for text in page.texts if text.text == phrases.HEADS['units'][1]), None)
    if head is None:
        return
    seen = set()
    for row in rows_by_level(sheet, page, summary_left(page)):
        if row[0].top <= head.top or len(row) < 2 or not all(text.text.isdigit() for text in row[1:]):
            continue
        series, name = '', row[0].text
        for one in world.series:
            if several and name.startswith(one + ' '):
                series, name = one, name[len(one) + 1:]
        if name in phrases.KINDS:
            kind = phrases.KINDS[name]
            passage = sheet.take(row)
            sheet.same([int(text.text) for text in row[1:]], [whole[series, kind], buy.get((series, kind))],
                       f'count of {name}', passage)
            seen.add((series, kind))
        elif phrases.whole(phrases.SUMMARY_CUT, name) or part_named(parts, name):
            name = part_named(parts, name) or name
            passage = sheet.take(row)
            check_cut_or_part(sheet, passage, row, name, cuts, (parts, bought))
    full = any(phrases.KINDS.get(text.text) for text in page.texts)
    missing = [kind for kind in whole if kind not in seen]
    if missing and full and not any('lists behind' in text.text for text in page.texts):
        sheet.wrong('kinds without a count', 'none', missing)


def part_named(parts, printed):
    """The part whose name begins so: a long name goes on in the next line."""
    fits = [name for name in parts if name == printed or (len(printed) > 20 and name.startswith(printed))]
    return fits[0] if len(fits) == 1 else None


def check_sets(sheet, parts):
    """Every placed corner set has each of its parts once."""
    sets = sum(piece.kind == 'corner-set' for pieces in sheet.world.pieces.values() for piece in pieces)
    for part, count in parts.items():
        if len(sheet.world.series) == 1:
            sheet.same(count % max(sets, 1), 0, f'{part} for each of {sets} corner sets')


def check_cut_or_part(sheet, passage, row, name, cuts, parts):
    world = sheet.world
    match = phrases.whole(phrases.SUMMARY_CUT, name)
    if match is None:
        sheet.claim_all(passage)
        sheet.same([int(text.text) for text in row[1:]], [part[name] for part in parts], f'count of {name}', passage)
        return
    kind = match['kind']
    for series in world.series:
        kind = kind.removeprefix(series + ' ')
    fits = [key for key in cuts if key[1] == phrases.KINDS.get(kind)
            and agrees(sheet.value(passage, match, 'length'), key[2], world.step)]
    if not fits:
        return sheet.wrong('cut length', name, sorted({sheet.book.text(key[2]) for key in cuts}), passage)
    sheet.length(passage, match, 'length', fits[0][2], 'cut length')
    sheet.same(int(row[-1].text), sum(cuts[key] for key in fits), f'count of {name}', passage)


def check_sides(sheet):
    """Sizes of sides and how many units each has, on the summary or on sheets of their own."""
    world, seen = sheet.world, set()
    for page in sheet.pages:
        for row in read_table(sheet, page, phrases.HEADS['sides']):
            side = world.sides.get(row.text(0))
            if side is None:
                continue
            seen.add(side.name)
            for column, exact in ((1, side.nominal), (2, side.actual)):
                match = phrases.whole('{at=}', row.text(column))
                if match is None:
                    sheet.wrong(f'size of {side.name}', row.text(column), sheet.book.text(exact), row.cells[0])
                    continue
                sheet.length(row.cells[column], match, 'at', exact, f'size of {side.name}')
            units = sum(len(pieces) for (name, _), pieces in world.pieces.items() if name == side.name)
            sheet.same(row.text(3), str(units), f'units of {side.name}', row.cells[3])
    return seen


def sides(sheet):
    seen = check_sides(sheet)
    sheet.same(sorted(seen), sorted(sheet.world.sides), 'sides listed')


def read_side_dimensions(sheet, page, right=None):
    """The name and length of each side on a plan, once for each. `right`: what stands from there on is no plan."""
    texts, named = sheet.texts(page), []
    for first, second in zip(texts, texts[1:]):
        side = sheet.world.sides.get(first.text)
        if side is None or not second.lengths() or id(first) in sheet.taken or first.turned != second.turned:
            continue
        passage = sheet.take([first, second])
        match = phrases.whole(phrases.SIDE_DIMENSION, passage.text)
        if match:
            named.append(side.name)
            sheet.length(passage, match, 'length', side.actual, f'length of {side.name}')
            upright = side.along[0] == 0
            sheet.same(first.turned, upright, f'{side.name} is drawn along its heading', passage)
    # A short side has its length alone, or its name: a length then is one of a side that runs so and has none yet.
    left = [side for side in sheet.world.sides.values() if side.name not in named and not side.interior]
    for text in sheet.texts(page):
        if not text.lengths() or not phrases.whole('{length}', text.text) or (right is not None and text.left >= right):
            continue
        fits = [side for side in left if agrees(text.lengths()[0].value, side.actual, sheet.world.step)
                and text.turned == (side.along[0] == 0)]
        passage = sheet.take([text])
        sheet.claim_all(passage)
        if not fits:
            sheet.wrong('length of a side', text.text, [f'{side.name} {sheet.book.text(side.actual)}'
                                                        for side in left], passage)
            continue
        left.remove(fits[0])


