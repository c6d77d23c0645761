"""Every phrase of the sheets that the reader matches, in one place: change the words here when they change there.

{at}     one length                      {at=}  both forms of one length: 7'-4" = 88"
{unit#}  a whole number                  {name~} any words
A list of templates: any of them.
"""
import re

# ---- titles: sort of sheet, and what its title names -----------------------------------------------------------------
TITLES = {
    'summary': 'Summary',
    'sides': 'Sizes, outer face to outer face',
    'findings': 'Findings',
    'standards': 'Standards used',
    'card': 'Setting-out card',
    'dowels': 'Dowel list',
    'corners': 'Corners in courses 1 and 2',
    'form': ['Form board: side {side~}', 'Form board: wall {side~}'],
    'template': 'Dowel template',
    'pegs': 'Pegs as found',
    'readings': 'Readings and what they come to',
    'bed': 'First course as found: side {side~}',
    'plan': 'Course {course#}: plan',
    'strip': ['Course {course#}: side {side~}', 'Course {course#}: wall {side~}'],
    'elevations': 'Elevation {one~}; Elevation {other~}',
    'elevation': 'Elevation {side~}',
    'openings': 'Opening schedule',
    'lintel-bars': 'Bars that pass a lintel',
    'saw': 'Saw list',
    'rod': ['Gauge rod and corner leads', 'Story pole and corner leads'],
    'reading-form': 'Reading form',
    'pour': 'Pour card',
    'bars': 'Bar schedule',
    'top': 'Top of the walls',
    'forms': 'Form boards: {sides~}',
    'strips': ['Side {side~}: courses {low#} and {high#}', 'Side {side~}: course {course#}', 'Side {one~}; Side {other~}'],
    'changes': 'Changed since it was printed',
    'marks': 'Marks at the wall',
    'log': 'The laid log',
    'shores': 'What goes over each opening, and what holds it up',
    'inspection': 'Before the pour',
    'bars-to-buy': 'Bars to buy and cut',
    'filling': 'Order of filling',
    'wire': 'Joint reinforcement',
    'hidden': ['{one~}: what is in it', '{one~}: what is hidden in it'],
    'bolts': 'Anchor bolts',
    'plates': 'Plate and bolts of {one~}; Plate and bolts of {other~}',
    'plate': 'Plate and bolts of {side~}',
    'top-read': 'Top of the walls as read',
    'zone': 'Keep out: the zone beside unbraced walls',
    'heads': 'Heads off a course line: what can be done',
    'weather': 'Weather and wind',
    'order': 'Order list',
    'reckoned': 'How the order is reckoned',
    'days': 'Days',
    'forecast': 'Weather expected',
    'chart': 'Days in a chart',
    'drops': 'What comes when',
    'pallets': 'Where pallets stand',
    'pallet-plan': 'Pallets from above',
}
PART = '{title~} ({part#} of {parts#})'

