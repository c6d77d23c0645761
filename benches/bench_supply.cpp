// Bars from stock lengths: 500 bars of 40 lengths, beside a general-purpose solver (CBC) on the same job, written as
// flow along one bar of 240 in. Both must find the same number of bars. And the order list and programme of the kiln
// house.
#include <algorithm>
#include <fstream>
#include <random>
#include <sstream>
#include <vector>

#include "benches/figure.hpp"
#include "job/read.hpp"
#include "oracle/linear.hpp"
#include "solve/solve.hpp"
#include "supply/cutting_stock.hpp"

namespace stringcourse {
namespace {

constexpr int kStock = 240, kBars = 500, kLengths = 40;
constexpr double kMostSeconds = 120;

struct Cut {
  int length;
  int count;
};

std::vector<Cut> job() {
  std::mt19937 random(1);
  std::vector<Cut> cuts;
  while (cuts.size() < kLengths) {
    const int length = 18 + static_cast<int>(random() % 160);
    if (std::ranges::none_of(cuts, [&](const Cut& cut) { return cut.length == length; })) cuts.push_back({length, 1});
  }
  for (int left = kBars - kLengths; left > 0; --left) ++cuts[random() % kLengths].count;
  return cuts;
}

// A bar is a way from 0 to 240: along each piece, or along an inch that is left over.
oracle::LinearModel flow_model(const std::vector<Cut>& cuts) {
  oracle::LinearModel model;
  std::vector<oracle::Constraint> places(kStock + 1), wanted(cuts.size());
  const auto arc = [&](int from, int to, oracle::Constraint* piece) {
    const int column = model.add_binary();
    model.upper.back() = kBars;
    places[static_cast<std::size_t>(from)].terms.push_back({column, -1});
    places[static_cast<std::size_t>(to)].terms.push_back({column, 1});
    if (piece != nullptr) piece->terms.push_back({column, 1});
    if (from == 0) model.objective[static_cast<std::size_t>(column)] = 1;
  };
  for (int from = 0; from < kStock; ++from) {
    for (std::size_t at = 0; at < cuts.size(); ++at) {
      if (from + cuts[at].length <= kStock) arc(from, from + cuts[at].length, &wanted[at]);
    }
    arc(from, from + 1, nullptr);
  }
  for (std::size_t at = 0; at < cuts.size(); ++at) {
    wanted[at].lower = cuts[at].count, wanted[at].upper = oracle::kNoLimit;
    model.constraints.push_back(wanted[at]);
  }
  for (int place = 1; place < kStock; ++place) model.constraints.push_back(places[static_cast<std::size_t>(place)]);
  return model;
}

/// What the kiln house takes, and when; its layout, lists and bars are there already.
void measure_order() {
  std::stringstream text;
  text << std::ifstream(std::string(STRINGCOURSE_ROOT) + "/examples/kiln-house.json").rdbuf();
  const auto job = read_job(text.str());
  if (!job) benches::give_up("the kiln house is refused");
  Wishes wishes;
  wishes.offers = false;
  auto answer = solve(*job, wishes);
  if (!answer) benches::give_up("the kiln house is refused");
  const double seconds = benches::median_seconds(21, [&] {
    answer->order = order_of(*answer);
    answer->programme = programme_of(*answer);
    if (answer->programme.days.empty()) benches::give_up("the kiln house takes no days");
  });
  benches::print_at_most("order_and_days_kiln_house", seconds * 1e3, "ms", 5);
}

}  // namespace
}  // namespace stringcourse

int main() {
  using namespace stringcourse;
  measure_order();
  const std::vector<Cut> cuts = job();
  std::vector<supply::PieceWanted> pieces;
  for (const Cut& cut : cuts) pieces.push_back({Length::inches(cut.length), cut.count});
  std::int64_t bars = 0;
  const double ours = benches::median_seconds(5, [&] {
    const auto plan = supply::cut_from_stock(pieces, Length::inches(kStock), Length());
    if (!plan || !plan->proven()) benches::give_up("500 bars are not cut with a proof");
    bars = plan->bars;
  });
  benches::print_at_most("bars_500_of_40_lengths", ours * 1e3, "ms", 1000);
  const oracle::LinearModel model = flow_model(cuts);
  const double theirs = benches::median_seconds(1, [&] {
    const oracle::LinearAnswer answer = oracle::solve_linear(model, oracle::Program::Cbc, kMostSeconds);
    if (answer.outcome != oracle::Outcome::Optimal) return;  // out of time: it takes longer than it was given
    double found = 0;
    for (std::size_t at = 0; at < answer.values.size(); ++at) found += answer.values[at] * model.objective[at];
    if (static_cast<std::int64_t>(found + 0.5) != bars) benches::give_up("CBC finds another number of bars");
  });
  benches::print_at_least("bars_against_cbc", theirs / ours, "times", 20);
}
