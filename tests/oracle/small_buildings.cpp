#include "oracle/small_buildings.hpp"

#include <algorithm>
#include <map>
#include <vector>

namespace stringcourse::oracle {
namespace {

using bond::Panel;
using bond::Row;
using bond::RowRun;

constexpr std::int64_t kSixteenth = 1'587'500, kInch = 16 * kSixteenth, kMillimetre = 1'000'000;

constexpr Kit us_kit(const char* series, std::int64_t thickness) {
  return {series,          Tape::Inches,           250 * kSixteenth, 122 * kSixteenth, 186 * kSixteenth,
          58 * kSixteenth, thickness * kSixteenth, 122 * kSixteenth, 6 * kSixteenth,   2 * kSixteenth,
          58 * kSixteenth, 8 * kSixteenth,         kSixteenth,       4 * kSixteenth};
}
constexpr std::array<Kit, 4> kKits{
    us_kit("us-8", 122), us_kit("us-6", 90), us_kit("us-12", 186),
    Kit{"au-190", Tape::Millimetres, 390 * kMillimetre, 190 * kMillimetre, 290 * kMillimetre, 90 * kMillimetre,
        190 * kMillimetre, 190 * kMillimetre, 10 * kMillimetre, 3 * kMillimetre, 90 * kMillimetre, 12 * kMillimetre,
        kMillimetre, 6 * kMillimetre}};

/// splitmix64: a fixed published sequence, so that a seed names a building on every machine.
class Dice {
 public:
  explicit Dice(std::uint64_t seed) : state_(seed) {}
  std::int64_t from_to(std::int64_t low, std::int64_t high) {
    std::uint64_t z = (state_ += 0x9e3779b97f4a7c15ULL);
    z = (z ^ (z >> 30)) * 0xbf58476d1ce4e5b9ULL;
    z = (z ^ (z >> 27)) * 0x94d049bb133111ebULL;
    return low + static_cast<std::int64_t>((z ^ (z >> 31)) % static_cast<std::uint64_t>(high - low + 1));
  }

 private:
  std::uint64_t state_;
};

/// How the corners run in odd courses: arriving_through[k] is corner k's, where side k - 1 arrives and side k leaves.
using Corners = std::array<bool, 4>;

struct Bearings {
  std::int64_t start, end;
};

/// One side's panel for one way that its two corners run.
class SideModel {
 public:
  SideModel(const SmallBuilding& building, bool has_opening)
      : b_(building), kit_(*building.kit), has_opening_(has_opening) {}

  SideModel& of_length(std::int64_t nominal) {
    end_ = nominal - kit_.joint;  // between two convex corners
    return *this;
  }

  /// An opening of nominal place and width stands between N - j and N of its two block lines.
  [[nodiscard]] std::int64_t jamb_from() const { return b_.from - kit_.joint; }
  [[nodiscard]] std::int64_t jamb_to() const { return b_.from + b_.wide; }

  [[nodiscard]] bool has_lintel() const { return b_.sill + b_.high < b_.courses; }

  /// Rule 6, written down as the page has it.
  [[nodiscard]] std::vector<Bearings> bearings() const {
    const std::int64_t least = kit_.half;
    if (!has_opening_ || !has_lintel() || b_.make == LintelMake::BuiltUp) return {{least, least}};
    std::vector<Bearings> all;
    const std::int64_t wide = jamb_to() - jamb_from(), pitch = kit_.pitch();
    std::int64_t shortest = pitch - kit_.joint;
    while (shortest < wide + 2 * least) shortest += pitch;
    for (const std::int64_t whole : {shortest, shortest + pitch, shortest + 2 * pitch}) {
      const std::int64_t both = whole - wide;
      all.push_back({both / 2, both - both / 2});
      all.push_back({least, both - least});
      all.push_back({both - least, least});
      for (std::int64_t line = 0; line < end_ + pitch; line += pitch) {
        all.push_back({jamb_from() - line, both - (jamb_from() - line)});            // a unit starts there
        all.push_back({both - (end_ - line - jamb_to()), end_ - line - jamb_to()});  // a unit ends there
      }
    }
    std::erase_if(all, [&](const Bearings& each) { return each.start < least || each.end < least; });
    return all;
  }

