#include "bond/row_by_row.hpp"

#include <algorithm>

#include "bond/concessions.hpp"

namespace stringcourse::bond {
namespace {

constexpr int kMostRounds = 6;
constexpr std::uint32_t kUnlawful = 1;  // of what is conceded, for a broken rule where none may be: all weigh the same
constexpr std::int64_t kGrowingShare = 4;  // of the room: the rest is for laying the rows
constexpr std::size_t kAllFamilies = ~std::size_t{0};

/// How many ways to lay a row are looked at: each width has fewer than the one before.
struct Width {
  Stage stage;
  std::size_t families;  // of each kind, in each run
};
constexpr Width kWidths[] = {{Stage::Few, kAllFamilies}, {Stage::Few, 8}, {Stage::Few, 2}, {Stage::Fewest, 4}};
constexpr Width kNarrowest{Stage::Fewest, 1};

/// A row that lies: its joints, and the cells that hold bars.
struct Laid {
  std::vector<std::int32_t> nodes;   // along the row
  std::vector<std::int32_t> arcs;    // arcs[i] leads to nodes[i + 1]
  std::vector<const Node*> joints;   // head joints, rising
  std::vector<const Node*> holders;  // nodes that hold bars
};

/// Another row that this one is compared with.
struct Beside {
  std::size_t row;
  std::uint32_t weight;
};

class RowByRow {
 public:
  RowByRow(const Panel& panel, Width width, Room& room) : panel_(&panel), order_(order_of(panel)), room_(&room) {
    const std::size_t count = panel.rows.size();
    menus_.reserve(count);
    graphs_.reserve(count);
    const std::int64_t longest = longest_target(panel);
    for (const Row& row : panel.rows) {
      menus_.push_back(menu_of(row, width.stage));
      menus_.back().most_families = most_families(panel, room);
    }
    reaches_ = reaches_of(menus_, panel.joint, longest);
    for (std::size_t row = 0; row < count; ++row) {
      graphs_.emplace_back(panel, panel.rows[row], menus_[row], *reaches_[row]);
      if (width.families != kAllFamilies) graphs_.back().open_likeliest(width.families);
    }
    orders_.resize(count);
    find_neighbours();
  }

  /// Grows the graphs of all rows, to so many arcs together. False: that is too few for them.
  bool grow_within(std::int64_t most_arcs) {
    for (std::size_t row = 0; row < graphs_.size(); ++row) {
      if (reaches_[row]->too_large() || graphs_[row].is_cut_short()) return false;
      ends_ = ends_ && graphs_[row].run_without_family() < 0 && grow(row, most_arcs);
      most_arcs -= static_cast<std::int64_t>(graphs_[row].arc_count());
      if (most_arcs < 0) return false;
      if (!ends_) return true;
    }
    return true;
  }

  /// Once the graphs are grown.
  std::optional<RoughLayout> run(std::size_t most_starts) {
    if (!ends_) return std::nullopt;
    std::optional<Key> best;
    std::vector<Laid> kept;
    for (const std::size_t first : starts(most_starts)) {
      if (best && room_->is_out()) break;
      const Key cost = lay_from(first);
      if (best && !(cost < *best)) continue;
      best = cost;
      kept = laid_;
    }
    if (!best || (gives_up_rules(*best) && !panel_->concedes)) return std::nullopt;
    laid_ = std::move(kept);
    return RoughLayout{*best, chosen_rows()};
  }

 private:
  [[nodiscard]] static bool gives_up_rules(const Key& cost) { return (cost.words[0] >> 32) != 0; }

  void find_neighbours() {
    beside_.resize(graphs_.size());
    upper_.resize(graphs_.size());
    lower_.resize(graphs_.size());
    const RowPairs pairs = row_pairs(*panel_);
    for (const auto& [first, second, weight] : pairs.lying) {
      beside_[static_cast<std::size_t>(first)].push_back({static_cast<std::size_t>(second), weight});
      beside_[static_cast<std::size_t>(second)].push_back({static_cast<std::size_t>(first), weight});
    }
    for (const auto& [first, second, weight] : pairs.shifting) {
      upper_[static_cast<std::size_t>(first)].push_back({static_cast<std::size_t>(second), weight});
      lower_[static_cast<std::size_t>(second)].push_back({static_cast<std::size_t>(first), weight});
    }
  }