# ---- heads of tables: the words over each column ---------------------------------------------------------------------
HEADS = {
    'card': ['What', 'Wanted', 'Read'],
    'dowels': ['Dowel', 'Centre', 'In from', 'Course 1', 'Course 2', 'To start', 'To end', 'Across'],
    'readings': ['What', 'Read', 'Planned, or doubt', 'What it comes to'],
    'openings': ['Opening', 'Masonry opening', 'Near and far jamb', 'Heights from datum', 'Asked', 'Lintel, note'],
    'lintel-bars': ['Opening', 'Unit', 'Over cell', "Bar's centre, from the corner", 'Before it is laid'],
    'saw': ['Mark', 'Length', 'Pieces', 'Cut from', 'Offcut', 'Where they go: side-course-number'],
    'rod': ['Height from datum', 'Course', 'What'],
    'pour': ['Side', 'Cells', 'Which', 'Grout', 'Cleanouts', 'Seen', 'Filled'],
    'bars': ['Mark', 'Bar', 'Count', 'Shape', 'Length', 'Where'],
    'top': ['Side', 'Top from', 'At its', 'Middle', 'At its', 'Upright bars'],
    'reading-form': ['What', 'Wanted', 'Read', 'Read again'],
    'changes': ['Where', 'Units'],
    'marks': ['Mark', 'What it is', 'Past or short', 'Next joints'],
    'log': ['When, who', 'What', 'Read', 'What it comes to'],
    'sides': ['Side', 'Nominal', 'Actual', 'Units'],
    'units': ['Units', 'Count', 'Buy'],
    'shores': ['Opening', 'Its head', 'Lintel bears on', 'Held up meanwhile', 'Beam courses'],
    'bars-to-buy': ['Bars', 'Cut from each', 'Over'],
    'inspection': ['Side', 'Bars, by dowel', 'Cleanouts, by', 'Floors broken', 'Photos'],
    'filling': ['Cell', 'This lift', 'So far', 'Full,'] * 3,
    'wire': ['Side', 'Where', 'From, to', 'In each bed', 'The last of', 'Ends'],
    'bolts': ['Plate', 'Bolts', "To each bolt's middle"],
    'heads': ['What can be done', 'Blocks more', 'Saw cuts more'],
    'top-read': ['Side', 'Point', 'Off its', 'So that the', 'By rule'],
    'order': ['What', 'Order', 'Made up of', 'Beside'],
    'order-priced': ['What', 'Order', 'Made up of', 'Price', 'Cost', 'Beside'],
    'reckoned': ['What', 'Amount', 'Why'],
    'days': ['Day', 'Work', 'Blocks', 'Mortar', 'Tonight'],
    'forecast': ['Day, or rule', 'What it brings up, or', 'On which days'],
    'drops': ['Wanted for', 'What', 'Weight', 'Beside'],
    'pallets': ['What', 'Stands', 'For the blocks'],
}
DAYS_CHANCE = ('Done by {by~} in {done#} of {all#} programmes drawn; half of them are done by {half~}, '
               'nine in ten by {most~}. ')
DAYS_DONE = ('By the log {laid#} of {all#} blocks are laid, up to the evening of {evening~}; what is left is planned '
             'from the day after')
DAYS_UNDATED = ('By the log {laid#} of {all#} blocks are laid, no entry says when: what is left is planned without '
                'dates')
DAYS_POURED = ('The readings show the footing or slab poured; none of {all#} blocks is laid by the log up to the '
               'evening of {evening~}; what is left is planned from the day after')
DAYS_POURED_UNDATED = ('The readings show the footing or slab poured, none says when; none of {all#} blocks is laid by '
                       'the log: what is left is planned without dates')
PALLET_STANDS = 'outside {side~}: its middle {along} from {corner~}, {out} off the wall'
RECKONED_HEADINGS = ('Money', 'What is assumed',
                     'How mortar, water and grout are reckoned: published figures disagree, none is averaged')
ORDER_MADE = r'(\d+) needed(?:, (\d+) spare)?(?:, (\d+) to whole pallets)?$'

# ---- where numbers are measured from ---------------------------------------------------------------------------------
HOOKS = {
    'inside corner': 'inside corner {name~}, the outer face of {wall~}',
    'outer corner': 'outer corner {name~}',
    'face met': 'the face of {wall~} where {name~} starts',
    'inner face': 'the inner face of {wall~}',
    'outer face': 'the outer face of {wall~}',
    'free end': 'the end of the wall at {name~}',
}
ALL_MARKS = [f'All marks from {{hook~}}, {along}: {held}'
             for along in ('along its outer face', 'along either face')
             for held in ('hook the tape there once.', "hold the tape's end to it, once.")]

