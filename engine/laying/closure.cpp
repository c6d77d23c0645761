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

  /// Notes a lap that is lost; whether the joint between the pieces is a short lap. `left` is what `count` joints share:
  /// told in parts of 2 count, the joint's centre is exact.
  bool judge_lap(Closure& closure, Length left, int count) const {
    const int parts = 2 * count;
    const Length centre = (gap_.at + closure.pieces[0].length) * parts + left * (gap_.joint_at_start ? 3 : 1);
    const auto off = [&](Length below) { return magnitude(below * parts - centre); };
    const auto nearest = std::ranges::min_element(gap_.below, {}, off);
    if (nearest == gap_.below.end()) return false;
    const Length lap = off(*nearest);
    if (lap < gap_.least_lap * parts) closure.lost_over = *nearest, closure.lost_lap = Length::nanometres(lap.in_nanometres() / parts);
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

std::string piece_text(const ClosurePiece& piece, Tape tape) {
  switch (piece.kind) {
    case Kind::Whole: return "a whole unit";
    case Kind::Half: return "a half unit";
    case Kind::Cut: return "a cut of " + tape_text(piece.length, tape);
  }
  return {};
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
  const Length narrower = (gap.joint - gap.least_joint) * choice.joints(2), wider = (gap.most_joint - gap.joint) * choice.joints(2);
  for (Length both = planned - wider; both <= planned + narrower; both += gap.step) {
    for (const ClosurePiece& piece : bought) offer_cut_beside(choice, piece, {Kind::Cut, rounded_to(both - piece.length, gap.step)});
  }
  offer_two_cuts(choice, gap, planned);
  // Other joints than planned shift the joint between two cuts, where it is too near to one below.
  if (!choice.loses()) return choice.best();
  for (Length both = planned - wider; both <= planned + narrower; both += gap.step) offer_two_cuts(choice, gap, both);
  return choice.best();
}

std::string closure_text(const Closure& closure, Tape tape) {
  std::string text;
  bool cut = false;
  for (const ClosurePiece& piece : closure.pieces) {
    text += (text.empty() ? "" : ", then ") + piece_text(piece, tape);
    cut = cut || piece.kind == Kind::Cut;
  }
  if (cut) text += ", cut face inside";
  if (closure.pieces.size() == 2) text += closure.last == 0 ? "; the first is laid last" : "; the second is laid last";
  text += "; joints of " + tape_text(closure.joint, tape);
  if (!closure.lost_over) return text;
  return text + ". Its middle joint would lie only " + tape_text(closure.lost_lap, tape) + " from the joint below at " +
         both_forms(*closure.lost_over, tape) + ": better lift the units beside it and lay them again";
}

}  // namespace stringcourse::laying
