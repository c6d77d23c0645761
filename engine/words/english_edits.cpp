// A job that is begun from a few measures, and changes made on the drawing.
#include "words/english.hpp"

namespace stringcourse::words {
namespace {

constexpr Sentence kSentences[] = {
    // Measures as typed.
    {"feet-or-inches", "{0}: feet or inches?"},
    {"write-feet-or-inches", "Write {0}' or {0}\"."},
    {"metres-or-millimetres", "{0}: metres or millimetres?"},
    {"write-metres-or-millimetres", "Write {0} m or {0} mm."},
    {"centimetres-or-millimetres", "{0}: centimetres or millimetres?"},
    {"write-centimetres-or-millimetres", "Write {0} cm or {0} mm."},
    {"no-such-series", "There is no series {0}: {1}."},
    {"meant-series", "Did you mean '{0}'?"},
    {"typed-opening-form", "{0} is no opening in short."},
    {"write-typed-door", "Write side, distance from the corner that it starts from, and size: BC:4'-0\":3-0x6-8."},
    {"write-typed-window",
     "Write side, distance from the corner that it starts from, size of the hole and, if you like, the sill over the "
     "datum: BC:4'-0\":4-0x3-4:3'-4\"."},
    {"typed-wall-form", "{0} is no inner wall in short."},
    {"write-typed-wall",
     "Write the wall that it starts from, the distance of its near face from the corner that one starts from, and, "
     "where "
     "it ends free, its length: AB:12'-0\" or AB:12'-0\":8'-0\"."},
    {"typed-entry-form", "{0} is no entry in short."},
    {"write-typed-tape", "Write two corners and what the tape read: A:B:27'-11 1/2\"."},
    {"write-typed-rod",
     "Write the set-up, the point and what the rod read: 1:A:50 1/4\". Of a point along a wall: 1:AB:8'-0\":50 1/4\"."},
    {"write-typed-dowel", "Write wall, place and distance in from the face: AB:4'-1\":3 3/4\"."},
    {"write-typed-edge", "Write wall, place and how far the concrete reaches beyond the face: AB:4'-0\":4 1/4\"."},
    {"write-typed-mark", "Write wall, course, mark and what was read: AB:1:47 5/8\":3/16 past (or short, or on)."},
    {"write-typed-course", "Write wall and course: AB:1."},
    {"write-typed-gauge", "Write wall, course and how far off: AB:3:1/8 high (or low, or on)."},
    {"write-typed-jamb", "Write opening, jamb and where it stands from the wall's start: D1:far:12'-8 1/2\"."},
    {"write-typed-strike", "Write the entry that no longer counts: {0}."},
    {"typed-no-corner", "There is no corner {0}: {1}."},
    {"typed-no-opening", "There is no opening {0}: {1}."},
    {"typed-no-entry", "There is no entry {0}."},
    {"typed-no-course", "There is no course {0}."},
    {"typed-no-wall", "There is no side or wall {0}: {1}."},
    // What is left to be packed beside a frame
    {"packing", "Pack {0} at each jamb and {1} at the head. {2}"},
    {"packing-frame", "A frame of {0} at the jambs and {1} at the head leaves nothing to pack."},
    {"packing-buck", "Bucks of {0} at the jambs and {1} at the head leave nothing to pack."},
    {"packing-room", "With {0} of room at each side and {1} above nothing is left to pack."},
    // Changes that cannot be made.
    {"edit-no-opening", "There is no such opening."},
    {"edit-no-side", "There is no such side."},
    {"edit-no-width", "This opening states no width."},
    {"edit-width-of-nothing", "An opening is wider than nothing."},
    {"edit-no-height", "This opening states no height of its hole."},
    {"edit-height-of-nothing", "An opening is higher than nothing."},
    {"edit-corner-turns-in", "Only a corner that points out can be stepped in, and {0} does not."},
    {"edit-step-too-large", "A step at {0} takes something off both of its sides, and leaves something of both."},
    {"edit-no-step", "No step follows {0} that could be taken out."},
    {"edit-single-wall", "A single wall has no sides beside it that could grow or shrink."},
};

}  // namespace

std::span<const Sentence> english_edits() { return kSentences; }

}  // namespace stringcourse::words