# ---- summary ---------------------------------------------------------------------------------------------------------
SUMMARY_HEIGHT = 'Wall over course 1'
SUMMARY_COUNTS = {
    'Units laid': ('cost', 'units'),
    'Short joint laps': ('cost', 'short_laps'),
    'Pieces shorter than a half': ('cost', 'short_pieces'),
    'Shifted head joints': ('cost', 'shifted_joints'),
}
SUMMARY_COURSES = ['{courses#}', '{courses#} (half-high: {high~})']
SUMMARY_COURSES_LABEL = 'Courses'
SUMMARY_BARS_LABEL = 'Upright bars'
SUMMARY_BARS = '{count#} of {size~}, {total} in all, bar laps not counted'
SUMMARY_LINTELS_LABEL = 'Lintels'
SUMMARY_LINTEL = '{count#} of {length}'
SUMMARY_LINTELS_OF_UNITS = ['{count#} of units; {floors#} floors to break out for bars', '{count#} of units']
SUMMARY_CUTS_LABEL = 'Saw cuts'
SUMMARY_CUTS = ['{cuts#}, of different lengths: {lengths#}', '{cuts#}']
SUMMARY_BREAKAGE = ['Buy: {percent#} % more for breakage, each kind rounded up (assumed).',
                    'Buy: {percent#} % more for breakage, each kind rounded up, as the job says.',
                    'Buy: nothing is added for breakage, as the job says.']
PART_WORKED = '{part~}, webs cut down for the beam'
SUMMARY_CUT = 'cut {length} from {kind~}'
SIDE_DIMENSION = '{side~} {length=}'

# ---- dowels ----------------------------------------------------------------------------------------------------------
DOWEL_HEADING = {
    'outer': '{side~}: from {hook~}, along its outer face; in from its outer face',
    'either': '{side~}: from {hook~}, along either face; in from either face',
}
DOWELS_POURED = 'As poured: these dowels stand in the concrete and stay where they are'
DOWELS_SINCE = 'What differs since the pour'
DOWEL_FOUND = 'found at {at=}'
DOWEL_BAR = 'its bar is at {at=}, {off} toward {corner~}'
DOWEL_NO_BAR = 'no bar comes down to it'
BAR_NO_DOWEL = '{at=}: a bar without a dowel'
DOWEL_AT = '{at=}'
DOWEL_OFF = '{off}'
DOWEL_CELL = ['{unit#}, cell {cell#}', '{side~} {unit#}, cell {cell#}']
DOWEL_NO_CELL = 'no cell'
DOWEL_GROUT = 'still have {grout} of grout between it and the block'
DOWEL_LAP = ['They stand up {lap} over the footing or slab, as your drawings ask.',
             'They stand up {lap} over the bearing, as your drawings ask.']
DOWELS_BY_RULE = ['They stand up {least} to {most} by the lap rule', 'They stand up {least} by the lap rule']
FORM_BENCHMARK, FORM_CORNER, FORM_MIDDLE = 'the benchmark', 'corner ', 'middle of '
FORM_HERE = "The form's edge is the outer face line."
FORM_AT = 'The form stands {form} outside the outer face line: from the form, add {again} to what stands under In from.'
FORM_UNKNOWN = 'The form may stand outside the face line'
BOARD_NUMBER = 'no. {number#}'
BOARD_FORM = "Line outside it: the form's edge, {form} farther out."
BOARD_BEFORE = 'The board begins {before} before 0: from the board\'s end, add {again} to every number.'
BOARD_AFTER = 'The board begins {after} past 0: from the board\'s end, take {again} off every number.'
BOARD_UNKNOWN = "Where the form's board begins is not known here"
TEMPLATE_FROM = '{side~}, from {hook~}:'
TEMPLATE_PLACE = '{dowel~}: {at}'
TEMPLATE_LIST = '{list~}: their places stand in the dowel list.'
TEMPLATE_LINE = 'Outer face line of the wall.'
TEMPLATE_LINE_INSIDE = 'Face line of the wall (either face)'
TEMPLATE_PARALLEL = 'Line {in} in from the outer face line'
TEMPLATE_IS_FORM = "It is the form's edge too."
TEMPLATE_FORM_AT = 'The form stands {form} farther out.'
TEMPLATE_FORM_UNKNOWN = 'The form stands where your drawings put it.'
TEMPLATE_DEPTH = '{at} from the face line'
TEMPLATE_DRAWN_DEPTH = '{at} from the line drawn'
TEMPLATE_FORM_DEPTH = '{at} from the form'
TEMPLATE_OTHER = ['Outer face line of {side~}', 'Outer face line of the wall round the corner']
TEMPLATE_BOARD = "The board of {side~} begins {before} before that corner: from the board's end add {again}."
CORNER_TITLE = 'Corner {corner~}, course {course#}'
CORNER_RUNS = '{side~} runs through.'
CORNER_UNIT = r'(?P<piece>\S+-\d+-\d+): (?P<made>.+?)(?= Bar:| It stands| Built alike|$)'
CORNER_BAR = 'Bar: {a} from the outer face of {first~}, {b} from that of {second~}.'
CORNER_CELL = 'It stands in {side~} unit {unit#}, cell {cell#}.'

