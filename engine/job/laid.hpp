#pragma once
// What happened at the wall, in the user's words: a log that only grows. A wrong entry is struck by another one.
#include <optional>
#include <string>
#include <vector>

#include "measure/length.hpp"

namespace stringcourse {

enum class WallRuleSet { Us, Uk };  // whose limits a wall is judged by

/// How the wall is laid and judged.
struct Laying {
  std::optional<WallRuleSet> rules;  // absent: us with an inch tape, uk with millimetres
  std::optional<Length> joint_least,
      joint_most;                      // head joints that corrections may ask for; absent: 1/4 to 1/2 in, 7 to 13 mm
  std::optional<bool> beyond_working;  // they may go outside, never outside the tolerance
  std::optional<Length>
      mark_reading;  // how far a block end may be read wrong at a mark, either way; absent: 1/32 in, 1 mm
  std::optional<Length> unit_spread, joint_spread;  // standard deviations of one unit's and one joint's length
  friend bool operator==(const Laying&, const Laying&) = default;
};

/// The far end of a block at its mark: past it (above zero) or short of it, or what the tape read there.
struct MarkReading {
  std::string on;  // wall
  int course = 1;
  Length at;                         // the mark: its running distance from the wall's start
  std::optional<Length> past, read;  // exactly one
  friend bool operator==(const MarkReading&, const MarkReading&) = default;
};

/// Units of the batch, measured: some laid dry end to end, tight, and read once; or one by one.
struct UnitSample {
  std::optional<int> together;
  std::optional<Length> row;
  std::vector<Length> singles;
  friend bool operator==(const UnitSample&, const UnitSample&) = default;
};

/// A course of a wall laid from end to end.
struct CourseLaid {
  std::string on;
  int course = 1;
  friend bool operator==(const CourseLaid&, const CourseLaid&) = default;
};

/// The top of a course against the gauge rod: above its mark (above zero) or below.
struct GaugeReading {
  std::string on;
  int course = 1;
  Length high;
  friend bool operator==(const GaugeReading&, const GaugeReading&) = default;
};

/// One unit set, at its four corners over (above zero) or under the line's height; "near" is the end already met.
struct UnitSetting {
  std::string on;
  int course = 1;
  Length near_outer, near_inner, far_outer, far_inner;
  Length bed;                      // thinnest, as it lies
  std::optional<Length> line_gap;  // of its face from the line
  friend bool operator==(const UnitSetting&, const UnitSetting&) = default;
};

/// The gap that a closure has to fill, between two units that stand.
struct GapReading {
  std::string on;
  int course = 1;
  Length at;  // the mark at the gap's near side: the far end of the unit there
  Length measured;
  friend bool operator==(const GapReading&, const GapReading&) = default;
};

/// Position: off its place in plan, taped over so much from the corner.
enum class CheckKind { Plumb, Level, Line, BedJoint, HeadJoint, Position };

/// A finished stretch checked. `off`: a deviation from plumb, level or line over so much wall; a joint's width.
struct WallCheck {
  std::string on;
  int course = 1;
  CheckKind what = CheckKind::Plumb;
  std::optional<Length> over;  // the stretch or height that it is read over; not for joints
  Length off;
  std::optional<Length> may_be_wrong;  // the instrument, either way; absent: as a mark is read
  friend bool operator==(const WallCheck&, const WallCheck&) = default;
};

enum class FoundWhat { NearJamb, FarJamb, WallEnd };

/// A jamb or a wall's far corner as it was found to stand: from now on it is fixed, and the rest is solved again.
struct FoundPlace {
  std::string on;
  FoundWhat what = FoundWhat::NearJamb;
  std::optional<std::string> opening;  // of a jamb
  Length at;                           // from the wall's start, actual
  friend bool operator==(const FoundPlace&, const FoundPlace&) = default;
};

/// A course of a wall that the entry's note or photos tell of.
struct Remark {
  std::string on;
  int course = 1;
  friend bool operator==(const Remark&, const Remark&) = default;
};

/// Filled, or consolidated once more after the block has drunk its water.
enum class GroutWork { Filled, Again };

/// A cell, or the trough of a beam or a lintel, filled with grout to the top of a course, or consolidated again.
struct Grouted {
  std::string on;
  int course = 1;  // of a cell the last of its lift, of a trough its own
  Length at;       // as the pour card lists it
  GroutWork work = GroutWork::Filled;
  friend bool operator==(const Grouted&, const Grouted&) = default;
};

enum class LookedAtWhat { Bar, Cleanout, Floor, Beam, Lintel };

/// A line of the inspection list, looked at and right.
struct LookedAt {
  LookedAtWhat what = LookedAtWhat::Bar;
  std::string on;
  int course = 1;  // bars and cleanouts: the pour's lowest
  Length at;       // as the list has it
  friend bool operator==(const LookedAt&, const LookedAt&) = default;
};

/// One entry of the log.
struct LaidEntry {
  std::string id;                   // unlike every other entry's
  std::string when;                 // the user's or the device's text; the engine has no clock
  std::string by;                   // initials
  std::optional<MarkReading> mark;  // exactly one of these twelve
  std::optional<UnitSample> units;
  std::optional<CourseLaid> laid;
  std::optional<GaugeReading> gauge;
  std::optional<UnitSetting> set;
  std::optional<GapReading> gap;
  std::optional<WallCheck> check;
  std::optional<FoundPlace> found;
  std::optional<Remark> remark;
  std::optional<Grouted> grouted;
  std::optional<LookedAt> looked_at;
  std::optional<std::string> strike;  // id of an entry that no longer counts; of a strike: it is taken back
  std::vector<std::string> photos;    // names of files
  std::string note;
  friend bool operator==(const LaidEntry&, const LaidEntry&) = default;
};

}  // namespace stringcourse
