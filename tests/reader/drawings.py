"""The page's drawings, from their SVG: the same readers as on paper, and every unit and bar by name at its place."""
import re
import xml.etree.ElementTree as xml
from fractions import Fraction

import phrases
from lengths import INCH, plain
from pdf import Page, Text
from shapes import Box, Line, Shapes
from sheets import Sheet
from world import nm

POINT = INCH / 72_000     # micrometres
NAME = '{http://www.w3.org/2000/svg}'
ABOVE, BELOW = 0.965, 0.25  # of a letter's size, from the baseline: as a PDF reader boxes it
MICROMETRES = 2             # a drawing's places are whole micrometres, and an edge has two


class Drawing:
    def __init__(self, path):
        self.root = xml.parse(path).getroot()
        self.title = self.root.find(NAME + 'title').text
        self.shapes, self.units, self.texts = Shapes(), {}, []
        self.walk(self.root, None)
        self.page = Page(1, *(float(n) / POINT for n in self.root.get('viewBox').split()[2:]))
        self.page.texts = self.texts
        for text in self.texts:
            text.page = self.page

    def walk(self, node, name):
        title = node.find(NAME + 'title')
        if node.tag == NAME + 'g' and title is not None:
            name = title.text
        if node.tag in (NAME + 'defs', NAME + 'pattern'):
            return
        if node.tag == NAME + 'path':
            self.path(node, name)
        elif node.tag == NAME + 'circle':
            self.shapes.dots.append(tuple(float(node.get(key)) / POINT for key in ('cx', 'cy', 'r')))
        elif node.tag == NAME + 'text':
            self.text(node)
        for child in node:
            self.walk(child, name)

    def path(self, node, name):
        places = [(float(x), float(y)) for x, y in re.findall(r'[ML](-?[\d.]+) (-?[\d.]+)', node.get('d'))]
        paper = [(x / POINT, y / POINT) for x, y in places]
        dashed, fill = node.get('stroke-dasharray') is not None, node.get('fill')
        if node.get('d').endswith('Z') and len(paper) == 4:
            self.shapes.boxes.append(Box(paper, dashed, fill, node.get('stroke') is not None))
            if name is not None and name not in self.units:
                xs, ys = [x for x, _ in places], [y for _, y in places]
                self.units[name] = (min(xs), min(ys), max(xs), max(ys))
        else:
            self.shapes.lines.append(Line(paper, dashed, float(node.get('stroke-width') or 0) / POINT))

    def text(self, node):
        size, x, y = (float(node.get(key)) / POINT for key in ('font-size', 'x', 'y'))
        anchor, turned = node.get('text-anchor'), 'rotate' in (node.get('transform') or '')
        whole = len(node.text or '')
        offset = {'middle': 0.5, 'end': 1.0}.get(anchor, 0.0) * whole
        at = 0
        for words in (node.text or '').split('  '):
            low, high = 0.6 * size * (at - offset), 0.6 * size * (at + len(words) - offset)
            box = (x - ABOVE * size, y - high, x + BELOW * size, y - low) if turned else (x + low, y - ABOVE * size,
                                                                                          x + high, y + BELOW * size)
            self.texts.append(Text(plain(words), box, turned))
            at += len(words) + 2

    def scale(self, world):
        """Whole number that makes the units drawn as long as they are."""
        for name, box in self.units.items():
            piece = world.by_name.get(name)
            if piece is not None:
                wide = box[2] - box[0] if self.level(world, piece) else box[3] - box[1]
                return round(piece.length / 1000 / wide)
        return None

    def level(self, world, piece):
        return self.title.startswith(phrases.TITLES['elevation'].split(' ')[0]) or world.sides[piece.side].along[1] == 0


class SvgBook:
    """As much of a book as one drawing needs."""

    def __init__(self, book, drawing):
        self.world, self.answer, self.published, self.text = book.world, book.answer, book.published, book.text
        self.drawing = drawing
        self.file = self

    def shapes(self, number):
        return self.drawing.shapes


