#include "sheet/lintel_words.hpp"

#include "measure/digits.hpp"

#include <algorithm>

namespace stringcourse::sheet {
namespace {

using supply::LintelAsLaid;
using supply::Soffit;

const ResolvedOpening& opening_of(const Context& context, const LintelAsLaid& lintel) {
  return context.building.openings[static_cast<std::size_t>(lintel.opening)];
}

std::string units_text(const Context& context, const LintelAsLaid& lintel) {
  std::vector<std::string> kinds;
  for (const supply::UnitCount& unit : lintel.units) {
    const std::string name(context.words.kinds[static_cast<std::size_t>(unit.kind)]);
    kinds.push_back(number_text(unit.whole + unit.pieces) + " " + name);
  }
  return joined(kinds, ", ");
}

}  // namespace

std::string drawn_text(const Context& context, const ResolvedLintel& lintel) {
  const words::SheetWords& words = context.words;
  std::vector<std::string> parts;
  if (!lintel.mark.empty()) parts.push_back(words::fill_in(words.top.lintel_called, {lintel.mark}));
  if (lintel.make == LintelMake::OnePiece) {
    if (lintel.piece) parts.emplace_back(words.top.lintel_pieces[static_cast<std::size_t>(*lintel.piece)]);
    if (!lintel.weight.empty()) parts.push_back(words::fill_in(words.top.lintel_weighs, {lintel.weight}));
  }
  return joined(parts, ", ");
}

const LintelAsLaid* lintel_over(const std::vector<LintelAsLaid>& lintels, std::size_t opening) {
  const auto found = std::ranges::find(lintels, static_cast<std::int32_t>(opening), &LintelAsLaid::opening);
  return found == lintels.end() ? nullptr : &*found;
}

std::string span_text(const Context& context, const LintelAsLaid& lintel) {
  switch (lintel.soffit) {
    case Soffit::Floor: return std::string(context.words.lintel_floor);
    case Soffit::Form: return std::string(context.words.lintel_form);
    case Soffit::Nothing: return std::string(context.words.lintel_nothing);
    case Soffit::OnePiece: break;
  }
  const Length whole = opening_of(context, lintel).width() + lintel.start.bearing + lintel.end.bearing;
  return words::fill_in(context.words.lintel_one_piece, {height_text(context, whole)});
}

std::string bearing_text(const Context& context, const LintelAsLaid& lintel) {
  const ResolvedOpening& opening = opening_of(context, lintel);
  const Wall& wall = context.wall(opening.wall);
  const auto name = [&](const std::string& end) { return short_name(context.names, end); };
  return words::fill_in(
      context.words.lintel_bearing,
      {height_text(context, lintel.start.bearing), name(wall.start_name), height_text(context, lintel.end.bearing),
       name(wall.end_name), height_text(context, opening.lintel->least_bearing)});
}

std::string lintel_text(const Context& context, const LintelAsLaid& lintel) {
  const ResolvedOpening& opening = opening_of(context, lintel);
  const Wall& wall = context.wall(opening.wall);
  std::string text = span_text(context, lintel);
  if (lintel.soffit == Soffit::Floor) text = words::fill_in(context.words.lintel_units, {units_text(context, lintel)});
  if (lintel.soffit == Soffit::Form)
    text = words::fill_in(context.words.lintel_units_form, {units_text(context, lintel)});
  const std::string drawn = drawn_text(context, *opening.lintel);
  if (!drawn.empty()) text += "\n" + drawn;
  const auto bears = [&](Length bearing, const std::string& toward) {
    text += "\n" + words::fill_in(context.words.lintel_bears, {height_text(context, bearing), toward});
  };
  bears(lintel.start.bearing, wall.start_name);
  bears(lintel.end.bearing, wall.end_name);
  return text + "\n" +
         words::fill_in(context.words.lintel_bearing_asked, {height_text(context, opening.lintel->least_bearing)});
}

}  // namespace stringcourse::sheet
