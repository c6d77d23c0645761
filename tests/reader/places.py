"""Where printed numbers are measured from, by a sheet's own words, and what that makes of each number."""
import phrases


def dot(a, b):
    return a[0] * b[0] + a[1] * b[1]


def minus(a, b):
    return (a[0] - b[0], a[1] - b[1])


def on_wall(side, wall, depth):
    """The point where a side's line meets another wall at a depth from that wall's outer face."""
    here = dot(minus(side.start_point, wall.start_point), wall.inward)
    return (side.start_point[0] + wall.inward[0] * (depth - here),
            side.start_point[1] + wall.inward[1] * (depth - here))


def touched_face(side, wall):
    """The depth of the face that a side's start touches: 0 outside, the thickness inside."""
    here = dot(minus(side.start_point, wall.start_point), wall.inward)
    return 0 if abs(here) <= abs(here - wall.thick) else wall.thick


def point_of(world, side, sort, name, wall):
    """The plan point that words name as zero of a side's numbers; None if there is no such thing."""
    met = world.sides.get(wall) if wall is not None else None
    if sort in ('outer corner', 'inside corner'):
        corner = world.corners.get(name)
        if corner is None or corner['convex'] != (sort == 'outer corner'):
            return None
        if sort == 'inside corner' and world.corner_other(side.name, name) != wall:
            return None
        return tuple(corner['point'])
    if sort == 'free end':
        ends = {side.start: side.start_point, side.end: side.point(side.actual)}
        alone = name in world.corners and not {'arriving', 'leaving'} <= world.corners[name].keys()
        return ends.get(name) if alone or name not in world.corners else None
    if met is None:
        return None
    return on_wall(side, met, {'inner face': met.thick, 'outer face': 0, 'face met': touched_face(side, met)}[sort])


def hook_in(text):
    """(sort, name, wall) of what a text says that the tape is held to."""
    for sort, template in phrases.HOOKS.items():
        found = phrases.whole(template, text)
        if found:
            fields = found.groupdict()
            return sort, fields.get('name'), fields.get('wall')
    return None


def reference_in(text):
    """The hook of the first "All marks from ..." that a text has."""
    for template in phrases.ALL_MARKS:
        found = phrases.part(template, text)
        if found:
            return hook_in(found['hook'])
    return None


def says_reference(text):
    return any(phrases.part(template, text) for template in phrases.ALL_MARKS)


def shift_of(sheet, side, hook, passage):
    """What is added to a place on the side's line to have the number that the words ask for. Words that name nothing,
    or a point off the side's outer face line, are an error."""
    if hook is None:
        sheet.wrong(f'{side.name}: measured from', passage.text[:80] if passage else 'nothing', side.start, passage)
        return 0
    point = point_of(sheet.world, side, *hook)
    if point is None:
        sheet.wrong(f'{side.name}: measured from', ' '.join(str(one) for one in hook), side.start, passage)
        return 0
    away = minus(side.start_point, point)
    if dot(away, side.inward) != 0:
        sheet.wrong(f'{side.name}: measured from a point off its line', ' '.join(str(one) for one in hook), side.start,
                    passage)
    return dot(away, side.along)
