#include "job/checks.hpp"

#include <algorithm>
#include <cstddef>
#include <initializer_list>
#include <optional>
#include <utility>

#include "catalogue/series.hpp"
#include "job/refusal_codes.hpp"
#include "job/words.hpp"
#include "measure/force.hpp"
#include "measure/notation.hpp"
#include "measure/sorting.hpp"

namespace stringcourse {
namespace {

Refusal misfit(std::string_view code, std::string place, std::string reason, std::string remedy) {
  return {std::string(code), std::move(place), std::move(reason), std::move(remedy)};
}

enum class Limit { Below, AtMost };

/// What two sizes ask of each other: `value` is below, or at most, `bound`.
struct SizeRule {
  std::string_view field, what, limit_what;
  std::optional<Length> value;
  Limit limit;
  Length bound;
  bool broken() const { return value && (limit == Limit::Below ? *value >= bound : *value > bound); }
};

Misfits joined(std::initializer_list<Misfits> parts) {
  Misfits all;
  for (const Misfits& part : parts) all.insert(all.end(), part.begin(), part.end());
  return all;
}

Refusal size_misfit(const SizeRule& rule, Tape tape) {
  return misfit(code::kSeriesUneven, "/" + std::string(rule.field),
                std::string(rule.what) + " is " + exact_text(*rule.value, tape) + "; it must be " +
                    std::string(rule.limit_what) + ", " + exact_text(rule.bound, tape) + ".",
                "Measure one unit again and correct the one that is wrong.");
}

Misfits size_misfits(const OwnSeries& own, Tape tape) {
  const SizeRule rules[] = {
      {"half_high", "A half-high unit's height", "less than a unit's height", own.half_high, Limit::Below, own.height},
      {"joint_tolerance", "The joint's tolerance", "less than the joint", own.joint_tolerance, Limit::Below, own.joint},
      {"least_piece", "The least piece", "at most a whole unit", own.least_piece, Limit::AtMost, own.full},
      {"face_shell", "A face shell", "less than half the thickness", own.face_shell, Limit::Below,
       own.thickness.half_down()},
      {"corner_leg", "A corner set's short leg", "at most a whole unit", own.corner_leg, Limit::AtMost, own.full},
  };
  Misfits misfits;
  for (const SizeRule& rule : rules) {
    if (rule.broken()) misfits.push_back(size_misfit(rule, tape));
  }
  return misfits;
}

/// Half units make the wall's grid: two of them with a joint between are as long as a whole one.
Misfits half_misfits(const OwnSeries& own, Tape tape) {
  const Length whole_pitch = own.full + own.joint;
  const Length two_halves = 2 * (own.half + own.joint);
  if (own.half < own.full && whole_pitch == two_halves) return {};
  const Length left = own.full - own.joint;
  const bool halves_exactly = left > Length{} && left.is_multiple_of(Length::nanometres(2));
  std::string remedy = halves_exactly ? "Give the half unit as " + exact_text(left.half_down(), tape) +
                                            ", or measure the whole unit and the joint again."
                                      : "Give the whole unit as two half units and one joint: " +
                                            exact_text(2 * own.half + own.joint, tape) + ".";
  return {misfit(code::kSeriesUneven, "/half",
                 "A whole unit and a joint come to " + exact_text(whole_pitch, tape) +
                     ", two half units and two joints to " + exact_text(two_halves, tape) + "; the two must be equal.",
                 std::move(remedy))};
}

struct CellList {
  std::string_view field, unit_words;
  const std::vector<CellSpan>& cells;
  Length unit;
};

Misfits cell_misfits(const CellList& list, Tape tape) {
  Misfits misfits;
  Length free_from;  // the cell before ends here
  for (std::size_t k = 0; k < list.cells.size(); ++k) {
    const CellSpan& cell = list.cells[k];
    const bool rises = cell.from < cell.to && (k == 0 || cell.from > free_from);
    if (!rises || cell.to > list.unit) {
      misfits.push_back(misfit(
          code::kCellOutside, "/" + std::string(list.field) + "/" + number_text(k),
          "The cell from " + exact_text(cell.from, tape) + " to " + exact_text(cell.to, tape) +
              (rises ? " reaches beyond the " + std::string(list.unit_words) + ", " + exact_text(list.unit, tape) + " long."
                     : std::string(" must end after it starts, and start after the cell before it ends.")),
          "List the cells from the unit's left end to its right, each from web face to web face."));
    }
    free_from = cell.to;
  }
  return misfits;
}

struct NamedThing {
  std::string name;
  std::string place;  // JSON pointer
  std::string_view what;
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
    refusals.push_back(misfit(code::kNameTwice, things[k].place,
                              "The name " + quoted(things[k].name) + " is that of " + std::string(things[k].what) +
                                  " twice: first at " + things[first_of[k]].place + ".",
                              "Give one of the two another name."));
  }
  return refusals;
}

std::string place_of(std::string_view list, std::size_t index, std::string_view field) {
  return std::string(list) + "/" + number_text(index) + std::string(field);
}

std::vector<NamedThing> corners_left(const Outline& outline) {
  std::vector<NamedThing> things;
  for (std::size_t k = 0; k < outline.sides.size(); ++k) {
    things.push_back({outline.sides[k].from, place_of("/outline/sides", k, "/from"), "a corner that a side starts at"});
  }
  return things;
}

std::vector<NamedThing> corners_reached(const Outline& outline) {
  std::vector<NamedThing> things;
  for (std::size_t k = 0; k < outline.sides.size(); ++k) {
    things.push_back({outline.sides[k].to, place_of("/outline/sides", k, "/to"), "a corner that a side ends at"});
  }
  return things;
}

std::vector<NamedThing> walls_of(const Job& job) {
  std::vector<NamedThing> things;
  for (std::size_t k = 0; k < job.outline.sides.size(); ++k) {
    const Side& side = job.outline.sides[k];
    const bool unnamed = side.name.empty() && (side.from.empty() || side.to.empty());  // refused already
    things.push_back({unnamed ? "" : side_name(side), place_of("/outline/sides", k, side.name.empty() ? "" : "/name"),
                      "a wall"});
  }
  for (std::size_t k = 0; k < job.interior_walls.size(); ++k) {
    things.push_back({job.interior_walls[k].name, place_of("/interior_walls", k, "/name"), "a wall"});
  }
  return things;
}

std::vector<NamedThing> openings_of(const Job& job) {
  std::vector<NamedThing> things;
  for (std::size_t k = 0; k < job.openings.size(); ++k) {
    things.push_back({job.openings[k].name, place_of("/openings", k, "/name"), "an opening"});
  }
  return things;
}

std::vector<NamedThing> readings_of(const Job& job) {
  std::vector<NamedThing> things;
  for (std::size_t k = 0; k < job.readings.size(); ++k) {
    things.push_back({job.readings[k].id, place_of("/readings", k, "/id"), "a reading"});
  }
  return things;
}

std::vector<NamedThing> laid_of(const Job& job) {
  std::vector<NamedThing> things;
  for (std::size_t k = 0; k < job.laid.size(); ++k) things.push_back({job.laid[k].id, place_of("/laid", k, "/id"), "an entry"});
  return things;
}

std::vector<NamedThing> own_series_of(const Units& units) {
  std::vector<NamedThing> things;
  for (std::size_t k = 0; k < units.own_series.size(); ++k) {
    things.push_back({units.own_series[k].id, place_of("/units/own_series", k, "/id"), "a series"});
  }
  return things;
}

std::vector<Refusal> shared_with_catalogue(const std::vector<NamedThing>& own_series) {
  std::vector<Refusal> refusals;
  for (const NamedThing& own : own_series) {
    if (find_series(own.name) == nullptr) continue;
    refusals.push_back(misfit(code::kNameTwice, own.place,
                              "The name " + quoted(own.name) + " is that of a series of the catalogue.",
                              "Give your own series another id."));
  }
  return refusals;
}

}  // namespace

