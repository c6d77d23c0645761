// The marks of courses at the wall, and what the readings there come to, as text.
#include "cli/files.hpp"
#include "cli/solved.hpp"
#include "cli/summary.hpp"
#include "cli/verb_actions.hpp"
#include "job/words.hpp"
#include "laying/as_laid.hpp"
#include "sheet/hook_words.hpp"
#include "solve/json_out.hpp"
#include "solve/page_parts.hpp"

namespace stringcourse::cli {

namespace {

using laying::CourseAsLaid;
using laying::WallMark;

std::string mark_kind(const Answer& answer, const WallMark& mark) {
  const auto opening = [&] { return answer.building.openings[static_cast<std::size_t>(mark.mark.opening)].name; };
  switch (mark.mark.kind) {
    case setout::MarkKind::NearJamb: return "near jamb of " + opening();
    case setout::MarkKind::FarJamb: return "far jamb of " + opening();
    case setout::MarkKind::JointNearEdge: return "control joint, near edge";
    case setout::MarkKind::JointFarEdge: return "control joint, far edge";
    case setout::MarkKind::BarCentre: return "centre of a bar";
    case setout::MarkKind::BlockEnd: break;
  }
  return "end of unit " + number_text(mark.mark.piece) + (mark.closes ? ", closes" : "");
}

std::string past_words(Length past, Tape tape) {
  if (past == Length()) return "on it";
  return tape_text(magnitude(past), tape) + (past < Length() ? " short" : " past");
}

std::string marks_text(const Answer& answer, const CourseAsLaid& course) {
  const Tape tape = answer.building.tape;
  std::string text = laying::course_name(answer.building, course.wall, course.course) + ": marks from " +
                     sheet::hook_text(answer.building, course.wall, sheet::kEnglish) + (course.finished ? ", laid" : "") + "\n";
  for (const WallMark& mark : course.marks) {
    if (mark.mark.kind == setout::MarkKind::BlockEnd && !mark.to_read && !mark.closes && !mark.past) continue;
    std::string line = "  " + both_forms(mark.mark.at, tape);
    line.append(line.size() < 28 ? 28 - line.size() : 1, ' ').append(mark_kind(answer, mark));
    if (mark.past) line += "  " + past_words(*mark.past, tape) + (mark.doubtful ? " (left out: " + mark.doubtful->why + (mark.doubtful->likely.empty() ? "" : "; " + mark.doubtful->likely) + ")" : "");
    text += line + "\n";
  }
  if (course.run < 0) return text;
  const laying::RunAsLaid& run = course.runs[static_cast<std::size_t>(course.run)];
  text += "  now: " + laying::next_text(run, tape) + "\n";
  for (const std::string& lost : run.lost) text += "  loses " + lost + "\n";
  return text;
}

std::string share_text(const laying::Odds& odds) {
  const laying::Share share = laying::binomial_interval(odds.inside, odds.courses, 0.95);
  const auto percent = [](double value) {
    const auto tenths = static_cast<long long>(value * 1000 + 0.5);
    return number_text(tenths / 10) + "." + number_text(tenths % 10);
  };
  return number_text(odds.inside) + " of " + number_text(odds.courses) + " (95 % interval " + percent(share.least) + " to " + percent(share.most) + " %)";
}

std::string odds_text(const Answer& answer, const CourseAsLaid& course) {
  constexpr int kCourses = 2000;
  const auto odds = laying::closure_odds(course, answer.laid->how, answer.building, kCourses, 20261127);
  if (!odds) return "";
  return "  odds that the closure's joints stay lawful, " + number_text(odds->units) + " units ahead, spreads " + (answer.laid->how.spreads_measured ? "as measured" : "assumed") +
         ":\n    with marks " + share_text(odds->with_marks) + "\n    without    " + share_text(odds->without) + "\n";
}

/// The course named, or each wall's next.
std::vector<CourseAsLaid> chosen(const Answer& answer, const Command& command, std::string& trouble) {
  const auto side = command.value("--side");
  const int wall = side ? laying::wall_of(answer.building, *side) : -1;
  if (side && wall < 0) trouble = "There is no wall " + quoted(*side) + ".";
  int course = 0;
  for (const char digit : command.value("--course").value_or("")) course = digit < '0' || digit > '9' || course > 100'000 ? -1'000'000 : course * 10 + (digit - '0');
  if (command.has("--course") && (course < 1 || course > static_cast<int>(answer.building.courses.size()))) trouble = "There is no course " + quoted(*command.value("--course")) + ".";
  if (!trouble.empty()) return {};
  std::vector<CourseAsLaid> courses;
  for (int each = 0; each < static_cast<int>(answer.building.walls.size()); ++each) {
    const int next = course > 0 ? course : answer.laid->next_course[static_cast<std::size_t>(each)];
    if ((side && each != wall) || next == 0) continue;
    courses.push_back(laying::course_as_laid(answer.job, answer.building, layouts_of(answer), answer.laid->how, answer.laid->counts, each, next));
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
    text += marks_text(*answer, course) + (command.has("--odds") ? odds_text(*answer, course) : "");
  }
  if (courses.empty()) text = "All courses are laid.\n";
  for (const Finding& finding : answer->laid->findings) text += finding.text + "\n";
  return write_stdout(printable_lines(text)) ? kDone : file_trouble("cannot write to stdout");
}

}  // namespace stringcourse::cli
