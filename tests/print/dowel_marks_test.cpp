// Every dowel and bar number on paper, found again in the plan from what the sheet itself says it is measured from.
#include <gtest/gtest.h>

#include <map>
#include <regex>
#include <set>

#include "measure/notation.hpp"
#include "print/printed_marks.hpp"
#include "solve/poured.hpp"

namespace stringcourse::print_test {
namespace {

using paper::Paper;
using paper::Sheet;

Length step_of(const Building& building) {
  return building.tape == Tape::Inches ? Length::sixteenths(1) : Length::millimetres(1);
}

/// A number as printed: the first of "43 13/16"", "3'-7 13/16" = 43 13/16"", "1113 mm", "1113".
std::optional<Length> number_in(const std::string& text, const Building& building) {
  const auto length = read_length(text.substr(0, text.find(" =")), building.tape);
  return length ? std::optional(*length) : std::nullopt;
}

std::string all_text(const Sheet& sheet) {
  std::string all;
  for (const std::string& text : texts_of(sheet)) all += text + " ";
  return all;
}

struct Found {
  std::multiset<int> bars;  // by their place in bars_in_plan()
  int numbers = 0;
};

/// One row of the dowel list. Wrapped cells go on in rows whose first columns are empty.
struct ListRow {
  std::string name, centre, in;
};

/// The list's rows under the headings that say what they are measured from.
std::vector<std::pair<std::string, ListRow>> dowel_rows(const Solved& solved, Paper paper) {
  std::vector<std::pair<std::string, ListRow>> rows;
  std::string heading;
  bool open = false, since = false;  // since: rows that say what differs since the pour
  for (const Sheet& sheet : solved.sheets(paper)) {
    if (!sheet.title.starts_with("Dowel list")) continue;
    for (const PrintedLine& line : table_lines(sheet)) {
      if (line.heading) {
        if (line.cells.front() == words::kEnglish.poured_heading) continue;
        since = line.cells.front() == words::kEnglish.poured_since;
        heading = open ? heading + " " + line.cells.front() : line.cells.front();
        open = true;
        continue;
      }
      if (since || line.cells.size() < 4 || line.cells[1] == words::kEnglish.dowel) continue;
      if (line.cells[1].empty()) {
        if (rows.empty()) continue;  // the head's second line
        rows.back().second.centre += (line.cells[2].empty() ? "" : " ") + line.cells[2];
        continue;
      }
      open = false;
      rows.push_back({heading, {line.cells[1], line.cells[2], line.cells[3]}});
    }
  }
  return rows;
}

const std::regex kHeading("(.+): from (.+), along (its outer face|either face); in from (its outer face|either face)");

TEST(DowelMarks, EveryRowOfTheListIsADowelsPlaceAndEveryDowelHasOne) {
  int dowels = 0;
  for (const Solved& solved : solved_examples()) {
    const PourOf pour = pour_of(solved.answer);
    const Building& building = pour.building;
    const auto bars = bars_in_plan(building, pour.layout);
    for (const Paper paper : {Paper::Letter, Paper::A4}) {
      SCOPED_TRACE(solved.name);
      std::multiset<int> found;
      for (const auto& [heading, row] : dowel_rows(solved, paper)) {
        SCOPED_TRACE(heading + " | " + row.name);
        std::smatch parts;
        ASSERT_TRUE(std::regex_match(heading, parts, kHeading));
        const PrintedOrigin origin = origin_of(building, parts[1], parts[2]);
        ASSERT_TRUE(origin.understood);
        const auto along = number_in(row.centre, building), in = number_in(row.in, building);
        ASSERT_TRUE(along && in);
        const int bar = bar_near(bars, origin.at(*along, *in), step_of(building));
        EXPECT_GE(bar, 0);
        found.insert(bar);
        const Wall& wall = building.walls[static_cast<std::size_t>(wall_named(building, parts[1]))];
        EXPECT_EQ(wall.interior, parts[4] == "either face");
        // From either face: so far from the other one too.
        if (wall.interior)
          EXPECT_EQ(bar_near(bars, origin.at(*along, building.series_of(wall).thickness - *in), step_of(building)),
                    bar);
      }
      for (std::size_t bar = 0; bar < bars.size(); ++bar)
        EXPECT_EQ(found.count(static_cast<int>(bar)), bars[bar].at_bearing ? 1u : 0u);
      dowels += static_cast<int>(found.size());
    }
  }
  EXPECT_GT(dowels, 150);
}

/// The wall that a sheet's title names, and what its sentence says that its numbers are measured from.
struct Titled {
  std::string wall;
  PrintedOrigin origin;
};
std::optional<Titled> titled(const Building& building, const Sheet& sheet, const std::regex& title) {
  std::smatch parts;
  if (!std::regex_match(sheet.title, parts, title)) return std::nullopt;
  const std::string wall = parts[1], text = all_text(sheet);
  std::smatch sentence;
  if (!std::regex_search(text, sentence,
                         std::regex("All marks from (.+), along (?:its outer face|either face): (hook|hold)")))
    return Titled{wall, {}};
  return Titled{wall, origin_of(building, wall, sentence[1])};
}

/// Running labels with these words: the number 5 mm high before them.
std::vector<std::pair<std::string, std::string>> labels(const Sheet& sheet, const std::regex& what) {
  std::vector<std::pair<std::string, std::string>> found;
  visit_groups(sheet.groups, [&](const paper::Group& group) {
    for (std::size_t k = 1; k < group.texts.size(); ++k) {
      const paper::Text& text = group.texts[k];
      if (text.quarter_turns != 1 || !std::regex_match(text.text, what)) continue;
      for (std::size_t before = k; before-- > 0;) {
        if (group.texts[before].height != 5'000) continue;
        found.emplace_back(group.texts[before].text, text.text);
        break;
      }
    }
  });
  return found;
}

/// How far masonry reaches along a wall: past a re-entrant corner as far as the other wall is thick.
std::pair<Length, Length> ends_of(const Building& building, const Wall& wall) {
  const auto beyond = [&](const WallEnd& end, bool start) {
    if (end.kind != EndKind::Corner) return Length();
    const Corner& corner = building.corners[static_cast<std::size_t>(end.corner)];
    return corner.convex
               ? Length()
               : building.series_of(building.walls[static_cast<std::size_t>(start ? corner.arriving : corner.leaving)])
                     .thickness;
  };
  return {-beyond(wall.start, true), wall.actual + beyond(wall.end, false)};
}

// Bars that start at the footing have their numbers in the dowel list; on a strip they are dots.
TEST(DowelMarks, ABarThatIsNoDowelHasItsNumberOnItsStripsAndNoOtherHas) {
  int strips = 0;
  for (const Solved& solved : solved_examples()) {
    SCOPED_TRACE(solved.name);
    const Building& building = solved.answer.building;
    const auto bars = bars_in_plan(building, solved.answer.layout);
    std::map<std::pair<std::string, char>, std::multiset<int>> found;
    for (const Sheet& sheet : bands_of(solved.sheets(Paper::Letter))) {
      const auto on = titled(building, sheet, std::regex("Course [12]: (?:side|wall) (.+?)(?: \\(\\d+ of \\d+\\))?"));
      if (!on) continue;
      SCOPED_TRACE(sheet.title);
      ASSERT_TRUE(on->origin.understood);
      const Wall& wall = building.walls[static_cast<std::size_t>(wall_named(building, on->wall))];
      auto& seen = found[{on->wall, sheet.title[7]}];
      for (const auto& [number, what] : labels(sheet, std::regex("bar(, behind .+)?"))) {
        const auto along = number_in(number, building);
        ASSERT_TRUE(along.has_value()) << number;
        EXPECT_GE(*along, Length()) << "a tape has no numbers below zero";
        int bar = -1;
        for (std::size_t k = 0; k < bars.size(); ++k) {
          const PlanPoint zero = on->origin.zero;
          const Length at = (bars[k].at.x - zero.x) * on->origin.x + (bars[k].at.y - zero.y) * on->origin.y;
          const Length in = (bars[k].at.x - zero.x) * on->origin.in_x + (bars[k].at.y - zero.y) * on->origin.in_y;
          const Length printed = what == "bar" ? *along : -*along;
          if (in > Length() && in < building.series_of(wall).thickness &&
              2 * magnitude(at - printed) <= step_of(building))
            bar = static_cast<int>(k);
        }
        EXPECT_GE(bar, 0) << number << " " << what;
        seen.insert(bar);
      }
    }
    // Every such bar in the wall's masonry stands on its strips once in each course.
    for (const auto& [strip, seen] : found) {
      const Wall& wall = building.walls[static_cast<std::size_t>(wall_named(building, strip.first))];
      const auto [from, to] = ends_of(building, wall);
      for (std::size_t k = 0; k < bars.size(); ++k) {
        const bond::SeenFrom place = bond::seen_from(wall, bars[k].at);
        const bool inside = place.along > from && place.along < to && place.depth > Length() &&
                            place.depth < building.series_of(wall).thickness;
        const bool numbered = inside && !bars[k].at_bearing;
        EXPECT_EQ(seen.count(static_cast<int>(k)), numbered ? 1u : 0u) << strip.first << " course " << strip.second;
      }
      ++strips;
    }
  }
  EXPECT_GT(strips, 50);
}

TEST(DowelMarks, EveryDowelOnAFormBoardStandsWhereItsNumberPutsIt) {
  int numbers = 0;
  for (const Solved& solved : solved_examples()) {
    SCOPED_TRACE(solved.name);
    const PourOf pour = pour_of(solved.answer);
    const Building& building = pour.building;
    const auto bars = bars_in_plan(building, pour.layout);
    std::map<std::string, std::string> listed;  // "AB 3" -> its centre in the list
    for (const auto& [heading, row] : dowel_rows(solved, Paper::Letter)) listed[row.name] = row.centre;
    std::set<std::string> drawn;
    for (const Sheet& sheet : bands_of(solved.sheets(Paper::Letter))) {
      const auto on = titled(building, sheet, std::regex("Form board: (?:side|wall) (.+?)(?: \\(\\d+ of \\d+\\))?"));
      if (!on) continue;
      SCOPED_TRACE(sheet.title);
      ASSERT_TRUE(on->origin.understood);
      for (const auto& [number, what] : labels(sheet, std::regex("no\\. \\d+"))) {
        const auto along = number_in(number, building);
        ASSERT_TRUE(along.has_value());
        const std::string name = on->wall + " " + what.substr(4);
        EXPECT_EQ(number_in(listed[name], building), along) << name;
        bool stands = false;
        for (const steel::Dowel& dowel : solved.answer.dowels) {
          if (building.walls[static_cast<std::size_t>(dowel.wall)].name + " " + std::to_string(dowel.number) != name)
            continue;
          stands = bar_near(bars, on->origin.at(*along, dowel.off_face), step_of(building)) >= 0;
        }
        EXPECT_TRUE(stands) << name;
        EXPECT_TRUE(drawn.insert(name).second) << name;
        ++numbers;
      }
    }
    for (const auto& [name, centre] : listed) EXPECT_TRUE(drawn.contains(name)) << name << " at " << centre;
  }
  EXPECT_GT(numbers, 80);
}

TEST(DowelMarks, EveryPlaceOnATemplateIsADowelsAndItsDepthIsThatFromTheLineThatIsNamed) {
  int numbers = 0;
  for (const Solved& solved : solved_examples()) {
    SCOPED_TRACE(solved.name);
    const PourOf pour = pour_of(solved.answer);
    const Building& building = pour.building;
    const auto bars = bars_in_plan(building, pour.layout);
    const std::regex place(
        "(\\S+), from (outer corner \\S+|inside corner \\S+, the outer face of \\S+|the inner face of \\S+|the end of "
        "the wall at \\S+):"
        "|(\\S+) (\\d+): (\\d[0-9 /]*(?:\"| ?mm)?)");
    for (const Sheet& sheet : solved.sheets(Paper::Letter)) {
      if (!sheet.title.starts_with("Dowel template")) continue;
      SCOPED_TRACE(sheet.title);
      const std::string text = all_text(sheet);
      std::smatch depth;
      ASSERT_TRUE(std::regex_search(text, depth, std::regex("(\\d[^A-Za-z]*(?:\"| mm)?) from the face line")));
      const auto in = number_in(depth[1], building);
      ASSERT_TRUE(in.has_value());
      // The form stands outside the face line by what the job's setting out says, and the sheet says both.
      std::smatch form;
      const bool said = std::regex_search(text, form, std::regex("(\\d[^A-Za-z]*(?:\"| mm)?) from the form"));
      const auto& asked = solved.answer.job.setting_out;
      const bool projects = asked && asked->footing_outside && *asked->footing_outside > Length();
      EXPECT_EQ(said, projects);
      if (said && projects) EXPECT_EQ(*number_in(form[1], building), *in + *asked->footing_outside);
      EXPECT_EQ(text.find("edge of the form"), std::string::npos);
      PrintedOrigin origin;
      std::string wall;
      for (auto at = std::sregex_iterator(text.begin(), text.end(), place); at != std::sregex_iterator(); ++at) {
        if ((*at)[1].matched) {
          wall = (*at)[1];
          origin = origin_of(building, wall, (*at)[2]);
          ASSERT_TRUE(origin.understood) << at->str();
          continue;
        }
        if (wall.empty() || (*at)[3] != wall) continue;
        const auto along = number_in((*at)[5], building);
        ASSERT_TRUE(along.has_value()) << at->str();
        EXPECT_GE(bar_near(bars, origin.at(*along, *in), step_of(building)), 0) << at->str();
        ++numbers;
      }
    }
  }
  EXPECT_GT(numbers, 60);
}

}  // namespace
}  // namespace stringcourse::print_test