  /// nullopt: a lintel's end has no masonry of its own under it, or ends of a run overlap.
  [[nodiscard]] std::optional<Panel> panel(bool start_through, bool end_through, const Bearings& bearings) const {
    Panel panel = rules();
    std::vector<std::vector<RowRun>> courses;
    for (int course = 1; course <= b_.courses; ++course)
      courses.push_back(runs(course, (course % 2 == 1) == start_through, (course % 2 == 1) == end_through, bearings));
    for (const auto& course : courses)
      for (const RowRun& run : course)
        if (run.end < run.start) return std::nullopt;
    add_rows(panel, courses);
    if (!has_opening_ || !has_lintel()) return panel;
    const auto below = static_cast<std::size_t>(b_.sill + b_.high - 1);  // the opening's uppermost course
    const std::vector<RowRun>& piers = courses[below];
    const bool carried =
        piers.front().start <= jamb_from() - bearings.start && jamb_to() + bearings.end <= piers.back().end;
    if (b_.make == LintelMake::OnePiece && !carried) return std::nullopt;
    Row& row = panel.rows[static_cast<std::size_t>(panel.course_rows[below])];
    row.uncut_zones = {{jamb_from() - bearings.start, jamb_from()}, {jamb_to(), jamb_to() + bearings.end}};
    return panel;
  }

 private:
  [[nodiscard]] Panel rules() const {
    Panel panel;
    panel.joint = kit_.joint;
    panel.joint_least = kit_.joint - kit_.tolerance;
    panel.joint_most = kit_.joint + kit_.tolerance;
    panel.least_piece = kit_.least_piece;
    panel.least_lap = kit_.full / 4;
    panel.short_lap_below = kit_.pitch() - kit_.short_lap_margin;
    panel.cut_step = kit_.cut_step;
    panel.half_length = kit_.half;
    panel.match_within = kit_.match_within;
    return panel;
  }

  [[nodiscard]] std::vector<RowRun> runs(int course, bool start_through, bool end_through,
                                         const Bearings& bearings) const {
    // The leg of the other side's corner unit is half a unit, of corner sets too.
    RowRun run{start_through ? 0 : kit_.half,
               0,
               start_through ? RunEnd::ThroughCorner : RunEnd::ButtCorner,
               RunEnd::FreeEnd,
               -1,
               -1};
    std::vector<RowRun> all;
    const auto close = [&](std::int64_t to, RunEnd kind, std::int32_t lintel) {
      run.end = to;
      run.at_end = kind;
      run.end_lintel = lintel;
      if (run.end != run.start || (has_joint(run.at_start) && has_joint(run.at_end))) all.push_back(run);
    };
    const auto leave_out = [&](std::int64_t from, std::int64_t to, RunEnd kind, std::int32_t lintel) {
      close(from, kind, lintel);
      run = RowRun{to, 0, kind, RunEnd::FreeEnd, lintel, -1};
    };
    const int head = b_.sill + b_.high;
    if (has_opening_ && course > b_.sill && course <= head) leave_out(jamb_from(), jamb_to(), RunEnd::Jamb, -1);
    if (has_opening_ && b_.make == LintelMake::OnePiece && course == head + 1)
      leave_out(jamb_from() - bearings.start, jamb_to() + bearings.end, RunEnd::LintelEnd, 0);
    close(end_through ? end_ : end_ - kit_.half, end_through ? RunEnd::ThroughCorner : RunEnd::ButtCorner, -1);
    return all;
  }

  [[nodiscard]] std::vector<bond::PieceChoice> choices() const {
    const bool half_at_corner = kit_.thickness <= kit_.half;
    return {{kit_.full, false, true, false, {}, 0},
            {kit_.three_quarters, true, false, false, {}, 0},
            {kit_.half, false, false, half_at_corner, {}, 0},
            {kit_.quarter, true, false, false, {}, 0}};
  }

  static bool alike(const std::vector<RowRun>& a, const std::vector<RowRun>& b) {
    return std::ranges::equal(a, b, [](const RowRun& x, const RowRun& y) {
      return x.start == y.start && x.end == y.end && x.at_start == y.at_start && x.at_end == y.at_end;
    });
  }

