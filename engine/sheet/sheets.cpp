#include "sheet/sheets.hpp"

#include <algorithm>

#include "sheet/context.hpp"
#include "sheet/corner_sheet.hpp"
#include "sheet/elevation.hpp"
#include "sheet/form_board.hpp"
#include "sheet/found.hpp"
#include "sheet/lintel_lists.hpp"
#include "sheet/lists.hpp"
#include "sheet/plan.hpp"
#include "sheet/strip.hpp"
#include "sheet/summary.hpp"
#include "sheet/template.hpp"
#include "sheet/wall_card.hpp"

namespace stringcourse::sheet {
namespace {

enum class Sort {
  Summary, Names, Sides, Notes, SettingOut, Dowels, Corners, FormBoard, Template, FoundPlan, Found, BedProfile, CoursePlan, Strip, Elevation,
  Openings, LintelBars, Saw, GaugeRod, Leads, Marks, Laid, Changes
};

// One sheet before it is drawn: light enough to list a school's hundreds.
struct Entry {
  Sort sort = Sort::Summary;
  std::string name, title;
  int wall = -1, course = 0;
  Part part = {};
  std::optional<Scale> scale = {};
  std::size_t first_line = 0, last_line = 0;
};

// The lists are laid out once; their sheets show parts of them.
struct Lists {
  Table names, sides, notes, setting_out, dowels, found, openings, lintel_bars, saw, rod, leads, marks, laid, changes;
  std::string saw_note;
  std::vector<std::size_t> corners;
  const Table* of(Sort sort) const {
    switch (sort) {
      case Sort::Names: return &names;
      case Sort::Sides: return &sides;
      case Sort::Notes: return &notes;
      case Sort::Found: return &found;
      case Sort::Dowels: return &dowels;
      case Sort::SettingOut: return &setting_out;
      case Sort::Openings: return &openings;
      case Sort::LintelBars: return &lintel_bars;
      case Sort::Saw: return &saw;
      case Sort::GaugeRod: return &rod;
      case Sort::Leads: return &leads;
      case Sort::Marks: return &marks;
      case Sort::Laid: return &laid;
      case Sort::Changes: return &changes;
      case Sort::Summary:
      case Sort::Corners:
      case Sort::FormBoard:
      case Sort::Template:
      case Sort::FoundPlan:
      case Sort::BedProfile:
      case Sort::CoursePlan:
      case Sort::Strip:
      case Sort::Elevation: return nullptr;
    }
    return nullptr;
  }
};

constexpr Micrometres kTableHead = 2'000;   // between the sheet's title and a table
constexpr Lettering kFootNote{kSmallText};  // notes under a table

bool is_name_character(char byte) {
  return (byte >= 'a' && byte <= 'z') || (byte >= 'A' && byte <= 'Z') || (byte >= '0' && byte <= '9');
}

// Only letters and digits of a user's name get into a file's name.
std::string name_part(const std::string& text) {
  std::string part;
  for (const char byte : text) {
    if (is_name_character(byte) && part.size() < 24) part += byte;
  }
  return part.empty() ? "side" : part;
}

// The heading behind `end` whose rows would be torn apart there, if they fit a sheet of their own; else `end`.
std::size_t before_torn_group(const Table& table, std::size_t first, std::size_t end, std::size_t fit) {
  std::size_t heading = end;
  while (heading > first && !table.lines[heading].heading) --heading;
  while (heading > first && !table.lines[heading].starts_row) --heading;
  std::size_t next = end;
  while (next < table.lines.size() && !table.lines[next].heading) ++next;
  return heading > first && next - heading <= fit ? heading : end;
}

// Where a sheet of a table ends: rows stay whole unless one is longer than a sheet.
std::size_t end_of_sheet(const Table& table, std::size_t first, std::size_t fit) {
  const std::size_t most = std::min(table.lines.size(), first + fit);
  if (most == table.lines.size()) return most;
  if (table.whole_groups) {
    const std::size_t end = before_torn_group(table, first, most, fit);
    if (end != most) return end;
  }
  for (std::size_t end = most; end > first; --end) {
    if (table.lines[end].starts_row && !table.lines[end - 1].heading) return end;
  }
  return most;
}

std::string note_of(const Context& context, const Lists& lists, Sort sort) {
  if (sort == Sort::Names) return std::string(context.words.names_note);
  if (sort == Sort::Saw) return lists.saw_note;
  if (sort == Sort::SettingOut) return std::string(context.words.card_note);
  if (sort == Sort::Dowels) return dowel_note(context);
  if (sort == Sort::GaugeRod) return std::string(context.words.rod_note);
  if (sort == Sort::Changes) return std::string(context.words.change_note);
  if (sort == Sort::Marks) return std::string(context.words.marks_note);
  if (sort == Sort::Leads) return std::string(context.words.lead_note);
  if (sort == Sort::Openings) return std::string(context.words.schedule_note);
  if (sort == Sort::LintelBars) return std::string(context.words.lintel_bar_note);
  return {};
}

// The notes of a table and of the one under it.
std::string note_with_under(const Context& context, const Lists& lists, Sort sort) {
  return note_of(context, lists, sort) + " " + note_of(context, lists, sort == Sort::GaugeRod ? Sort::Leads : Sort::LintelBars);
}

// Room under a table for its notes, all of them.
Micrometres foot_under(const Context& context, const std::string& note) {
  return note.empty() ? 0 : paragraph_height(note, context.page.drawing.width(), kFootNote) + 2'000;
}

void list_table(std::vector<Entry>& entries, const Context& context, const Lists& lists, Sort sort, const std::string& name) {
  const Table& table = *lists.of(sort);
  if (table.lines.empty()) return;
  const Micrometres foot = foot_under(context, note_of(context, lists, sort));
  const Micrometres high = context.page.drawing.height() - kTableHead - foot;
  std::vector<std::size_t> ends;
  while (ends.empty() || ends.back() < table.lines.size()) {
    const std::size_t first = ends.empty() ? 0 : ends.back();
    ends.push_back(end_of_sheet(table, first, std::max<std::size_t>(1, lines_that_fit(table, high, first))));
  }
  for (std::size_t index = 0; index < ends.size(); ++index) {
    const std::string title = part_title(context.words, table.name, static_cast<int>(index) + 1, static_cast<int>(ends.size()));
    Entry entry{.sort = sort, .name = name, .title = title};
    entry.first_line = index == 0 ? 0 : ends[index - 1];
    entry.last_line = ends[index];
    entries.push_back(std::move(entry));
  }
}

void list_course(std::vector<Entry>& entries, const Context& context, int course) {
  if (course > static_cast<int>(context.building.courses.size())) return;
  const std::string number = number_text(course);
  entries.push_back({.sort = Sort::CoursePlan, .name = "course-" + number, .title = fill_in(context.words.title_plan, {number}),
                     .course = course, .scale = scale_of_course_plan(context)});
  for (int wall = 0; wall < static_cast<int>(context.building.walls.size()); ++wall) {
    const std::string& side = context.wall(wall).name;
    const StripPlan plan = plan_strip(context, wall, course);
    for (const Part& part : plan.parts) {
      const std::string title = part_title(context.words, strip_title(context, wall, course), part.index, part.of);
      entries.push_back({.sort = Sort::Strip, .name = "course-" + number + "-" + name_part(side), .title = title,
                         .wall = wall, .course = course, .part = part, .scale = plan.scale});
    }
  }
}

void list_elevations(std::vector<Entry>& entries, const Context& context) {
  for (int wall = 0; wall < static_cast<int>(context.building.walls.size()); ++wall) {
    const std::string& side = context.wall(wall).name;
    const ElevationPlan plan = plan_elevation(context, wall);
    for (const Part& part : plan.parts) {
      const std::string title = part_title(context.words, fill_in(context.words.title_elevation, {side}), part.index, part.of);
      entries.push_back({.sort = Sort::Elevation, .name = "elevation-" + name_part(side), .title = title, .wall = wall,
                         .part = part, .scale = plan.scale});
    }
  }
}

void list_corners(std::vector<Entry>& entries, const Context& context, const std::vector<std::size_t>& corners) {
  const std::size_t sheets = (corners.size() + kCornersOnSheet - 1) / kCornersOnSheet;
  for (std::size_t index = 0; index < sheets; ++index) {
    const std::string title = part_title(context.words, std::string(context.words.pour.title_corners), static_cast<int>(index) + 1, static_cast<int>(sheets));
    Entry entry{.sort = Sort::Corners, .name = "corners", .title = title, .scale = kCornerScale};
    entry.first_line = index * kCornersOnSheet;
    entry.last_line = std::min(corners.size(), entry.first_line + kCornersOnSheet);
    entries.push_back(std::move(entry));
  }
}

void list_forms(std::vector<Entry>& entries, const Context& context) {
  for (int wall = 0; wall < static_cast<int>(context.building.walls.size()); ++wall) {
    if (!has_form_board(context, wall)) continue;
    const StripPlan plan = plan_form_board(context, wall);
    for (const Part& part : plan.parts) {
      const std::string title = part_title(context.words, form_board_title(context, wall), part.index, part.of);
      entries.push_back({.sort = Sort::FormBoard, .name = "form-" + name_part(context.wall(wall).name), .title = title, .wall = wall, .part = part, .scale = plan.scale});
    }
  }
  const std::size_t count = dowel_templates(context).size();
  for (std::size_t index = 0; index < count; ++index) {
    const std::string title = part_title(context.words, std::string(context.words.title_template), static_cast<int>(index) + 1, static_cast<int>(count));
    Entry entry{.sort = Sort::Template, .name = "template", .title = title, .scale = Scale{1}};
    entry.first_line = index;
    entries.push_back(std::move(entry));
  }
}

void list_found(std::vector<Entry>& entries, const Context& context, const Lists& lists) {
  if (context.job.found == nullptr) return;
  if (!context.job.found->tape.lines.empty()) {
    entries.push_back({.sort = Sort::FoundPlan, .name = "pegs", .title = std::string(context.words.title_found_plan),
                       .scale = scale_of_plan(context.building, context.page.drawing)});
  }
  list_table(entries, context, lists, Sort::Found, "readings");
  for (int wall = 0; wall < static_cast<int>(context.building.walls.size()); ++wall) {
    if (!has_bed_profile(context, wall)) continue;
    const std::string& side = context.wall(wall).name;
    const StripPlan plan = plan_bed_profile(context, wall);
    for (const Part& part : plan.parts) {
      const std::string title = part_title(context.words, fill_in(context.words.title_bed_profile, {side}), part.index, part.of);
      entries.push_back({.sort = Sort::BedProfile, .name = "bed-" + name_part(side), .title = title, .wall = wall, .part = part, .scale = plan.scale});
    }
  }
}

// "07-elevation-AB": the number makes names unique and rising.
void number_names(std::vector<Entry>& entries) {
  std::size_t width = 2;
  for (std::size_t many = entries.size(); many >= 100; many /= 10) ++width;
  for (std::size_t index = 0; index < entries.size(); ++index) {
    std::string number = number_text(static_cast<long long>(index + 1));
    while (number.size() < width) number.insert(number.begin(), '0');
    entries[index].name = number + "-" + entries[index].name;
  }
}

// What stands in the concrete is drawn as it was poured, whatever is laid otherwise since.
Context as_poured(const Context& context) {
  if (context.job.poured_building == nullptr) return context;
  const Building& poured = *context.job.poured_building;
  std::shared_ptr<const Building> renamed = with_short_names(poured, context.names);
  return {renamed ? *renamed : poured, *context.job.poured_layout, context.job, context.words, context.page, context.cuts, context.names, &poured, renamed};
}

Lists lists_of(const Context& context) {
  const Context pour = as_poured(context);
  return {names_table(context), side_sizes_table(context, context.page.drawing.width(), kText), notes_table(context), setting_out_table(pour),
          dowel_table(pour), found_table(context), opening_schedule(context), lintel_bar_table(context), saw_table(context),
          gauge_rod_table(context), lead_table(context), marks_table(context), laid_table(context), changes_table(context),
          saw_note(context), corners_drawn(context)};
}

constexpr Micrometres kBetweenTables = 12'000;  // with the lower one's name

// A short table stands under the one before it: few corners' leads under the gauge rod, few bars under the openings.
bool fits_under(const Context& context, const Table& above, const Table& below, const std::string& note) {
  const Micrometres upper = table_height(above, above.lines.size()), lower = table_height(below, below.lines.size());
  const Micrometres taken = upper + kBetweenTables + lower;
  return taken <= context.page.drawing.height() - kTableHead - foot_under(context, note);
}
bool leads_fit_under_rod(const Context& context, const Lists& lists) {
  return fits_under(context, lists.rod, lists.leads, note_with_under(context, lists, Sort::GaugeRod));
}
bool bars_fit_under_openings(const Context& context, const Lists& lists) {
  return fits_under(context, lists.openings, lists.lintel_bars, note_with_under(context, lists, Sort::Openings));
}

std::vector<Entry> list_sheets(const Context& context, const Lists& lists) {
  std::vector<Entry> entries{{.sort = Sort::Summary, .name = "summary", .title = std::string(context.words.title_summary),
                              .scale = scale_of_summary(context)}};
  list_table(entries, context, lists, Sort::Names, "names");
  if (!summary_holds_sides(context)) list_table(entries, context, lists, Sort::Sides, "sides");
  list_table(entries, context, lists, Sort::Notes, "notes");
  list_table(entries, context, lists, Sort::SettingOut, "setting-out");
  list_table(entries, context, lists, Sort::Dowels, "dowels");
  list_corners(entries, context, lists.corners);
  list_forms(entries, as_poured(context));
  list_found(entries, context, lists);
  list_course(entries, context, 1);
  list_course(entries, context, 2);
  list_elevations(entries, context);
  list_table(entries, context, lists, Sort::Openings, "openings");
  if (!bars_fit_under_openings(context, lists)) list_table(entries, context, lists, Sort::LintelBars, "lintel-bars");
  list_table(entries, context, lists, Sort::Saw, "saw-list");
  list_table(entries, context, lists, Sort::GaugeRod, "gauge-rod");
  if (!leads_fit_under_rod(context, lists)) list_table(entries, context, lists, Sort::Leads, "leads");
  list_table(entries, context, lists, Sort::Changes, "changes");
  list_table(entries, context, lists, Sort::Marks, "marks");
  list_table(entries, context, lists, Sort::Laid, "laid-log");
  number_names(entries);
  return entries;
}

// A part of a table with its note at the foot; `under`, a second table below it, or none.
Group draw_list(const Context& context, const Table& table, const Entry& entry, const std::string& note, const Table* under) {
  const Area room = context.page.drawing;
  Pad pad(Role::Table, entry.title);
  pad.add(draw_table(table, {room.left, room.top - kTableHead}, entry.first_line, entry.last_line));
  if (under) {
    const std::size_t lines = heading_above(table, entry.first_line).lines() + entry.last_line - entry.first_line;
    const Micrometres top = room.top - kTableHead - table_height(table, lines) - kBetweenTables;
    pad.write({room.left + 1'000, top + 2'000}, under->name, {kText, Weight::Bold});
    pad.add(draw_table(*under, {room.left, top}, 0, under->lines.size()));
  }
  write_paragraph(pad, {room.left, room.bottom + paragraph_height(note, room.width(), kFootNote)}, room.width(), note, kFootNote);
  return std::move(pad).take();
}

Group draw_entry(const Context& context, const Lists& lists, const Entry& entry) {
  switch (entry.sort) {
    case Sort::Summary: return draw_summary(context);
    case Sort::CoursePlan: return draw_course_plan(context, entry.course);
    case Sort::Corners: return draw_corners(context, std::span(lists.corners).subspan(entry.first_line, entry.last_line - entry.first_line));
    case Sort::FormBoard: return draw_form_board(as_poured(context), entry.wall, entry.part, *entry.scale);
    case Sort::Template: {
      const Context pour = as_poured(context);
      return draw_dowel_template(pour, dowel_templates(pour)[entry.first_line]);
    }
    case Sort::FoundPlan: return draw_found_plan(context, context.page.drawing, *entry.scale);
    case Sort::BedProfile: return draw_bed_profile(context, entry.wall, entry.part, *entry.scale);
    case Sort::Strip: return draw_strip(context, entry.wall, entry.course, entry.part, *entry.scale);
    case Sort::Elevation:
      return draw_elevation(context, entry.wall, entry.part, *entry.scale, context.page.drawing);
    case Sort::Names:
    case Sort::Sides:
    case Sort::Notes:
    case Sort::Found:
    case Sort::SettingOut:
    case Sort::Dowels:
    case Sort::Openings:
    case Sort::LintelBars:
    case Sort::Saw:
    case Sort::GaugeRod:
    case Sort::Leads:
    case Sort::Marks:
    case Sort::Laid:
    case Sort::Changes: break;
  }
  const bool with_bars =
      entry.sort == Sort::Openings && bars_fit_under_openings(context, lists) && !lists.lintel_bars.lines.empty();
  const bool with_leads = entry.sort == Sort::GaugeRod && leads_fit_under_rod(context, lists) && !lists.leads.lines.empty();
  const bool with_under = with_leads || with_bars;
  const std::string note = with_under ? note_with_under(context, lists, entry.sort) : note_of(context, lists, entry.sort);
  const Table* under = with_leads ? &lists.leads : with_bars ? &lists.lintel_bars : nullptr;
  return draw_list(context, *lists.of(entry.sort), entry, note, under);
}

// Each sort of sheet carries the caution that belongs to its work; the catalogue's words first, our own without.
std::string caution_of(const Words& words, Sort sort) {
  const auto chosen = [&](std::string_view rule, std::string_view instead) {
    const Rule* found = find_rule(rule);
    return found ? found->text + ". (" + found->source.text + ")" : std::string(instead);
  };
  switch (sort) {
    case Sort::Saw: return chosen("saw-dust", words.caution_saw);
    case Sort::Elevation: return chosen("brace-over-8-ft", words.caution_general);
    case Sort::BedProfile:
    case Sort::Marks:
    case Sort::Laid:
    case Sort::Changes:
    case Sort::Strip:
    case Sort::CoursePlan: return chosen("wet-cement", words.caution_general);
    case Sort::Openings:
    case Sort::LintelBars: return chosen("shores", words.caution_lintel);
    case Sort::FormBoard:
    case Sort::Template:
    case Sort::Corners:
    case Sort::Dowels: return std::string(words.caution_dowels);
    case Sort::GaugeRod:
    case Sort::Leads: return chosen("limited-access-zone", words.caution_general);
    case Sort::Summary:
    case Sort::Names:
    case Sort::Sides:
    case Sort::SettingOut:
    case Sort::FoundPlan:
    case Sort::Found:
    case Sort::Notes: return chosen("engineer", words.caution_general);
  }
  return std::string(words.caution_general);
}

Sheet draw_sheet(const Context& context, const Lists& lists, const std::vector<Entry>& entries, std::size_t index) {
  const Entry& entry = entries[index];
  Sheet sheet;
  sheet.name = entry.name;
  sheet.title = entry.title;
  sheet.width = context.page.width;
  sheet.height = context.page.height;
  const std::string job = context.job.name.empty() ? std::string(context.words.untitled) : context.job.name;
  const FrameText text{job, entry.title, context.job.issued, context.job.drawn_by, caution_of(context.words, entry.sort),
                       index + 1, entries.size(), entry.scale, context.names};
  sheet.groups = frame_of(context.page, text, context.words, context.tape());
  sheet.groups.insert(sheet.groups.begin() + 1, draw_entry(context, lists, entry));
  return sheet;
}

}  // namespace

std::vector<SheetName> sheet_names(const Building& building, const Layout& layout, const SheetWords& words, Paper paper) {
  const Context context = context_of(building, layout, words, paper);
  std::vector<SheetName> names;
  for (Entry& entry : list_sheets(context, lists_of(context))) names.push_back({std::move(entry.name), std::move(entry.title)});
  return names;
}

void for_each_sheet(const Building& building, const Layout& layout, const SheetWords& words, Paper paper,
                    const std::function<void(const Sheet&)>& take) {
  const Context context = context_of(building, layout, words, paper);
  const Lists lists = lists_of(context);
  const std::vector<Entry> entries = list_sheets(context, lists);
  for (std::size_t index = 0; index < entries.size(); ++index) take(draw_sheet(context, lists, entries, index));
}

std::vector<Sheet> make_sheets(const Building& building, const Layout& layout, const SheetWords& words, Paper paper) {
  std::vector<Sheet> sheets;
  for_each_sheet(building, layout, words, paper, [&](const Sheet& sheet) { sheets.push_back(sheet); });
  return sheets;
}

}  // namespace stringcourse::sheet
