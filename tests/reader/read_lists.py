"""Findings, schedules and lists: sizes, jambs, heights, cut lengths, the rod, the leads."""
import phrases
from read_bars import bought_read, buy_rows
from read_lintels import check_bearing
from read_over import under
from sheets import read_table, take_paragraphs
from lengths import agrees
from places import hook_in, shift_of
from read_summary import one_piece_length
from world import HALVES, nm

HOLD_POINTS = ['order', 'pour', 'first-course', 'lintels', 'grout', 'top']


def words_of(text):
    return ' '.join(text.split())


# ---- findings --------------------------------------------------------------------------------------------------------

def findings(sheet):
    world = sheet.world
    expected = sorted(world.answer['findings'], key=lambda row: HOLD_POINTS.index(row['hold_point']))
    wanted = {words_of(row['text']): row for row in expected}
    found, bought = [], {}
    for page in sheet.pages:
        buy_rows(sheet, page, bought)
        for cells in note_rows(sheet, page):
            for passage in cells:
                words = words_of(passage.text)
                rule = any(words == words_of(one['rule']) for one in expected)
                if words in wanted:
                    found.append(words)
                if words in wanted or rule or words == words_of(world.job.get('notes', '\0')):
                    sheet.tell(passage)
                else:
                    sheet.book.published.check(sheet, passage)
    sheet.same(sorted(found), sorted(wanted), 'findings')
    if bought:
        bought_read(sheet, bought)


def standards(sheet):
    """The rules; weather and wind may stand under them."""
    for page in sheet.pages:
        for cells in note_rows(sheet, page):
            for passage in cells:
                sheet.book.published.check(sheet, passage)
                check_series(sheet, passage)


def check_series(sheet, passage):
    """"8 in block, 7 5/8 x 7 5/8 x 15 5/8 in": nominal thickness and length; and the source of the series."""
    for row in sheet.world.series.values():
        if passage.text.startswith(row['source']):
            sheet.tell(passage)
        if passage.text == row['title'] and len(passage.lengths) == 2:
            nominal = nm(row['thickness']) + (nm(row['joint']) if passage.lengths[0].form == 'in' else 0)
            sheet.same([one.value for one in passage.lengths], [nominal, nm(row['full'])], 'title of the series',
                       passage)
            sheet.claim_all(passage)


def note_rows(sheet, page):
    """Rows between level lines, each cell one passage: columns by the texts' left edges."""
    shapes, texts = sheet.shapes(page), [text for text in sheet.texts(page) if not text.turned]
    levels = sorted({round(line.points[0][1], 1) for line in shapes.lines if len(line.points) == 2
                     and abs(line.points[0][1] - line.points[1][1]) < 0.01
                     and abs(line.points[0][0] - line.points[1][0]) > 400})
    levels = [0.0] + levels
    for top, bottom in zip(levels, levels[1:]):
        inside = [text for text in texts if top - 1 < text.y < bottom + 1 and id(text) not in sheet.taken]
        cells = {}
        for text in inside:
            cells.setdefault(round(text.left), []).append(text)
        yield [sheet.take(sorted(cell, key=lambda text: text.top)) for _, cell in sorted(cells.items())]


# ---- opening schedule ------------------------------------------------------------------------------------------------

def openings(sheet):
    world, seen = sheet.world, []
    for page in sheet.pages:
        for row in read_table(sheet, page, phrases.HEADS['openings']):
            seen.append(opening_row(sheet, row))
    sheet.same(seen, list(world.openings), 'openings listed')
    under(sheet)


