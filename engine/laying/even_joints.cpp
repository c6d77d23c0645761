#include "laying/even_joints.hpp"

#include <algorithm>
#include <limits>

namespace stringcourse::laying {
namespace {

/// What it costs from here to the end: squares, then squared places on the way.
struct Price {
  std::int64_t squares = std::numeric_limits<std::int64_t>::max();
  std::int64_t way = 0;
  bool possible() const { return squares != std::numeric_limits<std::int64_t>::max(); }
  friend bool operator<(const Price& a, const Price& b) {
    return a.squares != b.squares ? a.squares < b.squares : a.way < b.way;
  }
};

struct Table {
  int count;
  std::int64_t past;
  const Steps& steps;
  std::vector<Window> allowed;             // by joints laid
  std::vector<std::vector<Price>> prices;  // [joints laid][sum of (width - joint), from the least]

  std::int64_t least(int laid) const { return (steps.least - steps.joint) * laid; }
  std::size_t size(int laid) const { return static_cast<std::size_t>((steps.most - steps.least) * laid + 1); }
  Price& at(int laid, std::int64_t made) {
    return prices[static_cast<std::size_t>(laid)][static_cast<std::size_t>(made - least(laid))];
  }
  bool lawful(int laid, std::int64_t made) const {
    const Window& window = allowed[static_cast<std::size_t>(laid)];
    return past + made >= window.least && past + made <= window.most;
  }
};

Table table_of(int count, std::int64_t past, const Steps& steps, const std::vector<Window>& windows) {
  constexpr std::int64_t kFar = std::numeric_limits<std::int64_t>::max() / 4;
  Table table{count, past, steps, std::vector<Window>(static_cast<std::size_t>(count) + 1, Window{0, -kFar, kFar}), {}};
  for (const Window& window : windows) {
    if (window.joints < 0 || window.joints > count) continue;
    Window& one = table.allowed[static_cast<std::size_t>(window.joints)];
    one.least = std::max(one.least, window.least), one.most = std::min(one.most, window.most);
  }
  Window& last = table.allowed.back();
  last.least = std::max<std::int64_t>(last.least, 0), last.most = std::min<std::int64_t>(last.most, 0);
  for (int laid = 0; laid <= count; ++laid) table.prices.emplace_back(table.size(laid));
  return table;
}

/// From `made` after `laid` joints, with this width next.
Price with_next(Table& table, int laid, std::int64_t made, std::int64_t width) {
  const std::int64_t off = width - table.steps.joint, there = made + off;
  const Price rest = table.at(laid + 1, there);
  if (!rest.possible()) return rest;
  const std::int64_t place = table.past + there;
  return {rest.squares + off * off, rest.way + place * place};
}

void price_all(Table& table) {
  for (std::int64_t made = table.least(table.count);
       made < table.least(table.count) + static_cast<std::int64_t>(table.size(table.count)); ++made) {
    if (table.lawful(table.count, made)) table.at(table.count, made) = {0, 0};
  }
  for (int laid = table.count - 1; laid >= 0; --laid) {
    for (std::int64_t made = table.least(laid); made < table.least(laid) + static_cast<std::int64_t>(table.size(laid));
         ++made) {
      if (!table.lawful(laid, made)) continue;
      Price& here = table.at(laid, made);
      for (std::int64_t width = table.steps.least; width <= table.steps.most; ++width)
        here = std::min(here, with_next(table, laid, made, width));
    }
  }
}

}  // namespace

std::optional<std::vector<std::int64_t>> even_joints(int count, std::int64_t past, const Steps& steps,
                                                     const std::vector<Window>& windows) {
  if (count < 0 || steps.most < steps.least) return std::nullopt;
  Table table = table_of(count, past, steps, windows);
  price_all(table);
  if (!table.at(0, 0).possible()) return std::nullopt;
  std::vector<std::int64_t> widths;
  std::int64_t made = 0;
  for (int laid = 0; laid < count; ++laid) {
    std::int64_t best = steps.least;
    for (std::int64_t width = steps.least; width <= steps.most; ++width) {
      if (with_next(table, laid, made, width) < with_next(table, laid, made, best)) best = width;
    }
    widths.push_back(best), made += best - steps.joint;
  }
  return widths;
}

}  // namespace stringcourse::laying
