#include "sheet/wall_card.hpp"

#include <algorithm>

#include "job/strikes.hpp"
#include "setout/places.hpp"
#include "sheet/hook_words.hpp"

namespace stringcourse::sheet {
namespace {

using laying::AsLaid;
using laying::CourseAsLaid;
using laying::RunAsLaid;
using laying::WallMark;
using setout::MarkKind;

std::string past_text(const Context& context, Length past) {
  if (rounded_to(past, tape_step(context.tape())) == Length()) return std::string(context.words.mark_on);
  return fill_in(past < Length() ? context.words.mark_short : context.words.mark_past, {tape_text(magnitude(past), context.tape())});
}

// ---- marks ---------------------------------------------------------------------------------------------------------

/// What a run of units ends at.
std::string_view end_text(const Words& words, RunEnd end) {
  switch (end) {
    case RunEnd::ThroughCorner:
    case RunEnd::ButtCorner: return words.mark_corner;
    case RunEnd::Jamb: return words.mark_jamb;
    case RunEnd::FreeEnd: return words.mark_wall_end;
    case RunEnd::ControlJoint: return words.mark_control_joint;
    case RunEnd::LintelEnd: return words.mark_lintel;
    case RunEnd::TiedJunction:
    case RunEnd::LappedButt:
    case RunEnd::EnteringJunction:
    case RunEnd::SlotSide: return words.mark_wall_met;
  }
  return words.mark_jamb;
}

std::string what_text(const Context& context, const CourseAsLaid& course, const WallMark& mark) {
  const Words& words = context.words;
  const auto opening = [&] { return context.building.openings[static_cast<std::size_t>(mark.mark.opening)].name; };
  switch (mark.mark.kind) {
    case MarkKind::NearJamb: return fill_in(words.mark_near_jamb, {opening()});
    case MarkKind::FarJamb: return fill_in(words.mark_far_jamb, {opening()});
    case MarkKind::JointNearEdge: return std::string(words.mark_near_edge);
    case MarkKind::JointFarEdge: return std::string(words.mark_far_edge);
    case MarkKind::BarCentre: return std::string(words.mark_bar);
    case MarkKind::BlockEnd: break;
  }
  const RunAsLaid& run = course.runs[static_cast<std::size_t>(mark.run)];
  std::string text = fill_in(words.mark_unit, {number_text(mark.mark.piece)});
  if (mark.units == run.pieces) {
    const auto runs = setout::runs_in(context.layout, course.wall, course.course);
    const auto index = static_cast<std::size_t>(mark.run);
    const RunEnd end = index < runs.size() ? runs[index].at_end : RunEnd::Jamb;
    text = fill_in(words.mark_end_unit, {number_text(mark.mark.piece), std::string(end_text(words, end))});
  }
  return mark.closes ? text + "; " + std::string(words.mark_closes) : text;
}

std::string found_text(const Context& context, const WallMark& mark) {
  if (!mark.past) return "";
  const std::string past = past_text(context, *mark.past);
  if (mark.state == WallMark::State::Doubtful) return fill_in(context.words.mark_doubtful, {past});
  if (mark.state == WallMark::State::Disputed) return fill_in(context.words.mark_disputed, {past});
  return past;
}

/// The joints that stand beside this mark: of its run, from here to the next mark.
std::string next_joints(const Context& context, const CourseAsLaid& course, const WallMark& mark, bool first_of_run) {
  if (mark.run < 0) return "";
  const RunAsLaid& run = course.runs[static_cast<std::size_t>(mark.run)];
  if (run.finished) return "";
  const bool here = run.laid == mark.units || (run.laid == 0 && first_of_run);
  if (!here) return "";
  // What was asked before anything was read stands beside the first mark only where it is not as planned.
  const bool as_designed = run.next.what == laying::Correction::What::Joints &&
                           std::ranges::all_of(run.next.joints, [&](Length joint) { return joint == context.building.joint; });
  if (run.laid == 0 && as_designed && run.lost.empty()) return "";
  std::string text = laying::next_text(run, context.tape());
  for (const std::string& lost : run.lost) text += "; loses " + lost;
  return text;
}

/// Bars stand on the strips.
bool is_shown(const WallMark& mark) {
  if (mark.mark.kind == MarkKind::BarCentre || mark.mark.at < Length()) return false;
  return mark.mark.kind != MarkKind::BlockEnd || mark.to_read || mark.closes || mark.past;
}

void add_course(Table& table, const Context& context, const CourseAsLaid& course) {
  const Words& words = context.words;
  std::string heading = fill_in(words.mark_course, {context.wall(course.wall).name, number_text(course.course), hook_text(context.building, course.wall, words),
                                                    face_text(context.building, course.wall, words)});
  if (!course.runs.empty() && course.runs.front().closing) heading += "; " + fill_in(words.marks_one_joint, {tape_text(course.runs.front().closing->joint, context.tape())});
  table.add_heading(heading);
  int run = -1;
  for (const WallMark& mark : course.marks) {
    if (!is_shown(mark)) continue;
    const bool first = mark.run >= 0 && mark.run != run;
    if (mark.run >= 0) run = mark.run;
    table.add_row({"", both_forms(mark.mark.at, context.tape()), what_text(context, course, mark), found_text(context, mark), next_joints(context, course, mark, first)});
  }
}

// ---- the log -------------------------------------------------------------------------------------------------------

class Log {
 public:
  Log(Table& table, const Context& context)
      : table_(table), context_(context), laid_(*context.job.laid), words_(context.words), standing_(entries_standing(*context.job.log)) {}

