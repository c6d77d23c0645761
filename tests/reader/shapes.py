"""Boxes, lines and dots of a page, from its own content stream. Points from the page's upper left corner."""
import re
import zlib

OBJECT = re.compile(rb'(?:^|\n)(\d+) 0 obj\n(.*?)\nendobj', re.S)


class Box:
    __slots__ = ('left', 'top', 'right', 'bottom', 'dashed', 'fill', 'stroked')

    def __init__(self, points, dashed, fill, stroked):
        xs, ys = [p[0] for p in points], [p[1] for p in points]
        self.left, self.right, self.top, self.bottom = min(xs), max(xs), min(ys), max(ys)
        self.dashed, self.fill, self.stroked = dashed, fill, stroked


class Line:
    __slots__ = ('points', 'dashed', 'width')

    def __init__(self, points, dashed, width):
        self.points, self.dashed, self.width = points, dashed, width


class Shapes:
    def __init__(self):
        self.boxes, self.lines, self.dots = [], [], []

    def between(self, top, bottom):
        """Those of one band of the page."""
        part = Shapes()
        part.boxes = [box for box in self.boxes if top <= box.top and box.bottom <= bottom]
        part.lines = [line for line in self.lines if all(top <= y <= bottom for _, y in line.points)]
        part.dots = [dot for dot in self.dots if top <= dot[1] <= bottom]
        return part


class File:
    """Content streams of a PDF by page number, from 1."""

    def __init__(self, path):
        data = open(path, 'rb').read()
        self.objects = {int(number): body for number, body in OBJECT.findall(data)}
        root = next(body for body in self.objects.values() if b'/Type /Pages' in body)
        self.pages = [int(kid) for kid in re.findall(rb'(\d+) 0 R', re.search(rb'/Kids \[(.*?)\]', root, re.S)[1])]
        self.read = {}

    def shapes(self, number):
        if number not in self.read:
            page = self.objects[self.pages[number - 1]]
            height = float(re.search(rb'/MediaBox \[0 0 [\d.]+ ([\d.]+)\]', page)[1])
            body = self.objects[int(re.search(rb'/Contents (\d+) 0 R', page)[1])]
            head, stream = body.split(b'stream\n', 1)
            stream = stream.rsplit(b'endstream', 1)[0]
            if b'/FlateDecode' in head:
                stream = zlib.decompress(stream)
            self.read[number] = shapes_of(stream.decode('latin-1'), height)
        return self.read[number]


def shapes_of(stream, height):
    shapes, numbers, path, closed, curved = Shapes(), [], [], False, False
    width, dashed, fill, clip = 1.0, False, '0', False

    def paint(stroked, filled):
        nonlocal path, closed, curved, clip
        if clip and len(path) == 4:
            shapes.boxes.append(Box(path, dashed, 'hatch', True))
        elif clip or not path:
            pass
        elif curved:
            xs, ys = [p[0] for p in path], [p[1] for p in path]
            shapes.dots.append(((min(xs) + max(xs)) / 2, (min(ys) + max(ys)) / 2, (max(xs) - min(xs)) / 2))
        elif closed and len(path) == 4:
            shapes.boxes.append(Box(path, dashed, fill if filled else None, stroked))
        else:
            shapes.lines.append(Line(path, dashed, width))
        path, closed, curved, clip = [], False, False, False

    for token in stream.replace('[', ' ').replace(']', ' ').split():
        if token[0] in '-.0123456789' and token[-1] in '0123456789.':
            numbers.append(float(token))
            continue
        if token == 'm':
            if path:
                paint(True, False)
            path = [(numbers[-2], height - numbers[-1])]
        elif token == 'l':
            path.append((numbers[-2], height - numbers[-1]))
        elif token == 'c':
            curved = True
            path += [(numbers[k], height - numbers[k + 1]) for k in (-6, -4, -2)]
        elif token == 're':
            x, y, w, h = numbers[-4:]
            path, closed = [(x, height - y), (x + w, height - y), (x + w, height - y - h), (x, height - y - h)], True
        elif token == 'h':
            closed = True
        elif token in ('S', 's'):
            closed = closed or token == 's'
            paint(True, False)
        elif token in ('B', 'b', 'B*', 'b*'):
            paint(True, True)
        elif token in ('f', 'F', 'f*'):
            paint(False, True)
        elif token == 'W':
            clip = True
        elif token == 'n':
            paint(False, False)
        elif token == 'w':
            width = numbers[-1]
        elif token == 'd':
            dashed = len(numbers) > 1
        elif token in ('g', 'rg', 'scn'):
            fill = ' '.join(f'{n:g}' for n in numbers)
        numbers = []
    return shapes
