"""Printed lengths: 14'-7 5/16", 175 5/16", 4451 mm, and prose such as "3/4 in". Whole nanometres as fractions."""
import re
from fractions import Fraction

MM = 1_000_000
INCH = 25_400_000
FOOT = 12 * INCH

VULGAR = {'½': '1/2', '¼': '1/4', '¾': '3/4', '⅛': '1/8', '⅜': '3/8', '⅝': '5/8', '⅞': '7/8'}
FRACTION = r'\d+/\d+'
INCHES = rf"(?:\d+[ ]{FRACTION}|{FRACTION}|\d+)"
# Feet and inches; inches alone; millimetres, with places only where a text is exact; and the units of prose.
LENGTH = re.compile(
    rf"""(?P<sign>-)?(?:
        (?P<feet>\d+)'-(?P<over>{INCHES})"
      | (?P<onlyfeet>\d+)'(?![-\d])
      | (?P<inches>{INCHES})"
      | (?P<number>\d+\.\d+|{INCHES})\ (?P<unit>mm|in|ft|m)(?![A-Za-z0-9²³/]|\ any\b|(?<=in)\ \d)
    )""", re.VERBOSE)
UNITS = {'mm': MM, 'in': INCH, 'ft': FOOT, 'm': 1000 * MM}


class Printed:
    """One printed length: where it stands in its text, its value and how it is written."""
    __slots__ = ('start', 'end', 'value', 'form', 'text')

    def __init__(self, start, end, value, form, text):
        self.start, self.end, self.value, self.form, self.text = start, end, value, form, text

    def __repr__(self):
        return self.text


def plain(text):
    """Vulgar fractions, primes and fraction slashes as their plain characters."""
    if text.isascii():
        return text
    for sign, digits in VULGAR.items():
        text = re.sub(rf'(?<=\d){sign}', ' ' + digits, text).replace(sign, digits)
    return text.replace('⁄', '/').replace('′', "'").replace('″', '"').replace('−', '-').replace('\u00a0', ' ')


def mixed(text):
    return sum((Fraction(part) for part in text.split(' ')), Fraction(0))


def lengths_in(text):
    """All printed lengths of a text that plain() has been over, in order."""
    found = []
    for match in LENGTH.finditer(text):
        before = text[match.start() - 1] if match.start() else ' '
        if before.isalnum() or before in "/.'":
            continue
        if match['feet']:
            value, form = int(match['feet']) * FOOT + mixed(match['over']) * INCH, 'feet'
        elif match['onlyfeet']:
            value, form = Fraction(int(match['onlyfeet']) * FOOT), 'feet'
        elif match['inches']:
            value, form = mixed(match['inches']) * INCH, 'inches'
        else:
            value, form = mixed(match['number']) * UNITS[match['unit']], match['unit']
        start = match.start()
        if match['sign'] and before not in ' (':  # a dash between two lengths is no minus
            start += 1
        elif match['sign']:
            value = -value
        found.append(Printed(start, match.end(), Fraction(value), form, text[start:match.end()]))
    return found


def rounded(exact, step):
    """Rounded once, to whole steps; a tie goes up."""
    return (Fraction(exact) / step + Fraction(1, 2)).__floor__() * step


def agrees(printed, exact, step):
    """Is `printed` what `exact` rounds to? Places of an answer are whole nanometres: one within that of a tie may go
    either way."""
    return printed in (rounded(exact, step), rounded(exact - 1, step), rounded(exact + 1, step))
