#include "laying/closure.hpp"

#include <algorithm>
#include <tuple>

namespace stringcourse::laying {
namespace {

using Kind = ClosurePiece::Kind;

/// Smaller is better.
using Rank = std::tuple<bool, int, bool, std::size_t, Length, Length>;

struct Candidate {
  Closure closure;
  Rank rank;
};

class Choice {
 public:
  explicit Choice(const Gap& gap) : gap_(gap) {}

  void one(Kind kind, Length length) { offer({{kind, length}}); }
  void two(ClosurePiece first, ClosurePiece second) { offer({first, second}); }

  /// Nothing fits yet, or nothing that keeps the lap.
  [[nodiscard]] bool loses() const { return !best_ || best_->closure.lost_over.has_value(); }
  std::optional<Closure> best() const { return best_ ? std::optional(best_->closure) : std::nullopt; }

  /// Joints of so many pieces.
  [[nodiscard]] int joints(std::size_t pieces) const {
    return static_cast<int>(pieces) - 1 + (gap_.joint_at_start ? 1 : 0) + (gap_.joint_at_end ? 1 : 0);
  }

 private:
  void offer(std::vector<ClosurePiece> pieces) {
    Length sum;
    int cuts = 0;
    for (const ClosurePiece& piece : pieces) {
      if (piece.length < gap_.least_piece || piece.length > gap_.unit) return;
      if (piece.kind == Kind::Cut && piece.length == gap_.unit) return;
      sum += piece.length, cuts += piece.kind == Kind::Cut ? 1 : 0;
    }
    const int count = joints(pieces.size());
    const Length left = gap_.measured - sum;
    if (count == 0 ? left != Length() : left < gap_.least_joint * count || left > gap_.most_joint * count) return;
    const Length joint = count == 0 ? Length() : Length::nanometres(left.in_nanometres() / count);
    Closure closure{std::move(pieces), joint, 0, {}, {}};
    const bool cut_behind = closure.pieces.size() == 2 && closure.pieces[1].kind == Kind::Cut;
    closure.last = cut_behind || closure.pieces.size() == 1 ? 0 : 1;
    bool is_short = false;
    if (closure.pieces.size() == 2) is_short = judge_lap(closure, left, count);
    const Length uneven = cuts < 2 ? Length() : magnitude(closure.pieces[0].length - closure.pieces[1].length);
    const Length off = magnitude(closure.joint - gap_.joint);
    const Rank rank{closure.lost_over.has_value(), cuts, is_short, closure.pieces.size(), off, uneven};
    if (!best_ || rank < best_->rank) best_ = Candidate{std::move(closure), rank};
  }

  /// Notes a lap that is lost; whether the joint between the pieces is a short lap. `left` is what `count` joints
  /// share: told in parts of 2 count, the joint's centre is exact.
  bool judge_lap(Closure& closure, Length left, int count) const {
    const int parts = 2 * count;
    const Length centre = (gap_.at + closure.pieces[0].length) * parts + left * (gap_.joint_at_start ? 3 : 1);
    const auto off = [&](Length below) { return magnitude(below * parts - centre); };
    const auto nearest = std::ranges::min_element(gap_.below, {}, off);
    if (nearest == gap_.below.end()) return false;
    const Length lap = off(*nearest);
    if (lap < gap_.least_lap * parts)
      closure.lost_over = *nearest, closure.lost_lap = Length::nanometres(lap.in_nanometres() / parts);
    return lap < gap_.short_lap * parts;
  }

  const Gap& gap_;
  std::optional<Candidate> best_;
};

void offer_cut_beside(Choice& choice, ClosurePiece bought, ClosurePiece cut) {
  choice.two(cut, bought), choice.two(bought, cut);
}

void offer_two_cuts(Choice& choice, const Gap& gap, Length both) {
  for (Length first = gap.least_piece; first < gap.unit && first < both; first += gap.step) {
    choice.two({Kind::Cut, first}, {Kind::Cut, both - first});
  }
}

Fact piece_said(const ClosurePiece& piece) {
  switch (piece.kind) {
    case Kind::Whole: return fact("a-whole-unit");
    case Kind::Half: return fact("a-half-unit");
    case Kind::Cut: return fact("a-cut-of", {piece.length});
  }
  return {};
}

/// How the pieces are laid, behind their names.
Fact pieces_laid(const Closure& closure) {
  const bool cut = std::ranges::contains(closure.pieces, Kind::Cut, &ClosurePiece::kind);
  if (closure.pieces.size() != 2) return cut ? fact("closure-cut-inside") : Fact();
  if (closure.last == 0) return fact(cut ? "closure-cut-inside-first-last" : "closure-first-last");
  return fact(cut ? "closure-cut-inside-second-last" : "closure-second-last");
}

}  // namespace

std::optional<Closure> closure_of(const Gap& gap) {
  Choice choice(gap);
  std::vector<ClosurePiece> bought{{Kind::Whole, gap.unit}};
  if (gap.has_half) bought.push_back({Kind::Half, gap.half});
  // What the joints leave, by the step; joints take what rounding leaves.
  const Length alone = rounded_to(gap.measured - gap.joint * choice.joints(1), gap.step);
  for (const ClosurePiece& piece : bought) choice.one(piece.kind, piece.length);
  choice.one(Kind::Cut, alone);
  if (alone < gap.least_piece) choice.one(Kind::Cut, gap.least_piece);  // with narrower joints
  for (const ClosurePiece& first : bought) {
    for (const ClosurePiece& second : bought) choice.two(first, second);
  }
  const Length planned = rounded_to(gap.measured - gap.joint * choice.joints(2), gap.step);
  const Length narrower = (gap.joint - gap.least_joint) * choice.joints(2),
               wider = (gap.most_joint - gap.joint) * choice.joints(2);
  for (Length both = planned - wider; both <= planned + narrower; both += gap.step) {
    for (const ClosurePiece& piece : bought)
      offer_cut_beside(choice, piece, {Kind::Cut, rounded_to(both - piece.length, gap.step)});
  }
  offer_two_cuts(choice, gap, planned);
  // Other joints than planned shift the joint between two cuts, where it is too near to one below.
  if (!choice.loses()) return choice.best();
  for (Length both = planned - wider; both <= planned + narrower; both += gap.step) offer_two_cuts(choice, gap, both);
  return choice.best();
}

Fact closure_said(const Closure& closure) {
  const Fact first = piece_said(closure.pieces.front());
  const Fact pieces =
      closure.pieces.size() == 2 ? fact("closure-two", {first, piece_said(closure.pieces.back())}) : first;
  const Fact laid = pieces_laid(closure);
  if (!closure.lost_over) return fact("closure", {pieces, laid, closure.joint});
  return fact("closure-losing-lap",
              {pieces, laid, closure.joint, closure.lost_lap, FactValue(*closure.lost_over, LengthForm::Both)});
}

}  // namespace stringcourse::laying
