#include "proof/bars.hpp"

#include <algorithm>

#include "proof/bar_cells.hpp"

namespace stringcourse::proof {
namespace {

template <typename List>
const auto& at(const List& list, int index) {
  return list[static_cast<std::size_t>(index)];
}

bool is_this(const FixedBar& fixed, const PlacedBar& bar) {
  return fixed.wall == bar.wall && fixed.centre.distance_from_start() == bar.centre && fixed.reason == bar.reason &&
         fixed.corner == bar.corner && fixed.opening == bar.opening && fixed.off_face == bar.off_face;
}

/// Every fixed bar is placed, and every bar that says that it is fixed, is.
Violations check_fixed(const Building& b, const Layout& layout) {
  Violations found;
  for (const FixedBar& fixed : b.fixed_bars)
    if (std::ranges::count_if(layout.bars, [&](const PlacedBar& bar) { return is_this(fixed, bar); }) != 1)
      found.push_back(
          violation(kBars, name_of(b, fixed.wall),
                    "the fixed bar at " + in_millimetres(fixed.centre.distance_from_start()) + " is not placed once"));
  for (const PlacedBar& bar : layout.bars)
    if (bar.reason != BarReason::Spaced &&
        std::ranges::none_of(b.fixed_bars, [&](const FixedBar& fixed) { return is_this(fixed, bar); }))
      found.push_back(
          violation(kBars, name_of(b, bar.wall), "the bar at " + in_millimetres(bar.centre) + " is fixed by nothing"));
  return found;
}

bool in_opening(const Building& b, const PlacedBar& bar) {
  return std::ranges::any_of(b.openings, [&](const ResolvedOpening& o) {
    return o.wall == bar.wall && o.from.distance_from_start() < bar.centre && bar.centre < o.to.distance_from_start();
  });
}

/// A bar goes from the bearing to the top, but over or under an opening; spaced bars stand on whole marks of the tape.
Violations check_extent(const Building& b, const PlacedBar& bar) {
  Violations found;
  const int top = static_cast<int>(b.courses.size());
  const bool lawful = 1 <= bar.first_course && bar.first_course <= bar.last_course && bar.last_course <= top;
  const bool whole = bar.first_course == 1 && bar.last_course == top;
  const std::string who = "the bar at " + in_millimetres(bar.centre);
  if (!lawful || (!whole && !in_opening(b, bar)))
    found.push_back(violation(kBars, name_of(b, bar.wall), who + " does not pass all courses"));
  const Length mark = b.tape == Tape::Inches ? Length::sixteenths(1) : Length::millimetres(1);
  const Length off_middle = bar.off_face * 2 - b.series_of(at(b.walls, bar.wall)).thickness,
               one = Length::nanometres(1);
  if (bar.corner < 0 && (off_middle < -one || one < off_middle))
    found.push_back(violation(kBars, name_of(b, bar.wall), who + " stands off the middle of its wall"));
  if (bar.reason == BarReason::Spaced && !bar.centre.is_multiple_of(mark))
    found.push_back(violation(kBars, name_of(b, bar.wall), who + " stands off the tape's marks"));
  return found;
}

/// A place that ends a count of spaced bars, or a spaced bar.
struct Post {
  Length at;
  bool spaced = false;
  bool asked = false;  // dimensioned, or a dowel that is kept
};

std::vector<Post> posts_of(const Building& b, const Layout& layout, int wall) {
  std::vector<Post> posts;
  for (const PlacedBar& bar : layout.bars) {
    const bool asked = bar.reason == BarReason::Dimensioned || bar.reason == BarReason::Cast;
    if (bar.wall == wall) posts.push_back({bar.centre, bar.reason == BarReason::Spaced, asked});
    if (bar.wall == wall || bar.corner < 0) continue;
    const Corner& corner = at(b.corners, bar.corner);
    if (corner.arriving == wall || corner.leaving == wall)
      posts.push_back({seen_from_other(b, bar).along, false, asked});
  }
  std::ranges::sort(posts,
                    [](const Post& x, const Post& y) { return x.at < y.at || (x.at == y.at && x.spaced < y.spaced); });
  return posts;
}

/// Of two bars that were asked for in one cell: the clear way between them is a bar's thickness and 1 in at least, or
/// the building says that it is not.
bool too_near_untold(const Building& b, int wall, Length one, Length other) {
  const Length diameter = b.bars->diameter, clear = other - one - diameter;
  if (std::max(diameter, Length::inches(1)) <= clear) return false;
  return std::ranges::none_of(b.findings, [&](const Finding& f) {
    return f.code == "bars-too-near" && std::ranges::any_of(b.fixed_bars, [&](const FixedBar& bar) {
             const Length at_bar = bar.centre.distance_from_start();
             return bar.wall == wall && bar.place == f.place && (at_bar == one || at_bar == other);
           });
  });
}

/// One cell, one bar, unless both were asked for and have grout between them.
Violations check_one_each(const Building& b, const Facts& facts, const std::vector<Post>& posts, int wall) {
  Violations found;
  if (at(facts.walls, wall).stopped) return found;
  for (std::size_t i = 1; i < posts.size(); ++i) {
    const Post &one = posts[i - 1], &other = posts[i];
    const bool both_asked = one.asked && other.asked;
    if ((both_asked && !too_near_untold(b, wall, one.at, other.at)) || !share_a_cell(b, facts, wall, one.at, other.at))
      continue;
    found.push_back(violation(kBars, name_of(b, wall),
                              "the bars at " + in_millimetres(one.at) + " and " + in_millimetres(other.at) +
                                  (both_asked ? " lack grout between them" : " stand in one cell")));
  }
  return found;
}

/// Masonry between openings and the ends of the wall. An opening at any height ends a stretch; a control joint does
/// not: the spacing asked for holds across it.
std::vector<CellSpan> stretches_of(const Building& b, int wall) {
  std::vector<CellSpan> breaks;
  for (const ResolvedOpening& o : b.openings)
    if (o.wall == wall) breaks.push_back({o.from.distance_from_start(), o.to.distance_from_start()});
  std::ranges::sort(breaks, {}, &CellSpan::from);
  std::vector<CellSpan> stretches;
  Length from;
  for (const CellSpan& gap : breaks) {
    if (from < gap.from) stretches.push_back({from, gap.from});
    from = std::max(from, gap.to);
  }
  if (from < at(b.walls, wall).actual) stretches.push_back({from, at(b.walls, wall).actual});
  return stretches;
}

/// Posts of one stretch, its two ends included where no bar stands beyond them.
std::vector<Post> posts_in(const std::vector<Post>& posts, const CellSpan& stretch, bool first, bool last) {
  std::vector<Post> inside;
  for (const Post& post : posts)
    if ((first || stretch.from <= post.at) && (last || post.at <= stretch.to)) inside.push_back(post);
  if (inside.empty() || stretch.from < inside.front().at) inside.insert(inside.begin(), Post{stretch.from});
  if (inside.back().at < stretch.to) inside.push_back({stretch.to});
  return inside;
}

/// Spaced bars beyond the least, from one fixed post to the next: ceil(gap / spacing) - 1 are needed.
std::int64_t extra_between(const std::vector<Post>& posts, Length spacing) {
  std::int64_t extra = 0, spaced = 0;
  Length fixed = posts.front().at;
  for (const Post& post : posts) {
    if (post.spaced) {
      ++spaced;
      continue;
    }
    const std::int64_t spaces = -(fixed - post.at).whole_multiples(spacing);  // rounded up
    extra += std::max<std::int64_t>(0, spaced - std::max<std::int64_t>(0, spaces - 1));
    fixed = post.at;
    spaced = 0;
  }
  return extra + spaced;
}

BarCount check_spacing(const Building& b, const std::vector<Post>& posts, int wall) {
  BarCount count;
  const Length spacing = *b.bars->spacing;
  const std::vector<CellSpan> stretches = stretches_of(b, wall);
  for (std::size_t i = 0; i < stretches.size(); ++i) {
    const std::vector<Post> inside = posts_in(posts, stretches[i], i == 0, i + 1 == stretches.size());
    for (std::size_t k = 1; k < inside.size(); ++k)
      if (spacing < inside[k].at - inside[k - 1].at)
        count.violations.push_back(
            violation(kBars, name_of(b, wall),
                      "no bar between " + in_millimetres(inside[k - 1].at) + " and " + in_millimetres(inside[k].at),
                      Concession{Concession::What::BarSpacing, wall, 1, inside[k - 1].at, inside[k].at,
                                 inside[k].at - inside[k - 1].at}));
    count.extra_bars += extra_between(inside, spacing);
  }
  return count;
}

BarCount check_wall(const Building& b, const Layout& layout, const Facts& facts, int wall) {
  const std::vector<Post> posts = posts_of(b, layout, wall);
  BarCount count;
  if (b.bars->spacing && b.series_of(at(b.walls, wall)).grouts) count = check_spacing(b, posts, wall);
  else count.extra_bars = std::ranges::count_if(posts, &Post::spaced);
  count.violations = joined(std::move(count.violations), check_one_each(b, facts, posts, wall));
  return count;
}

}  // namespace

BarCount check_bars(const Building& building, const Layout& layout, const Facts& facts) {
  BarCount total;
  if (!building.bars) {
    if (!layout.bars.empty())
      total.violations.push_back(violation(kBars, "", "bars are placed that the job does not ask for"));
    return total;
  }
  total.violations = check_fixed(building, layout);
  for (const PlacedBar& bar : layout.bars) {
    Violations extent = check_extent(building, bar);
    const bool readable = extent.empty() && !at(facts.walls, bar.wall).stopped;
    total.violations = joined(std::move(total.violations), std::move(extent));
    if (readable) total.violations = joined(std::move(total.violations), check_cells_of(building, layout, facts, bar));
  }
  for (int wall = 0; wall < static_cast<int>(building.walls.size()); ++wall) {
    if (at(facts.walls, wall).stopped) continue;
    BarCount more = check_wall(building, layout, facts, wall);
    total.extra_bars += more.extra_bars;
    total.violations = joined(std::move(total.violations), std::move(more.violations));
  }
  return total;
}

}  // namespace stringcourse::proof
