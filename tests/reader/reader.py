#!/usr/bin/env python3
"""Reads printed sets as a stranger would and compares every number with the answer. Standard library and pdftotext."""
import sys
from pathlib import Path

sys.path.insert(0, str(Path(__file__).parent))

from book import Book, load, tally, uncovered
from drawings import read_drawings
from read_answer import read_answer


def main(folders):
    bad = 0
    for folder in folders:
        answer, papers = load(folder)
        for paper in papers:
            book = Book(paper, answer)
            sheets = book.read() + read_drawings(Path(folder), book) + [read_answer(book)]
            covered, told, whole = tally(sheets)
            counts = f'{sum(covered.values())} of {sum(whole.values())} lengths, {sum(told.values())} as words'
            print(f'{folder} {paper.name}: {counts}')
            for sort in whole:
                if whole[sort]:
                    print(f'   {sort:10} {covered[sort]:5} of {whole[sort]:5}')
            for sheet in sheets:
                for error in sheet.errors:
                    bad += 1
                    print('  WRONG', *error, sep=' | ')
            for one in uncovered(sheets)[:200]:
                print('  open', *one, sep=' | ')
    return 1 if bad else 0


if __name__ == '__main__':
    sys.exit(main(sys.argv[1:]))
