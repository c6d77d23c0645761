// The programme: a line for each day, and a plain chart of what waits for what.
#include <algorithm>

#include "answer/day_card.hpp"
#include "measure/digits.hpp"
#include "sheet/list_sheet.hpp"
#include "sheet/registry.hpp"

namespace stringcourse::sheet {
namespace {

const Programme& programme_of(const Context& context) { return context.answer.programme; }

std::string day_text(const Context& context, const WorkDay& day) {
  const std::string number = words::fill_in(context.words.order.chart_day, {number_text(day.number)});
  return day.date ? number + "\n" + date_text(*day.date) : number;
}

std::string works_text(const Context& context, const WorkDay& day) {
  std::vector<std::string> works;
  for (const std::int32_t task : day.tasks) works.push_back(context.told(task_said_on(context.answer, day, task)));
  const WeatherDay* weather = weather_on(context.answer, day.date);
  const Fact warned = weather == nullptr ? Fact() : weather_said(*weather, context.tape());
  for (const std::vector<Fact>& more : {stacked_said(context.answer, day), steel_said(context.answer, day)}) {
    for (const Fact& one : more) works.push_back(context.told(one));
  }
  if (!warned.empty()) works.push_back(context.told(warned));
  return joined(works, ". ");
}

std::string blocks_text(const Context& context, const WorkDay& day) {
  const words::SheetWords& words = context.words;
  if (day.laid == 0) return {};
  std::vector<std::string> kinds;
  for (const supply::UnitCount& unit : day.units) {
    const std::string name(words.kinds[static_cast<std::size_t>(unit.kind)]);
    if (unit.whole > 0) kinds.push_back(words::fill_in(words.order.kinds_laid, {number_text(unit.whole), name}));
    if (unit.pieces > 0) kinds.push_back(words::fill_in(words.order.cut_laid, {number_text(unit.pieces), name}));
  }
  return number_text(day.laid) + ": " + joined(kinds, ", ");
}

std::string reached_text(const Context& context, const Reached& reached, const std::string& names) {
  const words::OrderWords& words = context.words.order;
  std::string text =
      reached.course == 0
          ? words::fill_in(words.reached_none, {names})
          : words::fill_in(words.reached, {names, number_text(reached.course), height_text(context, reached.top)});
  if (const std::int32_t filled = std::min(reached.grouted, reached.course); filled > 0)
    text += words::fill_in(words.reached_filled, {number_text(filled)});
  if (reached.begun > reached.course)
    text += words::fill_in(words.reached_begun, {number_text(reached.begun), height_text(context, reached.begun_top)});
  return text;
}

/// Walls alike in one: "AB, BC: course 3, 2'-0\" high".
std::string tonight_text(const Context& context, const WorkDay& day) {
  std::vector<std::string> lines;
  std::vector<bool> done(day.reached.size());
  for (std::size_t k = 0; k < day.reached.size(); ++k) {
    const Reached& reached = day.reached[k];
    if (done[k] || reached.begun == 0) continue;
    std::vector<std::string> names;
    for (std::size_t other = k; other < day.reached.size(); ++other) {
      if (day.reached[other].course != reached.course || day.reached[other].begun != reached.begun) continue;
      done[other] = true;
      names.push_back(context.wall(day.reached[other].wall).name);
    }
    lines.push_back(reached_text(context, reached, joined(names, ", ")));
  }
  if (!day.tall.empty()) lines.push_back(context.told(tall_said(context.answer, day)) + ".");
  if (!day.brace.empty()) lines.push_back(context.told(brace_said(context.answer, day)) + ".");
  return joined(lines, "\n");
}

std::string batches_text(const words::OrderWords& words, std::int64_t batches) {
  if (batches == 0) return {};
  return words::fill_in(batches == 1 ? words.batch : words.batches, {number_text(batches)});
}

/// Where the job says who lays, or when; and something is left.
bool is_planned(const Context& context) {
  return context.answer.job.days.has_value() && !programme_of(context).days.empty();
}

/// "By the log 26 of 520 blocks are laid, ..."
std::string done_note(const Context& context) {
  return programme_of(context).done ? context.told(done_said(context.answer)) + ". " : "";
}

Table days_table(const Context& context) {
  const words::OrderWords& words = context.words.order;
  Table table = new_table(
      context.page.list.width(), words.title_days,
      {{"", 3}, {words.day, 10}, {words.work, 31}, {words.blocks, 17}, {words.mortar, 9}, {words.tonight, 30}},
      kSmallText);
  table.pencil_boxes = true;
  for (const WorkDay& day : programme_of(context).days) {
    table.add_row({"", day_text(context, day), works_text(context, day), blocks_text(context, day),
                   batches_text(words, day.batches), tonight_text(context, day)});
  }
  return table;
}

/// "Done by ... in ... of ... programmes drawn. ..."
std::string chance_note(const Context& context) {
  const std::optional<FinishChance>& chance = programme_of(context).chance;
  if (!chance) return {};
  const bool assumed = chance->spread_by == UnsureBy::Assumed || chance->doubt_by == UnsureBy::Assumed;
  const std::string cited = assumed ? " " + words::cited("pace-unsure", context.reader()) + "." : "";
  return context.told(finish_said(*chance)) + ". " + context.told(unsure_said(*chance)) + "." + cited + " ";
}

/// The rule behind "over 8 ft tonight"; empty: nothing stands so high.
std::string tall_note(const Context& context) {
  const bool tall =
      std::ranges::any_of(programme_of(context).days, [](const WorkDay& day) { return !day.tall.empty(); });
  return tall ? " " + words::cited("brace-over-8-ft", context.reader()) + "." : "";
}

std::string days_note(const Context& context) {
  const words::OrderWords& words = context.words.order;
  const Programme& programme = programme_of(context);
  const std::string crew(programme.crew == Crew::Beginners ? words.beginners : words.mason);
  const std::string_view paces[] = {words.pace_assumed, words.pace_logged, words.pace_stated};
  std::string pace = words::fill_in(paces[static_cast<std::size_t>(programme.pace_from)],
                                    {number_text(programme.pairs), crew, number_text(programme.units_per_hour)});
  if (programme.own_pace) pace += " " + context.told(own_pace_said(programme)) + ".";
  const std::string rise =
      programme.rise_stated ? std::string(words.stated) : words::cited("rise-a-day", context.reader());
  const std::string life =
      programme.batch.stated ? std::string(words.stated) : words::cited("mortar-life", context.reader());
  return done_note(context) + chance_note(context) +
         words::fill_in(words.note_days,
                        {pace, context.told(batch_said(programme.batch)) + ".", number_text(programme.most_courses),
                         rise, number_text(programme.batch.minutes), life}) +
         " " + words::cited("work-times", context.reader()) + ". " +
         words::cited("cure-before-pour", context.reader()) + "." + tall_note(context);
}

// The chart.

/// Tasks that share a line of the chart.
struct ChartLine {
  std::string name;
  std::vector<std::size_t> tasks;
};

/// What tells tasks of one work apart: the course, the opening, the pour.
std::string which(const Context& context, const Task& task) {
  if (task.work == WorkKind::Course) return number_text(task.course);
  if (task.work == WorkKind::Lintels) return short_name(context.names, opening_of(context.building, task.opening).name);
  return number_text(task.pour + 1);
}

std::string line_name(const Context& context, const Task& task) {
  return words::fill_in(context.words.order.chart_works[static_cast<std::size_t>(task.work)], {which(context, task)});
}

std::vector<ChartLine> chart_lines(const Context& context) {
  std::vector<ChartLine> lines;
  const std::vector<Task>& tasks = programme_of(context).tasks;
  for (std::size_t k = 0; k < tasks.size(); ++k) {
    const std::string name = line_name(context, tasks[k]);
    const auto same = std::ranges::find(lines, name, &ChartLine::name);
    if (same == lines.end()) lines.push_back({name, {k}});
    else same->tasks.push_back(k);
  }
  return lines;
}

constexpr Micrometres kSmallHeights[] = {kSmallText};
constexpr Micrometres kLinePitch = 5'000, kNames = 62'000, kChartHead = 10'000, kNoteRoom = 8'000;

std::size_t lines_on_sheet(const Context& context) {
  return static_cast<std::size_t>((context.page.list.height() - kChartHead - kNoteRoom - 4'000) / kLinePitch);
}

std::vector<PlannedSheet> chart_sheets(const Context& context) {
  const std::size_t count = chart_lines(context).size(), most = lines_on_sheet(context);
  const std::size_t sheets = (count + most - 1) / most;
  std::vector<PlannedSheet> planned = numbered_sheets(context, context.words.order.title_chart, std::nullopt, sheets);
  for (std::size_t k = 0; k < sheets; ++k) {
    planned[k].first_line = k * most;
    planned[k].last_line = std::min(count, (k + 1) * most);
  }
  return planned;
}

/// Where a minute stands.
struct TimeLine {
  Micrometres left, width;
  std::int64_t minutes;
  Micrometres at(std::int64_t minute) const {
    return left + static_cast<Micrometres>(width * minute / std::max<std::int64_t>(1, minutes));
  }
};

void draw_line(Pad& pad, const Context& context, const ChartLine& line, const TimeLine& time, Micrometres middle) {
  for (const std::size_t index : line.tasks) {
    const Task& task = programme_of(context).tasks[index];
    const Fill fill = is_wait(task.work) ? Fill::Hatch45 : task.times.critical() ? Fill::Grey : Fill::None;
    pad.box({time.at(task.times.start), middle - 1'400, time.at(task.times.finish), middle + 1'400}, {}, fill);
    if (!task.times.critical())
      pad.line({time.at(task.times.finish), middle}, {time.at(task.times.latest_finish), middle});
  }
}

Group draw_chart(const Context& context, const PlannedSheet& sheet) {
  const words::OrderWords& words = context.words.order;
  const Area room = context.page.list;
  const Programme& programme = programme_of(context);
  const auto days = static_cast<std::int64_t>(programme.days.size());
  const TimeLine time{room.left + kNames, room.width() - kNames - 2'000, days * programme.minutes_a_day};
  const std::vector<ChartLine> lines = chart_lines(context);
  Pad pad(Role::Figure, sheet.title);
  const Micrometres top = room.top - kChartHead;
  const auto count = static_cast<Micrometres>(sheet.last_line - sheet.first_line);
  const std::int64_t step = std::max<std::int64_t>(1, (days + 23) / 24);
  for (std::int64_t day = 0; day <= days; ++day) {
    if (day % step != 0 && day != days) continue;
    const Micrometres x = time.at(day * programme.minutes_a_day);
    pad.line({x, top}, {x, top - count * kLinePitch}, {Pen::Thin, Dash::Solid, Ink::Black});
    if (day < days && (days - day >= step || day + step >= days))
      pad.write({x + 800, top + 1'500}, number_text(day + first_number(programme)), {kSmallText});
  }
  pad.write({room.left, top + 1'500}, std::string(words.day), {kSmallText, Weight::Bold});
  for (std::size_t k = sheet.first_line; k < sheet.last_line; ++k) {
    const Micrometres middle = top - kLinePitch * static_cast<Micrometres>(k - sheet.first_line) - kLinePitch / 2;
    write_setting(pad, {room.left, middle},
                  fitting_name(context, lines[k].name, {kNames - 2'000, kLinePitch}, {kSmallText}, kSmallHeights));
    draw_line(pad, context, lines[k], time, middle);
  }
  write_paragraph(pad, {room.left, room.bottom + kNoteRoom - 2'000}, room.width(), std::string(words.chart_note),
                  {kSmallText});
  return std::move(pad).take();
}

}  // namespace

constinit const SheetKind kDaysSheet{
    .name = "days",
    .purpose = &words::SheetWords::purpose_days,
    .caution = {"limited-access-zone"},
    .applies = is_planned,
    .table = days_table,
    .made_note = days_note,
};

constinit const SheetKind kDaysChartSheet{
    .name = "days-chart",
    .purpose = &words::SheetWords::purpose_chart,
    .caution = {"limited-access-zone"},
    .applies = is_planned,
    .sheets = chart_sheets,
    .draw = draw_chart,
};

}  // namespace stringcourse::sheet
