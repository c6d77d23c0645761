#include "oracle/random_panels.hpp"

#include <algorithm>
#include <vector>

namespace stringcourse::oracle {
namespace {

using bond::Cell;
using bond::Panel;
using bond::Row;
using bond::RowRun;

/// splitmix64: a fixed published sequence, so that a seed names a panel on every machine.
class Dice {
 public:
  explicit Dice(std::uint64_t seed) : state_(seed) {}
  std::uint64_t next() {
    std::uint64_t z = (state_ += 0x9e3779b97f4a7c15ULL);
    z = (z ^ (z >> 30)) * 0xbf58476d1ce4e5b9ULL;
    z = (z ^ (z >> 27)) * 0x94d049bb133111ebULL;
    return z ^ (z >> 31);
  }
  std::int64_t from_to(std::int64_t low, std::int64_t high) {
    return low + static_cast<std::int64_t>(next() % static_cast<std::uint64_t>(high - low + 1));
  }
  bool chance(std::int64_t percent) { return from_to(1, 100) <= percent; }

 private:
  std::uint64_t state_;
};

/// Sizes in `mark`s: a sixteenth of an inch or half a millimetre.
struct Kit {
  std::int64_t mark, full, half, quarter, three_quarters, joint, tolerance, least_piece, margin, step, match, thickness;
  std::vector<Cell> full_cells, half_cells;
};

constexpr std::int64_t kSixteenth = 1'587'500, kHalfMillimetre = 500'000;

Kit us_kit(std::int64_t thickness) {
  return {kSixteenth, 250, 122, 58, 186, 6, 2, 58, 8, 1, 4, thickness, {{16, 117}, {133, 234}}, {{16, 106}}};
}
Kit metric_kit() {
  return {kHalfMillimetre, 780, 380, 180, 580, 20, 6, 180, 24, 2, 12, 380, {{60, 360}, {420, 720}}, {{60, 320}}};
}
Kit large_metric_kit() {
  return {kHalfMillimetre, 880, 430, 205, 655, 20, 6, 204, 24, 2, 12, 280, {{60, 410}, {470, 820}}, {{60, 370}}};
}

Kit any_kit(Dice& dice) {
  const std::int64_t pick = dice.from_to(1, 10);
  if (pick <= 5) return us_kit(122);
  if (pick == 6) return us_kit(90);
  if (pick == 7) return us_kit(186);
  return pick <= 9 ? metric_kit() : large_metric_kit();
}

enum class EndMake { Convex, Reentrant, Free, Control, Tied, Lapped };

/// One end of the wall: what it is, and which courses run through there.
struct WallEnd {
  EndMake make = EndMake::Free;
  std::int64_t through_parity = 0;
};

struct EndPlace {
  std::int64_t inwards = 0;  // how far from the outer end the run begins, in marks
  RunEnd end = RunEnd::FreeEnd;
};

EndPlace end_place(const WallEnd& wall_end, const Kit& kit, std::int64_t parity) {
  const bool through = parity == wall_end.through_parity;
  const std::int64_t short_leg = kit.half;
  switch (wall_end.make) {
    case EndMake::Convex: return through ? EndPlace{0, RunEnd::ThroughCorner} : EndPlace{short_leg, RunEnd::ButtCorner};
    case EndMake::Reentrant:
      return through ? EndPlace{-kit.thickness, RunEnd::ThroughCorner}
                     : EndPlace{short_leg - kit.thickness, RunEnd::ButtCorner};
    case EndMake::Lapped:
      return through ? EndPlace{-kit.thickness, RunEnd::EnteringJunction} : EndPlace{0, RunEnd::LappedButt};
    case EndMake::Control: return {0, RunEnd::ControlJoint};
    case EndMake::Tied: return {0, RunEnd::TiedJunction};
    case EndMake::Free: break;
  }
  return {0, RunEnd::FreeEnd};
}

WallEnd any_end(Dice& dice) {
  constexpr EndMake kMakes[] = {EndMake::Convex,  EndMake::Convex,    EndMake::Convex, EndMake::Free,  EndMake::Free,
                                EndMake::Control, EndMake::Reentrant, EndMake::Tied,   EndMake::Lapped};
  return {kMakes[dice.from_to(0, 8)], dice.from_to(0, 1)};
}

/// A break in the wall over some courses.
struct Break {
  std::int64_t from = 0, to = 0;  // marks
  RunEnd end = RunEnd::Jamb;
  std::int32_t lintel = -1;
};

struct Band {
  std::int64_t courses = 1;
  std::vector<Break> breaks;
};

class WallMaker {
 public:
  WallMaker(std::uint64_t seed, PanelSize size) : dice_(seed), size_(size), kit_(any_kit(dice_)) {}

