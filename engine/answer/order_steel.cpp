// Bars, dowels and joint reinforcement on the order list.
#include <algorithm>

#include "answer/order_parts.hpp"
#include "bond/layout_parts.hpp"
#include "measure/digits.hpp"

namespace stringcourse::ordering {
namespace {

void add_bars(Order& order, const Answer& answer) {
  const Length stock = answer.bar_pieces.stock.length;
  order.assumed.push_back({"/steel/bar_stock", fact("assumed-bar-stock", {FactValue(stock, LengthForm::Both)}),
                           answer.bar_pieces.stock.stated});
  for (const BarsFromStock& size : answer.bars_from_stock) {
    order.articles.push_back({.id = "bar/" + size.size,
                              .name = fact("article-bar", {size.size, FactValue(stock, LengthForm::Both)}),
                              .sold = SoldIn::Lengths,
                              .wanted = HoldPoint::Grout,
                              .net = size.plan.bars,
                              .least = size.plan.bars,
                              .most = size.plan.bars,
                              .note = fact("article-bar-note")});
  }
  if (!answer.bars_from_stock.empty() || answer.layout.bars.empty()) return;
  const std::string size = answer.building.bars ? answer.building.bars->size : "";
  order.articles.push_back({.id = "bar/" + size,
                            .name = fact("article-bar", {size, FactValue(stock, LengthForm::Both)}),
                            .sold = SoldIn::Lengths,
                            .wanted = HoldPoint::Grout,
                            .note = fact("article-bar-not-cut"),
                            .told = false});
}

void add_dowels(Order& order, const Answer& answer) {
  if (answer.dowels.empty() || !answer.building.bars) return;
  const auto count = static_cast<std::int64_t>(answer.dowels.size());
  order.articles.push_back({.id = "dowel/" + answer.building.bars->size,
                            .name = fact("article-dowel", {answer.building.bars->size}),
                            .wanted = HoldPoint::Pour,
                            .net = count,
                            .least = count,
                            .most = count,
                            .must_not_run_short = true,
                            .note = fact("article-dowel-note")});
}

/// As its pieces are cut from stock lengths, and what goes round corners.
void add_wire(Order& order, const Answer& answer) {
  const steel::Wires& wires = answer.wires;
  if (wires.stretches.empty() && wires.unsaid.empty()) return;
  const bool told = wires.unsaid.empty();
  order.assumed.push_back({"/steel/wire_stock",
                           fact("assumed-wire-piece", {FactValue(wires.stock.length, LengthForm::Both)}),
                           wires.stock.stated});
  order.assumed.push_back(
      {"/steel/wire_lap", fact("assumed-wire-lap", {FactValue(wires.lap.length, LengthForm::Both)}), wires.lap.stated});
  if (wires.corners_are == WireCorners::Pieces && wires.corner_count > 0)
    order.assumed.push_back({"/steel/wire_corners", fact("assumed-wire-corners"), wires.corners_stated});
  if (wires.tee_count > 0) order.assumed.push_back({"/steel/wire_tees", fact("assumed-wire-tees"), wires.tees_stated});
  const int waste = hundredths(order, "/order/wire_waste", "assumed-wire-waste", stated_in(answer).wire_waste, 5);
  const std::int64_t net = told ? wires.to_buy : 0;
  const std::int64_t to_order = with_more(net, waste);
  order.articles.push_back({.id = "wire",
                            .name = fact("article-wire", {FactValue(wires.stock.length, LengthForm::Both)}),
                            .sold = SoldIn::Lengths,
                            .wanted = HoldPoint::FirstCourse,
                            .net = net,
                            .spare = to_order - net,
                            .least = to_order,
                            .most = to_order,
                            .note = told ? Fact() : fact("article-wire-laps"),
                            .told = told});
  const auto each = [&](const char* id, std::string_view name, std::int64_t count) {
    if (told && count > 0)
      order.articles.push_back({.id = id,
                                .name = fact(name),
                                .sold = SoldIn::Each,
                                .wanted = HoldPoint::FirstCourse,
                                .net = count,
                                .least = count,
                                .most = count});
  };
  each("wire-corners", "article-wire-corners", wires.corners_are == WireCorners::Pieces ? wires.corner_count : 0);
  each("wire-tees", "article-wire-tees", wires.tee_count);
}

/// Where a job asks for tied junctions but says nothing of how they are, the line says so.
void add_ties(Order& order, const Answer& answer) {
  const steel::Ties& ties = answer.ties;
  if (ties.ties.empty() && ties.unsaid.empty()) return;
  const auto count = static_cast<std::int64_t>(ties.ties.size());
  order.articles.push_back({.id = "tie",
                            .name = fact("article-tie"),
                            .wanted = HoldPoint::FirstCourse,
                            .net = count,
                            .least = count,
                            .most = count,
                            .note = ties.every ? fact("article-tie-every", {*ties.every}) : fact("article-tie-unsaid"),
                            .told = ties.every.has_value()});
}

}  // namespace

void add_steel(Order& order, const Answer& answer) {
  add_dowels(order, answer);
  if (!answer.layout.bars.empty() || !answer.bars_from_stock.empty()) add_bars(order, answer);
  add_wire(order, answer);
  add_ties(order, answer);
}

}  // namespace stringcourse::ordering
