// What an offer promises comes out when it is taken: the offers of buildings that somebody would build, made by the
// edit that the page makes and solved afresh.
#include <gtest/gtest.h>

#include <cstdio>
#include <cstdlib>

#include "edits/edit.hpp"
#include "property/sensible_jobs.hpp"
#include "solve/solve.hpp"
#include "told.hpp"

namespace stringcourse {
namespace {

using property::Grain;

/// STRINGCOURSE_FIRST_SEED and STRINGCOURSE_SENSIBLE look elsewhere and longer.
std::uint64_t number_from(const char* name, std::uint64_t otherwise) {
  const char* text = std::getenv(name);
  return text != nullptr ? std::strtoull(text, nullptr, 10) : otherwise;
}

constexpr std::size_t kMostOfAJob = 4;

/// Best first: laps before cuts, unless quarter bond is asked for (no sensible job asks for it).
std::array<std::int64_t, 3> counts(const Cost& cost) { return {cost.conceded, cost.short_laps, cost.cuts}; }

struct Tally {
  int jobs = 0, offers = 0, better = 0;
};

TakeOffer edit_of(const Offer& offer) { return {offer.what, offer.place, offer.change, offer.shift}; }

void expect_kept(const Answer& answer, const Offer& offer, Tally& tally) {
  const auto changed = edited(answer.job, answer.building, edit_of(offer));
  ASSERT_TRUE(changed.has_value()) << test::told(offer.text);
  const auto taken = solve(*changed, {});
  ASSERT_TRUE(taken.has_value()) << test::told(offer.text);
  EXPECT_TRUE(taken->layout.stopped.empty()) << test::told(offer.text);
  const Cost &before = answer.layout.cost, &now = taken->layout.cost;
  const std::array<std::int64_t, 3> promised{before.conceded - offer.conceded, before.short_laps - offer.short_laps,
                                             before.cuts - offer.cuts};
  EXPECT_LE(counts(now), promised) << test::told(offer.text) << ": " << now.short_laps << " " << now.cuts;
  EXPECT_LE(counts(now), counts(before)) << test::told(offer.text);
  ++tally.offers;
  if (counts(now) < promised) ++tally.better;
}

/// What a finding says is gone, or less, in the building with an offer that stands beside it.
void expect_mended(const Answer& answer, const Offer& offer) {
  const auto changed = edited(answer.job, answer.building, edit_of(offer));
  const auto taken = changed ? solve(*changed, {}) : std::unexpected(Refusals{});
  ASSERT_TRUE(taken.has_value());
  for (const std::size_t f : offer.mends) {
    ASSERT_LT(f, answer.findings.size());
    const Finding& finding = answer.findings[f];
    const auto same = std::ranges::find_if(taken->findings, [&](const Finding& other) {
      return other.code == finding.code && other.place == finding.place;
    });
    if (same != taken->findings.end())
      EXPECT_NE(same->says, finding.says) << test::told(offer.text) << " beside: " << test::told(finding.says);
  }
}

void look_at(std::uint64_t seed, Grain grain, Tally& tally) {
  const auto answer = solve(property::sensible_job(seed, grain), Wishes{.offers = true});
  if (!answer) return;
  ++tally.jobs;
  const std::size_t most = std::min(kMostOfAJob, answer->offers.size());
  for (std::size_t i = 0; i < most; ++i) {
    SCOPED_TRACE("seed " + std::to_string(seed) + " grain " + std::to_string(static_cast<int>(grain)));
    expect_kept(*answer, answer->offers[i], tally);
    if (i == 0) expect_mended(*answer, answer->offers[i]);
  }
}

void look_at_all(Grain grain, std::uint64_t otherwise) {
  const std::uint64_t first = number_from("STRINGCOURSE_FIRST_SEED", 1);
  const std::uint64_t count = number_from("STRINGCOURSE_SENSIBLE", otherwise);
  Tally tally;
  for (std::uint64_t seed = first; seed < first + count; ++seed) look_at(seed, grain, tally);
  std::printf("%d jobs, %d offers taken, %d of them better than promised\n", tally.jobs, tally.offers, tally.better);
  EXPECT_GE(tally.offers * 2, tally.jobs);  // else little was looked at
}

TEST(OffersKept, OnWholeInches) { look_at_all(Grain::Inch, 6); }
TEST(OffersKept, OnSixteenths) { look_at_all(Grain::Sixteenth, 5); }

}  // namespace
}  // namespace stringcourse