  Panel make() {
    set_rules();
    length_ = any_length();
    left_ = any_end(dice_);
    right_ = any_end(dice_);
    choose_bands();
    lay_bands();
    add_bars();
    return std::move(panel_);
  }

 private:
  std::int64_t nanometres(std::int64_t marks) const { return marks * kit_.mark; }
  std::int64_t pitch() const { return kit_.half + kit_.joint; }

  void set_rules() {
    panel_.joint = nanometres(kit_.joint);
    panel_.joint_least = nanometres(kit_.joint - kit_.tolerance);
    panel_.joint_most = nanometres(kit_.joint + kit_.tolerance);
    panel_.least_piece = nanometres(kit_.least_piece);
    panel_.least_lap = nanometres(kit_.full) / 4;
    panel_.short_lap_below = nanometres(pitch() - kit_.margin);
    panel_.cut_step =
        nanometres(kit_.step * (dice_.chance(size_ == PanelSize::Tiny ? 20 : 6) ? 4 : 1));  // 4: it is rounded
    panel_.half_length = nanometres(kit_.half);
    panel_.match_within = nanometres(kit_.match);
    panel_.weighted = dice_.chance(5);
    panel_.cuts_before_laps = !panel_.weighted && dice_.chance(15);
    make_up_ = !panel_.weighted && dice_.chance(70);
    listed_cuts_ = dice_.chance(85);
  }

  std::int64_t any_length() {
    const std::int64_t least = size_ == PanelSize::Tiny ? 4 : 10, most = size_ == PanelSize::Tiny ? 8 : 24;
    std::int64_t length = dice_.from_to(least, most) * pitch() / 2 - kit_.joint;
    if (dice_.chance(40)) length += dice_.from_to(-16, 16) * (dice_.chance(50) ? 2 : 1);
    return length;
  }

  void choose_bands() {
    const std::int64_t courses = dice_.from_to(2, 4);
    const std::int64_t width = dice_.from_to(3, 5) * pitch() + kit_.joint;
    const bool room = length_ > width + 4 * pitch();
    if (room && dice_.chance(65)) return choose_opening(courses, width);
    bands_ = {{courses, {}}};
    if (length_ > 5 * pitch() && dice_.chance(15)) choose_slot();
    else if (dice_.chance(20) && courses > 2) bands_ = {{courses - 1, {}}, {1, {}}};  // a change of stock
  }

  void choose_slot() {
    const std::int64_t from =
        dice_.from_to(2, (length_ - 2 * pitch()) / pitch() - 1) * pitch() + (dice_.chance(50) ? 0 : kit_.joint);
    slot_ = {from, from + kit_.thickness, RunEnd::SlotSide, -1};
    slot_parity_ = dice_.from_to(0, 1);
  }

  void choose_opening(std::int64_t courses, std::int64_t width) {
    std::int64_t from = dice_.from_to(2, (length_ - width) / pitch() - 2) * pitch() - kit_.joint;
    if (dice_.chance(25)) from += dice_.from_to(-16, 16);
    const Break opening{from, from + width, RunEnd::Jamb, -1};
    const std::int64_t high = dice_.from_to(1, courses);
    bands_ = {{high, {opening}}};
    if (high == courses) return;
    if (dice_.chance(45)) {
      bands_.push_back({courses - high, {}});
      return;
    }
    const std::int64_t bearing = kit_.half + (dice_.chance(30) ? pitch() : 0),
                       other = kit_.half + (dice_.chance(50) ? pitch() : 0);
    const Break lintel{from - bearing, from + width + other, RunEnd::LintelEnd, 0};
    const std::int64_t deep = dice_.from_to(1, courses - high);
    bands_.push_back({deep, {lintel}});
    if (high + deep < courses) bands_.push_back({courses - high - deep, {}});
    if (dice_.chance(50)) zones_ = {{lintel.from, from}, {from + width, lintel.to}};
  }

