#include "sheet/lists.hpp"

#include <algorithm>
#include <span>

#include "setout/gauge_rod.hpp"
#include "setout/laying_order.hpp"
#include "setout/marks.hpp"
#include "setout/places.hpp"
#include "setout/saw_list.hpp"
#include "sheet/hook_words.hpp"
#include "sheet/lintel_lists.hpp"
#include "sheet/poured.hpp"
#include "supply/counts.hpp"

namespace stringcourse::sheet {
namespace {

// Places of one saw group go in rows of at most so many, so that a table's line list stays small beside its text.
constexpr std::size_t kPlacesInARow = 400;

Column column(std::string_view title, int share, Anchor anchor = Anchor::Start) {
  return {std::string(title), share, anchor};
}

std::string size_text(const Context& context, Length width, Length height) {
  return fill_in(context.words.opening_size, {height_text(context, width), height_text(context, height)});
}

std::string use_text(const Words& words, OpeningUse use) {
  switch (use) {
    case OpeningUse::Door: return std::string(words.use_door);
    case OpeningUse::Overhead: return std::string(words.use_overhead);
    case OpeningUse::Window: return std::string(words.use_window);
    case OpeningUse::Plain: return std::string(words.use_plain);
  }
  return {};
}

// Marks of one event at one height: the event once, then whose it is.
std::string rod_text(const Context& context, std::span<const setout::RodMark> marks) {
  const Words& words = context.words;
  std::string name;
  for (const setout::RodMark& mark : marks) {
    if (mark.opening < 0) continue;
    name += (name.empty() ? "" : ", ") + context.building.openings[static_cast<std::size_t>(mark.opening)].name;
  }
  switch (marks.front().event) {
    case setout::RodEvent::Floor: return fill_in(words.floor, {name});
    case setout::RodEvent::Sill: return fill_in(words.sill, {name});
    case setout::RodEvent::CourseTop: return std::string(words.rod_course);
    case setout::RodEvent::Wire: return std::string(words.wire);
    case setout::RodEvent::Head: return fill_in(words.head, {name});
    case setout::RodEvent::LintelCourse: return fill_in(words.rod_lintel, {name});
    case setout::RodEvent::BondBeam: return std::string(words.rod_bond_beam);
    case setout::RodEvent::PourStop: return std::string(words.pour_stop);
    case setout::RodEvent::Top: return std::string(words.rod_top);
  }
  return {};
}

void add_saw_group(Table& table, const Context& context, const setout::SawGroup& group, std::size_t number) {
  const Words& words = context.words;
  for (std::size_t first = 0; first < group.places.size(); first += kPlacesInARow) {
    std::string places;
    const std::size_t last = std::min(group.places.size(), first + kPlacesInARow);
    for (std::size_t index = first; index < last; ++index) {
      const setout::SawPlace& place = group.places[index];
      if (!places.empty()) places += ", ";
      places += setout::piece_name(context.building, context.layout.runs[static_cast<std::size_t>(place.run)],
                                   context.layout.pieces[place.piece]);
      places += '(';
      places += place.cut == CutEnd::End ? words.factory_start : words.factory_end;
      places += ')';
    }
    if (first > 0) {
      table.add_row({"", "", "", "", "", "", places});
      continue;
    }
    const std::string from = std::string(words.kinds[static_cast<std::size_t>(group.from)]) + " " + saw_text(context, group.from_length);
    table.add_row({"", cut_mark(static_cast<std::size_t>(number - 1)), both_forms(group.length, context.tape()),
                   number_text(static_cast<long long>(group.places.size())), from, saw_text(context, group.offcut), places});
  }
}

std::string known_text(const Words& words, const Source& source) {
  if (source.text.find(knowledge_name(source.knowledge)) != std::string::npos) return source.text;
  const std::string known(words.knowledge[static_cast<std::size_t>(source.knowledge)]);
  return fill_in(words.how_known, {source.text, known});
}

void add_findings(Table& table, const Context& context) {
  const Words& words = context.words;
  const auto& findings = context.job.findings.empty() ? context.building.findings : context.job.findings;
  if (findings.empty()) table.add_row({"", std::string(words.no_findings), ""});
  for (int point = 1; point <= 6; ++point) {
    for (const Finding& finding : findings) {
      if (static_cast<int>(finding.hold_point) != point) continue;
      const std::string name(words.hold_points[static_cast<std::size_t>(point - 1)]);
      table.add_row({fill_in(words.hold_point, {number_text(point), name}), finding.text, finding.rule});
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

// Filler to be packed where the hole is larger than what was asked.
std::string packed_text(const Context& context, const ResolvedOpening& opening) {
  std::vector<std::string> parts;
  const auto add = [&](std::string_view words, Length packing) {
    if (packing > Length()) parts.push_back(fill_in(words, {height_text(context, packing)}));
  };
  add(context.words.packed_each_side, opening.packing_each_side);
  add(context.words.packed_head, opening.packing_head);
  return parts.empty() ? std::string() : "\n" + std::string(context.words.packed) + " " + joined(parts, ", ");
}

void add_opening(Table& table, const Context& context, const std::vector<supply::LintelAsLaid>& lintels,
                 std::size_t index) {
  const Words& words = context.words;
  const Tape tape = context.tape();
  const ResolvedOpening& opening = context.building.openings[index];
  const Wall& wall = context.wall(opening.wall);
  const bool floor = opening.first_course <= 1 && opening.use != OpeningUse::Window;
  const std::string size = fill_in(words.wide, {both_forms(opening.width(), tape)}) + "\n" +
                           fill_in(words.high, {both_forms(opening.height(), tape)});
  const std::string jambs = fill_in(words.from_named, {hook_text(context.building, opening.wall, words)}) + "\n" + both_forms(opening.from.distance_from_start(), tape) +
                            "\n" + both_forms(opening.to.distance_from_start(), tape);
  const std::string heights = fill_in(floor ? words.floor : words.sill, {both_forms(opening.underside, tape)}) + "\n" +
                              fill_in(words.head, {both_forms(opening.soffit, tape)});
  const std::string asked = opening.asked_width > Length() ? size_text(context, opening.asked_width, opening.asked_height) : "";
  const supply::LintelAsLaid* placed = lintel_over(lintels, index);
  std::string lintel = placed != nullptr ? lintel_text(context, *placed) : std::string(words.none);
  if (!opening.note.empty()) lintel += "\n" + opening.note;
  table.add_row({opening.name + "\n" + use_text(words, opening.use) + ", " + wall.name, size, jambs, heights,
                 asked + packed_text(context, opening), lintel});
}

}  // namespace

Table opening_schedule(const Context& context) {
  const Words& words = context.words;
  Table table = new_table(context.page.drawing.width(), words.title_openings,
                          {column(words.opening, 10), column(words.masonry_opening, 17), column(words.from_corner, 17),
                           column(words.underside, 19), column(words.asked, 13), column(words.lintel, 24)},
                          kText);
  const auto lintels = supply::lintels_as_laid(context.building, context.layout);
  for (std::size_t index = 0; index < context.building.openings.size(); ++index)
    add_opening(table, context, lintels, index);
  return table;
}

Table names_table(const Context& context) {
  Table table = new_table(context.page.drawing.width(), context.words.title_names, {column(context.words.name_key, 12), column(context.words.name, 88)}, kText);
  for (const LongName& name : context.names) table.add_row({name.key, name.name});
  return table;
}

Table saw_table(const Context& context) {
  const Words& words = context.words;
  Table table = new_table(context.page.drawing.width(), words.title_saw,
                          {column("", 3), column(words.cut_key, 6), column(words.piece_length, 18), column(words.pieces, 8, Anchor::End),
                           column(words.cut_from, 16), column(words.offcut, 10), column(words.places, 39)},
                          kText);
  table.pencil_boxes = true;
  std::size_t number = 0;
  for (const setout::SawGroup& group : setout::saw_list(context.building, context.layout).groups) {
    add_saw_group(table, context, group, ++number);
  }
  return table;
}

std::string saw_note(const Context& context) {
  const Words& words = context.words;
  const setout::SawList list = setout::saw_list(context.building, context.layout);
  std::string pairs;
  for (const setout::SawPair& pair : list.pairs) {
    const auto& first = list.groups[static_cast<std::size_t>(pair.first)];
    const auto& second = list.groups[static_cast<std::size_t>(pair.second)];
    if (!pairs.empty()) pairs += "; ";
    pairs += fill_in(words.pairs_with, {tape_text(first.length, context.tape()), number_text(pair.units),
                                        tape_text(second.length, context.tape())});
  }
  if (!pairs.empty()) pairs += '.';
  return fill_in(words.saw_rule, {tape_text(setout::saw_kerf(context.tape()), context.tape()), pairs});
}

Table gauge_rod_table(const Context& context) {
  const Words& words = context.words;
  Table table = new_table(context.page.drawing.width(), words.title_gauge_rod,
                          {column("", 3), column(words.height, 30), column(words.course, 12, Anchor::End),
                           column(words.rod_event, 55)},
                          kText);
  table.pencil_boxes = true;
  const std::vector<setout::RodMark> rod = setout::gauge_rod(context.building);
  for (std::size_t first = 0; first < rod.size();) {  // one row for all that stands at one height
    std::string course, events;
    std::size_t next = first;
    while (next < rod.size() && rod[next].at == rod[first].at) {
      std::size_t end = next;
      while (end < rod.size() && rod[end].at == rod[first].at && rod[end].event == rod[next].event) ++end;
      if (rod[next].event == setout::RodEvent::CourseTop) course = number_text(rod[next].course);
      if (!events.empty()) events += "; ";
      events += rod_text(context, std::span(rod).subspan(next, end - next));
      next = end;
    }
    table.add_row({"", both_forms(rod[first].at, context.tape()), course, events});
    first = next;
  }
  return table;
}

Table lead_table(const Context& context) {
  const Words& words = context.words;
  std::vector<Column> columns{column(words.corner, 13), column(words.lead_units_heading, 27)};
  const int high = std::min(setout::kLeadCourses, static_cast<int>(context.building.courses.size()));
  for (int course = 1; course <= high; ++course) {
    columns.push_back({fill_in(words.lead_course, {number_text(course)}), 12, Anchor::Start});
  }
  Table table = new_table(context.page.drawing.width(), words.title_lead_table, std::move(columns), kText);
  for (const setout::Lead& lead : setout::leads(context.building, context.layout)) {
    const Corner& corner = context.building.corners[static_cast<std::size_t>(lead.corner)];
    std::vector<std::string> cells{corner.name, context.wall(corner.arriving).name + " + " + context.wall(corner.leaving).name};
    for (const setout::LeadCourse& course : lead.courses) {
      cells.push_back(number_text(course.arriving_units) + " + " + number_text(course.leaving_units));
    }
    table.add_row(cells);
  }
  return table;
}

Table notes_table(const Context& context) {
  const Words& words = context.words;
  Table table = new_table(context.page.drawing.width(), words.title_notes, {column("", 13), column("", 51), column("", 36)}, kSmallText);
  if (!context.job.notes.empty()) {
    table.add_heading(std::string(words.notes));
    table.add_row({"", context.job.notes, ""});
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

Table side_sizes_table(const Context& context, Micrometres width, Micrometres height_of_text) {
  const Words& words = context.words;
  Table table = new_table(context.page.drawing.width(), words.sizes,
                          {column(words.side, 15), column(words.nominal, 24), column(words.actual, 44),
                           column(words.units, 17, Anchor::End)},
                          height_of_text);
  table.width = width;
  for (std::size_t wall = 0; wall < context.building.walls.size(); ++wall) {
    const supply::Counts counts = supply::count_units_of_wall(context.building, context.layout, static_cast<int>(wall));
    const Wall& side = context.building.walls[wall];
    table.add_row({side.name, tape_text(side.nominal, context.tape()), both_forms(side.actual, context.tape()),
                   number_text(counts.pieces)});
  }
  return table;
}

}  // namespace stringcourse::sheet
