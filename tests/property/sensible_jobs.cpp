#include "sensible_jobs.hpp"

#include <algorithm>
#include <string>
#include <utility>

#include "dice.hpp"

namespace stringcourse::property {
namespace {

struct Leg {
  Length length;  // nominal
  Turn turn = Turn::Right;
};

class Maker {
 public:
  Maker(std::uint64_t seed, Grain grain) : dice_(seed * 3 + static_cast<std::uint64_t>(grain)), grain_(grain) {}

  Job make() {
    job_.name = "sensible building";
    choose_series();
    choose_outline();
    courses_ = static_cast<int>(dice_.between(10, 14));
    job_.heights.courses = courses_;
    choose_openings();
    choose_control_joints();
    choose_steel();
    return std::move(job_);
  }

 private:
  /// What a size or a place is measured in.
  [[nodiscard]] Length step() const {
    const bool inches = series_->tape == Tape::Inches;
    switch (grain_) {
      case Grain::Module: return series_->pitch();
      case Grain::Inch: return inches ? Length::inches(1) : Length::millimetres(10);
      case Grain::Sixteenth: break;
    }
    return inches ? Length::sixteenths(1) : Length::millimetres(1);
  }
  /// Between so many half units, on the grain.
  Length size(std::int64_t least, std::int64_t most) {
    const Length pitch = series_->pitch();
    const std::int64_t low = -(-(pitch * least)).whole_multiples(step()), high = (pitch * most).whole_multiples(step());
    return step() * dice_.between(low, std::max(low, high));
  }

  void choose_series() {
    const std::vector<std::string> all{"us-8",  "us-8", "us-8",   "us-8",   "us-12",  "us-12",  "us-6",
                                       "us-10", "us-4", "au-190", "au-190", "au-140", "uk-100", "uk-215"};
    series_ = find_series(dice_.pick(all));
    job_.units.series = series_->id;
    job_.tape = series_->tape;
  }

  void choose_outline() {
    const Length a = size(18, 54), b = size(15, 42);
    std::vector<Leg> legs;
    const std::int64_t shape = dice_.below(10);
    if (shape < 6) {
      legs = {{a}, {b}, {a}, {b}};
    } else if (shape < 9) {
      const Length c = size(9, a.whole_multiples(series_->pitch()) - 9),
                   d = size(6, b.whole_multiples(series_->pitch()) - 6);
      legs = {{a}, {b}, {c}, {d, Turn::Left}, {a - c}, {b - d}};
    } else {
      const Length left = size(9, 15), notch = size(9, 15), right = size(9, 15), d = size(4, 8);
      legs = {{left + notch + right}, {b}, {left}, {d, Turn::Left}, {notch, Turn::Left}, {d}, {right}, {b}};
    }
    for (std::size_t i = 0; i < legs.size(); ++i) {
      Side side;
      side.from = std::string(1, static_cast<char>('A' + i));
      side.to = std::string(1, static_cast<char>('A' + (i + 1) % legs.size()));
      side.length = {legs[i].length, Basis::Nominal};
      side.turn = legs[i].turn;
      lengths_.push_back(legs[i].length);
      taken_.push_back({});
      job_.outline.sides.push_back(std::move(side));
    }
  }

  struct Taken {
    Length from, to;
  };

  /// A stretch with at least two half units to each neighbour and three to each corner.
  std::optional<Length> free_stretch(std::size_t side, Length width) {
    const Length pitch = series_->pitch(), beside = pitch * 2, corner = pitch * 3;
    const std::int64_t low = corner.whole_multiples(step()) + 1,
                       high = (lengths_[side] - width - corner).whole_multiples(step());
    if (high < low) return std::nullopt;
    for (int tries = 0; tries < 8; ++tries) {
      const Length from = step() * dice_.between(low, high);
      const bool free = std::ranges::none_of(
          taken_[side], [&](const Taken& t) { return from < t.to + beside && t.from < from + width + beside; });
      if (!free) continue;
      taken_[side].push_back({from, from + width});
      return from;
    }
    return std::nullopt;
  }

  void choose_openings() {
    for (std::int64_t left = dice_.between(1, 6), number = 1; left > 0; --left, ++number) choose_opening(number);
  }

  void choose_opening(std::int64_t number) {
    enum class Sort { Door, Overhead, Window };
    const Sort sort = number == 1                      ? Sort::Door
                      : number == 2 && dice_.one_in(2) ? Sort::Overhead
                      : dice_.one_in(3)                ? Sort::Door
                                                       : Sort::Window;
    const Length wide = sort == Sort::Door ? size(5, 6) : sort == Sort::Overhead ? size(12, 15) : size(3, 8);
    const auto side = static_cast<std::size_t>(dice_.below(static_cast<std::int64_t>(lengths_.size())));
    const auto from = free_stretch(side, wide);
    if (!from) return;
    Opening opening;
    opening.name = (sort == Sort::Door ? "D" : sort == Sort::Overhead ? "O" : "W") + std::to_string(number);
    opening.on = job_.outline.sides[side].from + job_.outline.sides[side].to;
    opening.place = {job_.outline.sides[side].from, {*from, Basis::Nominal}, std::nullopt};
    const int deep = sort == Sort::Overhead ? 2 : 1;
    const int head = static_cast<int>(dice_.between(7, courses_ - deep - 1));  // courses under the lintel
    const int high = sort == Sort::Window ? static_cast<int>(dice_.between(3, 6)) : head;
    opening.masonry = MasonrySize{{wide, Basis::Nominal}, {(series_->height + series_->joint) * high, Basis::Nominal}};
    if (sort == Sort::Window) opening.sill_course = head - high;
    Lintel lintel;
    lintel.make = dice_.one_in(3) ? LintelMake::OnePiece : LintelMake::BuiltUp;
    lintel.courses = deep;
    opening.lintel = lintel;
    job_.openings.push_back(std::move(opening));
  }

  void choose_control_joints() {
    if (dice_.one_in(6)) job_.control_joints.rule = series_->tape == Tape::Inches ? JointRule::Us : JointRule::Uk;
  }

  void choose_steel() {
    if (dice_.one_in(2) && std::ranges::find(series_->made, UnitKind::BondBeam) != series_->made.end())
      job_.steel.bond_beams = {courses_};
    if (!series_->grouts || dice_.one_in(3)) return;
    Bars bars;
    bars.size = series_->tape == Tape::Inches   ? (dice_.one_in(2) ? "#4" : "#5")
                : series_->id.starts_with("uk") ? "H12"
                                                : "N12";
    bars.grout = dice_.one_in(2) ? Grout::Fine : Grout::Coarse;
    bars.corners = bars.jambs = bars.control_joints = true;
    if (!dice_.one_in(3)) bars.spacing = series_->pitch() * dice_.between(3, 6);
    job_.steel.bars = std::move(bars);
  }

  Dice dice_;
  Grain grain_;
  const Series* series_ = nullptr;
  Job job_;
  int courses_ = 12;
  std::vector<Length> lengths_;
  std::vector<std::vector<Taken>> taken_;
};

}  // namespace

Job sensible_job(std::uint64_t seed, Grain grain) { return Maker(seed, grain).make(); }

}  // namespace stringcourse::property
