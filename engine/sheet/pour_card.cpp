// The grout, pour by pour: which cells of each wall are filled, by the dowels under them, with boxes to tick.
#include <algorithm>
#include <set>

#include "catalogue/rules.hpp"
#include "measure/digits.hpp"
#include "sheet/list_sheet.hpp"
#include "sheet/registry.hpp"
#include "supply/grout.hpp"
#include "words/language.hpp"
#include "words/volume.hpp"

namespace stringcourse::sheet {
namespace {

using supply::GroutColumn;
using supply::GroutPour;

std::string amount_text(const Context& context, const Volume& volume) {
  return words::volume_text(volume.in_cubic_centimetres(), context.reader());
}

/// As the order has it.
int grout_loss(const Context& context) {
  const std::optional<Ordering>& order = context.answer.job.order;
  return order && order->grout_loss ? *order->grout_loss : supply::kGroutLoss;
}

/// With what is spilt and left over.
std::string order_text(const Context& context, const Volume& volume) {
  const Volume more{volume.cubic_nanometres * (100 + grout_loss(context)) / 100};
  return words::bagged_text(more.in_cubic_centimetres(), words::Bagged::Concrete, context.reader());
}

/// Cells of one wall that are filled in one pour.
struct Cells {
  int count = 0;
  std::vector<int> dowels;
  std::vector<std::string> others;  // places of bars without a dowel
};

Cells cells_in(const Context& context, int wall, const GroutPour& pour) {
  Cells cells;
  for (const GroutColumn& column : pour.columns) {
    const PlacedBar& bar = context.layout.bars[column.bar];
    if (bar.wall != wall) continue;
    ++cells.count;
    if (const int number = dowel_number(context.answer, bar); number > 0) cells.dowels.push_back(number);
    else cells.others.push_back(both_forms(rounded_to(bar.centre, tape_step(context.tape())), context.tape()));
  }
  return cells;
}

std::string which_text(const Context& context, const Cells& cells) {
  const words::SheetWords& words = context.words;
  std::vector<std::string> parts;
  if (!cells.dowels.empty()) parts.push_back(words::fill_in(words.pour_dowels, {ranges_text(cells.dowels)}));
  if (!cells.others.empty()) parts.push_back(words::fill_in(words.pour_places, {joined(cells.others, ", ")}));
  return joined(parts, "; ");
}

std::string lifts_text(const Context& context, const GroutPour& pour) {
  const words::GroutWords& words = context.words.grout;
  if (pour.lift_tops.size() < 2) return std::string(words.one_lift);
  return words::fill_in(words.lifts, {ranges_text({pour.lift_tops.begin(), pour.lift_tops.end()})});
}

/// What goes round the bars of one wall.
std::string amount_in(const Context& context, int wall, const GroutPour& pour) {
  Volume volume;
  bool unlike = false;
  for (const GroutColumn& column : pour.columns) {
    if (context.layout.bars[column.bar].wall != wall) continue;
    volume += column.volume, unlike |= column.unlike > 0;
  }
  return amount_text(context, volume) + (unlike ? " *" : "");
}

std::string heading_of(const Context& context, const GroutPour& pour, std::size_t number) {
  const auto course = [&](int at) -> const Course& {
    return context.building.courses[static_cast<std::size_t>(at - 1)];
  };
  std::string text = words::fill_in(context.words.pour_heading,
                                    {number_text(static_cast<long long>(number)), number_text(pour.first_course),
                                     number_text(pour.last_course), both_forms(pour.height, context.tape()),
                                     both_forms(course(pour.last_course).top, context.tape())}) +
                     " " + lifts_text(context, pour);
  std::vector<int> beams;
  for (int at = pour.first_course; at <= pour.last_course; ++at) {
    if (course(at).bond_beam) beams.push_back(at);
  }
  return beams.empty() ? text : text + " " + words::fill_in(context.words.pour_beams, {ranges_text(beams)});
}

void add_sum(Table& table, const std::string& what, const std::string& amount) {
  table.add_row({"", "", "", what, amount, "", "", ""});
}

void add_sums(Table& table, const Context& context, const GroutPour& pour) {
  const words::GroutWords& words = context.words.grout;
  if (pour.beams != Volume()) add_sum(table, std::string(words.beams), amount_text(context, pour.beams));
  if (pour.lintels != Volume()) add_sum(table, std::string(words.lintels), amount_text(context, pour.lintels));
  add_sum(table, std::string(words.in_pour), amount_text(context, pour.all()));
  add_sum(table, words::fill_in(words.to_order, {number_text(grout_loss(context))}), order_text(context, pour.all()));
}

void add_pour(Table& table, const Context& context, const GroutPour& pour) {
  for (int wall = 0; wall < static_cast<int>(context.building.walls.size()); ++wall) {
    const Cells cells = cells_in(context, wall, pour);
    const auto cleanouts = std::ranges::count_if(context.answer.cleanouts, [&](const setout::WallCleanout& one) {
      return one.wall == wall && one.course >= pour.first_course && one.course <= pour.last_course;
    });
    if (cells.count == 0) continue;
    table.add_row({"", context.wall(wall).name, number_text(cells.count), which_text(context, cells),
                   amount_in(context, wall, pour),
                   cleanouts == 0 ? std::string(context.words.none) : number_text(cleanouts), "", ""});
  }
  add_sums(table, context, pour);
}

Table pour_table_in(const Context& context, Micrometres height_of_text) {
  const words::SheetWords& words = context.words;
  Table table = new_table(context.page.list.width(), words.title_pour_card,
                          {{"", 3},
                           {words.side, 9},
                           {words.pour_cells, 8},
                           {words.pour_which, 32},
                           {words.grout.amount, 16},
                           {words.pour.cleanouts, 12},
                           {words.pour_seen, 10},
                           {words.pour_full, 10}},
                          height_of_text);
  table.pencil_boxes = table.whole_groups = true;
  std::size_t number = 0;
  for (const GroutPour& pour : context.answer.tallies.grout) {
    table.add_heading(heading_of(context, pour, ++number));
    add_pour(table, context, pour);
  }
  return table;
}

bool has_unlike(const Context& context) {
  return std::ranges::any_of(context.answer.tallies.grout, [](const GroutPour& pour) {
    return std::ranges::any_of(pour.columns, [](const GroutColumn& column) { return column.unlike > 0; });
  });
}

std::string rule_note(const Context& context, std::string_view id) {
  const Rule* rule = find_rule(id);
  return rule == nullptr ? std::string() : words::rule_text(*rule, context.reader()) + ". (" + rule->source.text + ")";
}

/// Pours of which a lift is planned for that day.
std::set<std::int32_t> pours_on(const Programme& programme, const WorkDay& day) {
  std::set<std::int32_t> pours;
  for (const std::int32_t index : day.tasks) {
    const Task& task = programme.tasks[static_cast<std::size_t>(index)];
    if (task.work == WorkKind::GroutLift) pours.insert(task.pour);
  }
  return pours;
}

/// Of pours planned for a day whose forecast brings something up.
std::string forecast_text(const Context& context) {
  const Programme& programme = context.answer.programme;
  std::string text;
  for (const WorkDay& day : programme.days) {
    const WeatherDay* weather = weather_on(context.answer, day.date);
    if (weather == nullptr || weather->rules.empty()) continue;
    for (const std::int32_t pour : pours_on(programme, day))
      text += words::fill_in(context.words.top.forecast_pour, {number_text(pour + 1), date_text(*day.date),
                                                               context.told(weather_said(*weather, context.tape()))}) +
              " ";
  }
  return text;
}

std::string pour_note(const Context& context) {
  const words::GroutWords& words = context.words.grout;
  return forecast_text(context) + std::string(context.words.pour_note) + " " + std::string(words.note) + " " +
         (has_unlike(context) ? std::string(words.unlike_note) + " " : "") + rule_note(context, "grout-lift") + " " +
         rule_note(context, "grout-fins");
}

/// In small letters where that saves a sheet.
Table pour_table(const Context& context) {
  Table large = pour_table_in(context, kText), small = pour_table_in(context, kSmallText);
  if (large.lines.empty()) return large;
  const std::string note = pour_note(context);
  const auto sheets = [&](const Table& table) { return sheets_of_list(context, {table, note}).size(); };
  return sheets(small) < sheets(large) ? small : large;
}

Table small_pour_table(const Context& context) { return pour_table_in(context, kSmallText); }

}  // namespace

constinit const SheetKind kPourCardSheet{
    .name = "pour",
    .hold_point = HoldPoint::Grout,
    .purpose = &words::SheetWords::purpose_pour,
    .caution = {"grout-pressure"},
    .table = pour_table,
    .small_table = small_pour_table,
    .made_note = pour_note,
};

}  // namespace stringcourse::sheet