CLEANOUT_HOLE = 'cut a hole at least {inches} ({mm}) high and wide'
SUMMARY_CLEANOUTS_LABEL = 'Cleanouts'
SUMMARY_CLEANOUTS = ['{count#}, all in cleanout units', '{count#}, all cut into other units',
                     '{count#}: {units#} are cleanout units, {cut#} cut into other units']
CLEANOUT_EACH = "The grout pour from course {course#} up is {high} high, over {over}: every bar's cell has a cleanout in that course"

# ---- setting out -----------------------------------------------------------------------------------------------------
CARD_TAPES = 'Tape, outer corner to outer corner'
CARD_PAIR = '{a~} - {b~}'
CARD_SQUARES = 'Square check: along one side, along the other, across'
CARD_LEGS = '{a}, {b}, {c}'
CARD_SLIP = '{slip} wrong across puts the far end {out} out'
CARD_BOARDS = "Boards of {sides~}, {beyond} beyond both ends: saw nicks, from the board's outer end"
CARD_KERFS = {'footing, outer edge': 'footing_outside', 'outer face': 'outer', 'dowel line': 'middle',
              'inner face': 'inner', 'footing, inner edge': 'footing_inside'}
CARD_ROD = 'Rod readings, with {backsight} on the benchmark'
CARD_ROD_OVER = '{height} over the top of course 1'
CARD_ROD_UNDER = '{height} under the top of course 1'
CARD_ROD_DOWN = 'rod upside down {reading}'
CARD_ROD_PLACES = {'floor at {opening~}': 'underside', 'sill of {opening~}': 'underside',
                   'head of {opening~}': 'soffit',
                   'footing or slab': 'bearing', 'top of course 1': 'datum', 'tops of boards': 'boards', 'top of wall': 'top'}
CARD_LINE = 'The line, pulled with {pull~}; sag between supports at most {most}'
CARD_SAG = ['sags {sag} unsupported', 'sags under {under} unsupported']
CARD_TRIGS = r'trigs at (?P<places>[^;]+?) from (?P<hook>.+?)(?=; an opening| \d+ (?:lb|N) would do|$)'  # a regular expression
CARD_TOO_WIDE = 'an opening is too wide for the line'
CARD_NO_TRIG = 'no trig'
CARD_PULL = ['{pull~} would do without', '{pull~} would do without: too much for the line']
CARD_OFF_LINE = 'Units stand off the line by {inches} ({mm})'

