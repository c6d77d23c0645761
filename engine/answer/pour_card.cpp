#include "answer/pour_card.hpp"

#include <algorithm>
#include <tuple>

#include "answer/answer.hpp"
#include "catalogue/rules.hpp"
#include "laying/log.hpp"
#include "measure/digits.hpp"
#include "measure/sorting.hpp"

namespace stringcourse {
namespace {

/// Where a wall stands on the walk round the building: of a side its start, of an interior wall its foot.
struct OnWalk {
  Length from;
  std::int32_t depth = 0;  // 0: a side; else so many interior walls away from one
};

/// The sides one after the other; interior walls hang on them.
class Walk {
 public:
  explicit Walk(const Building& building) : building_(building), walls_(building.walls.size()) {
    for (std::size_t k = 0; k < walls_.size(); ++k) {
      if (building.walls[k].interior) continue;
      walls_[k].from = length_, length_ = length_ + building.walls[k].actual;
    }
    // An interior wall starts off one that is before it in some order: as many rounds as there are walls settle all.
    for (std::size_t round = 0; round < walls_.size(); ++round) {
      for (std::size_t k = 0; k < walls_.size(); ++k) {
        if (building.walls[k].interior) hang(k);
      }
    }
    closed_ = std::ranges::all_of(building.walls, [](const Wall& wall) {
      return wall.interior || (wall.start.kind == EndKind::Corner && wall.end.kind == EndKind::Corner);
    });
  }

  /// How far round something stands, on a side or at the foot of its interior wall.
  [[nodiscard]] Length place_of(const GroutStep& step) const {
    const OnWalk& on = walls_[static_cast<std::size_t>(step.wall)];
    const Length place = on.depth > 0 ? on.from : on.from + step.at;
    if (!closed_) return std::max(place, Length());
    // At a corner that turns inwards masonry reaches past the faces' meeting point.
    return place < Length() ? place + length_ : place >= length_ ? place - length_ : place;
  }
  [[nodiscard]] std::int32_t depth_of(const GroutStep& step) const {
    return walls_[static_cast<std::size_t>(step.wall)].depth;
  }
  [[nodiscard]] Length length() const { return length_; }
  [[nodiscard]] bool closed() const { return closed_; }

 private:
  void hang(std::size_t wall) {
    const WallEnd& start = building_.walls[wall].start;
    const WallEnd& foot = start.kind == EndKind::Junction ? start : building_.walls[wall].end;
    if (foot.kind != EndKind::Junction) return;
    const Junction& junction = building_.junctions[static_cast<std::size_t>(foot.junction)];
    const OnWalk& main = walls_[static_cast<std::size_t>(junction.main)];
    const Length along = junction.from.distance_from_start();
    walls_[wall] = {main.depth > 0 ? main.from : main.from + along, main.depth + 1};
    if (walls_[wall].depth > static_cast<std::int32_t>(walls_.size())) walls_[wall].depth = 1;
  }