  /// Grows the whole graph of a row, or a little more than so many arcs of it, and puts its nodes in an order in which
  /// arcs only go forward. False: no walk ends.
  bool grow(std::size_t row, std::int64_t most_arcs) {
    RowGraph& graph = graphs_[row];
    std::vector<std::int32_t>& order = orders_[row];
    std::vector<char> seen{1};
    order.push_back(graph.root());
    bool ends = false;
    for (std::size_t i = 0; i < order.size() && static_cast<std::int64_t>(graph.arc_count()) <= most_arcs; ++i) {
      const std::int32_t first = graph.grow_arcs(order[i]);
      ends = ends || graph.node(order[i]).finished;
      for (std::int32_t a = first; a < first + graph.node(order[i]).arc_count; ++a) {
        const auto target = static_cast<std::size_t>(graph.arc(a).target);
        if (!graph.is_open(graph.node(graph.arc(a).target).family)) continue;
        if (seen.size() <= target) seen.resize(target * 2 + 1, 0);
        if (!seen[target]) order.push_back(static_cast<std::int32_t>(target));
        seen[target] = 1;
      }
    }
    std::ranges::sort(order, [&](std::int32_t a, std::int32_t b) {
      const Node& left = graph.node(a);
      const Node& right = graph.node(b);
      if (left.run != right.run) return left.run < right.run;
      return left.sum != right.sum ? left.sum < right.sum : a < b;
    });
    return ends;
  }

  /// Where to begin: the lowest row, the highest, then some between. More of them begin with what fewer begin with.
  [[nodiscard]] std::vector<std::size_t> starts(std::size_t most) const {
    std::vector<std::size_t> rows{0};
    const auto add = [&](std::size_t row) {
      if (rows.size() <= most && std::ranges::find(rows, row) == rows.end()) rows.push_back(row);
    };
    add(graphs_.size() - 1);
    const std::size_t step = (graphs_.size() + most - 1) / most;
    for (std::size_t row = step; row < graphs_.size(); row += step) add(row);
    return rows;
  }

  /// Lays outward from one row, then goes over all rows until none gets better.
  Key lay_from(std::size_t first) {
    laid_.assign(graphs_.size(), {});
    stamps_.assign(graphs_.size(), 0);
    looked_.assign(graphs_.size(), 0);
    now_ = 0;
    std::vector<std::size_t> sequence{first};
    for (std::size_t i = 0; i < sequence.size(); ++i) {
      for (const Beside& beside : beside_[sequence[i]]) {
        if (std::ranges::find(sequence, beside.row) == sequence.end()) sequence.push_back(beside.row);
      }
    }
    for (std::size_t row = 0; row < graphs_.size(); ++row) {
      if (std::ranges::find(sequence, row) == sequence.end()) sequence.push_back(row);
    }
    for (const std::size_t row : sequence) lay(row);
    Key cost = total();
    for (int round = 0; round < kMostRounds; ++round) {
      for (const std::size_t row : sequence) {
        if (has_news(row) && !room_->is_out()) lay(row);
      }
      const Key now = total();
      if (!(now < cost)) break;
      cost = now;
    }
    return cost;
  }

  /// Whether a row that this one is compared with changed since this one was laid.
  [[nodiscard]] bool has_news(std::size_t row) const {
    const auto is_newer = [&](const Beside& other) { return stamps_[other.row] > looked_[row]; };
    return std::ranges::any_of(beside_[row], is_newer) || std::ranges::any_of(upper_[row], is_newer) ||
           std::ranges::any_of(lower_[row], is_newer);
  }

  /// What a node costs beside the rows that lie: laps, cells that do not meet, its joint's shift from the row above.
  [[nodiscard]] Charge charge_at(std::size_t row, const Node& node) const {
    Charge charge;
    if (node.head_joint) {
      for (const Beside& beside : beside_[row]) count_laps(node, laid_[beside.row], beside.weight, charge);
      for (const Beside& above : upper_[row]) {
        if (laid_[above.row].nodes.empty() || !lies_in_masonry(above.row, node.place)) continue;
        if (!has_joint_near(laid_[above.row], node.place)) charge.shifted += above.weight;
      }
    }
    if (node.held_count > 0) {
      for (const Beside& beside : beside_[row]) count_cells(row, node, beside, charge);
    }
    return charge;
  }

  void count_laps(const Node& node, const Laid& other, std::uint32_t times, Charge& charge) const {
    const std::int64_t window = std::max(panel_->least_lap, panel_->short_lap_below);
    auto joint =
        std::ranges::partition_point(other.joints, [&](const Node* each) { return each->high < node.low - window; });
    for (; joint != other.joints.end() && (*joint)->low <= node.high + window; ++joint) {
      if (node.lintel >= 0 && node.lintel == (*joint)->lintel) continue;
      if (closer_than(node.place, (*joint)->place, panel_->least_lap)) {
        const bool stacked = closer_than(node.place, (*joint)->place, panel_->stacked_lap);
        charge.conceded += (panel_->concedes ? weight_of_lap(stacked) : kUnlawful) * times;
        if (!panel_->concedes) continue;
      }
      if (closer_than(node.place, (*joint)->place, panel_->short_lap_below)) charge.short_laps += times;
    }
  }

