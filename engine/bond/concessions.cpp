// What a layout gives up, read off its pieces as they lie.
#include "bond/concessions.hpp"

#include <algorithm>
#include <optional>
#include <utility>

#include "bond/exact.hpp"

namespace stringcourse::bond {
namespace {

using What = Concession::What;

/// A piece as it lies.
struct Lying {
  Exact start;
  const Chosen* piece = nullptr;
  const PieceChoice* choice = nullptr;  // null: the make-up piece
  const Row* row = nullptr;
  std::size_t run = 0;

  [[nodiscard]] std::vector<Cell> cells() const {
    std::vector<Cell> whole;
    for (const Cell& cell : choice != nullptr ? choice->cells : row->make_up_cells) {
      if (choice == nullptr && cell.to >= piece->length) continue;
      whole.push_back(piece->cut == CutEnd::Start ? Cell{piece->length - cell.to, piece->length - cell.from} : cell);
    }
    return whole;
  }
};

/// A head joint, and the lintel whose end it is.
struct Joint {
  Exact place;
  std::int32_t lintel = -1;
};

/// One course of a panel, with everything in its place.
struct Laid {
  std::vector<Lying> pieces;
  std::vector<Joint> joints;
};

std::int64_t nearest(const Exact& place) {
  return 2 * (place.numerator - place.whole * place.denominator) >= place.denominator ? place.whole + 1 : place.whole;
}

class Reader {
 public:
  Reader(const PlacedPanel& placed, std::vector<Concession>& found)
      : placed_(&placed), panel_(&placed.panel), found_(&found) {}

  void run() {
    Laid below;
    for (std::size_t c = 0; c < panel_->course_rows.size(); ++c) {
      course_ = static_cast<std::int32_t>(c) + 1;
      Laid laid = lay(static_cast<std::size_t>(panel_->course_rows[c]));
      compare_laps(below, laid);
      hold_bars(below, laid);
      look_under_bearings(laid);
      below = std::move(laid);
    }
  }

 private:
  void give_up(What what, std::int64_t from, std::int64_t to, std::int64_t amount) {
    const std::int64_t origin = placed_->site->from;
    found_->push_back({what, placed_->site->wall, course_, Length::nanometres(from + origin),
                       Length::nanometres(to + origin), Length::nanometres(amount)});
  }
  void give_up(What what, const Lying& lying) {
    const std::int64_t from = nearest(lying.start);
    give_up(what, from, from + lying.piece->length, lying.piece->length);
  }

  Laid lay(std::size_t index) {
    const Row& row = panel_->rows[index];
    Laid laid;
    for (std::size_t r = 0; r < row.runs.size(); ++r) lay_run(row, r, placed_->answer->rows[index][r], laid);
    return laid;
  }

  void lay_run(const Row& row, std::size_t r, const std::vector<Chosen>& pieces, Laid& laid) {
    const RowRun& run = row.runs[r];
    const std::int64_t starts = has_joint(run.at_start) ? 1 : 0, ends = has_joint(run.at_end) ? 1 : 0;
    const std::int64_t count = static_cast<std::int64_t>(pieces.size()), joints = count - 1 + starts + ends;
    std::int64_t slack = run.end - run.start;
    for (const Chosen& piece : pieces) slack -= piece.length;
    if (pieces.empty() && (joints != 1 || slack < panel_->far_joint_least || slack > panel_->far_joint_most)) {
      give_up(What::Bare, run.start, run.end, slack);
      return;
    }
    const std::int64_t m = std::max<std::int64_t>(joints, 1);
    if (slack < panel_->joint_least * joints || slack > panel_->joint_most * joints)
      give_up(What::Joints, run.start, run.end, slack / m);
    std::int64_t before = 0;
    const auto face = [&](std::int64_t joints_before) {
      return Exact::make(static_cast<int128>(run.start + before) * m + static_cast<int128>(joints_before) * slack, m);
    };
    const auto add_joint = [&](std::int64_t joint, RunEnd at, std::int32_t lintel) {
      if (at == RunEnd::TiedJunction) return;
      const int128 doubled =
          2 * static_cast<int128>(run.start + before) * m + static_cast<int128>(2 * joint + 1) * slack;
      laid.joints.push_back({Exact::make(doubled, 2 * m), at == RunEnd::LintelEnd ? lintel : -1});
    };
    const bool one_joint = pieces.empty() && run.at_end != RunEnd::ButtCorner && run.at_end != RunEnd::SlotSide;
    if (one_joint) add_joint(0, run.at_end, run.end_lintel);
    else if (starts == 1) add_joint(0, run.at_start, run.start_lintel);
    for (std::size_t k = 0; k < pieces.size(); ++k) {
      const Chosen& piece = pieces[k];
      const std::int64_t number = starts + static_cast<std::int64_t>(k);
      const PieceChoice* choice = piece.choice < 0 ? nullptr : &row.choices[static_cast<std::size_t>(piece.choice)];
      laid.pieces.push_back({face(number), &piece, choice, &row, r});
      judge_ends(laid.pieces.back(), run, k == 0, k + 1 == pieces.size());
      before += piece.length;
      if (k + 1 < pieces.size()) add_joint(number, RunEnd::ButtCorner, -1);
      else if (ends == 1) add_joint(number, run.at_end, run.end_lintel);
    }
  }

