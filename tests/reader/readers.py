"""The reader of each sort of sheet."""
import read_bed
import read_before
import read_card
import read_courses
import read_elevation
import read_found
import read_lintels
import read_lists
import read_pour
import read_summary
import read_template
import read_wall


def named_or_before(now, before):
    """The reader of a set whose answer says what its dowels are measured from, or of one from before."""
    return lambda sheet: (now if sheet.world.faces_named else before)(sheet)


READERS = {
    'summary': read_summary.summary,
    'sides': read_summary.sides,
    'notes': read_lists.notes,
    'card': read_card.card,
    'dowels': named_or_before(read_pour.dowels, read_before.dowels),
    'form': named_or_before(read_pour.form, read_before.form),
    'template': named_or_before(read_template.template, read_before.template),
    'corners': read_template.corners,
    'pegs': read_found.pegs,
    'readings': read_found.readings,
    'bed': read_bed.bed,
    'plan': read_courses.plan,
    'strip': read_courses.strip,
    'elevation': read_elevation.elevation,
    'openings': read_lists.openings,
    'lintel-bars': read_lintels.lintel_bars,
    'saw': read_lists.saw,
    'rod': read_lists.rod,
    'leads': read_lists.leads,
    'changes': read_wall.changes,
    'marks': read_wall.marks,
    'log': read_wall.log,
}