# ---- courses ---------------------------------------------------------------------------------------------------------
STRIP_BAR = 'bar'
STRIP_JAMB = 'jamb {opening~}'
STRIP_BEHIND = '{what~}, behind {corner~}'  # a place before zero, by its distance
STRIP_JOINT = 'joint edge'
STRIP_FACE = 'face of {wall~}'
STRIP_NUMBER = ['{number#}', '{number#} {letter~}']
STRIP_SIZE = '{wide} x {high}'
STRIP_BUTTS = 'butts {side~}'
STRIP_THROUGH = 'runs through'
STRIP_MEETS = 'meets {side~}'
STRIP_FREE = 'free end'
STRIP_CUT = '{mark~} = {length}'
PLAN_ORDER = 'Start at corner {corner~}. Lay the corners in this order: {order~}.'
LEAD = 'Lead at {corner~}: {lead~}.'
LETTERS = {
    'half': 'HA', 'corner-set': 'CS', 'open-end': 'OE', 'open-both': 'OB', 'bond-beam': 'BB', 'bond-beam-half': 'BB',
    'lintel': 'LI', 'lintel-half': 'LI', 'sash': 'SA', 'sash-half': 'SA', 'cleanout': 'CO', 'cleanout-half': 'CO',
    'half-high': 'HH', 'half-high-half': 'HH', 'solid': 'SO', 'full': '', 'corner': '',
}
CUT_LETTER = 'CU'
KINDS = {
    'full': 'full', 'half': 'half', 'corner': 'corner', 'corner set': 'corner-set', 'open end': 'open-end',
    'open both ends': 'open-both', 'bond beam': 'bond-beam', 'bond beam half': 'bond-beam-half', 'lintel': 'lintel',
    'lintel half': 'lintel-half', 'sash': 'sash', 'sash half': 'sash-half', 'cleanout': 'cleanout',
    'cleanout half': 'cleanout-half', 'half-high': 'half-high', 'half-high half': 'half-high-half', 'solid': 'solid',
}

# ---- elevations ------------------------------------------------------------------------------------------------------
ELEVATION_FROM = 'start corner {corner~} at the right'
ELEVATION_FROM_INSIDE = 'Seen with its start ({wall~}) at the right'
ELEVATION_SIZE = '{wide} x {high}'
ELEVATION_HEAD = 'head {at}'
ELEVATION_SILL = ['sill {at}', 'floor {at}']
ELEVATION_BEARING = 'bears {start} toward {start_name~}, {end} toward {end_name~}; asked {asked}'
ELEVATION_ONE = 'lintel {length}, one piece'
ELEVATION_JOINT = 'CJ'
BRACE_NOTE = 'Red dashes: {over} over the footing; a wall over it is braced.'

# ---- lists -----------------------------------------------------------------------------------------------------------
OPENING_NAME = '{name~} {use~}, {side~}'
OPENING_USES = {'door': 'door', 'overhead door': 'overhead', 'window': 'window', 'opening': 'plain'}
OPENING_SIZE = 'wide {wide=} high {high=}'
OPENING_JAMBS = 'from {hook~}: {from=} {to=}'
OPENING_BEARING = 'bears {start} toward {start_name~} bears {end} toward {end_name~} asked: {asked} each end'
OPENING_HEIGHTS = ['floor {underside=} head {soffit=}', 'sill {underside=} head {soffit=}']
OPENING_ASKED = '{wide} x {high}'
OPENING_PACK_SIDE = '{side} each side'
OPENING_PACK_HEAD = '{head} at the head'
OPENING_DRAWN = 'drawings: {mark~}'
SAW_FROM = '{kind~} {length}'
SAW_MARK = 'CU{mark#}'
SAW_PLACE = '{piece~}({end~})'
LINTEL_BREAK_OUT = 'break out its floor'
LINTEL_CORED = 'core it, or stop the bar'
SAW_KERF = 'one saw blade ({kerf})'
SAW_PAIR = '{first}: {units#} pair with {second}'
ROD_EVENTS = {'top of course': 'course-top', 'wire': 'wire', 'bond beam': 'bond-beam', 'pour stop': 'pour-stop',
              'top of wall': 'top'}
ROD_OPENINGS = {'floor {names~}': 'floor', 'sill {names~}': 'sill', 'head {names~}': 'head',
                'lintel course {names~}': 'lintel-course'}
BAR_USES = ('Dowels: what stands over the footing or slab', 'Upright bars', 'Bars in lintels', 'Bars in bond beams',
            'Corner bars of bond beams')
BAR_TOTAL = 'In all, without dowels'
BAR_STRAIGHT = 'straight (00)'
BAR_LEGS = 'two legs (11) of {leg=}'
BAR_LAPS = ['Laps of upright {size~} bars by each rule, on {side~}, where least masonry is round one: {clear=}',
            'Laps of {size~} bars in bond beams by each rule, with {clear=} of masonry and grout round one']