  void judge_ends(const Lying& lying, const RowRun& run, bool first, bool last) {
    const bool corner = lying.choice != nullptr && (lying.choice->corner || (lying.choice->half && first && last));
    if (first && run.at_start == RunEnd::ThroughCorner && !corner) give_up(What::Corner, lying);
    if (last && run.at_end == RunEnd::ThroughCorner && !corner) give_up(What::Corner, lying);
    const bool is_cut = lying.piece->cut != CutEnd::None;
    if (is_cut && first && last && shows_face(run.at_start) && shows_face(run.at_end)) give_up(What::CutFace, lying);
  }

  void compare_laps(const Laid& below, const Laid& laid) {
    for (const Joint& lower : below.joints) {
      for (const Joint& upper : laid.joints) {
        if (lower.lintel >= 0 && lower.lintel == upper.lintel) continue;
        if (!closer_than(lower.place, upper.place, panel_->least_lap)) continue;
        const std::int64_t from = nearest(lower.place), to = nearest(upper.place);
        const bool stacked = closer_than(lower.place, upper.place, panel_->stacked_lap);
        give_up(stacked ? What::StackedLap : What::ShortLap, std::min(from, to), std::max(from, to),
                from < to ? to - from : from - to);
      }
    }
  }

  /// The cell of this course that holds the bar. `covered`: pieces stand round it.
  std::optional<std::pair<Exact, Exact>> cell_of(const Laid& laid, const PanelBar& bar, bool& covered) const {
    const Exact centre = Exact::at(bar.centre);
    for (const Lying& lying : laid.pieces) {
      const RowRun& run = lying.row->runs[lying.run];
      if (bar.centre <= run.start || bar.centre >= run.end) continue;
      covered = true;
      if (compare(centre, lying.start) <= 0 || compare(centre, lying.start, lying.piece->length) >= 0) continue;
      for (const Cell& cell : lying.cells()) {
        const Exact from = lying.start.moved(cell.from), to = lying.start.moved(cell.to);
        if (compare(centre, from, bar.half_width) >= 0 && compare(to, centre, bar.half_width) >= 0)
          return std::pair(from, to);
      }
    }
    return std::nullopt;
  }

  void hold_bars(const Laid& below, const Laid& laid) {
    for (const PanelBar& bar : panel_->bars) {
      bool covered = false, covered_below = false;
      const auto here = cell_of(laid, bar, covered), under = cell_of(below, bar, covered_below);
      if (covered && !here) give_up(What::Bar, bar.centre, bar.centre, 0);
      if (!here || !under) continue;
      const Exact& left = compare(here->first, under->first) > 0 ? here->first : under->first;
      const Exact& right = compare(here->second, under->second) < 0 ? here->second : under->second;
      if (compare(right, left, bar.common_along) < 0) give_up(What::BarCells, bar.centre, bar.centre, 0);
    }
  }

  void look_under_bearings(const Laid& laid) {
    for (const Lying& lying : laid.pieces) {
      if (lying.piece->cut == CutEnd::None || !lying.cells().empty()) continue;
      for (const UncutZone& zone : lying.row->uncut_zones) {
        if (zone.course != course_) continue;
        const Exact end = lying.start.moved(lying.piece->length);
        if (compare(lying.start, Exact::at(zone.to)) < 0 && compare(end, Exact::at(zone.from)) > 0)
          give_up(What::CutUnderBearing, lying);
      }
    }
  }

  const PlacedPanel* placed_;
  const Panel* panel_;
  std::vector<Concession>* found_;
  std::int32_t course_ = 1;
};

}  // namespace

std::int64_t weight_of(Concession::What what) {
  switch (what) {
    case What::Joints: return weight::kWideJoints;
    case What::Bar:
    case What::BarCells: return weight::kBarUnheld;
    case What::BarSpacing: return weight::kBarSpacing;
    case What::CutUnderBearing: return weight::kCutUnderBearing;
    case What::ShortLap: return weight::kLap;
    case What::CutFace: return weight::kCutFace;
    case What::StackedLap: return weight::kStackedLap;
    case What::Corner: return weight::kCutCorner;
    case What::Bare: break;
  }
  return weight::kBare;
}

std::vector<Concession> concessions_of(const std::vector<PlacedPanel>& panels) {
  std::vector<Concession> found;
  for (const PlacedPanel& placed : panels) {
    if (placed.answer != nullptr && placed.answer->cost.conceded != 0) Reader(placed, found).run();
  }
  return found;
}

}  // namespace stringcourse::bond
