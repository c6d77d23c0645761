// Openings: from what leaf and frame need to a hole on module and course lines, with its lintel.
#include <algorithm>
#include <set>
#include <utility>

#include "catalogue/rules.hpp"
#include "measure/digits.hpp"
#include "walls/draft.hpp"
#include "walls/opening_size.hpp"
#include "walls/places.hpp"
#include "walls/resolve.hpp"

namespace stringcourse::walls {
namespace {

constexpr std::string_view kOpenings = "/openings";

const Course& course_at(const Building& building, int number) {
  return building.courses[static_cast<std::size_t>(number - 1)];
}
int course_count(const Building& building) { return static_cast<int>(building.courses.size()); }

std::string opening_name(const Draft& draft, std::size_t index) {
  const std::string& name = draft.job.openings[index].name;
  return name.empty() ? "O" + number_text(index + 1) : name;
}

/// The next width on the module, n (h + j) + j, that is not less than `asked`.
Length module_width(const Series& series, Length asked) {
  const std::int64_t steps = -((series.joint - asked).whole_multiples(series.pitch()));
  return series.pitch() * std::max<std::int64_t>(steps, 1) + series.joint;
}

bool check_levels(Draft& draft, std::size_t index) {
  const Opening& opening = draft.job.openings[index];
  const bool has_sill = opening.sill || opening.sill_course;
  std::string_view reason;
  if (opening.sill && opening.sill_course) reason = "opening-with-two-sills";
  if (has_sill && (opening.floor || opening.door || opening.overhead)) reason = "opening-with-floor-and-sill";
  if (opening.window && opening.floor) reason = "window-with-floor";
  if (opening.window && !has_sill) reason = "window-without-sill";
  if (reason.empty()) return true;
  refuse(draft, "opening-level", pointer(kOpenings, index), fact(reason, {opening_name(draft, index)}),
         fact("state-floor-or-sill"));
  return false;
}

/// The course (1 .. n - 1) whose top is nearest to the sill; of two alike the lower.
int sill_course_near(const Building& building, Length sill) {
  int best = 1;
  const auto off = [&](int number) {
    const Length top = course_at(building, number).top;
    return top < sill ? sill - top : top - sill;
  };
  for (int number = 2; number < course_count(building); ++number) {
    if (off(number) < off(best)) best = number;
  }
  return best;
}

/// Where an opening starts: its underside and the first course that it takes out.
struct Underside {
  Length height;
  int first_course = 1;
};

/// `where`: a height, or a course.
std::optional<Underside> refuse_level(Draft& draft, std::size_t index, std::string_view field, FactValue where) {
  const int count = course_count(draft.building);
  refuse(draft, "opening-level", pointer(kOpenings, index, field),
         fact("opening-level",
              {opening_name(draft, index), std::move(where), count, marked(course_at(draft.building, count).top)}),
         fact("lower-opening"));
  return std::nullopt;
}

std::optional<Underside> on_sill(Draft& draft, std::size_t index) {
  const Opening& opening = draft.job.openings[index];
  const int count = course_count(draft.building);
  const int course =
      opening.sill_course ? *opening.sill_course : sill_course_near(draft.building, opening.sill->length);
  if (course < 1 || course >= count) {
    return refuse_level(draft, index, "sill_course", fact("top-of-course", {course}));
  }
  const Length top = course_at(draft.building, course).top;
  if (opening.sill && opening.sill->length >= course_at(draft.building, count).top) {
    return refuse_level(draft, index, "sill", as_asked(opening.sill->length));
  }
  if (opening.sill && top != opening.sill->length) {
    find(draft, "sill-off-course", pointer(kOpenings, index, "sill"),
         fact("sill-off-course", {opening_name(draft, index), as_asked(opening.sill->length), course, marked(top)}));
  }
  return Underside{top, course + 1};
}

std::optional<Underside> on_floor(Draft& draft, std::size_t index) {
  const Building& building = draft.building;
  const Length floor = floor_of(draft, draft.job.openings[index], building.courses.front().unit_height);
  for (const Course& course : building.courses) {
    if (course.top > floor) return Underside{floor, course.number};
  }
  return refuse_level(draft, index, "floor", as_asked(floor));
}

/// The last course taken out: the lowest whose top + j is not under the head asked; the top course if none is.
int last_course_for(const Building& building, const Underside& underside, Length head_asked) {
  for (int number = underside.first_course; number < course_count(building); ++number) {
    if (course_at(building, number).top + building.joint >= head_asked) return number;
  }
  return course_count(building);
}

/// A frame may leave up to one joint to pack: that is what the nominal size leaves. A bare size leaves nothing. (What
/// can be done is told by supply/heads.hpp.)
void find_head_off_course(Draft& draft, std::size_t index, const ResolvedOpening& opening) {
  const Length allowed = opening.use == OpeningUse::Plain ? Length() : draft.building.joint;
  if (opening.packing_head <= allowed) return;
  const FactValue asked = as_asked(opening.asked_height), fits = marked(opening.height()),
                  packing = marked(opening.packing_head);
  Fact says = fact("head-in-first-course", {opening.name, asked, fits, packing});
  if (opening.last_course > opening.first_course) {
    const Length lower =
        course_at(draft.building, opening.last_course - 1).top + draft.building.joint - opening.underside;
    says = fact("head-off-course", {opening.name, asked, marked(lower), fits, packing});
  }
  find(draft, "head-off-course", pointer(kOpenings, index), std::move(says));
}

void find_short_bearing(Draft& draft, std::size_t index, const ResolvedOpening& opening) {
  const Length least = least_lintel_bearing();
  if (opening.lintel->least_bearing >= least) return;
  find(draft, "lintel-bearing", pointer(kOpenings, index, "lintel/bearing"),
       fact("lintel-bearing", {opening.name, as_asked(opening.lintel->least_bearing), marked(least)}), "lintel-bearing",
       HoldPoint::Lintels);
}

/// Lintel and bond-beam units are made as high as whole ones: no lintel is built of units in a half-high course.
bool check_built_of_whole_units(Draft& draft, std::size_t index, const ResolvedOpening& opening) {
  const ResolvedLintel& lintel = *opening.lintel;
  if (lintel.make != LintelMake::BuiltUp) return true;
  for (int number = lintel.first_course; number < lintel.first_course + lintel.courses; ++number) {
    const Course& course = course_at(draft.building, number);
    if (!course.half_high) continue;
    refuse(draft, "lintel-half-high", pointer(kOpenings, index, "lintel"),
           fact("lintel-half-high", {opening.name, number, marked(course.unit_height)}), fact("ask-for-one-piece"));
    return false;
  }
  return true;
}

/// What a piece is, and weighs, says nothing of a lintel built of units: one of the two is meant.
void find_piece_of_units(Draft& draft, std::size_t index, const ResolvedOpening& opening) {
  const ResolvedLintel& lintel = *opening.lintel;
  if (lintel.make != LintelMake::BuiltUp || (!lintel.piece && lintel.weight.empty())) return;
  find(draft, "lintel-piece-of-units", pointer(kOpenings, index, "lintel"),
       fact("lintel-piece-of-units", {opening.name}), {}, HoldPoint::Lintels);
}

bool check_lintel(Draft& draft, std::size_t index, const ResolvedOpening& opening) {
  const ResolvedLintel& lintel = *opening.lintel;
  const int above = course_count(draft.building) - opening.last_course;
  const bool sized = lintel.courses >= 1 && lintel.courses <= above && lintel.least_bearing > Length();
  if (sized) return check_built_of_whole_units(draft, index, opening);
  refuse(draft, "lintel-deep", pointer(kOpenings, index, "lintel"),
         fact("lintel-deep", {opening.name, lintel.courses, as_asked(lintel.least_bearing), above}),
         fact("state-lintel", {above}));
  return false;
}

bool set_lintel(Draft& draft, std::size_t index, ResolvedOpening& opening) {
  if (opening.last_course == course_count(draft.building)) {
    find(draft, "no-lintel", pointer(kOpenings, index), fact("no-lintel", {opening.name}), {}, HoldPoint::Lintels);
    return true;
  }
  const Lintel asked = draft.job.openings[index].lintel.value_or(Lintel{});
  opening.lintel = ResolvedLintel{asked.make,
                                  opening.last_course + 1,
                                  asked.courses.value_or(1),
                                  asked.bearing.value_or(draft.building.series.front().half),
                                  asked.shore_spacing,
                                  asked.piece,
                                  asked.mark,
                                  asked.weight};
  if (!check_lintel(draft, index, opening)) return false;
  find_short_bearing(draft, index, opening);
  find_piece_of_units(draft, index, opening);
  return true;
}

/// Heights of an opening on course lines, with its lintel.
bool set_heights(Draft& draft, std::size_t index, const Underside& underside, ResolvedOpening& opening) {
  const Building& building = draft.building;
  opening.underside = underside.height;
  opening.first_course = underside.first_course;
  const Length head_asked = underside.height + opening.asked_height;
  opening.last_course = last_course_for(building, underside, head_asked);
  opening.soffit = course_at(building, opening.last_course).top + building.joint;
  opening.packing_head = std::max(opening.soffit - head_asked, Length());
  find_head_off_course(draft, index, opening);
  return set_lintel(draft, index, opening);
}

void set_width(const OpeningNeed& need, const Stretch& stretch, ResolvedOpening& opening) {
  opening.from = stretch.from;
  opening.to = stretch.to;
  opening.asked_width = need.width;
  opening.packing_each_side = (opening.width() - need.width).half_down();
}

std::optional<ResolvedOpening> resolved(Draft& draft, std::size_t index) {
  const Opening& asked = draft.job.openings[index];
  const auto need = opening_need(draft, index);
  const bool levels = check_levels(draft, index);
  const auto wall = named_wall(draft, asked.on, pointer(kOpenings, index, "on"));
  if (!need || !levels || !wall || draft.building.courses.empty()) return std::nullopt;
  const Series& series = draft.building.series.front();
  const Length width = need->goes_up ? module_width(series, need->width) : need->width;
  const auto stretch =
      placed_stretch(draft, *wall, asked.place, width, Placed::Hole, pointer(kOpenings, index, "place"));
  const auto underside = stands_on_floor(asked) ? on_floor(draft, index) : on_sill(draft, index);
  if (!stretch || !underside) return std::nullopt;
  ResolvedOpening opening;
  opening.name = opening_name(draft, index);
  opening.use = need->use;
  opening.wall = *wall;
  opening.asked_height = need->height;
  opening.note = asked.note;
  opening.place = pointer(kOpenings, index);
  set_width(*need, *stretch, opening);
  if (!set_heights(draft, index, *underside, opening)) return std::nullopt;
  return opening;
}

void check_names(Draft& draft) {
  std::set<std::string> names;
  for (std::size_t i = 0; i < draft.job.openings.size(); ++i) {
    if (names.insert(opening_name(draft, i)).second) continue;
    refuse(draft, "name-twice", pointer(kOpenings, i, "name"),
           fact("openings-with-one-name", {FactValue::typed(opening_name(draft, i))}), fact("name-one-of-them"));
  }
}

}  // namespace

void resolve_openings(Draft& draft) {
  if (!draft.series_stand) return;
  check_names(draft);
  for (std::size_t i = 0; i < draft.job.openings.size(); ++i) {
    std::optional<ResolvedOpening> opening = resolved(draft, i);
    if (opening) draft.building.openings.push_back(std::move(*opening));
  }
}

}  // namespace stringcourse::walls

namespace stringcourse {

Length least_lintel_bearing() { return limit_of("lintel-bearing"); }

}  // namespace stringcourse
