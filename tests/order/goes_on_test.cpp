// The programme goes on from what the laid log tells: what is behind is planned no more, waits run on, dates follow.
#include "document/calendar.hpp"
#include "order/examples.hpp"

namespace stringcourse::order_test {
namespace {

LaidEntry laid(const std::string& id, const std::string& on, int course, const std::string& when) {
  LaidEntry entry;
  entry.id = id, entry.when = when;
  entry.laid.emplace(CourseLaid{on, course});
  return entry;
}

/// The kiln house from Monday, 3 May 2027 on; nobody works on 31 May.
Job house() {
  Job job = example_job("kiln-house");
  job.days.emplace();
  job.days->start = "2027-05-03", job.days->finish_by = "2027-07-30";
  job.days->days_off = {"2027-05-31"};
  return job;
}

/// Every course up to `course` laid on one day.
void lay_all(Job& job, int course, const std::string& when) {
  for (const Wall& wall : solved(house()).building.walls) {
    for (int k = 1; k <= course; ++k) job.laid.push_back(laid(wall.name + std::to_string(k), wall.name, k, when));
  }
}

void fill_all(Job& job, const std::string& when) {
  for (const LiftCard& card : solved(house()).pour_cards) {
    for (const GroutStep& step : card.steps) {
      LaidEntry entry;
      entry.id = "g" + std::to_string(job.laid.size()), entry.when = when;
      entry.grouted.emplace(
          Grouted{solved(house()).building.walls[static_cast<std::size_t>(step.wall)].name, step.course, step.at, {}});
      job.laid.push_back(entry);
    }
  }
}

std::string first_date(const Answer& answer) { return date_text(*answer.programme.days.front().date); }

const WorkDay& day_of(const Answer& answer, WorkKind work) {
  return *std::ranges::find_if(answer.programme.days, [&](const WorkDay& day) {
    return std::ranges::any_of(day.tasks, [&](std::int32_t task) {
      return answer.programme.tasks[static_cast<std::size_t>(task)].work == work;
    });
  });
}

TEST(TheProgrammeGoesOn, OnTheWorkingDayAfterTheNewestEntry) {
  Job job = house();
  lay_all(job, 1, "2027-05-06 16:30");  // the Thursday of the first week
  Answer answer = solved(job);
  EXPECT_EQ(first_date(answer), "2027-05-07");
  EXPECT_EQ(answer.programme.days.front().number, 5);
  job.laid.back().when = "2027-05-07 10:00";
  answer = solved(job);
  EXPECT_EQ(first_date(answer), "2027-05-10");
  EXPECT_EQ(answer.programme.days.front().number, 6);
  job.days->log_until = "2027-05-30";  // a Sunday; the Monday is a day off
  answer = solved(job);
  EXPECT_EQ(first_date(answer), "2027-06-01");
  EXPECT_EQ(answer.programme.days.front().number, 21);
  job.days->start.reset(), job.days->finish_by.reset();
  EXPECT_EQ(first_date(solved(job)), "2027-06-01");
  EXPECT_EQ(solved(job).programme.days.front().number, 1);
}

TEST(TheProgrammeGoesOn, WithNothingDoneItIsTheWholePlanLater) {
  Job late = house(), fresh = house();
  late.days->log_until = "2027-05-12";
  fresh.days->start = "2027-05-13";
  const Programme a = solved(late).programme, b = solved(fresh).programme;
  ASSERT_EQ(a.days.size(), b.days.size());
  for (std::size_t k = 0; k < a.days.size(); ++k) {
    EXPECT_EQ(a.days[k].date, b.days[k].date);
    EXPECT_EQ(a.days[k].tasks, b.days[k].tasks);
    EXPECT_EQ(a.days[k].number, b.days[k].number + 8);
  }
  ASSERT_TRUE(a.chance && b.chance);
  EXPECT_EQ(a.chance->done, b.chance->done);
}

TEST(TheProgrammeGoesOn, WhatIsLaidIsPlannedNoMore) {
  Job job = house();
  const Answer whole = solved(job);
  lay_all(job, 3, "2027-05-14 15:00");
  const Answer answer = solved(job);
  std::int64_t laid_before = 0, ahead = 0;
  for (const stringcourse::Run& run : whole.layout.runs) laid_before += run.course <= 3 ? run.piece_count : 0;
  for (const WorkDay& day : answer.programme.days) ahead += day.laid;
  EXPECT_EQ(answer.programme.done->units, laid_before);
  EXPECT_EQ(ahead, answer.tallies.units.pieces - laid_before);
  for (const Task& task : answer.programme.tasks) {
    EXPECT_NE(task.work, WorkKind::Footing);
    EXPECT_FALSE(task.work == WorkKind::Course && task.course <= 3);
  }
  for (const Reached& reached : answer.programme.days.front().reached) EXPECT_GE(reached.course, 3);
  LaidEntry strike;  // taken back: one wall's third course is ahead again
  strike.id = "s", strike.when = "2027-05-14 15:10", strike.strike = job.laid[2].id;
  job.laid.push_back(strike);
  const auto is_it = [](const Task& task) { return task.work == WorkKind::Course && task.course == 3; };
  EXPECT_EQ(std::ranges::count_if(solved(job).programme.tasks, is_it), 1);
}

/// Masonry over 5 ft sets three days before its pour (rule "cure-before-pour"), from Monday's evening to Friday.
TEST(TheProgrammeGoesOn, AWaitRunsOnWhateverIsEnteredMeanwhile) {
  Job job = house();
  job.steel.pour_tops.clear();
  lay_all(job, static_cast<int>(solved(job).building.courses.size()), "2027-05-10 17:00");
  ASSERT_EQ(solved(job).tallies.grout.size(), 1U);
  for (const char* evening : {"2027-05-10", "2027-05-11", "2027-05-12", "2027-05-13"}) {
    job.days->log_until = evening;
    const Answer answer = solved(job);
    EXPECT_EQ(date_text(*day_of(answer, WorkKind::GroutLift).date), "2027-05-14") << evening;
  }
  job.days->log_until.reset();
  LaidEntry remark;
  remark.id = "r", remark.when = "2027-05-12 09:00", remark.note = "fogged";
  remark.remark.emplace(Remark{job.laid.front().laid->on, 1});
  job.laid.push_back(remark);
  EXPECT_EQ(date_text(*day_of(solved(job), WorkKind::GroutLift).date), "2027-05-14");
}

Reading read_on(const std::string& id, const std::string& when) {
  Reading reading;
  reading.id = id, reading.when = when;
  return reading;
}

std::set<WorkKind> works_ahead(const Answer& answer) {
  std::set<WorkKind> works;
  for (const Task& task : answer.programme.tasks) works.insert(task.work);
  return works;
}

/// The footing sets three days (rule "work-times"): read on a Thursday, on Friday, Monday and Tuesday.
TEST(TheProgrammeGoesOn, FromTheFootingOnceItIsRead) {
  Job job = house();
  Reading taped = read_on("t", "2027-05-04 10:00");
  taped.tape.emplace(TapeReading{"A", "B", Length::feet(40), Taped::Lines});
  job.readings.push_back(taped);
  EXPECT_FALSE(solved(job).programme.done.has_value()) << "lines are strung before anything is poured";
  Reading edge = read_on("e", "2027-05-06 15:00");
  edge.edge.emplace(EdgeReading{"AB", {}, Length::feet(4), Length::inches(4)});
  job.readings.push_back(edge);
  Answer answer = solved(job);
  EXPECT_EQ(first_date(answer), "2027-05-07");
  EXPECT_EQ(answer.programme.days.front().number, 5);
  EXPECT_FALSE(works_ahead(answer).contains(WorkKind::Boards) || works_ahead(answer).contains(WorkKind::Footing));
  EXPECT_EQ(date_text(*day_of(answer, WorkKind::Lines).date), "2027-05-12");
  Reading rod = read_on("r", "2027-05-11 08:00");
  rod.rod.emplace(RodReading{"1", "A", Length::inches(50), {}, {}, {}, {}, {}});
  job.readings.push_back(rod);
  answer = solved(job);
  EXPECT_EQ(first_date(answer), "2027-05-12") << "the newest reading's evening";
  EXPECT_FALSE(works_ahead(answer).contains(WorkKind::FootingCure));
  EXPECT_EQ(answer.programme.done->units, 0);
  EXPECT_EQ(done_said(answer).says, "done-poured");
  for (const char* id : {"e", "r"}) {
    Reading strike = read_on(std::string("s") + id, "2027-05-11 09:00");
    strike.strike = id;
    job.readings.push_back(strike);
  }
  EXPECT_TRUE(works_ahead(solved(job)).contains(WorkKind::Footing)) << "the readings are taken back";
}

/// A block that is read on it says that the footing has set.
TEST(TheProgrammeGoesOn, WithTheLinesOnceABlockIsReadAtItsMark) {
  Job job = house();
  LaidEntry mark;
  mark.id = "m", mark.when = "2027-05-06 15:00";
  mark.mark.emplace(MarkReading{"AB", 1, Length::sixty_fourths(64 * 47 + 40), Length(), {}});
  job.laid.push_back(mark);
  const Answer answer = solved(job);
  EXPECT_EQ(date_text(*day_of(answer, WorkKind::Lines).date), "2027-05-07");
  EXPECT_FALSE(works_ahead(answer).contains(WorkKind::FootingCure));
}

TEST(TheProgrammeGoesOn, UntilNothingIsLeft) {
  Job job = house();
  lay_all(job, static_cast<int>(solved(job).building.courses.size()), "2027-05-10 17:00");
  fill_all(job, "2027-05-14 11:00");
  const Answer answer = solved(job);
  EXPECT_TRUE(answer.programme.tasks.empty());
  EXPECT_TRUE(answer.programme.days.empty());
  EXPECT_FALSE(answer.programme.chance.has_value());
  EXPECT_EQ(calendar_text(answer), "");
  EXPECT_EQ(answer.programme.done->units, answer.tallies.units.pieces);
}

TEST(TheProgrammeGoesOn, WithoutDatesWhereNobodySaysWhen) {
  Job job = house();
  lay_all(job, 1, "");
  const Answer answer = solved(job);
  ASSERT_FALSE(answer.programme.days.empty());
  for (const WorkDay& day : answer.programme.days) EXPECT_FALSE(day.date.has_value());
  EXPECT_FALSE(answer.programme.chance.has_value());
}

/// What is wanted for work that has begun is wanted on the first day ahead.
TEST(TheProgrammeGoesOn, WhatComesForWorkThatHasBegunComesAtOnce) {
  Job job = house();
  lay_all(job, 2, "2027-05-11 12:00");
  const Answer answer = solved(job);
  for (const Drop& drop : answer.site.drops) {
    ASSERT_TRUE(drop.day.date.has_value());
    EXPECT_GE(date_text(*drop.day.date), "2027-05-12");
    if (drop.point <= HoldPoint::FirstCourse) EXPECT_EQ(date_text(*drop.day.date), "2027-05-12");
  }
}

}  // namespace
}  // namespace stringcourse::order_test
