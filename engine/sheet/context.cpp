#include "sheet/context.hpp"

#include <algorithm>

#include "setout/places.hpp"

namespace stringcourse::sheet {
namespace {

Exception exception_of_kind(Kind kind) {
  switch (kind) {
    case Kind::Full:
    case Kind::Corner: return {};
    case Kind::Half: return {"H", Fill::Tint};
    case Kind::CornerSet: return {"A", Fill::None};
    case Kind::OpenEnd:
    case Kind::OpenBoth: return {"O", Fill::None};
    case Kind::BondBeam: return {"B", Fill::None};
    case Kind::BondBeamHalf: return {"B", Fill::Tint};
    case Kind::Lintel:
    case Kind::LintelHalf: return {"L", Fill::Hatch135};
    case Kind::Sash: return {"S", Fill::None};
    case Kind::SashHalf: return {"S", Fill::Tint};
    case Kind::Cleanout: return {"K", Fill::None};
    case Kind::CleanoutHalf: return {"K", Fill::Tint};
    case Kind::HalfHigh: return {"F", Fill::None};
    case Kind::HalfHighHalf: return {"F", Fill::Tint};
    case Kind::Solid: return {"M", Fill::Grey};
  }
  return {};
}

}  // namespace

Exception exception_of(const Piece& piece) {
  if (setout::is_saw_cut(piece)) return {"C", Fill::Hatch45};
  return exception_of_kind(piece.kind);
}

std::vector<std::string> legend_of(const Context& context) {
  const Words& words = context.words;
  const std::string_view entries[] = {words.legend_half,     words.legend_cut,      words.legend_bond_beam,
                                      words.legend_lintel,   words.legend_sash,     words.legend_open_end,
                                      words.legend_cleanout, words.legend_corner_set, words.legend_half_high,
                                      words.legend_solid};
  bool used[128] = {};
  for (const Piece& piece : context.layout.pieces) {
    const std::string letter = exception_of(piece).letter;
    if (!letter.empty()) used[static_cast<unsigned char>(letter[0]) & 127] = true;
  }
  std::vector<std::string> legend;
  for (const std::string_view entry : entries) {
    if (!entry.empty() && used[static_cast<unsigned char>(entry[0]) & 127]) legend.emplace_back(entry);
  }
  return legend;
}

std::vector<Part> parts_of(Length from, Length to, Length room, Length grid) {
  const Length whole = to - from;
  int count = 1;
  while (whole > room * count) ++count;
  if (count > 1 && whole + grid * count > room * count) ++count;  // borders move to the grid by up to half of it
  std::vector<Part> parts;
  Length border = from;
  for (int index = 1; index <= count; ++index) {
    const Length even = from + Length::nanometres(whole.in_nanometres() / count * index);
    const Length next = index == count ? to : rounded_to(even, grid);
    parts.push_back({border, next, index, count});
    border = next;
  }
  return parts;
}

std::string start_corner_name(const Context& context, int wall) { return context.wall(wall).start_name; }

std::string height_text(const Context& context, Length height) { return tape_text(height, context.tape()); }

std::string part_title(const Words& words, const std::string& title, int index, int of) {
  return of == 1 ? title : fill_in(words.part_of, {title, number_text(index), number_text(of)});
}

std::string ranges_text(const std::vector<int>& numbers) {
  std::string text;
  for (std::size_t first = 0; first < numbers.size();) {
    std::size_t last = first;
    while (last + 1 < numbers.size() && numbers[last + 1] == numbers[last] + 1) ++last;
    if (last == first + 1) last = first;  // two in a row read better apart
    if (!text.empty()) text += ", ";
    text += number_text(numbers[first]);
    if (last > first) text += "-" + number_text(numbers[last]);
    first = last + 1;
  }
  return text;
}

}  // namespace stringcourse::sheet
