#include <algorithm>
#include <iterator>
#include <optional>

#include "bond/layout_parts.hpp"
#include "bond/place.hpp"
#include "bond/wall_cells.hpp"
#include "measure/sorting.hpp"
#include "walls/corner_plan.hpp"

namespace stringcourse::bond {
namespace {

template <typename List>
const auto& at(const List& list, std::int32_t index) {
  return list[static_cast<std::size_t>(index)];
}

/// A place from which bars are spaced on: a bar, or an end of the masonry where no bar stands.
struct Post {
  Length at;
  bool is_bar = false;
};

struct Stretch {
  Length from, to;
};

/// Masonry along a wall, from one opening to the next. A control joint is no end of it: bars are spaced across it.
std::vector<Stretch> stretches_of(const Building& building, std::int32_t wall) {
  std::vector<Stretch> breaks;
  for (const ResolvedOpening& opening : building.openings) {
    if (opening.wall == wall) breaks.push_back({opening.from.distance_from_start(), opening.to.distance_from_start()});
  }
  sort_stably(breaks, {}, &Stretch::from);
  std::vector<Stretch> stretches;
  Length from;
  for (const Stretch& gap : breaks) {
    if (from < gap.from) stretches.push_back({from, gap.from});
    from = std::max(from, gap.to);
  }
  if (from < at(building.walls, wall).actual) stretches.push_back({from, at(building.walls, wall).actual});
  return stretches;
}

class Spacer {
 public:
  /// `placed` takes the bars: those of the layout stay in their order while the other walls are filled.
  Spacer(const Building& building, Layout& layout, std::int32_t wall, std::vector<PlacedBar>& placed)
      : building_(&building),
        layout_(&layout),
        placed_(&placed),
        wall_(wall),
        fixed_(bars_on_wall(building, layout, wall)),
        cells_(building, layout, wall),
        spacing_(*building.bars->spacing) {}

  std::int64_t run() {
    const std::vector<Stretch> stretches = stretches_of(*building_, wall_);
    std::int64_t extra = 0;
    for (std::size_t s = 0; s < stretches.size(); ++s) {
      std::vector<Post> posts;
      for (const WallBar& bar : fixed_) {
        const bool after = s == 0 || bar.centre >= stretches[s].from,
                   before = s + 1 == stretches.size() || bar.centre <= stretches[s].to;
        if (after && before) posts.push_back({bar.centre, true});
      }
      if (posts.empty() || stretches[s].from < posts.front().at) posts.insert(posts.begin(), Post{stretches[s].from});
      if (posts.back().at < stretches[s].to) posts.push_back(Post{stretches[s].to});
      for (std::size_t p = 1; p < posts.size(); ++p) extra += fill(posts[p - 1], posts[p]);
    }
    return extra;
  }

 private:
  /// A place for a bar, and the marks round it at which it stands in the same cells.
  struct Pick {
    std::int64_t at;
    Marks room;
  };

  /// Bars between two posts, each as far on as the spacing allows, none in a cell that has its bar.
  std::int64_t fill(const Post& from, const Post& to) {
    if (to.at - from.at <= spacing_) return 0;
    std::vector<Marks> marks = cells_.marks_between(from.at, to.at);
    for (const Post* post : {&from, &to}) {
      if (post->is_bar) marks = without(marks, cells_.marks_beside(post->at));
    }
    const std::int64_t needed = -(from.at - to.at).whole_multiples(spacing_) - 1;  // ceil(gap / spacing) - 1
    std::vector<Pick> picks;
    for (Length last = from.at; to.at - last > spacing_; last = place_of(picks.back().at)) {
      if (!picks.empty()) marks = without(marks, cells_.marks_beside(last));
      std::optional<Pick> next = farthest(marks, last);
      if (!next) next = first_beyond(marks, last, to.at);
      if (!next) break;
      picks.push_back(*next);
    }
    centre(picks, to.at);
    Length last = from.at;
    for (const Pick& pick : picks) {
      give_up_if_far(last, place_of(pick.at));
      place(last = place_of(pick.at));
    }
    give_up_if_far(last, to.at);
    return std::max<std::int64_t>(static_cast<std::int64_t>(picks.size()) - needed, 0);
  }

  [[nodiscard]] Length place_of(std::int64_t mark) const { return Length::nanometres(mark * cells_.mark()); }

  /// The farthest mark beyond `last` that is within the spacing.
  [[nodiscard]] std::optional<Pick> farthest(const std::vector<Marks>& marks, Length last) const {
    const std::int64_t limit = (last + spacing_).whole_multiples(Length::nanometres(cells_.mark()));
    std::optional<Pick> best;
    for (const Marks& stretch : marks) {
      if (stretch.from <= limit) best = Pick{std::min(stretch.to, limit), stretch};
    }
    return best && place_of(best->at) > last ? best : std::nullopt;
  }

