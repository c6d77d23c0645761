// The verbs, their options and their help, in one table.
#include "cli/arguments.hpp"

namespace stringcourse::cli {

namespace {

constexpr OptionSpec kPlanOptions[] = {
    {"--out", "DIR", "folder to write; made anew, or a folder that 'plan' wrote before"},
    {"--paper", "letter|a4|both", "paper of the sheets (default: letter for an inch tape, a4 for millimetres)"},
    {"--json", "", "print the answer document on stdout instead of the summary"},
    {"--quiet", "", "print nothing but trouble"},
    {"--strict", "", "end with 1 when there are findings"},
    {"--no-offers", "", "do not look for cheaper places of openings and lengths of sides"},
};

constexpr OptionSpec kBeginOptions[] = {
    {"--length", "L", "outside length with its unit: 24ft, 7.2m, \"24ft 8in\". Nominal: whole blocks and their joints;"},
    {"", "", "\"23ft 11 5/8in actual\" is as a tape finds it"},
    {"--width", "L", "outside width"},
    {"--height", "L", "height of the walls, from what they stand on"},
    {"--series", "ID", "the blocks, such as us-8 or au-190 (default us-8)"},
    {"--name", "TEXT", "name of the job"},
    {"--out", "FILE", "file to write instead of stdout; never one that exists"},
};

constexpr OptionSpec kLookOptions[] = {
    {"--json", "", "print the answer document on stdout instead of the summary"},
    {"--strict", "", "end with 1 when there are findings"},
    {"--no-offers", "", "do not look for cheaper places of openings and lengths of sides"},
};

constexpr OptionSpec kMarksOptions[] = {
    {"--side", "NAME", "one wall (default: all)"},
    {"--course", "N", "one course (default: each wall's next)"},
    {"--odds", "", "add the chance that the closure's joints stay lawful, with marks and without"},
};

constexpr OptionSpec kMergeOptions[] = {
    {"--out", "FILE", "file to write instead of stdout; never one that exists"},
};

constexpr VerbSpec kVerbs[] = {
    {"plan", "JOB", 1, 1, "plan a job and write its sheets, drawings and answer into a folder",
     "JOB is a job file, or - for stdin. DIR comes to hold answer.json, job.json, the sheets as PDF and every drawing as\n"
     "SVG under drawings/. It is written whole or not at all; a set that 'plan' wrote there before is kept beside it as\n"
     "DIR.previous. Any other folder or file of that name is left alone and refused.",
     kPlanOptions,
     "stringcourse plan kiln-house.json --out kiln-house\n"
     "stringcourse plan - --out shed --paper both < shed.json\n"},
    {"begin", "", 0, 0, "start a job from a few measures",
     "Writes a job file for a plain rectangle, to be filled in: openings, interior walls, steel.", kBeginOptions,
     "stringcourse begin --length 24ft --width 16ft --height 8ft --series us-8 --name \"Tool shed\" --out shed.json\n"
     "stringcourse begin --length 7.2m --width 4.8m --height 2.6m --series au-190\n"},
    {"look", "JOB", 1, 1, "check a job and print its summary, writing no file",
     "JOB is a job file, or - for stdin.", kLookOptions,
     "stringcourse look kiln-house.json\n"
     "stringcourse look kiln-house.json --json | python3 -m json.tool\n"},
    {"marks", "JOB", 1, 1, "print the marks of the courses in hand and the next joints",
     "Past or short is read at every third unit's end and at the last of a stretch. What was read is part of the job: its\n"
     "\"laid\" log.", kMarksOptions,
     "stringcourse marks kiln-house.json\n"
     "stringcourse marks kiln-house.json --side AB --course 1 --odds\n"},
    {"merge", "JOB OTHER", 2, 2, "unite the logs of two copies of one job",
     "Both must be of one building. Every entry of either is kept; what disagrees is kept twice and said.", kMergeOptions,
     "stringcourse merge mine.json hers.json --out both.json\n"},
    {"schema", "[job|answer|refusals]", 0, 1, "print the JSON Schema of the job file, the answer or the refusals",
     "Without a name: the job file's.", {}, "stringcourse schema answer\n"},
    {"help", "[VERB]", 0, 1, "print this help, or a verb's", "", {}, "stringcourse help plan\n"},
    {"version", "", 0, 0, "print the version (also --version)", "", {}, "stringcourse version\n"},
};

}  // namespace

std::span<const VerbSpec> verbs() { return kVerbs; }

}  // namespace stringcourse::cli
