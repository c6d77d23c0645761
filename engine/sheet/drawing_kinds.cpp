#include "sheet/drawing_kinds.hpp"

#include <algorithm>
#include <array>

#include "measure/digits.hpp"

namespace stringcourse::sheet {
namespace {

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

std::optional<Drawing> drawing_of(const Context& context, std::string_view name,
                                  std::span<const DrawingKind* const> kinds) {
  constexpr std::string_view kInside = "-inside";
  const bool inside = name.ends_with(kInside);
  if (inside) name.remove_suffix(kInside.size());
  for (const DrawingKind* kind : kinds) {
    const Asked asked{*kind, number_in(name, kind->name)};
    if (asked.number == 0 || !asked.kind.has(context, asked.number)) continue;
    SheetName named = drawing_name(asked, context.building, context.words);
    if (!inside) return asked.kind.draw(context, std::move(named), asked.number);
    if (asked.kind.draw_inside == nullptr) return std::nullopt;
    named.name += kInside;
    return asked.kind.draw_inside(context, std::move(named), asked.number);
  }
  return std::nullopt;
}

bool stands_in(const Group& group, const std::string& key) {
  return std::ranges::any_of(group.texts, [&](const Text& text) { return text.text.find(key) != std::string::npos; }) ||
         std::ranges::any_of(group.groups, [&](const Group& inner) { return stands_in(inner, key); });
}

}  // namespace

SheetName drawing_name(const Asked& asked, const Building& building, const words::SheetWords& words) {
  std::string name(asked.kind.name);
  if (name.ends_with('-')) name += number_text(asked.number);
  return {std::move(name), asked.kind.title(building, words, asked.number)};
}

std::optional<Drawing> drawing_of_kinds(const Answer& answer, std::string_view name,
                                        std::span<const DrawingKind* const> kinds) {
  const Context context = context_of(answer, Paper::Letter);
  std::optional<Drawing> drawing = drawing_of(context, name, kinds);
  if (!drawing) return drawing;
  for (const LongName& one : context.names) {
    const auto holds = [&](const Group& group) { return stands_in(group, one.key); };
    if (std::ranges::any_of(drawing->sheet.groups, holds)) drawing->names.push_back(one);
  }
  return drawing;
}

std::optional<Drawing> make_building_drawing(const Answer& answer, std::string_view name) {
  static constexpr std::array<const DrawingKind*, 2> kKinds{&kPlanDrawing, &kElevationDrawing};
  return drawing_of_kinds(answer, name, kKinds);
}

}  // namespace stringcourse::sheet
