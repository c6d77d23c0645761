// Units: the job's series, what the yard stocks, joints and the saw's list.
#include <algorithm>
#include <array>
#include <utility>

#include "measure/sorting.hpp"
#include "walls/draft.hpp"
#include "walls/own_series.hpp"

namespace stringcourse::walls {
namespace {

FactValue known_series(const Draft& draft) {
  std::vector<FactValue> known;
  for (const OwnSeries& own : draft.job.units.own_series) known.emplace_back(own.id);
  for (const Series& series : catalogue_series()) known.emplace_back(series.id);
  return {FactValue::Kind::Commas, std::move(known)};
}

std::optional<Series> series_named(Draft& draft, const std::string& id, const std::string& place) {
  const auto& own = draft.job.units.own_series;
  for (std::size_t i = 0; i < own.size(); ++i) {
    if (own[i].id == id) return series_from_own(draft, own[i], pointer("/units/own_series", i));
  }
  if (const Series* found = find_series(id)) return *found;
  refuse(draft, "unknown-series", place, fact("unknown-series", {FactValue::typed(id)}),
         fact("name-one-of", {known_series(draft)}));
  return std::nullopt;
}

struct Shared {
  std::string_view says;  // where it differs
  Length Series::* size;
};
constexpr std::array<Shared, 4> kShared{{{"series-of-other-height", &Series::height},
                                         {"series-of-other-joint", &Series::joint},
                                         {"series-of-other-length", &Series::full},
                                         {"series-of-other-half", &Series::half}}};

/// True if `other` may stand in one building with `own`: equal in all but thickness. Else refusals.
bool goes_with(Draft& draft, const Series& own, const Series& other, const std::string& place) {
  bool together = true;
  for (const Shared& shared : kShared) {
    if (own.*shared.size == other.*shared.size) continue;
    together = false;
    refuse(draft, "series-mixed", place,
           fact(shared.says, {other.id, as_asked(other.*shared.size), own.id, as_asked(own.*shared.size)}),
           fact("choose-series-that-goes", {own.id}));
  }
  return together;
}

void add_kinds(std::vector<UnitKind>& kinds, const std::vector<UnitKind>& more) {
  for (const UnitKind kind : more) {
    if (std::ranges::find(kinds, kind) == kinds.end()) kinds.push_back(kind);
  }
  sort_stably(kinds);
}

/// Kinds that the series of this job are made in.
std::vector<UnitKind> made_kinds(const Building& building) {
  std::vector<UnitKind> made;
  for (const Series& series : building.series) add_kinds(made, series.made);
  return made;
}

void resolve_stock(Draft& draft) {
  Building& building = draft.building;
  const std::vector<UnitKind> made = made_kinds(building);
  building.stocked = made;
  if (!draft.job.units.stocked) return;
  building.stocked.clear();
  for (std::size_t i = 0; i < draft.job.units.stocked->size(); ++i) {
    const UnitKind kind = (*draft.job.units.stocked)[i];
    if (std::ranges::find(made, kind) != made.end()) {
      add_kinds(building.stocked, {kind});
    } else {
      find(draft, "kind-not-made", pointer("/units/stocked", i),
           fact("kind-not-made", {building.series.front().id, kind_name(kind)}));
    }
  }
  if (is_stocked(building, UnitKind::Full)) return;
  refuse(draft, "full-not-stocked", "/units/stocked", fact("full-not-stocked"), fact("add-full"));
}

void resolve_corner_sets(Draft& draft) {
  Building& building = draft.building;
  building.corner_sets_stocked = is_stocked(building, UnitKind::CornerSet);
  if (building.corner_sets_stocked) return;
  for (const Series& series : building.series) {
    if (!series.corner_set) continue;
    find(draft, "corner-set-not-stocked", "/units/stocked",
         fact("corner-set-not-stocked", {series.id, marked(building.series.front().half), marked(series.thickness)}));
  }
}

void resolve_joints(Draft& draft) {
  Building& building = draft.building;
  const Units& units = draft.job.units;
  const Series& own = building.series.front();
  building.joint = own.joint;
  building.joint_least = units.joint_least.value_or(own.joint - own.joint_tolerance);
  building.joint_most = units.joint_most.value_or(own.joint + own.joint_tolerance);
  if (building.joint_least < Length() || building.joint_least > own.joint) {
    refuse(draft, "joint-range", "/units/joint_least",
           fact("joint-least", {as_asked(building.joint_least), as_asked(own.joint)}),
           fact("state-at-most", {as_asked(own.joint)}));
  }
  if (building.joint_most < own.joint) {
    refuse(draft, "joint-range", "/units/joint_most",
           fact("joint-most", {as_asked(building.joint_most), as_asked(own.joint)}),
           fact("state-at-least", {as_asked(own.joint)}));
  }
}

/// `length` cut down to the saw's step.
Length sawn(Length length, Length step) { return step > Length() ? step * length.whole_multiples(step) : length; }

/// A quarter and three quarters of a unit as laid, less the joint.
std::vector<Length> default_cuts(const Series& series, Length least_piece) {
  std::vector<Length> cuts;
  for (const int quarters : {3, 1}) {
    const Length laid = Length::nanometres((series.full_pitch() * quarters).in_nanometres() / 4);
    const Length cut = sawn(laid - series.joint, series.cut_step);
    if (cut >= least_piece && cut > Length()) cuts.push_back(cut);
  }
  return cuts;
}

std::vector<Length> stated_cuts(Draft& draft, const std::vector<Length>& asked) {
  const Building& building = draft.building;
  const Length full = building.series.front().full;
  std::vector<Length> cuts;
  for (std::size_t i = 0; i < asked.size(); ++i) {
    if (asked[i] >= building.least_piece && asked[i] < full) {
      cuts.push_back(asked[i]);
      continue;
    }
    refuse(draft, "cut-length", pointer("/units/cuts", i),
           fact("cut-length", {as_asked(asked[i]), as_asked(building.least_piece), marked(full)}), fact("change-cut"));
  }
  return cuts;
}

void resolve_cuts(Draft& draft) {
  Building& building = draft.building;
  const Units& units = draft.job.units;
  const Series& own = building.series.front();
  building.least_piece = units.least_piece.value_or(own.least_piece);
  if (building.least_piece <= Length() || building.least_piece > own.half) {
    refuse(draft, "least-piece", "/units/least_piece",
           fact("least-piece", {as_asked(building.least_piece), marked(own.half)}),
           fact("state-at-most", {marked(own.half)}));
  }
  building.cuts = units.cuts ? stated_cuts(draft, *units.cuts) : default_cuts(own, building.least_piece);
  if (!is_stocked(building, UnitKind::Half)) {
    building.cuts.push_back(own.half);
    find(draft, "kind-replaced-by-cut", "/units/stocked", fact("half-not-stocked", {marked(own.half)}));
  }
  sort_stably(building.cuts, std::greater{});
  building.cuts.erase(std::unique(building.cuts.begin(), building.cuts.end()), building.cuts.end());
}

/// Adds the series of all walls, so that the stock is known before the first wall stands.
void add_wall_series(Draft& draft) {
  const auto& sides = draft.job.outline.sides;
  for (std::size_t i = 0; i < sides.size(); ++i) {
    if (sides[i].series) (void)series_index(draft, sides[i].series, pointer("/outline/sides", i, "series"));
  }
  const auto& inner = draft.job.interior_walls;
  for (std::size_t i = 0; i < inner.size(); ++i) {
    if (inner[i].series) (void)series_index(draft, inner[i].series, pointer("/interior_walls", i, "series"));
  }
}

}  // namespace

std::optional<int> series_index(Draft& draft, const std::optional<std::string>& id, const std::string& place) {
  if (!id) return 0;
  std::vector<Series>& in_use = draft.building.series;
  for (std::size_t i = 0; i < in_use.size(); ++i) {
    if (in_use[i].id == *id) return static_cast<int>(i);
  }
  std::optional<Series> series = series_named(draft, *id, place);
  if (!series || !goes_with(draft, in_use.front(), *series, place)) return std::nullopt;
  in_use.push_back(std::move(*series));
  return static_cast<int>(in_use.size()) - 1;
}

int series_in_use(const Draft& draft, const std::optional<std::string>& id) {
  const std::vector<Series>& in_use = draft.building.series;
  for (std::size_t i = 0; id && i < in_use.size(); ++i) {
    if (in_use[i].id == *id) return static_cast<int>(i);
  }
  return 0;
}

void resolve_units(Draft& draft) {
  std::optional<Series> own = series_named(draft, draft.job.units.series, "/units/series");
  if (!own) return;
  draft.building.series.push_back(std::move(*own));
  draft.series_stand = true;
  draft.building.bond = draft.job.units.bond.value_or(BondWish::Half);
  if (draft.job.units.breakage) draft.building.breakage = {*draft.job.units.breakage, true};
  add_wall_series(draft);
  resolve_stock(draft);
  resolve_corner_sets(draft);
  resolve_joints(draft);
  resolve_cuts(draft);
}

}  // namespace stringcourse::walls