  const Building& building_;
  std::vector<OnWalk> walls_;
  Length length_;
  bool closed_ = false;
};

/// So many places on round, the others back the other way; which comes first.
struct WayRound {
  std::size_t onward = 0;
  bool back_first = false;
  Length walk;
};

/// `places`: rising. SOURCE: every way that fills the last place at the end of a shortest walk goes to one side and
/// then, if need be, once to the other.
WayRound shortest_way(const std::vector<Length>& places, const Walk& walk) {
  const std::size_t count = places.size();
  WayRound best{count, false, count == 0 ? Length() : places.back()};
  if (!walk.closed()) return best;
  for (std::size_t onward = count; onward-- > 0;) {
    const Length forth = onward == 0 ? Length() : places[onward - 1], back = walk.length() - places[onward];
    const Length turned = forth * 2 + back, other = forth + back * 2;
    if (turned < best.walk) best = {onward, false, turned};
    if (other < best.walk) best = {onward, true, other};
  }
  return best;
}

/// Puts the steps in the order of the walk; the walk's length.
Length put_in_order(std::vector<GroutStep>& steps, const Walk& walk) {
  sort_stably(steps, {}, [&](const GroutStep& step) {
    return std::tuple(walk.place_of(step), walk.depth_of(step), step.wall, step.at);
  });
  std::vector<Length> places;
  for (const GroutStep& step : steps) {
    if (places.empty() || places.back() != walk.place_of(step)) places.push_back(walk.place_of(step));
  }
  const WayRound way = shortest_way(places, walk);
  if (way.onward == places.size()) return way.walk;
  const Length turn = places[way.onward];
  std::vector<GroutStep> onward, back;
  for (GroutStep& step : steps) (walk.place_of(step) < turn ? onward : back).push_back(std::move(step));
  // Back the other way: the farthest round first, interior walls outwards all the same.
  sort_stably(back, {}, [&](const GroutStep& step) {
    return std::tuple(-walk.place_of(step), walk.depth_of(step), step.wall, step.at);
  });
  std::vector<GroutStep>& first = way.back_first ? back : onward;
  std::vector<GroutStep>& second = way.back_first ? onward : back;
  first.insert(first.end(), std::make_move_iterator(second.begin()), std::make_move_iterator(second.end()));
  steps = std::move(first);
  return way.walk;
}

std::vector<GroutStep> cells_of(const Answer& answer, std::size_t pour, std::size_t lift) {
  const supply::GroutPour& grout = answer.tallies.grout[pour];
  std::vector<GroutStep> steps;
  for (std::size_t k = 0; k < grout.columns.size(); ++k) {
    const supply::GroutColumn& column = grout.columns[k];
    if (column.by_lift[lift] == Volume()) continue;
    const PlacedBar& bar = answer.layout.bars[column.bar];
    steps.push_back({GroutInto::Cell,
                     bar.wall,
                     static_cast<std::int32_t>(column.bar),
                     grout.lift_tops[lift],
                     bar.centre,
                     answer.inspection[pour].bars[k].short_name,
                     column.by_lift[lift],
                     {}});
  }
  return steps;
}

std::vector<GroutStep> troughs_of(const Answer& answer, const supply::GroutPour& grout, const LiftCard& card) {
  std::vector<GroutStep> steps;
  for (const supply::GroutTrough& trough : grout.troughs) {
    if (trough.course < card.first_course || trough.course > card.last_course) continue;
    const bool beam = trough.opening < 0;
    steps.push_back({beam ? GroutInto::Beam : GroutInto::Lintel,
                     trough.wall,
                     beam ? trough.course : trough.opening,
                     trough.course,
                     trough.from,
                     beam ? number_text(trough.course) : opening_of(answer.building, trough.opening).name,
                     trough.volume,
                     {}});
  }
  return steps;
}

LiftCard card_of(const Answer& answer, const Walk& walk, std::size_t pour, std::size_t lift) {
  const supply::GroutPour& grout = answer.tallies.grout[pour];
  LiftCard card;
  card.pour = static_cast<std::int32_t>(pour) + 1, card.lift = static_cast<std::int32_t>(lift) + 1;
  card.first_course = lift == 0 ? grout.first_course : grout.lift_tops[lift - 1] + 1;
  card.last_course = grout.lift_tops[lift];
  card.height = top_of_course(answer.building, card.last_course) - foot_of_course(answer.building, card.first_course);
  card.again = supply::is_consolidated_again(card.height);
  card.steps = cells_of(answer, pour, lift);
  card.walk = put_in_order(card.steps, walk);
  std::vector<GroutStep> troughs = troughs_of(answer, grout, card);
  put_in_order(troughs, walk);
  card.steps.insert(card.steps.end(), std::make_move_iterator(troughs.begin()), std::make_move_iterator(troughs.end()));
  Volume total;
  for (GroutStep& step : card.steps) step.total = total += step.volume;
  return card;
}

bool has_grouted(const Answer& answer) {
  return std::ranges::any_of(answer.job.laid, [](const LaidEntry& entry) { return entry.grouted.has_value(); });
}

/// What the log says was filled is this.
bool is_of(const Answer& answer, const Grouted& done, const GroutStep& step) {
  return done.course == step.course && wall_of(answer.building, step.wall).name == done.on &&
         is_place_shown(done.at, step.at, answer.building.tape);
}

/// What the log says was filled, put into the cards.
void take_in(std::vector<LiftCard>& cards, const Answer& answer) {
  if (!has_grouted(answer)) return;
  const std::vector<bool> counts = laying::entries_that_count(answer.job);
  for (std::size_t k = 0; k < answer.job.laid.size(); ++k) {
    if (!counts[k] || !answer.job.laid[k].grouted) continue;
    const Grouted& done = *answer.job.laid[k].grouted;
    for (LiftCard& card : cards) {
      for (GroutStep& step : card.steps) {
        if (is_of(answer, done, step))
          (done.work == GroutWork::Filled ? step.filled : step.again) = static_cast<std::int32_t>(k);
      }
    }
  }
}

Finding unknown(std::size_t entry, std::string_view why, Length at, std::int32_t course, const std::string& on) {
  return {"laid-entry-unknown", "/laid/" + number_text(entry),
          fact("laid-entry-unknown", {fact(why, {FactValue(at, LengthForm::Both), course, on})}), "", HoldPoint::Grout};
}

bool is_filled_by(const Answer& answer, std::int32_t entry) {
  const Grouted& done = *answer.job.laid[static_cast<std::size_t>(entry)].grouted;
  return std::ranges::any_of(answer.pour_cards, [&](const LiftCard& card) {
    return std::ranges::any_of(card.steps, [&](const GroutStep& step) { return is_of(answer, done, step); });
  });
}

bool is_ticked_by(const Answer& answer, const LookedAt& tick) {
  return std::ranges::any_of(answer.inspection, [&](const PourToInspect& pour) {
    return std::ranges::any_of(pour.lines, [&](const LineToTick& line) {
      return line.what == tick.what && line.course == tick.course &&
             wall_of(answer.building, line.wall).name == tick.on &&
             is_place_shown(tick.at, line.at, answer.building.tape);
    });
  });
}

}  // namespace

AgainWithin again_within() {
  return {minutes_of("grout-again-when", 0).count, minutes_of("grout-again-when", 1).count};
}

std::vector<LiftCard> pour_cards(const Answer& answer) {
  std::vector<LiftCard> cards;
  if (answer.tallies.grout.empty()) return cards;
  const Walk walk(answer.building);
  for (std::size_t pour = 0; pour < answer.tallies.grout.size(); ++pour) {
    for (std::size_t lift = 0; lift < answer.tallies.grout[pour].lift_tops.size(); ++lift)
      cards.push_back(card_of(answer, walk, pour, lift));
  }
  std::erase_if(cards, [](const LiftCard& card) { return card.steps.empty(); });
  take_in(cards, answer);
  return cards;
}

std::vector<Finding> grout_log_findings(const Answer& answer) {
  std::vector<Finding> findings;
  const auto& log = answer.job.laid;
  const auto says = [](const LaidEntry& entry) { return entry.grouted || entry.looked_at; };
  if (std::ranges::none_of(log, says)) return findings;
  const std::vector<bool> counts = laying::entries_that_count(answer.job);
  for (std::size_t k = 0; k < log.size(); ++k) {
    if (!counts[k] || !laying::unknown_in(log[k], answer.building).empty()) continue;
    if (const auto& done = log[k].grouted; done && !is_filled_by(answer, static_cast<std::int32_t>(k)))
      findings.push_back(unknown(k, "no-cell-to-fill", done->at, done->course, done->on));
    if (const auto& tick = log[k].looked_at; tick && !is_ticked_by(answer, *tick))
      findings.push_back(unknown(k, "no-line-to-tick", tick->at, tick->course, tick->on));
  }
  return findings;
}

}  // namespace stringcourse
