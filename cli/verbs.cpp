// The verbs, their options and their help, in one table.
#include "cli/arguments.hpp"

namespace stringcourse::cli {

namespace {

constexpr OptionSpec kPlanOptions[] = {
    {"--out", "DIR", "folder to write; made anew, or a folder that 'plan' wrote before"},
    {"--paper", "letter|a4|both", "paper of the sheets (default: letter for an inch tape, a4 for a metric tape)"},
    {"--for", "POINT", "sheets of one hold point: order, pour, first-course, lintels, grout, top (default: all)"},
    {"--templates", "", "with templates of the dowels at full size, to cut out"},
    {"--standards", "", "with the rules and standards used, each with its source"},
    {"--json", "", "print the answer document on stdout instead of the summary"},
    {"--quiet", "", "print nothing but trouble"},
    {"--strict", "", "end with 1 when there are findings"},
    {"--no-offers", "", "do not look for small changes that would save cuts"},
};

constexpr OptionSpec kBeginOptions[] = {
    {"--length", "L",
     "outside length with its unit: 24ft, 7.2m, \"24ft 8in\". Nominal: whole blocks and their joints;"},
    {"", "", "\"23ft 11 5/8in actual\" is as a tape finds it"},
    {"--width", "L", "outside width"},
    {"--height", "L", "height of the walls, from what they stand on"},
    {"--series", "ID", "the blocks, such as us-8 or au-190 (default us-8)"},
    {"--door", "OPENING", "a door, as SIDE:AT:WIDTHxHEIGHT: BC:4'-0\":3-0x6-8 is on side BC, its near jamb 4'-0\" from",
     true},
    {"", "", "corner B, for a leaf of 3'-0\" by 6'-8\" in a usual frame; may be given again"},
    {"--overhead", "OPENING", "an overhead door, by its leaf, in usual bucks; may be given again", true},
    {"--window", "OPENING", "a window, by its hole; :SILL over the datum may follow; may be given again", true},
    {"--name", "TEXT", "name of the job"},
    {"--out", "FILE", "file to write instead of stdout; never one that exists"},
};

constexpr OptionSpec kAddOptions[] = {
    {"--door", "OPENING", "SIDE:AT:WIDTHxHEIGHT of the leaf, AT from the corner that the side starts from", true},
    {"--overhead", "OPENING", "the same of an overhead door", true},
    {"--window", "OPENING", "SIDE:AT:WIDTHxHEIGHT of the hole, and :SILL over the datum if it is not on course 5",
     true},
    {"--wall", "WALL", "an inner wall: SIDE:AT, or SIDE:AT:LENGTH where it ends free", true},
    {"--out", "FILE", "file to write instead of stdout; never one that exists"},
    {"--replace", "", "write over JOB; as it was, it is kept as JOB.previous"},
};

constexpr OptionSpec kEnterOptions[] = {
    {"--tape", "A:B:LENGTH", "a tape reading between two corners", true},
    {"--rod", "SETUP:POINT:ROD", "a rod reading at a corner or point; or SETUP:WALL:AT:ROD along a wall", true},
    {"--dowel", "WALL:AT:IN", "a dowel as found, IN from the outer face", true},
    {"--edge", "WALL:AT:BEYOND", "the edge of the concrete, so far beyond the outer face", true},
    {"--mark", "WALL:COURSE:MARK:OFF", "a block end at its mark: '3/16 past', '1/8 short', 'on'", true},
    {"--course", "WALL:COURSE", "a course laid from end to end", true},
    {"--gauge", "WALL:COURSE:OFF", "the top of a course against the rod: '1/8 high', '1/8 low', 'on'", true},
    {"--jamb", "OPENING:near|far:AT", "a jamb as it stands, from the wall's start; the rest is laid anew", true},
    {"--strike", "ID", "an entry that no longer counts: nothing is ever erased", true},
    {"--by", "INITIALS", "who read it"},
    {"--when", "TEXT", "when it was read"},
    {"--note", "TEXT", "a remark"},
    {"--out", "FILE", "file to write instead of stdout; never one that exists"},
    {"--replace", "", "write over JOB; as it was, it is kept as JOB.previous"},
};

constexpr OptionSpec kLookOptions[] = {
    {"--json", "", "print the answer document on stdout instead of the summary"},
    {"--strict", "", "end with 1 when there are findings"},
    {"--no-offers", "", "do not look for small changes that would save cuts"},
};

constexpr OptionSpec kMarksOptions[] = {
    {"--side", "NAME", "one side or inner wall (default: all)"},
    {"--course", "N", "one course (default: the next one of each wall)"},
    {"--chances", "", "add how likely the last block of the course is to fit, reading marks and not"},
};

constexpr OptionSpec kListOptions[] = {
    {"--out", "FILE", "file to write instead of stdout; never one that exists"},
    {"--no-offers", "", "do not look for small changes that would save cuts"},
};

constexpr OptionSpec kMergeOptions[] = {
    {"--out", "FILE", "file to write instead of stdout; never one that exists"},
};

constexpr VerbSpec kVerbs[] = {
    {"plan", "JOB", 1, 1, "plan a job and write its sheets, drawings and answer into a folder",
     "JOB is a job file, or - for stdin. DIR comes to hold answer.json, job.json, the sheets as PDF and every drawing "
     "as\n"
     "SVG under drawings/. It is written whole or not at all; a set that 'plan' wrote there before is kept beside it "
     "as\n"
     "DIR.previous. Any other folder or file of that name is left alone and refused. Sheets of one hold point have "
     "the\n"
     "numbers that they have in the whole set.",
     kPlanOptions,
     "stringcourse plan kiln-house.json --out kiln-house\n"
     "stringcourse plan kiln-house.json --out kiln-house-pour --for pour --templates\n"
     "stringcourse plan - --out shed --paper both < shed.json\n"},
    {"begin", "", 0, 0, "start a job from a few measures",
     "Writes a job file for a plain rectangle ABCD: AB is the length, BC the width. The building is on your right\n"
     "as you walk from A to B. Interior walls and steel are added later. What can hardly be meant is refused.",
     kBeginOptions,
     "stringcourse begin --length 24ft --width 16ft --height 8ft --series us-8 --name \"Tool shed\" --out shed.json\n"
     "stringcourse begin --length 24ft --width 20ft --height 9ft4in --overhead AB:7-4:9-0x7-0 --door BC:4-0:3-0x6-8 "
     "\\\n"
     "    --window CD:8-0:4-0x3-4 --out store.json\n"
     "stringcourse begin --length 7.2m --width 4.8m --height 2.6m --series au-190\n"},
    {"add", "JOB", 1, 1, "put openings and inner walls into a job file",
     "Lengths as on the tape: 4'-0\", 48in, 4-0 (4 ft 0 in), 1200mm. What the job already has stays as it is. What "
     "would\n"
     "not stand in the building is refused, all at once, and nothing is written.",
     kAddOptions,
     "stringcourse add shed.json --door BC:4-0:3-0x6-8 --window CD:8-0:4-0x3-4 --out shed-2.json\n"
     "stringcourse add shed.json --wall AB:12-0 --replace\n"},
    {"enter", "JOB", 1, 1, "put readings and entries of the laid log into a job file",
     "Entries are only ever added; a wrong one is struck by another. Places along a wall are from its start.",
     kEnterOptions,
     "stringcourse enter shed.json --tape A:B:23-11 --tape \"A:C:28'-9 5/8\\\"\" --by JO --replace\n"
     "stringcourse enter shed.json --mark \"AB:1:47 5/8:3/16 past\" --out shed-2.json\n"},
    {"look", "JOB", 1, 1, "check a job and print its summary, writing no file", "JOB is a job file, or - for stdin.",
     kLookOptions,
     "stringcourse look kiln-house.json\n"
     "stringcourse look kiln-house.json --json | python3 -m json.tool\n"},
    {"marks", "JOB", 1, 1, "print where block ends come in the next courses, and the joints to lay",
     "Read past or short at every third unit, and at the last one before an opening or a corner. What was read is "
     "part\n"
     "of the job: its \"laid\" log.",
     kMarksOptions,
     "stringcourse marks kiln-house.json\n"
     "stringcourse marks kiln-house.json --side AB --course 1 --chances\n"},
    {"order", "JOB", 1, 1, "write the order list for a yard's own programs",
     "Comma-separated values (RFC 4180), an article a line. What is assumed, and what things cost, is part of the job: "
     "its\n"
     "\"order\". The printed list is a sheet of 'plan'.",
     kListOptions, "stringcourse order kiln-house.json --out kiln-house-order.csv\n"},
    {"days", "JOB", 1, 1, "write the working days for a calendar",
     "iCalendar (RFC 5545), an event for each day. Who lays, how fast, and the first day are part of the job: its "
     "\"days\".",
     kListOptions, "stringcourse days kiln-house.json --out kiln-house.ics\n"},
    {"merge", "JOB OTHER", 2, 2, "put the logs of two copies of one job together",
     "Both must be of one building. Every entry of either is kept; what disagrees is kept twice and said.",
     kMergeOptions, "stringcourse merge mine.json hers.json --out both.json\n"},
    {"schema",
     "[job|answer|refusals]",
     0,
     1,
     "print the JSON Schema of the job file, the answer or the refusals",
     "Without a name: the job file's.",
     {},
     "stringcourse schema answer\n"},
    {"help", "[VERB]", 0, 1, "print this help, or a verb's", "", {}, "stringcourse help plan\n"},
    {"version", "", 0, 0, "print the version (also --version)", "", {}, "stringcourse version\n"},
};

}  // namespace

std::span<const VerbSpec> verbs() { return kVerbs; }

}  // namespace stringcourse::cli
