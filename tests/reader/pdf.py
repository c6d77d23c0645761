"""Pages of a printed set as strings with places, by pdftotext; and the shapes drawn, from the pages' own streams."""
import html
import re
import subprocess

from lengths import lengths_in, plain

WORD = re.compile(r'<word xMin="([-\d.]+)" yMin="([-\d.]+)" xMax="([-\d.]+)" yMax="([-\d.]+)">(.*?)</word>')
PAGE = re.compile(r'<page width="([\d.]+)" height="([\d.]+)">')
SPACE = 0.2881  # a space of the sheets' font, of a word box's height: words closer or further apart were written apart


class Text:
    """One string as it was written: points from the page's upper left corner. `turned`: it runs upwards."""
    __slots__ = ('text', 'left', 'top', 'right', 'bottom', 'turned', 'printed', 'page')

    def __init__(self, text, box, turned):
        self.text, self.turned = text, turned
        self.left, self.top, self.right, self.bottom = box
        self.printed = None

    @property
    def x(self):
        return (self.left + self.right) / 2

    @property
    def y(self):
        return (self.top + self.bottom) / 2

    @property
    def high(self):
        return self.right - self.left if self.turned else self.bottom - self.top

    def lengths(self):
        if self.printed is None:
            self.printed = lengths_in(self.text)
        return self.printed

    def __repr__(self):
        return f'{self.text!r}@{self.left:.0f},{self.top:.0f}{"^" if self.turned else ""}'


class Page:
    """`top` and `bottom`: of a page that is cut into bands, where one of them lies; else None."""
    __slots__ = ('number', 'width', 'height', 'texts', 'scale', 'top', 'bottom')

    def __init__(self, number, width, height, texts=(), scale=None, top=None, bottom=None):
        self.number, self.width, self.height, self.texts, self.scale = number, width, height, list(texts), scale
        self.top, self.bottom = top, bottom


def box_height(box, turned):
    return box[2] - box[0] if turned else box[3] - box[1]


def joined(words):
    """Words in the order in which they were drawn, joined to strings: on one baseline, a space apart."""
    texts, run = [], []

    def finish():
        if run:
            boxes = [box for box, _, _ in run]
            whole = (min(b[0] for b in boxes), min(b[1] for b in boxes), max(b[2] for b in boxes),
                     max(b[3] for b in boxes))
            texts.append(Text(plain(' '.join(word for _, word, _ in run)), whole, run[0][2]))
            run.clear()

    for box, word, turned in words:
        if run:
            last, _, last_turned = run[-1]
            gap = last[1] - box[3] if turned else box[0] - last[2]
            level = abs(last[0] - box[0]) < 0.05 if turned else abs(last[1] - box[1]) < 0.05
            alike = abs(box_height(last, last_turned) - box_height(box, turned)) < 0.05
            space = SPACE * box_height(box, turned)
            if not (turned == last_turned and level and alike and abs(gap - space) < 0.02 * space + 0.01):
                finish()
        run.append((box, word, turned))
    finish()
    return texts


# Heights of a word's box in the sheets' letter sizes tell turned words from level ones: a level word's box is as high
# as its letters, a turned one's as wide.
def is_turned(box, heights):
    wide, high = round(box[2] - box[0], 2), round(box[3] - box[1], 2)
    return high not in heights and wide in heights


def read_pages(path):
    out = subprocess.run(['pdftotext', '-raw', '-bbox', str(path), '-'], capture_output=True,
                         check=True).stdout.decode()
    pages, boxes = [], []
    for line in out.splitlines():
        start = PAGE.search(line)
        if start:
            pages.append(Page(len(pages) + 1, float(start[1]), float(start[2])))
            boxes.append([])
            continue
        word = WORD.search(line)
        if word:
            boxes[-1].append((tuple(float(word[k]) for k in range(1, 5)), html.unescape(word[5])))
    heights = letter_heights(boxes)
    for page, words in zip(pages, boxes):
        page.texts = joined([(box, word, is_turned(box, heights)) for box, word in words])
        for text in page.texts:
            text.page = page
    return pages


def letter_heights(boxes):
    """Box heights of the sizes used: those of words of two or more letters that are wider than high."""
    heights = set()
    for words in boxes:
        for box, word in words:
            wide, high = box[2] - box[0], box[3] - box[1]
            if len(word) > 4 and wide > high:
                heights.add(round(high, 2))
    return heights