BAR_RULES = {'tms-402-to-2008': 'TMS 402, editions to 2008', 'tms-402-from-2011': 'TMS 402, editions from 2011 on',
             'ibc': 'IBC, bars used at', 'florida-2017': 'Florida Building Code 2017', '40-bars': '40 bar diameters',
             '48-bars': '48 bar diameters', 'as-drawn': 'as your drawings say'}
BAR_BUY = '{size~}: {bars#} bars of {stock=}; {fewest~}'
BAR_FEWEST, BAR_AT_LEAST = 'no way of cutting takes fewer', 'at least {least} are needed'
BAR_CUT = r'(?P<count>\d+) of (?P<length>.+?) \(mark (?P<mark>\d+)\)'
BAR_KERF = 'Dowels are not in it. A cut takes {length=} ({how~}).'
BAR_STOCK = 'Bars are sold {length=} long ({how~});'
BAR_COVER = 'Bars end {length=} inside the masonry ({how~}).'
POUR_HEADING = 'Pour {pour#}: courses {first#} to {last#}, {high=} high, up to {top=} over the datum.'

# ---- over openings and on top -----------------------------------------------------------------------------------------
SHORE_HEADS = ['{foot=} over its floor {bearing=} over the footing or slab',
               '{foot=} over its sill {bearing=} over the footing or slab']
SHORE_NO_LINTEL, SHORE_ONE_PIECE = 'no lintel', 'one piece: nothing is shored'
SHORE_SEAT = r'(?P<course>\S+-\d+): (?P<units>[\d, -]+?) toward (?P<toward>.+?)(?= \S+-\d+: | nothing toward|$)'
SHORE_HELD = ['before course {course#}: {shores#} shores, one at each jamb, at most {apart} apart',
              'before course {course#}: shores as your drawings or their maker say']
PLATE = '{side~}: {from=} to {to=}'
BOLT = '☐ {at=}'
NO_BOLT = 'none can stand from {after=} to {by=}'
BOLT_NEXT = 'nearest behind: {next=}'
BOLTS_ASKED = 'at most {spacing} apart, {least} to {most} from each end of a piece.'
BOLTS_BARS = 'At least {clear} from upright bars.'
BOLTS_TRUSSES = 'On {side~} at least {clear} from trusses.'
BOLTS_GROUT = 'At least {round} from the block beside them (assumed).'

ZONE_BESIDE = '{side~}: {wide}'
ZONE = 'walls stand {high} over their footing or slab; the zone is {wide} wide'
ZONE_SECTION = 'Section, to the same scale: dashes at {over}, a wall over it is braced'
HEAD_ASKED = '{opening~}: asked {asked} high, head {under} under the line of course {course#}'
HEAD_WAYS = {'leave it, and pack {by} over the frame': 'pack',
             'make it {by} higher: its head comes to the course line above': 'raise',
             'set it {by} higher, and bed up the sill': 'sill',
             'make it {by} lower: its head comes to the course line below': 'lower',
             'lintel at the head asked: saw blocks {by} lower under its ends, and pieces {high} high to lie over it': 'cut'}
PLATE_ENDS = 'plate ends'
PLATE_TRUSSES = r'Trusses as given: the first at (?P<first>.+?), then every (?P<step>.+?) toward (?P<toward>[^.]+)\.'
TOP_BEARS = ['Plate bears {bearing} over; readings are good to {doubt}.',
             'Plate bears {bearing} under; readings are good to {doubt}.', 'Plate bears right; readings are good to {doubt}.']
TOP_POINT = '{name~}, {at=}'
TOP_OFF = ['{off} over', '{off} under', 'right']
TOP_WORKS = {'stands as it is': 'stands', 'pack {by}': 'pack', 'bed {by} up in mortar': 'bed', 'plane {by} off': 'plane'}
TOP_VERDICTS = {'level': 'fits', 'not level': 'does-not-fit', "the readings can't tell": 'cannot-tell',
                'not read': 'not-read'}

