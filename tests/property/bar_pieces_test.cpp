// Bars as cut, of the examples and of random jobs: no false piece passes the certificate; no cutting of a bar into
// pieces has fewer.
#include "proof/bar_pieces.hpp"

#include <gtest/gtest.h>

#include <algorithm>
#include <fstream>
#include <functional>
#include <sstream>

#include "dice.hpp"
#include "job/read.hpp"
#include "property/certify.hpp"
#include "random_jobs.hpp"

namespace stringcourse::property {
namespace {

using steel::BarMark;
using steel::BarPiece;
using steel::BarPieces;
using steel::BarTotal;
using steel::BarUse;

Job example_job(const std::string& name) {
  std::stringstream text;
  text << std::ifstream(std::string(STRINGCOURSE_ROOT) + "/examples/" + name + ".json").rdbuf();
  return *read_job(text.str());
}

/// The kiln house with two bars in its beam and its lintels, short bars and a rule.
Job lapped_job(const std::string& name) {
  Job job = example_job(name);
  const bool inches = job.tape == Tape::Inches;
  if (!job.steel.lap) job.steel.lap = Lap{LapRule::FortyEightBars, std::nullopt, std::nullopt, std::nullopt};
  job.steel.beam_bars = BeamBars{inches ? "#4" : "N12", 2, AtControlJoint::Pass};
  job.steel.lintel_bars = LintelBars{inches ? "#4" : "N12", 2};
  job.steel.bar_stock = inches ? Length::feet(10) : Length::millimetres(3'000);
  const auto& beams = job.steel.bond_beams;
  if (beams.empty() && job.heights.courses) job.steel.bond_beams = {*job.heights.courses};
  return job;
}

constexpr const char* kExamples[] = {"kiln-house", "clay-store", "glaze-store", "drying-shed", "hillside-shed"};

/// Marks and totals made again, so that a changed piece is not betrayed by its sums.
void sum_again(BarPieces& bars) {
  std::vector<std::string> size_of_use(5);
  for (const BarMark& mark : bars.marks) size_of_use[static_cast<std::size_t>(mark.use)] = mark.size;
  bars.marks.clear();
  for (BarTotal& total : bars.totals) total.count = 0, total.length = Length();
  for (BarPiece& piece : bars.pieces) {
    const std::string& size = size_of_use[static_cast<std::size_t>(piece.use)];
    auto mark = std::ranges::find_if(
        bars.marks, [&](const BarMark& one) { return one.use == piece.use && one.length == piece.length(); });
    if (mark == bars.marks.end()) mark = bars.marks.insert(mark, {piece.use, size, piece.length(), 0});
    ++mark->count;
    piece.mark = static_cast<std::int32_t>(mark - bars.marks.begin());
    for (BarTotal& total : bars.totals) {
      if (total.size == size && piece.use != BarUse::Dowel) ++total.count, total.length += piece.length();
    }
  }
}

struct Solved {
  Job job;
  Answer answer;
  [[nodiscard]] proof::Violations check(const BarPieces& bars) const {
    return proof::check_bar_pieces(job, answer.building, answer.layout, bars);
  }
};

Solved solved(const Job& job) {
  Answer answer = *solve(job, {});
  Job stands = answer.as_built ? answer.as_built->job : answer.job;
  return {std::move(stands), std::move(answer)};
}

TEST(BarPiecesOfExamples, AreCertifiedWithAndWithoutARule) {
  for (const char* name : kExamples) {
    SCOPED_TRACE(name);
    for (const Job& job : {example_job(name), lapped_job(name)}) {
      const Solved one = solved(job);
      EXPECT_EQ(one.check(one.answer.bar_pieces), proof::Violations{});
    }
    EXPECT_FALSE(solved(lapped_job(name)).answer.bar_pieces.pieces.empty());
  }
}

/// A change of one piece; false: it has nothing that could be changed so.
using Change = std::function<bool(const Solved&, BarPiece&)>;

/// A hundred changed pieces of the examples, each caught.
void expect_all_caught(const Change& change) {
  Dice dice(7);
  std::vector<Solved> jobs;
  for (const char* name : kExamples) jobs.push_back(solved(lapped_job(name)));
  int caught = 0, tries = 0;
  for (int made = 0; made < 100 && tries < 10'000; ++tries) {
    const Solved& one = jobs[static_cast<std::size_t>(dice.below(static_cast<std::int64_t>(jobs.size())))];
    BarPieces changed = one.answer.bar_pieces;
    BarPiece& piece =
        changed.pieces[static_cast<std::size_t>(dice.below(static_cast<std::int64_t>(changed.pieces.size())))];
    if (!change(one, piece)) continue;
    ++made;
    sum_again(changed);
    if (!one.check(changed).empty()) ++caught;
  }
  EXPECT_EQ(caught, 100);
}

TEST(FalseBarPieces, ALapCutByAnEighthIsCaught) {
  expect_all_caught([](const Solved&, BarPiece& piece) {
    if (piece.lap == Length()) return false;
    const Length less = Length::nanometres(piece.lap.in_nanometres() / 8);
    piece.to -= less, piece.lap -= less;
    return true;
  });
}

TEST(FalseBarPieces, ABarMovedByHalfACellIsCaught) {
  expect_all_caught([](const Solved& one, BarPiece& piece) {
    const Length half_cell = one.answer.building.series.front().pitch().half_down();
    piece.from += half_cell, piece.to += half_cell;
    return true;
  });
}

TEST(FalseBarPieces, ABarInItsNeighboursCellIsCaught) {
  expect_all_caught([](const Solved& one, BarPiece& piece) {
    if (piece.bar < 0) return false;
    piece.bar += piece.bar + 1 < static_cast<std::int32_t>(one.answer.layout.bars.size()) ? 1 : -1;
    return true;
  });
}

TEST(FalseBarPieces, APieceShortenedByOneStepIsCaught) {
  expect_all_caught([](const Solved& one, BarPiece& piece) {
    piece.to -= tape_step(one.answer.building.tape);
    return true;
  });
}

TEST(FalseBarPieces, OneLeftOutOrTwiceIsCaught) {
  const Solved one = solved(lapped_job("kiln-house"));
  const std::size_t count = one.answer.bar_pieces.pieces.size();
  for (std::size_t k = 0; k < count; ++k) {
    BarPieces less = one.answer.bar_pieces, more = less;
    less.pieces.erase(less.pieces.begin() + static_cast<std::ptrdiff_t>(k));
    more.pieces.push_back(more.pieces[k]);
    sum_again(less), sum_again(more);
    EXPECT_FALSE(one.check(less).empty()) << k;
    EXPECT_FALSE(one.check(more).empty()) << k;
  }
}

/// Fewest pieces of a bar between two pours' stops, by trying every set of courses.
int fewest(const Building& building, Length low, Length end, Length stock, Length step, int below, Length lap) {
  int best = -1;
  for (unsigned set = 0; set < 1u << (below - 1); ++set) {
    Length start = low, lapped = low + lap;
    bool fits = true;
    int pieces = 1;
    for (int course = 1; course < below && fits; ++course) {
      if ((set >> (course - 1) & 1u) == 0) continue;
      const Length top = building.courses[static_cast<std::size_t>(course - 1)].top;
      const Length wanted = top + lap - start;
      const Length length = step * (wanted + step - Length::nanometres(1)).whole_multiples(step);
      fits = length <= stock && top > start && top >= lapped && start + length < end;
      lapped = start + length;
      start = top, ++pieces;
    }
    if (fits && end - start <= stock && (best < 0 || pieces < best)) best = pieces;
  }
  return best;
}

TEST(BarPiecesOfSmallWalls, HaveFewestPieces) {
  int compared = 0;
  for (const int courses : {4, 7, 10}) {
    for (std::int64_t stock = 24; stock <= 90; stock += 3) {
      Job job = example_job("kiln-house");
      job.heights.courses = courses, job.openings.clear(), job.steel.pour_tops.clear(),
      job.steel.bond_beams = {courses};
      job.steel.lap = Lap{LapRule::AsDrawn, std::nullopt, std::nullopt, Length::inches(15)};
      job.steel.bar_stock = Length::inches(stock);
      const Solved one = solved(job);
      const Building& building = one.answer.building;
      const Length low = building.courses[0].underside() - building.joint;
      const int best = fewest(building, low, building.courses.back().top - Length::sixteenths(24),
                              Length::inches(stock), Length::sixteenths(1), courses, Length::inches(15));
      if (best < 0) continue;
      ++compared;
      std::vector<int> made(one.answer.layout.bars.size());
      for (const BarPiece& piece : one.answer.bar_pieces.pieces) {
        if (piece.use == BarUse::Upright) ++made[static_cast<std::size_t>(piece.bar)];
      }
      for (const int count : made) EXPECT_EQ(count, best) << courses << " courses, stock " << stock;
    }
  }
  EXPECT_GE(compared, 25);  // or too few stocks fit
}

TEST(BarPiecesOfRandomJobs, AreMadeOfEverySort) {
  int pieces = 0, laps = 0, corners = 0, lintels = 0, dowels = 0;
  for (std::uint64_t seed = 4'001; seed <= 4'400; ++seed) {
    Wishes wishes;
    wishes.search_budget = 0;
    const auto answer = solve(random_job(seed, seed % 4 == 0 ? Size::Large : Size::Small), wishes);
    if (!answer) continue;
    for (const BarPiece& piece : answer->bar_pieces.pieces) {
      ++pieces;
      if (piece.use == BarUse::Corner) ++corners;
      if (piece.use == BarUse::Lintel) ++lintels;
      if (piece.use == BarUse::Dowel) ++dowels;
      if ((piece.use == BarUse::Beam || piece.use == BarUse::Upright) && piece.lap > Length()) ++laps;
    }
    const Job& job = answer->as_built ? answer->as_built->job : answer->job;
    EXPECT_EQ(proof::check_bar_pieces(job, answer->building, answer->layout, answer->bar_pieces), proof::Violations{})
        << "seed " << seed;
  }
  EXPECT_GE(pieces, 500);
  EXPECT_GE(laps, 60);
  EXPECT_GE(corners, 20);
  EXPECT_GE(lintels, 20);
  EXPECT_GE(dowels, 100);
}

}  // namespace
}  // namespace stringcourse::property
