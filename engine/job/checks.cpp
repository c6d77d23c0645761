#include "job/checks.hpp"

#include <algorithm>
#include <cstddef>
#include <initializer_list>
#include <optional>
#include <utility>

#include "catalogue/series.hpp"
#include "job/enum_names.hpp"
#include "job/words.hpp"
#include "measure/force.hpp"
#include "measure/notation.hpp"
#include "measure/sorting.hpp"
#include "measure/stress.hpp"

namespace stringcourse {
namespace {

Refusal misfit(Code code, std::string place, Fact reason, Fact remedy) {
  return {code, std::move(place), std::move(reason), std::move(remedy)};
}

enum class Limit { Below, AtMost };

/// What two sizes ask of each other: `value` is below, or at most, `bound`.
struct SizeRule {
  std::string_view field, says;
  std::optional<Length> value;
  Limit limit;
  Length bound;
  bool broken() const { return value && (limit == Limit::Below ? *value >= bound : *value > bound); }
};

Misfits gathered(std::initializer_list<Misfits> parts) {
  Misfits all;
  for (const Misfits& part : parts) all.insert(all.end(), part.begin(), part.end());
  return all;
}

FactValue exact(Length length) { return {length, LengthForm::Exact}; }

Refusal size_misfit(const SizeRule& rule) {
  return misfit("series-uneven", "/" + std::string(rule.field),
                fact(rule.says, {exact(*rule.value), exact(rule.bound)}), fact("size-measure-again"));
}

/// A short leg just over the thickness: no filler and joint fit into what it is longer, and no joint is as wide.
Misfits lip_misfits(const OwnSeries& own) {
  const Length lip = own.corner_leg.value_or(own.thickness) - own.thickness;
  if (lip <= Length() || lip > own.joint) return {};
  return {misfit("series-uneven", "/corner_leg",
                 fact("size-corner-lip", {exact(*own.corner_leg), exact(own.thickness)}),
                 fact("leave-corner-leg-out"))};
}

Misfits size_misfits(const OwnSeries& own) {
  const SizeRule rules[] = {
      {"half_high", "size-half-high", own.half_high, Limit::Below, own.height},
      {"joint_tolerance", "size-joint-tolerance", own.joint_tolerance, Limit::Below, own.joint},
      {"least_piece", "size-least-piece", own.least_piece, Limit::AtMost, own.full},
      {"face_shell", "size-face-shell", own.face_shell, Limit::Below, own.thickness.half_down()},
      {"corner_leg", "size-corner-leg", own.corner_leg, Limit::AtMost, own.full},
  };
  Misfits misfits;
  for (const SizeRule& rule : rules) {
    if (rule.broken()) misfits.push_back(size_misfit(rule));
  }
  if (const Misfits lip = lip_misfits(own); !lip.empty()) misfits.push_back(lip.front());
  return misfits;
}

/// Half units make the wall's grid: two of them with a joint between are as long as a whole one.
Misfits half_misfits(const OwnSeries& own) {
  const Length whole_pitch = own.full + own.joint;
  const Length two_halves = 2 * (own.half + own.joint);
  if (own.half < own.full && whole_pitch == two_halves) return {};
  const Length left = own.full - own.joint;
  const bool halves_exactly = left > Length{} && left.is_multiple_of(Length::nanometres(2));
  return {misfit("series-uneven", "/half", fact("size-halves", {exact(whole_pitch), exact(two_halves)}),
                 halves_exactly ? fact("size-half-as", {exact(left.half_down())})
                                : fact("size-whole-as", {exact(2 * own.half + own.joint)}))};
}

struct CellList {
  std::string_view field, beyond;
  const std::vector<CellSpan>& cells;
  Length unit;
};

Misfits cell_misfits(const CellList& list) {
  Misfits misfits;
  Length free_from;  // the cell before ends here
  for (std::size_t k = 0; k < list.cells.size(); ++k) {
    const CellSpan& cell = list.cells[k];
    const bool rises = cell.from < cell.to && (k == 0 || cell.from > free_from);
    if (!rises || cell.to > list.unit) {
      misfits.push_back(misfit("cell-outside", "/" + std::string(list.field) + "/" + number_text(k),
                               rises ? fact(list.beyond, {exact(cell.from), exact(cell.to), exact(list.unit)})
                                     : fact("cell-order", {exact(cell.from), exact(cell.to)}),
                               fact("cells-list")));
    }
    free_from = cell.to;
  }
  return misfits;
}

struct NamedThing {
  std::string name;
  std::string place;       // JSON pointer
  std::string_view twice;  // the sentence that says so
};

/// Refuses every thing whose name an earlier one has. Empty names are passed over.
std::vector<Refusal> shared_among(const std::vector<NamedThing>& things) {
  std::vector<Refusal> refusals;
  std::vector<std::size_t> order(things.size());
  for (std::size_t k = 0; k < order.size(); ++k) order[k] = k;
  sort_stably(order, {}, [&](std::size_t k) -> const std::string& { return things[k].name; });
  std::vector<std::size_t> first_of(things.size());
  for (std::size_t k = 0; k < order.size(); ++k) {
    const bool same = k > 0 && things[order[k]].name == things[order[k - 1]].name;
    first_of[order[k]] = same ? first_of[order[k - 1]] : order[k];
  }
  for (std::size_t k = 0; k < things.size(); ++k) {
    if (first_of[k] == k || things[k].name.empty()) continue;
    refusals.push_back(misfit("name-twice", things[k].place,
                              fact(things[k].twice, {FactValue::typed(things[k].name), things[first_of[k]].place}),
                              fact("twice-rename")));
  }
  return refusals;
}

std::string place_of(std::string_view list, std::size_t index, std::string_view field) {
  return std::string(list) + "/" + number_text(index) + std::string(field);
}

std::vector<NamedThing> corners_left(const Outline& outline) {
  std::vector<NamedThing> things;
  for (std::size_t k = 0; k < outline.sides.size(); ++k) {
    things.push_back({outline.sides[k].from, place_of("/outline/sides", k, "/from"), "twice-corner-start"});
  }
  return things;
}

std::vector<NamedThing> corners_reached(const Outline& outline) {
  std::vector<NamedThing> things;
  for (std::size_t k = 0; k < outline.sides.size(); ++k) {
    things.push_back({outline.sides[k].to, place_of("/outline/sides", k, "/to"), "twice-corner-end"});
  }
  return things;
}

std::vector<NamedThing> walls_of(const Job& job) {
  std::vector<NamedThing> things;
  for (std::size_t k = 0; k < job.outline.sides.size(); ++k) {
    const Side& side = job.outline.sides[k];
    const bool unnamed = side.name.empty() && (side.from.empty() || side.to.empty());  // refused already
    things.push_back({unnamed ? "" : side_name(side), place_of("/outline/sides", k, side.name.empty() ? "" : "/name"),
                      "twice-wall"});
  }
  for (std::size_t k = 0; k < job.interior_walls.size(); ++k) {
    things.push_back({job.interior_walls[k].name, place_of("/interior_walls", k, "/name"), "twice-wall"});
  }
  return things;
}

std::vector<NamedThing> openings_of(const Job& job) {
  std::vector<NamedThing> things;
  for (std::size_t k = 0; k < job.openings.size(); ++k) {
    things.push_back({job.openings[k].name, place_of("/openings", k, "/name"), "twice-opening"});
  }
  return things;
}

std::vector<NamedThing> readings_of(const Job& job) {
  std::vector<NamedThing> things;
  for (std::size_t k = 0; k < job.readings.size(); ++k) {
    things.push_back({job.readings[k].id, place_of("/readings", k, "/id"), "twice-reading"});
  }
  return things;
}

std::vector<NamedThing> laid_of(const Job& job) {
  std::vector<NamedThing> things;
  for (std::size_t k = 0; k < job.laid.size(); ++k)
    things.push_back({job.laid[k].id, place_of("/laid", k, "/id"), "twice-entry"});
  return things;
}

std::vector<NamedThing> own_series_of(const Units& units) {
  std::vector<NamedThing> things;
  for (std::size_t k = 0; k < units.own_series.size(); ++k) {
    things.push_back({units.own_series[k].id, place_of("/units/own_series", k, "/id"), "twice-series"});
  }
  return things;
}

std::vector<Refusal> shared_with_catalogue(const std::vector<NamedThing>& own_series) {
  std::vector<Refusal> refusals;
  for (const NamedThing& own : own_series) {
    if (find_series(own.name) == nullptr) continue;
    refusals.push_back(misfit("name-twice", own.place, fact("twice-catalogue", {FactValue::typed(own.name)}),
                              fact("twice-another-id")));
  }
  return refusals;
}

}  // namespace

Misfits misfits_of(const OwnSeries& series, Tape) {
  return gathered({half_misfits(series), size_misfits(series),
                   cell_misfits({"full_cells", "cell-beyond-whole", series.full_cells, series.full}),
                   cell_misfits({"half_cells", "cell-beyond-half", series.half_cells, series.half})});
}

Misfits misfits_of(const Units& units, Tape) {
  if (!units.joint_least || !units.joint_most || *units.joint_least <= *units.joint_most) return {};
  return {misfit("out-of-range", "/joint_least",
                 fact("joints-least-wider", {exact(*units.joint_least), exact(*units.joint_most)}),
                 fact("exchange-two"))};
}

Misfits misfits_of(const SettingOut& setting_out, Tape tape) {
  Misfits misfits;
  const auto check = [&](const std::optional<std::string>& text, std::optional<double> (*read)(std::string_view),
                         std::string place, std::string_view remedy) {
    if (text && !read(*text))
      misfits.push_back(
          misfit("not-a-force", std::move(place), fact("force-no-value", {FactValue::typed(*text)}), fact(remedy)));
  };
  const std::string_view force = "force-write";
  check(setting_out.line_weight, read_line_weight, "/line_weight", "line-weight-write");
  check(setting_out.line_pull, read_force, "/line_pull", force);
  check(setting_out.line_strength, read_force, "/line_strength", force);
  const Length kerf =
      setting_out.first_kerf.value_or(tape == Tape::Inches ? Length::feet(2) : Length::millimetres(600));
  if (setting_out.footing_outside && *setting_out.footing_outside >= kerf) {
    misfits.push_back(misfit("out-of-range", "/footing_outside",
                             fact("footing-off-board", {exact(*setting_out.footing_outside), exact(kerf)}),
                             fact("footing-greater-kerf")));
  }
  return misfits;
}

Misfits misfits_of(const Lap& lap, Tape) {
  Misfits misfits;
  const auto check = [&](const std::optional<std::string>& text, std::string_view place) {
    if (!text || read_stress(*text)) return;
    misfits.push_back(misfit("not-a-stress", std::string(place), fact("stress-no-value", {FactValue::typed(*text)}),
                             fact("stress-write")));
  };
  check(lap.masonry, "/masonry");
  check(lap.steel, "/steel");
  return misfits;
}

Misfits misfits_of(const Laying& laying, Tape) {
  if (!laying.joint_least || !laying.joint_most || *laying.joint_least <= *laying.joint_most) return {};
  return {misfit("out-of-range", "/joint_least",
                 fact("joints-narrowest-wider", {exact(*laying.joint_least), exact(*laying.joint_most)}),
                 fact("exchange-two"))};
}

Misfits misfits_of(const UnitSample& sample, Tape) {
  if (sample.together.has_value() != sample.row.has_value()) {
    return {
        misfit("belongs-together", sample.row ? "/together" : "/row", fact("row-needs-both"), fact("row-give-both"))};
  }
  if (sample.row || !sample.singles.empty()) return {};
  return {misfit("belongs-together", "/singles", fact("unit-none-measured"), fact("unit-give-row-or-singles"))};
}

Misfits misfits_of(const FoundPlace& found, Tape) {
  const bool jamb = found.what != FoundWhat::WallEnd;
  if (jamb == found.opening.has_value()) return {};
  return {misfit("belongs-together", "/opening", fact(jamb ? "jamb-needs-opening" : "wall-end-no-opening"),
                 fact(jamb ? "jamb-name-opening" : "wall-end-leave-out"))};
}

Misfits misfits_of(const LaidEntry& entry, Tape) {
  if (!entry.remark || !entry.note.empty() || !entry.photos.empty()) return {};
  return {misfit("belongs-together", "/remark", fact("remark-needs-note"), fact("remark-give-note"))};
}

std::vector<Refusal> shared_names(const Job& job) {
  const std::vector<NamedThing> own_series = own_series_of(job.units);
  return gathered({shared_among(own_series), shared_with_catalogue(own_series), shared_among(corners_left(job.outline)),
                   shared_among(corners_reached(job.outline)), shared_among(walls_of(job)),
                   shared_among(openings_of(job)), shared_among(readings_of(job)), shared_among(laid_of(job))});
}

std::string side_name(const Side& side) { return side.name.empty() ? side.from + side.to : side.name; }

}  // namespace stringcourse