# ---- at the wall -----------------------------------------------------------------------------------------------------
MARK_HEADING = ['{side~}, course {course#}: marks from {hook~}, along its outer face',
                '{side~}, course {course#}: marks from {hook~}, along either face']
MARK_JOINTS = '; with the units as measured: joints of {joint}'
MARK_WHAT = {'near jamb of {opening~}': 'near-jamb', 'far jamb of {opening~}': 'far-jamb',
             'control joint, near edge': 'joint-near-edge', 'control joint, far edge': 'joint-far-edge',
             'centre of a bar': 'bar-centre', 'center of a bar': 'bar-centre'}
MARK_UNIT = ['end of unit {unit#}, at {face~}; laid last', 'end of unit {unit#}; laid last',
             'end of unit {unit#}, at {face~}', 'end of unit {unit#}']
MARK_CLOSES = '; laid last'
MARK_PAST = '{past} past'
MARK_SHORT = '{past} short'
MARK_ON = 'on it'

# ---- as found --------------------------------------------------------------------------------------------------------
FOUND_TAPINGS = 'Tapings, outer corner to outer corner: {verdict~}'
FOUND_MOVES = 'Pegs: how far to move each'
FOUND_HEIGHTS = 'Heights over {datum~}'
FOUND_BENCHMARK = 'the benchmark'
FOUND_BED = 'First bed joint, {least} to {most} allowed: {verdict~}'
FOUND_DOWELS = 'Dowels as found'
FOUND_FIT = ['Where the building sits on the slab', 'Where the building sits on the slab: {verdict~}']
FOUND_CORRECTED = ['adjusted by {by}: ', 'adjusted by under {under}: ']
FOUND_TAPE_TOO = 'Tape these too'
FOUND_TAPE_AGAIN = 'Tape again, in this order'
FOUND_DIAGONALS = 'diagonals {one~} and {other~}'
FOUND_LONGER = '{one~} longer by {longer}'
FOUND_ALLOWED = '{allowed} allowed, doubt {doubt}'
FOUND_READ_TOO = 'Read the rod here too'
FOUND_VERDICTS = {'fits': 'fits', 'does-not-fit': 'does not fit', 'cannot-tell': "can't tell", 'not-read': 'not read yet'}
FOUND_SLIP = '{slip~}? Then {meant=}. Left out.'
FOUND_DOUBT = '± {doubt}'
FOUND_ELLIPSE = 'readings alone {longer} by {shorter}'
FOUND_PLACE = '{side~} {at}'
FOUND_LOOP = 'loop'
FOUND_INSTRUMENT = ['{over} up over {sight}', '{over} down over {sight}']
FOUND_DOOR = '{opening~}: floor to soffit'
FOUND_DOOR_TALL = '{least=} to {most=}'
FOUND_DOOR_PLANNED = '{planned=} ± {doubt}'
FOUND_CORNERS = 'What can be done where corners stand off'
FOUND_BEST, FOUND_ELSE, FOUND_CHOSEN = 'Recommended', 'Or', 'Chosen'
FOUND_TOP = 'top of bed {top}'
FOUND_MARGIN = 'margin {margin}'
FOUND_ROD = 'the rod on course 1, from set-up {setup~}, must read'
FOUND_OFF = '{off} off its place toward {way~}, {in} in from the face'
FOUND_AT_PLACE = 'at its place, {in} in from the face'
FOUND_OFF_FACE = '{in} in from the face'   # no bar comes down near it
FOUND_SHIFT = ['{east} east', '{east} west']
FOUND_SHIFT_NORTH = ['{north} north', '{north} south']
FOUND_SHIFT_ROW = 'shift it'
FOUND_TURN = 'turn it: over the length of {side~}'
FOUND_TURNED = ['{at} north at {corner~}', '{at} south at {corner~}']
FOUND_FITS = ['fits well', 'fits', 'just fits']   # adjusted by up to once its doubt, up to twice, more
FOUND_ROOM = 'smallest gap left: faces to slab edge, dowels to cell'
PEG_LINE = '{pair~} {read}'
BED_JAMBS = 'jambs at {from} and {to}'
BED_HEAD = 'head on course {course#}'
BED_SIZE = '{wide} x {high}'
BED_LIMITS = "Dashed: the bed's limits, {least} and {most} under the units."
BED_CHALK = 'Chalk the outer face of {side~}, and a second line {offset} inside it that mortar does not bury.'
BED_EDGES = 'The outer face is, from {hook~}: {edges~}.'
BED_EDGE = "{in} in from the slab's edge at {at}"