Misfits misfits_of(const OwnSeries& series, Tape tape) {
  return joined({half_misfits(series, tape), size_misfits(series, tape),
                 cell_misfits({"full_cells", "whole unit", series.full_cells, series.full}, tape),
                 cell_misfits({"half_cells", "half unit", series.half_cells, series.half}, tape)});
}

Misfits misfits_of(const Units& units, Tape tape) {
  if (!units.joint_least || !units.joint_most || *units.joint_least <= *units.joint_most) return {};
  return {misfit(code::kOutOfRange, "/joint_least",
                 "The least joint, " + exact_text(*units.joint_least, tape) + ", is wider than the greatest, " +
                     exact_text(*units.joint_most, tape) + ".",
                 "Exchange the two.")};
}

Misfits misfits_of(const SettingOut& setting_out, Tape tape) {
  Misfits misfits;
  const auto check = [&](const std::optional<std::string>& text, std::optional<double> (*read)(std::string_view), std::string place, std::string_view remedy) {
    if (text && !read(*text)) misfits.push_back(misfit(code::kNotAForce, std::move(place), "The text " + quoted(*text) + " is no such value.", std::string(remedy)));
  };
  const std::string_view force = "Write a number above zero and its unit: 20 lb, 90 N or 9 kg.";
  check(setting_out.line_weight, read_line_weight, "/line_weight", "Write a number above zero and its unit: 0.001 lb/ft, 1.5 g/m or 0.015 N/m.");
  check(setting_out.line_pull, read_force, "/line_pull", force);
  check(setting_out.line_strength, read_force, "/line_strength", force);
  const Length kerf = setting_out.first_kerf.value_or(tape == Tape::Inches ? Length::feet(2) : Length::millimetres(600));
  if (setting_out.footing_outside && *setting_out.footing_outside >= kerf) {
    misfits.push_back(misfit(code::kOutOfRange, "/footing_outside",
                             "The footing's outer edge, " + exact_text(*setting_out.footing_outside, tape) + " beyond the face line, would fall off the board, which ends " + exact_text(kerf, tape) + " beyond it.",
                             "Give a greater first_kerf."));
  }
  return misfits;
}