def opening_row(sheet, row):
    world = sheet.world
    name = next((one for one in world.openings if row.text(0).startswith(one + ' ')), None)
    if name is None:
        sheet.wrong('opening', row.text(0), list(world.openings), row.cells[0])
        return row.text(0)
    opening = world.openings[name]
    side = world.sides[opening['side']]
    match = phrases.whole(phrases.OPENING_NAME, row.text(0))
    sheet.same(match and (phrases.OPENING_USES.get(match['use']), match['side']), (opening['use'], side.name),
               f'{name}: use and side', row.cells[0])

    def lengths(column, templates, exact):
        passage = row.cells[column]
        found = phrases.whole(templates, passage.text) if passage else None
        if found is None:
            return sheet.wrong(f'{name}: words', row.text(column), templates, passage)
        for field, value in exact.items():
            sheet.length(passage, found, field, value, f'{name}: {field}')
        return found

    soffit, underside = nm(opening['soffit']), nm(opening['underside'])
    lengths(1, phrases.OPENING_SIZE, {'wide': nm(opening['to']) - nm(opening['from']), 'high': soffit - underside})
    told = phrases.part(phrases.OPENING_JAMBS.split(':')[0] + ':', row.text(2))
    shift = shift_of(sheet, side, hook_in(told['hook']) if told else None, row.cells[2])
    lengths(2, phrases.OPENING_JAMBS, {'from': nm(opening['from']) + shift, 'to': nm(opening['to']) + shift})
    lengths(3, phrases.OPENING_HEIGHTS, {'underside': underside, 'soffit': soffit})
    opening_asked(sheet, row, opening)
    opening_lintel(sheet, row.cells[5], opening)
    return name


def opening_asked(sheet, row, opening):
    passage, name = row.cells[4], opening['name']
    if passage is None:
        return
    asked = phrases.part(phrases.OPENING_ASKED, passage.text)
    if asked:
        sheet.length(passage, asked, 'wide', nm(opening['asked_width']), f'{name}: asked')
        sheet.length(passage, asked, 'high', nm(opening['asked_height']), f'{name}: asked')
    wide = nm(opening['to']) - nm(opening['from']) - nm(opening['asked_width'])
    high = nm(opening['soffit']) - nm(opening['underside']) - nm(opening['asked_height'])
    for template, field, exact in ((phrases.OPENING_PACK_SIDE, 'side', wide // 2), (phrases.OPENING_PACK_HEAD, 'head',
                                                                                    high)):
        found = phrases.part(template, passage.text)
        if found:
            sheet.length(passage, found, field, exact, f'{name}: to pack')
        elif asked and exact > sheet.world.step:
            sheet.wrong(f'{name}: nothing to pack at {field}', passage.text, sheet.book.text(exact), passage)


def opening_lintel(sheet, passage, opening):
    name = opening['name']
    placed = next((row for row in sheet.world.answer['lintels'] if row['opening'] == name), None)
    if placed is None or passage is None:
        return
    found = phrases.part(phrases.OPENING_BEARING, passage.text)
    if found is None:
        return sheet.wrong(f'{name}: bearing', passage.text, phrases.OPENING_BEARING, passage)
    check_bearing(sheet, passage, found, opening)
    one = phrases.part(phrases.ELEVATION_ONE, passage.text)
    if one:
        sheet.length(passage, one, 'length', one_piece_length(sheet.world, name), f'{name}: lintel')
    if opening.get('note'):
        sheet.tell(passage)


# ---- saw list --------------------------------------------------------------------------------------------------------

def saw(sheet):
    world = sheet.world
    cut, listed, row_now = {}, {}, None
    for pieces in world.pieces.values():
        for piece in pieces:
            if piece.cut != 'none':
                cut[piece.name] = piece
    kerf = nm(world.answer['saw_list']['kerf'])
    marks, bought = cut_marks(world), {}
    for page in sheet.pages:
        buy_rows(sheet, page, bought)
        for row in read_table(sheet, page, phrases.HEADS['saw'], has_boxes=True):
            if row.text(0):
                row_now = saw_row(sheet, row, marks, kerf)
            names = saw_places(sheet, row, listed)
            if row_now is not None:
                row_now['names'] += names
                if row.text(0):
                    row_now['count'] = int(row.text(2) or 0)
                check_saw_names(sheet, row, row_now, names, cut)
        take_paragraphs(sheet, page)
    sheet.same(sorted(listed), sorted(cut), 'cuts listed')
    if bought:
        bought_read(sheet, bought)
    saw_note(sheet, kerf)


def cut_marks(world):
    """CU1, CU2 ... in the order of series, kind and length, longest first."""
    order, kinds = list(world.series), list(phrases.KINDS.values())
    keys = {(world.sides[piece.side].series['id'], piece.kind, piece.length)
            for pieces in world.pieces.values() for piece in pieces if piece.cut != 'none'}
    keys = sorted(keys, key=lambda key: (order.index(key[0]), kinds.index(key[1]), -key[2]))
    return {f'{phrases.CUT_LETTER}{number}': key for number, key in enumerate(keys, 1)}


