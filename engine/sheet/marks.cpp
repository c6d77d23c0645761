// Each wall's next course and the one after it: marks, what they mark, what was read, the next joints.
#include <algorithm>

#include "bond/layout_parts.hpp"
#include "measure/digits.hpp"
#include "sheet/hook_words.hpp"
#include "sheet/mark_words.hpp"
#include "sheet/registry.hpp"

namespace stringcourse::sheet {
namespace {

using laying::CourseAsLaid;
using laying::RunAsLaid;
using laying::WallMark;
using setout::MarkKind;

/// What a run of units ends at.
std::string_view end_text(const words::SheetWords& words, RunEnd end) {
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
  const words::SheetWords& words = context.words;
  const auto opening = [&] { return context.building.openings[static_cast<std::size_t>(mark.mark.opening)].name; };
  switch (mark.mark.kind) {
    case MarkKind::NearJamb: return words::fill_in(words.mark_near_jamb, {opening()});
    case MarkKind::FarJamb: return words::fill_in(words.mark_far_jamb, {opening()});
    case MarkKind::JointNearEdge: return std::string(words.mark_near_edge);
    case MarkKind::JointFarEdge: return std::string(words.mark_far_edge);
    case MarkKind::BarCentre: return std::string(words.mark_bar);
    case MarkKind::BlockEnd: break;
  }
  const RunAsLaid& run = course.runs[static_cast<std::size_t>(mark.run)];
  std::string text = words::fill_in(words.mark_unit, {number_text(mark.mark.piece)});
  if (mark.units == run.pieces) {
    const auto runs = bond::runs_in(context.layout, course.wall, course.course);
    const auto index = static_cast<std::size_t>(mark.run);
    const RunEnd end = index < runs.size() ? runs[index].at_end : RunEnd::Jamb;
    text = words::fill_in(words.mark_end_unit, {number_text(mark.mark.piece), std::string(end_text(words, end))});
  }
  return mark.closes ? text + "; " + std::string(words.mark_closes) : text;
}

/// The joints that stand beside this mark: of its run, from here to the next mark.
std::string next_joints(const Context& context, const CourseAsLaid& course, const WallMark& mark, bool first_of_run) {
  if (mark.run < 0) return "";
  const RunAsLaid& run = course.runs[static_cast<std::size_t>(mark.run)];
  if (run.finished) return "";
  const bool here = run.laid == mark.units || (run.laid == 0 && first_of_run);
  if (!here) return "";
  // What was asked before anything was read stands beside the first mark only where it is not as planned.
  const bool as_designed =
      run.next.what == laying::Correction::What::Joints &&
      std::ranges::all_of(run.next.joints, [&](Length joint) { return joint == context.building.joint; });
  if (run.laid == 0 && as_designed && run.lost.empty()) return "";
  std::string text = context.told(laying::next_said(run));
  for (const laying::Lost& lost : run.lost)
    text += words::fill_in(context.words.mark_loses, {context.told(laying::lost_said(lost))});
  return text;
}

/// Bars stand on the strips.
bool is_shown(const WallMark& mark) {
  if (mark.mark.kind == MarkKind::BarCentre || mark.mark.at < Length()) return false;
  return mark.mark.kind != MarkKind::BlockEnd || mark.to_read || mark.closes || mark.past;
}

void add_course(Table& table, const Context& context, const CourseAsLaid& course) {
  const words::SheetWords& words = context.words;
  std::string heading = words::fill_in(words.mark_course, {context.wall(course.wall).name, number_text(course.course),
                                                           hook_text(context.building, course.wall, words),
                                                           face_text(context.building, course.wall, words)});
  if (!course.runs.empty() && course.runs.front().closing)
    heading +=
        "; " + words::fill_in(words.marks_one_joint, {tape_text(course.runs.front().closing->joint, context.tape())});
  table.add_heading(heading);
  int run = -1;
  for (const WallMark& mark : course.marks) {
    if (!is_shown(mark)) continue;
    const bool first = mark.run >= 0 && mark.run != run;
    if (mark.run >= 0) run = mark.run;
    table.add_row({"", both_forms(mark.mark.at, context.tape()), what_text(context, course, mark),
                   found_text(context, mark), next_joints(context, course, mark, first)});
  }
}

Table marks_table(const Context& context) {
  const words::SheetWords& words = context.words;
  Table table =
      new_table(context.page.drawing.width(), words.title_marks,
                {{"", 5}, {words.mark, 26}, {words.mark_is, 29}, {words.mark_found, 16}, {words.mark_next, 24}}, kText);
  table.pencil_boxes = table.whole_groups = true;
  // As long as nothing is laid, the boxes of the strips are what is read into.
  if (!context.answer.laid || context.answer.job.laid.empty()) return table;
  for (const CourseAsLaid& course : context.answer.laid->at_hand) add_course(table, context, course);
  return table;
}

}  // namespace

constinit const SheetKind kMarksSheet{
    .name = "marks",
    .hold_point = HoldPoint::FirstCourse,
    .purpose = &words::SheetWords::purpose_marks,
    .caution = {"wet-cement"},
    .table = marks_table,
    .note = &words::SheetWords::marks_note,
};

}  // namespace stringcourse::sheet
