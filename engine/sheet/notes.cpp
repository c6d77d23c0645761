// The job's notes, the findings by hold point, and what the rules are taken from.
#include <algorithm>

#include "sheet/registry.hpp"

namespace stringcourse::sheet {
namespace {

std::string known_text(const Words& words, const Source& source) {
  if (source.text.find(knowledge_name(source.knowledge)) != std::string::npos) return source.text;
  const std::string known(words.knowledge[static_cast<std::size_t>(source.knowledge)]);
  return fill_in(words.how_known, {source.text, known});
}

// What is given up names the offer that would keep the rule.
std::string text_with_offer(const Context& context, std::size_t index) {
  const Finding& finding = context.answer.findings[index];
  const bool given_up = finding.code.starts_with("conceded-") || finding.code == "bare-stretch";
  const Offer* offer = given_up ? offer_that_mends(context.answer, index) : nullptr;
  return offer == nullptr ? finding.text : fill_in(context.words.with_offer, {finding.text, offer->text});
}

void add_findings(Table& table, const Context& context) {
  const Words& words = context.words;
  const std::vector<Finding>& findings = context.answer.findings;
  if (findings.empty()) table.add_row({"", std::string(words.no_findings), ""});
  for (int point = 1; point <= 6; ++point) {
    for (std::size_t index = 0; index < findings.size(); ++index) {
      const Finding& finding = findings[index];
      if (static_cast<int>(finding.hold_point) != point) continue;
      const std::string name(words.hold_points[static_cast<std::size_t>(point - 1)]);
      const std::string when = fill_in(words.hold_point, {number_text(point), name});
      table.add_row({when, text_with_offer(context, index), finding.rule});
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
  if (id == "bar-apart") return std::ranges::contains(context.building.findings, "bars-too-near", &Finding::code);
  if (id.starts_with("grout") || id.starts_with("bar-") || id.starts_with("cleanout")) return steel;
  if (id.starts_with("lintel") || id.starts_with("shores")) return !context.layout.lintels.empty();
  return true;
}

Table notes_table(const Context& context) {
  const Words& words = context.words;
  Table table = new_table(context.page.drawing.width(), words.title_notes,
                          {{"", 13}, {"", 51}, {"", 36}}, kSmallText);
  if (!context.answer.job.notes.empty()) {
    table.add_heading(std::string(words.notes));
    table.add_row({"", context.answer.job.notes, ""});
  }
  table.add_heading(std::string(words.findings));
  add_findings(table, context);
  table.add_heading(std::string(words.standards));
  for (const Series& series : context.building.series) {
    table.add_row({series.id, series.title, known_text(words, series.source)});
  }
  for (const Rule& rule : catalogue_rules()) {
    if (rule_applies(context, rule.id)) table.add_row({spaced(rule.id), rule.text, known_text(words, rule.source)});
  }
  return table;
}

}  // namespace

constinit const SheetKind kNotesSheet{
    .name = "notes",
    .caution = {"engineer"},
    .table = notes_table,
};

}  // namespace stringcourse::sheet