def saw_row(sheet, row, marks, kerf):
    world = sheet.world
    key = marks.get(row.text(0))
    if key is None:
        sheet.wrong('mark of a cut', row.text(0), sorted(marks), row.cells[0])
        return None
    series = world.series[key[0]]
    whole_length = nm(series['half']) if key[1] in HALVES else nm(series['full'])
    match = phrases.whole('{at=}', row.text(1))
    if match:
        sheet.length(row.cells[1], match, 'at', key[2], f'cut {row.text(0)}')
    else:
        sheet.wrong(f'cut {row.text(0)}', row.text(1), sheet.book.text(key[2]), row.cells[1])
    match = phrases.whole(phrases.SAW_FROM, row.text(3))
    sheet.same(match and phrases.KINDS.get(match['kind']), key[1], f'cut {row.text(0)}: from', row.cells[3])
    if match:
        sheet.length(row.cells[3], match, 'length', whole_length, f'cut {row.text(0)}: unit')
    match = phrases.whole('{at}', row.text(4))
    if match:
        sheet.length(row.cells[4], match, 'at', max(0, whole_length - key[2] - kerf), f'cut {row.text(0)}: offcut')
    count = sum(1 for pieces in world.pieces.values() for piece in pieces
                if piece.cut != 'none' and (world.sides[piece.side].series['id'], piece.kind, piece.length) == key)
    sheet.same(row.text(2), str(count), f'cut {row.text(0)}: pieces', row.cells[2])
    return {'key': key, 'names': [], 'count': count}


def saw_places(sheet, row, listed):
    if row.cells[5] is None:
        return []
    names = []
    for word in row.text(5).replace(' ', '').split(','):
        if word.endswith(')') and '(' in word:
            name, end = word[:-1].rsplit('(', 1)
            names.append((name, end))
            listed[name] = end
    return names


def check_saw_names(sheet, row, row_now, names, cut):
    for name, end in names:
        piece = next((one for one in cut.values() if one.name.replace(' ', '') == name), None)
        if piece is None:
            sheet.wrong('place of a cut', name, 'a cut piece', row.cells[5])
            continue
        key = (sheet.world.sides[piece.side].series['id'], piece.kind, piece.length)
        sheet.same(key, row_now['key'], f'{name} is cut to', row.cells[5])
        sheet.same(end, 's' if piece.cut == 'end' else 'e', f'{name}: factory face', row.cells[5])


def saw_note(sheet, kerf):
    for passage in sheet.passages:
        found = phrases.part(phrases.SAW_KERF, passage.text)
        if found:
            sheet.length(passage, found, 'kerf', kerf, 'kerf')
        groups = sheet.world.answer['saw_list']['groups']
        pairs = phrases.parts(phrases.SAW_PAIR, passage.text)
        for match, pair in zip(pairs, sheet.world.answer['saw_list']['pairs']):
            first, second = groups[pair['first']], groups[pair['second']]
            sheet.length(passage, match, 'first', nm(first['length']), 'pair of cuts')
            sheet.length(passage, match, 'second', nm(second['length']), 'pair of cuts')
            sheet.same(int(match['units']), pair['units'], 'units of a pair', passage)
            # Both pieces and the kerf between them fit into one unit.
            if nm(first['length']) + nm(second['length']) + kerf > nm(first['from_length']):
                sheet.wrong('pair of cuts does not fit one unit', match[0], sheet.book.text(nm(first['from_length'])),
                            passage)


# ---- rod and leads ---------------------------------------------------------------------------------------------------

def rod(sheet):
    expected, seen = rod_events(sheet.world), []
    for page in sheet.pages:
        for row in read_table(sheet, page, phrases.HEADS['rod'], has_boxes=True):
            match = phrases.whole('{at=}', row.text(0))
            if match is None:
                sheet.wrong('height', row.text(0), 'a length', row.cells[0])
                continue
            value = sheet.value(row.cells[0], match, 'at')
            fits = [at for at in expected if agrees(value, at, sheet.world.step)]
            if not fits:
                sheet.length(row.cells[0], match, 'at', None, '')
                sheet.wrong('height of the rod', row.text(0), [sheet.book.text(at) for at in sorted(expected)],
                            row.cells[0])
                continue
            sheet.length(row.cells[0], match, 'at', fits[0], 'height of the rod')
            rod_row(sheet, row, expected, fits, seen)
        take_paragraphs(sheet, page)
    check_leads(sheet)
    sheet.same(sorted(seen), sorted(expected), 'heights of the rod listed')


