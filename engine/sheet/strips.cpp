// The sides' strips on sheets, two to a sheet: courses 1 and 2 of each side; and of the courses above, those that are
// marked otherwise than every one before.
#include <algorithm>

#include "bond/layout.hpp"
#include "measure/digits.hpp"
#include "setout/marks.hpp"
#include "sheet/registry.hpp"
#include "sheet/strip.hpp"

namespace stringcourse::sheet {
namespace {

constexpr int kFirstCourses = 2;
constexpr std::size_t kBandsOnSheet = 2;

int walls_of(const Context& context) { return static_cast<int>(context.building.walls.size()); }
int courses_of(const Context& context) { return static_cast<int>(context.building.courses.size()); }

// What a course of a wall is marked with, bars aside.
using Marks = std::vector<std::pair<setout::MarkKind, Length>>;

Marks marks_of(const Context& context, int wall, int course) {
  Marks marks;
  for (const setout::Mark& mark : setout::running_marks(context.building, context.layout, wall, course)) {
    if (mark.kind != setout::MarkKind::BarCentre) marks.emplace_back(mark.kind, mark.at);
  }
  return marks;
}

// Courses over the second that no course before is marked like.
std::vector<int> courses_that_differ(const Context& context, int wall) {
  std::vector<Marks> shown;
  std::vector<int> differ;
  for (int course = 1; course <= courses_of(context); ++course) {
    Marks marks = marks_of(context, wall, course);
    if (marks.empty() || std::ranges::contains(shown, marks)) continue;
    shown.push_back(std::move(marks));
    if (course > kFirstCourses) differ.push_back(course);
  }
  return differ;
}

// "Side AB: courses 1 and 2"; "Side AB: course 5; Side BC: course 11".
std::string title_of(const Context& context, std::span<const Band> bands) {
  const words::SheetWords& words = context.words;
  const auto number = [&](const Band& band) { return number_text(band.course); };
  const auto name = [&](const Band& band) { return context.wall(band.wall).name; };
  const auto one = [&](const Band& band) { return words::fill_in(words.title_one_strip, {name(band), number(band)}); };
  if (bands.size() == 1) return one(bands[0]);
  if (bands[0].wall != bands[1].wall) return words::fill_in(words.title_both_strips, {one(bands[0]), one(bands[1])});
  const auto& [low, high] =
      std::minmax(bands[0], bands[1], [](const Band& a, const Band& b) { return a.course < b.course; });
  if (low.course == high.course) return one(low);
  return words::fill_in(words.title_two_strips, {name(low), number(low), number(high)});
}

PlannedSheet sheet_of(const Context& context, std::vector<Band> bands, Scale scale) {
  // The higher course over the lower one of the same wall.
  std::ranges::stable_sort(bands, [](const Band& a, const Band& b) { return a.wall == b.wall && a.course > b.course; });
  const Part& part = bands.front().part;
  const bool alike = std::ranges::all_of(bands, [&](const Band& band) { return band.part.index == part.index; });
  const std::string title = title_of(context, bands);
  return {.title = alike ? part_title(context.words, title, part.index, part.of) : title,
          .scale = scale,
          .bands = std::move(bands)};
}

// Courses 1 and 2 of each wall.
std::vector<PlannedSheet> first_sheets(const Context& context) {
  std::vector<PlannedSheet> sheets;
  std::vector<int> courses;
  for (int course = 1; course <= std::min(kFirstCourses, courses_of(context)); ++course) courses.push_back(course);
  for (int wall = 0; wall < walls_of(context); ++wall) {
    const WallParts parts = parts_of_strip(context, wall, courses);
    for (const Part& part : parts.parts) {
      std::vector<Band> bands;
      for (const int course : courses) bands.push_back({wall, course, part});
      sheets.push_back(sheet_of(context, std::move(bands), parts.scale));
      sheets.back().wall = wall;
    }
  }
  return sheets;
}

// The others, as they come.
std::vector<PlannedSheet> upper_sheets(const Context& context) {
  std::vector<PlannedSheet> sheets;
  std::vector<Band> bands;
  Scale scale{1};
  const auto close = [&] {
    if (!bands.empty()) sheets.push_back(sheet_of(context, std::exchange(bands, {}), std::exchange(scale, Scale{1})));
  };
  for (int wall = 0; wall < walls_of(context); ++wall) {
    for (const int course : courses_that_differ(context, wall)) {
      const WallParts parts = parts_of_strip(context, wall, std::span(&course, 1));
      for (const Part& part : parts.parts) {
        bands.push_back({wall, course, part});
        scale = std::max(scale, parts.scale, [](Scale a, Scale b) { return a.denominator < b.denominator; });
        if (bands.size() == kBandsOnSheet) close();
      }
    }
  }
  close();
  return sheets;
}

Group draw_strips(const Context& context, const PlannedSheet& sheet) {
  const Area& room = context.page.drawing;
  Pad pad(Role::Figure, sheet.title);
  const Micrometres foot = strip_notes_height(context, sheet.bands) + 1'000;
  const Micrometres high = (room.height() - foot) / static_cast<Micrometres>(kBandsOnSheet);
  Micrometres top = room.top;
  for (const Band& band : sheet.bands) {
    if (top != room.top) pad.line({room.left, top}, {room.right, top}, {Pen::Thin, Dash::Solid, Ink::Grey});
    pad.add(draw_strip(context, band, *sheet.scale, {room.left, top - high, room.right, top}));
    top -= high;
  }
  write_strip_notes(pad, context, sheet.bands);
  return std::move(pad).take();
}

}  // namespace

constinit const SheetKind kStripsSheet{
    .name = "side",
    .hold_point = HoldPoint::FirstCourse,
    .purpose = &words::SheetWords::purpose_strips,
    .caution = {"wet-cement"},
    .sheets = first_sheets,
    .draw = draw_strips,
};

constinit const SheetKind kUpperStripsSheet{
    .name = "above",
    .hold_point = HoldPoint::Lintels,
    .purpose = &words::SheetWords::purpose_upper,
    .caution = {"wet-cement"},
    .sheets = upper_sheets,
    .draw = draw_strips,
};

}  // namespace stringcourse::sheet
