// What the programme's works and days are called in words.
#include <algorithm>

#include "answer/programme_parts.hpp"
#include "catalogue/rules.hpp"
#include "measure/digits.hpp"

namespace stringcourse {

FactValue planning::names_of(const Answer& answer, const std::vector<std::int32_t>& walls) {
  std::vector<FactValue> names;
  for (const std::int32_t wall : walls) names.emplace_back(answer.building.walls[static_cast<std::size_t>(wall)].name);
  return {FactValue::Kind::And, std::move(names)};
}

Fact task_said(const Answer& answer, const Task& task) {
  const Building& building = answer.building;
  switch (task.work) {
    case WorkKind::Boards: return fact("work-boards");
    case WorkKind::Footing: return fact("work-footing");
    case WorkKind::FootingCure: return fact("work-footing-cure");
    case WorkKind::Lines: return fact("work-lines");
    case WorkKind::Leads:
      return fact("work-leads", {building.corners[static_cast<std::size_t>(task.corner)].name, task.pieces.size()});
    case WorkKind::Course:
      return fact("work-course",
                  {task.course, building.walls[static_cast<std::size_t>(task.wall)].name, task.pieces.size()});
    case WorkKind::Lintels:
      return fact("work-lintel", {building.openings[static_cast<std::size_t>(task.opening)].name});
    case WorkKind::MasonryCure: return fact("work-masonry-cure", {task.pour + 1});
    case WorkKind::GroutLift: {
      const supply::GroutPour& pour = answer.tallies.grout[static_cast<std::size_t>(task.pour)];
      return fact("work-grout", {task.pour + 1, task.lift, pour.lift_tops[static_cast<std::size_t>(task.lift - 1)]});
    }
    case WorkKind::GroutCure: return fact("work-grout-cure", {task.pour + 1});
    case WorkKind::Bolts: return fact("work-bolts");
  }
  return {};
}

Fact task_said_on(const Answer& answer, const WorkDay& day, std::int32_t index) {
  const Programme& programme = answer.programme;
  const Task& task = programme.tasks[static_cast<std::size_t>(index)];
  std::int64_t laid = 0;
  for (std::size_t k = 0; k < task.pieces.size(); ++k)
    laid += static_cast<std::int64_t>(planning::day_of(programme, planning::laid_by(task, k))) ==
            day.number - first_number(programme);
  const std::size_t all = task.pieces.size();
  if (laid == static_cast<std::int64_t>(all)) return task_said(answer, task);
  const Building& building = answer.building;
  if (task.work == WorkKind::Leads)
    return fact("work-leads-part", {building.corners[static_cast<std::size_t>(task.corner)].name, laid, all});
  return fact("work-course-part", {task.course, building.walls[static_cast<std::size_t>(task.wall)].name, laid, all});
}

Fact own_pace_said(const Programme& programme) {
  if (!programme.own_pace) return {};
  const OwnPace& own = *programme.own_pace;
  const std::int64_t tenths = (600'000 + own.each / 2) / own.each;
  return fact(programme.pace_from == PaceFrom::Log ? "own-pace" : "own-pace-unused",
              {number_text(tenths / 10) + "." + number_text(tenths % 10), own.works, own.spread, own.doubt});
}

Fact batch_said(const MortarBatch& batch) {
  const auto bags = [](std::int64_t tenths) { return number_text(tenths / 10) + "." + number_text(tenths % 10); };
  if (batch.least == batch.most) return fact("day-batch-one", {batch.blocks, bags(batch.most)});
  return fact("day-batch", {batch.blocks, bags(batch.least), bags(batch.most)});
}

Fact brace_said(const Answer& answer, const WorkDay& day) {
  if (day.brace.empty()) return {};
  return fact("day-brace",
              {planning::names_of(answer, day.brace), day.brace.size(), FactValue(day.zone, LengthForm::AtLeast)});
}

Fact tall_said(const Answer& answer, const WorkDay& day) {
  if (day.tall.empty()) return {};
  const Length over = limit_of("brace-over-8-ft", answer.building.tape);
  return fact("day-tall", {planning::names_of(answer, day.tall), day.tall.size(), over});
}

}  // namespace stringcourse
