"""Errors of the sheets that are known and being mended: each is expected to be found, and an entry whose error is gone
fails the run. Empty when all is well."""
import re

# (set, sheet's title, what, printed): regular expressions; then the reason.
KNOWN = []


def is_known(name, error):
    for entry in KNOWN:
        if all(re.fullmatch(pattern, str(text), re.S) for pattern,
               text in zip(entry, (name, error[0], error[2], error[3]))):
            return entry[4]
    return None


def unmet(results, seen):
    """Reasons of entries for sets that were read, none of whose errors came."""
    names = {name for name, *_ in results}
    return sorted({entry[4] for entry in KNOWN if entry[4] not in seen and any(re.fullmatch(entry[0], name)
                                                                               for name in names)})
