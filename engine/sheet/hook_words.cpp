#include "sheet/hook_words.hpp"

namespace stringcourse::sheet {
namespace {

using setout::HookKind;

}  // namespace

std::string hook_text(const Building& building, int wall, const words::SheetWords& words) {
  const setout::Hook hook = setout::hook_of(building, wall);
  switch (hook.kind) {
    case HookKind::OuterCorner: return words::fill_in(words.pour.outer_corner, {hook.name});
    case HookKind::InnerCorner:
      return words::fill_in(words.pour.inside_corner, {hook.name, wall_of(building, hook.other).name});
    case HookKind::MetFace:
      if (hook.other_is_inner) return words::fill_in(words.pour.met_inner, {hook.name, wall_of(building, wall).name});
      return words::fill_in(words.pour.met_face, {hook.name});
    case HookKind::FreeEnd: return words::fill_in(words.pour.free_end, {hook.name});
  }
  return {};
}

std::string face_text(const Building& building, int wall, const words::SheetWords& words) {
  return std::string(wall_of(building, wall).interior ? words.pour.along_either : words.pour.along_outer);
}

std::string marks_from_text(const Building& building, int wall, const words::SheetWords& words) {
  const HookKind kind = setout::hook_of(building, wall).kind;
  const bool hooked = kind == HookKind::OuterCorner || kind == HookKind::FreeEnd;
  return words::fill_in(hooked ? words.pour.marks_hooked : words.pour.marks_held,
                        {hook_text(building, wall, words), face_text(building, wall, words)});
}

}  // namespace stringcourse::sheet
