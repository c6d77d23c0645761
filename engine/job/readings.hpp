#pragma once
// What was measured on site, in the user's words: a log that only grows. A wrong entry is struck by a later one.
#include <optional>
#include <string>
#include <vector>

#include "measure/length.hpp"

namespace stringcourse {

enum class TapeMake { Steel, ClassTwo };  // which table of permitted errors the tape keeps

/// What can be done where the first bed does not fit.
enum class BedRemedy { Level, GroutFirstCourse, TiltCourse, Grind, RipUnits, LevellingStrip, HalfHigh, Step, Curb };
/// What can be done where corners stand off their places.
enum class ShapeRemedy { MovePegs, SquareLines };

/// A remedy that was chosen, and the last reading that it was chosen on: whatever is read later is held against it.
template <class Remedy>
struct Chosen {
  Remedy remedy{};
  std::optional<std::string> after;  // a reading's id; absent: not said
  friend bool operator==(const Chosen&, const Chosen&) = default;
};

/// How well things are measured, and what the ground is to carry.
struct Ground {
  std::optional<TapeMake> tape;              // absent: steel
  std::optional<Length> tape_reading;        // how far a taping may be read wrong, either way; absent: 1/16 in or 1 mm
  std::optional<Length> rod_reading;         // the same of a rod or a water level; absent: 1/16 in or 1 mm
  std::optional<std::string> hold;           // the corner whose peg stays; absent: the first
  std::optional<bool> first_course_grouted;  // fully, on concrete: its bed may be thicker
  std::optional<Chosen<BedRemedy>> bed_remedy;
  std::optional<Chosen<ShapeRemedy>> shape_remedy;
  friend bool operator==(const Ground&, const Ground&) = default;
};

/// What was taped: the lines or pegs before the pour, or what was poured.
enum class Taped { Lines, Poured };

/// The distance between the outer faces' meeting points (pegs, nails) of two corners.
struct TapeReading {
  std::string from, to;
  Length length;
  std::optional<Taped> of = {};  // absent: it counts for both
  friend bool operator==(const TapeReading&, const TapeReading&) = default;
};

// Under the wall; a floor beside it; a peg, a sill ...; the top of the wall, once it stands.
enum class Surface { Bearing, Floor, Other, Top };

/// A reading of a rod or water level. Where `on` and `at` are absent the station is a corner of that name, or a point
/// that only carries the level on.
struct RodReading {
  std::string setup;                // one name for each place where the instrument stood
  std::string station;              // name of the point
  Length rod;                       // below zero: held upside down against something overhead
  std::optional<std::string> on;    // wall
  std::optional<std::string> from;  // corner measured from; absent: the wall's start
  std::optional<Length> at;         // distance from that corner along the wall, actual
  std::optional<Surface> surface;   // absent: bearing
  std::optional<Length> sight;      // from the instrument to the rod; with a two-peg test the reading is corrected
  friend bool operator==(const RodReading&, const RodReading&) = default;
};

/// Two pegs A and B read from midway between them, then from close to A: whether the instrument looks level.
struct TwoPegReading {
  Length midway_a, midway_b;  // rod readings with equal sights
  Length close_a, close_b;    // rod readings from close to A
  Length sight_a, sight_b;    // lengths of the last two sights
  friend bool operator==(const TwoPegReading&, const TwoPegReading&) = default;
};

/// Where an upright dowel was found.
struct DowelReading {
  std::string on;
  std::optional<std::string> from;  // corner measured from; absent: the wall's start
  Length at;                        // its centre, actual
  Length off_face;                  // its centre from the wall's outer face as planned
  friend bool operator==(const DowelReading&, const DowelReading&) = default;
};

/// How far the edge of what was poured reaches beyond the outer face line (below zero: short of it).
struct EdgeReading {
  std::string on;
  std::optional<std::string> from;
  Length at;
  Length beyond;
  friend bool operator==(const EdgeReading&, const EdgeReading&) = default;
};

/// One entry of the log.
struct Reading {
  std::string id;                   // unlike every other entry's
  std::string when;                 // the user's or the device's text; the engine has no clock
  std::string by;                   // initials
  std::optional<TapeReading> tape;  // exactly one of these six
  std::optional<RodReading> rod;
  std::optional<TwoPegReading> two_peg;
  std::optional<DowelReading> dowel;
  std::optional<EdgeReading> edge;
  std::optional<std::string> strike;  // id of an entry that no longer counts; of a strike: it is taken back
  std::string note;
  friend bool operator==(const Reading&, const Reading&) = default;
};

}  // namespace stringcourse
