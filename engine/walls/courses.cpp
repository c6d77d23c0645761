// Courses from the bearing up: how many, which of them half-high, bond beams and wire in them.
#include <algorithm>

#include "measure/sorting.hpp"
#include "walls/draft.hpp"
#include "walls/opening_size.hpp"

namespace stringcourse::walls {
namespace {

constexpr int kMostCourses = 200;

/// How high one course stands, whole or half-high, with its joint.
struct CourseHeights {
  Length whole, half_high;
};

CourseHeights course_heights(const Building& building) {
  const Series& own = building.series.front();
  return {own.height + own.joint, own.half_high + own.joint};
}

struct CoursePlan {
  int count = 0;
  std::vector<int> half_high;  // ascending
};

bool check_count(Draft& draft, std::int64_t count, const std::string& place) {
  if (count >= 1 && count <= kMostCourses) return true;
  refuse(draft, "courses", place, fact("courses", {count}), fact("state-courses-up-to", {kMostCourses}));
  return false;
}

/// The outright half-high courses, or nothing if one of them is out of range.
std::optional<CoursePlan> with_stated_half_high(Draft& draft, int count) {
  CoursePlan plan{count, draft.job.heights.half_high_courses};
  bool sound = true;
  for (std::size_t i = 0; i < plan.half_high.size(); ++i) {
    if (plan.half_high[i] >= 1 && plan.half_high[i] <= count) continue;
    sound = false;
    refuse(draft, "course-range", pointer("/heights/half_high_courses", i),
           fact("course-range", {plan.half_high[i], count}), fact("name-course-up-to", {count}));
  }
  sort_stably(plan.half_high);
  plan.half_high.erase(std::unique(plan.half_high.begin(), plan.half_high.end()), plan.half_high.end());
  if (!plan.half_high.empty() && !is_stocked(draft.building, UnitKind::HalfHigh)) {
    sound = false;
    refuse(draft, "half-high-not-stocked", "/heights/half_high_courses", fact("half-high-not-stocked"),
           fact("add-half-high"));
  }
  return sound ? std::optional(plan) : std::nullopt;
}

/// Top of a half-high course above whole ones, from the datum: the top of course 1, itself.
Length top_if_half_high(const CourseHeights& heights, int course) {
  return course == 1 ? Length() : heights.whole * (course - 2) + heights.half_high;
}

/// The half-high course on whose top the first opening's head falls. The one at the top, and a finding, where the head
/// falls on a whole course: a half-high one under it would only raise it.
int course_under_head(Draft& draft, int count) {
  const CourseHeights heights = course_heights(draft.building);
  const std::optional<Length> head = first_head_asked(draft);
  if (!head) {
    find(draft, "no-head", "/heights/half_high", fact("no-head"));
    return count;
  }
  const Length least = *head - draft.building.joint;  // top of the course under the head
  const Length whole_top = heights.whole * -((-least).whole_multiples(heights.whole));
  for (int course = 1; course <= count; ++course) {
    const Length top = top_if_half_high(heights, course);
    if (top >= least && top < whole_top) return course;
  }
  find(draft, "half-high-not-under-head", "/heights/half_high", fact("half-high-not-under-head"));
  return count;
}

int half_high_course(Draft& draft, int count) {
  switch (draft.job.heights.half_high.value_or(HalfHighPlace::Top)) {
    case HalfHighPlace::First: return 1;
    case HalfHighPlace::UnderHead: return course_under_head(draft, count);
    case HalfHighPlace::Top: break;
  }
  return count;
}

/// Those next to `lower`, the height of whole courses next below the one asked.
Fact heights_that_fit(const Draft& draft, Length lower) {
  const CourseHeights heights = course_heights(draft.building);
  const FactValue below = marked(lower), above = marked(lower + heights.whole);
  if (!draft.job.heights.half_high_courses.empty()) return fact("heights-that-fit", {below, above});
  const bool stocked = is_stocked(draft.building, UnitKind::HalfHigh);
  return fact(stocked ? "heights-that-fit-half-high" : "heights-that-fit-half-high-not-stocked",
              {below, above, marked(lower + heights.half_high)});
}

/// `lower`: the height of whole courses next below the one asked; `got`: that, or the next above.
void find_off_course(Draft& draft, Length asked, Length lower, Length got) {
  find(draft, "height-off-course", "/heights/height",
       sentences({fact("height-off-course", {as_asked(asked), marked(got)}), heights_that_fit(draft, lower)}));
}

/// Courses for a height, measured from the underside of course 1's bed joint.
std::optional<CoursePlan> plan_from_height(Draft& draft, Length asked) {
  const CourseHeights heights = course_heights(draft.building);
  const auto stated_half = static_cast<std::int64_t>(draft.job.heights.half_high_courses.size());
  const Length whole_part = asked - heights.half_high * stated_half;
  const std::int64_t whole = whole_part.whole_multiples(heights.whole);
  const Length rest = whole_part - heights.whole * whole;
  const bool half_fits =
      stated_half == 0 && rest == heights.half_high && is_stocked(draft.building, UnitKind::HalfHigh);
  const bool above_is_nearer = rest > Length() && rest * 2 >= heights.whole;  // of two as near the higher
  const std::int64_t count = whole + stated_half + (half_fits || above_is_nearer ? 1 : 0);
  if (!check_count(draft, count, "/heights/height")) return std::nullopt;
  if (half_fits) return CoursePlan{static_cast<int>(count), {half_high_course(draft, static_cast<int>(count))}};
  if (rest != Length())
    find_off_course(draft, asked, asked - rest, asked - rest + (above_is_nearer ? heights.whole : Length()));
  return with_stated_half_high(draft, static_cast<int>(count));
}

std::optional<CoursePlan> plan_courses(Draft& draft) {
  const Heights& heights = draft.job.heights;
  if (heights.courses.has_value() == heights.height.has_value()) {
    refuse(draft, "choose-one", "/heights", fact(heights.courses ? "courses-and-height" : "no-courses-no-height"),
           fact("state-courses-or-height"));
    return std::nullopt;
  }
  if (heights.height) return plan_from_height(draft, heights.height->length);
  if (!check_count(draft, *heights.courses, "/heights/courses")) return std::nullopt;
  return with_stated_half_high(draft, *heights.courses);
}

std::vector<Course> stacked(const Building& building, const CoursePlan& plan) {
  const Series& own = building.series.front();
  std::vector<Course> courses;
  for (int number = 1; number <= plan.count; ++number) {
    Course course;
    course.number = number;
    course.half_high = std::ranges::binary_search(plan.half_high, number);
    course.unit_height = course.half_high ? own.half_high : own.height;
    course.top = courses.empty() ? Length() : courses.back().top + own.joint + course.unit_height;
    courses.push_back(course);
  }
  return courses;
}

}  // namespace

void resolve_courses(Draft& draft) {
  if (!draft.series_stand) return;
  const std::optional<CoursePlan> plan = plan_courses(draft);
  if (plan) draft.building.courses = stacked(draft.building, *plan);
}

}  // namespace stringcourse::walls