# ---- the log ---------------------------------------------------------------------------------------------------------
LOG_MARK = '{course~} at {at=}'
LOG_GAP = 'gap in {course~} at {at=}'
LOG_ROW = '{units#} units dry {row=}'
LOG_MEAN = 'mean {mean} (of {units#} units)'
LOG_BED = 'bed {bed}'
LOG_HIGH = '{high} high'
LOG_LOW = '{high} low'
LOG_BEDS = 'beds of courses {courses~}: {beds~}'
LOG_TAP = 'tap {corner~} down {down}'
LOG_LIMITS = '{verdict~}: {least} to {most}, doubt {doubt}; {rule~}'
LOG_JOINTS = 'joints of {joint}'
LOG_LINE = ['move it {gap} in from the line', 'move it {gap} out to the line']

LENGTH = (r"""-?(?:\d+'-(?:\d+\ \d+/\d+|\d+/\d+|\d+)"|\d+\ \d+/\d+"|\d+/\d+"|\d+"|\d+\.\d+\ mm|\d+\ mm"""
          r"""|(?:\d+\ \d+/\d+|\d+/\d+|\d+)\ (?:in|ft)(?![a-z]))""")
FIELD = re.compile(r'\{(\w+)([=#~]?)\}')


def american(words):
    """As Americans spell it."""
    return words.replace('entre', 'enter')


def pattern_of(template):
    """The regular expression of one template; groups are its fields, a second form's is name__2."""
    out, at = '', 0
    for field in FIELD.finditer(template):
        out += re.escape(template[at:field.start()])
        name, sort = field[1], field[2]
        if sort == '#':
            out += rf'(?P<{name}>\d+)'
        elif sort == '~':
            out += rf'(?P<{name}>.+?)'
        else:
            out += rf'(?P<{name}>{LENGTH})'
            if sort == '=':
                out += rf'(?: = (?P<{name}__2>{LENGTH}))?'
        at = field.end()
    return re.compile(out + re.escape(template[at:]))


COMPILED = {}


def patterns(templates):
    key = templates if isinstance(templates, str) else tuple(templates)
    if key not in COMPILED:
        COMPILED[key] = [pattern_of(one) for one in ([key] if isinstance(key, str) else key)]
    return COMPILED[key]


def whole(templates, text):
    """The first template that is all of the text, or None."""
    for pattern in patterns(templates):
        found = pattern.fullmatch(text)
        if found:
            return found
    return None


def part(templates, text):
    for pattern in patterns(templates):
        found = pattern.search(text)
        if found:
            return found
    return None


def parts(templates, text):
    return [found for pattern in patterns(templates) for found in pattern.finditer(text)]

# ---- grout cell by cell ----------------------------------------------------------------------------------------------
LIFT = 'Pour {pour#}, lift {lift#}: courses {first#} to {last#}, {high=} high, {all~}. {walk} of walking from corner {corner~} to'
WIRE = 'Sold in lengths of {stock=} {first~}. Laps {lap=} {second~}. Legs round corners {leg=} '
WIRE_SUMS = {'Straight pieces': 'pieces', 'Round corners': 'corner_count', 'At inner walls': 'tee_count',
             'Stock lengths to buy': 'to_buy'}
WIRE_CORNERS = ['{count#}, bought as corners: legs {leg=}', '{count#}, bought as tees: legs {leg=}']
MIDDLES = r'Middles of bars, from corner (?P<corner>[^:]+):'
