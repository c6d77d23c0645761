// What has to be there when, what comes with which truck, and where pallets stand.
#include <algorithm>

#include "measure/digits.hpp"
#include "sheet/list_sheet.hpp"
#include "sheet/registry.hpp"

namespace stringcourse::sheet {
namespace {

const Article& article_of(const Context& context, std::int64_t index) {
  return context.answer.order.articles[static_cast<std::size_t>(index)];
}

/// Where the job says what came, what it weighs or what carries it.
bool has_site(const Context& context) {
  const std::optional<Ordering>& order = context.answer.job.order;
  return order && (!order->brought.empty() || !order->weights.empty() || order->truck);
}

std::string names_of(const Context& context, const std::vector<std::int64_t>& articles) {
  std::vector<std::string> names;
  for (const std::int64_t index : articles) names.push_back(context.told(article_of(context, index).name));
  return joined(names, "; ");
}

std::string day_text(const Context& context, const PlannedDay& day) { return context.told(day_said(day)); }

void add_drop(Table& table, const Context& context, const Drop& drop) {
  const words::OrderWords& words = context.words.order;
  std::vector<std::string> what, beside;
  for (const std::int64_t index : drop.articles) {
    const Article& article = article_of(context, index);
    what.push_back(context.told(fact("load-part", {article.name, amount_said(article)})));
  }
  if (!drop.unweighed.empty()) beside.push_back(words::fill_in(words.unweighed, {names_of(context, drop.unweighed)}));
  if (!drop.too_heavy.empty()) beside.push_back(words::fill_in(words.too_heavy, {names_of(context, drop.too_heavy)}));
  table.add_row({"",
                 std::string(context.words.hold_points[static_cast<std::size_t>(drop.point) - 1]) + "\n" +
                     day_text(context, drop.day),
                 joined(what, "\n"), drop.weight == Mass() ? "" : mass_text(drop.weight, context.building.tape),
                 joined(beside, "\n")});
  for (std::size_t k = 0; k < drop.loads.size(); ++k) {
    const Load& load = drop.loads[k];
    table.add_row({"", words::fill_in(words.load, {number_text(k + 1), number_text(drop.loads.size())}),
                   context.told(load_said(context.answer, load)), mass_text(load.weight, context.building.tape), ""});
  }
}

Table drops_table(const Context& context) {
  const words::OrderWords& words = context.words.order;
  Table table = new_table(
      context.page.list.width(), words.title_drops,
      {{"", 3}, {words.wanted_for, 16}, {words.article, 45}, {words.weight, 10}, {words.beside, 26}}, kSmallText);
  table.pencil_boxes = true;
  for (const Drop& drop : context.answer.site.drops) add_drop(table, context, drop);
  const std::vector<RunsOut>& out = context.answer.site.short_of;
  if (!out.empty()) table.add_heading(std::string(words.short_of));
  for (const RunsOut& one : out)
    table.add_row({"", day_text(context, one.day), context.told(runs_out_said(context.answer, one)), "", ""});
  return table;
}

std::string drops_note(const Context& context) { return std::string(context.words.order.note_drops); }

bool has_pallets(const Context& context) { return context.answer.site.pallets.has_value(); }

std::string served(const Context& context, const PlacedPallet& pallet) {
  const words::OrderWords& words = context.words.order;
  if (pallet.from_wall < 0) return std::string(words.all_spare);
  return words::fill_in(words.serves,
                        {context.wall(pallet.from_wall).name, tape_text(pallet.from, context.building.tape),
                         context.wall(pallet.to_wall).name, tape_text(pallet.to, context.building.tape)});
}

Table pallet_table(const Context& context) {
  const words::OrderWords& words = context.words.order;
  Table table = new_table(context.page.list.width(), words.title_pallets,
                          {{"", 3}, {words.article, 33}, {words.stands, 34}, {words.serves_what, 30}}, kSmallText);
  table.pencil_boxes = true;
  std::int64_t number = 0;
  for (const PlacedPallet& pallet : context.answer.site.pallets->pallets) {
    ++number;
    const Wall& wall = context.wall(pallet.beside);
    table.add_row(
        {"",
         words::fill_in(words.pallet_of, {context.told(article_of(context, pallet.article).name),
                                          number_text(pallet.units), number_text(number)}),
         words::fill_in(words.stands_at, {wall.name, wall.start_name, tape_text(pallet.along, context.building.tape),
                                          tape_text(pallet.out, context.building.tape)}),
         served(context, pallet)});
  }
  return table;
}

std::string pallet_note(const Context& context) {
  const PalletPlan& plan = *context.answer.site.pallets;
  return words::fill_in(context.words.order.note_pallets, {tape_text(plan.zone, context.building.tape),
                                                           context.told(carried_said(plan, context.building.tape))}) +
         " " + words::cited("limited-access-zone", context.reader()) + ".";
}

}  // namespace

constinit const SheetKind kDropsSheet{
    .name = "drops",
    .purpose = &words::SheetWords::purpose_drops,
    .caution = {"lifting"},
    .applies = has_site,
    .table = drops_table,
    .made_note = drops_note,
};

constinit const SheetKind kPalletsSheet{
    .name = "pallets",
    .purpose = &words::SheetWords::purpose_pallets,
    .caution = {"limited-access-zone"},
    .applies = has_pallets,
    .table = pallet_table,
    .made_note = pallet_note,
    .under = {&kDropsSheet},
};

}  // namespace stringcourse::sheet
