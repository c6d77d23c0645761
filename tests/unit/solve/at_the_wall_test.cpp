// The laid log read against the kiln house: marks, readings that cannot be meant or disagree, beds, closures, verdicts.
#include "laying/as_laid.hpp"

#include <gtest/gtest.h>

#include <algorithm>
#include <fstream>
#include <random>
#include <sstream>

#include "job/read.hpp"
#include "job/write.hpp"
#include "laying/merge_jobs.hpp"
#include "solve/solve.hpp"
#include "told.hpp"

namespace stringcourse::laying {
namespace {

Job kiln_house() {
  std::ostringstream text;
  text << std::ifstream(std::string(STRINGCOURSE_ROOT) + "/examples/kiln-house.json").rdbuf();
  return *read_job(text.str());
}

Length sixteenths(int count) { return Length::sixteenths(count); }

LaidEntry mark(const std::string& id, Length at, Length past, int course = 1) {
  LaidEntry entry;
  entry.id = id;
  entry.mark = MarkReading{"AB", course, at, past, std::nullopt};
  return entry;
}

Answer solved(std::vector<LaidEntry> log) {
  Job job = kiln_house();
  job.laid = std::move(log);
  return *solve(job, Wishes{});
}

bool has(const Answer& answer, Code code) {
  return std::ranges::any_of(answer.findings, [&](const Finding& finding) { return finding.code == code; });
}

constexpr Length kFirst = Length::sixteenths(55 * 16 + 10), kSecond = Length::sixteenths(103 * 16 + 10);

TEST(AsLaid, BayMarksOfASideThatButtsStandAt55And103AndFiveEighths) {
  // By hand: third-unit marks of a side that runs through at 48k - 3/8, of a side that butts at 55 5/8,
  // 103 5/8.
  const Answer answer = solved({mark("1", kFirst, {})});
  const CourseAsLaid& course = answer.laid->begun.front();
  std::vector<Length> bays;
  for (const WallMark& one : course.marks) {
    if (one.mark.third_unit && one.run == 0) bays.push_back(one.mark.at);
  }
  EXPECT_EQ(bays, (std::vector{kFirst, kSecond}));
  const CourseAsLaid through =
      course_as_laid(answer.job, answer.building, {answer.layout}, answer.laid->how, answer.laid->counts, 0, 2);
  ASSERT_FALSE(through.marks.empty());
  EXPECT_TRUE(std::ranges::any_of(through.marks, [](const WallMark& one) {
    return one.mark.third_unit && one.mark.at == sixteenths(47 * 16 + 10);
  }));
}

TEST(AsLaid, ThreeSixteenthsPastIsThreeJointsOfFiveSixteenths) {
  // By hand: three joints of 3/8 less 3/16 are 15/16: three of 5/16.
  const Answer answer = solved({mark("1", kFirst, sixteenths(3))});
  const RunAsLaid& run = answer.laid->begun.front().runs.front();
  EXPECT_EQ(run.next.what, Correction::What::Joints);
  EXPECT_EQ(run.next.joints, std::vector(3, sixteenths(5)));
  EXPECT_EQ(test::told(next_said(run)), "next 3 joints of 5/16\"");
}

// AB begins with a joint: three units to the first mark, three to the second, one to the jamb.
TEST(AsLaid, ShortBeyondJointsTheFewestUnitsComeUpFromWhereTheCourseStoodThere) {
  const Answer once = solved({mark("1", kFirst, -sixteenths(12))});
  const Correction& next = once.laid->begun.front().runs.front().next;
  ASSERT_EQ(next.what, Correction::What::LayAgain);
  // Evenly gone wrong, unit 1 stands 4/16 short and unit 2 8/16. From unit 2 the joint of unit 3 would have to take all
  // 8, the four to the second mark take 2/16 each.
  EXPECT_EQ(next.again, 1);
  EXPECT_EQ(next.joints, std::vector(4, sixteenths(8)));
  // Known to have been on its mark at unit 3, the course is laid again from there at most, and what the other reading
  // taught about the units does not count.
  const Answer twice = solved({mark("1", kFirst, Length()), mark("2", kFirst + Length::inches(48), -sixteenths(12))});
  const Correction& later = twice.laid->begun.front().runs.front().next;
  ASSERT_EQ(later.what, Correction::What::LayAgain);
  EXPECT_EQ(later.again, 2);
  EXPECT_EQ(later.joints, std::vector(2, sixteenths(8)));
}

TEST(AsLaid, BesideASawCutStandsWhatLayingAgainWouldTake) {
  const Answer answer = solved({mark("1", kFirst, sixteenths(8))});
  const RunAsLaid& run = answer.laid->begun.front().runs.front();
  EXPECT_EQ(run.next.what, Correction::What::SawCut);
  ASSERT_TRUE(run.instead.has_value());
  EXPECT_NE(test::told(next_said(run)).find("; or lift the last "), std::string::npos);
}

TEST(AsLaid, TheSameReadAsARunningDistanceComesToTheSame) {
  LaidEntry entry = mark("1", kFirst, {});
  entry.mark->past.reset();
  entry.mark->read = kFirst + sixteenths(3);
  EXPECT_EQ(solved({entry}).laid->begun.front().runs.front().next.joints, std::vector(3, sixteenths(5)));
}

TEST(AsLaid, WhatCannotBeMeantIsLeftOutWithItsLikelyMeaning) {
  struct Case {
    Length past;
    const char* likely;
  };
  for (const Case& one : {Case{Length::inches(3), "sixteenths: 3/16\" past?"},
                          Case{Length::inches(16), "the mark at 5'-11 5/8\" = 71 5/8\", 0\" past?"},
                          Case{Length::feet(1) + sixteenths(2), "feet slipped on the tape: 1/8\" past?"}}) {
    const Answer answer = solved({mark("1", kFirst, one.past)});
    EXPECT_TRUE(has(answer, "mark-reading-doubtful"));
    const auto& marks = answer.laid->begun.front().marks;
    const auto read = std::ranges::find_if(marks, [](const WallMark& each) { return !each.entries.empty(); });
    ASSERT_NE(read, marks.end());
    ASSERT_TRUE(read->doubtful.has_value());
    EXPECT_EQ(test::told(read->doubtful->likely), one.likely);
    EXPECT_EQ(answer.laid->begun.front().runs.front().laid, 0);  // not applied
  }
  // Read twice alike it is so, whatever it costs.
  EXPECT_EQ(solved({mark("1", kFirst, Length::inches(3)), mark("2", kFirst, Length::inches(3))})
                .laid->begun.front()
                .runs.front()
                .laid,
            3);
}

TEST(AsLaid, ReadingsThatDisagreeAreBothShownAndTheLastIsUsedUntilOneIsStruck) {
  LaidEntry strike;
  strike.id = "3", strike.strike = "2";
  const Answer both = solved({mark("1", kFirst, sixteenths(1)), mark("2", kFirst, sixteenths(5))});
  EXPECT_TRUE(has(both, "mark-read-twice"));
  EXPECT_EQ(both.laid->begun.front().runs.front().past, sixteenths(5));
  // A strike counts wherever it stands in the log.
  for (const auto& log : {std::vector{mark("1", kFirst, sixteenths(1)), mark("2", kFirst, sixteenths(5)), strike},
                          std::vector{strike, mark("2", kFirst, sixteenths(5)), mark("1", kFirst, sixteenths(1))}}) {
    const Answer struck = solved(log);
    EXPECT_FALSE(has(struck, "mark-read-twice"));
    EXPECT_EQ(struck.laid->begun.front().runs.front().past, sixteenths(1));
  }
}

TEST(AsLaid, AStruckStrikeLetsItsReadingCountAgainWhereverItStands) {
  const auto strike = [](const char* id, const char* of) {
    LaidEntry entry;
    entry.id = id, entry.strike = of;
    return entry;
  };
  std::vector<LaidEntry> log{mark("1", kFirst, sixteenths(1)), mark("2", kFirst, sixteenths(5)), strike("3", "2"),
                             strike("4", "3")};
  for (int turn = 0; turn < 4; ++turn) {
    EXPECT_TRUE(has(solved(log), "mark-read-twice"));
    std::ranges::rotate(log, log.begin() + 1);
  }
}

TEST(AsLaid, EntriesOfAnotherJobAreLeftOutAndSaid) {
  LaidEntry other = mark("1", kFirst, {});
  other.mark->on = "XY";
  LaidEntry high;
  high.id = "2", high.laid = CourseLaid{"AB", 99};
  const Answer answer = solved({other, high, mark("3", Length::inches(50), {})});
  EXPECT_EQ(std::ranges::count_if(answer.findings,
                                  [](const Finding& finding) { return finding.code == "laid-entry-unknown"; }),
            2);
  EXPECT_TRUE(has(answer, "no-such-mark"));
}

TEST(AsLaid, TenUnitsLongBy1Over32EachAreTakenOffAhead) {
  LaidEntry row;
  row.id = "1", row.units = UnitSample{10, Length::inches(156) + sixteenths(9), {}};  // 10 x (15 5/8 + 1/32) = 156 9/16
  const Answer answer = solved({row});
  ASSERT_TRUE(answer.laid->how.batch.has_value());
  EXPECT_EQ(answer.laid->how.batch->mean, Length::inches(15) + Length::sixty_fourths(42));
  const RunAsLaid& run = answer.laid->at_hand.front().runs.front();
  // Three units to the first mark: 3/32, by the tape's step 1/16 or 2/16.
  EXPECT_TRUE(run.bias_taken == sixteenths(1) || run.bias_taken == sixteenths(2));
  Length sum;
  for (const Length joint : run.next.joints) sum = sum + joint;
  EXPECT_EQ(sum, sixteenths(18) - run.bias_taken);
}

TEST(AsLaid, ChecksAreJudgedByTheRuleWithTheInstrumentsDoubt) {
  // SOURCE: TMS 602 (second-hand): plumb 1/4 in in 10 ft, so 1/8 in in 5 ft. The level may be wrong by 1/32 in either
  // way: U = 2 x (1/32) / sqrt 3 = 0.0361 in, by hand. 1/16 lies inside 0.125 - 0.0361; 2/16 can't be told; 3/16 fails.
  for (const auto& [off, verdict] :
       {std::pair(1, Verdict::Fits), std::pair(2, Verdict::CannotTell), std::pair(3, Verdict::DoesNotFit)}) {
    LaidEntry entry;
    entry.id = "1",
    entry.check = WallCheck{"AB", 1, CheckKind::Plumb, Length::feet(5), sixteenths(off), Length::sixty_fourths(2)};
    const Answer answer = solved({entry});
    EXPECT_EQ(answer.laid->checks.front().verdict, verdict) << off;
    EXPECT_EQ(has(answer, "out-of-tolerance"), verdict == Verdict::DoesNotFit);
  }
}

TEST(AsLaid, APlaceTapedOverTenMetresHasTheTapesDoubtToo) {
  // By hand, a 10 m set-out with a tape of EU class II: permitted error 0.3 + 0.2 x 10 = 2.3 mm, so 2.3 / sqrt 3
  // = 1.328 mm; read to 1 mm: 1 / sqrt 3 = 0.577. Together 1.448, U = 2.896 mm, by hand. Allowed: 1/2 in in 20 ft comes
  // to 3/4 in at most, 19.05 mm (10 m by proportion would be 20.8): 16 passes, 17 and 21 can't be told, 22 fails.
  for (const auto& [off, verdict] : {std::pair(16, Verdict::Fits), std::pair(17, Verdict::CannotTell),
                                     std::pair(21, Verdict::CannotTell), std::pair(22, Verdict::DoesNotFit)}) {
    Job job = kiln_house();
    job.ground.emplace().tape = TapeMake::ClassTwo;
    LaidEntry entry;
    entry.id = "1",
    entry.check = WallCheck{
        "AB", 1, CheckKind::Position, Length::millimetres(10'000), Length::millimetres(off), Length::millimetres(1)};
    job.laid = {entry};
    const auto answer = solve(job, Wishes{});
    EXPECT_EQ(answer->laid->checks.front().verdict, verdict) << off;
    EXPECT_NEAR(static_cast<double>(answer->laid->checks.front().doubt.in_nanometres()), 2.896e6, 1e3);
  }
}

TEST(AsLaid, BedsToTheHeadTakeUpWhatACourseIsHigh) {
  LaidEntry gauge;
  gauge.id = "1", gauge.gauge = GaugeReading{"AB", 2, sixteenths(4)};
  const Answer answer = solved({gauge});
  const GaugeAsLaid& read = answer.laid->gauges.front();
  ASSERT_TRUE(read.beds.has_value());
  EXPECT_EQ(test::told(read.to_what), "head of D1");
  Length sum;
  for (const Length bed : read.beds->beds) sum = sum + bed;
  EXPECT_EQ(sum, sixteenths(6 * 9 - 4));  // nine courses to the eleventh, 1/4 in less
  for (const Length bed : read.beds->beds) EXPECT_LE(magnitude(bed - sixteenths(6)), sixteenths(2));
}

TEST(AsLaid, ProgressCountsFinishedCoursesAndUnitsUpToTheLastMark) {
  LaidEntry done;
  done.id = "1", done.when = "2026-05-09 16:00", done.laid = CourseLaid{"AB", 1};
  LaidEntry next = mark("2", sixteenths(47 * 16 + 10), {}, 2);
  next.when = "2026-05-10 09:00";
  const Answer answer = solved({done, next});
  EXPECT_EQ(answer.laid->progress.units_laid, 14 + 3);
  EXPECT_EQ(answer.laid->progress.days, 2);
  EXPECT_EQ(answer.laid->progress.per_day, 8);
  EXPECT_EQ(answer.laid->next_course.front(), 2);
}

// ---- two phones ----------------------------------------------------------------------------------------------------

Job with_log(std::mt19937& dice) {
  Job job;
  job.name = "one";
  const std::size_t count = dice() % 6;
  for (std::size_t k = 0; k < count; ++k) {
    LaidEntry entry =
        mark(std::string(1, static_cast<char>('a' + dice() % 5)), kFirst, sixteenths(static_cast<int>(dice() % 2)));
    entry.when = std::to_string(dice() % 3);
    if (std::ranges::none_of(job.laid, [&](const LaidEntry& other) { return other.id == entry.id; }))
      job.laid.push_back(entry);
  }
  return job;
}

TEST(MergedJobs, AreTheSameDocumentInAnyOrderOverTenThousandRandomPairs) {
  std::mt19937 dice(17);
  int conflicts = 0;
  for (int round = 0; round < 10'000; ++round) {
    const Job a = with_log(dice), b = with_log(dice), c = with_log(dice);
    const auto merge = [](const Job& one, const Job& other) { return merged_jobs(one, other)->job; };
    const Job ab = merge(a, b);
    ASSERT_EQ(write_job(ab), write_job(merge(b, a)));
    ASSERT_EQ(write_job(merge(ab, c)), write_job(merge(a, merge(b, c))));
    ASSERT_EQ(write_job(merge(ab, ab)), write_job(ab));
    ASSERT_EQ(write_job(merge(ab, a)), write_job(ab));
    // Every entry of either is there, word for word but perhaps for its id; ids are unlike.
    for (const LaidEntry& one : a.laid) {
      EXPECT_TRUE(std::ranges::any_of(ab.laid, [&](const LaidEntry& kept) {
        return kept.mark == one.mark && kept.when == one.when && kept.id.starts_with(one.id);
      }));
    }
    for (std::size_t k = 1; k < ab.laid.size(); ++k) {
      for (std::size_t other = 0; other < k; ++other) EXPECT_NE(ab.laid[k].id, ab.laid[other].id);
    }
    conflicts += !merged_jobs(a, b)->conflicts.empty();
  }
  EXPECT_GT(conflicts, 1'000);
}

TEST(MergedJobs, OfDifferentBuildingsAreRefusedWithWhatDiffers) {
  Job one = kiln_house(), other = one;
  other.heights.courses = 3;
  other.name = "Other";
  const auto merged = merged_jobs(one, other);
  ASSERT_FALSE(merged.has_value());
  EXPECT_EQ(merged.error(), (std::vector<std::string>{"/name", "/heights"}));
}

}  // namespace
}  // namespace stringcourse::laying
