// Drawings without a frame, for pages and pictures: whatever kinds of sheet have one.
#include "sheet/drawing_kinds.hpp"
#include "sheet/registry.hpp"

namespace stringcourse::sheet {
namespace {

std::vector<Asked> in_every_set(const Building& building) {
  std::vector<Asked> all;
  for (const SheetKind* kind : sheet_kinds()) {
    if (!kind->drawing || kind->drawing->in_every_set == nullptr) continue;
    for (int number = 1; number <= kind->drawing->in_every_set(building); ++number) {
      all.push_back({*kind->drawing, number});
    }
  }
  return all;
}

}  // namespace

std::vector<SheetName> drawing_names(const Building& building) {
  std::vector<SheetName> names;
  for (const Asked& asked : in_every_set(building))
    names.push_back(drawing_name(asked, building, words::words_of(building)));
  return names;
}

Sheet make_drawing(const Answer& answer, std::size_t index) {
  const Context context = context_of(answer, Paper::Letter);
  const Asked asked = in_every_set(answer.building)[index];
  return asked.kind.draw(context, drawing_name(asked, answer.building, context.words), asked.number).sheet;
}

std::optional<Drawing> make_named_drawing(const Answer& answer, std::string_view name) {
  std::vector<const DrawingKind*> kinds;
  for (const SheetKind* kind : sheet_kinds()) {
    if (kind->drawing != nullptr) kinds.push_back(kind->drawing);
  }
  return drawing_of_kinds(answer, name, kinds);
}

}  // namespace stringcourse::sheet
