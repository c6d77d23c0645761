#pragma once
// Field tables of the order list and of the programme.
#include <optional>

#include "answer/day_card.hpp"
#include "answer/order_groups.hpp"
#include "document/calendar.hpp"
#include "document/order_csv.hpp"
#include "document/shown_lists.hpp"

namespace stringcourse::document {

template <>
struct Shown<Figure> {
  static constexpr std::string_view name = "figure";
  static constexpr std::string_view description = "One way in which an article is reckoned, and its source.";
  static constexpr auto fields = std::tuple{
      shown("rule", &Figure::rule),
      shown("says", [](const View& view, const Figure& of) { return words::cited(of.rule, view.reader()); }),
      shown("least", &Figure::least),
      shown("most", &Figure::most),
      shown("chosen", &Figure::chosen, "the job orders by it"),
  };
};

template <>
struct Shown<Sum> {
  static constexpr std::string_view name = "sum";
  static constexpr std::string_view description = "Money; least and most differ where amounts are a range.";
  static constexpr auto fields = std::tuple{
      shown("least", &Sum::least, "smallest units of the job's currency"),
      shown("most", &Sum::most),
      shown("text", [](const View& view, const Sum& of) { return sum_said(view.answer.order.prices, of); }),
  };
};

template <>
struct Shown<Article> {
  static constexpr std::string_view name = "article";
  static constexpr std::string_view description = "One line of the order list.";
  static constexpr auto fields = std::tuple{
      shown("id", &Article::id, "what a price names"),
      shown("name", &Article::name),
      shown(
          "group", [](const View&, const Article& of) { return heading_over(of); },
          "the heading of the list that it stands under"),
      shown(
          "called", [](const View&, const Article& of) { return called_under_heading(of); },
          "its name under that heading"),
      shown(
          "amount", [](const View&, const Article& of) { return amount_said(of); }, "how many, in words"),
      shown("sold_in", &Article::sold),
      shown("wanted", &Article::wanted, "there before the work of this hold point"),
      shown("counted", &Article::told, "false: no number is told, the note says why"),
      shown("net", &Article::net, "goes into the building; of a range: its least"),
      shown("spare", &Article::spare, "for breakage, waste or loss"),
      shown("rounding", &Article::rounding, "up to whole pallets"),
      shown("least", &Article::least, "to order"),
      shown("most", &Article::most, "the same, unless published figures disagree"),
      shown("on_pallet", &Article::on_pallet, "units on one pallet; absent: not sold by pallets"),
      shown("must_not_run_short", &Article::must_not_run_short),
      shown("instead", &Article::instead, "what does for it, or \"\""),
      shown("note", &Article::note, "or \"\""),
      shown("figures", &Article::figures, "ways in which it is reckoned; none: it is counted"),
      shown("price", &Article::price, "of one, in smallest units; of a whole cubic yard or metre"),
      shown("cost", &Article::cost),
      shown("brought", &Article::brought, "to the site so far; absent: not said"),
      shown(
          "weight",
          [](const View& view, const Article& of) {
            return of.weight ? std::optional(mass_text(*of.weight, view.tape())) : std::nullopt;
          },
          "of one as sold; absent: nobody states it"),
      shown("weight_stated", &Article::weight_stated, "by the job; else as printed on its bag, or a bar's mass"),
  };
};

template <>
struct Shown<Assumed> {
  static constexpr std::string_view name = "assumed";
  static constexpr std::string_view description = "A figure that the order assumes.";
  static constexpr auto fields = std::tuple{
      shown("says", &Assumed::says),
      shown("place", &Assumed::place, "JSON pointer into the job"),
      shown("stated", &Assumed::stated, "by the job; else a default"),
  };
};

template <>
struct Shown<supply::MortarJoints> {
  using Of = supply::MortarJoints;
  static constexpr std::string_view name = "mortar_joints";
  static constexpr std::string_view description = "What the joints of the layout hold.";
  static constexpr auto fields = std::tuple{
      shown("first_bed", &Of::first_bed, "under the whole of course 1, as read or a joint thick"),
      shown("beds", &Of::beds, "on the face shells"),
      shown("heads", &Of::heads, "as deep as the face shells"),
      shown("all", [](const View&, const Of& of) { return of.all(); }),
      shown("full", &Of::full, "every joint as deep as the wall is thick"),
      shown("blocks", &Of::blocks, "whole blocks' worth that is laid"),
      shown("beds_read", &Of::beds_read, "units of course 1 under which the bed was read"),
  };
};

template <>
struct Shown<Prices> {
  static constexpr std::string_view name = "prices";
  static constexpr std::string_view description = "What the priced articles cost.";
  static constexpr auto fields = std::tuple{
      shown("currency", &Prices::currency),
      shown("decimals", &Prices::decimals),
      shown("goods", &Prices::goods),
      shown("tax", &Prices::tax, "on goods, rounded once"),
      shown("delivery", &Prices::delivery),
      shown("all", &Prices::all),
      shown("by_point", &Prices::by_point, "goods, by the hold points in their order"),
      shown("priced", &Prices::priced, "articles"),
      shown("unpriced", &Prices::unpriced, "articles with no price yet: in no sum"),
  };
};

template <>
struct Shown<Order> {
  static constexpr std::string_view name = "order";
  static constexpr std::string_view description = "What has to be on the site, an article a line.";
  static constexpr auto fields = std::tuple{
      shown("articles", &Order::articles),
      shown("mortar", &Order::mortar),
      shown("assumed", &Order::assumed),
      shown(
          "prices",
          [](const View&, const Order& of) { return of.prices.asked ? std::optional(of.prices) : std::nullopt; },
          "absent where the job has no price"),
      shown(
          "unpriced", [](const View&, const Order& of) { return of.prices.unpriced; }, "articles with no price yet"),
      shown(
          "csv", [](const View& view, const Order&) { return order_csv(view.answer, view.language); },
          "the list as comma-separated values (RFC 4180)"),
  };
};

template <>
struct Shown<Task> {
  static constexpr std::string_view name = "task";
  static constexpr std::string_view description =
      "One piece of work, in whole minutes of working time from the first planned day's start.";
  static constexpr auto fields = std::tuple{
      shown("work", &Task::work),
      shown("says", [](const View& view, const Task& of) { return task_said(view.answer, of); }),
      shown("blocks", [](const View&, const Task& of) { return of.pieces.size(); }),
      shown("stated", &Task::stated, "how long it takes is the job's; else assumed, or its blocks' at the pace"),
      shown("gone", &Task::gone, "days of a wait that are behind"),
      shown(
          "start", [](const View&, const Task& of) { return of.times.start; }, "earliest"),
      shown("finish", [](const View&, const Task& of) { return of.times.finish; }),
      shown(
          "latest_start", [](const View&, const Task& of) { return of.times.latest_start; }, "that keeps the end"),
      shown("critical", [](const View&, const Task& of) { return of.times.critical(); }),
  };
};

template <>
struct Shown<supply::Link> {
  using Of = supply::Link;
  static constexpr std::string_view name = "link";
  static constexpr std::string_view description = "What waits for what, by their places among the tasks.";
  static constexpr auto fields = std::tuple{
      shown("before", &Of::before),
      shown("after", &Of::after),
      shown("next_day", &Of::next_day, "not before the day after"),
  };
};

template <>
struct Shown<Reached> {
  static constexpr std::string_view name = "reached";
  static constexpr std::string_view description = "How high a wall stands at the end of a day.";
  static constexpr auto fields = std::tuple{
      side("side", &Reached::wall),
      shown("course", &Reached::course, "the highest that is finished; 0: none"),
      shown("top", &Reached::top, "over what course 1 stands on"),
      shown("begun", &Reached::begun, "the highest in which a block lies: of a lead, or of a course in hand"),
      shown("begun_top", &Reached::begun_top, "its top, likewise"),
      shown("grouted", &Reached::grouted, "up to this course it is filled; 0: not at all"),
  };
};

/// Nothing while something is dragged.
inline std::vector<Fact> at_rest(const View& view, const WorkDay& day,
                                 std::vector<Fact> (*said)(const Answer&, const WorkDay&)) {
  return view.placed == Placed::Omit ? std::vector<Fact>() : said(view.answer, day);
}

template <>
struct Shown<WorkDay> {
  static constexpr std::string_view name = "work_day";
  static constexpr std::string_view description = "What one working day brings.";
  static constexpr auto fields = std::tuple{
      shown("number", &WorkDay::number),
      shown(
          "date",
          [](const View&, const WorkDay& of) { return of.date ? std::optional(date_text(*of.date)) : std::nullopt; },
          "absent where neither the job states its first day nor the log has a date"),
      shown("tasks", &WorkDay::tasks, "worked at, by their places among the tasks"),
      shown(
          "works",
          [](const View& view, const WorkDay& of) {
            std::vector<Fact> works;
            for (const std::int32_t task : of.tasks) works.push_back(task_said_on(view.answer, of, task));
            return works;
          },
          "what is done of each of them on this day"),
      shown("units", &WorkDay::units, "laid, by kind"),
      shown("laid", &WorkDay::laid),
      shown("batches", &WorkDay::batches, "of mortar"),
      shown("reached", &WorkDay::reached),
      shown(
          "brace",
          [](const View& view, const WorkDay& of) {
            std::vector<std::string> names;
            for (const std::int32_t wall : of.brace) names.push_back(view.wall(wall).name);
            return names;
          },
          "walls that stand without grout tonight"),
      shown("zone", &WorkDay::zone, "kept clear on both sides of these; 0: none"),
      shown(
          "tall",
          [](const View& view, const WorkDay& of) {
            std::vector<std::string> names;
            for (const std::int32_t wall : of.tall) names.push_back(view.wall(wall).name);
            return names;
          },
          "walls that stand over the height of rule \"brace-over-8-ft\" tonight, grouted or not"),
      shown(
          "stacked", [](const View& view, const WorkDay& of) { return at_rest(view, of, stacked_said); },
          "where its blocks stand"),
      shown(
          "steel", [](const View& view, const WorkDay& of) { return at_rest(view, of, steel_said); },
          "of the courses finished on it"),
      shown(
          "checks", [](const View& view, const WorkDay& of) { return at_rest(view, of, checks_said); },
          "of these, and before a pour"),
      shown(
          "stop", [](const View& view, const WorkDay& of) { return at_rest(view, of, stop_said); },
          "how high each wall stands at its end"),
      shown(
          "weather",
          [](const View& view, const WorkDay& of) {
            const WeatherDay* weather = weather_on(view.answer, of.date);
            return weather == nullptr ? Fact() : weather_said(*weather, view.answer.building.tape);
          },
          "what the forecast brings up; \"\": nothing, which permits nothing"),
  };
};

template <>
struct Shown<WeatherDay> {
  static constexpr std::string_view name = "weather_day";
  static constexpr std::string_view description = "What the forecast of one day brings up of the rules on the cards.";
  static constexpr auto fields = std::tuple{
      shown("date", [](const View&, const WeatherDay& of) { return date_text(of.date); }),
      shown("says",
            [](const View& view, const WeatherDay& of) { return forecast_said(of, view.answer.building.tape); }),
      shown("rules", &WeatherDay::rules, "by id, among the cards; none: that permits nothing"),
  };
};

template <>
struct Shown<MortarBatch> {
  static constexpr std::string_view name = "mortar_batch";
  static constexpr std::string_view description = "So much mortar is mixed at a time that it is laid within its life.";
  static constexpr auto fields = std::tuple{
      shown("minutes", &MortarBatch::minutes),
      shown("stated", &MortarBatch::stated, "that by the job; else by rule \"mortar-life\""),
      shown("blocks", &MortarBatch::blocks, "laid in that time at the pace"),
      shown("least", &MortarBatch::least, "tenths of a bag for them"),
      shown("most", &MortarBatch::most),
      shown("says", [](const View&, const MortarBatch& of) { return batch_said(of); }),
  };
};

template <>
struct Shown<OwnPace> {
  static constexpr std::string_view name = "own_pace";
  static constexpr std::string_view description = "How fast this crew lays, by its own log.";
  static constexpr auto fields = std::tuple{
      shown("works", &OwnPace::works, "stretches of work between two stamps of one day"),
      shown("units", &OwnPace::units, "laid in them"),
      shown("minutes", &OwnPace::minutes, "that they took"),
      shown("each", &OwnPace::each, "thousandths of a minute for one unit, the mean of the stretches"),
      shown("spread", &OwnPace::spread, "standard deviation of one stretch, hundredths of the mean"),
      shown("doubt", &OwnPace::doubt, "standard deviation of the mean, hundredths of it"),
  };
};

template <>
struct Shown<DoneBy> {
  static constexpr std::string_view name = "done_by";
  static constexpr std::string_view description = "How many of the programmes drawn are done by the end of a day.";
  static constexpr auto fields = std::tuple{
      shown("day", &DoneBy::day),
      shown("date", [](const View&, const DoneBy& of) { return date_text(of.date); }),
      shown("programmes", &DoneBy::programmes),
  };
};

template <>
struct Shown<FinishChance> {
  static constexpr std::string_view name = "finish_chance";
  static constexpr std::string_view description =
      "The chance of being done by a date: the programme drawn again and again, always with the same numbers.";
  static constexpr auto fields = std::tuple{
      shown("programmes", &FinishChance::programmes, "drawn"),
      shown("by", [](const View&, const FinishChance& of) { return date_text(of.by); }),
      shown("done", &FinishChance::done, "of them by then"),
      shown("spread", &FinishChance::spread, "standard deviation of one piece of work, hundredths of its time"),
      shown("spread_by", &FinishChance::spread_by),
      shown("pace_doubt", &FinishChance::doubt, "standard deviation of the pace, hundredths of it"),
      shown("pace_doubt_by", &FinishChance::doubt_by),
      shown("days", &FinishChance::days, "from the first on which one is done"),
      shown("says", [](const View&, const FinishChance& of) { return finish_said(of); }),
      shown("unsure", [](const View&, const FinishChance& of) { return unsure_said(of); }),
  };
};

template <>
struct Shown<DoneSoFar> {
  static constexpr std::string_view name = "done_so_far";
  static constexpr std::string_view description =
      "What is behind, as the laid log and the readings tell: the rest is planned.";
  static constexpr auto fields = std::tuple{
      shown(
          "evening",
          [](const View&, const DoneSoFar& of) {
            return of.evening ? std::optional(date_text(*of.evening)) : std::nullopt;
          },
          "up to which they tell; absent: no entry has a date, and the job states none"),
      shown("stated", &DoneSoFar::stated, "that evening is the job's, not the newest entry's"),
      shown("poured", &DoneSoFar::poured, "the footing or slab: they tell of something on it"),
      shown("days", &DoneSoFar::days, "working days from the job's first one to that evening"),
      shown("blocks", &DoneSoFar::units, "laid"),
      shown(
          "works",
          [](const View& view, const DoneSoFar& of) {
            std::vector<Fact> works;
            for (const Task& task : of.tasks) works.push_back(task_said(view.answer, task));
            return works;
          },
          "that are done"),
      shown("says", [](const View& view, const DoneSoFar&) { return done_said(view.answer); }),
  };
};

template <>
struct Shown<Programme> {
  static constexpr std::string_view name = "programme";
  static constexpr std::string_view description = "What is done after what, and what each working day brings.";
  static constexpr auto fields = std::tuple{
      shown("crew", &Programme::crew),
      shown("pairs", &Programme::pairs),
      shown("units_per_hour", &Programme::units_per_hour, "of each pair; rounded where the log tells the pace"),
      shown("pace_from", &Programme::pace_from, "assumed by its crew, told by the laid log, or stated by the job"),
      shown(
          "pace_units", [](const View&, const Programme& of) { return of.pace.units; }, "that the whole crew lays ..."),
      shown(
          "pace_minutes", [](const View&, const Programme& of) { return of.pace.minutes; }, "... in so many minutes"),
      shown("own_pace", &Programme::own_pace, "absent: the log has too few courses with times"),
      shown(
          "own_pace_says", [](const View&, const Programme& of) { return own_pace_said(of); }, "or \"\""),
      shown("minutes_a_day", &Programme::minutes_a_day),
      shown("most_courses", &Programme::most_courses, "that a wall rises in a day"),
      shown(
          "planned", [](const View& view, const Programme&) { return view.answer.job.days.has_value(); },
          "the job says who lays, or when; else all of it is assumed"),
      shown("done", &Programme::done, "absent: log and readings tell of no work, and the job of no day"),
      shown("tasks", &Programme::tasks, "that are ahead"),
      shown("links", &Programme::links),
      shown("minutes", &Programme::minutes, "from the first planned day's start to the end"),
      shown("batch", &Programme::batch),
      shown("days", &Programme::days),
      shown("chance", &Programme::chance, "absent where the job does not say by when"),
      shown(
          "calendar", [](const View& view, const Programme&) { return calendar_text(view.answer, view.language); },
          "as iCalendar (RFC 5545); \"\" where days have no dates or none is left"),
  };
};

}  // namespace stringcourse::document
