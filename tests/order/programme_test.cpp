// The programme of whole buildings: what must not come before what, and that every block is laid on one day.
#include "document/calendar.hpp"
#include "document/order_csv.hpp"
#include "measure/date.hpp"
#include "order/examples.hpp"

namespace stringcourse::order_test {
namespace {

std::vector<Job> planned_jobs() {
  std::vector<Job> jobs;
  std::mt19937 dice(5);
  for (const char* name : kExamples) {
    jobs.push_back(example_job(name));
    for (int k = 0; k < 4; ++k) {
      Job job = example_job(name);
      job.days.emplace();
      job.days->crew = k % 2 == 0 ? Crew::Mason : Crew::Beginners;
      job.days->pairs = 1 + static_cast<int>(dice() % 3);
      job.days->hours = 4 + static_cast<int>(dice() % 6);
      job.days->most_courses = 1 + static_cast<int>(dice() % 6);
      const int courses = static_cast<int>(job.heights.courses.value_or(4));
      if (k > 1 && courses > 4) job.steel.pour_tops = {courses / 2};
      if (solve(job, {.offers = false})) jobs.push_back(job);
    }
  }
  return jobs;
}

/// The minute by which a task has laid its piece number `k`.
std::int64_t laid_by(const Task& task, std::size_t k) {
  const auto count = static_cast<std::int64_t>(task.pieces.size());
  const std::int64_t minutes = task.times.finish - task.times.start;
  return task.times.start + (minutes * (static_cast<std::int64_t>(k) + 1) + count - 1) / count;
}

TEST(ProgrammeOfABuilding, KeepsTheLawsOfWhatComesBeforeWhat) {
  for (const Job& job : planned_jobs()) {
    const Answer answer = solved(job);
    const Programme& programme = answer.programme;
    const std::int64_t day = programme.minutes_a_day;
    ASSERT_FALSE(programme.tasks.empty());
    for (const supply::Link& link : programme.links) {
      const auto& before = programme.tasks[static_cast<std::size_t>(link.before)].times;
      const auto& after = programme.tasks[static_cast<std::size_t>(link.after)].times;
      EXPECT_LE(before.finish, after.start);
      EXPECT_LE(before.latest_finish, after.latest_start);
      if (link.next_day) EXPECT_LE((before.finish + day - 1) / day * day, after.start);
    }
    std::vector<std::int64_t> begun(answer.layout.pieces.size(), -1), done(answer.layout.pieces.size(), -1);
    for (const Task& task : programme.tasks) {
      for (std::size_t k = 0; k < task.pieces.size(); ++k) {
        EXPECT_EQ(done[task.pieces[k]], -1) << "laid twice";
        begun[task.pieces[k]] = task.times.start, done[task.pieces[k]] = laid_by(task, k);
      }
    }
    if (programme.done) {  // before the first minute
      for (const Task& task : programme.done->tasks) {
        for (const std::uint32_t piece : task.pieces) {
          EXPECT_EQ(done[piece], -1) << "laid twice";
          begun[piece] = done[piece] = 0;
        }
      }
    }
    EXPECT_EQ(std::ranges::count(done, -1), 0) << "never laid";
    // By wall and course: when it was begun, when it was done.
    std::map<std::pair<int, int>, std::pair<std::int64_t, std::int64_t>> courses;
    for (const auto& run : answer.layout.runs) {
      for (std::uint32_t k = run.first_piece; k < run.first_piece + run.piece_count; ++k) {
        auto [at, fresh] = courses.try_emplace({run.wall, run.course}, begun[k], done[k]);
        at->second = {std::min(at->second.first, begun[k]), std::max(at->second.second, done[k])};
      }
    }
    for (const auto& [key, times] : courses) {  // no wall rises by more than is allowed in any day
      const auto below = courses.find({key.first, key.second - static_cast<int>(programme.most_courses)});
      if (below == courses.end() || times.second == 0 || below->second.second == 0) continue;
      EXPECT_GT((times.second - 1) / day, (below->second.second - 1) / day) << key.second;
    }
    for (const Task& task : programme.tasks) {
      if (task.work == WorkKind::GroutLift) {  // the whole pour stands, and has set
        const supply::GroutPour& pour = answer.tallies.grout[static_cast<std::size_t>(task.pour)];
        for (const auto& [key, times] : courses) {
          if (key.second <= pour.last_course) EXPECT_LT(times.second, task.times.start);
          else EXPECT_GE(times.first, task.times.finish);
        }
      }
      if (task.work == WorkKind::Lintels) {
        const supply::Bridged& over = *std::ranges::find(answer.bridged, task.opening, &supply::Bridged::opening);
        const int wall = answer.building.openings[static_cast<std::size_t>(task.opening)].wall;
        const auto lintel = courses.find({wall, over.first_course});
        ASSERT_NE(lintel, courses.end());
        EXPECT_GE(lintel->second.second, task.times.finish);
      }
    }
  }
}

TEST(ProgrammeOfABuilding, EveryBlockIsLaidOnOneDay) {
  for (const Job& job : planned_jobs()) {
    const Answer answer = solved(job);
    std::map<std::pair<int, UnitKind>, std::pair<std::int64_t, std::int64_t>> laid;
    std::int64_t all = 0;
    if (answer.programme.done) {
      for (const Task& task : answer.programme.done->tasks) {
        for (const std::uint32_t index : task.pieces) {
          const Piece& piece = answer.layout.pieces[index];
          auto& [whole, cut] = laid[{0, piece.kind}];
          ++(piece.cut == CutEnd::None ? whole : cut), ++all;
        }
      }
    }
    for (const WorkDay& day : answer.programme.days) {
      std::int64_t of_day = 0;
      for (const supply::UnitCount& unit : day.units) {
        laid[{unit.series, unit.kind}].first += unit.whole;
        laid[{unit.series, unit.kind}].second += unit.pieces;
        of_day += unit.whole + unit.pieces;
      }
      EXPECT_EQ(of_day, day.laid);
      EXPECT_LE(day.laid, day.batches * answer.programme.batch.blocks);
      all += of_day;
    }
    EXPECT_EQ(all, answer.tallies.units.pieces);
    for (const supply::UnitCount& unit : answer.tallies.units.units)
      EXPECT_EQ(laid[std::pair(unit.series, unit.kind)], std::pair(unit.whole, unit.pieces));
    for (const Reached& reached : answer.programme.days.back().reached)
      EXPECT_EQ(reached.course, static_cast<std::int32_t>(answer.building.courses.size()));
  }
}

TEST(ProgrammeOfABuilding, ABatchIsLaidWithinItsLifeAtThePace) {
  // The reference's check: 35 blocks to a bag at 16.4 an hour last 2.14 h; at 7 an hour 5 h, so part-bags are mixed.
  Job job = example_job("kiln-house");
  job.days.emplace();
  for (const int pace : {3, 6, 15, 60}) {
    job.days->units_per_hour = pace;
    const Answer answer = solved(job);
    const MortarBatch& batch = answer.programme.batch;
    EXPECT_LE(batch.blocks * 60, pace * batch.minutes);
    EXPECT_GT((batch.blocks + 1) * 60, pace * batch.minutes);
  }
}

TEST(DatesOfTheCalendar, AgreeWithAPlainCountOfDays) {
  // A twin that counts day by day from 1 January 1970, a Thursday.
  int year = 1970, month = 1, day = 1;
  const auto days_in = [](int y, int m) {
    const bool leap = (y % 4 == 0 && y % 100 != 0) || y % 400 == 0;
    constexpr int kDays[] = {31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31};
    return m == 2 && leap ? 29 : kDays[m - 1];
  };
  for (std::int64_t count = 0; year < 2200; ++count) {
    char text[16];
    std::snprintf(text, sizeof text, "%04d-%02d-%02d", year, month, day);
    ASSERT_EQ(date_text(Date{count}), text);
    ASSERT_EQ(read_date(text), Date{count});
    ASSERT_EQ(Date{count}.weekday(), (count + 3) % 7);
    if (++day > days_in(year, month)) {
      day = 1;
      if (++month > 12) month = 1, ++year;
    }
  }
  for (const char* text :
       {"2027-02-29", "2027-13-01", "2027-5-3", "03.05.2027", "1969-12-31", "2027-00-10", "20270503"})
    EXPECT_FALSE(read_date(text)) << text;
}

TEST(DatesOfAProgramme, AreWorkedDaysOnly) {
  Job job = example_job("wash-stand");
  job.days.emplace();
  job.days->start = "2027-05-01";  // a Saturday
  job.days->days_off = {"2027-05-04", "2027-05-31"};
  const Answer answer = solved(job);
  ASSERT_GE(answer.programme.days.size(), 5U);
  EXPECT_EQ(date_text(*answer.programme.days[0].date), "2027-05-03");
  EXPECT_EQ(date_text(*answer.programme.days[1].date), "2027-05-05");
  EXPECT_EQ(date_text(*answer.programme.days[3].date), "2027-05-07");
  EXPECT_EQ(date_text(*answer.programme.days[4].date), "2027-05-10");
}

std::vector<std::string> lines_of(const std::string& text) {
  std::vector<std::string> lines;
  for (std::size_t at = 0; at < text.size();) {
    const std::size_t end = text.find("\r\n", at);
    EXPECT_NE(end, std::string::npos) << "a line without CR LF";
    if (end == std::string::npos) break;
    lines.push_back(text.substr(at, end - at));
    at = end + 2;
  }
  return lines;
}

TEST(CalendarText, IsFoldedEscapedAndHasAnEventForEachDay) {
  Job job = example_job("kiln-house");
  job.name = "Töpferei, Haus; eins";
  EXPECT_EQ(calendar_text(solved(job)), "");
  job.days.emplace();
  job.days->start = "2027-05-03";
  const Answer answer = solved(job);
  const std::string text = calendar_text(answer);
  std::size_t events = 0;
  std::set<std::string> ids;
  std::string unfolded;
  for (const std::string& line : lines_of(text)) {
    EXPECT_LE(line.size(), 75U);
    if (line == "BEGIN:VEVENT") ++events;
    if (line.starts_with("UID:")) ids.insert(line);
    unfolded += line.starts_with(' ') ? line.substr(1) : "\n" + line;
  }
  EXPECT_EQ(events, answer.programme.days.size());
  EXPECT_EQ(ids.size(), events);
  EXPECT_TRUE(unfolded.contains("\nSUMMARY:Töpferei\\, Haus\\; eins: day 1"));
  EXPECT_TRUE(unfolded.contains("\nDTSTART;VALUE=DATE:20270503\nDTEND;VALUE=DATE:20270504\n"));
}

/// A reader of RFC 4180 of its own.
std::vector<std::vector<std::string>> read_csv(const std::string& text) {
  std::vector<std::vector<std::string>> rows(1, std::vector<std::string>(1));
  bool quoted = false;
  for (std::size_t k = 0; k < text.size(); ++k) {
    std::string& cell = rows.back().back();
    if (quoted && text[k] == '"' && k + 1 < text.size() && text[k + 1] == '"') cell += text[k++];
    else if (text[k] == '"') quoted = !quoted;
    else if (!quoted && text[k] == ',') rows.back().emplace_back();
    else if (!quoted && text[k] == '\r' && text[k + 1] == '\n') rows.emplace_back(1), ++k;
    else cell += text[k];
  }
  rows.pop_back();
  return rows;
}

TEST(OrderAsCsv, IsReadBackRowForRow) {
  Job job = example_job("kiln-house");
  job.order.emplace();
  job.order->kinds = {{UnitKind::Full, std::nullopt, 90}};
  const Answer answer = solved(job);
  const auto rows = read_csv(order_csv(answer));
  ASSERT_EQ(rows.size(), answer.order.articles.size() + 1);
  for (std::size_t k = 0; k < rows.size(); ++k) {
    ASSERT_EQ(rows[k].size(), rows.front().size());
    if (k == 0) continue;
    const Article& article = answer.order.articles[k - 1];
    EXPECT_EQ(rows[k][0], article.id);
    EXPECT_EQ(rows[k][4], article.told ? std::to_string(article.most) : "");
    EXPECT_EQ(rows[k][9], article.on_pallet ? std::to_string(*article.on_pallet) : "");
    for (const std::string& cell : rows[k])
      EXPECT_FALSE(!cell.empty() && std::string("=+-@").contains(cell.front())) << cell;
  }
}

}  // namespace
}  // namespace stringcourse::order_test
