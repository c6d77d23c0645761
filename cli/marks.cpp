// The marks of courses at the wall, and what the readings there come to, as text.
#include "cli/files.hpp"
#include "cli/solved.hpp"
#include "cli/summary.hpp"
#include "cli/text_block.hpp"
#include "cli/verb_actions.hpp"
#include "job/words.hpp"
#include "laying/as_laid.hpp"
#include "laying/odds.hpp"
#include "sheet/hook_words.hpp"
#include "words/language.hpp"
#include "words/sheet_words.hpp"

namespace stringcourse::cli {

namespace {

using laying::CourseAsLaid;
using laying::WallMark;

// "end of unit 7"; a jamb or a joint's edge where the unit ends as well is told in the same line.
Fact mark_kind(const Answer& answer, const WallMark& mark) {
  const auto opening = [&] { return answer.building.openings[static_cast<std::size_t>(mark.mark.opening)].name; };
  switch (mark.mark.kind) {
    case setout::MarkKind::NearJamb: return fact("marks-near-jamb", {opening()});
    case setout::MarkKind::FarJamb: return fact("marks-far-jamb", {opening()});
    case setout::MarkKind::JointNearEdge: return fact("marks-joint-near");
    case setout::MarkKind::JointFarEdge: return fact("marks-joint-far");
    case setout::MarkKind::BarCentre: return fact("summary-text", {words::words_of(answer.building).mark_bar});
    case setout::MarkKind::BlockEnd: break;
  }
  return fact(mark.closes ? "marks-unit-end-last" : "marks-unit-end", {mark.mark.piece});
}

Fact past_or_short(const WallMark& mark) {
  if (!mark.past) return {};
  const Fact past = *mark.past == Length()
                        ? fact("marks-on-it")
                        : fact(*mark.past < Length() ? "marks-short" : "marks-past", {magnitude(*mark.past)});
  if (!mark.doubtful) return past;
  return mark.doubtful->likely.empty()
             ? fact("marks-left-out", {past, mark.doubtful->why})
             : fact("marks-left-out-likely", {past, mark.doubtful->why, mark.doubtful->likely});
}

bool is_told(const WallMark& mark) {
  if (mark.mark.at < Length()) return false;  // inside the wall that this one enters
  return mark.mark.kind != setout::MarkKind::BlockEnd || mark.to_read || mark.closes || mark.past;
}

std::string marks_table(const Answer& answer, const CourseAsLaid& course) {
  using enum Table::Align;
  const words::Reader reader{answer.building.tape};
  Table table({Left, Left, Left});
  std::vector<std::string> row;
  for (const WallMark& mark : course.marks) {
    if (!is_told(mark)) continue;
    const std::string at = both_forms(mark.mark.at, reader.tape), reading = words::told(past_or_short(mark), reader);
    const std::string kind = words::told(mark_kind(answer, mark), reader);
    if (!row.empty() && row[0] == at && (row[2].empty() || reading.empty())) {
      row[1] += ", " + kind;
      row[2] += reading;
      continue;
    }
    if (!row.empty()) table.add(std::move(row));
    row = {at, kind, reading};
  }
  if (!row.empty()) table.add(std::move(row));
  return table.text();
}

std::string marks_text(const Answer& answer, const CourseAsLaid& course) {
  const Building& building = answer.building;
  const words::Reader reader{building.tape};
  std::string text = words::told(fact(course.finished ? "marks-course-laid" : "marks-course",
                                      {building.walls[static_cast<std::size_t>(course.wall)].name, course.course,
                                       sheet::hook_text(building, course.wall, words::words_of(building))}),
                                 reader) +
                     "\n" + marks_table(answer, course);
  if (course.run < 0) return text;
  const laying::RunAsLaid& run = course.runs[static_cast<std::size_t>(course.run)];
  text += "  " + words::told(fact("marks-now", {laying::next_said(run)}), reader) + "\n";
  for (const laying::Lost& lost : run.lost)
    text += "  " + words::told(fact("marks-cannot-keep", {laying::lost_said(lost)}), reader) + "\n";
  return text;
}

Fact share_of(const laying::Odds& odds) {
  const laying::Share share = laying::binomial_interval(odds.inside, odds.courses, 0.95);
  const auto percent = [](double value) {
    const auto tenths = static_cast<long long>(value * 1000 + 0.5);
    return number_text(tenths / 10) + "." + number_text(tenths % 10);
  };
  return fact("marks-share", {odds.inside, odds.courses, percent(share.least), percent(share.most)});
}

std::string chances_text(const Answer& answer, const CourseAsLaid& course) {
  constexpr int kCourses = 2000;
  const auto odds = laying::closure_odds(course, answer.laid->how, answer.building, kCourses, 20261127);
  if (!odds) return "";
  const words::Reader reader{answer.building.tape};
  return "  " +
         words::told(fact(answer.laid->how.spreads_measured ? "marks-tried-measured" : "marks-tried-usual",
                          {kCourses, odds->units}),
                     reader) +
         "\n    " + words::told(fact("marks-tried-with", {share_of(odds->with_marks)}), reader) + "\n    " +
         words::told(fact("marks-tried-without", {share_of(odds->without)}), reader) + "\n";
}

/// The course named, or each wall's next.
std::vector<CourseAsLaid> chosen(const Answer& answer, const Command& command, std::string& trouble) {
  const auto side = command.value("--side");
  const int wall = side ? laying::wall_named(answer.building, *side) : -1;
  if (side && wall < 0) trouble = "There is no side or inner wall " + quoted(*side) + ".";
  int course = 0;
  for (const char digit : command.value("--course").value_or(""))
    course = digit < '0' || digit > '9' || course > 100'000 ? -1'000'000 : course * 10 + (digit - '0');
  if (command.has("--course") && (course < 1 || course > static_cast<int>(answer.building.courses.size())))
    trouble = "There is no course " + quoted(*command.value("--course")) + ".";
  if (!trouble.empty()) return {};
  std::vector<CourseAsLaid> courses;
  for (int each = 0; each < static_cast<int>(answer.building.walls.size()); ++each) {
    const int next = course > 0 ? course : answer.laid->next_course[static_cast<std::size_t>(each)];
    if ((side && each != wall) || next == 0) continue;
    courses.push_back(laying::course_as_laid(answer.job, answer.building, layouts_of(answer), answer.laid->how,
                                             answer.laid->counts, each, next));
  }
  return courses;
}

}  // namespace

ExitCode marks(const Command& command) {
  const auto answer = [&] {
    ProgressBar progress(ProgressBar::Wish::Shown);
    return read_and_solve(command, progress);
  }();
  if (!answer) return answer.error();
  if (!answer->layout.stopped.empty()) return say(stops_text(*answer)), kRefused;
  std::string trouble;
  const std::vector<CourseAsLaid> courses = chosen(*answer, command, trouble);
  if (!trouble.empty()) return usage_trouble(trouble, command.verb);
  std::string text;
  for (const CourseAsLaid& course : courses) {
    text += marks_text(*answer, course) + (command.has("--chances") ? chances_text(*answer, course) : "");
  }
  if (courses.empty()) text = words::told(fact("marks-all-laid"), {answer->building.tape}) + "\n";
  for (const Finding& finding : answer->laid->findings)
    text += words::told(finding.says, {answer->building.tape}) + "\n";
  return write_stdout(printable_lines(text)) ? kDone : file_trouble("cannot write to stdout");
}

}  // namespace stringcourse::cli
