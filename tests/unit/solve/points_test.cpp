// What the hold points ask, of jobs in many states: each row is a store of 24 x 16 ft in 8 in block, changed a little,
// and the answer that a mason would give who looks at the same readings. Over 400 lines: the rows are one table.
#include "answer/points.hpp"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <set>

#include "edits/begun.hpp"
#include "job/job.hpp"
#include "sheet/drawing.hpp"
#include "solve/solve.hpp"
#include "told.hpp"

namespace stringcourse {
namespace {

using Change = std::function<void(Job&)>;

Length in(std::int64_t inches) { return Length::inches(inches); }
Length ft(std::int64_t feet) { return Length::feet(feet); }

Job store() {
  return *begun_job({.name = "Clay store", .length = "24ft", .width = "16ft", .height = "8ft", .series = "us-8"});
}
// As built: nominal lengths less a joint of 3/8 in.
const Length kLong = ft(24) - Length::sixteenths(6), kShort = ft(16) - Length::sixteenths(6);

Change all(std::vector<Change> changes) {
  return [changes](Job& job) {
    for (const Change& change : changes) change(job);
  };
}
/// A new entry of the log.
Reading& entry(Job& job) {
  Reading& reading = job.readings.emplace_back();
  reading.id = "r" + std::to_string(job.readings.size());
  return reading;
}
Change length_of_ab(Length length) {
  return [=](Job& job) { job.outline.sides[0].length.length = job.outline.sides[2].length.length = length; };
}
Change height(Length height) {
  return [=](Job& job) { job.heights.height = StatedLength{height}; };
}
Change opening(Length at, Length wide, Length high, std::optional<Lintel> lintel = {}, std::optional<int> sill = {}) {
  return [=](Job& job) {
    Opening one;
    one.name = "O" + std::to_string(job.openings.size() + 1), one.on = "AB", one.place = {"A", {at}, {}};
    one.masonry = MasonrySize{{wide}, {high}}, one.lintel = lintel, one.sill_course = sill;
    job.openings.push_back(one);
  };
}
const Lintel kUnits{LintelMake::BuiltUp, {}, {}, {}}, kPiece{LintelMake::OnePiece, {}, in(8), {}};
Change door(std::optional<Lintel> lintel = {}) { return opening(in(64), in(40), in(80), lintel); }
Change stocked(std::vector<UnitKind> kinds) {
  return [=](Job& job) { job.units.stocked = kinds; };
}
Change bars() {
  return [](Job& job) {
    Bars& bars = job.steel.bars.emplace();
    bars.size = "#5", bars.corners = bars.jambs = true, bars.spacing = in(48);
  };
}
Change pours(std::vector<int> tops) {
  return [=](Job& job) { job.steel.pour_tops = tops; };
}
Change beam(int course) {
  return [=](Job& job) { job.steel.bond_beams.push_back(course); };
}
Change taped(const std::string& from, const std::string& to, Length length) {
  return [=](Job& job) { entry(job).tape = TapeReading{from, to, length}; };
}
Length diagonal() {
  const double x = static_cast<double>(kLong.in_nanometres()), y = static_cast<double>(kShort.in_nanometres());
  return rounded_to(Length::nanometres(std::llround(std::hypot(x, y))), Length::sixteenths(1));
}
Change sides() {
  return all({taped("A", "B", kLong), taped("B", "C", kShort), taped("C", "D", kLong), taped("D", "A", kShort)});
}
/// One diagonal is longer than planned, the other shorter: a parallelogram.
Change shape(Length lean = {}) {
  return all({sides(), taped("A", "C", diagonal() + lean), taped("B", "D", diagonal() - lean)});
}
/// The rod at corners A to D, the instrument between them: the higher the reading, the lower the footing.
Change rods(std::vector<Length> lower) {
  return [=](Job& job) {
    const std::string corners = "ABCD";
    for (std::size_t k = 0; k < lower.size(); ++k)
      entry(job).rod = RodReading{"one", corners.substr(k, 1), ft(4) + lower[k], {}, {}, {}, {}, {}};
  };
}
/// All that is taped so far were lines before the pour.
Change of_lines() {
  return [](Job& job) {
    for (Reading& reading : job.readings) reading.tape->of = Taped::Lines;
  };
}
Change edge(const std::string& on, Length at, Length beyond) {
  return [=](Job& job) { entry(job).edge = EdgeReading{on, {}, at, beyond}; };
}
Change edges(Length beyond) {
  return all({edge("AB", ft(2), beyond), edge("AB", ft(22), beyond), edge("BC", ft(2), beyond),
              edge("BC", ft(14), beyond), edge("CD", ft(2), beyond), edge("DA", ft(2), beyond)});
}
/// Dowels of the list, read off their places by so much along the wall; `most` of them.
Change dowels_read(Length off, std::size_t most = 1000) {
  return [=](Job& job) {
    const Answer planned = *solve(job, Wishes{});
    for (std::size_t k = 0; k < std::min(most, planned.dowels.size()); ++k) {
      const steel::Dowel& dowel = planned.dowels[k];
      entry(job).dowel = DowelReading{
          planned.building.walls[static_cast<std::size_t>(dowel.wall)].name, {}, dowel.along + off, dowel.off_face};
    }
  };
}
Change top_check(CheckKind what, Length off) {
  return [=](Job& job) {
    LaidEntry entry;
    entry.id = "c" + std::to_string(job.laid.size());
    entry.check = WallCheck{"AB", 12, what, ft(10), off, Length::sixteenths(1)};
    job.laid.push_back(entry);
  };
}

struct Row {
  const char* asks;
  const char* of;
  Change change;
  Answered answered;
};

constexpr Answered kYes = Answered::Yes, kNo = Answered::No, kUnsure = Answered::CannotTell,
                   kNotRead = Answered::NotRead;

std::vector<Row> order_rows() {
  const char *whole = "ask-whole-units", *lines = "ask-course-lines", *yard = "ask-yard";
  return {
      {whole, "24 x 16 ft", all({}), kYes},
      {whole, "24'-8\" long: still half units", length_of_ab(in(296)), kYes},
      {whole, "24'-1\" long: an inch, spread over its joints", length_of_ab(in(289)), kYes},
      {whole, "24'-4\" long", length_of_ab(in(292)), kNo},
      {whole, "a door of 40 in at 64 in", door(kUnits), kYes},
      {whole, "a door of 41 in at 64 in: an inch, spread over joints", opening(in(64), in(41), in(80), kUnits), kYes},
      {whole, "a door of 44 in at 64 in", opening(in(64), in(44), in(80), kUnits), kNo},
      {whole, "a door of 40 in at 66 in", opening(in(66), in(40), in(80), kUnits), kNo},
      {lines, "no openings", all({}), kYes},
      {lines, "a door of 80 in: ten courses", door(kUnits), kYes},
      {lines, "a door of 82 in", opening(in(64), in(40), in(82), kUnits), kNo},
      {lines, "a window of 40 in on course 4", opening(in(64), in(40), in(40), kUnits, 4), kYes},
      {lines, "a window of 42 in on course 4", opening(in(64), in(40), in(42), kUnits, 4), kNo},
      {lines, "walls of 8'-3\"", height(in(99)), kNo},
      {yard, "nothing said", all({}), kNotRead},
      {yard, "full, half and corner units", stocked({UnitKind::Full, UnitKind::Half, UnitKind::Corner}), kYes},
      {yard, "no half units, beside a door", all({door(kUnits), stocked({UnitKind::Full, UnitKind::Corner})}), kNo},
  };
}

std::vector<Row> pour_rows() {
  const char *dowels = "ask-dowel-places", *square = "ask-lines-square";
  return {
      {dowels, "no bars asked for", all({}), kNotRead},
      {dowels, "bars at 48 in", bars(), kYes},
      {dowels, "bars beside a door", all({bars(), door(kUnits)}), kYes},
      {square, "nothing taped", all({}), kNotRead},
      {square, "four sides: they hold no shape", sides(), kNotRead},
      {square, "four sides and one diagonal: nothing checks them", all({sides(), taped("A", "C", diagonal())}),
       kNotRead},
      {square, "sides and diagonals as planned", shape(), kYes},
      {square, "diagonals 6 in apart", shape(in(3)), kNo},
      {square, "a side read 3 in short of what the others say",
       all({taped("A", "B", kLong - in(3)), taped("B", "C", kShort), taped("C", "D", kLong), taped("D", "A", kShort),
            taped("A", "C", diagonal()), taped("B", "D", diagonal())}),
       kUnsure},
  };
}

std::vector<Row> first_course_rows() {
  const char *square = "ask-poured-square", *level = "ask-poured-level", *sit = "ask-walls-sit",
             *dowels = "ask-dowels-in-cells";
  const Length eighth = Length::sixteenths(2);
  return {
      {square, "nothing read", all({}), kNotRead},
      {square, "one line taped", taped("A", "B", kLong), kNotRead},
      {square, "taped, the rod not read", shape(), kYes},
      {square, "taped before the pour alone", all({shape(), of_lines()}), kNotRead},
      {square, "the rod read, nothing taped", rods({{}, {}, {}, {}}), kNotRead},
      {square, "diagonals 6 in apart", shape(in(3)), kNo},
      {level, "nothing read", all({}), kNotRead},
      {level, "taped, the rod not read", shape(), kNotRead},
      {level, "the rod at one corner", rods({{}}), kNotRead},
      {level, "level to an eighth", rods({{}, eighth, {}, eighth}), kYes},
      {level, "C 2 in low", rods({{}, {}, in(2), {}}), kNo},
      {level, "1 1/8 in low at C", rods({{}, {}, Length::sixteenths(18), {}}), kNo},
      {sit, "no edge read", all({}), kNotRead},
      {sit, "one edge read", edge("AB", ft(2), in(3)), kNotRead},
      {sit, "3 in beyond the face on every side", edges(in(3)), kYes},
      {sit, "2 in short of the face on every side", edges(-in(2)), kNo},
      {sit, "3 in beyond at AB, 1 in short at CD: it moves over",
       all({edge("AB", ft(2), in(3)), edge("AB", ft(22), in(3)), edge("BC", ft(2), in(2)), edge("BC", ft(14), in(2)),
            edge("CD", ft(2), -in(1)), edge("DA", ft(2), in(2))}),
       kYes},
      {dowels, "no bars asked for", all({}), kYes},
      {dowels, "none measured", bars(), kNotRead},
      {dowels, "three measured", all({bars(), dowels_read({}, 3)}), kNotRead},
      {dowels, "all measured in place", all({bars(), dowels_read({})}), kYes},
      {dowels, "all measured, 4 in along", all({bars(), dowels_read(in(4))}), kNo},
      {dowels, "three measured, 4 in along", all({bars(), dowels_read(in(4), 3)}), kNo},
  };
}

/// Every box of the list before the pour ticked, or all but one.
Change ticks(Change change, std::size_t left = 0) {
  return [change, left](Job& job) {
    change(job);
    const Answer answer = *solve(job, {});
    for (const PourToInspect& pour : answer.inspection) {
      for (const LineToTick& line : pour.lines) {
        LaidEntry entry;
        entry.id = "t" + std::to_string(job.laid.size());
        entry.looked_at = LookedAt{line.what, answer.building.walls[static_cast<std::size_t>(line.wall)].name,
                                   line.course, rounded_to(line.at, tape_step(job.tape))};
        job.laid.push_back(entry);
      }
    }
    job.laid.resize(job.laid.size() - left);
  };
}

std::vector<Row> later_rows() {
  const char *jambs = "ask-jambs-agree", *held = "ask-lintel-held", *cells = "ask-steel-cells",
             *heights = "ask-pour-heights", *cleanouts = "ask-cleanouts-open", *looked = "ask-looked-at",
             *bolts = "ask-bolts-grouted", *top = "ask-wall-came-to";
  const Length quarter = Length::sixteenths(4);
  return {
      {jambs, "no openings", all({}), kYes},
      {jambs, "a door, its lintel not said", door(), kNotRead},
      {jambs, "a door under units", door(kUnits), kYes},
      {jambs, "a door whose head is off the courses", opening(in(64), in(40), in(82), kUnits), kNo},
      {held, "no openings", all({}), kYes},
      {held, "a lintel in one piece", door(kPiece), kYes},
      {held, "a lintel of units", door(kUnits), kNotRead},
      {cells, "no bars asked for", all({}), kNotRead},
      {cells, "bars at 48 in", bars(), kYes},
      {heights, "pours not said", bars(), kNotRead},
      {heights, "two pours of 4 ft", all({bars(), pours({6, 12})}), kYes},
      {cleanouts, "pours not said", bars(), kNotRead},
      {cleanouts, "two pours of 4 ft: none is needed", all({bars(), pours({6, 12})}), kYes},
      {cleanouts, "one pour of 8 ft", all({bars(), pours({12})}), kNotRead},
      {cleanouts, "one pour of 8 ft, all ticked", ticks(all({bars(), pours({12})})), kYes},
      {looked, "nothing is grouted", all({}), kYes},
      {looked, "two pours, nothing ticked", all({bars(), pours({6, 12})}), kNotRead},
      {looked, "two pours, all but one box ticked", ticks(all({bars(), pours({6, 12})}), 1), kNotRead},
      {looked, "two pours, all ticked", ticks(all({bars(), pours({6, 12})})), kYes},
      {bolts, "no bond beam on top", all({}), kNotRead},
      {bolts, "a bond beam on top", all({bars(), beam(12)}), kNotRead},
      {top, "nothing checked", all({}), kNotRead},
      {top, "level", top_check(CheckKind::Level, {}), kYes},
      {top, "level and plumb", all({top_check(CheckKind::Level, {}), top_check(CheckKind::Plumb, {})}), kYes},
      {top, "1 in out of plumb in 10 ft", top_check(CheckKind::Plumb, in(1)), kNo},
      {top, "1/4 in out of plumb in 10 ft: at the limit", top_check(CheckKind::Plumb, quarter), kUnsure},
      {top, "level, and 1 in out of plumb", all({top_check(CheckKind::Level, {}), top_check(CheckKind::Plumb, in(1))}),
       kNo},
  };
}

std::vector<Row> rows() {
  std::vector<Row> all_rows;
  for (const auto& part : {order_rows(), pour_rows(), first_course_rows(), later_rows()})
    all_rows.insert(all_rows.end(), part.begin(), part.end());
  return all_rows;
}

TEST(Points, QuestionsAreAnsweredAsAMasonWouldAnswerThem) {
  ASSERT_GE(rows().size(), 60U);
  for (const Row& row : rows()) {
    SCOPED_TRACE(std::string(row.asks) + ": " + row.of);
    Job job = store();
    row.change(job);
    const auto answer = solve(job, Wishes{});
    ASSERT_TRUE(answer.has_value()) << answer.error().shown.front().code.text()
                                    << test::told(answer.error().shown.front().reason);
    int asked = 0;
    for (const PointAsAsked& point : answer->points) {
      for (const Question& question : point.questions) {
        if (question.asks != row.asks) continue;
        ++asked;
        EXPECT_EQ(question.answered, row.answered) << test::told(question.says);
        EXPECT_FALSE(test::told(question.says).empty());
      }
    }
    EXPECT_EQ(asked, 1);
  }
}

TEST(Points, APointIsDoneWhenEveryQuestionIsAnsweredYesAndTheJobStandsAtTheFirstThatIsNot) {
  for (const Row& row : rows()) {
    Job job = store();
    row.change(job);
    const Answer answer = *solve(job, Wishes{});
    ASSERT_EQ(answer.points.size(), 6U);
    bool before = true;
    for (const PointAsAsked& point : answer.points) {
      EXPECT_EQ(point.done, std::ranges::all_of(point.questions, [](const Question& one) {
                  return one.answered == kYes;
                }));  // none is chosen
      EXPECT_EQ(point.stands, before && !point.done) << row.of;
      before = before && point.done;
    }
  }
}

TEST(Points, EveryDrawingThatShowsAnAnswerIsThereAndNoLackIsToldTwice) {
  for (const Row& row : rows()) {
    Job job = store();
    row.change(job);
    const Answer answer = *solve(job, Wishes{});
    for (const PointAsAsked& point : answer.points) {
      std::set<std::string> told;
      for (const Question& question : point.questions) {
        told.insert(test::told(question.says));
        if (question.drawing.empty()) continue;
        EXPECT_TRUE(sheet::make_named_drawing(answer, question.drawing)) << question.asks << " " << question.drawing;
      }
      for (const Lack& lack : point.lacks) EXPECT_FALSE(told.contains(test::told(lack.says))) << test::told(lack.says);
    }
  }
}

/// What is asked for next at a point, in words.
std::vector<std::string> asked_next(const Answer& answer, HoldPoint point) {
  std::vector<std::string> texts;
  for (const NextReading& next : answer.points[static_cast<std::size_t>(point) - 1].to_read)
    texts.push_back(test::told(next.says));
  return texts;
}

TEST(Points, ReadingsAreAskedForOneAfterTheOtherAndNoneTwice) {
  Job job = store();
  bars()(job);
  std::vector<std::string> read;
  // Whoever reads each as it is asked for, as planned, comes to the end of it.
  for (int turn = 0; turn < 80; ++turn) {
    const Answer answer = *solve(job, Wishes{});
    const auto& next = answer.points[2].to_read;
    if (next.empty()) break;
    const NextReading& one = next.front();
    read.push_back(test::told(one.says));
    switch (one.what) {
      case NextReading::What::Tape:
        taped(one.from, one.to, rounded_to(one.expected, Length::sixteenths(1)))(job);
        break;
      case NextReading::What::Rod: entry(job).rod = RodReading{"1", one.station, ft(4), {}, {}, {}, {}, {}}; break;
      case NextReading::What::Edge: edge(one.on, one.at, in(2))(job); break;
      case NextReading::What::Dowel: entry(job).dowel = DowelReading{one.on, {}, one.at, one.expected}; break;
    }
  }
  const std::vector<std::string> first(read.begin(), read.begin() + 15);
  EXPECT_EQ(first, (std::vector<std::string>{
                       "Tape A to B", "Tape B to C", "Tape C to D", "Tape D to A", "Tape A to C", "Tape B to D",
                       "Rod on A", "Rod on B", "Rod on C", "Rod on D", "Slab's edge at AB, 2'-0\" from its start",
                       "Slab's edge at BC, 2'-0\" from its start", "Slab's edge at CD, 2'-0\" from its start",
                       "Slab's edge at DA, 2'-0\" from its start", "Slab's edge at AB, 21'-11 5/8\" from its start"}));
  EXPECT_EQ(std::set<std::string>(read.begin(), read.end()).size(), read.size());
  const Answer answer = *solve(job, Wishes{});
  EXPECT_TRUE(answer.points[2].done);
  EXPECT_EQ(read.size(), 15U + answer.dowels.size());
}

TEST(Points, ALineThatDoesNotFitIsAskedForAgainBeforeAnyOther) {
  Job job = store();
  all({taped("A", "B", kLong - in(3)), taped("B", "C", kShort), taped("C", "D", kLong), taped("D", "A", kShort),
       taped("A", "C", diagonal()), taped("B", "D", diagonal())})(job);
  const Answer answer = *solve(job, Wishes{});
  const auto& next = answer.points[1].to_read;
  ASSERT_FALSE(next.empty());
  EXPECT_TRUE(next.front().again);
  EXPECT_TRUE(asked_next(answer, HoldPoint::Pour).front().ends_with(" again"));
}

TEST(Points, LinesTapedBeforeThePourSayNothingOfWhatWasPoured) {
  Job job = store();
  shape()(job), of_lines()(job);
  const Answer before = *solve(job, Wishes{});
  EXPECT_TRUE(before.points[1].to_read.empty());
  EXPECT_EQ(asked_next(before, HoldPoint::FirstCourse).front(), "Tape A to B");
  // Poured an inch out of square: the lines no longer count.
  const std::size_t lines = job.readings.size();
  shape(in(3))(job);
  for (std::size_t k = lines; k < job.readings.size(); ++k) job.readings[k].tape->of = Taped::Poured;
  const Answer after = *solve(job, Wishes{});
  EXPECT_EQ(after.found.tape.lines.size(), job.readings.size() - lines);
  EXPECT_EQ(after.points[2].questions[0].answered, kNo);
}

Change chosen(BedRemedy remedy, std::string after) {
  return [=](Job& job) {
    if (!job.ground) job.ground.emplace();
    job.ground->bed_remedy = Chosen<BedRemedy>{remedy, after};
  };
}

std::vector<HoldPoint> points_told(const Answer& answer, std::string_view code) {
  std::vector<HoldPoint> points;
  for (const Finding& one : answer.findings) {
    if (one.code == code) points.push_back(one.hold_point);
  }
  return points;
}

TEST(Points, ARemedyThatIsChosenStandsForYesUntilAReadingSaysOtherwise) {
  Job job = store();
  all({shape(), rods({{}, {}, Length::sixteenths(12), {}})})(job);
  const auto question = [](const Answer& answer) { return answer.points[2].questions[1]; };
  EXPECT_TRUE(question(*solve(job, Wishes{})).chosen.empty());
  chosen(BedRemedy::RipUnits, job.readings.back().id)(job);
  const Answer good = *solve(job, Wishes{});
  EXPECT_EQ(question(good).answered, kNo);
  EXPECT_TRUE(test::told(question(good).chosen).starts_with("rip ")) << test::told(question(good).chosen);
  EXPECT_TRUE(points_told(good, "chosen-otherwise").empty());
  // The middle of AB, read later, stands an inch higher still: more is to be ripped than was said.
  entry(job).rod = RodReading{"one", "middle", ft(4) - in(1), "AB", {}, ft(12), {}, {}};
  const Answer changed = *solve(job, Wishes{});
  EXPECT_TRUE(question(changed).chosen.empty());
  EXPECT_EQ(points_told(changed, "chosen-otherwise"), (std::vector{HoldPoint::Pour, HoldPoint::FirstCourse}));
}

TEST(Points, GroutingTheFirstCourseIsChosenAndItsBedMayBeThicker) {
  Job job = store();
  all({shape(), rods({{}, {}, Length::sixteenths(12), {}})})(job);
  EXPECT_EQ(solve(job, Wishes{})->found.levels->bed->range.most, Length::sixteenths(12));
  chosen(BedRemedy::GroutFirstCourse, job.readings.back().id)(job);
  const Answer answer = *solve(job, Wishes{});
  EXPECT_EQ(answer.found.levels->bed->range.most, Length::sixteenths(20));
  EXPECT_EQ(answer.points[2].questions[1].answered, kYes);
  EXPECT_TRUE(answer.found.bed_chosen->against.empty());
}

TEST(Points, BarsMovedAfterTheirDowelsWereFoundAreToldAtBothPoints) {
  Job job = store();
  all({bars(), dowels_read({})})(job);
  EXPECT_TRUE(points_told(*solve(job, Wishes{}), "bar-without-dowel").empty());
  // A door's near jamb found a foot and a half off its plan, after the pour, takes its bar to where no dowel stands.
  Job moved = store();
  all({bars(), door(kUnits)})(moved);
  dowels_read({})(moved);
  for (const char* id : {"f", "f2"}) {
    LaidEntry found;
    found.id = id, found.found = FoundPlace{"AB", FoundWhat::NearJamb, "O1", in(64) - in(18)};
    moved.laid.push_back(found);
  }
  EXPECT_EQ(points_told(*solve(moved, Wishes{}), "bar-without-dowel"),
            (std::vector{HoldPoint::Pour, HoldPoint::FirstCourse}));
}

TEST(Points, TapingsThatMakeNoShapeAreNotSaidToBeMissing) {
  Job job = store();
  all({taped("A", "B", ft(40)), taped("B", "C", kShort), taped("A", "C", ft(10))})(job);
  const Answer answer = *solve(job, Wishes{});
  for (const PointAsAsked& point : answer.points) {
    for (const Question& question : point.questions) {
      if (question.asks != "ask-lines-square") continue;
      EXPECT_NE(question.answered, kYes);
      EXPECT_FALSE(test::told(question.says).contains("no readings")) << test::told(question.says);
    }
  }
}

TEST(Points, AnEmptyBuildingIsNeverSaidToLackNothing) {
  const Answer answer = *solve(store(), Wishes{});
  for (const PointAsAsked& point : answer.points) {
    if (point.hold_point == HoldPoint::Lintels) continue;  // it has no openings
    EXPECT_FALSE(point.done) << hold_point_name(point.hold_point);
  }
}

}  // namespace
}  // namespace stringcourse
