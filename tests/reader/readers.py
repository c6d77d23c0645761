"""The reader of each sort of sheet."""
import read_bed
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


READERS = {
    'summary': read_summary.summary,
    'sides': read_summary.sides,
    'notes': read_lists.notes,
    'card': read_card.card,
    'dowels': read_pour.dowels,
    'form': read_pour.form,
    'template': read_template.template,
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
