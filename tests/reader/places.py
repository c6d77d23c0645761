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


def named_point(world, side, sort, name, other=None):
    """The plan point that words name as zero of a side's numbers; None if there is no such thing there."""
    corner, wall = world.corners.get(name), world.sides.get(name)
    if sort == 'outer':
        return tuple(corner['point']) if corner and corner['convex'] else None
    if sort == 'inside':  # held to the outer face of the wall that arrives there
        here = corner and not corner['convex'] and corner.get('arriving') == other
        return tuple(corner['point']) if here else None
    if sort == 'inner':
        return on_wall(side, wall, wall.thick) if wall and not wall.interior else None
    if sort == 'met':
        return on_wall(side, wall, touched_face(side, wall)) if wall and wall.interior and other == side.name else None
    if sort == 'free':
        return tuple(side.start_point) if corner is None and name == side.start else None
    return None


def reference_in(text, template=phrases.FROM):
    """(sort, name, the wall named beside it, the face) of the first reference that a text makes."""
    found = template.search(text)
    if not found:
        return None
    groups = found.groupdict()
    sort = next(sort for sort in ('outer', 'inside', 'inner', 'met', 'free') if groups[sort])
    return sort, groups[sort], groups['arriving'] or groups['starting'], groups.get('face')


def shift_of(sheet, side, reference, passage):
    """What is added to a place on the side's line to have the number that the words ask for. Words that name nothing,
    or a point off the side's outer face line, are an error."""
    if reference is None:
        sheet.wrong(f'{side.name}: measured from', 'nothing', side.start, passage)
        return 0
    sort, name, other, face = reference
    point = named_point(sheet.world, side, sort, name, other)
    if point is None:
        sheet.wrong(f'{side.name}: measured from', ' '.join(str(one) for one in reference), side.start, passage)
        return 0
    if face is not None:
        sheet.same(face, 'either face' if side.interior else 'its outer face', f'{side.name}: measured along', passage)
    away = minus(side.start_point, point)
    if dot(away, side.inward) != 0:
        sheet.wrong(f'{side.name}: measured from a point off its line', ' '.join(str(one) for one in reference), side.start, passage)
    return dot(away, side.along)