  void count_cells(std::size_t row, const Node& node, const Beside& beside, Charge& charge) const {
    for (const Node* other : laid_[beside.row].holders) {
      for (std::int32_t i = 0; i < node.held_count; ++i) {
        const HeldCell& cell = graphs_[row].held(node.first_held + i);
        for (std::int32_t k = 0; k < other->held_count; ++k) {
          const HeldCell& met = graphs_[beside.row].held(other->first_held + k);
          if (met.bar != cell.bar) continue;
          const Exact& left = compare(cell.from, met.from) > 0 ? cell.from : met.from;
          const Exact& right = compare(cell.to, met.to) < 0 ? cell.to : met.to;
          const std::int64_t common = panel_->bars[static_cast<std::size_t>(cell.bar)].common_along;
          if (compare(right, left, common) < 0)
            charge.conceded += (panel_->concedes ? weight::kBarUnheld : kUnlawful) * beside.weight;
        }
      }
    }
  }

  [[nodiscard]] bool has_joint_near(const Laid& other, const Exact& place) const {
    const std::int64_t near = panel_->match_within;
    auto joint =
        std::ranges::partition_point(other.joints, [&](const Node* each) { return each->high < place.whole - near; });
    for (; joint != other.joints.end() && (*joint)->low <= place.whole + 1 + near; ++joint) {
      if (within((*joint)->place, place, near)) return true;
    }
    return false;
  }

  [[nodiscard]] bool lies_in_masonry(std::size_t row, const Exact& place) const {
    return std::ranges::any_of(panel_->rows[row].runs, [&](const RowRun& run) {
      return compare(place, Exact::at(run.start)) > 0 && compare(place, Exact::at(run.end)) < 0;
    });
  }

  /// Where a node stands among the joints, in this row's masonry, of a row two courses down; and which of them it
  /// meets.
  struct Rank {
    std::int32_t up_to = 0;  // joints at or before the node
    std::int32_t meets = -1;
  };

  void rank_nodes(std::size_t row, const Beside& below, std::vector<Rank>& ranks) const {
    std::vector<const Node*> joints;
    for (const Node* joint : laid_[below.row].joints) {
      if (lies_in_masonry(row, joint->place)) joints.push_back(joint);
    }
    const std::int64_t near = panel_->match_within;
    for (const std::int32_t index : orders_[row]) {
      const Node& node = graphs_[row].node(index);
      Rank& rank = ranks[static_cast<std::size_t>(index)];
      const auto next =
          std::ranges::partition_point(joints, [&](const Node* each) { return compare(each->place, node.place) <= 0; });
      rank = {static_cast<std::int32_t>(next - joints.begin()), -1};
      if (!node.head_joint) continue;
      if (next != joints.begin() && within((*(next - 1))->place, node.place, near)) rank.meets = rank.up_to - 1;
      else if (next != joints.end() && within((*next)->place, node.place, near)) rank.meets = rank.up_to;
    }
  }

  /// How many joints below this row passes between two of its nodes without one of its own.
  static std::uint32_t passed(const Rank& from, const Rank& to) {
    const auto between = [&](std::int32_t joint) { return joint >= from.up_to && joint < to.up_to; };
    const std::int32_t met = (between(from.meets) ? 1 : 0) + (between(to.meets) && to.meets != from.meets ? 1 : 0);
    return static_cast<std::uint32_t>(to.up_to - from.up_to - met);
  }

  /// The best way through the row beside those that lie. A look for each arc.
  void lay(std::size_t row) {
    RowGraph& graph = graphs_[row];
    const std::vector<std::int32_t>& order = orders_[row];
    static_cast<void>(room_->take(static_cast<std::int64_t>(graph.arc_count())));
    to_go_.assign(graph.node_count(), Key::impossible());
    best_arc_.assign(graph.node_count(), -1);
    at_node_.assign(graph.node_count(), Key{});
    for (const std::int32_t index : order)
      at_node_[static_cast<std::size_t>(index)] = key_of(charge_at(row, graph.node(index)), order_);
    ranks_.resize(lower_[row].size());
    for (std::size_t i = 0; i < ranks_.size(); ++i) {
      ranks_[i].resize(graph.node_count());
      rank_nodes(row, lower_[row][i], ranks_[i]);
    }
    for (std::size_t i = order.size(); i-- > 0;) {
      const Node& node = graph.node(order[i]);
      const auto at = static_cast<std::size_t>(order[i]);
      if (node.finished) {
        to_go_[at] = Key{};
        continue;
      }
      for (std::int32_t a = node.first_arc; a < node.first_arc + node.arc_count; ++a) {
        const Arc& arc = graph.arc(a);
        const auto target = static_cast<std::size_t>(arc.target);
        if (to_go_[target].is_impossible()) continue;
        Key cost = to_go_[target] + arc.cost + at_node_[target];
        for (std::size_t k = 0; k < ranks_.size(); ++k) {
          const std::uint32_t count = passed(ranks_[k][at], ranks_[k][target]);
          if (count > 0) cost = cost + key_of(Charge{.shifted = count * lower_[row][k].weight}, order_);
        }
        if (cost < to_go_[at]) {
          to_go_[at] = cost;
          best_arc_[at] = a;
        }
      }
    }
    keep_walk(row);
  }

