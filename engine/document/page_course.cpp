// One course at the wall, asked for by itself.
#include "document/page_parts.hpp"
#include "document/put.hpp"
#include "document/shown_laying.hpp"

namespace stringcourse::document {

/// What is shown of it.
struct CourseAlone {
  const laying::CourseAsLaid& course;
  const laying::HowLaid& how;
  std::optional<laying::ClosureOdds> odds;
};

namespace {

constexpr int kCoursesPlayed = 500;        // for the odds in a page; the command line plays as many
constexpr std::uint64_t kSeed = 20261127;  // one job, one answer

}  // namespace

template <>
struct Shown<laying::Odds> {
  using Of = laying::Odds;
  static constexpr std::string_view name = "played";
  static constexpr std::string_view description = "Courses that were played, and how many of them close.";
  static constexpr auto fields = std::tuple{
      shown("courses", &Of::courses),
      shown("inside", &Of::inside),
      shown("least_millionths",
            [](const View&, const Of& of) {
              return millionths(laying::binomial_interval(of.inside, of.courses, 0.95).least);
            }),
      shown("most_millionths",
            [](const View&, const Of& of) {
              return millionths(laying::binomial_interval(of.inside, of.courses, 0.95).most);
            }),
      shown("spread_nm", [](const View&, const Of& of) { return nanometres_of(of.spread); }),
  };
};

template <>
struct Shown<laying::ClosureOdds> {
  using Of = laying::ClosureOdds;
  static constexpr std::string_view name = "closure_odds";
  static constexpr std::string_view description = "How likely the course closes within its joints.";
  static constexpr auto fields = std::tuple{
      shown("units", &Of::units),           shown("past_most", &Of::past_most), shown("short_most", &Of::short_most),
      shown("with_marks", &Of::with_marks), shown("without", &Of::without),
  };
};

template <>
struct Shown<CourseAlone> {
  using Of = CourseAlone;
  static constexpr std::string_view name = "course_alone";
  static constexpr std::string_view description = "One course at the wall, and what it is laid by.";
  static constexpr auto fields =
      std::tuple_cat(std::tuple{shown("course", [](const View&, const Of& of) -> const auto& { return of.course; })},
                     how_fields<Of>([](const View&, const Of& of) -> const laying::HowLaid& { return of.how; }),
                     std::tuple{shown("odds", [](const View&, const Of& of) { return of.odds; })});
};

}  // namespace stringcourse::document

namespace stringcourse {

bool write_course(JsonOut& out, const Answer& answer, const CourseAsked& asked) {
  const int wall = laying::wall_named(answer.building, asked.side);
  if (wall < 0 || asked.course < 1 || asked.course > static_cast<int>(answer.building.courses.size())) return false;
  const laying::HowLaid how = answer.laid ? answer.laid->how : laying::how_laid(answer.job, answer.building);
  const std::vector<bool> counts = laying::entries_that_count(answer.job);
  const laying::CourseAsLaid course = laying::course_as_laid(answer.job, answer.building, layouts_of(answer), how,
                                                             counts, wall, asked.course, asked.trial);
  std::optional<laying::ClosureOdds> odds;
  if (asked.odds) odds = laying::closure_odds(course, how, answer.building, document::kCoursesPlayed, document::kSeed);
  document::put(out, document::View{answer}, document::CourseAlone{course, how, odds});
  return true;
}

}  // namespace stringcourse