  void add(std::size_t index) {
    const LaidEntry& entry = (*context_.job.log)[index];
    if (entry.mark) add_mark(index, entry);
    else if (entry.units) add_units(index, entry);
    else if (entry.laid) row(index, fill_in(words_.laid_course, {course(entry.laid->on, entry.laid->course)}), "", "");
    else if (entry.gauge) add_gauge(index, entry);
    else if (entry.set) add_set(index, entry);
    else if (entry.gap) add_gap(index, entry);
    else if (entry.check) add_check(index, entry);
    else if (entry.found) row(index, fill_in(words_.laid_found, {found_name(*entry.found)}), both_forms(entry.found->at, tape()), "");
    else if (entry.remark) row(index, fill_in(words_.laid_remark, {course(entry.remark->on, entry.remark->course)}), "", "");
    else if (entry.strike) row(index, fill_in(words_.laid_strike, {*entry.strike}), "", "");
  }

 private:
  Tape tape() const { return context_.tape(); }
  static std::string course(const std::string& on, int number) { return on + "-" + number_text(number); }
  std::string found_name(const FoundPlace& found) const {
    if (found.what == FoundWhat::WallEnd) return fill_in(words_.laid_far_end, {found.on});
    return fill_in(found.what == FoundWhat::NearJamb ? words_.mark_near_jamb : words_.mark_far_jamb, {found.opening.value_or("")});
  }

  void row(std::size_t index, const std::string& what, const std::string& read, std::string says) {
    const LaidEntry& entry = (*context_.job.log)[index];
    const bool struck = !standing_[index];
    if (struck) says = std::string(words_.laid_struck);
    if (!entry.note.empty()) says += (says.empty() ? "" : "; ") + entry.note;
    if (!entry.photos.empty()) says += (says.empty() ? "" : "; ") + fill_in(words_.laid_photos, {joined(entry.photos, ", ")});
    table_.add_row({entry.when + (entry.by.empty() || entry.when.empty() ? "" : ", ") + entry.by, what, read, says});
  }

  void add_mark(std::size_t index, const LaidEntry& entry) {
    const MarkReading& reading = *entry.mark;
    const Length past = reading.past ? *reading.past : *reading.read - reading.at;
    std::string says(words_.laid_unused);
    for (const CourseAsLaid& one : laid_.begun) {
      for (const WallMark& mark : one.marks) {
        if (!std::ranges::contains(mark.entries, index)) continue;
        const RunAsLaid& run = one.runs[static_cast<std::size_t>(mark.run)];
        says = mark.state == WallMark::State::Doubtful ? found_text(context_, mark) : run.laid == mark.units ? laying::next_text(run, tape()) : "";
      }
    }
    row(index, fill_in(words_.laid_mark, {course(reading.on, reading.course), both_forms(reading.at, tape())}), past_text(context_, past), says);
  }

