#include "sheet/names.hpp"

#include <algorithm>

#include "measure/digits.hpp"
#include "paper/scale.hpp"

namespace stringcourse::sheet {
namespace {

constexpr Micrometres kShortName = 7'500;       // so narrow a name has room everywhere
constexpr Micrometres kOpeningName = 14'000;    // and this in a wide opening
constexpr Micrometres kSentenceName = 45'000;   // so wide a one stands in sentences
constexpr TextRoom kTitleField{32'500, 7'000};  // the narrowest of the title block that holds a text of the job's
constexpr TextRoom kBlockField{15'000, 7'000};  // and of a series, with how many more there are

Micrometres width_of(const std::string& name) { return text_width(name, kSmallText, Weight::Bold); }

const std::string* key_of(const std::vector<LongName>& names, const std::string& name) {
  const auto found = std::ranges::find(names, name, &LongName::name);
  return found == names.end() ? nullptr : &found->key;
}

}  // namespace

std::vector<LongName> long_names(const Building& building, const TitleNames& title) {
  std::vector<LongName> names;
  const auto add = [&](const std::string& name, bool is_long) {
    if (!is_long || key_of(names, name) != nullptr) return;
    names.push_back({"(" + number_text(static_cast<long long>(names.size()) + 1) + ")", name});
  };
  for (const std::string* name : {&title.job, &title.issued, &title.drawn_by}) {
    add(*name, !name->empty() && !set_in(*name, kTitleField, {}, kDrawingHeights));
  }
  for (const Series& series : building.series) add(series.id, !set_in(series.id, kBlockField, {}, kDrawingHeights));
  const auto add_wall = [&](const std::string& name) { add(name, width_of(name) > kShortName); };
  for (const Corner& corner : building.corners) add_wall(corner.name);
  for (const Wall& wall : building.walls) {
    add(wall.name, width_of(wall.name) > kOpeningName);
    add_wall(wall.start_name);
    if (!wall.interior || wall.end.kind != EndKind::Free) add_wall(wall.end_name);  // there it is no name
  }
  for (const ResolvedOpening& opening : building.openings) {
    const Micrometres room = Scale{50}.paper(opening.width()) - 3'500;
    add(opening.name, width_of(opening.name) > std::max(kShortName, std::min(kOpeningName, room)));
  }
  return names;
}

std::shared_ptr<const Building> with_short_names(const Building& building, const std::vector<LongName>& names) {
  if (std::ranges::none_of(names, [](const LongName& name) { return width_of(name.name) > kSentenceName; }))
    return nullptr;
  auto renamed = std::make_shared<Building>(building);
  const auto shorten = [&](std::string& name) {
    const std::string* key = width_of(name) > kSentenceName ? key_of(names, name) : nullptr;
    if (key != nullptr) name = *key;
  };
  for (Corner& corner : renamed->corners) shorten(corner.name);
  for (Wall& wall : renamed->walls) shorten(wall.name), shorten(wall.start_name), shorten(wall.end_name);
  for (ResolvedOpening& opening : renamed->openings) shorten(opening.name);
  return renamed;
}

std::string short_name(const std::vector<LongName>& names, const std::string& name) {
  const std::string* key = key_of(names, name);
  return key == nullptr ? name : *key;
}

Setting fitting_name(const std::vector<LongName>& names, const std::string& name, TextRoom room, Lettering lettering,
                     std::span<const Micrometres> heights) {
  if (const auto whole = set_in(name, room, lettering, heights)) return *whole;
  const std::string text = short_name(names, name);
  if (const auto fits_so = set_in(text, room, lettering, heights)) return *fits_so;
  lettering.height = heights.back();
  return {{text}, lettering, text_width(text, lettering.height, lettering.weight), lettering.height};
}

}  // namespace stringcourse::sheet