  /// A band goes on as long as each course is as the course two below it; its odd courses are one row, its even ones
  /// another.
  void add_rows(Panel& panel, const std::vector<std::vector<RowRun>>& courses) const {
    std::size_t first = 0;
    std::int32_t band = 0;
    for (std::size_t c = 0; c < courses.size(); ++c) {
      const bool goes_on = c < first + 2 || alike(courses[c], courses[c - 2]);
      if (!goes_on) {
        first = c;
        ++band;
      }
      if (c < first + 2) {
        Row row;
        row.runs = courses[c];
        row.choices = choices();
        row.make_up_from = kit_.full;
        row.band = band;
        panel.course_rows.push_back(static_cast<std::int32_t>(panel.rows.size()));
        panel.rows.push_back(row);
      } else {
        panel.course_rows.push_back(panel.course_rows[c - 2]);
      }
      panel.rows[static_cast<std::size_t>(panel.course_rows[c])].courses.push_back(static_cast<std::int32_t>(c) + 1);
    }
  }

  const SmallBuilding& b_;
  const Kit& kit_;
  bool has_opening_;
  std::int64_t end_ = 0;
};

/// Least costs of a side, by [start runs through in odd courses][end does]. Empty: nothing lays.
using SideTable = std::array<std::array<std::optional<FirstThree>, 2>, 2>;

struct SideCosts {
  const SideModel* model;
  SideTable least{};
};

class Solver {
 public:
  Solver(Program program, std::size_t most_columns) : program_(program), most_columns_(most_columns) {}

  void fill(SideCosts& side) {
    for (const bool start : {false, true})
      for (const bool end : {false, true})
        for (const Bearings& bearings : side.model->bearings()) {
          const std::optional<Panel> panel = side.model->panel(start, end, bearings);
          if (panel) take(side.least[start ? 1 : 0][end ? 1 : 0], *panel);
        }
  }
  [[nodiscard]] ModelAnswer& answer() { return answer_; }

 private:
  void take(std::optional<FirstThree>& best, const Panel& panel) {
    if (answer_.outcome != Outcome::Infeasible) return;  // out of time, or too large
    const MilpAnswer found = solve_by_milp(panel, program_, {.most_columns = most_columns_, .terms = Terms::First});
    ++answer_.panels;
    answer_.columns = std::max(answer_.columns, found.columns);
    if (found.outcome == Outcome::OutOfTime || found.outcome == Outcome::TooLarge) answer_.outcome = found.outcome;
    if (found.outcome != Outcome::Optimal) return;
    const FirstThree cost{found.cost.short_laps, found.cost.cuts, found.cost.short_pieces};
    if (!best || cost < *best) best = cost;
  }

