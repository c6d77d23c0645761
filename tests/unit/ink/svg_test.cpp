#include "ink/svg.hpp"

#include "outside_tools.hpp"
#include "specimen.hpp"

namespace stringcourse::ink_test {
namespace {

/// What Python's own XML parser sees of each picture: a line for each element (name, id, text), whether ids repeat,
/// whether every pattern asked for is there; then "end of" and the number of elements.
Outcome parsed(const std::vector<std::string>& pictures) {
  std::string command =
      "PYTHONIOENCODING=utf-8 python3 " +
      write_file("parse.py",
                 "import sys, xml.etree.ElementTree as E\n"
                 "for name in sys.argv[1:]:\n"
                 "    all = list(E.parse(name).getroot().iter())\n"
                 "    ids = [e.get('id') for e in all if e.get('id')]\n"
                 "    for e in all: print(e.tag.split('}')[1], e.get('id', ''), repr(e.text or ''))\n"
                 "    print('repeated' if len(ids) != len(set(ids)) else 'unique')\n"
                 "    links = {w for e in all for w in [e.get('fill', '')] if w.startswith('url(#')}\n"
                 "    print('dangling' if any(w[5:-1] not in ids for w in links) else 'linked', len(links))\n"
                 "    print('end of', len(all))\n");
  for (const std::string& picture : pictures) {
    command += " " + write_file("picture" + std::to_string(&picture - pictures.data()) + ".svg", picture);
  }
  return run(command);
}

Sheet named(const std::string& name) {
  Sheet sheet = specimen();
  sheet.name = sheet.title = name;
  for (Group& group : sheet.groups) {
    group.label = name;
    for (Text& text : group.texts) text.text = name;
  }
  return sheet;
}

TEST(Svg, IsWellFormedWithTitleAndTexts) {
  const Outcome outcome = parsed({ink::svg_text(specimen())});
  EXPECT_EQ(outcome.status, 0) << outcome.output;
  EXPECT_TRUE(holds(outcome.output, "title specimen--title 'Specimen of lines and letters'")) << outcome.output;
  EXPECT_TRUE(holds(outcome.output, R"(text  '14\'-7 5/16" = 175 5/16"')")) << outcome.output;
  EXPECT_TRUE(
      holds(outcome.output, "desc specimen--desc 'Four pens, three dashes. Fills. Texts turned about a point'"));
  EXPECT_TRUE(holds(outcome.output, "unique"));
  EXPECT_TRUE(holds(outcome.output, "linked 4")) << outcome.output;  // three hatches in black, one in blue
}

TEST(Svg, HostileNamesNeverBecomeMarkup) {
  const std::vector<std::string> names{"</svg><script>alert(1)</script>",
                                       "]]>",
                                       "&amp;&#x3c;",
                                       "<![CDATA[<b>",
                                       "\"' onload='x",
                                       "--><!--",
                                       std::string("nul\0\x01\x1b[2Jbell\x07", 14),
                                       "\xff\xfe\xc0\x80\xed\xa0\x80",
                                       "\u202Eevil\uFFFE"};
  std::vector<std::string> pictures{ink::svg_text(named("plain"))};
  for (const std::string& name : names) pictures.push_back(ink::svg_text(named(name), ink::Classes::Write));
  const Outcome outcome = parsed(pictures);
  EXPECT_EQ(outcome.status, 0) << outcome.output;
  const std::string_view output = outcome.output;
  const std::string_view end_of_plain =
      output.substr(output.find("end of"), output.find('\n', output.find("end of")) - output.find("end of"));
  const int count = static_cast<int>(pictures.size());
  EXPECT_EQ(times(output, end_of_plain), count) << output;  // the same number of elements, whatever they are called
  EXPECT_EQ(times(output, "\nunique\n"), count) << output;
  EXPECT_EQ(times(output, "\nlinked 4\n"), count) << output;
  EXPECT_FALSE(holds(output, "\nscript ")) << output;
  EXPECT_TRUE(holds(output, "'</svg><script>alert(1)</script>'")) << output;  // it is there, as text
  EXPECT_TRUE(holds(output, "'nul[2Jbell'")) << output;                       // without its controls
}

TEST(Svg, LabelsGiveIdsThatStandOnce) {
  Sheet sheet = specimen();
  sheet.name = "side-AB";
  for (const char* label : {"AB-3-7", "AB-3-7", "AB/3/7", "title", "hatch45-black"}) {
    Group group;
    group.label = label;
    sheet.groups.push_back(group);
  }
  const Outcome outcome = parsed({ink::svg_text(sheet)});
  for (const char* wanted : {"g side-AB-AB-3-7 ", "g side-AB-AB-3-7-2 ", "g side-AB-AB-3-7-3 ", "unique"}) {
    EXPECT_TRUE(holds(outcome.output, wanted)) << outcome.output;
  }
}

TEST(Svg, SafeIdsKeepLettersDigitsDashes) {
  EXPECT_EQ(ink::safe_id("AB-3-7"), "AB-3-7");
  EXPECT_EQ(ink::safe_id("Window W1: 3'-4\" <x>"), "Window-W1-3-4-x");
  EXPECT_EQ(ink::safe_id("</>"), "x");
  EXPECT_EQ(ink::safe_id(""), "x");
}

TEST(Svg, ClassNamesComeOnlyWhenAsked) {
  EXPECT_FALSE(holds(ink::svg_text(specimen()), "class="));
  const std::string themed = ink::svg_text(specimen(), ink::Classes::Write);
  EXPECT_TRUE(holds(themed, "class=\"ink-blue\"") && holds(themed, "class=\"ink-black fill-tint\""));
}

TEST(Svg, SizeIsMillimetresAndUnitsAreMicrometresDownwards) {
  Sheet sheet;
  sheet.name = "s";
  Group group;
  group.shapes.push_back({{{1'000, 2'000}, {3'000, 215'900}}, false, Pen::Thin, Dash::Solid, Ink::Black, Fill::None});
  group.texts.push_back({{5'000, 5'900}, "up", 3'000, Weight::Bold, Anchor::End, Ink::Black, 1});
  sheet.groups.push_back(group);
  const std::string svg = ink::svg_text(sheet);
  EXPECT_TRUE(holds(svg, "width=\"279.4mm\" height=\"215.9mm\" viewBox=\"0 0 279400 215900\""));
  EXPECT_TRUE(holds(svg, "d=\"M1000 213900L3000 0\"")) << svg;  // 215900 - 2000; 215900 - 215900
  // Capitals 1500 of 2000 units: an em is 4/3 of the capital height. Anticlockwise is a negative turn in SVG.
  EXPECT_TRUE(holds(svg,
                    "x=\"5000\" y=\"210000\" font-size=\"4000\" font-weight=\"bold\" text-anchor=\"end\" "
                    "transform=\"rotate(-90 5000 210000)\""))
      << svg;
}

}  // namespace
}  // namespace stringcourse::ink_test
