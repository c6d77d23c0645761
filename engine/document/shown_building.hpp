#pragma once
// Field tables of the building as resolved: sides, corners, courses, openings.
#include <algorithm>

#include "answer/packing.hpp"
#include "catalogue/series.hpp"
#include "document/choices.hpp"
#include "document/shown.hpp"

namespace stringcourse::document {

inline constexpr std::string_view kCourseNumber = "course number, from 1 at the bearing";
inline constexpr std::string_view kPointer = "JSON pointer into the job";
inline constexpr std::string_view kUnitNumber = "number along that side";

template <>
struct Shown<Series> {
  static constexpr std::string_view name = "unit_series";
  static constexpr std::string_view description = "One series of units that the walls are laid with.";
  static constexpr auto fields = std::tuple{
      shown("id", &Series::id),
      shown("title", &Series::title),
      shown("full", &Series::full),
      shown("half", &Series::half),
      shown("thickness", &Series::thickness),
      shown("height", &Series::height),
      shown("joint", &Series::joint),
      shown(
          "pitch", [](const View&, const Series& of) { return of.pitch(); },
          "a half unit and a joint: head joints, jambs and walls step by it"),
      shown("cells_assumed", &Series::cells_assumed, "true: the cells are assumed, measure your block"),
      shown("source", [](const View&, const Series& of) { return of.source.text; }),
      shown("known", [](const View&, const Series& of) { return knowledge_name(of.source.knowledge); }),
  };
};

/// An outside corner of one wall only (the end of an open outline) has nobody to run past.
inline std::optional<std::string_view> through_first(const View& view, const Corner& corner) {
  const auto index = static_cast<std::size_t>(&corner - view.building().corners.data());
  const auto& through = view.answer.layout.arriving_through;
  if (corner.arriving < 0 || corner.leaving < 0 || index >= through.size()) return std::nullopt;
  return view.wall(through[index] != 0 ? corner.arriving : corner.leaving).name;
}

/// In a rectangle each side is as long as the one across, and neither can be made longer alone.
inline std::optional<std::string_view> side_across(const View& view, const Wall& wall) {
  const auto& sides = view.answer.job.outline.sides;
  if (wall.interior || !view.answer.job.outline.closed || sides.size() != 4) return std::nullopt;
  const auto is_across = [&](const Wall& other) {
    return !other.interior && &other != &wall && other.start_name != wall.end_name && other.end_name != wall.start_name;
  };
  const auto across = std::ranges::find_if(view.building().walls, is_across);
  return across == view.building().walls.end() ? std::nullopt : std::optional<std::string_view>(across->place);
}

inline std::optional<std::string_view> wall_or_none(const View& view, int wall) {
  return wall < 0 ? std::optional<std::string_view>() : std::optional<std::string_view>(view.wall(wall).name);
}

template <>
struct Shown<Corner> {
  static constexpr std::string_view name = "corner";
  static constexpr std::string_view description = "A corner of the outline.";
  static constexpr auto fields = std::tuple{
      shown("name", &Corner::name),
      shown("convex", &Corner::convex),
      shown("point", &Corner::point),
      shown(
          "arriving", [](const View& view, const Corner& of) { return wall_or_none(view, of.arriving); },
          "side that ends here"),
      shown(
          "leaving", [](const View& view, const Corner& of) { return wall_or_none(view, of.leaving); },
          "side that starts here"),
      shown("through_in_course_1", through_first, "side that runs through in course 1 and every odd course"),
  };
};

template <>
struct Shown<Wall> {
  static constexpr std::string_view name = "wall";
  static constexpr std::string_view description = "A side or an interior wall.";
  static constexpr auto fields = std::tuple{
      shown("name", &Wall::name),
      shown("start", &Wall::start_name),
      shown("end", &Wall::end_name),
      shown("interior", &Wall::interior),
      shown("series",
            [](const View& view, const Wall& of) -> const std::string& { return view.building().series_of(of).id; }),
      shown("nominal", &Wall::nominal),
      shown("actual", &Wall::actual, "outer face, corner to corner; inside walls: clear between the walls met"),
      shown("start_point", &Wall::start_point),
      shown("heading", &Wall::heading),
      shown("place", &Wall::place, kPointer),
      shown("across", side_across, "place of the side across, which has to be as long; of a rectangle only"),
  };
};

enum class AtEnd { Start, End };
}  // namespace stringcourse::document
namespace stringcourse {
template <>
inline constexpr std::array<std::string_view, 2> kEnumNames<document::AtEnd>{"start", "end"};
}
namespace stringcourse::document {

template <>
struct Shown<Junction> {
  static constexpr std::string_view name = "junction";
  static constexpr std::string_view description = "Where an interior wall meets another.";
  static constexpr auto fields = std::tuple{
      side("main", &Junction::main),
      side("abutting", &Junction::abutting),
      shown("at", [](const View&, const Junction& of) { return of.at_abutting_start ? AtEnd::Start : AtEnd::End; }),
      shown("kind", &Junction::kind),
      shown(
          "from", [](const View&, const Junction& of) { return of.from.distance_from_start(); }, "on the main wall"),
      shown(
          "to", [](const View&, const Junction& of) { return of.to.distance_from_start(); }, "on the main wall"),
  };
};

template <>
struct Shown<Course> {
  static constexpr std::string_view name = "course";
  static constexpr std::string_view description = "One course, over all walls.";
  static constexpr auto fields = std::tuple{
      shown("number", &Course::number, kCourseNumber),
      shown("half_high", &Course::half_high),
      shown("bond_beam", &Course::bond_beam),
      shown("wire", &Course::wire, "joint reinforcement in the bed on top of this course"),
      shown("unit_height", &Course::unit_height),
      shown("top", &Course::top, "top of the units"),
  };
};

/// Where an opening was planned, where a jamb was found elsewhere.
struct PlannedJambs {
  const ResolvedOpening& opening;
};
template <>
struct Shown<PlannedJambs> {
  static constexpr std::string_view name = "planned_jambs";
  static constexpr std::string_view description =
      "Where the jambs were planned, and still stand in courses 1 to laid_courses, which were laid before.";
  static constexpr auto fields = std::tuple{
      shown("laid_courses", [](const View&, const PlannedJambs& of) { return of.opening.laid_courses; }),
      shown("from", [](const View&, const PlannedJambs& of) { return of.opening.laid_from.distance_from_start(); }),
      shown("to", [](const View&, const PlannedJambs& of) { return of.opening.laid_to.distance_from_start(); }),
  };
};

using LintelAsked = std::remove_cvref_t<decltype(*std::declval<ResolvedOpening>().lintel)>;
template <>
struct Shown<LintelAsked> {
  static constexpr std::string_view name = "lintel_asked";
  static constexpr std::string_view description = "The lintel over an opening.";
  static constexpr auto fields = std::tuple{
      shown("make", &LintelAsked::make),
      shown("first_course", &LintelAsked::first_course, kCourseNumber),
      shown("courses", &LintelAsked::courses, "deep"),
      shown("least_bearing", &LintelAsked::least_bearing),
      shown("piece", &LintelAsked::piece, "what a lintel in one piece is; absent: the job does not say"),
      shown("mark", &LintelAsked::mark, "as the drawings call it"),
      shown("weight", &LintelAsked::weight, "of one piece, in the job's words"),
  };
};

template <>
struct Shown<ResolvedOpening> {
  static constexpr std::string_view name = "opening";
  static constexpr std::string_view description = "An opening where it stands in the masonry.";
  static constexpr auto fields = std::tuple{
      shown("name", &ResolvedOpening::name),
      shown("use", &ResolvedOpening::use),
      side("side", &ResolvedOpening::wall),
      shown("from", [](const View&, const ResolvedOpening& of) { return of.from.distance_from_start(); }),
      shown("to", [](const View&, const ResolvedOpening& of) { return of.to.distance_from_start(); }),
      shown("width", [](const View&, const ResolvedOpening& of) { return of.width(); }),
      shown("height", [](const View&, const ResolvedOpening& of) { return of.height(); }),
      shown("underside", &ResolvedOpening::underside, "floor or sill"),
      shown("soffit", &ResolvedOpening::soffit, "underside of the lintel"),
      shown("first_course", &ResolvedOpening::first_course, kCourseNumber),
      shown("last_course", &ResolvedOpening::last_course, kCourseNumber),
      shown(
          "planned",
          [](const View&, const ResolvedOpening& of) {
            return of.laid_from < of.laid_to ? std::optional(PlannedJambs{of}) : std::nullopt;
          },
          "only where a jamb was found elsewhere"),
      shown("asked_width", &ResolvedOpening::asked_width),
      shown("asked_height", &ResolvedOpening::asked_height),
      shown("packing_each_side", &ResolvedOpening::packing_each_side, "left to be packed at each jamb"),
      shown("packing_head", &ResolvedOpening::packing_head),
      shown(
          "packing", [](const View& view, const ResolvedOpening& of) { return packing_said(view.answer, of); },
          "what is left to be packed, and which frame leaves nothing; or \"\""),
      shown("lintel", &ResolvedOpening::lintel),
      shown("place", &ResolvedOpening::place, kPointer),
  };
};

template <>
struct Shown<ControlJoint> {
  static constexpr std::string_view name = "control_joint";
  static constexpr std::string_view description = "A control joint, straight through all courses.";
  static constexpr auto fields = std::tuple{
      side("side", &ControlJoint::wall),
      shown("from", [](const View&, const ControlJoint& of) { return of.from.distance_from_start(); }),
      shown("to", [](const View&, const ControlJoint& of) { return of.to.distance_from_start(); }),
      shown("by_rule", &ControlJoint::by_rule),
  };
};

/// From the underside of the first bed joint to the top of the last course's units: what the job's height asks for.
inline Length height_as_built(const Building& building) {
  const Course& first = building.courses.front();
  return building.courses.back().top - first.top + first.unit_height + building.joint;
}

}  // namespace stringcourse::document