  Program program_;
  std::size_t most_columns_;
  ModelAnswer answer_{Outcome::Infeasible, {}, 0, 0};
};

/// A side that costs nothing.
constexpr SideCosts kFree{nullptr, {{{FirstThree{}, FirstThree{}}, {FirstThree{}, FirstThree{}}}}};

/// The least of the sides' sum over all sixteen sets of corners; empty where none lays. Sides go round from AB to DA.
std::optional<FirstThree> least_of_all_corners(const std::array<const SideCosts*, 4>& sides) {
  std::optional<FirstThree> least;
  for (unsigned set = 0; set < 16; ++set) {
    const auto arriving_through = [&](std::size_t corner) { return (set >> (corner % 4) & 1U) != 0; };
    std::optional<FirstThree> sum = FirstThree{};
    for (std::size_t k = 0; k < 4; ++k) {
      const std::optional<FirstThree>& side =
          sides[k]->least[arriving_through(k) ? 0 : 1][arriving_through(k + 1) ? 1 : 0];
      if (!side) sum.reset();
      for (std::size_t term = 0; sum && term < sum->size(); ++term) (*sum)[term] += (*side)[term];
    }
    if (sum && (!least || *sum < *least)) least = sum;
  }
  return least;
}

std::string text(std::int64_t length, const Kit& kit) {
  return std::to_string(length / (kit.tape == Tape::Inches ? kInch : kMillimetre));
}

}  // namespace

SmallBuilding small_building(std::uint64_t seed) {
  Dice dice(seed);
  SmallBuilding b;
  b.kit = &kKits[std::array<std::size_t, 6>{0, 0, 0, 1, 2, 3}[static_cast<std::size_t>(dice.from_to(0, 5))]];
  const std::int64_t step = b.kit->tape == Tape::Inches ? kInch : 10 * kMillimetre,
                     pitch = b.kit->pitch() / step;  // 8 or 20 steps
  const std::int64_t off =
      dice.from_to(0, 3);  // which of the four sizes is surely off the grid; of the others one in three is
  std::int64_t sizes_made = 0;
  const auto size = [&](std::int64_t least, std::int64_t most) {
    const bool on_grid = dice.from_to(1, 3) > 1 && sizes_made != off;
    ++sizes_made;
    return on_grid ? dice.from_to(least, most) * pitch : dice.from_to(least * pitch + 1, most * pitch - 1);
  };
  const std::int64_t pier = size(2, 4), wide = size(2, 4), length = pier + wide + 2 * pitch + size(0, 3),
                     width = size(4, 7);
  b.length = length * step;
  b.width = width * step;
  b.wide = wide * step;
  b.from = pier * step;
  b.courses = static_cast<int>(dice.from_to(3, 5));
  b.sill = static_cast<int>(dice.from_to(0, 1));
  b.high = dice.from_to(1, 3) == 1 ? b.courses - b.sill : static_cast<int>(dice.from_to(1, b.courses - b.sill - 1));
  b.make = dice.from_to(1, 3) == 1 ? LintelMake::OnePiece : LintelMake::BuiltUp;
  return b;
}

Job job_of(const SmallBuilding& b) {
  Job job;
  job.name = "clay store";
  job.tape = b.kit->tape;
  job.units.series = b.kit->series;
  job.heights.courses = b.courses;
  const auto nominal = [](std::int64_t length) { return StatedLength{Length::nanometres(length), Basis::Nominal}; };
  for (std::size_t k = 0; k < 4; ++k) {
    Side side;
    side.from = std::string(1, "ABCD"[k]);
    side.to = std::string(1, "ABCD"[(k + 1) % 4]);
    side.length = nominal(k % 2 == 0 ? b.length : b.width);
    side.turn = Turn::Right;
    job.outline.sides.push_back(side);
  }
  Opening opening;
  opening.name = "O1";
  opening.on = "AB";
  opening.place = {"A", nominal(b.from), std::nullopt};
  opening.masonry = MasonrySize{nominal(b.wide), nominal((b.kit->height + b.kit->joint) * b.high)};
  if (b.sill > 0) opening.sill_course = b.sill;
  if (b.sill + b.high < b.courses) opening.lintel = Lintel{b.make, 1, Length::nanometres(b.kit->half), {}};
  job.openings = {opening};
  return job;
}

std::string say(const SmallBuilding& b) {
  return std::string(b.kit->series) + ", " + text(b.length, *b.kit) + " by " + text(b.width, *b.kit) + ", " +
         std::to_string(b.courses) + " courses, opening at " + text(b.from, *b.kit) + ", " + text(b.wide, *b.kit) +
         " wide, courses " + std::to_string(b.sill + 1) + " to " + std::to_string(b.sill + b.high) +
         (b.sill + b.high == b.courses     ? ", no lintel"
          : b.make == LintelMake::OnePiece ? ", lintel in one piece"
                                           : ", lintel of units");
}

ModelAnswer least_by_model(const SmallBuilding& building, Program program, std::size_t most_columns) {
  const SideModel of_front = SideModel(building, true).of_length(building.length);
  const SideModel of_back = SideModel(building, false).of_length(building.length);
  const SideModel of_flank = SideModel(building, false).of_length(building.width);
  SideCosts front{&of_front}, back{&of_back}, flank{&of_flank};
  Solver solver(program, most_columns);
  solver.fill(flank);
  solver.fill(back);
  ModelAnswer& answer = solver.answer();
  const bool rest_lays = least_of_all_corners({&kFree, &flank, &back, &flank}).has_value();
  if (rest_lays) solver.fill(front);
  if (answer.outcome != Outcome::Infeasible) return answer;
  const std::optional<FirstThree> least = least_of_all_corners({&front, &flank, &back, &flank});
  if (!least) return answer;
  answer.outcome = Outcome::Optimal;
  answer.least = *least;
  return answer;
}

}  // namespace stringcourse::oracle
