#include "walls/draft.hpp"

#include "measure/notation.hpp"

namespace stringcourse::walls {

void refuse(Draft& draft, std::string code, std::string place, std::string reason, std::string remedy) {
  draft.refusals.add({std::move(code), std::move(place), std::move(reason), std::move(remedy)});
}

void find(Draft& draft, std::string code, std::string place, std::string text, std::string rule, HoldPoint point) {
  draft.building.findings.push_back({std::move(code), std::move(place), std::move(text), std::move(rule), point});
}

std::string say(const Draft& draft, Length length) {
  const bool rounds_away = length != Length() && rounded_to(length, tape_step(draft.job.tape)) == Length();
  return rounds_away ? exact_text(length, draft.job.tape) : tape_text(length, draft.job.tape);
}

std::string say_asked(const Draft& draft, Length length) {
  const bool on_tape = length.is_multiple_of(tape_step(draft.job.tape));
  return on_tape ? tape_text(length, draft.job.tape) : exact_text(length, draft.job.tape);
}

std::array<std::string, 2> say_apart(const Draft& draft, Length one, Length other) {
  const std::array<std::string, 2> rounded{say(draft, one), say(draft, other)};
  if (one == other || rounded[0] != rounded[1]) return rounded;
  return {exact_text(one, draft.job.tape), exact_text(other, draft.job.tape)};
}

std::string say_at_least(const Draft& draft, Length length) {
  const Length step = tape_step(draft.job.tape);
  return say(draft, step * -((-length).whole_multiples(step)));
}

void refuse_unknown_wall(Draft& draft, std::string_view name, const std::string& place, int besides) {
  std::string known;
  for (std::size_t wall = 0; wall < draft.building.walls.size(); ++wall) {
    if (static_cast<int>(wall) == besides) continue;
    if (known.size() > 60) { known += ", ..."; break; }
    known += (known.empty() ? "" : ", ") + draft.building.walls[wall].name;
  }
  refuse(draft, "unknown-wall", place, joined({"No wall is called ", quoted(name), "."}),
         known.empty() ? "Name a side or an interior wall of this job." : joined({"Name one of ", known, "."}));
}

std::optional<int> named_wall(Draft& draft, std::string_view name, const std::string& place) {
  const auto found = draft.wall_by_name.find(name);
  if (found != draft.wall_by_name.end()) return found->second;
  if (draft.refused_walls.contains(name)) return std::nullopt;
  refuse_unknown_wall(draft, name, place, -1);
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
