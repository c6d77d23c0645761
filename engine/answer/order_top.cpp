// What goes into openings and on top of the walls, and the tools that the list does not leave out.
#include <algorithm>

#include "answer/order_parts.hpp"
#include "measure/digits.hpp"

namespace stringcourse::ordering {
namespace {

/// So much lumber, in whole feet or metres.
Article lumber(const Answer& answer, std::string id, Fact name, HoldPoint wanted, Length net, int waste) {
  const bool inches = answer.building.tape == Tape::Inches;
  const Length step = inches ? Length::feet(1) : Length::millimetres(1'000);
  const auto up = [&](std::int64_t nanometres) { return -(-Length::nanometres(nanometres)).whole_multiples(step); };
  Article article{
      .id = std::move(id), .name = std::move(name), .sold = inches ? SoldIn::Feet : SoldIn::Metres, .wanted = wanted};
  article.net = up(net.in_nanometres());
  article.least = article.most = up(with_more(net.in_nanometres(), waste));
  article.spare = article.least - article.net;
  return article;
}

struct Buck {
  Length thick, length, wide;
};

void put_buck(std::vector<Buck>& bucks, Length thick, Length length, Length wide) {
  if (thick <= Length()) return;
  const auto same = [&](const Buck& buck) { return buck.thick == thick && buck.wide == wide; };
  const auto at = std::ranges::find_if(bucks, same);
  if (at != bucks.end()) at->length += length;
  else bucks.push_back({thick, length, wide});
}

/// Two jambs and a head each, as long as the masonry opening.
std::vector<Buck> bucks_of(const Answer& answer) {
  std::vector<Buck> bucks;
  for (std::size_t k = 0; k < answer.building.openings.size() && k < answer.job.openings.size(); ++k) {
    const ResolvedOpening& opening = answer.building.openings[k];
    const Opening& asked = answer.job.openings[k];
    const Wall& wall = answer.building.walls[static_cast<std::size_t>(opening.wall)];
    const Length wide = answer.building.series_of(wall).thickness;
    if (asked.door) put_buck(bucks, asked.door->buck.value_or(Length()), opening.height() * 2 + opening.width(), wide);
    if (!asked.overhead) continue;
    put_buck(bucks, asked.overhead->jamb_buck.value_or(Length()), opening.height() * 2, wide);
    put_buck(bucks, asked.overhead->head_buck.value_or(Length()), opening.width(), wide);
  }
  return bucks;
}

void add_lumber(Order& order, const Answer& answer) {
  const std::vector<Buck> bucks = bucks_of(answer);
  Length plates;
  for (const setout::PlatePiece& piece : answer.plates) plates += piece.to - piece.from;
  if (bucks.empty() && plates == Length()) return;
  const int waste =
      hundredths(order, "/order/lumber_waste", "assumed-lumber-waste", stated_in(answer).lumber_waste, 10);
  for (const Buck& buck : bucks) {
    const std::string id =
        "buck/" + in_id(buck.thick, answer.building.tape) + "x" + in_id(buck.wide, answer.building.tape);
    order.articles.push_back(lumber(
        answer, id,
        fact("article-buck", {FactValue(buck.thick, LengthForm::Spoken), FactValue(buck.wide, LengthForm::Spoken)}),
        HoldPoint::Lintels, buck.length, waste));
  }
  if (plates == Length()) return;
  const std::string plate = answer.building.top ? answer.building.top->plate : "";
  const Fact name = plate.empty() ? fact("article-plate") : fact("article-plate-named", {plate});
  order.articles.push_back(lumber(answer, "plate", name, HoldPoint::Top, plates, waste));
}

void add_bolts(Order& order, const Answer& answer) {
  std::int64_t bolts = 0;
  for (const setout::PlatePiece& piece : answer.plates) bolts += static_cast<std::int64_t>(piece.bolts.size());
  if (bolts == 0) return;
  const int spare = hundredths(order, "/order/bolts_spare", "assumed-bolts-spare", stated_in(answer).bolts_spare, 5);
  const std::int64_t all = with_more(bolts, spare);
  const std::string size = answer.building.top ? answer.building.top->bolts.size : "";
  order.articles.push_back({.id = "bolt",
                            .name = size.empty() ? fact("article-bolt") : fact("article-bolt-named", {size}),
                            .wanted = HoldPoint::Top,
                            .net = bolts,
                            .spare = all - bolts,
                            .least = all,
                            .most = all,
                            .must_not_run_short = true,
                            .note = fact("article-bolt-note")});
}

void add_shores(Order& order, const Answer& answer) {
  std::int64_t shores = 0;
  bool shored = false, told = true;
  for (const supply::Bridged& over : answer.bridged) {
    if (!over.shored) continue;
    shored = true;
    if (over.shores) shores += *over.shores;
    else told = false;
  }
  if (!shored) return;
  order.articles.push_back({.id = "shore",
                            .name = fact("article-shore"),
                            .wanted = HoldPoint::Lintels,
                            .net = told ? shores : 0,
                            .least = told ? shores : 0,
                            .most = told ? shores : 0,
                            .note = told ? Fact() : fact("article-shore-unstated"),
                            .told = told});
}

void add_tool(Order& order, std::string_view id, std::string_view name, std::int64_t count, HoldPoint wanted) {
  if (count == 0) return;
  order.articles.push_back({.id = "tool/" + std::string(id),
                            .name = fact(name),
                            .wanted = wanted,
                            .net = count,
                            .least = count,
                            .most = count,
                            .note = fact("tool-note")});
}

}  // namespace

void add_top_and_openings(Order& order, const Answer& answer) {
  add_shores(order, answer);
  add_lumber(order, answer);
  add_bolts(order, answer);
}

/// Who lays, and who hands: two to a pair.
void add_tools(Order& order, const Answer& answer) {
  const std::int64_t people = 2 * static_cast<std::int64_t>(answer.job.days ? answer.job.days->pairs.value_or(1) : 1);
  const bool sawn = answer.layout.cost.cuts > 0;
  add_tool(order, "line", "tool-line", people / 2, HoldPoint::Pour);
  add_tool(order, "blocks", "tool-blocks", people / 2, HoldPoint::Pour);
  add_tool(order, "bar-cap", "tool-bar-cap", static_cast<std::int64_t>(answer.dowels.size()), HoldPoint::Pour);
  add_tool(order, "gloves", "tool-gloves", people, HoldPoint::Pour);
  add_tool(order, "goggles", "tool-goggles", people, HoldPoint::Pour);
  add_tool(order, "respirator", "tool-respirator", sawn ? people : 0, HoldPoint::FirstCourse);
  add_tool(order, "blade", "tool-blade", sawn ? 1 : 0, HoldPoint::FirstCourse);
}

}  // namespace stringcourse::ordering