  /// The next mark that is farther on than the spacing allows, short of `end`.
  [[nodiscard]] std::optional<Pick> first_beyond(const std::vector<Marks>& marks, Length last, Length end) const {
    for (const Marks& stretch : marks) {
      if (place_of(stretch.from) > last && place_of(stretch.from) < end)
        return Pick{stretch.from, {stretch.from, stretch.from}};
    }
    return std::nullopt;
  }

  void give_up_if_far(Length from, Length to) {
    if (to - from > spacing_)
      layout_->conceded.push_back({Concession::What::BarSpacing, wall_, 1, from, to, to - from});
  }

  /// From the last to the first, each bar back to the middle of its cells as far as the spacing to the next allows: a
  /// bar at the edge of its cell leaves its dowel no room.
  void centre(std::vector<Pick>& picks, Length to) const {
    for (auto pick = picks.rbegin(); pick != picks.rend(); ++pick) {
      const std::int64_t least = -(spacing_ - to).whole_multiples(Length::nanometres(cells_.mark()));  // rounded up
      const std::int64_t middle = pick->room.from + (pick->room.to - pick->room.from) / 2;
      pick->at = std::min(pick->at, std::max(least, middle));
      to = place_of(pick->at);
    }
  }

  void place(Length centre) {
    PlacedBar bar;
    bar.wall = wall_;
    bar.centre = centre;
    bar.last_course = static_cast<std::int32_t>(building_->courses.size());
    bar.off_face = walls::middle_of(*building_, wall_);
    placed_->push_back(bar);
  }

  const Building* building_;
  Layout* layout_;
  std::vector<PlacedBar>* placed_;
  std::int32_t wall_;
  std::vector<WallBar> fixed_;
  WallCells cells_;
  Length spacing_;
};

}  // namespace

std::int64_t place_bars(const Building& building, Layout& layout) {
  if (!building.bars) return 0;
  for (const FixedBar& fixed : building.fixed_bars) {
    PlacedBar bar;
    bar.wall = fixed.wall;
    bar.centre = fixed.centre.distance_from_start();
    bar.reason = fixed.reason;
    bar.corner = fixed.corner;
    bar.opening = fixed.opening;
    bar.last_course = static_cast<std::int32_t>(building.courses.size());
    bar.off_face = fixed.off_face;
    layout.bars.push_back(bar);
  }
  std::vector<PlacedBar> spaced;
  std::int64_t extra = 0;
  for (std::size_t w = 0; w < building.walls.size() && building.bars->spacing; ++w) {
    const bool whole =
        std::ranges::none_of(layout.stopped, [&](const Stopped& s) { return s.wall == static_cast<std::int32_t>(w); });
    if (building.series_of(building.walls[w]).grouts && whole)
      extra += Spacer(building, layout, static_cast<std::int32_t>(w), spaced).run();
  }
  std::ranges::copy(spaced, std::back_inserter(layout.bars));
  sort_stably(layout.bars, [](const PlacedBar& a, const PlacedBar& b) {
    return a.wall != b.wall ? a.wall < b.wall : a.centre < b.centre;
  });
  return extra;
}

void name_bar_units(const Building& building, Layout& layout) {
  for (const PlacedBar& bar : layout.bars) {
    const std::vector<UnitKind>& made = building.series_of(at(building.walls, bar.wall)).made;
    const auto stocks = [&](UnitKind kind) {
      return std::ranges::find(building.stocked, kind) != building.stocked.end() &&
             std::ranges::find(made, kind) != made.end();
    };
    auto run = std::ranges::lower_bound(layout.runs, bar.wall, {}, &Run::wall);
    for (; run != layout.runs.end() && run->wall == bar.wall; ++run) {
      if (bar.centre <= run->start || bar.centre >= run->end) continue;
      for (std::uint32_t p = 0; p < run->piece_count; ++p) {
        Piece& piece = layout.pieces[run->first_piece + p];
        const Length start = piece.start.nearest_nanometre();
        const bool covers = start < bar.centre && bar.centre < start + piece.length;
        if (!covers || piece.kind != UnitKind::Full) continue;
        const bool inside = p > 0 && p + 1 < run->piece_count;
        if (inside && piece.cut == CutEnd::None && stocks(UnitKind::OpenEnd)) piece.kind = UnitKind::OpenEnd;
      }
    }
  }
}

}  // namespace stringcourse::bond