def rod_row(sheet, row, expected, fits, seen):
    events = set()
    for word in row.text(2).split('; '):
        if word in phrases.ROD_EVENTS:
            events.add((phrases.ROD_EVENTS[word], ''))
            continue
        for template, event in phrases.ROD_OPENINGS.items():
            match = phrases.whole(template, word)
            if match:
                events.update((event, name) for name in match['names'].split(', '))
                break
        else:
            sheet.wrong('event of the rod', word, 'a known one', row.cells[2])
    at = next((one for one in fits if expected[one][0] == events), fits[0])
    seen.append(at)
    wanted, course = expected[at]
    sheet.same(sorted(events), sorted(wanted), f'events at {row.text(0)}', row.cells[2])
    sheet.same(row.text(1), str(course) if course else '', f'course at {row.text(0)}', row.cells[0])


def rod_events(world):
    """What stands at each height, from courses and openings: {height: ({(event, opening)}, course)}."""
    found = {}

    def add(at, event, opening='', course=0):
        events, number = found.get(at, (set(), 0))
        events.add((event, opening))
        found[at] = (events, course or number)

    answer = world.answer
    for row in answer['courses']:
        add(nm(row['top']), 'course-top', course=row['number'])
        if row['wire']:
            add(nm(row['top']), 'wire')
        if row['bond_beam']:
            add(nm(row['top']), 'bond-beam')
    tops = {row['number']: nm(row['top']) for row in answer['courses']}
    for stop in world.job.get('steel', {}).get('pour_tops', []):
        if stop in tops:
            add(tops[stop], 'pour-stop')
    add(nm(answer['courses'][-1]['top']), 'top')
    for row in answer['openings']:
        window = row['use'] == 'window' or row['first_course'] > 1
        add(nm(row['underside']), 'sill' if window else 'floor', row['name'])
        add(nm(row['soffit']), 'head', row['name'])
        lintel = row.get('lintel')
        for deep in range(lintel['courses'] if lintel else 0):
            if lintel['first_course'] + deep in tops:
                add(tops[lintel['first_course'] + deep], 'lintel-course', row['name'])
    return found


class LeadLine:
    """A lead told in words, as a row of a table."""

    def __init__(self, passage, name):
        self.cells, self.name = [passage] * 7, name

    def text(self, column):
        return self.name if column == 0 else self.cells[0].text


def check_leads(sheet):
    """A lead at each corner where two sides meet."""
    world, told = sheet.world, []
    for passage in sheet.passages:
        found = phrases.part(phrases.LEAD, passage.text)
        corner = world.corners.get(found['corner']) if found else None
        if corner is None:
            continue
        told.append(found['corner'])
        counts = [tuple(int(n) for n in one.split('+')) for one in found['lead'].split(', ')]
        check_lead(sheet, LeadLine(passage, found['corner']), corner, counts)
    both = [name for name, row in world.corners.items() if 'arriving' in row and 'leaving' in row]
    sheet.same(sorted(told), sorted(both), 'leads told')


def check_lead(sheet, row, corner, counts):
    """A lead steps back by whole units: none reaches beyond the course below, each is laid of units that are there."""
    world = sheet.world
    for place, side in enumerate((corner['arriving'], corner['leaving'])):
        below = None
        for course, pair in enumerate(counts, 1):
            if pair is None:
                return sheet.wrong(f'lead at {row.text(0)}', row.text(1 + course), 'two counts', row.cells[0])
            runs = world.runs[side, course]
            if not runs:
                continue
            reach = lead_reach(world, side, course, pair[place], place == 0)
            if reach is None:
                return sheet.wrong(f'lead at {row.text(0)}, course {course}', pair[place], 'units that are there',
                                   row.cells[0])
            if below is not None and reach > below:
                sheet.wrong(f'lead at {row.text(0)}, course {course}', pair[place], 'no further than the course below',
                            row.cells[0])
            below = reach


def lead_reach(world, side, course, units, arriving):
    if units == 0:
        return 0
    pieces = world.pieces[side, course]
    run = pieces[-1 if arriving else 0].run
    pieces = [piece for piece in pieces if piece.run is run]
    if units > len(pieces):
        return None
    return world.sides[side].actual - pieces[-units].start if arriving else pieces[units - 1].end
