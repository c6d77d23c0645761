#include "walls/draft.hpp"

#include "measure/notation.hpp"

namespace stringcourse::walls {

void refuse(Draft& draft, std::string code, std::string place, std::string reason, std::string remedy) {
  draft.refusals.add({std::move(code), std::move(place), std::move(reason), std::move(remedy)});
}

void find(Draft& draft, std::string code, std::string place, std::string text, std::string rule, HoldPoint point) {
  draft.building.findings.push_back({std::move(code), std::move(place), std::move(text), std::move(rule), point});
}

std::string say(const Draft& draft, Length length) { return tape_text(length, draft.job.tape); }

std::string say_at_least(const Draft& draft, Length length) {
  const Length step = tape_step(draft.job.tape);
  return say(draft, step * -((-length).whole_multiples(step)));
}

std::optional<int> named_wall(Draft& draft, std::string_view name, const std::string& place) {
  const auto found = draft.wall_by_name.find(name);
  if (found != draft.wall_by_name.end()) return found->second;
  if (draft.refused_walls.contains(name)) return std::nullopt;
  std::string known;
  for (const Wall& wall : draft.building.walls) {
    if (known.size() > 60) { known += ", ..."; break; }
    known += (known.empty() ? "" : ", ") + wall.name;
  }
  refuse(draft, "unknown-wall", place, joined({"No wall is called \"", name, "\"."}),
         known.empty() ? "Name a side or an interior wall of this job." : joined({"Name one of ", known, "."}));
  return std::nullopt;
}

Length laid_height(const Building& building, int first, int last) {
  Length height;
  for (const Course& course : building.courses) {
    if (course.number >= first && course.number <= last) height += course.unit_height + building.joint;
  }
  return height;
}

}  // namespace stringcourse::walls
