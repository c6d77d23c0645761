#include "sheet/frame.hpp"

#include "measure/digits.hpp"

#include <algorithm>

namespace stringcourse::sheet {
namespace {

constexpr Micrometres kBindingMargin = 15'000, kMargin = 10'000;
constexpr Micrometres kBlockHigh = 12'500, kRulerHigh = 17'000, kTitleHigh = 9'000, kGap = 2'500;
constexpr Micrometres kCautionPitch = 3'750;  // 1.5 of the height: four lines, our own words without capital accents
constexpr Micrometres kWideCautionHigh = 9'500, kCautionName = 18'000;  // two lines beside its name
constexpr Micrometres kSixInches = 152'400, kMetricRuler = 150'000;

constexpr Lettering kCaption{kSmallText, Weight::Regular, Anchor::Start, Ink::Black, 0};
constexpr Lettering kValue{kText, Weight::Regular, Anchor::Start, Ink::Black, 0};

struct Field {
  std::string_view caption;
  std::string value;
  int share;  // of the block's width, in hundredths
};

Group title_block(const Page& page, const FrameText& text, const words::SheetWords& words) {
  const std::string scale = text.scale ? "1:" + number_text(text.scale->denominator) : std::string(words.not_to_scale);
  const std::string of = words::fill_in(
      words.sheet_of, {number_text(static_cast<long long>(text.number)), number_text(static_cast<long long>(text.of))});
  const Field fields[] = {{words.job, text.job, 19},
                          {words.used_for, text.use, 29},
                          {words.block, text.block, 9},
                          {words.issued, text.issued, 15},
                          {words.drawn_by, text.drawn_by, 14},
                          {words.scale, scale, 5},
                          {words.sheet, of, 9}};
  Pad pad(Role::Paragraph, std::string(words.job));
  pad.box(page.block, {Pen::Medium});
  Micrometres left = page.block.left;
  for (const Field& field : fields) {
    const Micrometres width = page.block.width() / 100 * field.share;
    if (left > page.block.left) pad.line({left, page.block.bottom}, {left, page.block.top});
    pad.write({left + 2'000, page.block.top - 3'700}, std::string(field.caption), kCaption);
    const Setting value = fitting_name(text.names, field.value, {width - 3'000, kSmallText + line_pitch(kSmallText)},
                                       kValue, kDrawingHeights);
    write_setting(pad, {left + 2'000, page.block.bottom + 3'900}, value);
    left += width;
  }
  return std::move(pad).take();
}

// Ticks of one edge of the ruler: `count` divisions over `length`, every `numbered`-th long and numbered.
void add_ticks(Pad& pad, Point origin, Micrometres length, int count, int numbered, int step, Micrometres way) {
  for (int tick = 0; tick <= count; ++tick) {
    const Micrometres x = origin.x + static_cast<Micrometres>(std::int64_t{length} * tick / count);
    const bool is_long = tick % numbered == 0;
    pad.line({x, origin.y}, {x, origin.y + way * (is_long ? 3'000 : 1'600)});
    if (!is_long) continue;
    const Micrometres y = origin.y + (way > 0 ? 3'700 : -3'700 - kSmallText);
    pad.write({x, y}, number_text(tick / numbered * step), {kSmallText, Weight::Regular, Anchor::Middle});
  }
}

// Six inches above the line, 150 mm below it: lay a tape on it to see whether the printer kept the size.
Group print_ruler(const Page& page, const words::SheetWords& words) {
  Pad pad(Role::Figure, std::string(words.print_ruler));
  const Point origin{page.ruler.left + 2'000, page.ruler.bottom + 7'000};
  pad.line(origin, {origin.x + kSixInches, origin.y}, {Pen::Medium});
  add_ticks(pad, origin, kSixInches, 48, 8, 1, 1);
  add_ticks(pad, origin, kMetricRuler, 30, 10, 50, -1);
  const Lettering unit{kSmallText, Weight::Regular, Anchor::Start, Ink::Black, 0};
  pad.write({origin.x + 4'000, origin.y + 3'700}, "in", unit);
  pad.write({origin.x + 4'000, origin.y - 3'700 - kSmallText}, "mm", unit);
  pad.write({origin.x, page.ruler.top - kSmallText}, std::string(words.print_ruler), kCaption);
  return std::move(pad).take();
}

constexpr Micrometres kCautionDrop = 1'200 + kSmallText;  // from the block's top to its first baseline

void write_caution(Pad& pad, const Area& box, Micrometres left, const std::string& caution) {
  const Lettering body{kSmallText, Weight::Regular, Anchor::Start, Ink::Black, 0};
  Micrometres y = box.top - kCautionDrop;
  for (const std::string& line : wrapped(caution, box.right - left - 1'500, body)) {
    pad.write({left, y}, line, body);
    y -= kCautionPitch;
  }
}

Group caution_beside_ruler(const Page& page, const FrameText& text, const words::SheetWords& words) {
  const Lettering head{kSmallText, Weight::Bold, Anchor::Middle, Ink::Black, 1};
  Pad pad(Role::Paragraph, std::string(words.caution));
  pad.box(page.caution, {Pen::Medium});
  pad.write({page.caution.left + 4'200, page.caution.centre().y}, std::string(words.caution), head);
  pad.line({page.caution.left + 6'000, page.caution.bottom}, {page.caution.left + 6'000, page.caution.top});
  write_caution(pad, page.caution, page.caution.left + 7'500, text.caution);
  return std::move(pad).take();
}

Group caution_across(const Page& page, const FrameText& text, const words::SheetWords& words) {
  const Area& box = page.wide_caution;
  Pad pad(Role::Paragraph, std::string(words.caution));
  pad.box(box, {Pen::Medium});
  pad.write({box.left + 1'500, box.top - kCautionDrop}, std::string(words.caution), {kSmallText, Weight::Bold});
  pad.line({box.left + kCautionName, box.bottom}, {box.left + kCautionName, box.top});
  write_caution(pad, box, box.left + kCautionName + 1'500, text.caution);
  return std::move(pad).take();
}

// Length of one division of the scale bar and how many: about 60 mm on paper in round feet or metres.
struct BarDivision {
  Length length;
  int count;
  int value;
  const char* unit;
};

BarDivision bar_division(Scale scale, Tape tape) {
  const bool inches = tape == Tape::Inches;
  if (scale.denominator == 1)
    return {inches ? Length::inches(1) : Length::millimetres(20), 2, inches ? 1 : 20, inches ? "in" : "mm"};
  const Micrometres narrowest = inches ? 9'000 : 14'000, room = 70'000;  // four figures of millimetres take more room
  const int millimetres = scale.denominator <= 10 ? 100 : 500;
  for (const int size : {1, 2, 5, 10, 20, 50, 100, 200}) {
    const Length length = inches ? Length::feet(size) : Length::millimetres(millimetres * size);
    const Micrometres width = scale.paper(length);
    if (width < narrowest) continue;
    return {length, std::clamp(room / width, 1, 4), inches ? size : millimetres * size, inches ? "ft" : "mm"};
  }
  return {inches ? Length::feet(500) : Length::millimetres(100'000), 1, inches ? 500 : 100'000, inches ? "ft" : "mm"};
}

Group scale_bar(const Page& page, Scale scale, Tape tape) {
  const BarDivision division = bar_division(scale, tape);
  const Micrometres width = scale.paper(division.length);
  const Micrometres left = page.title.right - width * division.count - (tape == Tape::Inches ? 6'000 : 10'000);
  const Micrometres bottom = page.title.top - 2'000;
  const std::string name = "1:" + number_text(scale.denominator);
  Pad pad(Role::Figure, name);
  for (int index = 0; index <= division.count; ++index) {
    const Micrometres x = left + width * index;
    if (index < division.count) {
      pad.box({x, bottom, x + width, bottom + 1'500}, {Pen::Thin}, index % 2 == 0 ? Fill::Black : Fill::White);
    }
    std::string value = number_text(division.value * index);
    if (index == division.count) value += std::string(" ") + division.unit;
    pad.write({x, bottom - 1'000 - kSmallText}, std::move(value), {kSmallText, Weight::Regular, Anchor::Middle});
  }
  pad.write({left - 4'000, bottom - 1'000}, name, {kText, Weight::Regular, Anchor::End});
  return std::move(pad).take();
}

Group sheet_title(const Page& page, const FrameText& text) {
  Pad pad(Role::Heading, text.title);
  const Lettering lettering{kLargeText, Weight::Bold, Anchor::Start, Ink::Black, 0};
  const TextRoom room{page.title.width() - 95'000, page.title.height()};
  const Setting title = fitting_name(text.names, text.title, room, lettering, kLargeHeights);
  write_setting(pad,
                {page.title.left,
                 page.title.bottom + 2'500 + (title.lines.size() > 1 ? title.height / 2 - 1'500 : kLargeText / 2)},
                title);
  return std::move(pad).take();
}

}  // namespace

Page page_of(Paper paper) {
  Page page;
  page.width = paper_size(paper).width;
  page.height = paper_size(paper).height;
  page.margin = {kBindingMargin, kMargin, page.width - kMargin, page.height - kMargin};
  page.block = {page.margin.left, page.margin.bottom, page.margin.right, page.margin.bottom + kBlockHigh};
  const Micrometres low = page.block.top + kGap;
  page.ruler = {page.margin.left, low, page.margin.left + kSixInches + 5'000, low + kRulerHigh};
  page.caution = {page.ruler.right + 2'000, low, page.margin.right, low + kRulerHigh};
  page.title = {page.margin.left, page.margin.top - kTitleHigh, page.margin.right, page.margin.top};
  page.drawing = {page.margin.left, low + kRulerHigh + kGap, page.margin.right, page.title.bottom};
  page.wide_caution = {page.margin.left, low, page.margin.right, low + kWideCautionHigh};
  page.list = {page.margin.left, page.wide_caution.top + kGap, page.margin.right, page.title.bottom};
  return page;
}

std::vector<Group> frame_of(const Page& page, const FrameText& text, const words::SheetWords& words, Tape tape) {
  std::vector<Group> groups{sheet_title(page, text)};
  if (text.scale) groups.push_back(scale_bar(page, *text.scale, tape));
  if (text.scale) groups.push_back(print_ruler(page, words));
  groups.push_back(text.scale ? caution_beside_ruler(page, text, words) : caution_across(page, text, words));
  groups.push_back(title_block(page, text, words));
  return groups;
}

}  // namespace stringcourse::sheet
