#include "sheet/sheets.hpp"

#include <algorithm>

#include "sheet/list_sheet.hpp"
#include "sheet/registry.hpp"

namespace stringcourse::sheet {
namespace {

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

std::string caution_text(const Words& words, const Caution& caution) {
  const Rule* found = find_rule(caution.rule);
  return found ? found->text + ". (" + found->source.text + ")" : std::string(words.*caution.instead);
}

Context as_poured(const Context& context) {
  const PourOf pour = pour_of(context.answer);
  if (&pour.building == &context.answer.building) return context;
  const Building& poured = pour.building;
  std::shared_ptr<const Building> renamed = with_short_names(poured, context.names);
  return {renamed ? *renamed : poured, pour.layout, context.answer, context.words, context.page,
          context.cuts, context.names, &poured, renamed};
}

// What one kind of sheet comes to in a set; nothing, where it does not apply.
struct Chapter {
  const SheetKind* kind = nullptr;
  const Context* context = nullptr;
  List list = {};
  std::vector<PlannedSheet> sheets = {};
  const List* under = nullptr;  // the list that stands under this one's
};

// One sheet of a set.
struct Place {
  const Chapter& chapter;
  const PlannedSheet& planned;
};

class Set {
 public:
  Set(const Answer& answer, Paper paper)
      : now_(context_of(answer, paper)), poured_(as_poured(now_)), chapters_(sheet_kinds().size()) {
    for (std::size_t index = 0; index < chapters_.size(); ++index) begin(chapters_[index], *sheet_kinds()[index]);
    for (Chapter& chapter : chapters_) {
      add_list(chapter);
      size_ += chapter.sheets.size();
    }
  }
  Set(const Set&) = delete;
  Set& operator=(const Set&) = delete;

  [[nodiscard]] std::size_t size() const { return size_; }
  [[nodiscard]] SheetName name(std::size_t index) const { return {file_name(index), place(index).planned.title}; }
  [[nodiscard]] Sheet sheet(std::size_t index) const {
    const auto [chapter, planned] = place(index);
    const std::string job = now_.answer.job.name.empty() ? std::string(now_.words.untitled) : now_.answer.job.name;
    const FrameText text{job, planned.title, now_.answer.job.issued, now_.answer.job.drawn_by,
                         caution_text(now_.words, chapter.kind->caution), index + 1, size_, planned.scale, now_.names};
    Sheet sheet{.name = file_name(index), .title = planned.title, .width = now_.page.width, .height = now_.page.height,
                .groups = frame_of(now_.page, text, now_.words, now_.tape())};
    sheet.groups.insert(sheet.groups.begin() + 1, drawn(chapter, planned));
    return sheet;
  }

 private:
  void begin(Chapter& chapter, const SheetKind& kind) {
    chapter.kind = &kind;
    chapter.context = kind.hold_point == HoldPoint::Pour ? &poured_ : &now_;
    if (kind.applies != nullptr && !kind.applies(*chapter.context)) return;
    if (kind.sheets != nullptr) chapter.sheets = kind.sheets(*chapter.context);
    if (kind.table != nullptr) chapter.list.table = kind.table(*chapter.context);
    if (kind.note != nullptr) chapter.list.note = now_.words.*kind.note;
    if (kind.made_note != nullptr) chapter.list.note = kind.made_note(now_);
  }

  // Sheets of a list, unless it stands under another.
  void add_list(Chapter& chapter) {
    if (chapter.list.table.lines.empty()) return;
    const auto above = std::ranges::find(chapters_, chapter.kind->under, &Chapter::kind);
    const bool stands = above != chapters_.end() && !above->sheets.empty();
    if (stands && fits_under(now_, above->list, chapter.list)) above->under = &chapter.list;
    else chapter.sheets = sheets_of_list(now_, chapter.list);
  }

  [[nodiscard]] Place place(std::size_t index) const {
    std::size_t chapter = 0;
    while (index >= chapters_[chapter].sheets.size()) index -= chapters_[chapter++].sheets.size();
    return {chapters_[chapter], chapters_[chapter].sheets[index]};
  }

  // "07-course-1-AB": the number makes names unique and rising.
  [[nodiscard]] std::string file_name(std::size_t index) const {
    const auto [chapter, planned] = place(index);
    std::string number = number_text(static_cast<long long>(index + 1));
    const std::size_t width = std::max<std::size_t>(2, number_text(static_cast<long long>(size_)).size());
    number.insert(0, width - number.size(), '0');
    std::string name = number + "-" + std::string(chapter.kind->name);
    if (planned.course > 0) name += "-" + number_text(planned.course);
    if (planned.wall >= 0) name += "-" + name_part(chapter.context->wall(planned.wall).name);
    return name;
  }

  [[nodiscard]] Group drawn(const Chapter& chapter, const PlannedSheet& planned) const {
    if (chapter.kind->draw != nullptr) return chapter.kind->draw(*chapter.context, planned);
    return draw_list(now_, planned, chapter.list, chapter.under);
  }

  Context now_, poured_;
  std::vector<Chapter> chapters_;  // in the order of the registry
  std::size_t size_ = 0;
};

}  // namespace

std::vector<SheetName> sheet_names(const Answer& answer, Paper paper) {
  const Set set(answer, paper);
  std::vector<SheetName> names;
  for (std::size_t index = 0; index < set.size(); ++index) names.push_back(set.name(index));
  return names;
}

void for_each_sheet(const Answer& answer, Paper paper, const std::function<void(const Sheet&)>& take) {
  const Set set(answer, paper);
  for (std::size_t index = 0; index < set.size(); ++index) take(set.sheet(index));
}

std::vector<Sheet> make_sheets(const Answer& answer, Paper paper) {
  std::vector<Sheet> sheets;
  for_each_sheet(answer, paper, [&](const Sheet& sheet) { sheets.push_back(sheet); });
  return sheets;
}

}  // namespace stringcourse::sheet
