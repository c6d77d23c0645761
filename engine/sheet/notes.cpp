// The job's notes and the findings by hold point; and, where it is wished for, what the rules are taken from.
#include <algorithm>

#include "catalogue/rules.hpp"
#include "measure/digits.hpp"
#include "sheet/known.hpp"
#include "sheet/registry.hpp"
#include "words/language.hpp"

namespace stringcourse::sheet {
namespace {

// What is given up names the offer that would keep the rule.
std::string text_with_offer(const Context& context, std::size_t index) {
  const Finding& finding = context.answer.findings[index];
  const bool given_up = finding.code.text().starts_with("conceded-") || finding.code == "bare-stretch";
  const Offer* offer = given_up ? offer_that_mends(context.answer, index) : nullptr;
  const std::string says = words::told(finding.says, context.reader());
  return offer == nullptr ? says : words::fill_in(context.words.with_offer, {says, context.told(offer->text)});
}

void add_findings(Table& table, const Context& context) {
  const words::SheetWords& words = context.words;
  const std::vector<Finding>& findings = context.answer.findings;
  std::string last;
  for (int point = 1; point <= 6; ++point) {
    for (std::size_t index = 0; index < findings.size(); ++index) {
      const Finding& finding = findings[index];
      if (static_cast<int>(finding.hold_point) != point) continue;
      const std::string name(words.hold_points[static_cast<std::size_t>(point - 1)]);
      const std::string when = words::fill_in(words.hold_point, {number_text(point), name});
      std::string rule = words::cited(finding.rule, context.reader());
      const bool again = !rule.empty() && rule == last;  // told right above
      if (!again) last = rule;
      table.add_row({when, text_with_offer(context, index), again ? std::string(words.same_rule) : std::move(rule)});
    }
  }
}

// "least-piece" as words.
std::string spaced(std::string id) {
  std::replace(id.begin(), id.end(), '-', ' ');
  return id;
}

// Rules of things that this building has none of are left out.
bool rule_applies(const Context& context, std::string_view id) {
  const bool steel = context.building.bars.has_value() || !context.layout.bars.empty();
  if (id.starts_with("control-joint")) return !context.building.control_joints.empty();
  if (id == "bar-apart") return std::ranges::contains(context.building.findings, Code("bars-too-near"), &Finding::code);
  if (id.starts_with("grout") || id.starts_with("bar-") || id.starts_with("cleanout")) return steel;
  if (id.starts_with("lintel") || id.starts_with("shores")) return !context.layout.lintels.empty();
  return true;
}

Table findings_table(const Context& context) {
  const words::SheetWords& words = context.words;
  Table table = new_table(context.page.list.width(), words.title_findings, {{"", 13}, {"", 51}, {"", 36}}, kSmallText);
  if (!context.answer.job.notes.empty()) {
    table.add_heading(std::string(words.notes));
    table.add_row({"", context.answer.job.notes, ""});
  }
  if (context.answer.findings.empty()) return table;
  table.add_heading(std::string(words.findings));
  add_findings(table, context);
  return table;
}

Table standards_table(const Context& context) {
  const words::SheetWords& words = context.words;
  Table table = new_table(context.page.list.width(), words.standards, {{"", 13}, {"", 51}, {"", 36}}, kSmallText);
  for (const Series& series : context.building.series) {
    table.add_row({series.id, series.title, known_text(words, series.source)});
  }
  for (const Rule& rule : catalogue_rules()) {
    if (!rule.standing || !rule_applies(context, rule.id)) continue;
    table.add_row(
        {spaced(std::string(rule.id)), words::rule_text(rule, context.reader()), known_text(words, rule.source)});
  }
  return table;
}

}  // namespace

constinit const SheetKind kFindingsSheet{
    .name = "findings",
    .purpose = &words::SheetWords::purpose_findings,
    .caution = {"engineer"},
    .table = findings_table,
};

constinit const SheetKind kStandardsSheet{
    .name = "standards",
    .purpose = &words::SheetWords::purpose_standards,
    .on_request = &Wanted::standards,
    .caution = {"engineer"},
    .table = standards_table,
};

}  // namespace stringcourse::sheet