  void keep_walk(std::size_t row) {
    const std::vector<std::int32_t> before = std::move(laid_[row].nodes);
    Laid& laid = laid_[row];
    laid = {};
    const RowGraph& graph = graphs_[row];
    looked_[row] = ++now_;
    for (std::int32_t at = graph.root();;) {
      laid.nodes.push_back(at);
      const Node& node = graph.node(at);
      if (node.head_joint) laid.joints.push_back(&node);
      if (node.held_count > 0) laid.holders.push_back(&node);
      const std::int32_t arc = best_arc_[static_cast<std::size_t>(at)];
      if (arc < 0) break;
      laid.arcs.push_back(arc);
      at = graph.arc(arc).target;
    }
    if (laid.nodes != before) stamps_[row] = now_;
  }

  /// The whole panel's cost: what two rows cost each other is counted with one of them.
  [[nodiscard]] Key total() const {
    Key sum;
    for (std::size_t row = 0; row < graphs_.size(); ++row) {
      const Laid& laid = laid_[row];
      for (std::size_t i = 1; i < laid.nodes.size(); ++i) {
        const Node& node = graphs_[row].node(laid.nodes[i]);
        Charge charge;
        for (const Beside& beside : beside_[row]) {
          if (beside.row < row) continue;
          if (node.head_joint) count_laps(node, laid_[beside.row], beside.weight, charge);
          if (node.held_count > 0) count_cells(row, node, beside, charge);
        }
        if (node.head_joint) {
          for (const Beside& above : upper_[row]) {
            if (lies_in_masonry(above.row, node.place) && !has_joint_near(laid_[above.row], node.place))
              charge.shifted += above.weight;
          }
        }
        sum = sum + graphs_[row].arc(laid.arcs[i - 1]).cost + key_of(charge, order_);
      }
    }
    return sum;
  }

  [[nodiscard]] std::vector<std::vector<std::vector<Chosen>>> chosen_rows() const {
    std::vector<std::vector<std::vector<Chosen>>> rows(graphs_.size());
    for (std::size_t row = 0; row < rows.size(); ++row) {
      rows[row].resize(panel_->rows[row].runs.size());
      const std::vector<std::int32_t>& nodes = laid_[row].nodes;
      for (std::size_t i = 1; i < nodes.size(); ++i) {
        const Arc& arc = graphs_[row].arc(laid_[row].arcs[i - 1]);
        if (arc.choice == -2) continue;
        rows[row][static_cast<std::size_t>(graphs_[row].node(nodes[i]).run)].push_back(
            Chosen{arc.length, arc.choice, arc.cut});
      }
    }
    return rows;
  }

  const Panel* panel_;
  Order order_;
  std::vector<Menu> menus_;
  Room* room_;
  bool ends_ = true;  // every row has a walk that ends
  std::vector<std::shared_ptr<const Reach>> reaches_;
  std::vector<RowGraph> graphs_;
  std::vector<std::vector<std::int32_t>> orders_;  // by row: nodes, arcs forward
  std::vector<std::vector<Beside>> beside_, upper_, lower_;
  std::vector<Laid> laid_;
  std::vector<std::vector<Rank>> ranks_;  // by lower neighbour, by node
  std::vector<std::uint32_t> stamps_;     // by row: when it last changed
  std::vector<std::uint32_t> looked_;     // by row: when it was last laid
  std::uint32_t now_ = 0;
  std::vector<Key> to_go_, at_node_;
  std::vector<std::int32_t> best_arc_;
};

}  // namespace

std::optional<RoughLayout> lay_row_by_row(const Panel& panel, std::size_t most_starts, Room& room) {
  if (order_of(panel) == Order::Weighted || panel.course_rows.empty()) return std::nullopt;
  const std::int64_t most_arcs = room.left() / (kGrowingShare * kLooksOfArc);
  for (const Width width : kWidths) {
    RowByRow laying(panel, width, room);
    if (!laying.grow_within(most_arcs)) continue;
    std::optional<RoughLayout> laid = laying.run(most_starts);
    if (laid || width.families == kAllFamilies) return laid;
  }
  RowByRow laying(panel, kNarrowest, room);
  if (!laying.grow_within(std::int64_t{1} << 40)) return std::nullopt;
  return laying.run(1);
}

}  // namespace stringcourse::bond