  void add_units(std::size_t index, const LaidEntry& entry) {
    std::string read;
    if (entry.units->row) read = fill_in(words_.laid_row, {number_text(*entry.units->together), both_forms(*entry.units->row, tape())});
    if (!entry.units->singles.empty()) read += (read.empty() ? "" : "; ") + fill_in(words_.laid_singles, {number_text(static_cast<long long>(entry.units->singles.size()))});
    std::string says;
    if (laid_.how.batch) {
      const Length mean = rounded_to(laid_.how.batch->mean, tape() == Tape::Inches ? Length::sixty_fourths(1) : Length::nanometres(100'000));
      says = fill_in(words_.laid_mean, {exact_text(mean, tape()), number_text(laid_.how.batch->units), verdict(laid_.how.batch->within)});
    }
    row(index, std::string(words_.laid_units), read, says);
  }

  std::string verdict(laying::Verdict verdict) const {
    return std::string(words_.laid_verdicts[verdict == laying::Verdict::Fits ? 0 : verdict == laying::Verdict::CannotTell ? 1 : 2]);
  }

  void add_gauge(std::size_t index, const LaidEntry& entry) {
    std::string says;
    for (const laying::GaugeAsLaid& gauge : laid_.gauges) {
      if (gauge.entry != index || gauge.to_course == 0) continue;
      std::vector<std::string> beds;
      for (std::size_t k = 0; gauge.beds && k < gauge.beds->beds.size(); ++k) beds.push_back(tape_text(gauge.beds->beds[k], tape()));
      says = gauge.beds ? fill_in(words_.laid_beds, {gauge.to_what, number_text(gauge.courses.front()) + "-" + number_text(gauge.courses.back()), joined(beds, ", ")})
                        : fill_in(words_.laid_no_beds, {gauge.to_what});
    }
    const Length high = entry.gauge->high;
    row(index, fill_in(words_.laid_gauge, {course(entry.gauge->on, entry.gauge->course)}),
        fill_in(high < Length() ? words_.laid_low : words_.laid_high, {tape_text(magnitude(high), tape())}), says);
  }

  void add_set(std::size_t index, const LaidEntry& entry) {
    const auto set = std::ranges::find(laid_.sets, index, &laying::SetAsLaid::entry);
    std::vector<std::string> says;
    if (set != laid_.sets.end()) {
      if (set->advice.lift) says.emplace_back(words_.laid_lift);
      for (const laying::Tap& tap : set->advice.taps) says.push_back(fill_in(words_.laid_tap, {std::string(words_.laid_corners[static_cast<int>(tap.corner)]), tape_text(tap.down, tape())}));
      if (says.empty()) says.emplace_back(words_.laid_right);
      if (set->from_line && *set->from_line != Length()) says.push_back(fill_in(*set->from_line < Length() ? words_.laid_line_out : words_.laid_line_in, {tape_text(magnitude(*set->from_line), tape())}));
    }
    row(index, fill_in(words_.laid_set, {course(entry.set->on, entry.set->course)}), fill_in(words_.laid_bed, {tape_text(entry.set->bed, tape())}), joined(says, ", then "));
  }

  void add_gap(std::size_t index, const LaidEntry& entry) {
    const auto gap = std::ranges::find(laid_.gaps, index, &laying::GapAsLaid::entry);
    std::string says(words_.laid_no_closure);
    if (gap != laid_.gaps.end() && gap->opening >= 0) says = words_.laid_gap_open;
    if (gap != laid_.gaps.end() && gap->closure) says = laying::closure_text(*gap->closure, tape());
    row(index, fill_in(words_.laid_gap, {course(entry.gap->on, entry.gap->course), both_forms(entry.gap->at, tape())}), both_forms(entry.gap->measured, tape()), says);
  }

  void add_check(std::size_t index, const LaidEntry& entry) {
    const auto check = std::ranges::find(laid_.checks, index, &laying::CheckAsLaid::entry);
    std::string says;
    if (check != laid_.checks.end()) {
      says = fill_in(words_.laid_limits, {verdict(check->verdict), tape_text(check->allowed_least, tape()), tape_text(check->allowed_most, tape()), tape_text(check->doubt, tape())}) + "; " + check->rule;
    }
    row(index, fill_in(words_.laid_checks[static_cast<int>(entry.check->what)], {course(entry.check->on, entry.check->course)}), tape_text(entry.check->off, tape()), says);
  }

  Table& table_;
  const Context& context_;
  const AsLaid& laid_;
  const Words& words_;
  std::vector<bool> standing_;  // struck entries do not
};

}  // namespace

Table marks_table(const Context& context) {
  const Words& words = context.words;
  Table table = new_table(context.page.drawing.width(), words.title_marks, {{"", 5}, {std::string(words.mark), 26}, {std::string(words.mark_is), 29}, {std::string(words.mark_found), 16}, {std::string(words.mark_next), 24}}, kText);
  table.pencil_boxes = table.whole_groups = true;
  if (context.job.laid == nullptr) return table;
  for (const CourseAsLaid& course : context.job.laid->at_hand) add_course(table, context, course);
  return table;
}

Table changes_table(const Context& context) {
  const Words& words = context.words;
  Table table = new_table(context.page.drawing.width(), words.title_changes, {{"", 5}, {std::string(words.change_where), 45}, {std::string(words.change_units), 50}}, kText);
  table.pencil_boxes = true;
  for (const auto& [where, units] : context.job.changes) table.add_row({"", where, units.empty() ? std::string(words.change_none) : joined(units, "; ")});
  return table;
}

Table laid_table(const Context& context) {
  const Words& words = context.words;
  Table table = new_table(context.page.drawing.width(), words.title_laid, {{std::string(words.laid_when), 16}, {std::string(words.laid_what), 26}, {std::string(words.laid_reading), 18}, {std::string(words.laid_says), 40}}, kSmallText);
  if (context.job.laid == nullptr || context.job.log == nullptr || context.job.log->empty()) return table;
  const laying::Progress& progress = context.job.laid->progress;
  const std::string pace = progress.per_day == 0 ? "" : fill_in(words.laid_pace, {number_text(progress.days), number_text(progress.per_day), number_text(progress.days_left)});
  table.add_heading(fill_in(words.laid_progress, {number_text(progress.units_laid), number_text(progress.units_all), pace}));
  Log log(table, context);
  for (std::size_t index = 0; index < context.job.log->size(); ++index) log.add(index);
  return table;
}

}  // namespace stringcourse::sheet
