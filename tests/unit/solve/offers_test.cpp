// Offers are promises: each is built into a job of its own here, which is solved afresh and compared.
#include <gtest/gtest.h>

#include <algorithm>

#include "solve/solve.hpp"
#include "told.hpp"
#include "unit/walls/made_jobs.hpp"

namespace stringcourse {
namespace {

using tests::at;
using tests::in;

/// A door 5 in off the half-unit line, measured from either end of its side, and a window that stands well.
Job off_by_five(bool from_far_end) {
  Job job = tests::shed();
  const Opening door = from_far_end ? tests::plain_hole("D1", "AB", at("B", in(61)), in(40), in(80))
                                    : tests::plain_hole("D1", "AB", at("A", in(61)), in(40), in(80));
  job.openings = {door, tests::window_hole("W1", "CD", at("C", in(96)), in(48), in(40), 5)};
  return job;
}

std::size_t index_of(const std::string& pointer) {
  return static_cast<std::size_t>(std::stoi(pointer.substr(pointer.rfind('/') + 1)));
}

/// The job with the offer's change made, from the words of Offer alone. Rectangles only: the side over against changes
/// too.
Job changed(const Job& job, const Offer& offer) {
  Job other = job;
  const std::size_t index = index_of(offer.place);
  if (offer.what == OfferWhat::ChangeSide) {
    other.outline.sides[index].length.length += offer.change;
    other.outline.sides[(index + 2) % 4].length.length += offer.change;
    return other;
  }
  // All openings here are bare holes, stated to the jamb that is nearer to where they are measured from.
  Opening& opening = other.openings[index];
  const bool from_end = opening.on.substr(1) == opening.place.from;  // "AB" ends at "B"
  Length &at = opening.place.at.length, &width = opening.masonry->width.length;
  switch (offer.what) {
    case OfferWhat::MoveOpening: at += from_end ? -offer.change : offer.change; break;
    case OfferWhat::MoveNearJamb:
      width -= offer.change;
      if (!from_end) at += offer.change;
      break;
    case OfferWhat::MoveFarJamb:
      width += offer.change;
      if (from_end) at -= offer.change;
      break;
    case OfferWhat::MoveHead: opening.masonry->height.length += offer.change; break;
    case OfferWhat::ChangeWidth:
      width += offer.change;
      at += from_end ? -(offer.shift + offer.change) : offer.shift;
      break;
    case OfferWhat::ChangeSide: break;
  }
  return other;
}

void expect_honest(const Job& job) {
  const auto answer = solve(job, Wishes{.offers = true});
  ASSERT_TRUE(answer.has_value());
  ASSERT_FALSE(answer->offers.empty());
  for (const Offer& offer : answer->offers) {
    const auto again = solve(changed(job, offer), {});
    ASSERT_TRUE(again.has_value()) << test::told(offer.text);
    EXPECT_TRUE(again->layout.stopped.empty()) << test::told(offer.text);
    EXPECT_EQ(answer->layout.cost.cuts - again->layout.cost.cuts, offer.cuts) << test::told(offer.text);
    EXPECT_EQ(answer->layout.cost.short_laps - again->layout.cost.short_laps, offer.short_laps)
        << test::told(offer.text);
    EXPECT_EQ(answer->layout.cost.conceded - again->layout.cost.conceded, offer.conceded) << test::told(offer.text);
    EXPECT_EQ(
        static_cast<std::int64_t>(answer->layout.bars.size()) - static_cast<std::int64_t>(again->layout.bars.size()),
        offer.bars)
        << test::told(offer.text);
    EXPECT_TRUE(test::told(offer.text).find(offer.name) == 0 && test::told(offer.text).find(':') != std::string::npos)
        << test::told(offer.text);
  }
}

TEST(Offers, SaveWhatTheySay) {
  expect_honest(off_by_five(false));
  expect_honest(off_by_five(true));
}

TEST(Offers, OfBarsSaveWhatTheySay) {
  Job job = off_by_five(false);
  job.steel.bars = Bars{};
  job.steel.bars->size = "#5";
  job.steel.bars->corners = true;
  job.steel.bars->spacing = in(48);
  expect_honest(job);
}

// A side of 24'-3": nothing lays without a cut until it is 3 in shorter or 5 in longer; half units do not help, so that
// only what they do save is offered.
TEST(Offers, OfSidesSaveWhatTheySay) {
  Job job = tests::shed();
  job.units.series = "us-12";
  job.units.stocked = {{UnitKind::Full, UnitKind::Half, UnitKind::Corner}};
  job.units.bond = BondWish::Quarter;
  job.heights.courses = 4;
  job.outline.sides[0].length.length += in(4);
  job.outline.sides[2].length.length += in(4);
  const auto answer = solve(job, Wishes{.offers = true});
  ASSERT_TRUE(answer.has_value());
  for (const Offer& offer : answer->offers) {
    const auto again = solve(changed(job, offer), {});
    ASSERT_TRUE(again.has_value()) << test::told(offer.text);
    EXPECT_EQ(answer->layout.cost.cuts - again->layout.cost.cuts, offer.cuts) << test::told(offer.text);
    EXPECT_EQ(answer->layout.cost.short_laps - again->layout.cost.short_laps, offer.short_laps)
        << test::told(offer.text);
  }
}

const Offer* offer_of(const Answer& answer, OfferWhat what, Length change) {
  for (const Offer& offer : answer.offers)
    if (offer.what == what && offer.change == change) return &offer;
  return nullptr;
}

// 28'-4" is 42 half units and a half of one: every course of AB and CD needs a cut, 12 courses of 2 sides.
TEST(Offers, ASideOffTheModuleMayComeOntoIt) {
  Job job = tests::job_with(tests::outline_of({{340}, {240}, {340}, {240}}));
  const auto answer = solve(job, Wishes{.offers = true});
  ASSERT_TRUE(answer.has_value());
  ASSERT_EQ(answer->layout.cost.cuts, 24);
  for (const Length change : {in(4), -in(4)}) {
    const Offer* const offer = offer_of(*answer, OfferWhat::ChangeSide, change);
    ASSERT_NE(offer, nullptr);
    EXPECT_EQ(offer->cuts, 24);
    EXPECT_EQ(test::told(offer->text), change < Length() ? "AB and CD 4 in shorter: no cuts, no short laps"
                                                         : "AB and CD 4 in longer: no cuts, no short laps");
  }
  expect_honest(job);
}

// A hole 36 in wide whose near jamb stands well: its far jamb is 4 in off the line on which half units end.
TEST(Offers, AHoleMayBeWiderOrNarrowerAtEitherJamb) {
  for (const char* from : {"A", "B"}) {
    Job job = tests::shed();
    job.openings = {tests::plain_hole("D1", "AB", at(from, in(64)), in(36), in(80))};
    const auto answer = solve(job, Wishes{.offers = true});
    ASSERT_TRUE(answer.has_value());
    ASSERT_GT(answer->layout.cost.cuts, 0);
    const bool from_a = *from == 'A';
    const Offer* const wider =
        offer_of(*answer, from_a ? OfferWhat::MoveFarJamb : OfferWhat::MoveNearJamb, from_a ? in(4) : -in(4));
    ASSERT_NE(wider, nullptr) << from;
    EXPECT_EQ(wider->cuts, answer->layout.cost.cuts);
    EXPECT_EQ(test::told(wider->text)
                  .find(from_a ? "D1 4 in wider at the B end: no cuts" : "D1 4 in wider at the A end: no cuts"),
              0u)
        << test::told(wider->text);
    expect_honest(job);
  }
}

// A hole 43 in wide whose near jamb is 3 in past the line at 64 and its far jamb 2 in short of that at 112.
TEST(Offers, AHoleMayChangeAtBothJambsAtOnce) {
  for (const char* from : {"A", "B"}) {
    Job job = tests::shed();
    job.openings = {tests::plain_hole("D1", "AB", at(from, in(67)), in(43), in(80))};
    const auto answer = solve(job, Wishes{.offers = true});
    ASSERT_TRUE(answer.has_value());
    ASSERT_GT(answer->layout.cost.cuts, 0);
    const Offer* const wider = offer_of(*answer, OfferWhat::ChangeWidth, in(5));
    ASSERT_NE(wider, nullptr) << from;
    EXPECT_EQ(wider->cuts, answer->layout.cost.cuts);
    EXPECT_EQ(wider->shift, *from == 'A' ? -in(3) : -in(2));
    const std::string words = *from == 'A' ? "D1 5 in wider, 3 in at the A end and 2 in at the B end: no cuts"
                                           : "D1 5 in wider, 2 in at the A end and 3 in at the B end: no cuts";
    EXPECT_EQ(test::told(wider->text).find(words), 0u) << test::told(wider->text);
    expect_honest(job);
  }
}

// A pier 10 in between two doors: too long for a half unit, too short for a whole one. The nearest piers that lay are
// one and two half units, 8 and 16 in.
TEST(Offers, BesideARuleThatIsGivenUpStandsWhatKeepsIt) {
  Job job = tests::shed();
  job.openings = {tests::plain_hole("D1", "AB", at("A", in(48)), in(40), in(80)),
                  tests::plain_hole("D2", "AB", at("A", in(98)), in(40), in(80))};
  const auto answer = solve(job, Wishes{.offers = true});
  ASSERT_TRUE(answer.has_value());
  ASSERT_FALSE(answer->layout.conceded.empty());
  const Offer* const away = offer_of(*answer, OfferWhat::MoveOpening, in(6));
  ASSERT_NE(away, nullptr);
  EXPECT_EQ(test::told(away->text), "D2 6 in toward B: every rule kept, no cuts");
  EXPECT_EQ(away->conceded, answer->layout.cost.conceded);
  std::size_t told = 0;
  for (std::size_t f = 0; f < answer->findings.size(); ++f) {
    if (!answer->findings[f].code.text().starts_with("conceded")) continue;
    ++told;
    const auto mends = [&](const Offer& offer) { return std::ranges::contains(offer.mends, f); };
    EXPECT_TRUE(std::ranges::any_of(answer->offers, mends)) << test::told(answer->findings[f].says);
  }
  EXPECT_GT(told, 0u);
  for (const Offer& offer : answer->offers) {
    const auto again = solve(changed(job, offer), {});
    ASSERT_TRUE(again.has_value()) << test::told(offer.text);
    for (const std::size_t f : offer.mends) {
      const Finding& gone = answer->findings[f];
      const auto same = [&](const Finding& other) { return other.code == gone.code && other.place == gone.place; };
      EXPECT_TRUE(std::ranges::none_of(again->findings, same))
          << test::told(offer.text) << " | " << test::told(gone.says);
    }
  }
  expect_honest(job);
}

// Many changes of openings save little or nothing and take long to search. That the side is 4 in too long comes first.
TEST(Offers, WhatHelpsMostIsFoundBeforeTheRoomIsUsedUp) {
  Job job = tests::job_with(tests::outline_of({{340}, {240}, {340}, {240}}), 14);
  job.openings = {tests::plain_hole("D1", "AB", at("A", in(112)), in(112), in(88)),
                  tests::plain_hole("D2", "BC", at("B", in(48)), in(40), in(88)),
                  tests::window_hole("W1", "CD", at("C", in(72)), in(48), in(40), 6),
                  tests::window_hole("W2", "CD", at("C", in(216)), in(48), in(40), 6)};
  job.steel.bars.emplace().size = "#5";
  job.steel.bars->corners = job.steel.bars->jambs = true;
  job.steel.bars->spacing = in(48);
  const auto answer = solve(job, Wishes{.offers = true});
  ASSERT_TRUE(answer.has_value());
  ASSERT_GT(answer->layout.cost.cuts, 0);
  const Offer* const shorter = offer_of(*answer, OfferWhat::ChangeSide, -in(4));
  ASSERT_NE(shorter, nullptr);
  EXPECT_EQ(shorter->cuts, answer->layout.cost.cuts);
}

// 84 in nominal from the floor falls between the courses at 80 and 88.
TEST(Offers, AHeadOffTheCoursesMayComeOntoOne) {
  Job job = tests::shed();
  job.openings = {tests::plain_hole("D1", "AB", at("A", in(64)), in(40), in(84))};
  const auto answer = solve(job, Wishes{.offers = true});
  ASSERT_TRUE(answer.has_value());
  for (const Length change : {in(4), -in(4)}) {
    const Offer* const offer = offer_of(*answer, OfferWhat::MoveHead, change);
    ASSERT_NE(offer, nullptr);
    EXPECT_NE(test::told(offer->text).find(change < Length() ? "D1 4 in lower: " : "D1 4 in higher: "),
              std::string::npos)
        << test::told(offer->text);
    const auto again = solve(changed(job, *offer), {});
    ASSERT_TRUE(again.has_value());
    EXPECT_EQ(again->building.openings.front().packing_head, Length());
  }
  expect_honest(job);
}

TEST(Offers, FewerBarsAloneAreNone) {
  Job job = tests::shed();
  job.openings = {tests::plain_hole("D1", "AB", at("A", in(64)), in(40), in(80))};
  job.steel.bars.emplace().size = "#5";
  job.steel.bars->corners = job.steel.bars->jambs = true;
  job.steel.bars->spacing = in(48);
  const auto answer = solve(job, Wishes{.offers = true});
  ASSERT_TRUE(answer.has_value());
  ASSERT_EQ(answer->layout.cost.cuts + answer->layout.cost.short_laps, 0);
  std::size_t fewest = answer->layout.bars.size();
  for (const std::int64_t move : {-16, -8, 8, 16}) {
    Job moved = job;
    moved.openings.front().place.at.length += in(move);
    const auto again = solve(moved, {});
    ASSERT_TRUE(again.has_value());
    fewest = std::min(fewest, again->layout.bars.size());
  }
  ASSERT_LT(fewest, answer->layout.bars.size()) << "no move saves a bar: this shows nothing";
  EXPECT_TRUE(answer->offers.empty()) << test::told(answer->offers.front().text);
}

TEST(Offers, ALargerChangeThatSavesNoMoreIsLeftOut) {
  const auto answer = solve(off_by_five(false), Wishes{.offers = true});
  ASSERT_TRUE(answer.has_value());
  const auto total = [](const Offer& offer) { return std::pair(offer.short_laps, offer.cuts); };
  for (const Offer& a : answer->offers) {
    for (const Offer& b : answer->offers) {
      const bool same_thing = a.what == b.what && a.place == b.place && (a.change < Length()) == (b.change < Length());
      if (same_thing && magnitude(a.change) < magnitude(b.change))
        EXPECT_LT(total(a), total(b)) << test::told(a.text) << " makes needless: " << test::told(b.text);
    }
  }
}

// 20 sides of 100 ft in a saw-tooth, one hole off its line: so many changes of so many pieces are not all tried.
TEST(Offers, OfALargeBuildingOnlyTheLikeliestChangesAreTriedAndItIsSaid) {
  Job job = tests::job_with({}, 15);
  job.outline.closed = false;
  for (int side = 0; side < 20; ++side) {
    Side next;
    next.from = "P" + std::to_string(side);
    next.to = "P" + std::to_string(side + 1);
    next.length = tests::nominal(in(1200));
    if (side < 19) next.turn = side % 2 == 0 ? Turn::Right : Turn::Left;
    job.outline.sides.push_back(next);
  }
  job.openings = {tests::plain_hole("D1", "P0P1", at("P0", in(64)), in(36), in(80))};
  int tried = 0;
  Wishes wishes{.offers = true};
  wishes.progress = [&](double) { return ++tried > 0; };
  const auto answer = solve(job, wishes);
  ASSERT_TRUE(answer.has_value());
  EXPECT_FALSE(answer->offers_complete);
  EXPECT_LE(static_cast<std::size_t>(tried) * answer->layout.pieces.size(), 1'000'000u);
  ASSERT_FALSE(answer->offers.empty());  // the hole's wall comes first
  EXPECT_EQ(answer->offers.front().place, "/openings/0");
  const auto small = solve(off_by_five(false), Wishes{.offers = true});
  ASSERT_TRUE(small.has_value());
  EXPECT_TRUE(small->offers_complete);
}

TEST(Offers, ComeWithTheLargestSavingFirst) {
  const auto answer = solve(off_by_five(false), Wishes{.offers = true});
  ASSERT_TRUE(answer.has_value());
  ASSERT_GE(answer->offers.size(), 2u);
  for (std::size_t i = 1; i < answer->offers.size(); ++i) {
    const Offer &a = answer->offers[i - 1], &b = answer->offers[i];
    EXPECT_GE(std::tuple(a.short_laps, a.cuts), std::tuple(b.short_laps, b.cuts))
        << test::told(a.text) << " before " << test::told(b.text);
  }
}

TEST(Offers, FreePlacesLayWithoutACut) {
  const Job job = off_by_five(false);
  const auto answer = solve(job, Wishes{.offers = true});
  ASSERT_TRUE(answer.has_value());
  ASSERT_EQ(answer->free_places.size(), 2u);
  int places = 0;
  for (const FreePlaces& free : answer->free_places) {
    const ResolvedOpening& opening = answer->building.openings[static_cast<std::size_t>(free.opening)];
    EXPECT_TRUE(std::ranges::is_sorted(free.from));
    EXPECT_EQ(std::ranges::adjacent_find(free.from), free.from.end());
    for (const Length from : free.from) {
      const Length move = from - opening.from.distance_from_start();
      EXPECT_LE(move, in(16));
      EXPECT_GE(move, -in(16));
      Job moved = job;
      moved.openings[index_of(opening.place)].place.at.length += move;
      const auto again = solve(moved, {});
      ASSERT_TRUE(again.has_value());
      EXPECT_TRUE(again->layout.stopped.empty());
      // The other opening may cost cuts of its own: with D1 off its line W1's places are none, with D1 moved all is
      // whole.
      EXPECT_EQ(again->layout.cost.cuts, 0);
      EXPECT_EQ(again->building.openings[static_cast<std::size_t>(free.opening)].from.distance_from_start(), from);
      ++places;
    }
  }
  EXPECT_GE(places, 3);
}

TEST(Offers, AreNotLookedForUnlessWished) {
  const auto answer = solve(off_by_five(false), {});
  ASSERT_TRUE(answer.has_value());
  EXPECT_TRUE(answer->offers.empty());
  EXPECT_TRUE(answer->free_places.empty());
}

TEST(Offers, ProgressRisesToTheWholeAndMayCancel) {
  std::vector<double> shares;
  Wishes wishes{.offers = true};
  wishes.progress = [&](double share) {
    shares.push_back(share);
    return true;
  };
  const auto whole = solve(off_by_five(false), wishes);
  ASSERT_TRUE(whole.has_value());
  ASSERT_GE(shares.size(), 8u);
  EXPECT_TRUE(std::ranges::is_sorted(shares));
  EXPECT_GT(shares.front(), 0.0);
  EXPECT_LE(shares.back(), 1.0);
  int asked = 0;
  wishes.progress = [&](double) { return ++asked < 3; };
  const auto cancelled = solve(off_by_five(false), wishes);
  ASSERT_TRUE(cancelled.has_value());
  EXPECT_EQ(asked, 3);
  EXPECT_LT(cancelled->offers.size(), whole->offers.size());
  EXPECT_EQ(cancelled->layout.cost, whole->layout.cost);
}

}  // namespace
}  // namespace stringcourse