  void lay_bands() {
    std::int64_t course = 0;
    for (std::size_t b = 0; b < bands_.size(); ++b) {
      const auto first_row = static_cast<std::int32_t>(panel_.rows.size());
      for (std::int64_t k = 0; k < bands_[b].courses; ++k, ++course) {
        const std::int32_t row = first_row + static_cast<std::int32_t>(k % 2);
        if (k < 2) panel_.rows.push_back(row_of(bands_[b], static_cast<std::int32_t>(b), course % 2));
        panel_.rows[static_cast<std::size_t>(row)].courses.push_back(static_cast<std::int32_t>(course) + 1);
        panel_.course_rows.push_back(row);
      }
      if (b == 0)
        for (const Break& zone : zones_)
          panel_.rows[static_cast<std::size_t>(panel_.course_rows.back())].uncut_zones.push_back(
              {nanometres(zone.from), nanometres(zone.to)});
    }
  }

  Row row_of(const Band& band, std::int32_t index, std::int64_t parity) const {
    Row row;
    row.band = index;
    row.choices = choices();
    if (make_up_) {
      row.make_up_from = nanometres(kit_.full);
      row.make_up_cells = cells(kit_.full_cells);
    }
    std::vector<Break> breaks = band.breaks;
    if (slot_.to > slot_.from && parity == slot_parity_) breaks.push_back(slot_);
    const EndPlace left = end_place(left_, kit_, parity), right = end_place(right_, kit_, parity);
    RowRun run{nanometres(left.inwards), 0, left.end, left.end, -1, -1};
    for (const Break& gap : breaks) {
      run.end = nanometres(gap.from);
      run.at_end = gap.end;
      run.end_lintel = gap.lintel;
      row.runs.push_back(run);
      run = {nanometres(gap.to), 0, gap.end, gap.end, gap.lintel, -1};
    }
    run.end = nanometres(length_ - right.inwards);
    run.at_end = right.end;
    row.runs.push_back(run);
    return row;
  }

  std::vector<Cell> cells(const std::vector<Cell>& marks) const {
    std::vector<Cell> made;
    for (const Cell& cell : marks) made.push_back({nanometres(cell.from), nanometres(cell.to)});
    return made;
  }

  std::vector<bond::PieceChoice> choices() const {
    const std::vector<Cell> first{cells(kit_.full_cells).front()};
    std::vector<bond::PieceChoice> made{{nanometres(kit_.full), false, true, false, cells(kit_.full_cells), 10}};
    if (listed_cuts_) made.push_back({nanometres(kit_.three_quarters), true, false, false, first, 25});
    made.push_back({nanometres(kit_.half), false, false, true, cells(kit_.half_cells), 7});
    if (listed_cuts_) made.push_back({nanometres(kit_.quarter), true, false, false, {}, 19});
    return made;
  }

  void add_bars() {
    if (!dice_.chance(45)) return;
    const std::int64_t count = dice_.from_to(1, 2);
    for (std::int64_t i = 0; i < count; ++i) {
      std::int64_t centre = kit_.half / 2 + dice_.from_to(0, length_ / pitch() - 1) * pitch();
      if (dice_.chance(30)) centre += dice_.from_to(-16, 16);
      const std::int64_t inch = kit_.mark == kSixteenth ? 16 : 50;
      panel_.bars.push_back({nanometres(centre), nanometres(inch) / 2, nanometres(inch) * dice_.from_to(2, 3)});
    }
    std::sort(panel_.bars.begin(), panel_.bars.end(), [](const auto& a, const auto& b) { return a.centre < b.centre; });
  }

  Dice dice_;
  PanelSize size_;
  Kit kit_;
  Panel panel_;
  std::int64_t length_ = 0;
  WallEnd left_, right_;
  std::vector<Band> bands_;
  std::vector<Break> zones_;
  Break slot_;
  std::int64_t slot_parity_ = 0;
  bool make_up_ = true, listed_cuts_ = true;
};

}  // namespace

Panel random_panel(std::uint64_t seed, PanelSize size) { return WallMaker(seed, size).make(); }

std::string say(const Panel& panel) {
  std::string text = std::to_string(panel.course_rows.size()) + " courses";
  for (const Row& row : panel.rows) {
    text += "; row of band " + std::to_string(row.band) + ":";
    for (const RowRun& run : row.runs)
      text += " [" + std::to_string(run.start) + " " + std::to_string(static_cast<int>(run.at_start)) + ", " +
              std::to_string(run.end) + " " + std::to_string(static_cast<int>(run.at_end)) + "]";
  }
  for (const bond::PanelBar& bar : panel.bars) text += "; bar " + std::to_string(bar.centre);
  return text;
}

}  // namespace stringcourse::oracle
