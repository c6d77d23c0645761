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


def named_point(world, side, sort, name):
    """The plan point that words name as zero of a side's numbers; None if there is no such thing."""
    if sort == 'corner' and name in world.corners:
        return tuple(world.corners[name]['point'])
    wall = world.sides.get(name)
    if sort == 'corner' and wall is not None:  # "the outer face at corner AB": AB's outer face
        return on_wall(side, wall, 0)
    if sort == 'corner' and name in (side.start, side.end):  # the free end of an open outline
        return side.start_point if name == side.start else side.point(side.actual)
    if wall is None:
        return None
    depth = {'face': touched_face(side, wall), 'inner': wall.thick, 'outer': 0}[sort]
    return on_wall(side, wall, depth)


REFERENCES = [('corner', phrases.FROM_CORNER, 'corner'), ('face', phrases.FROM_WALL, 'wall')]


def reference_in(text):
    """(sort, name) of the first reference that a text makes."""
    for sort, template, field in REFERENCES:
        found = phrases.part(template, text)
        if found:
            return sort, found[field]
    return None


def shift_of(sheet, side, reference, passage):
    """What is added to a place on the side's line to have the number that the words ask for. Words that name nothing,
    or a point off the side's outer face line, are an error."""
    if reference is None:
        sheet.wrong(f'{side.name}: measured from', 'nothing', side.start, passage)
        return 0
    point = named_point(sheet.world, side, *reference)
    if point is None:
        sheet.wrong(f'{side.name}: measured from', ' '.join(reference), side.start, passage)
        return 0
    away = minus(side.start_point, point)
    if dot(away, side.inward) != 0:
        sheet.wrong(f'{side.name}: measured from a point off its line', ' '.join(reference), side.start, passage)
    return dot(away, side.along)
