#pragma once
// What the readings of a job say of the ground as it is: the pegs, the heights, the first bed. Made from job, building
// and layout; readings that cannot be used are said so as findings, never guessed at.
#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "bond/layout.hpp"
#include "ground/bed.hpp"
#include "ground/levels.hpp"
#include "ground/retaping.hpp"
#include "ground/slips.hpp"
#include "job/job.hpp"
#include "job/trouble.hpp"
#include "walls/building.hpp"

namespace stringcourse::ground {

/// Half widths within which readings lie, by the job or by default (1/16 in, 1 mm).
[[nodiscard]] Length tape_reading_error(const Job& job);
[[nodiscard]] Length rod_reading_error(const Job& job);

/// How the job says that the first course is filled.
[[nodiscard]] FirstCourse first_course_of(const Job& job);

/// Which entries of the log still count: false where an entry that stands strikes one (job/strikes.hpp), for strikes
/// themselves, and for entries that name what the building does not have.
[[nodiscard]] std::vector<bool> entries_that_count(const Job& job, const Building& building);

/// A place on a wall's own line, from its start, for "so far from that corner". None for a wall or corner unknown to
/// it.
struct WallPlace {
  int wall = -1;
  Length along;
};
[[nodiscard]] std::optional<WallPlace> wall_place(const Building& building, const std::string& on,
                                                  const std::optional<std::string>& from, Length at);

struct TapedLine {
  std::size_t entry = 0;  // of Job::readings
  int from = 0, to = 0;   // corners
  Length read, expected;
  std::optional<Meant> slip;    // left out of the adjustment: nearly surely another length was meant
  std::optional<Length> again;  // a second taping of the line: less its first
  bool agrees = true;           // within 3.2905 times the doubt of a difference of two
  Residual residual;            // where adjusted
  bool wrong = false;           // named as a blunder, and left out
};

/// How a peg is to be moved. Components along the plan's axes, and in words along its walls.
struct PegMove {
  int corner = 0;
  Length east, north;         // from where it was found to where it belongs
  Length doubt;               // expanded (k = 2) along the direction that is least sure
  bool within_doubt = false;  // the tape cannot tell it from standing right
  Length longer, shorter;     // half axes of the readings' own ellipse (k = 2), without the tape's shared error
  Spot direction;             // of the longer one, a unit vector in plan
  Length off, allowed;        // how far it stands from its place, and how far it may
  Verdict verdict = Verdict::NotRead;
};

/// Two diagonals of a rectangle, both taped: their means differ by so much.
struct Diagonals {
  std::array<int, 2> one{}, other{};  // corners; `one` read the longer
  Length difference, allowed;
  Length doubt;  // expanded (k = 2): reading errors alone, for the tape's own error is the same in both
  Verdict verdict = Verdict::NotRead;
};

/// So far a corner may stand off its place in plan: by rule "place-in-plan", in proportion to its distance from the
/// held corner beyond the rule's own.
[[nodiscard]] Length corner_allowed(Length from_held);
/// More corners than so many in one net are not worked out (this program's limit): the work grows as their cube.
inline constexpr std::size_t kMostTapedCorners = 60;

/// What can be done where corners stand off their places.
struct ShapeChoice {
  ShapeRemedy what = ShapeRemedy::MovePegs;
  Fact says;       // what is to be done: "move B 5/16 in toward C, D 1/8 in away from A"
  Fact gives_up;   // what it gives up, or asks for
  int places = 0;  // pegs that move, lines that are chalked
  Length most;     // the farthest move
  bool recommended = false;
};

struct TapeAsFound {
  enum class State { NoReadings, Adjusted, NotDeterminate, Impossible, TooLarge } state = State::NoReadings;
  /// Whether what was taped has the plan's shape and size. It needs every corner of the building, a shape that holds,
  /// and one line more that checks it: else it is not read. Where tapings disagree it cannot be told.
  Verdict verdict = Verdict::NotRead;
  bool of_lines = false;  // all that was taped are lines before the pour: nothing is known of what was poured
  std::vector<TapedLine> lines;
  std::vector<std::array<int, 2>> missing;  // lines still to be taped: they would hold the shape, or check it
  std::vector<std::size_t> impossible;      // Impossible: three lines, the longest first
  Suspicion suspicion = Suspicion::None;
  std::vector<std::size_t> tape_again;  // lines, the first first
  int freedom = 0;
  double s0 = 0, s0_least = 0, s0_most = 0;
  Agreement agreement = Agreement::Unchecked;
  int held = 0;                // the corner whose peg stays
  std::vector<PegMove> moves;  // by corner; those that have readings. None while tapings disagree
  std::vector<Diagonals> diagonals;
  std::vector<ShapeChoice> choices;  // best first; none where the shape surely fits or is not known
};

struct Station {
  std::string name;
  std::optional<WallPlace> place;
  Surface surface = Surface::Bearing;
  Length height;              // over the datum
  Length doubt;               // expanded (k = 2)
  std::size_t entry = 0;      // its first reading
  bool far = false;           // a bearing that rule "rod-far" does not believe: left out of the bed
  std::optional<Meant> slip;  // and what its reading probably meant
  bool two_places = false;    // readings give it two places: the last counts
};

struct LoopVerdict {
  std::vector<std::size_t> entries;
  Length misclosure, allowed;
  bool closes = true;
};

/// The bed under one unit of course 1, at the thinnest and the thickest of its two ends.
struct UnitBed {
  std::int32_t wall = 0, number = 0;  // of the piece
  Length from, to;
  Length thinnest, thickest;
};

/// What can be done where the bed does not fit, with what it takes.
struct BedChoice {
  using What = BedRemedy;
  What what = What::Level;
  Length top;     // of the bed over the datum
  Length margin;  // what is left inside the range; for grinding, ripping, strips, steps and curbs: 0
  Length most;    // deepest grinding, tallest rip, thickest strip or curb, widest bed of a grouted course; 0 else
  int units = 0;  // units or readings that it concerns
  Fact where;     // which, and how much: "B: 3/16 in, C: 1/8 in"; a slope's fall along the sides
  std::int64_t mortar_cubic_centimetres = 0;
  std::int64_t concrete_cubic_centimetres = 0;  // of a strip or curb
  bool keeps = true;                            // every bed then lies in its range
  int cuts = 0;                                 // units that are sawn for it
  int work = 0;                                 // units of course 1 that are handled otherwise than laid in a full bed
  bool recommended = false;                     // the first of those that keep the range
};

struct BedAsFound {
  BedRange range;
  BedLevel level;
  Length doubt;  // expanded (k = 2), of one reading against another
  /// It needs the bearing under every unit of course 1: else it is not read, unless what was read is out of range
  /// already.
  Verdict verdict = Verdict::NotRead;
  std::vector<Fact> lacks;             // where to read too: "B", "the end of inner 1 at CD"
  std::vector<WallPlace> lack_places;  // the same as places, one for each
  std::vector<UnitBed> units;          // those between readings
  int units_without = 0;               // units of course 1 whose bearing was not read
  std::vector<BearingHeight> bearing;  // along the walls; a corner's reading on both of its walls
  /// Ranked (ranked()): laying level alone where that fits. None while it is not read.
  std::vector<BedChoice> choices;
};

/// What a two-peg test tells of the instrument.
struct Instrument {
  std::size_t entry = 0;
  Length over;        // how far it looks up (below zero: down) over `sight`
  Length sight;       // 100 ft or 30 m
  Length doubt;       // of `over`, expanded (k = 2)
  bool level = true;  // the test cannot tell it from level
  int corrected = 0;  // rod readings with a sight, corrected by it
};

/// The floor read in a doorway against the plan. Heights over the top of course 1 at its best level.
struct DoorFloor {
  std::int32_t opening = 0;
  Length lowest, highest;
  Length tall_least, tall_most;           // the opening as it will be, floor to soffit
  Length doubt;                           // expanded (k = 2)
  Verdict verdict = Verdict::CannotTell;  // Fits: as planned by rule "door-floor". NotRead as long as the bed is
};

/// What is done at one point of the wall's top, so that what comes on it lies level.
enum class TopWork : std::uint8_t { Stands, Pack, Bed, Plane };

/// One point of the wall's top as read.
struct TopPoint {
  std::int32_t station = 0;  // into LevelsAsFound::stations
  Length off;                // over its design height; below zero: under it
  Length by;                 // to be packed, bedded or planed off
  TopWork work = TopWork::Stands;
  Verdict verdict = Verdict::NotRead;  // Fits: by rule "bed-level" its height is right
};

/// The top of the walls against what is to bear on it: a level line, laid where nothing need be planed off, and no
/// farther from the design height than rule "bed-level" lets it be.
struct TopAsFound {
  Length bearing;                // over the design height of the last course's top
  Length lowest, highest;        // points read, over it too
  Length doubt;                  // expanded (k = 2), of one reading against another
  std::vector<TopPoint> points;  // by wall, then along it
};

struct LevelsAsFound {
  std::string datum;  // name of the station of height zero
  std::vector<Station> stations;
  std::vector<std::string> loose;  // stations that nothing ties to the datum
  bool too_many_setups = false;    // more than kMostSetups: nothing is worked out
  std::vector<LoopVerdict> loops;
  std::vector<std::string> setups;  // and the height of the instrument at each
  std::vector<Length> instruments;
  std::optional<BedAsFound> bed;
  std::optional<Instrument> instrument;
  std::vector<DoorFloor> doors;
  std::optional<TopAsFound> top;  // none where no top was read, or the bed's level is not known
};

/// A remedy that the job has chosen, against all that is read by now.
struct ChosenNow {
  Fact says;     // what is done: as it is by now, or as it was chosen where it does not help any more
  Fact against;  // what was read since and says otherwise; empty: nothing
};

/// What one reading says by itself: "A to B: 1/8 in longer than planned."
struct ReadingSaid {
  std::size_t entry = 0;  // of Job::readings
  Fact says;
};

struct AsFound {
  TapeAsFound tape;
  std::optional<LevelsAsFound> levels;
  std::optional<ChosenNow> bed_chosen, shape_chosen;
  std::vector<ReadingSaid> said;  // by entry; of tapings, rods on what the walls stand on, and edges
  std::vector<Finding> findings;
};

[[nodiscard]] TapeAsFound tape_as_found(const Job& job, const Building& building, const std::vector<bool>& counts);
[[nodiscard]] std::optional<LevelsAsFound> levels_as_found(const Job& job, const Building& building,
                                                           const Layout& layout, const std::vector<bool>& counts);

/// Everything, with its findings at hold point 3 (first course).
[[nodiscard]] AsFound as_found(const Job& job, const Building& building, const Layout& layout);

/// How far apart two corners are by plan, rounded to a nanometre.
[[nodiscard]] Length distance_planned(const Building& building, int from, int to);
/// "5/16 in toward D, 1/8 in away from B", or "stays".
[[nodiscard]] Fact move_said(const Building& building, const PegMove& move);
[[nodiscard]] Fact verdict_said(Verdict verdict);
/// "grind 2 spots, at most 3/16 in".
[[nodiscard]] Fact choice_said(const BedChoice& choice);
/// What it gives up, or asks for beside the work.
[[nodiscard]] Fact gives_up_said(const BedChoice& choice);
[[nodiscard]] Fact slip_said(Slip slip);

}  // namespace stringcourse::ground