Misfits misfits_of(const Laying& laying, Tape tape) {
  if (!laying.joint_least || !laying.joint_most || *laying.joint_least <= *laying.joint_most) return {};
  return {misfit(code::kOutOfRange, "/joint_least",
                 "The narrowest joint, " + exact_text(*laying.joint_least, tape) + ", is wider than the widest, " + exact_text(*laying.joint_most, tape) + ".",
                 "Exchange the two.")};
}

Misfits misfits_of(const UnitSample& sample, Tape) {
  if (sample.together.has_value() != sample.row.has_value()) {
    return {misfit(code::kBelongsTogether, sample.row ? "/together" : "/row", "A row needs its length and how many units lie in it.", "Give both \"together\" and \"row\".")};
  }
  if (sample.row || !sample.singles.empty()) return {};
  return {misfit(code::kBelongsTogether, "/singles", "No unit was measured.", "Give a row (\"together\" and \"row\") or \"singles\".")};
}

Misfits misfits_of(const FoundPlace& found, Tape) {
  const bool jamb = found.what != FoundWhat::WallEnd;
  if (jamb == found.opening.has_value()) return {};
  return {misfit(code::kBelongsTogether, "/opening", jamb ? "A jamb needs the name of its opening." : "A wall's end has no opening.",
                 jamb ? "Name the opening." : "Leave the opening out.")};
}

Misfits misfits_of(const LaidEntry& entry, Tape) {
  if (!entry.remark || !entry.note.empty() || !entry.photos.empty()) return {};
  return {misfit(code::kBelongsTogether, "/remark", "A remark needs a note or photos.", "Give \"note\", or names in \"photos\".")};
}

std::vector<Refusal> shared_names(const Job& job) {
  const std::vector<NamedThing> own_series = own_series_of(job.units);
  return joined({shared_among(own_series), shared_with_catalogue(own_series), shared_among(corners_left(job.outline)),
                 shared_among(corners_reached(job.outline)), shared_among(walls_of(job)),
                 shared_among(openings_of(job)), shared_among(readings_of(job)), shared_among(laid_of(job))});
}

std::string side_name(const Side& side) { return side.name.empty() ? side.from + side.to : side.name; }

}  // namespace stringcourse
