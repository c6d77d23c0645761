// Drawings without a frame, for pages and pictures: whatever kinds of sheet have one.
#include <algorithm>

#include "sheet/drawing.hpp"
#include "sheet/registry.hpp"

namespace stringcourse::sheet {
namespace {

// One drawing that can be asked for.
struct Asked {
  const DrawingKind& kind;
  int number = 1;
};

SheetName name_of(const Asked& asked, const Building& building, const Words& words) {
  std::string name(asked.kind.name);
  if (name.ends_with('-')) name += number_text(asked.number);
  return {std::move(name), asked.kind.title(building, words, asked.number)};
}

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

// The number behind the kind's name, from 1 on; 1 for a kind that has no numbers; 0 for a name of no such kind.
int number_in(std::string_view name, std::string_view kind) {
  constexpr int kMost = 1'000'000;
  if (!kind.ends_with('-')) return name == kind ? 1 : 0;
  if (!name.starts_with(kind)) return 0;
  name.remove_prefix(kind.size());
  int number = 0;
  for (const char digit : name) {
    if (digit < '0' || digit > '9' || number > kMost) return 0;
    number = number * 10 + (digit - '0');
  }
  return name.starts_with('0') ? 0 : number;
}

std::optional<Drawing> drawing_of(const Context& context, std::string_view name) {
  for (const SheetKind* kind : sheet_kinds()) {
    if (!kind->drawing) continue;
    const Asked asked{*kind->drawing, number_in(name, kind->drawing->name)};
    if (asked.number == 0 || !asked.kind.has(context, asked.number)) continue;
    return asked.kind.draw(context, name_of(asked, context.building, context.words), asked.number);
  }
  return std::nullopt;
}

bool stands_in(const Group& group, const std::string& key) {
  return std::ranges::any_of(group.texts, [&](const Text& text) { return text.text.find(key) != std::string::npos; }) ||
         std::ranges::any_of(group.groups, [&](const Group& inner) { return stands_in(inner, key); });
}

}  // namespace

std::vector<SheetName> drawing_names(const Building& building) {
  std::vector<SheetName> names;
  for (const Asked& asked : in_every_set(building)) names.push_back(name_of(asked, building, words_of(building)));
  return names;
}

Sheet make_drawing(const Answer& answer, std::size_t index) {
  const Context context = context_of(answer, Paper::Letter);
  const Asked asked = in_every_set(answer.building)[index];
  return asked.kind.draw(context, name_of(asked, answer.building, context.words), asked.number).sheet;
}

std::optional<Drawing> make_named_drawing(const Answer& answer, std::string_view name) {
  const Context context = context_of(answer, Paper::Letter);
  std::optional<Drawing> drawing = drawing_of(context, name);
  if (!drawing) return drawing;
  for (const LongName& one : context.names) {
    const auto holds = [&](const Group& group) { return stands_in(group, one.key); };
    if (std::ranges::any_of(drawing->sheet.groups, holds)) drawing->names.push_back(one);
  }
  return drawing;
}

}  // namespace stringcourse::sheet