def read_drawings(folder, book):
    """Sheets of all drawings of a set: the ledger of their words, and of their units' and bars' places."""
    from readers import READERS
    done, shown = [], set()
    for path in sorted((folder / 'drawings').glob('*.svg')):
        drawing = Drawing(path)
        for sort in ('elevation', 'plan'):
            match = phrases.whole(phrases.TITLES[sort], drawing.title)
            if match:
                break
        else:
            continue
        scale = drawing.scale(book.world)
        drawing.page.scale = scale
        sheet = Sheet(sort, f'drawing: {drawing.title}', match.groupdict(), [drawing.page], SvgBook(book, drawing))
        READERS[sort](sheet)
        sheet.finish()
        if scale:
            (check_elevation if sort == 'elevation' else check_plan)(sheet, drawing, scale)
        done.append(sheet)
        shown.add((sort, drawing.title))
    return done


def check_elevation(sheet, drawing, scale):
    """Each unit of the side is drawn once, where it stands along the side and over the ground."""
    world, side = sheet.world, sheet.fields['side']
    pieces = {piece.name: piece for (name, _), row in world.pieces.items() if name == side for piece in row}
    sheet.same(sorted(set(pieces) - set(drawing.units)), [], 'units not drawn')
    rows = {row['number']: (nm(row['top']) - nm(row['unit_height']), nm(row['top'])) for row in world.courses.values()}
    zeros = []
    for name, piece in pieces.items():
        if name in drawing.units:
            left, top, right, bottom = drawing.units[name]
            low, high = rows[piece.course]
            zeros.append((name, right + piece.start / 1000 / scale, left + piece.end / 1000 / scale,
                          bottom + Fraction(low, 1000 * scale), top + Fraction(high, 1000 * scale)))
    check_zeros(sheet, zeros)


def check_plan(sheet, drawing, scale):
    """Each unit of the course is drawn where its side stands in plan, and each bar at its point."""
    world, course = sheet.world, int(sheet.fields['course'])
    zeros = []
    for (side, number), row in world.pieces.items():
        if number != course:
            continue
        here = world.sides[side]
        for piece in row:
            if piece.name not in drawing.units:
                sheet.wrong('unit not drawn', 'nothing', piece.name)
                continue
            left, top, right, bottom = drawing.units[piece.name]
            shallow, deep = world.extent(piece)[2:]
            a, b = here.point(piece.start, shallow), here.point(piece.end, deep)
            xs, ys = sorted((a[0], b[0])), sorted((a[1], b[1]))
            zeros.append((piece.name, left - xs[0] / 1000 / scale, right - xs[1] / 1000 / scale,
                          bottom + ys[0] / 1000 / scale, top + ys[1] / 1000 / scale))
    check_zeros(sheet, zeros)
    if not zeros:
        return
    x0, y0 = zeros[0][1], zeros[0][3]
    dots = {(round(x * POINT), round(y * POINT)) for x, y, _ in drawing.shapes.dots}
    for bar in world.answer['bars']:
        if bar['first_course'] <= course <= bar['last_course']:
            side = world.sides[bar['side']]
            x, y = side.point(nm(bar['centre']), world.depth_of(bar))
            paper = (float(x0 + x / 1000 / scale), float(y0 - y / 1000 / scale))
            if not any(abs(paper[0] - dot[0]) <= 2 * MICROMETRES and abs(paper[1] - dot[1]) <= 2 * MICROMETRES
                       for dot in dots):
                sheet.wrong('bar not drawn', 'nothing', f'{bar["side"]} {sheet.book.text(nm(bar["centre"]))}')


def check_zeros(sheet, zeros):
    """Every unit's two edges either way give one and the same zero."""
    if not zeros:
        return
    for axis in (1, 3):
        found = sorted(value for zero in zeros for value in (zero[axis], zero[axis + 1]))
        middle = found[len(found) // 2]
        for zero in zeros:
            for value in (zero[axis], zero[axis + 1]):
                if abs(value - middle) > 2 * MICROMETRES:
                    sheet.wrong(f'place of {zero[0]}', f'{float(value - middle):.1f} micrometres of paper', 0)
